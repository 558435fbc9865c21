"""The reading of all columns of a table together: words, values and arithmetic weighed in one place.

Each column has readings with a weight (`meanings`), changed by what its cells hold (`_with_values`). The joint reading
is the one with the largest sum of weights and of `evidence.evidence`; how far the best reading lies above the best one
in which a column means something else is how sure that column is.
"""

from __future__ import annotations

import heapq
from dataclasses import dataclass, field

import numpy as np

from hatchkit.records.sheets.candidates import key_of
from hatchkit.records.sheets.evidence import evidence, fit_of
from hatchkit.records.sheets.fields import COUNTS, DATES, ONCE, USUAL, Meaning
from hatchkit.records.sheets.layout import Layout, layout_of
from hatchkit.records.sheets.ledger import Account, account

#: Readings tried for one table at most; sheets are small, and the likeliest come first.
MOST_TRIED = 240
#: A reading this far below the best (natural log of odds) is no rival.
RIVAL, SURE, LIKELY = 6.0, 3.0, 1.5
#: A class of eggs of this weight and less is a guess: no word speaks for it.
GUESSED = -1.0
#: What a reading costs in which no column says how many eggs were set, or when.
LACKS = -5.0


@dataclass(frozen=True)
class Rival:
    """Another reading of one column: what it would be, how far below the best, rows in which the eggs add up.

    ``alike``: every batch keeps its numbers under it, so that there is nothing to ask.
    """

    meaning: Meaning
    behind: float
    adds_up: int
    rows: int
    alike: bool = False


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


def best_reading(columns, choices, length: float = 21.0, need=("eggs_set", "set_at")) -> Reading:
    """The joint reading of a table of batches.

    Parameters
    ----------
    columns : list of profile.Column
    choices : list of list of Meaning
        What each column may be (`candidates.candidates`), the likeliest first.
    length : float
        Days of incubation, to tell a look from the transfer.
    need : tuple of str
        Fields without which a reading is of little use.
    """
    values = [column.values for column in columns]
    everything = [np.array([count.all_but for count in column.counts]) for column in columns]
    worked = _Worked(values, everything, [column.percents for column in columns if column.percents is not None])
    tried: list[tuple[float, tuple, Layout, Account]] = []
    best = -np.inf
    for deficit, picks, base in _in_order(choices):
        ceiling = base - deficit + 2.0 * 8 + 1.0
        if ceiling < best - RIVAL or len(tried) >= MOST_TRIED:
            break
        chosen = [options[pick] for options, pick in zip(choices, picks, strict=True)]
        scored = _score(chosen, columns, worked, length, need)
        if scored is None:
            continue
        total, layout, result = scored
        tried.append((total, picks, layout, result))
        best = max(best, total)
    if not tried:
        tried += _one_by_one(choices, lambda chosen: _score(chosen, columns, worked, length, need))
    if not _plain(tried, choices):
        _near_the_best(tried, choices, lambda chosen: _score(chosen, columns, worked, length, need))
    tried.sort(key=lambda item: -item[0])
    reading = _reading(tried, choices, columns)
    return _without_guesses(reading, tried, choices, lambda chosen: _score(chosen, columns, worked, length, need))


def _without_guesses(reading: Reading, tried: list, choices, score) -> Reading:
    """The reading less columns of eggs whose class no word tells and the sums tell in more ways than one.

    "Penoy 24" may be of clears or of dead: it is left out, its eggs are unaccounted for, and the person is asked.
    """
    picks = list(tried[0][1]) if tried else []
    for place, meaning in enumerate(reading.chosen):
        near = [rival for rival in reading.rivals[place] if rival.behind < LIKELY and rival.meaning.field in COUNTS]
        out = next((i for i, own in enumerate(choices[place]) if own.field == "ignore"), None)
        if meaning.field not in COUNTS or meaning.weight > GUESSED or not near or out is None:
            continue
        bare = [*picks[:place], out, *picks[place + 1 :]]
        scored = score([own[pick] for own, pick in zip(choices, bare, strict=True)])
        if scored is None:
            continue
        picks = bare
        guess = Rival(meaning, 0.0, reading.adds_up, reading.rows)
        reading.rivals[place] = [guess, *near]
        reading.margins[place] = 0.0
        reading.chosen[place] = choices[place][out]
        reading.total, reading.layout, result = scored
        reading.adds_up, reading.rows = _sums(result)
        reading.over = int(((result.rest < 0) | result.broken).sum())
    return reading


def _plain(tried: list, choices) -> bool:
    """Whether the words say the best reading of every column, and the eggs of every row add up under it."""
    if not tried:
        return True
    _, picks, _, result = max(tried, key=lambda item: item[0])
    adds_up, rows = _sums(result)
    return adds_up == rows > 0 and all(own[pick].weight > 0 for own, pick in zip(choices, picks, strict=True))


