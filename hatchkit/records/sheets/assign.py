"""The reading of all columns of a table together: words, values and arithmetic weighed in one place.

Each column has readings with a weight (`meanings`), changed by what its cells hold (`_with_values`). The joint reading
is the one with the largest sum of weights and of `ledger.evidence`; how far the best reading lies above the best one
in which a column means something else is how sure that column is.
"""

from __future__ import annotations

import heapq
from dataclasses import dataclass, replace

import numpy as np

from hatchkit.records.sheets.ledger import Account, Layout, account, evidence, layout_of
from hatchkit.records.sheets.meanings import (
    COUNTS,
    DATES,
    ONCE,
    PLAIN,
    POSSIBLE,
    USUAL,
    Look,
    Meaning,
    meanings,
)

#: Readings tried for one table at most; sheets are small, and the likeliest come first.
MOST_TRIED = 240
#: A reading this far below the best (natural log of odds) is no rival.
RIVAL, SURE, LIKELY = 6.0, 3.0, 1.5
#: What a column costs that words or values name but the reading leaves out, and what an unknown one costs.
LEFT_OUT, UNKNOWN_OUT = -1.0, 0.0
#: What a reading costs in which no column says how many eggs were set, or when.
LACKS = -2.5


@dataclass(frozen=True)
class Rival:
    """Another reading of one column: what it would be, how far below the best, rows in which the eggs add up."""

    meaning: Meaning
    behind: float
    adds_up: int
    rows: int


@dataclass
class Reading:
    """The best joint reading of a table.

    Attributes
    ----------
    chosen : list of Meaning
        One per column.
    margins : list of float
        Log of odds by which each column's reading beats its best rival.
    rivals : list of list of Rival
    layout : Layout
    adds_up, over, rows : int
        Rows in which the eggs add up, in which there are too many, and rows that could be tried.
    total : float
    """

    chosen: list
    margins: list
    rivals: list
    layout: Layout
    adds_up: int
    over: int
    rows: int
    total: float


def candidates(column, language, fixed: str | None = None) -> list[Meaning]:
    """What a column may be: its words' readings that its values allow, and what the values alone suggest."""
    if fixed is not None:
        return [_fixed(fixed)]
    named = meanings(column.heading, column.group, language)
    if not column.filled:
        return (
            [*named[:1], Meaning("ignore", weight=0.0)]
            if named and named[0].weight >= PLAIN
            else [Meaning("ignore", weight=0.0)]
        )
    kept = [meaning for meaning in (_with_values(meaning, column) for meaning in named) if meaning is not None]
    found = {(m.field, m.look, m.within): m for m in reversed(kept)}
    for extra in _by_values(column, bool(named)):
        if extra.field not in {m.field for m in kept}:
            found.setdefault((extra.field, extra.look, extra.within), extra)
    if "ignore" not in {key[0] for key in found} and "percent" not in {key[0] for key in found}:
        found["ignore", Look(), False] = Meaning("ignore", weight=LEFT_OUT if kept else UNKNOWN_OUT)
    return sorted(found.values(), key=lambda meaning: -meaning.weight)


def _fixed(name: str) -> Meaning:
    """The reading that a person confirmed, as `key_of` spells it."""
    bare, _, look = name.partition("@")
    within = bare.endswith("~within")
    bare = bare.removesuffix("~within")
    day = order = None
    transfer = "transfer" in look
    for part in look.split("+"):
        if part.startswith("day"):
            day = int(part[3:])
        elif part.startswith("look"):
            order = int(part[4:])
    return Meaning(bare, Look(day, order, transfer), 20.0, within)


def key_of(meaning: Meaning) -> str:
    """A reading as one word that answers.toml can keep: "dead@day7", "left@transfer", "pipped~within"."""
    look = "+".join(
        filter(
            None,
            (
                f"day{meaning.look.day}" if meaning.look.day is not None else "",
                f"look{meaning.look.order}" if meaning.look.order is not None else "",
                "transfer" if meaning.look.transfer else "",
            ),
        )
    )
    return meaning.field + ("~within" if meaning.within else "") + (f"@{look}" if look else "")


