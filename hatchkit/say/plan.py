"""The plan for the next set in words: how many eggs, when, what to change."""

from __future__ import annotations

from hatchkit.say import text
from hatchkit.say.causes import capital, reason
from hatchkit.say.speak import attributes, word


def bird_of(basis, language: str) -> str:
    """What the birds are called beside a number of eggs."""
    return basis["name"] if language == "en" else word("species", basis["species"], language)


def chance(share, language: str = "en") -> str:
    """A probability as a person says it: "9 times in 10"."""
    if share >= 0.995:
        facts = dict(times=None, of=100)
    elif abs(share * 10 - round(share * 10)) < 0.005:
        facts = dict(times=round(share * 10), of=10)
    else:
        facts = dict(times=round(share * 100), of=100)
    return text("plan_chance", facts, language)


def eggs_to_set(plan, language: str = "en") -> str:
    """How many eggs, from what, how sure."""
    basis = plan.basis
    row = plan.eggs[plan.eggs["sure"] == round(basis["sure"], 4)].iloc[0]
    facts = dict(chicks=basis["chicks"], chance=chance(basis["sure"], language))
    if row.isna()["eggs"]:
        return text("plan_too_many", dict(facts, most=basis["most_eggs"]), language)
    return text(
        "plan_eggs",
        dict(
            facts,
            name=bird_of(basis, language),
            eggs=row["eggs"],
            low=row["chicks_low"],
            middle=row["chicks_middle"],
            high=row["chicks_high"],
        ),
        language,
    )


def plan_basis(basis, language: str = "en") -> str:
    """What the number of eggs rests on."""
    facts = dict(level=basis["level"], mean=basis["share_mean"], low=basis["share_low"], high=basis["share_high"])
    count, left, driver = basis["batches"], basis["left_out"], basis["driver"]
    told = [
        text("plan_rests", dict(facts, batches=count, hatched=basis["hatched"], set=basis["eggs_set"]), language)
        if count
        else text("plan_rests_none", facts, language)
    ]
    if driver is not None:
        told.append(
            text(
                "plan_driver",
                dict(
                    batch=driver["batch"], hatched=driver["hatched"], set=driver["eggs_set"], without=driver["without"]
                ),
                language,
            )
        )
    told += [text("plan_few", {}, language)] if 0 < count < 6 else []
    told += [text("plan_left_out", dict(left=left), language)] if left else []
    return " ".join(told)


def when(plan, language: str = "en") -> str:
    """Day and hour of setting and the days of the hatch."""
    steps = plan.calendar.set_index("step")["starts"]
    notes = [text(f"plan_note_{code}", facts, language) for code, facts in plan.basis["set_at_notes"]]
    return text(
        "plan_when",
        dict(
            set=steps["set"], year=steps["set"].year, notes=notes, first=steps["first_hatch"], last=steps["last_hatch"]
        ),
        language,
    )


def what_changes(plan, language: str = "en") -> str:
    """How many things to change, and the first."""
    told = changes(plan.changes, language, plan.unit)
    if not told:
        return text("plan_changes_none", dict(batches=plan.basis["batches"]), language)
    return text("plan_changes", dict(count=len(told), first=told[0]["what"]), language)


def changes(table, language: str = "en", unit: str = "C") -> list[dict]:
    """Each change (a code with its facts) in words: ``what``, ``now``, ``to``, ``why`` and ``how_sure``."""
    rows = zip(table["change"], table["facts"], strict=True)
    return [_change(code, facts, language, unit) for code, facts in rows]


def change_part(given, language: str = "en", unit: str = "C") -> str:
    """One part of a change, which is (code, facts, part)."""
    code, facts, part = given
    return _change(code, facts, language, unit)[part]


def _change(code, facts, language, unit) -> dict:
    """Facts that are themselves codes with facts (what the records show, the figure to go to) are said first."""
    if code == "cause":
        shown, target = facts["shown"], facts["target"]
        facts = facts | dict(
            shown=reason(shown, language, unit) if shown else None,
            target=text(f"target_{target[0]}", target[1], language, unit) if target else None,
        )
    told = attributes(f"changed_{code}", facts, language, ("what", "now", "to", "why", "how_sure"), (), unit)
    return told | dict(what=capital(told["what"]))


def step(row, language: str = "en") -> str:
    """A row of the calendar: what is to be done."""
    return text(f"step_{row['step']}", row["facts"], language)


def why(row, language: str = "en") -> str:
    """A row of the calendar: why, and what to mind."""
    return text(f"why_{row['step']}", row["facts"], language)


def title(plan, language: str = "en") -> str:
    """The plan's heading."""
    return text("plan_title", dict(name=bird_of(plan.basis, language), set=plan.basis["set_at"]), language)


def plan(plan, language: str = "en") -> str:
    """The whole plan in a few sentences."""
    return " ".join(
        [
            eggs_to_set(plan, language),
            plan_basis(plan.basis, language),
            when(plan, language),
            what_changes(plan, language),
        ]
    )
