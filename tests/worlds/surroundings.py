"""What surrounds a batch besides its losses: storage, hens, post, height, air. Innocent or guilty.

Every quantity is drawn from an innocent law, or from a guilty one when its own cause is at work; both laws are written
here with their log densities, so that the oracle of world 'second' weighs exactly what was drawn. The laws overlap on
purpose: hens of 110 weeks, fortnights of storage, hours at 39.5 degC and 46 % humidity mostly do no harm.

Sources
-------
Storage: best within 7 d, about 3 weeks at most (S21); age: best 31-50 weeks (P36), small flocks keep hens for years
(common practice, no source). Harmless warmth: 38.5-39.5 degC for 3-18 h a day (P18); 40.6 degC for 24 h on day 16
(P11).
Harm: 43.3 degC for 4-12 h (P12). Harmless cold: 35 degC for 3-4 h (S26), 21 degC up to 24 h on day 17 (P14); harm: 5-11
degC (P14), power cuts of many hours (S27). Steady error: 1 F for 21 d harms (S77); 96 F few hatch, 104 F half (from
memory, low confidence). Uneven machines: 1.7-2.2 K between places (P59). Humidity: losses of 11-14 % are fine, 6.5-14 %
is bearable (Molenaar 2010), so 40-65 % is innocent. Height: trouble from 1500 m (Tullett 2013); hens laying at height
make tighter shells (Rahn 1977), so there only eggs from the lowlands suffer. Hatch delay by storage: P27, P31.
"""

from __future__ import annotations

import numpy as np
from scipy import stats

from .codes import DAYS, Bird


def _normal(mean, sd):
    return stats.norm(mean, sd)


# name: (innocent law, {cause: guilty law}); laws given the season's own numbers `home`.
def laws(bird: Bird, home):
    """Laws of all quantities of a batch for one season.

    Parameters
    ----------
    home : dict with stored, age, rh_set, rh_hatch (season's habits)

    Returns
    -------
    dict name -> (innocent, {cause: guilty}) of frozen scipy laws
    """
    long = stats.uniform(13, 12) if bird.name in ("chicken", "turkey") else stats.uniform(11, 9)
    return {
        "log_stored": (_normal(np.log(home["stored"]), 0.42), {"long_storage": _LogOf(long)}),
        "log_age": (_normal(np.log(home["age"]), 0.35), {"old_flock": _LogOf(stats.uniform(85, 95))}),
        "offset": (
            _normal(0, home["steady"]),
            {"warm_throughout": stats.uniform(0.5, 0.9), "cool_throughout": stats.uniform(-1.6, 1.0)},
        ),
        "rh_set": (
            _normal(home["rh_set"], 4.5),
            {"too_humid": stats.uniform(68, 17), "too_dry": stats.uniform(14, 16)},
        ),
        "rh_hatch": (_normal(home["rh_hatch"], 6.0), {"dry_hatch": stats.uniform(24, 22)}),
        "spread": (stats.gamma(2.0, scale=0.18), {"uneven_heat": stats.uniform(1.1, 1.9)}),
    }


class _LogOf:
    """Law of log X for a scipy law of X."""

    def __init__(self, law):
        self.law = law

    def rvs(self, random_state):
        return float(np.log(self.law.rvs(random_state=random_state)))

    def logpdf(self, value):
        return self.law.logpdf(np.exp(value)) + value


# Spells: innocent (harmless) and guilty laws of peak and log hours; share of innocent batches that have one.
SPELLS = {
    "hot": ("heat_spell", 0.20, _normal(39.4, 0.5), _normal(0.5, 0.7), _normal(42.2, 1.0), _normal(1.8, 0.5)),
    "cold": ("cold_spell", 0.25, _normal(32.5, 2.0), _normal(0.8, 0.7), _normal(15.0, 5.0), _normal(2.8, 0.4)),
}
POSTED_INNOCENT = 0.08
HIGH_INNOCENT = 0.07  # seasons at height without harm: local eggs


