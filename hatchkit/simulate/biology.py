"""What becomes of each egg: fertility, embryo deaths, hatching time, water loss.

The model is a race: every fertile egg has a background death age (two-phase shape of Kuurman et
al. 2001), a hatching time, and for each fault an age at which that fault would kill it; the
earliest wins and is remembered as the cause. So the true number of embryos that a fault cost is
known exactly. Every figure is in ``reference/simulate_parameters.csv`` with its source.
"""

from functools import cache

import numpy as np
import pandas as pd
from scipy.signal import lfilter

from hatchkit import reference

#: Heat given off by a 60 g hen egg, mW, by day (Romijn & Lokhorst 1951: oxygen uptake x 20 J/ml).
HEAT_DAYS = np.array([0, 5, 8, 9, 10, 12, 14, 16, 17, 18, 21])
HEAT_MW = np.array([0, 2.3, 11.1, 14.6, 22, 57, 109, 126, 131, 129, 126])
NEVER = np.inf


@cache
def _parameters() -> dict:
    table = reference.load("simulate_parameters")
    return dict(zip(table["name"], table["value"].astype(float), strict=True))


@cache
def birds() -> pd.DataFrame:
    """The species table with what the invented keepers set (``simulate_birds.csv``), read once; not to be changed."""
    table = reference.species_table()
    for row in reference.load("simulate_birds").itertuples():
        table.loc[row.species, row.item] = row.value
    return table


def parameters(**changes) -> dict:
    """The generative figures by name, with `changes` put in; unknown names are refused."""
    known = dict(_parameters())
    unknown = set(changes) - set(known)
    if unknown:
        raise ValueError(f"no such simulation parameter: {', '.join(sorted(unknown))}")
    return known | {name: float(value) for name, value in changes.items()}


def saturation_kpa(temp_c):
    """Vapour pressure over water, kPa (Magnus form of WMO-8; within 0.3 % from 10 to 45 degC)."""
    temp_c = np.asarray(temp_c, dtype=float)
    return 0.6112 * np.exp(17.62 * temp_c / (243.12 + temp_c))


def lagged(values, step_hours: float, lag_hours: float):
    """First-order lag of an evenly spaced series (each value held for one step)."""
    keep = float(np.exp(-step_hours / lag_hours))
    return lfilter([1 - keep], [1, -keep], values, zi=[keep * float(values[0])])[0]


def egg_climate(air_c, rh_pct, *, age_days, species, p) -> dict:
    """Lagged air, egg temperature and development speed for one batch.

    Parameters
    ----------
    air_c, rh_pct, age_days : array, shape (n,)
        Evenly spaced; `age_days` starts at or below 0.
    species : Series
        Figures of the species (``incubation_days``, ``egg_grams``, ``setter_c``).
    p : dict
        Generative figures.

    Returns
    -------
    dict of arrays, shape (n,): age_days, air_c, rh_pct, lag_c, egg_c, speed; and step_hours.
    """
    step_hours = float(age_days[1] - age_days[0]) * 24
    size = species["egg_grams"] / 60
    lag_c = lagged(air_c, step_hours, p["egg_lag_hours"] * size**0.42)
    chicken_day = age_days * 21 / species["incubation_days"]
    heat = np.interp(chicken_day, HEAT_DAYS, HEAT_MW) * size**0.714
    conductance = p["shell_conductance_mw_per_k"] * size**0.56
    # a chilled embryo gives off less heat (Q10 = 2); a hot one no more than at 41.5 degC
    slow = 2 ** ((np.clip(lag_c, 15, 41.5) - 37.5) / 10)
    egg_c = lag_c + (heat * slow - p["evaporation_mw"] * size**0.8) / conductance
    # the trade's days hold for its own programme: cooler by a little after the transfer
    usual = np.where(age_days < species["transfer_day"], species["setter_c"], species["hatcher_c"])
    warm = p["clock_q10"] ** ((np.minimum(lag_c, 39.5) - usual) / 10)
    speed = warm * np.clip((lag_c - 25) / 5, 0, 1)
    return dict(
        age_days=age_days, air_c=air_c, rh_pct=rh_pct, lag_c=lag_c, egg_c=egg_c, speed=speed, step_hours=step_hours
    )


