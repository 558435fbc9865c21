"""When was it too warm or too cold for the eggs: stretches out of the range in force, never guessed across gaps."""

import numpy as np
import pandas as pd

from hatchkit.climate import machine_air, ranges, shapes, steady
from hatchkit.climate.dose import DOSE_COLUMNS, dose_of
from hatchkit.climate.track import batch_track
from hatchkit.reference import contract

#: A return into the range shorter than this does not end an excursion (nor shorter than two steps).
JOIN_HOURS = 0.5
#: Slightly out of range (level watch) matters only "over hours": shorter stretches are not reported.
WATCH_HOURS = 2.0

#: What an egg shows up to this many hours after an excursion of the air belongs to it ...
EGG_FOLLOWS_H = 3.0
#: ... and its extreme is looked for this long, hours.
EGG_EXTREME_H = 2.0
#: Openings (candling, watering, turning) and the warming up of the eggs are everyday up to this length, hours.
ORDINARY_H = {"opening": shapes.AJAR_H, "loading": shapes.LOADING_LASTS_H}
#: So is the watch zone up to this long, whatever it looks like.
ORDINARY_WATCH_H = 6.0

COLUMNS = contract.columns("excursions")


def find_excursions(season) -> pd.DataFrame:
    """Stretches in which the air, or the estimated egg, was out of its range while eggs were in.

    Parameters
    ----------
    season : Season
    Its log in degC and UTC; a season without one gives no rows.

    Returns
    -------
    DataFrame
        One row per batch and excursion, by incubator and time; rows of the same disturbance of one
        incubator share `event`. Columns in ``reference/columns_climate.csv`` under `excursions`.

    Notes
    -----
    A stretch counts when it reaches the alarm limits, or lies in the watch zone for 2 hours. Short
    returns into the range (half an hour or two steps) do not end it; a gap does, and so does the
    other side of the range. What happened in gaps is not known: see ``state_of_time``. Days on end
    beside the range are one row (`looks_like` is steady) with where the machine ran as its extreme;
    events inside them have rows of their own, and their time counts for those only.

    Source: limits of air and egg per species are rows of ``reference/ranges.csv``, each with its source; that 2 hours
    and half an hour divide what counts is the kit's own judgement.
    """
    return season.once(("excursions",), lambda: _all_excursions(season)).copy(deep=False)


def was_logged(season) -> bool:
    """Whether any reading speaks for time in which eggs were in: without one, no excursions means nothing."""
    return any(batch_track(season, batch)["hours"].sum() > 0 for batch in season.batches["batch"])


def _all_excursions(season) -> pd.DataFrame:
    if season.parts:
        return _of_parts(season)
    found = []
    for incubator, batches in by_incubator(season):
        step = machine_air.machine_air(season, incubator).attrs["step_h"]
        air = machine_air.settings_of(season, incubator).get("air")
        for batch in batches["batch"]:
            track = batch_track(season, batch)
            if not track.empty:
                found.append(batch_excursions(track, step, air).assign(incubator=incubator, batch=batch))
    found = [table for table in found if len(table)]
    if not found:
        return contract.empty("excursions")
    table = pd.concat(found, ignore_index=True).sort_values(
        ["incubator", "start", "batch"], kind="stable", ignore_index=True
    )
    return _number(table)[COLUMNS]


def _of_parts(season) -> pd.DataFrame:
    """Excursions of several seasons, each by its own log; events keep numbers of their own."""
    tables, events = [], 0
    for part in season.parts:
        table = find_excursions(part)
        if len(table):
            tables.append(table.assign(event=table["event"] + events))
            events = int(tables[-1]["event"].max())
    return pd.concat(tables, ignore_index=True) if tables else contract.empty("excursions")


