"""The chance of enough chicks for every number of eggs: the curve behind the plan's few rows."""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit.advice.plan import own_hatch, published_level
from hatchkit.usual import beta_binomial

#: Points of the curve: enough for a smooth line.
POINTS = 60
#: The curve goes on beyond the surest number by this part, so that it is seen to flatten.
BEYOND = 1.35


def egg_chances(season, plan) -> pd.DataFrame:
    """Chance of at least the plan's chicks against the number of eggs set.

    Parameters
    ----------
    season : Season
    plan : Plan

    Returns
    -------
    DataFrame
        eggs (from as many as the chicks wanted), chance (0 to 1), by the same prediction as ``plan.eggs``.
    """
    basis = plan.basis
    own, level = own_hatch(season, basis["species"]), published_level(basis["species"])
    weight = beta_binomial.learn(own["hatched"], own["eggs_set"], level["share_of_set"], level["sd"])
    most = plan.eggs["eggs"].dropna()
    last = BEYOND * float(most.max()) if len(most) else 3.0 * basis["chicks"]
    eggs = np.unique(np.linspace(basis["chicks"], max(last, basis["chicks"] + 2), POINTS).round().astype(int))
    chance = [float(beta_binomial.chance_learned(weight, basis["chicks"], int(number))) for number in eggs]
    return pd.DataFrame({"eggs": eggs, "chance": chance})
