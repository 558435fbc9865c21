"""What the tables of losses say, in sentences for breeders; each sentence is made here and nowhere else."""

from __future__ import annotations

import math

import pandas as pd

from hatchkit.losses.spelling import (
    DENOMINATORS,
    batches_words,
    day_words,
    eggs_words,
    odds_words,
    percent,
    range_words,
)
from hatchkit.stage_names import in_words

#: Chance below which a comparison that is not called unusual is named all the same.
NEAR = 0.02


def breakdown_words(table: pd.DataFrame) -> str:
    """Where most eggs went, one line a group of a breakdown by development."""
    name = table.columns[0]
    lines = []
    for group, part in table.groupby(name, sort=False):
        part = part.set_index("stage")
        head = "All batches" if name == "season" else f"{name.replace('_', ' ').capitalize()} {group}"
        if part["share_of_set"].isna().all():
            lines.append(f"{head}: left out of rates.")
            continue
        chicks, eggs_set = part.loc["hatched"], part["set"].iloc[0]
        losses = part.drop(index=["hatched"]).query("eggs > 0").sort_values("eggs", ascending=False)
        lines.append(
            f"{head}: {eggs_words(chicks['eggs'])} good chicks from {eggs_words(eggs_set)} eggs set, "
            f"{percent(chicks['share_of_set'])} (95 % interval "
            f"{range_words(chicks['share_of_set_low'], chicks['share_of_set_high'])})"
            + (
                f", {percent(chicks['share_of_fertile'])} of eggs not clear or infertile"
                if chicks["fertile"] > 0
                else ""
            )
            + "."
            + _largest(losses)
        )
    left = table.attrs.get("left_out", [])
    if left:
        lines.append("Left out of rates: " + "; ".join(f"batch {reason}" for reason in left) + ".")
    return "\n".join(lines) or "No batch has its eggs on record."


def _largest(losses: pd.DataFrame) -> str:
    if losses.empty:
        return " No egg was lost."
    said = [
        f"{in_words(stage)} {eggs_words(row['eggs'])} ({percent(row['share_of_set'])} of set)"
        for stage, row in losses.head(3).iterrows()
    ]
    return " Largest losses: " + ", ".join(said) + "."


def shared_words(table: pd.DataFrame) -> str:
    """How much of a breakdown was seen and how much was shared out."""
    dead = table[
        ~table["stage"].isin(("hatched", "culled", "clear", "infertile", "pipped_dead", "removed", "unaccounted"))
    ]
    total, shared = dead["eggs"].sum(), dead["shared_out"].sum()
    if total == 0:
        return "No dead embryo was placed in a stage."
    if shared < 0.05:
        return f"All {eggs_words(total)} dead embryos were seen to belong to one stage."
    return (
        f"Of {eggs_words(total)} dead embryos, {eggs_words(total - shared)} were seen to belong to one stage; "
        f"{eggs_words(shared)} died between two looks on either side of a limit and were shared out by the ages "
        "at death of the season (the published course of deaths, fitted to your counts)."
    )


def bad_luck_words(table: pd.DataFrame) -> str:
    """Which batches and stages are more than bad luck, and how many comparisons that allows for."""
    own = table[table["chance"].notna()]
    lines = []
    if own.empty:
        lines.append(
            "There is no second finished batch of a species, so a batch cannot be held against your own others."
        )
    else:
        lines += _findings(own, "", f"{len(own)} comparisons (batches x stages) with your other batches were made")
        lines += _near_misses(own)
        few = own[own["others"] < 5]
        if len(few):
            kinds = few["batch"].nunique()
            lines.append(
                f"For {kinds} of the batches there are fewer than 5 others of the species: their expected range "
                "is wide, and little can be called unusual."
            )
    against = table[table["norm_chance"].notna()]
    if len(against):
        lines += _findings(
            against,
            "norm_",
            f"{len(against)} comparisons with published levels were made ({'; '.join(against['norm_name'].unique())})",
        )
    lines.append("Unusual means: hardly chance. It does not say why.")
    return "\n".join(lines)


def _findings(table, before, opening) -> list[str]:
    found = table[table[before + "unusual"]]
    rare = int((table[before + "chance"] <= 0.05).sum())
    if found.empty:
        said = "none is unusual once it is allowed for how many were looked at"
        by_luck = (
            f"; {rare} would look rare alone (1 in 20), and about {len(table) / 20:.0f} would by luck"
            if rare
            else ""
        )
        return [f"{opening}: {said}{by_luck}."]
    lines = [f"{opening}; {len(found)} stay{'s' if len(found) == 1 else ''} unusual when that is allowed for:"]
    for row in found.sort_values(before + "chance").to_dict("records"):
        lines.append("- " + _finding(row, before))
    return lines


