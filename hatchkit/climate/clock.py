"""When should they have hatched? The species' days, storage and the logged temperature, with a band."""

import numpy as np
import pandas as pd

from hatchkit.climate import egg_heat, machine_air
from hatchkit.climate.egg_heat import constant
from hatchkit.climate.track import batch_track
from hatchkit.reference import contract

#: Below this share of the time logged the clock says nothing about early or late.
ENOUGH_LOGGED = 0.7

COLUMNS = contract.columns("clock")


def hatch_clock(season) -> pd.DataFrame:
    """Expected and seen middle of the hatch for each batch.

    Parameters
    ----------
    season : Season

    Returns
    -------
    DataFrame
        One row per batch; columns in ``reference/columns_climate.csv`` under `clock`. `verdict` is
        early, on time, late, not seen (no hatch times written down) or cannot tell (too little
        logged); early and late only after storage and temperature are taken into account.
        `probe_error_c` is the constant error of the probe that would explain the difference by
        itself (above zero: the probe reads too high); it is given outside the band only.

    Notes
    -----
    Development runs at ``egg_heat.rate`` of the lagged air and counts from setting. Time without
    readings is taken as usual and widens the band by a tenth of itself, what temperature adds or
    takes by 0.3 of itself. Confidence: medium between
    35 and 39 degC, low outside.
    """
    return season.once(("clock",), lambda: _clock_table(season)).copy(deep=False)


def _clock_table(season) -> pd.DataFrame:
    table = pd.DataFrame([_clock_row(season, row) for _, row in season.batches.iterrows()], columns=COLUMNS)
    times = [name for name in COLUMNS if name.endswith("_at")]
    return table.assign(**{name: pd.to_datetime(table[name], utc=True) for name in times})


def due_hours(figures, stored_days) -> tuple[float, float]:
    """Hours of development to the middle of the hatch, and of those the part due to storage.

    The trade's days less 4 h (for 21 days), and the species' delay for each day of storage beyond
    (or short of) the 3 days that the trade's figures take for granted.
    """
    scale = float(figures["incubation_days"]) / egg_heat.HEN_DAYS
    storage = 0.0
    if pd.notna(stored_days):
        extra = float(stored_days) - constant("clock_usual_storage_days")
        storage = extra * float(figures["storage_delay_hours_per_day"])
    return float(figures["incubation_days"]) * 24 - constant("clock_middle_before_h") * scale + storage, storage


def hours_until(development_h, clock_h, rate, speaks_h):
    """Clock hours at which a given development is reached.

    Parameters
    ----------
    development_h : float
        Hours of development at the usual temperature.
    clock_h : array
        Hours since setting of each reading, rising.
    rate, speaks_h : array
        Rate at each reading and the hours it speaks for; all other time counts at rate 1.

    Returns
    -------
    hours : float
    unknown_h : float
        Hours without readings before that.
    """
    gained = np.where(speaks_h > 0, (np.nan_to_num(rate, nan=1.0) - 1) * speaks_h, 0.0)
    # Development at the end of each reading's span: the clock itself plus all gains and losses.
    ends = np.asarray(clock_h, float) + speaks_h
    reached = ends + np.cumsum(gained)
    before = int(np.searchsorted(reached, development_h))
    ahead = np.cumsum(gained)[before - 1] if before else 0.0
    hours = development_h - ahead
    if before < len(ends) and speaks_h[before] > 0 and hours > clock_h[before]:
        hours = clock_h[before] + (development_h - ahead - clock_h[before]) / max(rate[before], 1e-6)
    known = float(np.minimum(speaks_h, np.clip(hours - clock_h, 0, None)).sum()) if len(ends) else 0.0
    return float(hours), max(float(hours) - known, 0.0)