def _one_by_one(choices, score) -> list:
    """A joint reading to begin with where many columns would be the same thing: each takes the best that is free."""
    picks = [next((i for i, own in enumerate(options) if own.field == "ignore"), 0) for options in choices]
    best = None
    for place in sorted(range(len(choices)), key=lambda place: -choices[place][0].weight):
        for pick in range(len(choices[place])):
            some = [*picks[:place], pick, *picks[place + 1 :]]
            scored = score([own[number] for own, number in zip(choices, some, strict=True)])
            if scored is not None:
                picks, best = some, scored
                break
    return [] if best is None else [(best[0], tuple(picks), *best[1:])]


def _near_the_best(tried: list, choices, score) -> None:
    """Try each other reading of each column of the best found, and go on from a better one."""
    seen = {picks for _, picks, _, _ in tried}
    while tried and len(tried) < 2 * MOST_TRIED:
        top = max(tried, key=lambda item: item[0])
        for place, options in enumerate(choices):
            for pick in range(len(options)):
                picks = top[1][:place] + (pick,) + top[1][place + 1 :]
                if picks in seen:
                    continue
                seen.add(picks)
                scored = score([own[number] for own, number in zip(choices, picks, strict=True)])
                if scored is not None:
                    total, layout, result = scored
                    tried.append((total, picks, layout, result))
        if max(tried, key=lambda item: item[0]) is top:
            return


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


def _score(chosen, columns, worked, length, need):
    names = [meaning.field for meaning in chosen]
    once = [name for name in names if name in ONCE]
    if len(once) != len(set(once)):
        return None
    # Readings that differ in names and notes alone have one ledger.
    key = tuple(meaning if meaning.field in _OF_LEDGER else None for meaning in chosen)
    if key not in worked.known:
        worked.known[key] = worked.out(chosen, columns, length)
    if worked.known[key] is None:
        return None
    score, layout, result = worked.known[key]
    weight = sum(meaning.weight for meaning in chosen)
    weight += sum(LACKS for name in need if name not in names and not (name == "set_at" and "date" in names))
    return weight + _context(chosen, columns) + score, layout, result


#: Fields of which no account tells, though figures hang on them.
_DATED = frozenset(DATES) | {"fate", "result"}
_OF_LEDGER = frozenset(COUNTS) | {"look_at", "look_day", "fate", "weight"}


@dataclass
class _Worked:
    """Ledgers worked out on the sample of rows, each once."""

    values: list
    everything: list
    percents: list
    known: dict = field(default_factory=dict)

    def out(self, chosen, columns, length: float):
        """(evidence, layout, account) of a reading, or None if two of its columns would be the same thing."""
        layout = layout_of(chosen, columns, length)
        if layout is None:
            return None
        names = [meaning.field for meaning in chosen]
        within = any(meaning.field == "pipped" and meaning.within for meaning in chosen)
        options = []
        for pipped_within in {True, False} if "pipped" in names and ({"dis", "unhatched"} & set(names)) else {False}:
            for culled_apart in {True, False} if {"culled", "weak"} & set(names) else {False}:
                layout.pipped_within, layout.culled_apart = pipped_within, culled_apart
                result = account(layout, self.values, self.everything)
                prior = (1.0 if within else -1.0 if "dis" in names else 0.0) * (1 if pipped_within else -1)
                prior -= 0.5 * culled_apart
                weight = evidence(result, layout) + fit_of(result, self.percents) + prior
                options.append((weight, pipped_within, culled_apart, result))
        score, layout.pipped_within, layout.culled_apart, result = max(options, key=lambda option: option[0])
        return score, layout, result


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
                behind, dates = total - other_total, {reading.field, meaning.field} & _DATED
                alike = behind < LIKELY and not dates and _told(result) == _told(other)
                mine[key_of(reading)] = Rival(reading, behind, *_sums(other), alike)
        ranked = sorted(mine.values(), key=lambda rival: rival.behind)
        rivals.append([rival for rival in ranked if rival.behind < RIVAL][:4])
        margins.append(ranked[0].behind if ranked else RIVAL * 2)
    adds_up, rows = _sums(result)
    over = int(((result.rest < 0) | result.broken).sum())
    return Reading(chosen, margins, rivals, layout, adds_up, over, rows, total)


def _told(result: Account) -> tuple:
    """What an account tells of every batch: its ends, and its losses look by look."""
    ends = (result.set, result.hatched, result.dis, result.pipped, result.removed)
    found = [(name, look[name]) for look in result.looks for name in ("clear", "dead", "removed")]
    losses = [[(name, counts[i]) for name, counts in found if counts[i] > 0] for i in range(len(result.set))]
    return tuple(np.nan_to_num(values, nan=-1.0).tolist() for values in ends), losses


def _sums(result: Account) -> tuple[int, int]:
    """Rows in which the eggs add up, and rows that could be tried."""
    rows = ~np.isnan(result.set) & ~np.isnan(result.hatched)
    return int((rows & (result.rest == 0) & ~result.broken).sum()), int(rows.sum())
