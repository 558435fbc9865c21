"""Which dose stands for an excursion, and on what scale it enters the model."""

import numpy as np
import pandas as pd

from hatchkit import reference
from hatchkit.relate.verdict import rules

#: The question, fixed before any loss is looked at: all excursions of the egg together, heat and cold.
PARTS = ("egg_degree_hours_warm", "egg_degree_hours_cold")


def measures() -> pd.DataFrame:
    """The dose measures (``reference/dose_measures.csv``), index: measure."""
    return reference.load("dose_measures").set_index("measure")


def score(value, measure) -> np.ndarray:
    """Dose on the model's scale: log2(1 + value / half), and 0 below the least that counts.

    Each further doubling of a large dose adds one step, so that one night without power does not outweigh
    all the rest. Log dose is the usual scale of dose and mortality (Bliss 1935, Ann Appl Biol 22:134, from
    memory); the 1 keeps no exposure at 0.

    Parameters
    ----------
    value : array
        In the measure's own unit; missing stays missing.
    measure : str
    """
    line = measures().loc[measure]
    value = np.asarray(value, float)
    counted = np.where(value >= line["least"], np.log2(1 + np.maximum(value, 0) / line["half"]), 0.0)
    return np.where(np.isnan(value), np.nan, counted)


def known_dose(exposure) -> np.ndarray:
    """Scores of heat and cold together per row of the exposure table; missing where the log does not say.

    A window logged for less than the rule's least_logged share is known only if the logged part alone already holds
    a dose that counts.

    Parameters
    ----------
    exposure : DataFrame
        share_logged and the columns in `PARTS`.
    """
    return together(*(_scored(exposure, part) for part in PARTS))


def together(heat, cold):
    """Sum of the two scores; where only one is known it stands if it counts, else the sum is unknown."""
    either = (heat > 0) | (cold > 0)
    return np.where(either, np.nan_to_num(heat) + np.nan_to_num(cold), heat + cold)


def _scored(exposure, measure):
    dose = score(exposure[measure].to_numpy(float), measure)
    thin = ~(exposure["share_logged"].to_numpy(float) >= rules()["least_logged"])
    return np.where(thin & ~(dose > 0), np.nan, dose)
