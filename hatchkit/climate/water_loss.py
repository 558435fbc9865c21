"""Do the eggs dry as they should? Loss from weighings, shell conductance, and the humidity that is needed.

Loss per day = G x (pressure of water vapour in the egg - in the air); G, the conductance of the
shell, differs between eggs, flocks and seasons, so it is fitted from weighings and never taken from
the size of the egg when weights exist (Ar & Rahn; Meir & Ar 2008, Br. Poult. Sci.).
"""

import numpy as np
import pandas as pd

from hatchkit import reference
from hatchkit.climate import air, egg_heat, machine_air
from hatchkit.climate.track import batch_track, egg_grams
from hatchkit.climate.weighings import HEAVY_TIMES, STRAIGHT, egg_lines, left_out, weighings
from hatchkit.reference import contract

#: No conductance from a smaller difference in vapour pressure, torr, or weighings closer than this, days.
LEAST_TORR, LEAST_DAYS = 5.0, 3.0
#: From this many weighed single eggs on they say more than the whole tray that was weighed as well.
ENOUGH_SINGLE = 5

COLUMNS = contract.columns("water_loss")


def lost_share(start_g, now_g, tare_g=0.0):
    """Share of the set weight that is gone: (start - now) / (start - tare); the tray's weight is taken off.

    Some printed guides turn this formula upside down, and some leave the tray in, which understates the
    loss.
    """
    start_g, now_g = np.asarray(start_g, float), np.asarray(now_g, float)
    return ((start_g - now_g) / (start_g - tare_g))[()]


def vapour_difference(egg_c, air_c, rh_pct):
    """Vapour pressure inside the egg less that of the air, torr (at the egg's own temperature inside)."""
    inside = air.saturation_pressure(egg_c)
    return (inside - air.vapour_pressure(air_c, rh_pct)) / air.TORR_KPA


def rh_needed(target_share, *, days, specific_g, egg_c=37.5, air_c=37.5, pressure_kpa=101.325):
    """Humidity, %RH, at which an egg loses `target_share` in `days`; ``loss_share`` turned round.

    Below 0 or above 100: no humidity does it.
    """
    torr = target_share * 1000 / (np.asarray(specific_g, float) * (101.325 / pressure_kpa) * days)
    vapour = air.saturation_pressure(egg_c) - torr * air.TORR_KPA
    return (100 * vapour / air.saturation_pressure(air_c))[()]


def prior_loss(egg_mass_g, *, torr, days) -> tuple[float, float, float]:
    """Loss expected from the egg's size alone: middle, low and high share.

    G = 0.384 W^0.814 (Ar & Rahn 1985, from memory) holds between species within a factor of two;
    it must not be used to tell one egg from another of the same kind.
    """
    conductance = egg_heat.constant("loss_prior_slope") * egg_mass_g ** egg_heat.constant("loss_prior_exponent")
    middle = conductance * torr * days / 1000 / egg_mass_g
    factor = egg_heat.constant("loss_prior_factor")
    return middle, middle / factor, middle * factor


def kind_loss(species, *, torr, days) -> tuple[float, float, float] | None:
    """Loss expected from measured shells of a kind of bird (``reference/shell_conductances.csv``): middle, low, high.

    None where nobody's measurements are at hand; `prior_loss` then stands in.
    """
    known = reference.load("shell_conductances").set_index("species")
    if species not in known.index:
        return None
    return tuple(float(known.at[species, name]) * torr * days / 1000 for name in ("specific", "low", "high"))


def loss_points(season, batch) -> pd.DataFrame:
    """Every weighing of one batch as a share lost: egg, day, lost_share, used.

    The share is of the weight at day 0 on the egg's own line; `used` is False for eggs that
    ``batch_water_loss`` leaves out, and for those weighed once.
    """
    row, figures = season.batch(batch), season.species(batch)
    series = weighings(season, row, figures)
    lines = egg_lines(series)
    reason = left_out(lines, season.fates, batch=row["batch"], alive_until=float(figures["transfer_day"]))
    points = series[series["egg"].isin(lines.index)].reset_index(drop=True)
    set_g = lines["set_g"].reindex(points["egg"]).to_numpy(float)
    return pd.DataFrame(
        {
            "egg": points["egg"],
            "day": points["day"],
            "lost_share": lost_share(set_g, points["grams"].to_numpy(float)),
            "used": (reason.reindex(points["egg"]) == "").to_numpy(),
        }
    )


