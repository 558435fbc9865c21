"""The sentences about losses and temperature, made in this one place."""

from __future__ import annotations

import numpy as np

from hatchkit.relate.verdict import CLEAR, NONE, SOME, rules
from hatchkit.words.spelling import many

#: What no verdict here can tell.
NOT_THE_CAUSE = (
    "Losses that go with an excursion are consistent with harm from it. That it was the cause, and not "
    "something that came with it, no records of this kind can prove."
)


def sentence(text) -> str:
    """`text` with a capital and a full stop."""
    return text[:1].upper() + text[1:] + ("" if text.endswith((".", "!", "?")) else ".")


def times(value) -> str:
    """A hazard ratio: two figures, and no false precision beyond 20."""
    if not np.isfinite(value):
        return "unknown"
    if value > 20:
        return "over 20"
    return f"{value:.2f}" if value < 1 else f"{value:.1f}"


def in_ten(share) -> str:
    """A share as so many in 10, 100 or 1000, the shortest that does not round by much."""
    if share >= 0.15:
        return f"{round(share * 10)} in 10"
    if share >= 0.01:
        return f"{round(share * 100)} in 100"
    return f"{round(share * 1000)} in 1000" if share >= 0.001 else "fewer than 1 in 1000"


def counts_in_words(found) -> str:
    """The verdict and its reasons, from a table of counts.

    Parameters
    ----------
    found : CountsRelation
    """
    parts = [sentence(found.verdict)]
    if found.effect and found.effect["method"] != "none":
        parts += [_size(found), _chance(found), _interval_warning(found), _could_show(found), _excess(found)]
        parts += [_together(found), _adjusted(found)]
    parts.append(_left_out(found))
    return " ".join(part for part in parts if part)


def relation_in_words(found) -> str:
    """The same for a season, with the question first and the limits last."""
    from hatchkit.relate.measures import measures

    if not (found.exposure["share_logged"] > 0).any():
        return counts_in_words(found.counts)
    name = measures().loc[found.measure, "name"]
    asked = (
        f"Asked before looking: did windows with more {name} lose more embryos in that same window?"
        if found.measure != "excursions"
        else "Asked before looking: did the windows between two looks in which eggs were too warm or too cold "
        "lose more "
        "embryos than the others?"
    )
    parts = [counts_in_words(found.counts), asked]
    parts += [_too_few(found), _unlogged(found.exposure), _late(found)]
    if found.verdict in (CLEAR, SOME):
        parts.append(NOT_THE_CAUSE)
    return " ".join(part for part in parts if part)


def _size(found) -> str:
    effect = found.effect
    exposed, batches = int(effect["exposed"]), int(effect["batches"])
    return (
        f"In the {many(exposed, 'exposed batch', 'exposed batches')} of {batches}, embryos died at "
        f"{times(effect['hazard_ratio'])} times the rate of the others "
        f"(95 % interval {times(effect['low'])} to {times(effect['high'])}), at the usual dose of the exposed "
        "windows." + _winner(found)
    )


def _winner(found) -> str:
    """Of small records only those with a large difference by luck give a clear sign (simulated: 3 where 2 is true)."""
    if found.verdict != CLEAR or found.detectable.get("doubling", 1.0) >= 0.5:
        return ""
    return (
        " In records this small only a large difference shows, so the true one is probably smaller: trust the "
        "lower half of the interval."
    )


def _chance(found) -> str:
    test = found.test
    if test["kind"] == "none" or not np.isfinite(test["more"]):
        return ""
    if test["arrangements"] <= 1:
        return "No other way of dealing the exposures to these batches exists, so chance cannot be weighed."
    how = (
        "the temperature log turned against the batches"
        if test["kind"] == "log turned"
        else "the exposures dealt to the batches anew"
    )
    said = f"With {how}, chance alone did as much in {in_ten(test['more'])} cases"
    if test["smallest"] > rules()["clear_chance"]:
        said += f"; so few batches could not have given less than {in_ten(test['smallest'])}"
    return said + "." + _redrawn(test)


def _redrawn(test) -> str:
    if not np.isfinite(test.get("drawn", np.nan)):
        return ""
    return (
        " With every batch drawn anew, each with its own luck, machines and seasons at their own levels, it did in "
        f"{in_ten(test['drawn'])} cases."
    )


def _interval_warning(found) -> str:
    if found.verdict == SOME:
        return "That is less than the rule asks for a clear sign."
    if found.verdict == CLEAR and found.effect["low"] <= 1:
        return "That there is harm is a clear sign; how much is not: the interval reaches down to none."
    return ""


def _could_show(found) -> str:
    if found.verdict == CLEAR or not found.detectable or not len(found.detectable["ratios"]):
        return ""
    least = found.detectable["detectable"]
    if found.verdict == NONE:
        return f"A rate {times(least)} times as high would have shown in 8 of 10 such seasons."
    why = _WHY_NOT.get(found.detectable.get("why", ""), "")
    if np.isfinite(least):
        return (
            f"Records of this size show harm in 8 of 10 seasons only where the rate is about {times(least)} "
            f"times as high{why}."
        )
    return f"Records of this size cannot be counted on to show even a very large harm{why}."


#: What the records lack to show more (`redrawn.foresee`); the design is the reason, not the eggs.
_WHY_NOT = {
    "levels": ", since the struck batches and the others lie in different machines or years",
    "few_exposed": ", since so few batches were struck",
    "few_deaths": ", since so few embryos died at all",
    "few_batches": ", since there are so few batches",
}


