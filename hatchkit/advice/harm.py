"""Which hazards each cause adds, and on which days: as published tables say, or as the log measured it."""

from __future__ import annotations

from functools import cache
from typing import NamedTuple

import numpy as np

from hatchkit import reference
from hatchkit.advice import course
from hatchkit.advice.evidence_climate import Doses
from hatchkit.advice.published import STAGES
from hatchkit.advice.seen import STAGE_OF_CELL

#: Sizes of a cause whose dose nobody measured: total log hazard that it adds (0.6 takes 45 % of the eggs), and how
#: likely each is beforehand. Stated by hatchkit.
SIZES, SIZE_CHANCE = np.array([0.12, 0.3, 0.6, 1.0, 1.7]), np.array([0.15, 0.25, 0.25, 0.2, 0.15])

#: A measured dose does harm as the trials say, times a factor known to about so much (sd of its log).
DOSE_NODES = np.array([-1.6, -1.0, -0.5, 0.0, 0.5, 1.0, 1.6])
DOSE_SD = {"heat_spell": 1.0, "cold_spell": 1.2}

#: Hours of development lost to cold that halve the hatch: power cuts of up to 18 h under 32 degC were survived by
#: 40 to 50 % (Penn State), 24 h at 21 degC on day 17 by all (Can. J. Anim. Sci.): they disagree, so the doubt is wide.
COLD_HALF_H = 24.0

#: What speaks for a measured dose does not speak for another one that the log did not see; least part left to that.
UNSEEN = 0.02

#: No dose counts for more than this many halvings: embryos adapt, and a log holds one place of the machine only.
MOST_HALVINGS = 4.0

#: Mean days from the harm to the death (French 2000: deaths follow later than the heat); the shape is not known.
DELAYS = {"soon": 0.4, "later": 1.8, "much later": 4.5}

#: Part of the harm that shows only at the end: full-grown dead, failed pips, weak chicks.
LEFT_OVER = {course.PIPPED - 1: 0.10, course.PIPPED: 0.07, course.CULLED: 0.05}

#: A cause that took less than this (log hazard) is none: a measured dose may have done no harm at all, and then the
#: batch is as luck would have it.
LEAST_HARM, HARMLESS = 0.05, 1e-9

#: A dose below this (halvings) is no event.
LEAST_DOSE = {"heat_spell": 0.02, "cold_spell": 0.03}

BANDS = {
    "clear": slice(0, 1),
    "removed": slice(1, 2),
    "days_0_2": slice(2, 4),
    "days_2_7": slice(4, 9),
    "days_7_14": slice(9, 16),
    "days_14_18": slice(16, 20),
    "days_18_21": slice(20, 23),
    "pipped_dead": slice(23, 24),
    "culled": slice(24, 25),
}


class Way(NamedTuple):
    """One way in which a cause may have struck.

    Attributes
    ----------
    cause, variant : str
        variant: always, early, mid, late, or for a measured dose how soon deaths follow.
    kernel : ndarray, shape (HAZARDS,)
        Hazards added at size 1.
    sizes, log_chance : ndarray, shape (sizes,)
        Sizes, and log of how likely each is beforehand with the variant's own part.
    measured : bool
        Whether the log holds the dose.
    """

    cause: str
    variant: str
    kernel: np.ndarray
    sizes: np.ndarray
    log_chance: np.ndarray
    measured: bool


@cache
def patterns() -> dict:
    """{(cause, variant): (kernel of size 1, why)} of ``reference/cause_patterns.csv``."""
    out = {}
    for row in reference.load("cause_patterns").to_dict("records"):
        kernel = np.zeros(course.HAZARDS)
        for name, place in BANDS.items():
            kernel[place] = row[name] / (place.stop - place.start)
        out[row["cause"], row["variant"]] = (kernel / kernel.sum(), row["why"])
    return out


def ways(doses: Doses) -> list[Way]:
    """Every way of every cause, given what the log measured.

    Chances of a cause's ways add up to 1, less the chance that a measured dose did no harm.
    """
    out = []
    for cause in dict.fromkeys(cause for cause, _ in patterns()):
        own = [(variant, kernel) for (name, variant), (kernel, _) in patterns().items() if name == cause]
        by_day = halvings(cause, doses)
        measured = by_day.sum() >= LEAST_DOSE.get(cause, np.inf)
        unseen = UNSEEN * max(1 - doses.logged, UNSEEN) if measured else 1.0
        if measured:
            spread = DOSE_SD[cause]
            nodes, sizes = np.exp(-0.5 * DOSE_NODES**2), np.exp(spread * DOSE_NODES)
            for variant, delay in DELAYS.items():
                kernel = from_dose(by_day, delay)
                harms = np.where(sizes * kernel.sum() >= LEAST_HARM, nodes / nodes.sum(), HARMLESS)
                out.append(Way(cause, variant, kernel, sizes, np.log((1 - unseen) / len(DELAYS) * harms), True))
        for variant, kernel in own:
            out.append(Way(cause, variant, kernel, SIZES, np.log(unseen / len(own) * SIZE_CHANCE), False))
    return out


def halvings(cause, doses: Doses) -> np.ndarray:
    """Harm by hen's day in halvings of the hatch, shape (DAYS,); all nought for a cause that no log measures."""
    by_day = {"heat_spell": doses.heat, "cold_spell": doses.cold / COLD_HALF_H}.get(cause)
    if by_day is None:
        return np.zeros(course.DAYS)
    return by_day * min(1.0, MOST_HALVINGS / max(by_day.sum(), 1e-9))


def from_dose(by_day, delay) -> np.ndarray:
    """Hazards from halvings by day when deaths follow after `delay` days in the mean (exponential)."""
    kernel = np.zeros(course.HAZARDS)
    edges = np.arange(course.DAYS + 1.0)
    for day in np.flatnonzero(by_day):
        gone = 1 - np.exp(-np.clip(edges - day - 0.3, 0, None) / delay)
        part = np.diff(gone)
        part[-1] += 1 - gone[-1]
        kernel[course.FIRST_DAY : course.PIPPED] += by_day[day] * part
    kernel *= np.log(2) * (1 - sum(LEFT_OVER.values()))
    for place, share in LEFT_OVER.items():
        kernel[place] += np.log(2) * share * by_day.sum()
    return kernel


def by_stage(kernel) -> np.ndarray:
    """Share of a cause's harm at each of `STAGES`, for the words."""
    parts = np.bincount(STAGE_OF_CELL[:-1], kernel, len(STAGES))
    return parts / max(parts.sum(), 1e-12)