def batch_water_loss(season) -> pd.DataFrame:
    """Water loss of every batch: so far, expected at transfer, and the humidity to reach the target.

    Returns
    -------
    DataFrame
        One row per batch; columns in ``reference/columns_climate.csv`` under `water_loss`.
        `verdict` is on target, too little, too much, cannot tell; without weighings "no weighings"
        and `projected_*` holds the indication from measured shells of its kind or from egg size. "Too little"
        and "too much" only when the whole interval lies outside the target, and for these alone a new
        humidity is told (`rh_now_pct`, `rh_next_pct`). One egg alone never gives a verdict.
    """
    rows = (_batch_row(season, row) for _, row in season.batches.iterrows())
    return season.once(("water loss",), lambda: pd.DataFrame(list(rows), columns=COLUMNS)).copy(deep=False)


def _batch_row(season, row) -> dict:
    out = dict.fromkeys(COLUMNS, np.nan) | {
        "batch": row["batch"],
        "species": row["species"],
        "weighed": "no",
        "series": 0,
        "left_out": 0,
        "why_left_out": "",
        "reason": "",
    }
    if row["species"] not in season.species_table.index or pd.isna(row["set_at"]):
        return out | {"verdict": "cannot tell", "reason": "no_species"}
    figures = season.species_table.loc[row["species"]]
    out |= {
        "target_low": float(figures["loss_low_share"]),
        "target_high": float(figures["loss_high_share"]),
        "transfer_day": float(figures["transfer_day"]),
    }
    track = batch_track(season, row["batch"])
    if not len(season.weights) or not season.weights["batch"].eq(row["batch"]).any():
        # The weights at setting alone tell of no loss; most batches have no more, and need no search.
        return out | _indication(season, row, figures, track, out["transfer_day"])
    lines = egg_lines(weighings(season, row, figures))
    lines = lines[lines["last_day"] - lines["first_day"] >= LEAST_DAYS]
    if lines.empty:
        return out | _indication(season, row, figures, track, out["transfer_day"])
    single, trays = lines[~lines["whole"].astype(bool)], lines[lines["whole"].astype(bool)]
    reason = left_out(single, season.fates, batch=row["batch"], alive_until=out["transfer_day"])
    used, told = single[reason == ""], reason[reason != ""]
    if len(trays) and len(used) < ENOUGH_SINGLE:
        used = trays
    out |= {
        "weighed": "tray" if len(used) and used is trays else "eggs",
        "series": len(used),
        "left_out": len(told),
        "why_left_out": ", ".join(f"{count} {why}" for why, count in told.value_counts().items()),
    }
    if used.empty:
        why = "namesakes" if single["namesakes"].all() else "no_living"
        return out | {"verdict": "cannot tell", "reason": why}
    out |= _loss(used, out)
    out |= _humidity(out, track)
    usual = float(figures["egg_grams"])
    if out["set_g"] > HEAVY_TIMES * usual:
        out["reason"] = "heavy"
    return out