def _with_values(meaning: Meaning, column) -> Meaning | None:
    """The reading with its weight changed by what the cells hold; None if they rule it out."""
    name, weight = meaning.field, meaning.weight
    if name in COUNTS:
        if column.share_count < 0.5:
            return None
        weight += 0.5 * (column.share_count - 1.0)
        if name == "hatched" and column.place == 0:
            weight -= 1.0
        if column.running:
            weight -= 3.0
        if (
            name == "eggs_set"
            and np.nanmax(np.append(column.values, 0)) <= 1
            or name == "eggs_set"
            and _all_texts(column)
        ):
            weight -= 3.0
    elif name in DATES:
        if column.share_date < 0.5:
            return None
        weight += 0.5 if name != "date" else 0.0
    elif name == "look_day":
        if column.share_count < 0.5 or np.nanmax(np.append(column.values, 0)) > 45:
            return None
    elif name == "fate":
        if column.share_fate < 0.6:
            return None
        weight += 1.0
    elif name == "batch":
        if column.share_date > 0.8:
            if column.mean_length > 6 or weight < POSSIBLE:
                return None
            weight -= 1.0
        weight += 0.5 if column.running or column.share_text > 0.5 else 0.0
        weight += 0.5 * (column.distinct - 0.5)
        if column.share_fraction > 0.3:
            return None
    elif name in ("egg", "tray"):
        if column.share_date > 0.5 or column.share_fraction > 0.5:
            return None
        weight += 0.5 if column.running else 0.0
    elif name in (
        "breed",
        "species",
        "pen",
        "keeper",
        "notes",
        "what",
        "incubator",
        "hatcher",
        "result",
        "signs",
        "place",
    ):
        if column.share_date > 0.5:
            return None
        if column.share_text < 0.5:
            weight -= 3.0 if name in ("breed", "species", "what", "notes", "signs") else 0.8
        if name in ("breed", "species"):
            weight += 1.0 if column.birds > 0.5 else -0.5
        if name == "what" and tells_steps(column):
            weight += 4.0
        elif name in ("what", "notes", "pen", "place") and column.birds > 0.5:
            weight -= 2.0
        if name == "result" and column.share_fate > 0.6:
            weight += 1.0
    elif name in ("weight", "stored_days", "flock_age_weeks", "temperature", "humidity"):
        if (
            column.share_date > 0.5
            or column.share_text > 0.5
            and column.share_count < 0.5
            and name not in ("stored_days", "flock_age_weeks")
        ):
            return None
    return replace(meaning, weight=weight)


def tells_steps(column) -> bool:
    """Whether a column names steps of the work rather than what became of single eggs."""
    return (
        column.events > 0.5
        and column.share_fate < 0.6
        or column.sets > 0.05
        and column.events + column.share_fate > 0.6
    )


def _all_texts(column) -> bool:
    return column.share_text > 0.8


def _by_values(column, named: bool) -> list[Meaning]:
    """What the cells alone suggest; weaker where words say something else."""
    step = -2.0 if named else 0.0
    found = []
    if column.share_date >= 0.7:
        found += [
            Meaning("set_at", weight=-0.5 + step),
            Meaning("hatch_at", weight=-1.0 + step),
            Meaning("look_at", weight=-2.0 + step),
        ]
    elif column.birds >= 0.6:
        found += [Meaning("breed", weight=USUAL + 0.5 * step)]
    elif tells_steps(column):
        found += [Meaning("what", weight=USUAL)]
    elif column.share_fate >= 0.7 and column.share_text > 0.7 and column.mean_length < 25:
        found += [Meaning("fate", weight=POSSIBLE)]
    elif column.share_count >= 0.8 and not column.share_fraction:
        if column.running:
            found += [Meaning("batch", weight=0.5 + step)]
        if not named:
            found += [Meaning(name, weight=-3.0) for name in ("eggs_set", "hatched", "clear", "dis")]
            found += [Meaning("dead", weight=-3.0), Meaning("left", weight=-3.5)]
        elif column.place == 0:
            found += [Meaning("batch", weight=-1.0)]
    elif column.share_text >= 0.6:
        first = column.place == 0
        found += [
            Meaning("batch", weight=(0.5 if first else -2.0) + step),
            Meaning("notes", weight=(0.4 if column.mean_length > 12 else -0.5) + step),
        ]
    return found


def best_reading(
    columns, language, fixed: dict | None = None, length: float = 21.0, need=("eggs_set", "set_at")
) -> Reading:
    """The joint reading of a table of batches.

    Parameters
    ----------
    columns : list of profile.Column
    language : str or None
    fixed : dict, optional
        Heading -> reading that a person confirmed.
    length : float
        Days of incubation, to tell a look from the transfer.
    need : tuple of str
        Fields without which a reading is of little use.
    """
    fixed = fixed or {}
    choices = [candidates(column, language, fixed.get(column.heading)) for column in columns]
    values = [column.values for column in columns]
    everything = [np.array([count.code == "all" for count in column.counts], dtype=bool) for column in columns]
    tried: list[tuple[float, tuple, Layout, Account]] = []
    best = -np.inf
    for deficit, picks, base in _in_order(choices):
        ceiling = base - deficit + 2.0 * 8 + 1.0
        if ceiling < best - RIVAL or len(tried) >= MOST_TRIED:
            break
        chosen = [options[pick] for options, pick in zip(choices, picks, strict=True)]
        scored = _score(chosen, columns, values, everything, length, need)
        if scored is None:
            continue
        total, layout, result = scored
        tried.append((total, picks, layout, result))
        best = max(best, total)
    tried.sort(key=lambda item: -item[0])
    return _reading(tried, choices, columns)