def two_phase_ages(rng, count: int, p, *, phase1_share=None):
    """Ages at background death in chicken days, redrawn where they would fall after day 21."""
    first = rng.random(count) < (p["phase1_share"] if phase1_share is None else phase1_share)
    ages = np.full(count, NEVER)
    while (late := ages > 21).any():
        early = p["phase1_scale"] * rng.weibull(p["phase1_shape"], late.sum())
        end = p["phase2_scale"] * rng.weibull(p["phase2_shape"], late.sum())
        ages[late] = np.where(first[late], early, end)
    return ages


def heat_rate(climate, *, species, p):
    """Death rate by heat per step (log hazard): thermal dose over the half-effect dose of that age."""
    egg_c, day = climate["egg_c"], climate["age_days"] * 21 / species["incubation_days"]
    over = egg_c - p["heat_reference_c"]
    dose = np.where(over >= 0, p["heat_factor_above"] ** over, p["heat_factor_below"] ** over)
    dose = np.where((egg_c > p["heat_threshold_c"]) & (day > 0), dose, 0) * climate["step_hours"]
    days = [3, 7, 11, 16, 19]
    half = np.exp(np.interp(day, days, [np.log(p[f"heat_half_day{d}"]) for d in days]))
    lethal = (egg_c >= p["lethal_c"]) & (day > 0)
    return np.log(2) * dose / half + np.where(lethal, 60 * climate["step_hours"], 0)


def cold_rate(climate, *, species, p):
    """Death rate by cold per step (log hazard): deep chill by the hour, cool spells by the day."""
    egg_c, hours = climate["egg_c"], climate["step_hours"]
    lasting = lagged(egg_c, hours, 6.0)  # a short opening is not a cool spell
    deep = p["cold_rate"] * np.clip(p["cold_base_c"] - egg_c, 0, None) * hours
    cool = p["cool_rate"] * np.clip(p["cool_base_c"] - lasting, 0, 12) * hours / 24
    incubating = climate["age_days"] > 0.5  # eggs go in cold: warming up is not harm
    return np.where(incubating, deep + cool, 0)


def _ages_at(rng, rate, climate, factor):
    """Age at which a rate over time kills each egg, NEVER where it does not."""
    total = np.cumsum(rate)
    wanted = rng.exponential(size=len(factor)) / factor
    place = np.searchsorted(total, wanted)
    ages = np.append(climate["age_days"], NEVER)
    return ages[place]


def _some(rng, count, hazard, ages):
    """`ages` for those that a total hazard strikes, NEVER for the others."""
    return np.where(rng.random(count) < 1 - np.exp(-np.asarray(hazard)), ages, NEVER)


def water_loss(climate, *, species, grams_cv, rng, count, p):
    """Share of set weight lost by the transfer day, per egg, shape (count,)."""
    inside = (climate["age_days"] > 0) & (climate["age_days"] <= species["transfer_day"])
    lag, air, rh = climate["egg_c"][inside], climate["air_c"][inside], climate["rh_pct"][inside]
    drive = (saturation_kpa(lag) - rh / 100 * saturation_kpa(air)).mean()
    usual_rh = (species["setter_rh_low_pct"] + species["setter_rh_high_pct"]) / 2
    usual = saturation_kpa(species["setter_c"]) * (1 - usual_rh / 100)
    middle = (species["loss_low_share"] + species["loss_high_share"]) / 2
    return middle * drive / usual * rng.lognormal(0, grams_cv, count)


def tray_places(count: int):
    """Tray, row and place in the row of eggs laid out in order, each counted from 1."""
    wide = 8 if count > 40 else 6
    place = np.arange(count)
    return place // (wide * 5) + 1, place // wide % 5 + 1, place % wide + 1


