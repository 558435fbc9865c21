"""How does a column of numbers behave? Used where no heading says what it is, and to check what a heading says."""

from __future__ import annotations

import numpy as np

#: Where the air of an incubator stands: °C, °F, K. Common practice, no source.
_WARM = {"C": (33.0, 41.0), "F": (92.0, 106.0), "K": (306.0, 314.5)}
#: Where an egg store or a room stands, less telling.
_COOL = {"C": (8.0, 33.0), "F": (50.0, 92.0), "K": (281.0, 306.0)}


def counts_up(values) -> bool:
    """A running number; a repeated or missing line is allowed."""
    values = np.asarray(values, dtype=float)
    if len(values) < 3 or (values != np.round(values)).any():
        return False
    step = np.diff(values)
    usual = np.median(step)
    return bool(usual >= 1 and (step == usual).mean() >= 0.7 and (step >= 0).all())


def is_hour(values) -> bool:
    """Whole numbers that go round from 0 to 23 (or 1 to 24)."""
    values = np.asarray(values, dtype=float)
    if len(values) < 12 or (values != np.round(values)).any() or values.min() < 0 or values.max() > 24:
        return False
    step = np.diff(values)
    return bool(np.isin(step, (0, 1, -23)).mean() > 0.95 and len(np.unique(values)) > 1)


def falls_slowly(values) -> bool:
    """A battery: never up by more than it fell, few values, ending at or below its beginning."""
    values = np.asarray(values, dtype=float)
    step = np.diff(values)
    if len(values) < 10 or not step.any():
        return False
    return bool(
        (step > 0).sum() <= 0.02 * len(step) and values[-1] < values[0] and len(np.unique(values)) < 0.5 * len(values)
    )


def is_constant(values) -> bool:
    """One value throughout."""
    values = np.asarray(values, dtype=float)
    return len(values) > 3 and bool((values == values[0]).all())


def warmth(values) -> tuple[float, str]:
    """How much a column behaves like the air of an incubator (0 to 1), and the unit in which it does.

    Air of an incubator keeps near one temperature and changes slowly.
    """
    values = np.asarray(values, dtype=float)
    if len(values) < 2 or is_hour(values) or counts_up(values):
        return 0.0, ""
    middle, near = float(np.median(values)), float(np.percentile(np.abs(np.diff(values)), 75))
    for share, ranges in ((1.0, _WARM), (0.4, _COOL)):
        for unit, (low, high) in ranges.items():
            if low <= middle <= high:
                slow = 1.0 if near <= (2.0 if unit == "F" else 1.2) else 0.4
                whole = 0.8 if (values == np.round(values)).all() else 1.0
                still = 0.6 if is_constant(values) or falls_slowly(values) else 1.0
                return share * slow * whole * still, unit
    return 0.0, ""


def dampness(values, warm=None) -> float:
    """How much a column behaves like relative humidity (0 to 1): within 5 to 100, alive, moving against the warmth."""
    values = np.asarray(values, dtype=float)
    if len(values) < 2 or values.min() < 0 or values.max() > 101 or is_hour(values) or counts_up(values):
        return 0.0
    middle = float(np.median(values))
    if not 5 <= middle <= 99 or is_constant(values) or falls_slowly(values):
        return 0.1 * (15 <= middle <= 95)
    score = 0.7 if 20 <= middle <= 90 else 0.4
    if warm is not None and len(warm) == len(values) and np.std(warm) > 0 and np.std(values) > 0:
        score -= 0.15 * float(np.corrcoef(warm, values)[0, 1])
    return float(np.clip(score, 0.0, 1.0))