def _finding(row: dict, before: str) -> str:
    chicks = row["stage"] == "hatched"
    where = "by your other batches"
    if before:
        level = f"{percent(row['norm_share'])} of {DENOMINATORS[row['norm_of']]}"
        own = row["norm_name"] == "your own level"
        where = f"at your own level of {level}" if own else f"at the level of {level} ({row['norm_name']})"
    return (
        f"{_counted(row, not before)}; {where} one expects {row[before + 'low']:.0f} to {row[before + 'high']:.0f}; "
        f"so {'few' if chicks else 'many'} come by luck {batches_words(row[before + 'chance'])}"
    )


def _counted(row: dict, with_total: bool = True) -> str:
    only = "only " if row["stage"] == "hatched" else ""
    total = f" of {eggs_words(row['out_of'])}" if with_total else ""
    return f"batch {row['batch']}: {only}{eggs_words(row['eggs'])} {in_words(row['stage'])}{total}"


def _near_misses(table) -> list[str]:
    """What looks rare alone but is not called unusual, and what it would have taken."""
    near = table[~table["unusual"] & (table["chance"] <= NEAR)].sort_values("chance").head(3)
    if near.empty:
        return []
    lines = ["Rare alone, but not called unusual among so many comparisons:"]
    for row in near.to_dict("records"):
        end = row["unusual_from"]
        if math.isnan(end):
            need = "no count could have been, with so few other batches that differ so much"
        elif row["stage"] == "hatched":
            need = f"that would have taken {end:.0f} or fewer"
        else:
            need = f"that would have taken {end:.0f} or more"
        lines.append(f"- {_finding(row, '')}; {need}")
    return [*lines, "More batches, or batches more alike, would narrow what one expects."]


def clears_words(table: pd.DataFrame) -> str:
    """What the clears say of fertility, one line a group."""
    name = table.columns[0]
    lines = []
    for row in table.to_dict("records"):
        head = "All batches" if name == "season" else f"{name.replace('_', ' ').capitalize()} {row[name]}"
        said = (
            f"{head}: {eggs_words(row['clear'])} clears among {eggs_words(row['set'])} eggs set; candled fertility "
            f"{percent(row['candled_fertile'])}, which is not fertility"
        )
        if row["opened"] > 0:
            said += (
                f". {eggs_words(row['opened'])} clears were opened, {eggs_words(row['opened_dead'])} held a dead "
                f"embryo: true fertility about {percent(row['fertile'])} "
                f"({range_words(row['fertile_low'], row['fertile_high'])})"
            )
        elif row["clear"] > 0:
            said += (
                f". No clears were opened: true fertility lies between {percent(row['fertile_least'])} (all were "
                f"infertile) and {percent(row['fertile_most'])} (all had died early); open some to know"
            )
        lines.append(said + ".")
    return "\n".join(lines)


def tray_words(table: pd.DataFrame) -> str:
    """What the tests of places say."""
    if table.empty and table.attrs.get("places") == 0:
        return (
            "No places were kept for these eggs (a row and a place in the row for each egg), so the tray cannot be "
            "asked where the dead lay."
        )
    if table.empty:
        return "Too few dead embryos with a place on a tray (at least 2 are needed) to ask where they lay."
    rows = table.set_index("question")
    eggs, deaths, trays = (int(rows.iloc[0][name]) for name in ("eggs", "deaths", "trays"))
    together, near, edge = rows.loc["together"], rows.loc["neighbours"], rows.loc["edge"]
    said = (
        f"{deaths} dead among {eggs} eggs on {trays} tray{'s' if trays > 1 else ''}: "
        f"{near['seen']:.0f} pairs of touching dead ({near['expected']:.1f} expected if place does not matter), "
        f"{percent(edge['seen'])} of the dead at the edge ({percent(edge['expected'])} expected). "
    )
    if together["smallest"] > 0.05:
        return said + "With so few deaths no pattern could have been told from chance."
    if together["chance"] <= 0.05:
        which = (
            "lie together"
            if near["chance"] <= edge["chance"]
            else ("lie at the edge" if edge["seen"] > edge["expected"] else "lie in the middle")
        )
        return said + (
            f"The dead {which} more than chance would have it ({odds_words(together['chance'])}); eggs of one hen "
            "often lie together too, so look at both."
        )
    return (
        said
        + f"A pattern this strong comes by chance in {percent(together['chance'])} of cases: no sign that place "
        "mattered."
    )


