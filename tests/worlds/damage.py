"""World 'third': how fast each cause wears an egg down, hour by hour.

A path is the damage piled up by each egg, shape (hours, eggs), scaled so that the mean egg ends at 1; how strong a
cause
is gets settled later (third.py). Shapes follow physiology, not the kernels of world 'second'.

Sources
-------
Heat: hours at 43.3 degC that halve the hatch: 12, 4, 7, 7, 5 h on days 3, 7, 11, 16, 19 (Ande & Wilson 1981); doubling
per 0.8 K from memory (46.1 degC for 3 h or 48.9 for 1 h kills all on day 16, Thompson 1976). Cold hurts older embryos
more (pheasant, J. Wildl. Manage. 1953; day 17, Can. J. Anim. Sci.). Oxygen uptake by day: Romijn & Lokhorst 1951,
read in
the project's physics sheet. Development clock: Q10 1.85, fading out between 30 and 25 degC, capped at 39.5 degC (same
sheet). Water loss 11-13 % best, 6.5-14 % bearable, conductance CV 15 % (Meir, Nir & Ar 1984; Molenaar 2010). Turning:
days 0-2 early deaths, 3-8 late ones (Elibol & Brake as quoted), Oliveira et al. 2020. Vitamin lack: days 8-14 tell.
The rest: extension trouble tables and common practice; widths from memory.
"""

from __future__ import annotations

import numpy as np

O2_DAY = (0, 2, 4, 6, 8, 10, 11, 12, 13, 14, 16, 18, 21)
O2 = (4, 5, 8, 28, 47, 95, 153, 242, 350, 466, 540, 560, 600)


def clock(temp_c, set_c, days):
    """Chicken days of development per hour at an air temperature (array of any shape)."""
    temp = np.minimum(temp_c, 39.5)
    rate = 1.85 ** ((temp - set_c) / 10) * np.clip((temp_c - 25) / 5, 0, 1)
    return rate * 21 / days / 24


def sensitivity(stage):
    """Relative harm of an hour of heat by chicken day."""
    return np.interp(stage, (0, 3, 7, 11, 16, 19, 21), (4 / 12, 4 / 12, 1.0, 4 / 7, 4 / 7, 4 / 5, 1.0))


def background(stage, numbers):
    """Share of the ordinary deaths that have come by a stage, from 0 to about 1: early, steady and late parts."""
    early, steady, late = numbers["wear"]
    ends = 1 / (1 + np.exp(-(21 - numbers["late_at"]) / 0.8))
    return (
        early * (1 - np.exp(-stage / numbers["early_scale"]))
        + steady * stage / 21
        + late / (1 + np.exp(-(stage - numbers["late_at"]) / 0.8)) / ends
    )


def _bump(stage, mean, sd):
    return np.exp(-0.5 * ((stage - mean) / sd) ** 2)


def _late(stage, start, width=0.6):
    return 1 / (1 + np.exp(-(stage - start) / width))


def rate(cause, world):
    """Damage per hour and egg of one cause, any scale, shape (hours, eggs).

    Parameters
    ----------
    world : dict stage (hours, eggs), temp (hours, eggs), rh (hours,), set_c, loss (eggs,) water lost by day 18,
        place (eggs,) in -0.5..0.5, at {cause: chicken day of the hurt}, jitter (5 numbers about 1)
    """
    x, temp, jitter = world["stage"], world["temp"], world["jitter"]
    over, under = np.maximum(temp - world["set_c"], 0), np.maximum(world["set_c"] - temp, 0)
    oxygen = np.interp(x, O2_DAY, O2) / 600
    early = np.exp(-x / (1.6 * jitter[0]))
    late = _late(x, 18.2 * jitter[1] ** 0.1)
    ended = x < 21
    if cause == "heat_spell":
        return np.where(temp > 39.8, 2 ** ((np.minimum(temp, 48) - 40.5) / 0.8), 0) * sensitivity(x)
    if cause == "cold_spell":
        return np.maximum(27 - temp, 0) / 10 * (0.3 + 1.7 * x / 21) * (x > 0.3)
    if cause == "warm_throughout":
        return np.minimum(over, 2) ** 1.5 * (0.4 + early + 1.5 * late) * ended
    if cause == "cool_throughout":
        return np.minimum(under, 2.5) ** 1.5 * (0.3 + 0.7 * early + 2.5 * late) * ended
    if cause == "uneven_heat":
        off = np.abs(world["place"]) ** 1.5
        return off * (0.4 + np.where(world["place"] > 0, oxygen, 0.3) + 1.5 * late) * ended
    if cause == "too_humid":
        return np.maximum(0.115 - world["loss"], 0.002) * _late(x, 19.0, 0.5) * ended
    if cause == "too_dry":
        return np.maximum(world["loss"] - 0.115, 0.002) * _late(x, 17.0, 1.5) * ended
    if cause == "dry_hatch":
        return _late(x, 20.1, 0.25) * ended
    if cause == "turning":
        return (0.5 * jitter[2] * early + 0.05 + 0.8 * late) * ended
    if cause == "ventilation":
        return oxygen**1.5 * ended
    if cause == "altitude":
        return (oxygen**1.2 + 3 * np.maximum(world["loss"] - 0.12, 0) * late) * ended
    return _flock_or_hand(cause, x, world, early, late, ended, oxygen)


