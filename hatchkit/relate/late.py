"""Deaths that are found late: losses after the window that holds the excursion.

The question asked first is about a window's own losses. An embryo killed shortly before a look may still
pass for alive there, or die a day later; it is then counted at the next look, in a window that met no
excursion. Both tables here are looked at beside the question and never change the verdict.
"""

import numpy as np
import pandas as pd

from hatchkit.relate.design import design as make_design
from hatchkit.relate.effect import effect
from hatchkit.relate.excess import unexposed_hazard
from hatchkit.relate.verdict import rules

RATIO_COLUMNS = ["hazard_ratio", "low", "high", "method", "batches", "exposed", "deaths", "deaths_exposed"]
NEXT_COLUMNS = ["batch", "exposed", "name", "at_risk", "died", "expected", "low", "high", "chance"]


def ratios_by_window(design, seed) -> pd.DataFrame:
    """Hazard ratio at the usual dose, each window for itself."""
    rows = []
    for code, name in enumerate(design.windows):
        found = effect(design, rows=design.window == code, seed=seed)
        rows.append([name, *(found[column] for column in RATIO_COLUMNS)])
    return pd.DataFrame(rows, columns=["name", *RATIO_COLUMNS])


def later_losses(table, seed) -> pd.DataFrame:
    """A window's dose against the losses from that window to the end, columns as `ratios_by_window`."""
    usable = table[table["died"].notna() & (table["at_risk"] >= 1)]
    ordered = usable.sort_values(["batch", "day_start"])
    back = ordered[::-1].groupby("batch")
    onward = ordered.assign(died=back["died"].cumsum(), days=back["days"].cumsum())
    return ratios_by_window(make_design(onward.reindex(usable.index)), seed)


def next_windows(design, *, seed=1) -> pd.DataFrame:
    """The window right after each exposed one, beside what batches lose there that met no excursion.

    Parameters
    ----------
    design : Design
    seed : int

    Returns
    -------
    DataFrame
        batch ("all" in the last row), exposed and name (the looks that close the exposed window and the one after
        it), at_risk, died, expected, low, high (95 % of a predictive draw), chance (share of draws
        with as many dead). Only windows that are known to have met no excursion themselves; these windows
        do not teach what is expected. Empty where there is none, or nothing to compare it with.
    """
    after, before = _followers(design)
    leave_out = np.zeros(len(design.rows), bool)
    leave_out[after] = True
    taught = np.isin(design.cell, design.cell[design.known & ~design.exposed & ~leave_out])
    before, after = before[taught[after]], after[taught[after]]
    if len(after) == 0:
        return pd.DataFrame(columns=NEXT_COLUMNS)
    log_hazard, _ = unexposed_hazard(design, seed=seed, leave_out=leave_out)
    eggs = np.round(design.at_risk[after]).astype(int)
    would = np.random.default_rng(seed).binomial(eggs, -np.expm1(-np.exp(log_hazard[:, after])))
    name = design.windows[design.window]
    rows = [
        _line(design.batches[design.batch[at]], name[was], name[at], eggs[k], design.died[at], would[:, k])
        for k, (was, at) in enumerate(zip(before, after, strict=True))
    ]
    rows.append(_line("all", "", "", eggs.sum(), design.died[after].sum(), would.sum(axis=1)))
    return pd.DataFrame(rows, columns=NEXT_COLUMNS)


def _followers(design):
    """Rows known to be unexposed that follow an exposed row of the same batch, and those exposed rows."""
    order = np.lexsort((design.window, design.batch))
    was, at = order[:-1], order[1:]
    follows = (design.batch[was] == design.batch[at]) & design.exposed[was] & design.known[at] & ~design.exposed[at]
    return at[follows], was[follows]


def _line(batch, exposed, name, eggs, died, would):
    tail = 100 * (1 - rules()["interval"]) / 2
    low, high = np.percentile(would, [tail, 100 - tail], method="inverted_cdf")
    return [batch, exposed, name, float(eggs), float(died), would.mean(), low, high, (would >= died).mean()]