def batch_excursions(track: pd.DataFrame, step_h: float, air: str | None = None) -> pd.DataFrame:
    """Excursions of one ``batch_track``; columns as in ``find_excursions`` without incubator, batch, event."""
    used = track[track["air_c"].notna()].reset_index(drop=True)
    columns = {
        name: used[name].to_numpy()
        for name in (*DOSE_COLUMNS, "hours", "gap", "level", "rh_pct", "stage", "probe_spread_c")
    }
    columns["clock_h"] = columns["age_days"] * 24
    columns["usual"] = columns["level"] == 0
    runs = _runs(columns, np.sign(columns["level"]), step_h)
    rows, runs = _steady_rows(columns, runs, step_h, air)
    rows += [_describe(columns, run, "air", step_h) for run in runs if _counts(columns, *run)]
    taken = [(columns["clock_h"][row["first"]], columns["clock_h"][row["last"]], row["kind"]) for row in rows]
    egg = columns["egg_c"]
    egg_side = (egg > columns["egg_range_high_c"]).astype(int) - (egg < columns["egg_range_low_c"]).astype(int)
    rows += [
        _describe(columns, run, "egg", step_h)
        for run in _runs(columns, egg_side, step_h)
        if _length(columns, run) >= WATCH_HOURS and not _follows(columns, run, taken)
    ]
    names = [name for name in COLUMNS if name not in ("event", "incubator", "batch")]
    if not rows:
        return contract.empty("excursions")[names]
    table, time = pd.DataFrame(rows), pd.DatetimeIndex(used["time"])
    return table.assign(start=time[table["first"]], end=time[table["last"]])[names]


def _steady_rows(columns, runs, step_h, air):
    """Rows of days beside the range, and the runs that are left, with the events inside those days."""
    rows = []
    for stretch in steady.stretches(columns, runs):
        inside = steady.events(columns, stretch, lambda side: _runs(columns, side, step_h))
        event = np.zeros(len(columns["air_c"]), dtype=bool)
        for first, last, _ in inside:
            event[first : last + 1] = True
        columns["usual"][stretch.part] |= np.abs(stretch.beyond(columns)) < steady.EDGE_K
        calm = columns | {"hours": np.where(event, 0.0, columns["hours"])}
        row = _describe(calm, (stretch.first, stretch.last, stretch.side), "air", step_h)
        rows.append(row | steady.describe(columns, stretch, event[stretch.part], air))
        runs = [run for run in runs if not stretch.holds(run)] + inside
    return rows, runs


def _follows(columns, run, taken) -> bool:
    """Whether an egg's run belongs to an excursion of the air: the egg lags, so up to 3 h after it."""
    start, end = columns["clock_h"][run[0]], columns["clock_h"][run[1]]
    kind = "warm" if run[2] > 0 else "cold"
    return any(kind == other and start <= e + EGG_FOLLOWS_H and end >= s for s, e, other in taken)


def state_of_time(track: pd.DataFrame, start=None, end=None) -> pd.DataFrame:
    """Every stretch of time as normal, warm, cold or not known.

    Parameters
    ----------
    track : DataFrame
        From ``batch_track``.
    start, end : Timestamp, optional
        The span to account for; default: first to last reading.

    Returns
    -------
    DataFrame
        start, end, state; stretches follow each other without holes. Time in which a reading is
        missing or doubted is "not known", never normal.
    """
    if track.empty:
        rows = [(start, end, "not known")] if start is not None and end is not None else []
        return pd.DataFrame(rows, columns=["start", "end", "state"])
    time, speaks = track["time"], track["hours"].to_numpy()
    side = np.sign(track["level"].to_numpy())
    state = np.array(["cold", "normal", "warm"])[side + 1].astype(object)
    state[speaks == 0] = "not known"
    finish = time.shift(-1)
    finish.iloc[-1] = time.iloc[-1] + pd.Timedelta(hours=float(speaks[-1]))
    table = pd.DataFrame({"start": time, "end": finish, "state": state})
    edges = [(start, time.iloc[0]), (finish.iloc[-1], end)]
    for position, (a, b) in enumerate(edges):
        if a is not None and b is not None and a < b:
            extra = pd.DataFrame({"start": [a], "end": [b], "state": ["not known"]})
            table = pd.concat([extra, table] if position == 0 else [table, extra], ignore_index=True)
    block = (table["state"] != table["state"].shift()).cumsum()
    joined = table.groupby(block).agg(start=("start", "first"), end=("end", "last"), state=("state", "first"))
    return joined.reset_index(drop=True)


