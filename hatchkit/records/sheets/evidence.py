"""What the arithmetic of a sheet says for one reading of its columns; the one place that states its weights."""

from __future__ import annotations

import numpy as np

from hatchkit.records.sheets.layout import Layout
from hatchkit.records.sheets.ledger import Account

#: Natural log of odds for a reading, per row: the eggs add up where they could have failed to; they add up because a
#: loss was worked out; some are missing though the end was counted; some are missing; more eggs than were set.
ROW_ADDS_UP, ROW_DERIVED, ROW_SHORT_OF_END, ROW_SHORT, ROW_OVER = 2.0, 0.4, -0.8, -0.2, -3.0
#: A keeper miscounts by an egg or two: that speaks less against a reading.
ROW_OVER_BY_FEW, FEW = -1.0, 2
#: For each look whose eggs left are written: they are what the losses leave; they lie between those before and after.
LOOK_CLOSES, LOOK_BETWEEN = 1.0, 0.7
#: A percentage that the keeper worked out is that of hatched, fertile or clear eggs; this near, in points.
PERCENT_FITS, NEAR = 0.8, 0.6
#: Rows beyond this many say nothing new.
MOST_ROWS = 8


def evidence(result: Account, layout: Layout) -> float:
    """What the arithmetic says for a layout: natural log of odds, the mean row times at most `MOST_ROWS` rows."""
    usable = ~np.isnan(result.set)
    if not usable.any():
        return 0.0
    ended = any(name in layout.fields for name in ("dis", "unhatched"))
    over = result.broken | (result.rest < 0)
    score = np.where(
        over,
        np.where(~result.broken & (result.rest >= -FEW), ROW_OVER_BY_FEW, ROW_OVER),
        np.where(
            result.rest == 0,
            np.where(result.tested, ROW_ADDS_UP, ROW_DERIVED),
            ROW_SHORT_OF_END if ended else ROW_SHORT,
        ),
    )
    score = np.where(np.isnan(result.hatched) & ~over, 0.0, score)
    for look in result.looks:
        between = look["derived"] & ~np.isnan(result.hatched)
        score = score + np.where(over, 0.0, LOOK_CLOSES * look["closes"] + LOOK_BETWEEN * between)
    score = score[usable]
    return float(score.mean() * min(len(score), MOST_ROWS))


def fit_of(result: Account, percents) -> float:
    """What the percentages on a sheet say for an account: the best of what each may be a percentage of.

    Parameters
    ----------
    result : Account
    percents : sequence of ndarray of float
        Columns of percentages, in points.
    """
    clear = sum((np.nan_to_num(look["clear"]) for look in result.looks), np.zeros(len(result.set)))
    fertile = result.set - clear
    told = clear > 0
    score = 0.0
    with np.errstate(divide="ignore", invalid="ignore"):
        shares = [result.hatched / result.set]
        shares += [np.where(told, share, np.nan) for share in (result.hatched / fertile, fertile / result.set)]
    for percent in percents:
        fits = max(float((np.abs(100 * share - percent) <= NEAR).sum()) for share in shares)
        score += PERCENT_FITS * min(fits, MOST_ROWS)
    return score
