"""What the tables of losses say, in sentences for breeders; each sentence is made here and nowhere else."""

from __future__ import annotations

import math

import pandas as pd

from hatchkit.losses.counted_words import not_compared_words, not_counted_words
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
    range_words,
)
from hatchkit.words.stage_names import in_words

#: Chance below which a comparison that is not called unusual is named all the same.
NEAR = 0.02


def breakdown_words(table: pd.DataFrame) -> str:
    """Where most eggs went, one line a group of a breakdown by development, then what was not counted."""
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
            f"{head}: {_stage_of(chicks['eggs'], 'hatched')} from {eggs_words(eggs_set)} "
            f"egg{'' if eggs_set == 1 else 's'} set, "
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
    lines += not_counted_words(table.attrs.get("not_counted", {}), table.attrs.get("batches"))
    left = table.attrs.get("left_out", [])
    if left:
        lines.append("Left out of rates: " + "; ".join(f"batch {reason}" for reason in left) + ".")
    return "\n".join(lines) or "No batch has its eggs on record."


def _stage_of(eggs, stage) -> str:
    """So many eggs of a stage: "12 late dead", "1 good chick"."""
    name = in_words(stage)
    return f"{eggs_words(eggs)} {name.removesuffix('s') if eggs == 1 and name.endswith('chicks') else name}"


def _largest(losses: pd.DataFrame) -> str:
    if losses.empty:
        return " No egg was lost."
    worst = losses.head(3)
    said = [
        f"{in_words(stage)} {eggs_words(row['eggs'])} ({percent(row['share_of_set'])} of set)"
        for stage, row in worst.iterrows()
    ]
    missing = ""
    if "unaccounted" in worst.index:
        eggs = eggs_words(worst.loc["unaccounted", "eggs"])
        missing = (
            f" Of the {eggs} eggs not accounted for nobody can say whether they were clear, died or were taken out."
            if eggs != "1"
            else " Of the egg not accounted for nobody can say whether it was clear, died or was taken out."
        )
    return " Largest losses: " + ", ".join(said) + "." + missing


def shared_words(table: pd.DataFrame) -> str:
    """How much of a breakdown was seen and how much was shared out."""
    dead = table[
        ~table["stage"].isin(("hatched", "culled", "clear", "infertile", "pipped_dead", "removed", "unaccounted"))
    ]
    total, shared = dead["eggs"].sum(), dead["shared_out"].sum()
    if total == 0:
        return "No dead embryo was placed in a stage."
    if shared < 0.05:
        all_of_them = "The 1 dead embryo was" if total == 1 else f"All {eggs_words(total)} dead embryos were"
        return f"{all_of_them} seen to belong to one stage."
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


def clears_words(table: pd.DataFrame) -> str:
    """What the clears say of fertility, one line a group."""
    name = table.columns[0]
    lines = []
    for row in table.to_dict("records"):
        head = "All batches" if name == "season" else f"{name.replace('_', ' ').capitalize()} {row[name]}"
        others = row["uncounted_in"].split(", ") if row["uncounted_in"] else []
        if math.isnan(row["set"]):
            lines.append(
                f"{head}: the clears of {named_batches(others)} ({eggs_words(row['uncounted'])} eggs) were not "
                "counted, so nothing is known of fertility."
            )
            continue
        clear = "1 clear" if row["clear"] == 1 else f"{eggs_words(row['clear'])} clears"
        said = (
            f"{head}: {clear} among {eggs_words(row['set'])} eggs set; candled fertility "
            f"{percent(row['candled_fertile'])}, which is not fertility"
        )
        if row["opened"] > 0:
            opened = "1 clear was" if row["opened"] == 1 else f"{eggs_words(row['opened'])} clears were"
            said += (
                f". {opened} opened, {eggs_words(row['opened_dead'])} held a dead "
                f"embryo: true fertility about {percent(row['fertile'])} "
                f"({range_words(row['fertile_low'], row['fertile_high'])})"
            )
        elif row["clear"] > 0:
            said += (
                f". No clears were opened: true fertility lies between {percent(row['fertile_least'])} (all were "
                f"infertile) and {percent(row['fertile_most'])} (all had died early); open some to know"
            )
        if others:
            said += (
                f". Left out, because the clears were not counted: {named_batches(others)} "
                f"({eggs_words(row['uncounted'])} eggs)"
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
