"""A split trial in words: its plan, and what it showed."""

from __future__ import annotations

from hatchkit.say import text


def plan_words(plan, language: str = "en") -> str:
    """The plan in a few lines.

    Parameters
    ----------
    plan : object
        With the attributes of `hatchkit.trials.plan.Plan`.
    language : {"en", "de", "fr", "es"}

    Returns
    -------
    str
        A sentence a line.
    """
    usual, new = plan.arms
    facts = dict(
        usual_way=usual,
        new_way=new,
        outcome=plan.outcome,
        sets=plan.sets,
        eggs=plan.eggs,
        usual=plan.usual,
        difference=plan.difference,
        needed=plan.needed,
        each=len(plan.sheet) / 2,
        power=10 * plan.power,
        blocks=len(plan.blocks),
    )
    lines = [text("trial_plan", facts, language), text("trial_plan_eggs", facts, language)]
    lines += [text("trial_plan_short", {}, language)] if plan.power < 0.7 else []
    return "\n".join([*lines, text("trial_plan_rules", {}, language)])


def result_words(found, language: str = "en") -> str:
    """What a trial showed.

    Parameters
    ----------
    found : object
        With the attributes of `hatchkit.trials.analysis.Trial`.
    """
    plan, (usual, new) = found.plan, found.table.to_dict("records")
    facts = dict(
        verdict=found.verdict,
        usual_way=plan.arms[0],
        new_way=plan.arms[1],
        outcome=plan.outcome,
        new_good=new["good"],
        new_eggs=new["eggs"],
        new_share=new["share"],
        usual_good=usual["good"],
        usual_eggs=usual["eggs"],
        usual_share=usual["share"],
        difference=100 * found.difference,
        low=100 * found.low,
        high=100 * found.high,
        chance=100 * found.chance,
        planned=plan.difference,
        power=10 * plan.power,
        missing=found.missing,
        unread=found.unread,
        moved=found.moved,
    )
    lines = [text("trial_result", facts, language)]
    if found.verdict != "too_few":
        lines += [text("trial_counts", facts, language), text("trial_size", facts, language)]
    if found.verdict == "not_told":
        lines.append(text("trial_missed", facts, language))
    if found.missing or found.unread or found.moved:
        lines.append(text("trial_left", facts, language))
    return "\n".join(lines)
