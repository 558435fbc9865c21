"""What the tables of losses say, in sentences for breeders; each sentence is made here and nowhere else."""

from __future__ import annotations

import math

import pandas as pd

from hatchkit.losses.counted_words import not_compared_words
from hatchkit.losses.season_chart import FEWEST
from hatchkit.words.spelling import (
    DENOMINATORS,
    batch_count,
    batches_words,
    eggs_words,
    listed,
    named_batches,
    odds_words,
    percent,
)
from hatchkit.words.stage_names import in_words

#: Chance below which a comparison that is not called unusual is named all the same.
NEAR = 0.02


def _stage_of(eggs, stage) -> str:
    """So many eggs of a stage: "12 late dead", "1 good chick"."""
    name = in_words(stage)
    return f"{eggs_words(eggs)} {name.removesuffix('s') if eggs == 1 and name.endswith('chicks') else name}"


def bad_luck_words(table: pd.DataFrame) -> str:
    """Which batches and stages are more than bad luck, and how many comparisons that allows for."""
    own = table[table["chance"].notna()]
    lines = []
    if own.empty:
        lines.append(
            "There is no second finished batch of a species that counted the same, so a batch cannot be held against "
            "your own others."
        )
    else:
        lines += _findings(own, "", f"{_comparisons(own)} with your other batches")
        lines += _near_misses(own)
        few = own[own["others"] < 5]
        if len(few):
            kinds = few["batch"].nunique()
            lines.append(
                f"For {batch_count(kinds)} there are fewer than 5 others of the species: the expected range "
                "is wide, and little can be called unusual."
            )
    lines += not_compared_words(table.attrs.get("not_counted", {}), set(own["stage"]))
    against = table[table["norm_chance"].notna()]
    if len(against):
        lines += _findings(
            against,
            "norm_",
            f"{_comparisons(against)} with published levels ({'; '.join(against['norm_name'].unique())})",
        )
    lines.append("Unusual means: hardly chance. It does not say why.")
    return "\n".join(lines)


def _comparisons(table) -> str:
    return "1 comparison was made" if len(table) == 1 else f"{len(table)} comparisons (batches x stages) were made"


def _findings(table, before, opening) -> list[str]:
    found = table[table[before + "unusual"]]
    rare = int((table[before + "chance"] <= 0.05).sum())
    if found.empty:
        said = "none is unusual once it is allowed for how many were looked at"
        by_luck = (
            f"; {rare} would look rare alone (1 in 20), and {_by_luck(len(table) / 20)} would by luck" if rare else ""
        )
        return [f"{opening}: {said}{by_luck}."]
    lines = [f"{opening}; {len(found)} stay{'s' if len(found) == 1 else ''} unusual when that is allowed for:"]
    for row in found.sort_values(before + "chance").to_dict("records"):
        lines.append("- " + _finding(row, before))
    return lines


def _by_luck(number: float) -> str:
    # Counts are whole eggs, so fewer than 1 in 20 comparisons reach so small a chance (2.6 to 4.3 % were simulated).
    return f"up to about {number:.0f}" if number >= 0.95 else "fewer than 1"


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
    return f"batch {row['batch']}: {only}{_stage_of(row['eggs'], row['stage'])}{total}"


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
            need = f"{end:.0f} or fewer would have been called unusual"
        else:
            need = f"{end:.0f} or more would have been called unusual"
        lines.append(f"- {_finding(row, '')}; {need}")
    return [*lines, "More batches, or batches more alike, would narrow what one expects."]


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
        said + f"A pattern this strong comes by chance in {percent(together['chance'])} of cases: no sign that place "
        "mattered."
    )


def season_chart_words(table: pd.DataFrame) -> str:
    """What the season chart says of batches outside the limits and of a slow slide."""
    facts = table.attrs
    said = (
        f"{in_words(facts['stage']).capitalize()}, {facts['species']}: {percent(table['centre'].iloc[0])} of "
        f"{DENOMINATORS[facts['of']]} over {batch_count(len(table))}."
    )
    outside = table.loc[table["outside"], "batch"].tolist()
    if ((table["low"] <= 0) & (table["high"] >= 1)).all():
        said += " These few batches differ so much that no limits can be drawn."
    else:
        said += (
            f" Outside the limits: {named_batches(outside)}; worth a look, no proof: where batches differ much, 3 of "
            "10 ordinary seasons may have such a batch."
            if outside
            else " No batch lies outside the limits."
        )
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
    if facts["not_counted"]:
        said += f" Left out, because these were not counted: {named_batches(facts['not_counted'])}."
    if facts["others"]:
        kinds = [f"{kind} ({batch_count(number)}{', too few to ask for a slide' if number < FEWEST else ''})"
                 for kind, number in facts["others"].items()]  # fmt: skip
        said += f" Not in this chart: {listed(kinds)}."
    return said