def season_chart_words(table: pd.DataFrame) -> str:
    """What the season chart says of batches outside the limits and of a slow slide."""
    facts = table.attrs
    said = (
        f"{in_words(facts['stage']).capitalize()}, {facts['species']}: {percent(table['centre'].iloc[0])} of "
        f"{DENOMINATORS[facts['of']]} over {len(table)} batches."
    )
    outside = table.loc[table["outside"], "batch"].tolist()
    said += f" Outside the limits: batch {', '.join(outside)}." if outside else " No batch lies outside the limits."
    chance = facts["slide_chance"]
    if math.isnan(chance):
        said += " Too few batches to ask for a slide."
    elif chance <= 0.05:
        way = "rise" if facts["slide"] > 0 else "fall"
        said += f" They {way} through the season; by chance alone {odds_words(chance)}."
    else:
        said += " No slide through the season that could be told from chance."
    if facts["provisional"]:
        said += " Limits are provisional: fewer than 20 batches."
    return said


def age_words(result) -> str:
    """What an `AgeAtDeath` says, one line a group."""
    lines = []
    for fit in result.fits.to_dict("records"):
        who = f"{fit['species']}" + ("" if fit["group"] == "all" else f", {fit['group']}")
        curve = result.curve[(result.curve["group"] == fit["group"]) & (result.curve["species"] == fit["species"])]
        if fit["deaths"] == 0:
            lines.append(
                f"{who}: none of {eggs_words(fit['eggs'])} living embryos in {fit['batches']} batches died; up to "
                f"{percent(curve['band_high'].max())} lost would still agree with that."
            )
            continue
        end = curve.iloc[-1]
        said = (
            f"{who}: {eggs_words(fit['deaths'])} of {eggs_words(fit['eggs'])} living embryos in {fit['batches']} "
            f"batch{'es' if fit['batches'] > 1 else ''} died, {percent(end['at_least'])} "
            f"(95 % band {range_words(end['band_low'], end['band_high'])})."
        )
        lines.append(
            said
            + _first_look(result, fit)
            + _widest(result, fit)
            + (
                " One batch only: the band knows nothing of the spread between batches."
                if fit["batches"] == 1
                else ""
            )
        )
    if not lines:
        return "No egg with a known end yet, so nothing can be said of ages at death."
    last = (
        "Day 0 is the hour of setting. Deaths known only roughly are placed where better-known ones fell. "
        "Clears are not counted: some of them died in the first days."
    )
    return "\n".join([*lines, last])


def _of(table, fit):
    return table[(table["group"] == fit["group"]) & (table["species"] == fit["species"])]


def _first_look(result, fit) -> str:
    hazard = _of(result.hazard, fit)
    if len(hazard) < 2:
        return ""
    worst = hazard.loc[hazard["daily_high"].idxmax()]
    exact = worst["daily_high"] - worst["daily_low"] <= 5e-4
    risk = (
        "about " + percent(worst["daily_high"]) if exact else range_words(worst["daily_low"], worst["daily_high"])
    )
    stretch = f"between day {worst['after_day']:.0f} and day {worst['by_day']:.0f}"
    return f" The daily risk is highest {stretch}: {risk} a day."


def _widest(result, fit) -> str:
    table = _of(result.table, fit)
    wide = table[(table["share"] > 0.002) & (table["by_day"] - table["after_day"] > 3)]
    if wide.empty:
        return ""
    spans = ", ".join(
        f"{day_words(row['after_day'])} and {day_words(row['by_day'])}" for row in wide.to_dict("records")
    )
    return f" Between days {spans} the looks cannot tell on which day they died."


def two_phase_words(fit) -> str:
    """What a fitted two-phase shape says, and how far it is from the counts (ages on the hen's 21 days)."""
    first, k1, s1, k2, s2 = fit.shape
    middle = [scale * math.log(2) ** (1 / power) for power, scale in ((k1, s1), (k2, s2))]
    return (
        f"Two-phase shape: {percent(first)} of the deaths early (half of these by day {middle[0]:.1f}), "
        f"{percent(1 - first)} late (half of these by day {middle[1]:.1f}), on the hen's scale of 21 days. "
        f"At no age is it more than {fit.largest_miss:.1f} deaths away from the estimate without a shape."
    )