def draw_eggs(
    rng,
    *,
    count,
    species,
    climate,
    p,
    fertility,
    stored_days=4.0,
    storage_harm=1.0,
    early_factor=1.0,
    rotten_share=None,
    turning=(0.0, 0.0),
    taken_off_day=None,
) -> pd.DataFrame:
    """True course of every egg of one batch.

    Parameters
    ----------
    count : int
    species : Series
    climate : dict
        From `egg_climate`.
    fertility : float
        Share of eggs that are fertile.
    stored_days : float
    storage_harm : float
        Part of what so long a storage costs that is lost here (0: kept so well that it costs nothing).
    early_factor : float
        Multiplies the first phase of background deaths (old flock).
    rotten_share : float, optional
        Share of eggs that go rotten; the ordinary share if left out.
    turning : (float, float)
        Log hazards of early and of late death by poor turning.
    taken_off_day : float, optional
        Chicks not out by then are dead in shell; by default two days and a half after term.

    Returns
    -------
    DataFrame
        egg, fertile, died_day, died_of, pipped, malpositioned, rotten_day, hatched_day, culled,
        loss_share, weight_g. `died_of` is background, hatching, heat, cold, storage, dry, wet,
        parched (too dry at hatch), turning, rotten, offtime (clock far early or late) or late (not
        out when the hatch was taken off).
    """
    scale = species["incubation_days"] / 21
    fertile = rng.random(count) < fertility
    batch_luck = np.exp(rng.normal(0, p["batch_sd"]))
    ages = {}

    base = -np.log(1 - p["death_share"] / p["fertility"]) * batch_luck
    old = 1 + p["phase1_share"] * (early_factor - 1)
    share1 = p["phase1_share"] * early_factor / old
    ages["background"] = _some(rng, count, base * old, scale * two_phase_ages(rng, count, p, phase1_share=share1))

    over = max(0.0, stored_days - p["storage_free_days"])
    stale = storage_harm * (p["storage_linear"] * over + p["storage_square"] * over**2)
    ages["storage"] = _some(
        rng, count, stale, scale * two_phase_ages(rng, count, p, phase1_share=p["storage_early_share"])
    )

    along = tray_places(count)[2].astype(float)
    along = (along - along.mean()) / max(along.std(), 1e-9)  # warmer towards one side of the tray
    place = (
        rng.normal(0, p["position_sd_c"], count) * np.sqrt(1 - p["tray_share"])
        + p["position_sd_c"] * np.sqrt(p["tray_share"]) * along
    )
    lag = rng.exponential(p["fault_lag_days"], count)
    heat = heat_rate(climate, species=species, p=p)
    ages["heat"] = _ages_at(rng, heat, climate, p["heat_factor_below"] ** place) + lag
    ages["cold"] = _ages_at(rng, cold_rate(climate, species=species, p=p), climate, np.ones(count)) + lag

    loss = water_loss(climate, species=species, grams_cv=p["conductance_cv"], rng=rng, count=count, p=p)
    term = scale * rng.uniform(18.5, 21.0, count)
    wet = p["loss_rate"] * 100 * np.clip(p["loss_low"] - loss, 0, None)
    dry = p["loss_rate"] * 100 * np.clip(loss - p["loss_high"], 0, None)
    ages["wet"], ages["dry"] = _some(rng, count, wet, term), _some(rng, count, dry, term)

    early, late = turning
    ages["turning"] = np.minimum(
        _some(rng, count, early, scale * rng.uniform(2, 8, count)),
        _some(rng, count, late, scale * rng.uniform(17, 21, count)),
    )
    share = p["contaminated_share"] if rotten_share is None else rotten_share
    rotten_day = np.where(rng.random(count) < share, scale * rng.uniform(5, 17.5, count), NEVER)
    ages["rotten"] = rotten_day - scale * rng.uniform(0.5, 2.0, count)

    failure = -np.log(1 - p["hatch_failure_share"] / (p["fertility"] - p["death_share"]))
    ages["hatching"] = _some(rng, count, failure, scale * rng.uniform(19.5, 21.0, count))

    off = _hours_off(climate, species=species)
    ages["offtime"] = _some(rng, count, p["offtime_rate"] * max(0.0, off - p["offtime_free_hours"]), term)
    end = climate["age_days"] > species["transfer_day"] + 0.5
    parched = max(0.0, p["dry_hatch_rh"] - climate["rh_pct"][end].mean())
    ages["parched"] = _some(rng, count, p["dry_hatch_rate"] * parched, scale * rng.uniform(20.0, 21.0, count))

    hatched_day = _hatching_days(rng, count, species=species, climate=climate, stored_days=stored_days, p=p)
    out_by = species["incubation_days"] + 2.5 if taken_off_day is None else taken_off_day
    ages["late"] = np.where(hatched_day > out_by, out_by, NEVER)
    return _settle(
        rng,
        count,
        ages=ages,
        fertile=fertile,
        hatched_day=hatched_day,
        loss=loss,
        rotten_day=rotten_day,
        species=species,
        p=p,
    )


