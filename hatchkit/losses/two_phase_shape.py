"""The published two-phase shape of deaths over incubation: many early, few in the middle, some at the end."""

import numpy as np

from hatchkit.losses.stages import CHICKEN_DAYS

#: Published shape of hen embryo deaths: share of phase 1, then Weibull shape and scale (days) of each phase.
#: Source: Kuurman et al. 2001 Poult. Sci. 80:710-717 give phase 1 as 77 % of deaths with mean 2.6 d, SD 3.3 d
#: and phase 2 as 23 % with mean 17.4 d, SD 2.0 d; the Weibull figures are derived from these means and SDs.
PUBLISHED = (0.77, 0.795, 2.284, 10.49, 18.25)


def cumulative(age_days, incubation_days: float = CHICKEN_DAYS, shape=PUBLISHED):
    """Share of all deaths that have happened by `age_days`.

    Parameters
    ----------
    age_days : number or array
        Days since setting.
    incubation_days : float
        Other species: ages scaled to the hen's 21 days, which no source endorses; approximate.
    shape : tuple of 5 floats
        Share of phase 1; Weibull shape and scale in days of phase 1 and of phase 2.
    """
    first, k1, s1, k2, s2 = shape
    age = np.maximum(np.asarray(age_days, dtype=float), 0.0) * (CHICKEN_DAYS / incubation_days)
    with np.errstate(over="ignore"):
        early, late = 1 - np.exp(-((age / s1) ** k1)), 1 - np.exp(-((age / s2) ** k2))
    return first * early + (1 - first) * late