def season_home(bird: Bird, codes, draw):
    """Habits and place of a season."""
    high = "altitude" in codes or draw.random() < HIGH_INNOCENT
    return {
        "stored": float(draw.uniform(3.0, 8.0)),
        "age": float(draw.choice([draw.uniform(26, 60), draw.uniform(60, 105)], p=[0.7, 0.3])),
        "steady": float(draw.uniform(0.08, 0.22)),
        "rh_set": float(bird.rh_set + draw.uniform(-8, 5)),
        "rh_hatch": float(bird.rh_hatch + draw.uniform(-8, 4)),
        "altitude_m": float(draw.uniform(1500, 3000) if high else draw.uniform(0, 900)),
    }


def draw_batch(bird: Bird, home, codes, draw, age=None):
    """Surroundings of one batch under the causes at work in it.

    Parameters
    ----------
    age : dict cause -> chicken day of the hurt, for spells that kill

    Returns
    -------
    dict of numbers; `hot` and `cold` are None or (chicken day, peak degC, hours)
    """
    age = age or {}
    found = {}
    for name, (innocent, guilty) in laws(bird, home).items():
        law = next((guilty[c] for c in codes if c in guilty), innocent)
        found[name] = float(law.rvs(random_state=draw))
    found["spread"] = abs(found["spread"])
    for name, (cause, share, peak0, hours0, peak1, hours1) in SPELLS.items():
        if cause in codes:
            found[name] = (
                age.get(cause, float(draw.uniform(2, 19))),
                float(peak1.rvs(random_state=draw)),
                float(np.exp(hours1.rvs(random_state=draw))),
            )
        elif draw.random() < share:
            found[name] = (
                float(draw.uniform(0.5, DAYS - 1.5)),
                float(peak0.rvs(random_state=draw)),
                float(np.exp(hours0.rvs(random_state=draw))),
            )
        else:
            found[name] = None
    found["posted"] = "posted_eggs" in codes or bool(draw.random() < POSTED_INNOCENT)
    return found


def log_density(found, cause, bird, home, shown):
    """Log density of a batch's surroundings under one cause, over the quantities the keeper's records show.

    Parameters
    ----------
    shown : set of names: log_stored, log_age, posted, log (air quantities), spread, altitude
    """
    total = 0.0
    for name, (innocent, guilty) in laws(bird, home).items():
        if name in ("offset", "rh_set", "rh_hatch") and "log" not in shown:
            continue
        if name in ("log_stored", "log_age", "spread") and name not in shown:
            continue
        law = guilty.get(cause, innocent)
        total += float(law.logpdf(found[name]))
    if "log" in shown:
        total += sum(_spell_density(found[name], cause, name) for name in SPELLS)
    if "posted" in shown:
        chance = 0.999 if cause == "posted_eggs" else POSTED_INNOCENT
        total += np.log(chance if found["posted"] else 1 - chance)
    if "altitude" in shown:
        chance = 0.999 if cause == "altitude" else HIGH_INNOCENT
        total += np.log(chance if home["altitude_m"] >= 1500 else 1 - chance)
    return total


def _spell_density(spell, cause, name):
    code, share, peak0, hours0, peak1, hours1 = SPELLS[name]
    if cause == code:
        return -np.inf if spell is None else float(peak1.logpdf(spell[1]) + hours1.logpdf(np.log(spell[2])))
    if spell is None:
        return np.log(1 - share)
    return np.log(share) + float(peak0.logpdf(spell[1]) + hours0.logpdf(np.log(spell[2])))


def hatch_hours(found, codes, bird, draw):
    """Mean and spread of hatch time against the due hour, in hours.

    Warmth hastens, cold delays (S19; S27: late by days after a power cut); a stored day costs about an hour (P27: 0.8 h
    duck, 2.3 h Muscovy; P31); window 24-36 h from first to last (P59), so a spread of 6-9 h; uneven heat doubles it.
    """
    mean = draw.normal(0, 4) + 0.9 * (np.exp(found["log_stored"]) - 5)
    mean -= 22 * found["offset"] * bird.days / DAYS
    if found["cold"]:
        mean += max(0.0, 37.5 - found["cold"][1]) / 17.5 * found["cold"][2] * draw.uniform(0.5, 1.0)
    if "cool_throughout" in codes:
        mean += draw.uniform(0, 12)
    spread = draw.uniform(5, 9) * (1 + 0.5 * found["spread"])
    return float(mean), float(spread)
