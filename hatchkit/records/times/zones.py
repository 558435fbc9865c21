"""From what a clock showed to UTC: zones, the hour that comes twice, the hour that is left out."""

from __future__ import annotations

from zoneinfo import ZoneInfo

import numpy as np
import pandas as pd

from hatchkit.problems import HatchkitError

_HOUR = 3_600_000_000


def zone_of(timezone) -> ZoneInfo | None:
    """The zone by its name ("Europe/Rome"); None for no zone or UTC. HatchkitError if there is none."""
    if timezone in (None, "", "UTC", "Etc/UTC", "Z"):
        return None
    try:
        return ZoneInfo(str(timezone))
    except Exception as error:  # zoneinfo raises several kinds for a wrong name
        raise HatchkitError("no_such_zone", dict(zone=str(timezone))) from error


def offsets_at(zone: ZoneInfo, utc) -> np.ndarray:
    """Microseconds east of UTC in `zone` at UTC times (datetime64), shape as `utc`."""
    stamps = pd.DatetimeIndex(np.asarray(utc).astype("datetime64[us]"), tz="UTC")
    return (stamps.tz_convert(zone).tz_localize(None) - stamps.tz_localize(None)).to_numpy().astype(np.int64)


def changes(zone: ZoneInfo, start: np.datetime64, end: np.datetime64) -> list[tuple[np.datetime64, int, int]]:
    """Changes of the zone's clock on the days between two UTC times: (UTC time, offset before, offset after) in µs."""
    days = np.arange(start.astype("datetime64[D]"), end.astype("datetime64[D]") + np.timedelta64(2, "D"))
    found = []
    for row in np.flatnonzero(np.diff(offsets_at(zone, days))):
        minutes = days[row] + np.arange(1441) * np.timedelta64(1, "m")
        offsets = offsets_at(zone, minutes)
        at = int(np.argmax(offsets != offsets[0]))
        found.append((minutes[at].astype("datetime64[us]"), int(offsets[0]), int(offsets[at])))
    return found


def to_utc(local, timezone, *, put_right: bool = True) -> tuple[np.ndarray, list]:
    """UTC of clock times in the order of the file.

    Parameters
    ----------
    local : ndarray of datetime64[us]
        Clock times; NaT stays NaT.
    timezone : str or None
        Zone of the clock.
    put_right : bool
        Of a clock that did not follow a change of the hour, take a later step of that hour for its correction.

    Returns
    -------
    utc : ndarray of datetime64[us]
    notes : list of (severity, code of a message, its facts)
    """
    zone = zone_of(timezone)
    good = ~np.isnat(local)
    if zone is None or not good.any():
        return local, []
    ways = np.sign(np.diff(local[good]).astype(np.int64))
    if ways.sum() < 0:
        # Newest first: what follows is about a clock that goes on, so the file is read from its end.
        utc, said = to_utc(local[::-1], timezone, put_right=put_right)
        return utc[::-1], said
    begin = local[good].min() - np.timedelta64(1, "D")
    steps = changes(zone, begin, local[good].max() + np.timedelta64(1, "D"))
    first = int(offsets_at(zone, [begin])[0])
    if not steps:
        return local - np.timedelta64(first, "us"), []
    notes: list[tuple[str, str, dict]] = []
    for moment, before, after in steps:
        if _kept_old_time(local, good, moment, before, after):
            day = str((moment + np.timedelta64(before, "us")).astype("datetime64[D]"))
            notes.append(("doubtful", "clock_not_followed", dict(day=day)))
            row = _corrected_at(local, moment, before, after) if put_right else None
            if row is not None:
                time = str(local[row].astype("datetime64[m]")).replace("T", " ")
                way = "on" if after > before else "back"
                notes.append(("doubtful", "clock_put_right", dict(way=way, time=time)))
                rest, more = to_utc(local[row:], timezone)
                return np.concatenate([local[:row] - np.timedelta64(first, "us"), rest]), notes + more
            return local - np.timedelta64(first, "us"), notes
    offsets = np.full(len(local), first, dtype=np.int64)
    for moment, before, after in steps:
        new = moment + np.timedelta64(max(before, after), "us")  # from here on the clock shows only new time
        old = moment + np.timedelta64(min(before, after), "us")  # up to here it shows only old time
        offsets[good & (local >= new)] = after
        between = good & (local >= old) & (local < new)
        if not between.any():
            continue
        twice = after < before
        offsets[between] = np.where(_second_pass(local, between), after, before) if twice else before
        facts = dict(count=int(between.sum()), day=str(old.astype("datetime64[D]")))
        notes.append(("note", "clock_hour_twice" if twice else "clock_hour_skipped", facts))
    return local - offsets.astype("timedelta64[us]"), notes