def by_incubator(season):
    """(incubator, its batches) for every incubator that holds a batch."""
    batches = season.batches.assign(
        _incubator=[machine_air.incubator_of(season, row) for _, row in season.batches.iterrows()]
    )
    return list(batches[batches["_incubator"].notna()].groupby("_incubator"))


def _runs(columns, side, step_h):
    """(first, last, side) of stretches on one side of the range, joined over short returns."""
    out = np.flatnonzero(side)
    if len(out) == 0:
        return []
    clock, holes = columns["clock_h"], np.cumsum(columns["gap"])
    step = step_h if np.isfinite(step_h) else 0.0
    join = max(JOIN_HOURS, 2 * step) + step
    a, b = out[:-1], out[1:]
    breaks = (side[a] != side[b]) | (holes[a] != holes[b]) | (clock[b] - clock[a] > join + 1e-9)
    starts = np.concatenate([[0], np.flatnonzero(breaks) + 1])
    ends = np.concatenate([np.flatnonzero(breaks), [len(out) - 1]])
    return [(int(out[s]), int(out[e]), int(side[out[s]])) for s, e in zip(starts, ends, strict=True)]


def _length(columns, run) -> float:
    first, last, _ = run
    return float(columns["clock_h"][last] - columns["clock_h"][first] + columns["hours"][last])


def _counts(columns, first, last, side) -> bool:
    """Alarm level at any length, or the watch zone for `WATCH_HOURS`."""
    worst = np.abs(columns["level"][first : last + 1]).max()
    return worst >= 2 or _length(columns, (first, last, side)) >= WATCH_HOURS


def _describe(columns, run, on, step_h) -> dict:
    """One excursion as a row; `run` is the positions of its first and last readings and its side."""
    first, last, side = run
    clock, part = columns["clock_h"], slice(first, last + 1)
    hours = _length(columns, run)
    # The egg lags, so its extreme may come up to 2 h after the air's return.
    after = int(np.searchsorted(clock, clock[last] + EGG_EXTREME_H))
    felt = columns["egg_c"][first:after]
    at = first + int(felt.argmax() if side > 0 else felt.argmin())
    speaks = columns["hours"][part]
    dose = dose_of({name: columns[name][part] for name in DOSE_COLUMNS}, speaks)
    looks, evidence = shapes.looks_like(columns, first, last, side > 0, step_h)
    word = "warm" if side > 0 else "cold"
    air, worst = columns["air_c"][part], int(np.abs(columns["level"][part]).max())
    return {
        "first": first,
        "last": last,
        "kind": word,
        "on": on,
        "hours": hours,
        "level": ranges.LEVELS[worst],
        "extreme_c": float(air.max() if side > 0 else air.min()),
        "degree_hours": dose[f"degree_hours_{word}"],
        "egg_extreme_c": float(columns["egg_c"][at]),
        "egg_extreme_low_c": float(columns["egg_low_c"][at]),
        "egg_extreme_high_c": float(columns["egg_high_c"][at]),
        "egg_degree_hours": dose[f"egg_degree_hours_{word}"],
        "gap_share": 1 - min(float(speaks.sum()) / hours, 1.0) if hours > 0 else 0.0,
        "looks_like": looks,
        "evidence": evidence,
        "stage": columns["stage"][first],
        "day_start": float(columns["age_days"][first]),
        "day_end": float(columns["age_days"][last]),
        "hen_day": float(columns["hen_days"][first]),
        **{
            name: dose[name]
            for name in ("heat_dose_h", "heat_band", "lost_hours", "hours_egg_below_20", "hours_egg_below_10")
        },
        "notable": hours > ORDINARY_H.get(looks, 0.0) and (worst >= 2 or on == "egg" or hours > ORDINARY_WATCH_H),
    }


def _number(table):
    """The column `event`: rows of one incubator and kind that overlap in time are one disturbance, or one setting."""
    event = np.zeros(len(table), dtype=int)
    current, open_until = 0, {}
    for position, row in enumerate(table.itertuples()):
        key = (row.incubator, row.kind, row.looks_like == "steady")
        number, until = open_until.get(key, (None, None))
        if number is None or row.start > until:
            current += 1
            number, until = current, row.end
        open_until[key] = (number, max(until, row.end))
        event[position] = number
    return table.assign(event=event)
