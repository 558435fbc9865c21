"""Did the machine run beside its range for days? That is no event; events are then looked for beside where it ran."""

from dataclasses import dataclass

import numpy as np

from hatchkit.climate import ranges
from hatchkit.climate.egg_heat import air_kind

#: A stretch out of the range is a disturbance up to this length, hours; beyond, the machine ran there.
LASTING_H = 48.0
#: ... with readings out of the range for at least so many hours.
LOGGED_H = 24.0
#: Further beside the range than this, K, a machine does not run: its heating is lost, or stuck.
MOST_K = 4.0
#: An event differs by this from where the machine ran, K: as much as the watch zone's end from the fan range's ...
EVENT_K = 1.1
#: ... and lasts for as long as it differs by this, K.
EDGE_K = 0.6


@dataclass(frozen=True)
class Stretch:
    """Days on one side of the range.

    Attributes
    ----------
    first, last : int
        Positions of its first and last reading.
    side : int
        1 above the range, -1 below.
    base_c : array
        Where the machine ran, degC, for each reading from first to last: the median of its stage.
    """

    first: int
    last: int
    side: int
    base_c: np.ndarray

    @property
    def part(self) -> slice:
        """The readings of the stretch, as positions."""
        return slice(self.first, self.last + 1)

    def holds(self, run) -> bool:
        """Whether a run (first, last, side) of readings out of the range is part of it."""
        first, last, side = run
        return side == self.side and first <= self.last and last >= self.first

    def beyond(self, columns) -> np.ndarray:
        """K further from the range than where the machine ran, for each of its readings."""
        return self.side * (columns["air_c"][self.part] - self.base_c)


def stretches(columns, runs) -> list[Stretch]:
    """Stretches of two days or more in which most readings of each day lay on one side of the range.

    Parameters
    ----------
    columns : dict of arrays
        Readings with a temperature: clock_h (hours since setting), air_c, low_c, high_c, hours, level, stage.
    runs : list of (first, last, side)
        Stretches out of the range as ``excursions`` joins them; one that reaches into the days counts whole.

    Notes
    -----
    Days without readings, days further than `MOST_K` from the range and one single day of any other kind
    do not end a stretch: a power cut or a hole in the log is no new setting of the thermostat.
    """
    side, speaks = np.sign(columns["level"]), columns["hours"]
    wanted = [one for one in (-1, 1) if speaks[side == one].sum() >= LOGGED_H]
    if not wanted:
        return []
    day = np.floor(columns["clock_h"] / 24).astype(int)
    days, off = _medians(day, columns)
    return [
        stretch
        for one in wanted
        for group in _groups(off, one)
        if (stretch := _stretch(columns, runs, (day, side), days[group], one)) is not None
    ]


def _medians(day, columns):
    """Days with readings, and how far beyond the range (below: negative) their middle reading lay, K."""
    air = columns["air_c"]
    off = np.maximum(air - columns["high_c"], 0) - np.maximum(columns["low_c"] - air, 0)
    starts = np.flatnonzero(np.diff(day, prepend=day[0] - 1))
    medians = np.array([np.median(part) for part in np.split(off, starts[1:])])
    ran = np.abs(medians) <= MOST_K
    return day[starts][ran], medians[ran]


def _groups(off, side):
    """Positions of days on one side of the range that follow each other with at most one other between."""
    hits = np.flatnonzero(np.sign(off) == side)
    return np.split(hits, np.flatnonzero(np.diff(hits) > 2) + 1) if len(hits) else []


def _stretch(columns, runs, where, days, wanted):
    day, side = where
    out = np.flatnonzero((side == wanted) & (day >= days[0]) & (day <= days[-1]))
    reach = Stretch(int(out[0]), int(out[-1]), wanted, np.empty(0))
    own = [run for run in runs if reach.holds(run)]
    first, last = min(run[0] for run in own), max(run[1] for run in own)
    part, clock = slice(first, last + 1), columns["clock_h"]
    logged = columns["hours"][part][side[part] == wanted].sum()
    if clock[last] - clock[first] < LASTING_H or logged < LOGGED_H:
        return None
    base = np.empty(last + 1 - first)
    hatching = columns["stage"][part] == "hatching"
    for stage in (hatching, ~hatching):
        if stage.any():
            base[stage] = np.median(columns["air_c"][part][stage])
    return Stretch(first, last, wanted, base)


def events(columns, stretch, join) -> list:
    """Runs (first, last, side) further out than where the machine ran, up to alarm level or beyond.

    `join` is ``excursions.runs`` of a mark per reading.
    """
    beyond = np.full(len(columns["air_c"]), -np.inf)
    beyond[stretch.part] = stretch.beyond(columns)
    found = join(np.where(beyond > EDGE_K, stretch.side, 0))
    return [run for run in found if ((beyond > EVENT_K) & (np.abs(columns["level"]) >= 2))[run[0] : run[1] + 1].any()]


def describe(columns, stretch, inside, air) -> dict:
    """What tells such a row of ``find_excursions`` from a disturbance's: where it ran instead of its extremes.

    Parameters
    ----------
    columns : dict of arrays
    stretch : Stretch
    inside : array of bool
        Readings of the stretch that belong to events of their own.
    air : str or None
        Kind of air as in season.toml; None where that does not say, which stands for a fan.
    """
    part = stretch.part
    calm = {
        name: columns[name][part][~inside]
        for name in ("air_c", "egg_c", "egg_low_c", "egg_high_c", "level", "low_c", "high_c")
    }
    hatching = float(np.mean(columns["stage"][part] == "hatching")) > 0.5
    at, low, high = (float(np.median(calm[name])) for name in ("air_c", "low_c", "high_c"))
    hours = columns["clock_h"][stretch.last] - columns["clock_h"][stretch.first] + columns["hours"][stretch.last]
    return {
        "level": ranges.LEVELS[max(int(np.median(np.abs(calm["level"]))), 1)],
        "extreme_c": at,
        "egg_extreme_c": float(np.median(calm["egg_c"])),
        "egg_extreme_low_c": float(np.median(calm["egg_low_c"])),
        "egg_extreme_high_c": float(np.median(calm["egg_high_c"])),
        "gap_share": 1 - min(float(columns["hours"][part].sum() / hours), 1.0),
        "looks_like": "steady",
        "evidence": _evidence(at, low, high, hatching=hatching, air=air),
        "notable": True,
    }


def _evidence(at, low, high, *, hatching, air) -> dict:
    """How far it ran from which range, as `shapes.looks_like` gives it (`seen` is "beside")."""
    off = low - at if at < low else at - high
    return dict(
        seen="beside",
        at_c=at,
        off_k=off if off >= 0.05 else 0.0,
        side="below" if at < low else "above",
        hatching=bool(hatching),
        air="still" if air is not None and air_kind(air) == "still" else "fan",
        low_c=low,
        high_c=high,
        wanted_c=(low + high) / 2,
        assumed=air is None,
    )