def _flock_or_hand(cause, x, world, early, late, ended, oxygen):
    """Damage rates of causes that come from the flock, the store, the post or the keeper's hand."""
    jitter, at = world["jitter"], world["at"].get(cause)
    if cause == "long_storage":
        return (np.exp(-x / (1.0 * jitter[0])) + 0.03 + 0.12 * late) * ended
    if cause == "bad_storage":
        return (np.exp(-x / (0.8 * jitter[0])) + 0.015) * ended
    if cause == "old_flock":
        return (0.8 * early + 0.05 + 0.5 * jitter[3] * late) * ended
    if cause == "flock_health":
        return (0.4 * early + 0.25 + 0.35 * late) * ended
    if cause == "contamination":
        return _late(x, 7.0 * jitter[4], 2.5) * ended
    if cause == "vitamin_lack":
        return (_bump(x, 12.0 * jitter[0] ** 0.3, 2.4) + 0.6 * jitter[1] * late) * ended
    if cause == "posted_eggs":
        return (0.9 * np.exp(-x / 1.4) + 0.25 * jitter[2] * late) * ended
    if cause == "fumes":
        return np.where(x >= at, np.exp(-(x - at) / 0.8), 0) * ended
    if cause == "transfer_jolt":
        return np.where(x >= at, np.exp(-(x - at) / 0.5), 0) * ended
    if cause in ("small_end_up", "late_turning"):
        return _late(x, 19.2 if cause == "small_end_up" else 19.6, 0.4) * ended
    if cause == "navel_infection":
        return _late(x, 20.6, 0.2) * (x < 21.5)
    raise ValueError(f"no damage for {cause}")


# Spread (log sd) of eggs' own susceptibility to a cause: wide where only some eggs meet it (dirt, wrong end, post).
OWN = {"contamination": 1.4, "small_end_up": 1.3, "posted_eggs": 0.9, "navel_infection": 1.0, "transfer_jolt": 1.0}
# Share of a hurt that stays and adds to the ordinary wear; the rest is outlived or kills by itself (a second
# tolerance).
# Causes left out wear the egg down all the way: 1.
STAYS = {
    "heat_spell": 0.2,
    "cold_spell": 0.3,
    "fumes": 0.1,
    "transfer_jolt": 0.2,
    "posted_eggs": 0.2,
    "long_storage": 0.25,
    "bad_storage": 0.15,
    "old_flock": 0.5,
    "flock_health": 0.5,
    "turning": 0.5,
    "contamination": 0.25,
    "vitamin_lack": 0.25,
    "small_end_up": 0.3,
    "late_turning": 0.4,
    "navel_infection": 0.2,
    "dry_hatch": 0.4,
}
MAL = {"small_end_up": 0.75, "late_turning": 0.6, "turning": 0.45, "posted_eggs": 0.2, "too_humid": 0.2}
ROT = {"contamination": 0.6, "old_flock": 0.12, "navel_infection": 0.1, "flock_health": 0.08}