def _second_pass(local: np.ndarray, between: np.ndarray) -> np.ndarray:
    """For the readings in the double hour, in file order: whether they belong to its second pass."""
    rows = np.flatnonzero(between)
    times = local[rows].astype(np.int64)
    lead = times[0] - local[rows[0] - 1].astype(np.int64) if rows[0] > 0 else 0
    # A log with a reading every hour shows the same time twice instead of going back.
    back = np.flatnonzero(np.diff(times) < (-_HOUR // 12 if lead < _HOUR // 2 else 1))
    second = np.zeros(len(rows), dtype=bool)
    if len(back):
        second[back[0] + 1 :] = True
    elif rows[0] > 0 and rows[-1] + 1 < len(local):
        # One pass only: the old hour if the reading before it follows on, else the new one.
        usual = float(np.median(np.diff(local[~np.isnat(local)].astype(np.int64))))
        second[:] = lead > _HOUR if usual <= _HOUR else abs(lead + _HOUR - usual) < abs(lead - usual)
    return second


def _kept_old_time(local, good, moment, before, after) -> bool:
    """Whether the log runs straight through a change of the hour, which a clock that follows cannot.

    Between the last reading before the change and the first behind it a clock that does not follow shows as much time
    as the steps in between take; one that follows shows an hour more in spring and an hour less in autumn.
    """
    times = local[good].astype(np.int64)
    start = (moment + np.timedelta64(min(before, after), "us")).astype(np.int64)
    stop = (moment + np.timedelta64(max(before, after), "us")).astype(np.int64)
    below = np.flatnonzero(times < start)[-1:]
    above = np.flatnonzero(times >= stop)
    above = above[above > below[0]][:1] if len(below) else below
    if not len(above):
        return False
    low, high = int(below[0]), int(above[0])
    around = np.concatenate([np.diff(times[max(low - 20, 0) : low + 1]), np.diff(times[high : high + 21])])
    usual = float(np.median(around)) if len(around) >= 4 else 0.0
    steps = np.diff(times[low : high + 1])
    if usual <= 0 or (np.abs(around - usual) < usual / 10).mean() < 0.8:
        # No regular step to reckon with: four steps or more, all forward, none longer than half an hour.
        return bool(len(steps) >= 6 and (steps >= 0).all() and steps.max() <= _HOUR // 2)
    never = after > before and len(steps) > 1
    through = abs(times[high] - times[low] - len(steps) * usual) < min(_HOUR // 4, usual)
    return bool((steps > 0).all() and (through or never and steps.max() < usual + _HOUR // 2))


def _corrected_at(local, moment, before, after) -> int | None:
    """The row at which a clock that did not follow a change of the hour makes up for it; None where it never does.

    It is the only step behind the change that differs from the usual one by that hour (to ten minutes), and the last
    reading before it and the first behind it are of one log.
    """
    good = np.flatnonzero(~np.isnat(local))
    times = local[good].astype(np.int64)
    step = np.diff(times)
    if len(step) < 8:
        return None
    usual = float(np.median(step))
    behind = times[1:] > (moment + np.timedelta64(max(before, after), "us")).astype(np.int64)
    off = np.flatnonzero(behind & (np.abs(step - usual - (after - before)) <= _HOUR // 6) & (usual < _HOUR // 2 * 3))
    return int(good[off[0] + 1]) if len(off) == 1 else None


def cells_to_utc(local, timezone) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """UTC of clock times that stand each for itself, as the cells of a sheet do.

    Parameters
    ----------
    local : ndarray of datetime64[us], shape (n,)
    timezone : str or None

    Returns
    -------
    utc : ndarray of datetime64[us], shape (n,)
        An hour that came twice is taken as the first, one that never came as the next real hour.
    twice, never : ndarray of bool, shape (n,)
        Which those are.
    """
    zone = zone_of(timezone)
    nothing = np.zeros(len(local), dtype=bool)
    wall = pd.Series(np.asarray(local, dtype="datetime64[us]"))
    if zone is None or wall.isna().all():
        return wall.to_numpy(), nothing, nothing.copy()
    first = wall.dt.tz_localize(zone, ambiguous=np.ones(len(wall), bool), nonexistent="shift_forward")
    second = wall.dt.tz_localize(zone, ambiguous=np.zeros(len(wall), bool), nonexistent="NaT")
    twice = (first != second) & first.notna() & second.notna()
    never = second.isna() & wall.notna()
    utc = first.dt.tz_convert("UTC").dt.tz_localize(None).to_numpy().astype("datetime64[us]")
    return utc, twice.to_numpy(), never.to_numpy()
