"""How an egg trades heat: what the embryo makes, what evaporation takes, how well the air carries it off."""

from functools import cache

import numpy as np

from hatchkit import reference
from hatchkit.problems import HatchkitError

#: Words for the air in season.toml -> kind of air in ``reference/egg_physics.csv``.
AIR_KINDS = {"still": "still", "fan": "weak_fan", "weak fan": "weak_fan", "strong fan": "strong_fan"}

#: Weight, g, and incubation, days, of the egg that the hen's curves were measured on.
HEN_GRAMS, HEN_DAYS = 60.0, 21.0


@cache
def constant(name: str) -> float:
    """One constant of ``reference/egg_physics.csv`` (unit and source stand there)."""
    return float(reference.load("egg_physics").set_index("constant").at[name, "value"])


def air_kind(air: str) -> str:
    """The kind of air meant by `air`; HatchkitError lists the words that are known."""
    kind = AIR_KINDS.get(str(air).replace("_", " ").strip().lower())
    if kind is None:
        raise HatchkitError("no_such_air", dict(air=str(air), known=list(AIR_KINDS)))
    return kind


def conductance(egg_mass_g: float, air: str) -> float:
    """Heat that passes between shell and air, mW per K, for an egg of this weight in this kind of air.

    French 1997 (Poult. Sci. 76:124) for the structure; values and spread: ``egg_physics.csv``.
    """
    kind = air_kind(air)
    return constant(f"k_{kind}_60g") * (egg_mass_g / HEN_GRAMS) ** constant(f"k_{kind}_exponent")


def time_constant(egg_mass_g: float, air: str) -> float:
    """Hours in which the egg closes 63 % of a difference to the air: c m / K, slowed by its inside."""
    seconds = constant("specific_heat") * egg_mass_g / (conductance(egg_mass_g, air) / 1000)
    return constant("interior_factor") * seconds / 3600


@cache
def _oxygen_curve():
    table = reference.load("oxygen_uptake")
    return table["day"].to_numpy(float), table["ml_per_day"].to_numpy(float)


def embryo_heat(age_days, egg_mass_g: float, incubation_days: float = HEN_DAYS):
    """Heat a living embryo makes at 37.5 degC.

    Parameters
    ----------
    age_days : float or array
        Days since setting.
    egg_mass_g, incubation_days : float
        The hen's curve is stretched to the days of the species and scaled with weight^0.714.

    Returns
    -------
    float or array
        mW. Uncertain by about 20 % (modern broilers make more).

    Notes
    -----
    Oxygen uptake: Romijn & Lokhorst 1951; between species: Hoyt & Rahn 1980 (from memory).
    """
    day, oxygen = _oxygen_curve()
    hen = np.interp(np.asarray(age_days, float) * HEN_DAYS / incubation_days, day, oxygen)
    scale = (egg_mass_g / constant("oxygen_egg_grams")) ** constant("heat_exponent")
    return hen * scale * constant("oxygen_heat") * 1000 / 86400


def evaporation_heat(egg_mass_g: float, incubation_days: float = HEN_DAYS) -> float:
    """Heat that the egg's water loss takes away, mW, at the usual daily loss of the species."""
    grams_per_day = constant("water_loss_per_day") * egg_mass_g * HEN_DAYS / incubation_days
    return grams_per_day * constant("evaporation_heat") * 1000 / 86400


def rate(lagged_air_c, usual_c):
    """Hours of development in an hour of clock time.

    Parameters
    ----------
    lagged_air_c : array
        Air with the egg's lag but without the embryo's own heat: the trade's days already contain it.
    usual_c : float or array
        Temperature at which the species takes its usual days; there the rate is 1.

    Returns
    -------
    array
        0 at 25 degC and below, 1 at `usual_c`, at most 1.13; missing stays missing.

    Notes
    -----
    Q10 = 1.85 (bobwhite eggs at 35.5 and 37.5 degC, Birchard: 1.835), which is good between 35 and
    39 degC; the fade between 30 and 25 degC and the top 2 K above the usual temperature are judgement.
    """
    temp = np.asarray(lagged_air_c, dtype=float)
    above = np.minimum(temp, usual_c + constant("rate_top_k")) - usual_c
    zero, full = constant("rate_zero_c"), constant("rate_full_c")
    return constant("rate_q10") ** (above / 10) * np.clip((temp - zero) / (full - zero), 0, 1)
