"""Is 03/04 the third of April or the fourth of March? One decision for a sheet, or for all files of a logger."""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np

from hatchkit.records.times.forms import FIRST_YEAR, LAST_YEAR
from hatchkit.records.times.scan import Scan, scan

ORDERS = {"dmy": (2, 1, 0), "mdy": (2, 0, 1), "ymd": (0, 1, 2)}
#: Layouts whose order of day and month is open.
OPEN = ("abY", "abc", "ab")
#: How sure each ground makes; below 0.9 the person is asked.
_SURE = {
    "": 1.0,
    "a day above 12": 1.0,
    "weekday": 1.0,
    "continuity": 0.97,
    "said": 1.0,
    "in order": 0.85,
    "batches": 0.8,
    "other files": 0.75,
    "dots": 0.7,
    "half day": 0.6,
    "nothing": 0.5,
}
#: A log goes on from day to day; where no reading of its dates does, their jumps prove nothing.
_STEADY_SHARE = 0.3


@dataclass
class Evidence:
    """What the dates of one column say about their order; see `decide`.

    Attributes
    ----------
    scan : Scan
        The column taken apart, to be handed to `read`.
    open : bool
        Whether the order matters.
    ambiguous : bool
        Whether some date exists in more than one order.
    orders : tuple of str
        The orders in question.
    wrong : dict
        Order -> number of distinct dates that do not exist in it, or fall on another day of the week than is written.
    named : bool
        Whether a day of the week helped.
    jumps, back, steps : dict
        Order -> steps between neighbouring dates: longer than a day, backwards, all.
    days : dict
        Order -> days since 1970 of the distinct dates that exist.
    single : dict
        Order -> places among the distinct dates that follow the one before by one day in this order only.
    years : tuple of int
        Years of four figures.
    """

    scan: Scan
    open: bool = False
    ambiguous: bool = False
    orders: tuple = ()
    wrong: dict = field(default_factory=dict)
    named: bool = False
    jumps: dict = field(default_factory=dict)
    back: dict = field(default_factory=dict)
    steps: dict = field(default_factory=dict)
    days: dict = field(default_factory=dict)
    single: dict = field(default_factory=dict)
    years: tuple = ()


@dataclass(frozen=True)
class Order:
    """The order of day and month of a sheet or of a logger's files, and the century of years of two figures.

    Attributes
    ----------
    order : str
        "dmy", "mdy" or "ymd" (the last for years of two figures only).
    how : str
        What settled it: "" (nothing to settle), "a day above 12", "weekday", "continuity", "said", "in order",
        "batches", "other files", "dots", "half day", "nothing".
    sure : float
        0.5 (a guess) to 1; ask below 0.9.
    against : tuple of str
        What speaks for another order: "said", "other files", "a day above 12".
    near : int or None
        Year to which years of two figures are nearest; None: 69 to 99 are 1969 to 1999, the others of this century.
    """

    order: str = "dmy"
    how: str = ""
    sure: float = 1.0
    against: tuple = ()
    near: int | None = None

    @property
    def day_first(self) -> bool:
        """Whether the day stands before the month."""
        return self.order == "dmy"