def _in_order(choices):
    """Joint picks in the order of their weights: (how far below the best, index of each column's reading, best sum)."""
    base = sum(options[0].weight for options in choices)
    start = tuple(0 for _ in choices)
    heap, seen, given = [(0.0, start)], {start}, 0
    while heap and given < 4000:
        deficit, picks = heapq.heappop(heap)
        given += 1
        yield deficit, picks, base
        for place, pick in enumerate(picks):
            options = choices[place]
            if pick + 1 < len(options):
                step = options[pick].weight - options[pick + 1].weight
                if deficit + step > 22.0:
                    continue
                further = picks[:place] + (pick + 1,) + picks[place + 1 :]
                if further not in seen:
                    seen.add(further)
                    heapq.heappush(heap, (deficit + step, further))


def _score(chosen, columns, values, everything, length, need):
    names = [meaning.field for meaning in chosen]
    once = [name for name in names if name in ONCE]
    if len(once) != len(set(once)):
        return None
    layout = layout_of(chosen, columns, length)
    if layout is None:
        return None
    weight = sum(meaning.weight for meaning in chosen)
    weight += sum(LACKS for name in need if name not in names and not (name == "set_at" and "date" in names))
    weight += _context(chosen, columns)
    within = any(meaning.field == "pipped" and meaning.within for meaning in chosen)
    options = []
    for pipped_within in {True, False} if "pipped" in names and ({"dis", "unhatched"} & set(names)) else {False}:
        for culled_apart in {True, False} if {"culled", "weak"} & set(names) else {False}:
            layout.pipped_within, layout.culled_apart = pipped_within, culled_apart
            result = account(layout, values, everything)
            prior = (1.0 if within else -1.0 if "dis" in names else 0.0) * (1 if pipped_within else -1)
            prior -= 0.5 * culled_apart
            options.append((evidence(result, layout) + prior, pipped_within, culled_apart, result))
    score, layout.pipped_within, layout.culled_apart, result = max(options, key=lambda option: option[0])
    return weight + score, layout, result


def _context(chosen, columns) -> float:
    """What the order of columns says: a look's date comes before its losses, dead after the hatch are dead in shell."""
    score, seen_hatched, seen_set = 0.0, False, False
    for meaning in chosen:
        name = meaning.field
        if name in ("dead", "left") and not meaning.look and seen_hatched:
            score -= 2.5
        if name == "dis" and seen_hatched and meaning.weight < USUAL:
            score += 1.0
        if name in ("clear", "dead", "hatched") and not seen_set:
            score -= 0.2
        seen_hatched |= name == "hatched"
        seen_set |= name in ("eggs_set", "set_at")
    names = [meaning.field for meaning in chosen]
    if "set_at" in names and "hatch_at" in names and names.index("hatch_at") < names.index("set_at"):
        score -= 1.0
    return score


def _same(one: Meaning, other: Meaning) -> bool:
    unused = {"ignore", "percent", "due", "laid_at", "notes"}
    if {one.field, other.field} == {"date", "set_at"}:
        return True
    return one.field == other.field and one.look == other.look or one.field in unused and other.field in unused


def _reading(tried, choices, columns) -> Reading:
    if not tried:
        chosen = [Meaning("ignore", weight=0.0) for _ in columns]
        return Reading(chosen, [0.0] * len(columns), [[] for _ in columns], Layout([], {}), 0, 0, 0, 0.0)
    total, picks, layout, result = tried[0]
    chosen = [options[pick] for options, pick in zip(choices, picks, strict=True)]
    margins, rivals = [], []
    for place, meaning in enumerate(chosen):
        mine: dict = {}
        for other_total, other_picks, _, other in tried[1:]:
            reading = choices[place][other_picks[place]]
            if not _same(reading, meaning) and key_of(reading) not in mine:
                mine[key_of(reading)] = Rival(reading, total - other_total, *_sums(other))
        ranked = sorted(mine.values(), key=lambda rival: rival.behind)
        rivals.append([rival for rival in ranked if rival.behind < RIVAL][:4])
        margins.append(ranked[0].behind if ranked else RIVAL * 2)
    adds_up, rows = _sums(result)
    over = int(((result.rest < 0) | result.broken).sum())
    return Reading(chosen, margins, rivals, layout, adds_up, over, rows, total)


def _sums(result: Account) -> tuple[int, int]:
    """Rows in which the eggs add up, and rows that could be tried."""
    rows = ~np.isnan(result.set) & ~np.isnan(result.hatched)
    return int((rows & (result.rest == 0) & ~result.broken).sum()), int(rows.sum())