def _loss(used, out) -> dict:
    """Loss so far and at transfer, with a 95 % interval for the mean egg of the flock.

    Weighed one by one, the eggs show how much they differ (Student's t). A tray, or one egg, does not: then their
    spread is taken from others' eggs (`conductance_cv`), and a tray from which eggs were taken off adds the
    doubt of that (``weighings.egg_lines``).
    """
    from scipy.special import stdtrit

    day = float(used["last_day"].max())
    left = out["transfer_day"]
    day_share = (used["slope_g_day"] / used["set_g"]).to_numpy(float)
    eggs = used["eggs"].to_numpy(float)
    mean = float(np.average(day_share, weights=eggs))
    projected, taken_off = mean * left, 0.0
    apart = len(used) > 1 and not used["whole"].any()
    if apart:
        sampling = float(stdtrit(len(used) - 1, 0.975) * day_share.std(ddof=1) / np.sqrt(len(used))) * left
    else:
        sampling = 1.96 * egg_heat.constant("conductance_cv") * projected / np.sqrt(eggs.sum())
        doubt = (used["taken_off_g_day"] / used["set_g"]).to_numpy(float)
        taken_off = 1.96 * float(np.sqrt(np.sum((eggs * doubt) ** 2)) / eggs.sum()) * left
    # Weighings until `day` pin the loss until then; beyond, the line may bend by a tenth.
    bend = STRAIGHT * mean * max(left - day, 0.0) + (0.0 if apart else STRAIGHT / 2 * projected)
    half = float(np.sqrt(sampling**2 + taken_off**2 + bend**2))
    low, high = max(projected - half, 0.0), projected + half
    verdict, reasons = "on target", []
    if eggs.sum() < 2:
        verdict, reasons = "cannot tell", ["one_egg"]
    elif high < out["target_low"]:
        verdict = "too little"
    elif low > out["target_high"]:
        verdict = "too much"
    elif not (out["target_low"] <= projected <= out["target_high"]):
        verdict, reasons = "cannot tell", ["reaches_in"]
    elif high - low > 2 * (out["target_high"] - out["target_low"]):
        verdict, reasons = "cannot tell", ["too_wide"]
    if taken_off > 0:
        reasons.append("taken_off")
    return {
        "first_day": float(used["first_day"].min()),
        "last_day": day,
        "loss_day": day,
        "set_g": float(np.average(used["set_g"].to_numpy(float), weights=eggs)),
        "day_share": mean,
        "loss_share": mean * day,
        "projected_share": projected,
        "projected_low": low,
        "projected_high": high,
        "verdict": verdict,
        "reason": ", ".join(reasons),
    }


def _humidity(out, track) -> dict:
    """Conductance from the logged air; off target also the humidity for the rest and for the next batch."""
    met = _met(track, out["first_day"], out["last_day"])
    if met is None or not met["torr"] >= LEAST_TORR:
        return {"rh_pct": np.nan if met is None else met["rh_pct"]}
    specific = out["day_share"] * 1000 / met["torr"]
    found = {"torr": met["torr"], "rh_pct": met["rh_pct"], "conductance": specific * out["set_g"]}
    if out["verdict"] not in ("too little", "too much"):
        return found
    target = (out["target_low"] + out["target_high"]) / 2
    same = {"specific_g": specific, "egg_c": met["egg_c"], "air_c": met["air_c"]}
    rest = out["transfer_day"] - out["last_day"]
    now = rh_needed(target - out["loss_share"], days=rest, **same) if rest >= 1 else np.nan
    return found | {"rh_now_pct": now, "rh_next_pct": rh_needed(target, days=out["transfer_day"], **same)}


def _met(track, first_day, last_day):
    """Mean vapour pressure difference, humidity and temperatures between two days; None if not logged."""
    part = track[track["age_days"].between(first_day, last_day) & track["rh_pct"].notna() & (track["hours"] > 0)]
    if part.empty:
        return None
    met = part[["rh_pct", "egg_c", "air_c"]].assign(
        torr=vapour_difference(part["egg_c"], part["air_c"], part["rh_pct"])
    )
    return {name: float(np.average(met[name], weights=part["hours"])) for name in met}


def _indication(season, row, figures, track, transfer_day) -> dict:
    """Without weighings: what measured shells of its kind, or else the egg's size, would give in the logged air."""
    met = _met(track, 0.0, transfer_day)
    if met is None or not met["torr"] >= LEAST_TORR:
        return {"verdict": "no weighings", "reason": "no_humidity"}
    kind = kind_loss(row["species"], torr=met["torr"], days=transfer_day)
    middle, low, high = kind or prior_loss(
        egg_grams(season, row["batch"], figures), torr=met["torr"], days=transfer_day
    )
    setting = machine_air.settings_of(season, machine_air.incubator_of(season, row))
    factor = 1.0
    if setting.get("eggs_brought_in") and setting.get("altitude_m"):
        factor = 101.325 / air.standard_pressure(float(setting["altitude_m"]))
    return {
        "verdict": "no weighings",
        "torr": met["torr"],
        "rh_pct": met["rh_pct"],
        "projected_share": middle * factor,
        "projected_low": low * factor,
        "projected_high": high * factor,
        "reason": "by_kind" if kind else "by_size",
    }
