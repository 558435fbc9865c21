"""What the ages at death say, in sentences for breeders."""

from __future__ import annotations

from hatchkit.words.spelling import batch_count, day_words, eggs_words, percent, range_words


def age_words(result) -> str:
    """What an `AgeAtDeath` says, one line a group."""
    lines = []
    for fit in result.fits.to_dict("records"):
        who = f"{fit['species']}" + ("" if fit["group"] == "all" else f", {fit['group']}")
        curve = result.curve[(result.curve["group"] == fit["group"]) & (result.curve["species"] == fit["species"])]
        if fit["deaths"] == 0:
            lines.append(
                f"{who}: none of {eggs_words(fit['eggs'])} living embryos in {batch_count(fit['batches'])} died; up to "
                f"{percent(curve['band_high'].max())} lost would still agree with that."
            )
            continue
        end = curve.iloc[-1]
        said = (
            f"{who}: {eggs_words(fit['deaths'])} of {eggs_words(fit['eggs'])} living embryos in "
            f"{batch_count(fit['batches'])} died, {percent(end['at_least'])} "
            f"(95 % band {range_words(end['band_low'], end['band_high'])})."
            + _taken_out(fit, end["at_least"])
            + _unknown(fit)
        )
        lines.append(
            said
            + _first_look(result, fit)
            + _widest(result, fit)
            + (" One batch only: the band knows nothing of the spread between batches." if fit["batches"] == 1 else "")
        )
    if not lines:
        return "No egg with a known end yet, so nothing can be said of ages at death."
    last = (
        "Day 0 is the hour of setting. Deaths known only roughly are placed where better-known ones fell. "
        "Clears are not counted: some of them died in the first days."
    )
    return "\n".join([*lines, last])


def _taken_out(fit, share) -> str:
    """Why the share is not that of the two counts, where eggs were taken out alive on the way."""
    if not fit["removed"] or percent(share) == percent(fit["deaths"] / fit["eggs"]):
        return ""
    dead, eggs = eggs_words(fit["deaths"]), eggs_words(fit["eggs"])
    gone = "1 was" if fit["removed"] == 1 else f"{eggs_words(fit['removed'])} were"
    return (
        f" Of the {eggs}, {gone} taken out alive on the way and can tell of the days before only, so the share is not "
        f"plainly {dead} of {eggs}."
    )


def _unknown(fit) -> str:
    """How far the eggs that nobody can account for could raise the share, where that shows."""
    lost = fit["unaccounted"]
    most = (fit["deaths"] + lost) / (fit["eggs"] + lost)
    if not lost or percent(most) == percent(fit["deaths"] / fit["eggs"]):
        return ""
    which = f"{eggs_words(lost)} egg{'' if lost == 1 else 's'} not accounted for"
    return f" Left out: {which}; had {'it' if lost == 1 else 'they all'} died, {percent(most)} would be lost."


def _of(table, fit):
    return table[(table["group"] == fit["group"]) & (table["species"] == fit["species"])]


def _first_look(result, fit) -> str:
    hazard = _of(result.hazard, fit)
    if len(hazard) < 2:
        return ""
    worst = hazard.loc[hazard["daily_high"].idxmax()]
    exact = worst["daily_high"] - worst["daily_low"] <= 5e-4
    risk = "about " + percent(worst["daily_high"]) if exact else range_words(worst["daily_low"], worst["daily_high"])
    stretch = f"between day {worst['after_day']:.0f} and day {worst['by_day']:.0f}"
    band = f"{risk} a day (95 % band {range_words(worst['band_low'], worst['band_high'])})"
    if worst["band_low"] > hazard.drop(index=worst.name)["band_high"].max():
        return f" The daily risk is highest {stretch}: {band}."
    return f" The highest daily risk seen was {band}, {stretch}; other stretches may be as high."


def _widest(result, fit) -> str:
    table = _of(result.table, fit)
    wide = table[(table["share"] > 0.002) & (table["by_day"] - table["after_day"] > 3)]
    if wide.empty:
        return ""
    spans = ", ".join(
        f"{day_words(row['after_day'])} and {day_words(row['by_day'])}" for row in wide.to_dict("records")
    )
    return f" Between days {spans} the looks cannot tell on which day they died."
