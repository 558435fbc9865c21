"""The reading of all columns of a table together: words, values and arithmetic weighed in one place.

Each column has readings with a weight (`meanings`), changed by what its cells hold (`_with_values`). The joint reading
is the one with the largest sum of weights and of `evidence.evidence`; how far the best reading lies above the best one
in which a column means something else is how sure that column is.
"""

from __future__ import annotations

import heapq
from dataclasses import dataclass

import numpy as np

from hatchkit.records.sheets.fields import COUNTS, DATES, ONCE, USUAL, Meaning, key_of
from hatchkit.records.sheets.layout import Layout, layout_of
from hatchkit.records.sheets.ledger import Account, account, evidence, fit_of

#: Readings tried for one table at most; sheets are small, and the likeliest come first.
MOST_TRIED = 240
#: A reading this far below the best (natural log of odds) is no rival.
RIVAL, SURE, LIKELY = 6.0, 3.0, 1.5
#: A class of eggs of this weight and less is a guess: no word speaks for it.
GUESSED = -1.0
#: What a reading costs in which no column says how many eggs were set, or when.
LACKS = -5.0
#: What the sums can say for a reading at most; readings further below the likeliest by words alone are not tried.
MOST_EVIDENCE, MOST_BEHIND = 17.0, 22.0
_NEEDED = ("eggs_set", "set_at")


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
    adds_up, rows : int
        Rows in which the eggs add up, and rows that could be tried.
    """

    chosen: list
    margins: list
    rivals: list
    layout: Layout
    adds_up: int
    rows: int


def best_reading(columns, choices) -> Reading:
    """The joint reading of a table of batches.

    Parameters
    ----------
    columns : list of profile.Column
    choices : list of list of Meaning
        What each column may be (`candidates.candidates`), the likeliest first.
    """
    search = _Search(columns, choices)
    search.likeliest_first()
    if not search.tried:
        # Many columns would be the same thing: from none of them on, each better one.
        search.take(tuple(map(_unused, choices)))
    if not _plain(search):
        search.near_the_best()
    search.tried.sort(key=_total, reverse=True)
    return _without_guesses(_reading(search), search)


def _total(tried: tuple) -> float:
    return tried[0]


def _unused(options) -> int:
    """Which reading of a column leaves it out."""
    return next(number for number, own in enumerate(options) if own.field in ("ignore", "percent"))


class _Search:
    """Joint readings of a table: which of its readings each column takes. Those that can be are kept in `tried`.

    Each is (sum of weights and evidence, picks, layout, account). Ledgers are worked out on the sample of rows, once.
    """

    def __init__(self, columns, choices):
        self.columns, self.choices = columns, choices
        self.values = [column.values for column in columns]
        self.everything = [np.array([count.all_but for count in column.counts]) for column in columns]
        self.percents = [column.percents for column in columns if column.percents is not None]
        self.tried: list[tuple[float, tuple, Layout, Account]] = []
        self._ledgers: dict = {}

    def chosen(self, picks) -> list[Meaning]:
        """The readings of the columns by their numbers."""
        return [options[pick] for options, pick in zip(self.choices, picks, strict=True)]

    def take(self, picks: tuple) -> None:
        """Try a joint reading."""
        found = self.score(picks)
        if found is not None:
            self.tried.append(found)

    def best(self) -> tuple:
        """The best of those tried."""
        return max(self.tried, key=_total)

    def likeliest_first(self) -> None:
        """Try readings in the order of their weights, until the sums can't make a further one the best."""
        best = -np.inf
        for weight, picks in _in_order(self.choices):
            if weight + MOST_EVIDENCE < best - RIVAL or len(self.tried) >= MOST_TRIED:
                return
            self.take(picks)
            best = max(best, self.tried[-1][0]) if self.tried else best

    def near_the_best(self) -> None:
        """Try each other reading of each column of the best found, and go on from a better one."""
        seen, top = {picks for _, picks, _, _ in self.tried}, None
        while top is not self.best() and len(self.tried) < 2 * MOST_TRIED:
            top = self.best()
            for place, options in enumerate(self.choices):
                for pick in range(len(options)):
                    picks = (*top[1][:place], pick, *top[1][place + 1 :])
                    if picks not in seen:
                        seen.add(picks)
                        self.take(picks)

    def score(self, picks: tuple) -> tuple | None:
        """A joint reading with its weight and its ledger; None where two columns would be the same thing."""
        chosen = self.chosen(picks)
        names = [meaning.field for meaning in chosen]
        once = [name for name in names if name in ONCE]
        if len(once) != len(set(once)):
            return None
        # Readings that differ in names and notes alone have one ledger.
        key = tuple(meaning if meaning.field in _OF_LEDGER else None for meaning in chosen)
        if key not in self._ledgers:
            self._ledgers[key] = self._ledger(chosen)
        if self._ledgers[key] is None:
            return None
        evident, layout, result = self._ledgers[key]
        weight = sum(meaning.weight for meaning in chosen) + _context(chosen)
        weight += sum(LACKS for name in _NEEDED if name not in names and not (name == "set_at" and "date" in names))
        return weight + evident, tuple(picks), layout, result

    def _ledger(self, chosen):
        layout = layout_of(chosen, self.columns)
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
        score, layout.pipped_within, layout.culled_apart, result = max(options, key=_total)
        return score, layout, result