def gather(values, clocks=None, *, serials=False) -> Evidence:
    """What one column of cells says about the order of day and month.

    Parameters
    ----------
    values, clocks, serials
        As in `scan.scan`.
    """
    part = scan(values, clocks, serials=serials)
    used = np.unique(part.codes[part.codes >= 0])
    dates, layouts = part.dates[used], part.layouts[used]
    four = np.concatenate([dates[np.isin(layouts, ("ymd", "my")), 0], dates[layouts == "abY", 2]])
    out = Evidence(part, years=tuple(four[(four >= FIRST_YEAR) & (four <= LAST_YEAR)].tolist()))
    is_open = np.isin(layouts, OPEN)
    if not is_open.any():
        return out
    out.orders = ("dmy", "mdy", "ymd") if set(layouts[is_open]) == {"abc"} else ("dmy", "mdy")
    found = {order: days_of(dates, layouts, order, year=2000) for order in out.orders}
    out.open = len({tuple(days[is_open]) for days, _ in found.values()}) > 1
    # Of each date the days it can be: more than one where the latest is not the earliest.
    latest = np.max([np.where(good, days, np.iinfo(np.int64).min) for days, good in found.values()], axis=0)
    earliest = np.min([np.where(good, days, np.iinfo(np.int64).max) for days, good in found.values()], axis=0)
    out.ambiguous = bool((latest > earliest).any())
    named = [(place, part.weekdays[code]) for place, code in enumerate(used) if part.weekdays[code]]
    for order, (days, good) in found.items():
        off = sum(1 for place, names in named if good[place] and (days[place] + 3) % 7 not in names)
        out.wrong[order] = int((~good[is_open]).sum()) + off
        sequence = days[good]
        step = np.diff(sequence)
        out.jumps[order], out.back[order] = int((np.abs(step) > 1).sum()), int((step < 0).sum())
        out.steps[order], out.days[order] = len(step), sequence
    out.named = bool(named)
    out.single = {order: used[places] for order, places in _single(found).items()}
    return out


def _single(found: dict) -> dict:
    """Order -> places of the dates that go on by one day in it alone, one day across a change of order included."""

    def goes_on(one, two):
        (before, there), (after, here) = found[one], found[two]
        return (np.abs(after[1:] - before[:-1]) == 1) & there[:-1] & here[1:]

    steps = {order: goes_on(order, order) for order in found}
    alone = {
        order: own & ~np.any([other for name, other in steps.items() if name != order], axis=0)
        for order, own in steps.items()
    }
    out = {order: own.copy() for order, own in alone.items()}
    for one in found:
        for two in found:
            if one != two and len(steps[one]) > 1:
                across = goes_on(one, two) & ~steps[one] & ~steps[two]
                out[two][:-1] |= across[:-1] & alone[two][1:]
                out[one][1:] |= across[1:] & alone[one][:-1]
    return {order: np.flatnonzero(own) + 1 for order, own in out.items()}


def two_orders(evidence: Evidence) -> tuple | None:
    """Where a log's dates go on from day to day now in one order and now in another: (order, row) of both, else None.

    A single odd date is none of this; two such steps in each order are.
    """
    found = sorted(
        ((order, places) for order, places in evidence.single.items() if len(places) > 1), key=lambda one: one[1][0]
    )
    if len(found) < 2:
        return None
    return tuple((order, int(np.argmax(evidence.scan.codes == places[0]))) for order, places in found[:2])


def decide(evidences, hint=None, *, spans=(), others=()) -> Order:
    """The one order of a sheet's columns or a logger's files.

    Parameters
    ----------
    evidences : Evidence or sequence of Evidence
    hint : bool, str or None
        The person's own word: day first or not, or the order by its name.
    spans : sequence of (start, end) of datetime64
        Times in which dates are expected.
    others : sequence of Order
        Of other files of the folder: weak evidence.
    """
    evidences = [evidences] if isinstance(evidences, Evidence) else list(evidences)
    years = [year for evidence in evidences for year in evidence.years]
    near = int(np.median(years)) if years else None
    asked = [evidence for evidence in evidences if evidence.orders]
    said = {True: "dmy", False: "mdy"}.get(hint, hint)
    if not any(evidence.open for evidence in asked):
        return Order(said or _known(others) or "dmy", near=near)
    orders = ["dmy", "mdy"] if any(len(evidence.orders) == 2 for evidence in asked) else ["dmy", "mdy", "ymd"]
    order, how = _settle(asked, orders, said, spans, _known(others))
    against = [
        name
        for name, other in (("said", said), ("other files", _known(others)))
        if other and other != order and how != name
    ]
    if any(evidence.wrong[order] > min(evidence.wrong[o] for o in orders) for evidence in asked):
        against.append("a day above 12")
    # Where each date exists in one order only, none can be taken for another.
    sure = _SURE[how] - 0.1 * bool(against) if any(evidence.ambiguous for evidence in asked) else 1.0
    return Order(order, how, sure, tuple(against), near)


def _known(others) -> str | None:
    found = {other.order for other in others if other.sure >= 0.95 and other.how and not other.against}
    return found.pop() if len(found) == 1 else None


