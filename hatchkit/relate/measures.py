"""Which dose stands for heat or cold, and on what scale it enters the model."""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit import reference
from hatchkit.relate.verdict import rules


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
    return np.where(np.isnan(value), np.nan,
                    np.where(value >= line["least"], np.log2(1 + np.maximum(value, 0) / line["half"]), 0.0))


def unscored(dose, measure) -> float:
    """The value in the measure's unit that has this score."""
    return float((2.0 ** dose - 1) * measures().loc[measure, "half"])


def known_dose(exposure, measure) -> np.ndarray:
    """Scores of one measure per row of the exposure table; missing where the log does not say.

    A window logged for less than the rule's least_logged share is known only if the logged part alone
    already holds a dose that counts.
    """
    dose = score(exposure[measure].to_numpy(float), measure)
    thin = ~(exposure["share_logged"].to_numpy(float) >= rules()["least_logged"])
    return np.where(thin & ~(dose > 0), np.nan, dose)


def primary(exposure) -> tuple:
    """The first-named dose and why, chosen from the temperatures alone and before any loss is looked at."""
    table = measures()
    hit = {name: exposure.loc[known_dose(exposure, name) > 0, "batch"].nunique()
           for name in table.index[table["primary"] == "yes"]}
    chosen = max(hit, key=hit.get)
    kinds = [f"{count} of {exposure['batch'].nunique()} batches met {table.loc[name, 'kind']}"
             for name, count in hit.items()]
    return chosen, f"{' and '.join(kinds)}, so {table.loc[chosen, 'kind']} was named first, before any loss was looked at"