def _in_order(choices):
    """Joint picks in the order of their weights: (sum of weights, number of each column's reading)."""
    base = sum(options[0].weight for options in choices)
    start = tuple(0 for _ in choices)
    heap, seen, given = [(0.0, start)], {start}, 0
    while heap and given < 4000:
        deficit, picks = heapq.heappop(heap)
        given += 1
        yield base - deficit, picks
        for place, options in enumerate(choices):
            pick = picks[place]
            if pick + 1 == len(options):
                continue
            further = (*picks[:place], pick + 1, *picks[place + 1 :])
            behind = deficit + (options[pick].weight - options[pick + 1].weight)
            if behind <= MOST_BEHIND and further not in seen:
                seen.add(further)
                heapq.heappush(heap, (behind, further))


def _without_guesses(reading: Reading, search: _Search) -> Reading:
    """The reading less columns of eggs whose class no word tells and the sums tell in more ways than one.

    "Penoy 24" may be of clears or of dead: it is left out, its eggs are unaccounted for, and the person is asked.
    """
    picks = search.tried[0][1]
    for place, meaning in enumerate(reading.chosen):
        near = [rival for rival in reading.rivals[place] if rival.behind < LIKELY and rival.meaning.field in COUNTS]
        if meaning.field not in COUNTS or meaning.weight > GUESSED or not near:
            continue
        out = _unused(search.choices[place])
        scored = search.score((*picks[:place], out, *picks[place + 1 :]))
        if scored is None:
            continue
        _, picks, reading.layout, result = scored
        reading.rivals[place] = [Rival(meaning, 0.0, reading.adds_up, reading.rows), *near]
        reading.margins[place] = 0.0
        reading.chosen[place] = search.choices[place][out]
        reading.adds_up, reading.rows = _sums(result)
    return reading


def _plain(search: _Search) -> bool:
    """Whether the words say the best reading of every column, and the eggs of every row add up under it."""
    _, picks, _, result = search.best()
    adds_up, rows = _sums(result)
    return adds_up == rows > 0 and all(meaning.weight > 0 for meaning in search.chosen(picks))


#: Fields of which no account tells, though figures hang on them.
_DATED = frozenset(DATES) | {"fate", "result"}
_OF_LEDGER = frozenset(COUNTS) | {"look_at", "look_day", "fate", "weight"}


def _context(chosen) -> float:
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


def _reading(search: _Search) -> Reading:
    total, picks, layout, result = search.tried[0]
    chosen, choices = search.chosen(picks), search.choices
    margins, rivals = [], []
    for place, meaning in enumerate(chosen):
        mine: dict = {}
        for other_total, other_picks, _, other in search.tried[1:]:
            reading = choices[place][other_picks[place]]
            if not _same(reading, meaning) and key_of(reading) not in mine:
                behind, dates = total - other_total, {reading.field, meaning.field} & _DATED
                alike = behind < LIKELY and not dates and _told(result) == _told(other)
                mine[key_of(reading)] = Rival(reading, behind, *_sums(other), alike)
        ranked = sorted(mine.values(), key=lambda rival: rival.behind)
        rivals.append([rival for rival in ranked if rival.behind < RIVAL][:4])
        margins.append(ranked[0].behind if ranked else RIVAL * 2)
    adds_up, rows = _sums(result)
    return Reading(chosen, margins, rivals, layout, adds_up, rows)


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