def _clock_row(season, row) -> dict:
    out = dict.fromkeys(COLUMNS, np.nan) | {name: pd.NaT for name in COLUMNS if name.endswith("_at")}
    out |= {
        "batch": row["batch"],
        "species": row["species"],
        "incubator": machine_air.incubator_of(season, row),
        "set_at": row["set_at"],
        "stored_days": row.get("stored_days", np.nan),
        "verdict": "cannot tell",
        "first_hatch_at": row.get("first_hatch_at", pd.NaT),
        "last_hatch_at": row.get("last_hatch_at", pd.NaT),
    }
    if row["species"] not in season.species_table.index or pd.isna(row["set_at"]):
        return out
    figures = season.species_table.loc[row["species"]]
    due, storage = due_hours(figures, out["stored_days"])
    track = batch_track(season, row["batch"])
    clock, speaks = track["age_days"].to_numpy(float) * 24, track["hours"].to_numpy(float)
    hours, unknown = hours_until(due, clock, track["rate"].to_numpy(float), speaks)
    half = constant("clock_band_h") * float(figures["incubation_days"]) / egg_heat.HEN_DAYS
    half = (
        max(half, 8.0)
        + constant("clock_gap_spread") * min(unknown, hours)
        + constant("clock_temperature_spread") * abs(hours - due)
    )
    if pd.isna(out["stored_days"]):
        half += constant("clock_usual_storage_days") * float(figures["storage_delay_hours_per_day"])
    out |= {
        "usual_at": _after(row, due - storage),
        "storage_h": storage,
        "temperature_h": hours - due,
        "expected_at": _after(row, hours),
        "expected_low_at": _after(row, hours - half),
        "expected_high_at": _after(row, hours + half),
        "share_logged": 1 - min(unknown / hours, 1.0),
    }
    return out | _compare(out, row, figures, track, due=due, half=half)


def _compare(out, row, figures, track, *, due, half) -> dict:
    """Middle of the hatch as written down beside the expected one."""
    middle = _middle(out, figures)
    if pd.isna(middle):
        return {"verdict": "not seen"}
    difference = (middle - out["expected_at"]) / pd.Timedelta(hours=1)
    seen = {"middle_at": middle, "difference_h": difference}
    if out["share_logged"] < ENOUGH_LOGGED:
        return seen | {"verdict": "cannot tell"}
    if abs(difference) <= half:
        return seen | {"verdict": "on time"}
    return seen | {
        "verdict": "late" if difference > 0 else "early",
        "probe_error_c": probe_error(track, (middle - row["set_at"]) / pd.Timedelta(hours=1), due),
    }


def probe_error(track, seen_h: float, due: float) -> float:
    """Constant error of the probe, degC, with which the log would give a hatch at `seen_h`.

    All rates change by the factor 1.85^(error / 10), so the error follows from the development
    that the log gives until the hatch, over the development that was due.
    """
    clock, speaks = track["age_days"].to_numpy(float) * 24, track["hours"].to_numpy(float)
    rate = np.nan_to_num(track["rate"].to_numpy(float), nan=1.0)
    within = np.clip(np.minimum(speaks, seen_h - clock), 0, None)
    done = seen_h + float(((rate - 1) * within).sum())
    return float(10 * np.log(done / due) / np.log(constant("rate_q10")))


def bias_of(table, season) -> pd.Series:
    """Constant probe error, degC, that would explain each row's difference, also inside the band.

    Hours late times the change of the whole time per K: ln 1.85 / 10, about 6 % per K or 31 h for hens.
    """
    days = season.species_table.loc[table["species"], "incubation_days"].to_numpy(float)
    return table["difference_h"] / (days * 24 * np.log(constant("rate_q10")) / 10)


def _middle(out, figures):
    """Middle of the hatch: between first and last chick, or half a usual window from the one known."""
    first, last = out["first_hatch_at"], out["last_hatch_at"]
    window = constant("clock_half_window_h") * float(figures["incubation_days"]) / egg_heat.HEN_DAYS
    if pd.notna(first) and pd.notna(last):
        return first + (last - first) / 2
    if pd.notna(first):
        return first + pd.Timedelta(hours=window)
    return last - pd.Timedelta(hours=window) if pd.notna(last) else pd.NaT


def _after(row, hours: float):
    return row["set_at"] + pd.Timedelta(hours=hours)