def _hours_off(climate, *, species):
    """Hours by which the development clock runs early or late over the whole incubation."""
    inside = (climate["age_days"] > 0) & (climate["age_days"] <= species["incubation_days"])
    return abs(float((1 - climate["speed"][inside]).sum())) * climate["step_hours"]


def hatching_hours(species, stored_days, p) -> float:
    """Hours of development to the middle of the hatch, storage included."""
    middle = species["incubation_days"] * (24 - p["hatch_before_hours"] / 21)
    return middle + species["storage_delay_hours_per_day"] * max(0.0, stored_days - 3.0)


def _hatching_days(rng, count, *, species, climate, stored_days, p):
    """Day on which each chick would be out, by the development clock."""
    after = climate["age_days"] > 0
    done = np.cumsum(np.where(after, climate["speed"], 0)) * climate["step_hours"]
    due = (
        hatching_hours(species, stored_days, p)
        + rng.normal(0, p["hatch_batch_sd_hours"])
        + rng.normal(0, p["hatch_sd_hours"] * species["incubation_days"] / 21, count)
    )
    place = np.searchsorted(done, due)
    return np.append(climate["age_days"], NEVER)[place]


def _settle(rng, count, *, ages, fertile, hatched_day, loss, rotten_day, species, p):
    """The earliest of all ages decides; one row per egg."""
    names = np.array(list(ages))
    table = np.stack([ages[name] for name in names])
    first = table.argmin(axis=0)
    died = np.where(fertile, table[first, np.arange(count)], NEVER)
    cause = np.where(np.isfinite(died), names[first], "")
    hatched = fertile & ~np.isfinite(died)
    pip_share = np.select(
        [cause == "hatching", np.isin(cause, ["wet", "dry", "offtime"]), cause == "parched"],
        [p["pipped_of_failures"], p["loss_pipped_share"], 0.9],
        0.0,
    )
    pipped = rng.random(count) < pip_share
    lies = np.select([cause == "hatching", cause == "turning"], [p["malposition_of_failures"], 0.35], 0.02)
    wrong = (rng.random(count) < lies) & (died > 17 * species["incubation_days"] / 21)
    sick = np.where(hatched_day < species["incubation_days"] - 1.2, 3.0, 1.0)
    culled = hatched & (rng.random(count) < p["culled_share"] * sick)
    finite = np.isfinite(rotten_day) & ((cause == "rotten") | ~fertile)
    return pd.DataFrame(
        {
            "egg": np.arange(1, count + 1),
            "fertile": fertile,
            "died_day": np.where(np.isfinite(died), died, np.nan),
            "died_of": cause,
            "pipped": pipped,
            "malpositioned": wrong & np.isfinite(died),
            "rotten_day": np.where(finite, rotten_day, np.nan),
            "hatched_day": np.where(hatched, hatched_day, np.nan),
            "culled": culled,
            "loss_share": loss,
            "weight_g": rng.normal(species["egg_grams"], p["egg_weight_cv"] * species["egg_grams"], count),
        }
    )