def _excess(found) -> str:
    if not len(found.excess):
        return ""
    total = found.excess.iloc[-1]
    below = " (below nought: fewer lost)" if min(total["excess_low"], total["chicks_low"]) < 0 else ""
    return (
        f"The exposed windows held {total['observed']:.0f} dead; unexposed ones would plausibly have held "
        f"{total['expected']:.0f}: {_compared(total['excess'])} (95 % interval {_whole(total['excess_low'])} to "
        f"{_whole(total['excess_high'])} more), or about {_whole(total['chicks_lost'])} chicks lost in the end "
        f"({_whole(total['chicks_low'])} to {_whole(total['chicks_high'])}){below}."
    )


def _whole(value) -> str:
    return f"{round(value)}".replace("-", "\u2212")


def _compared(value) -> str:
    rounded = round(value)
    if rounded == 0:
        return "as many as expected"
    return f"{abs(rounded)} {'more' if rounded > 0 else 'fewer'} than expected"


def _together(found) -> str:
    table = found.confounding
    if not len(table):
        return ""
    weak = table[
        ~table["apart"].astype(bool)
        | table["says"].str.contains("go together (", regex=False)
        | table["says"].str.contains("exactly", regex=False)
    ]
    return " ".join(weak["says"])


def _adjusted(found) -> str:
    names = {"stored_days": "days of storage", "flock_age_weeks": "age of the flock", "incubator": "incubator"}
    told = [names.get(name, name) for name in found.adjusted]
    not_told = [names.get(name, name) for name in found.not_carried]
    said = f"Allowance was made for {' and '.join(told)}." if told else ""
    if not_told:
        said += f"{' ' if said else ''}The records are too few to allow for {' and '.join(not_told)}."
    return said


#: Why a window is left out (`design.design`), as it reads after "left out".
_WHY = {
    "not counted": "because the living or the dead were not counted there",
    "the window is there twice": "because the same window is there twice",
    "length of the window not known": "because its length is not known",
    "more dead than at risk": "because more died than were alive at its start",
    "no eggs at risk": "because no egg was alive at its start",
}


def _left_out(found) -> str:
    why = found.left_out["why"].value_counts()
    if not len(why):
        return ""
    said = f"{many(len(found.left_out), 'window was', 'windows were')} left out"
    if len(why) == 1:
        return f"{said} {_WHY[why.index[0]]}."
    return f"{said}: {'; '.join(f'{count} {_WHY[text]}' for text, count in why.items())}."


def _too_few(found) -> str:
    effect, limit = found.effect, rules()
    if not effect or effect["method"] == "none":
        return ""
    if effect["exposed"] == 1:
        return (
            "Only one batch was exposed, so no test of the excursion exists; look at that batch by itself and "
            "compare it with the others."
        )
    if effect["batches"] < limit["least_batches"]:
        return f"With {many(int(effect['batches']), 'batch', 'batches')} this is a description, not a test."
    if effect["deaths"] < limit["least_deaths"]:
        return f"With {many(round(effect['deaths']), 'death', 'deaths')} this is a description, not a test."
    return ""


def _unlogged(exposure) -> str:
    unknown = int(exposure["dose"].isna().sum()) if "dose" in exposure else 0
    if not unknown:
        return ""
    return (
        f"For {unknown} of {many(len(exposure), 'window', 'windows')} too little was logged to know the dose: "
        f"{'it was' if unknown == 1 else 'they were'} neither counted as exposed nor as spared."
    )


def _late(found) -> str:
    """What stands beside the question: deaths in the window after, else from the window to the end."""
    return _right_after(found) or _to_the_end(found)


def _right_after(found) -> str:
    table = found.next_window
    if not len(table):
        return ""
    total = table.iloc[-1]
    if total["died"] <= total["high"]:
        return ""
    rows = table.iloc[:-1]
    rows = rows[rows["died"] > rows["expected"]].sort_values("chance", kind="stable")
    where = ", ".join(f"{row.died:.0f} of {row.at_risk:.0f} in batch {row.batch}" for row in rows.head(3).itertuples())
    more = f" and in {many(len(rows) - 3, 'other batch', 'other batches')}" if len(rows) > 3 else ""
    return (
        f"Looked at beside the question: {total['died']:.0f} embryos died in the window right after one with an "
        f"excursion ({where}{more}), where batches without one would lose {total['expected']:.1f}; so many or more "
        f"come by luck in {in_ten(total['chance'])} cases. Embryos killed shortly before a look can pass for alive "
        "there and be found at the next. The question as asked counts them as losses without an excursion, so it "
        "can miss such harm or make it look smaller; the verdict stays with the question as asked."
    )


def _to_the_end(found) -> str:
    table = found.later
    strong = table[(table["low"] > 1) & (table["exposed"] >= rules()["least_exposed"])]
    same = set(found.windows.loc[found.windows["low"] > 1, "name"])
    late = [name for name in strong["name"] if name not in same]
    if not late:
        return ""
    return (
        f"Looked at beside the question: batches hit in the window before {' and '.join(map(look_words, late))} "
        "lost more from then to the end, though not in that window alone; deaths can follow an excursion late."
    )


def look_words(name) -> str:
    """A look as it reads in a sentence."""
    known = {
        "candle1": "the first candling",
        "candle2": "the second candling",
        "transfer": "transfer",
        "hatch": "the take-off",
    }
    return known.get(str(name), str(name))
