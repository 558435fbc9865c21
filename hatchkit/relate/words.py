"""The sentences about losses and temperature, made in this one place."""

from __future__ import annotations

import numpy as np

from hatchkit.relate.verdict import CLEAR, NONE, SOME, rules

#: What the figure without statistics says under it.
SHOWS_NOT_PROVES = (
    "This picture lays losses beside temperatures. It shows, and proves nothing: whether the two go "
    "together more than chance would have it is asked below."
)
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
        f"In the {_many(exposed, 'exposed batch', 'exposed batches')} of {batches}, embryos died at "
        f"{times(effect['hazard_ratio'])} times the rate of the others "
        f"(95 % interval {times(effect['low'])} to {times(effect['high'])}), at the usual dose of the exposed "
        "windows."
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
    return said + "."


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
    if np.isfinite(least):
        return (
            f"Records of this size show harm in 8 of 10 seasons only where the rate is about {times(least)} "
            "times as high."
        )
    return "Records of this size cannot be counted on to show even a very large harm."


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
    weak = weak[~weak["says"].str.contains("do not go together", regex=False)]
    return " ".join(weak["says"])


def _adjusted(found) -> str:
    names = {"stored_days": "days of storage", "flock_age_weeks": "age of the flock", "incubator": "incubator"}
    told = [names.get(name, name) for name in found.adjusted]
    not_told = [names.get(name, name) for name in found.not_carried]
    said = f"Allowance was made for {' and '.join(told)}." if told else ""
    if not_told:
        said += f"{' ' if said else ''}The records are too few to allow for {' and '.join(not_told)}."
    return said


def _left_out(found) -> str:
    if not len(found.left_out):
        return ""
    why = found.left_out["why"].value_counts()
    return (
        f"{_many(len(found.left_out), 'window was', 'windows were')} left out "
        f"({'; '.join(f'{count}: {text}' for text, count in why.items())})."
    )


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
        return f"With {effect['batches']} batches this is a description, not a test."
    if effect["deaths"] < limit["least_deaths"]:
        return f"With {effect['deaths']:.0f} deaths this is a description, not a test."
    return ""


def _unlogged(exposure) -> str:
    unknown = int(exposure["dose"].isna().sum()) if "dose" in exposure else 0
    if not unknown:
        return ""
    return (
        f"For {unknown} of {len(exposure)} windows too little was logged to know the dose: "
        f"they were neither counted as exposed nor as spared."
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
    more = f" and in {_many(len(rows) - 3, 'other batch', 'other batches')}" if len(rows) > 3 else ""
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
        f"Looked at beside the question: batches hit in the window before {' and '.join(map(_look, late))} "
        "lost more from then to the end, though not in that window alone; deaths can follow an excursion late."
    )


def _look(name) -> str:
    known = {
        "candle1": "the first candling",
        "candle2": "the second candling",
        "transfer": "transfer",
        "hatch": "the take-off",
    }
    return known.get(str(name), str(name))


def _many(count, one, more) -> str:
    return f"{count} {one if count == 1 else more}"


def one_batch_in_words(found) -> str:
    """Short verdict on one batch, its sureness, and what else was different.

    Parameters
    ----------
    found : OneBatch
    """
    parts = [f"Batch {found.batch}: {found.verdict}."]
    hit = found.windows[found.windows["part"] == "with excursion"]
    if len(hit):
        parts.append(
            f"In the {_many(len(hit), 'window', 'windows')} with the excursion {hit['died'].sum():.0f} of "
            f"{hit['at_risk'].iloc[0]:.0f} embryos died; {_many(found.others, 'other batch', 'other batches')} "
            f"would lead one to expect {hit['expected'].sum():.1f}. So many or more come by luck in "
            f"{in_ten(found.chance)} such batches."
        )
        after = found.windows[found.windows["part"] == "after"]
        high = after[after["chance"] <= rules()["clear_chance"]]
        if len(high):
            parts.append(
                f"A later window also held more than usual (before {' and '.join(_look(n) for n in high['name'])})."
            )
        from hatchkit.relate.one_batch import FEW_OTHERS

        if found.others < FEW_OTHERS:
            parts.append(
                f"With only {found.others} to compare with, this leans on the losses of other people's flocks."
            )
    counts = dict(zip(found.ages["when"], found.ages["dead"], strict=True))
    if sum(counts.values()):
        parts.append(
            f"Of its dead, {counts['on or after']:.0f} died on or after the day of the excursion, "
            f"{counts['before']:.0f} before it, and for {counts['may be either']:.0f} the records leave it open."
        )
    parts += found.besides
    return " ".join(parts)


def hazard_alt(found) -> str:
    """Alt text of the figure of hazard ratios by window."""
    rows = found.windows[found.windows["hazard_ratio"].notna()]
    if rows.empty:
        return "Rate of death in exposed windows compared with the others: no window can be compared."
    said = [
        f"{_look(row.name_)}: {times(row.hazard_ratio)} ({times(row.low)} to {times(row.high)})"
        for row in rows.rename(columns={"name": "name_"}).itertuples()
    ]
    return (
        "Rate of death in exposed windows as a multiple of the rate in others, with 95 % intervals, by the look "
        "that "
        f"closes the window. {'; '.join(said)}."
    )


def dose_alt(found) -> str:
    """Alt text of the figure of each batch's losses against its dose."""
    table = found.batches
    hit = table[table["exposed"].astype(bool)] if len(table) else table
    above = int((hit["share_died"] > hit["share_expected_high"]).sum()) if len(hit) else 0
    return (
        f"Share of embryos lost in each of {_many(len(table), 'batch', 'batches')} against its dose of heat "
        "and cold: "
        f"{len(hit)} exposed, of which {above} lost more than unexposed batches plausibly would."
    )


def exposure_alt(exposure) -> str:
    """Alt text of the plain figure of losses beside exposure."""
    known = exposure[exposure["share_logged"] > 0]
    return (
        f"Deaths in each of {len(exposure)} windows of "
        f"{_many(exposure['batch'].nunique(), 'batch', 'batches')} beside the "
        f"degree-hours that the eggs were too warm or too cold; {len(exposure) - len(known)} windows have no log."
    )
