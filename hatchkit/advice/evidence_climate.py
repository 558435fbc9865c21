"""Evidence from the log, the weights and the hatching hours of one batch: values of items, and doses by the day."""

from __future__ import annotations

from typing import NamedTuple

import numpy as np

from hatchkit.advice import course
from hatchkit.climate.dose import half_dose, heat_per_hour, rolling_dose
from hatchkit.climate.egg_heat import constant
from hatchkit.climate.track import batch_track

#: Eggs go in cold: the first hours are warming up, not a spell of cold.
WARMING_DAYS = 0.75

#: How many levels below the range (see `climate.ranges`) make a spell of cold: alarm or worse.
COLD_LEVEL = -2

#: Hours about the transfer in which a chill counts as one of the transfer.
TRANSFER_H = 12.0

#: From a hen's first chick to her last, about the middle of the hatch (Meijerhof 2006: 24 h good, 36 h often seen).
WINDOW_H = 26.0

#: Less than this share of the hen's days logged, and nothing is said about the level.
LEAST_LOGGED = 0.3


class Doses(NamedTuple):
    """What one batch met, hen's day by hen's day.

    Attributes
    ----------
    heat : ndarray, shape (DAYS,)
        Heat against what halved the hatch at that age.
    cold : ndarray, shape (DAYS,)
        Hours of development lost to spells of cold.
    logged : float
        Share of the time from setting to hatch for which readings stand.
    """

    heat: np.ndarray
    cold: np.ndarray
    logged: float


NOTHING = Doses(np.zeros(course.DAYS), np.zeros(course.DAYS), 0.0)


def find(season, batch, water) -> tuple[dict, Doses]:
    """Values of the items that come from climate, weights and hatching hours, and the doses.

    Parameters
    ----------
    season : Season
    batch : str
    water : dict
        Row of `batch_water_loss`; empty where there is none.
    """
    row, species = season.batch(batch), season.species(batch)
    track = batch_track(season, batch)
    values = {"clock": _late(row, species), "hatch_spread": _spread(row), "water_loss": _water(water, species)}
    if track.empty:
        return values, NOTHING
    columns = {
        name: track[name].to_numpy()
        for name in (
            "hen_days",
            "hours",
            "egg_c",
            "age_days",
            "level",
            "rate",
            "air_c",
            "low_c",
            "high_c",
            "rh_pct",
            "probe_spread_c",
        )
    }
    setting = (track["stage"] == "setting").to_numpy()
    doses = _doses(columns)
    if doses.logged > 0:
        values |= {"heat": _heat(columns), "cold": float(doses.cold.sum())}
        values["transfer_chill"] = _about_transfer(columns, setting)
    if doses.logged >= LEAST_LOGGED:
        late = setting & (columns["age_days"] > WARMING_DAYS)
        values["probe_gap"] = _middle(columns["probe_spread_c"][late])
        values["log_level"] = _middle((columns["air_c"] - (columns["low_c"] + columns["high_c"]) / 2)[late])
    values["rh_set"] = _outside(columns["rh_pct"][setting], species["setter_rh_low_pct"], species["setter_rh_high_pct"])
    values["rh_hatch"] = _outside(
        columns["rh_pct"][~setting], species["hatcher_rh_low_pct"], species["hatcher_rh_high_pct"]
    )
    return values, doses


def _middle(values) -> float:
    values = values[np.isfinite(values)]
    return float(np.median(values)) if len(values) else float("nan")


def _outside(rh_pct, low, high) -> float:
    """Median humidity's distance from its range; 0 inside, NaN where none was logged."""
    middle = _middle(rh_pct)
    return float(middle - np.clip(middle, low, high))


def _doses(columns) -> Doses:
    day = np.clip(np.floor(columns["hen_days"]), 0, course.DAYS - 1).astype(int)
    inside = (columns["hours"] > 0) & (columns["hen_days"] >= 0) & (columns["hen_days"] < course.DAYS)
    heat = np.nan_to_num(heat_per_hour(columns["egg_c"])) * columns["hours"] / half_dose(columns["hen_days"])
    by_heat, by_cold = (np.bincount(day[inside], values[inside], course.DAYS) for values in (heat, _lost(columns)))
    span = columns["age_days"][inside].max() - columns["age_days"][inside].min() if inside.any() else 0.0
    whole = (course.DAYS - 0.5) * 24 * (columns["age_days"][-1] / max(columns["hen_days"][-1], 1e-9)) if span else 1.0
    return Doses(by_heat, by_cold, float(min(columns["hours"][inside].sum() / whole, 1.0)))


def _lost(columns):
    """Hours of development that each reading's span lost, in spells of cold only."""
    spell = (columns["level"] <= COLD_LEVEL) & (columns["age_days"] > WARMING_DAYS)
    return np.where(spell, np.nan_to_num(np.clip(1 - columns["rate"], 0, None)) * columns["hours"], 0.0)


def _heat(columns) -> float:
    """Largest heat dose of 24 h as a share of the dose that halved the hatch at that age (`climate.dose`)."""
    dose = rolling_dose(columns["age_days"] * 24, columns["egg_c"], columns["hours"])
    return float(np.max(dose / half_dose(columns["hen_days"])))


def _about_transfer(columns, setting) -> float:
    """Hours of development lost within `TRANSFER_H` of the transfer; NaN where nothing was logged about it."""
    if setting.all() or not setting.any():
        return float("nan")
    hours = columns["age_days"] * 24
    near = np.abs(hours - hours[~setting][0]) <= TRANSFER_H
    return float(_lost(columns)[near].sum()) if columns["hours"][near].sum() >= TRANSFER_H else float("nan")


def _late(row, species) -> float:
    """Hours by which the first chick came after the usual hour; the last one tells where the first was not noted.

    The logged temperature is left out on purpose: a log that shows the warmth would excuse the early hatch that
    confirms it.
    """
    days = float(species["incubation_days"])
    middle_h = -constant("clock_middle_before_h")
    for column, usual_h in (("first_hatch_at", middle_h - WINDOW_H / 2), ("last_hatch_at", middle_h + WINDOW_H / 2)):
        at = row.get(column)
        if at is not None and at == at:
            hours = (at - row["set_at"]).total_seconds() / 3600
            return hours - (24 * days + usual_h * days / course.DAYS)
    return float("nan")


def _spread(row) -> float:
    first, last = row.get("first_hatch_at"), row.get("last_hatch_at")
    if first is None or last is None or first != first or last != last:
        return float("nan")
    return (last - first).total_seconds() / 3600


def _water(water, species) -> float:
    """Loss expected at transfer against the middle of the target, points of set weight; NaN without weighings."""
    if not water or water.get("weighed", "no") == "no" or not np.isfinite(water["projected_share"]):
        return float("nan")
    return 100 * (water["projected_share"] - (species["loss_low_share"] + species["loss_high_share"]) / 2)