def _settle(asked, orders, said, spans, others) -> tuple[str, str]:
    total = {
        name: {order: sum(getattr(evidence, name)[order] for evidence in asked) for order in orders}
        for name in ("wrong", "jumps", "back", "steps")
    }
    # An order in which no two dates exist has no step, and goes on from day to day no more than it jumps.
    steady = any(0 < total["steps"][o] and total["jumps"][o] <= _STEADY_SHARE * total["steps"][o] for o in orders)
    cost = {order: total["wrong"][order] + (total["jumps"][order] if steady else 0) for order in orders}
    left = [order for order in orders if cost[order] == min(cost.values())]
    if len(left) == 1:
        wrong = total["wrong"][left[0]] < min(total["wrong"][o] for o in orders if o != left[0])
        return left[0], ("weekday" if any(e.named for e in asked) else "a day above 12") if wrong else "continuity"
    if said in left:
        return said, "said"
    back = {order: total["back"][order] for order in left}
    ordered = [order for order in left if back[order] == 0 and total["steps"][order] >= 3]
    if len(ordered) == 1 and min(back[o] for o in left if o != ordered[0]) >= 2:
        return ordered[0], "in order"
    if len(spans):
        inside = {order: sum(_inside(evidence.days[order], spans) for evidence in asked) for order in left}
        best = [order for order in left if inside[order] == max(inside.values())]
        if len(best) == 1:
            return best[0], "batches"
    if others in left:
        return others, "other files"
    if any(evidence.scan.dots for evidence in asked) and "dmy" in left:
        return "dmy", "dots"
    if any(evidence.scan.half for evidence in asked) and "mdy" in left:
        return "mdy", "half day"
    return ("dmy" if "dmy" in left else left[0]), "nothing"


def _inside(days: np.ndarray, spans) -> int:
    total = np.zeros(len(days), dtype=bool)
    for start, end in spans:
        low, high = (np.datetime64(edge, "D").astype(np.int64) for edge in (start, end))
        total |= (days >= low) & (days <= high)
    return int(total.sum())


def full_year(years, near: int | None) -> np.ndarray:
    """Years of two figures in full: nearest to `near`, or 1969 to 2068."""
    years = np.asarray(years, dtype=np.int64)
    if near is None:
        return np.where(years < 69, 2000 + years, 1900 + years)
    return years + 100 * np.round((near - years) / 100).astype(np.int64)


def days_of(dates, layouts, order: str, *, year=None, near=None) -> tuple[np.ndarray, np.ndarray]:
    """Days since 1970 of dates as written, and which of them exist.

    Parameters
    ----------
    dates, layouts : ndarray
        As in `Scan`.
    year : int, optional
        For dates without one; without it they do not exist.
    near : int, optional
        As in `Order`.
    """
    dates = np.asarray(dates, dtype=np.int64).reshape(-1, 3)
    places = np.array(
        [
            ORDERS["dmy" if order == "ymd" and layout in ("abY", "ab") else order] if layout in OPEN else (0, 1, 2)
            for layout in layouts
        ]
    ).reshape(-1, 3)
    years, months, days = (dates[np.arange(len(dates)), places[:, n]] for n in range(3))
    missing = np.isin(layouts, ("ab", "md"))
    years = np.where(missing, -1 if year is None else year, years)
    two = np.isin(layouts, ("abc", "Ymd"))
    years = np.where(two, full_year(years, near), years)
    return day_numbers(years, months, days)


def day_numbers(years, months, days) -> tuple[np.ndarray, np.ndarray]:
    """Days since 1970 of calendar dates, and which of them exist in a year that can be meant."""
    known = (months >= 1) & (months <= 12) & (days >= 1) & (days <= 31) & (years >= FIRST_YEAR) & (years <= LAST_YEAR)
    count = (np.where(known, years, 2000) - 1970) * 12 + np.where(known, months, 1) - 1
    start = count.astype("datetime64[M]")
    found = start.astype("datetime64[D]") + (np.where(known, days, 1) - 1).astype("timedelta64[D]")
    known &= found.astype("datetime64[M]") == start
    return found.astype(np.int64), known
