"""The eggs must add up: a reading of columns as looks and ends, tried on the rows.

Set = clears + dead + pipped + removed + dead in shell + hatched, where all were kept; eggs left after a look = left
before - losses; no loss is negative. What each kind of agreement weighs is stated in `evidence`.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from hatchkit.records.sheets.layout import Layout

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


@dataclass
class Account:
    """A layout worked out on rows: losses by look and end, and whether the eggs add up.

    Attributes
    ----------
    set, hatched, dis, pipped, removed : ndarray of float, shape (n,)
        NaN where neither written nor to be worked out.
    looks : list of dict
        clear, dead, removed, left per look; arrays; `derived` marks dead that were worked out.
    rest : ndarray
        Eggs set less all that is told of; negative if there are too many.
    broken : ndarray of bool
        A loss would be negative.
    tested : ndarray of bool
        The eggs could have failed to add up.
    """

    set: np.ndarray
    hatched: np.ndarray
    dis: np.ndarray
    pipped: np.ndarray
    removed: np.ndarray
    looks: list
    rest: np.ndarray
    broken: np.ndarray
    tested: np.ndarray
    dis_derived: np.ndarray


def account(layout: Layout, values, everything=None) -> Account:
    """Work a layout out on rows.

    Parameters
    ----------
    layout : Layout
    values : sequence of ndarray of float
        Counts by place of the column; NaN where nothing is written.
    everything : sequence of ndarray of float, optional
        By place: how many the cell leaves out that says "all" ("all but one"); NaN where it does not.
    """
    n = len(values[0]) if len(values) else 0
    nothing = np.full(n, np.nan)

    def of(name):
        parts = [values[place] for place in layout.fields.get(name, ())]
        return _sum_known(*parts) if parts else nothing

    eggs = of("eggs_set")
    inside, broken, looks = eggs.copy(), np.zeros(n, dtype=bool), []
    fertile = of("fertile")
    no_clears = np.isnan(fertile).all() and not any("clear" in look.fields for look in layout.looks)
    unplaced = np.nansum([of("removed"), of("rotten"), of("cracked")], axis=0)
    placed, written, counted = np.zeros(n), np.zeros(n), eggs.copy()
    for number, look in enumerate(layout.looks):
        part = _one_look(look, values, inside, broken, everything)
        if "dead" not in look.fields:
            _gap_of_removed(part, unplaced, placed)
        if number == 0 and "clear" not in look.fields and not np.isnan(fertile).all():
            _from_fertile(part, eggs, fertile, broken)
        elif number == 0 and no_clears and part["derived"].any():
            # Nobody told clear from dead here: what went at the first look is clear, which may be either.
            part["clear"] = np.where(part["derived"], part["dead"], part["clear"])
            part["dead"] = np.where(part["derived"], np.nan, part["dead"])
        # Losses written since the eggs were counted last that explain how many are left now.
        written = written + part["out"]
        part["closes"] = (written > 0) & ~np.isnan(part["left"]) & (part["left"] == counted - written)
        counted = np.where(np.isnan(part["left"]), counted, part["left"])
        written = np.where(np.isnan(part["left"]), written, 0.0)
        inside = part["inside"]
        looks.append(part)
    if not layout.looks and not np.isnan(fertile).all():
        part = dict(
            clear=eggs - fertile,
            dead=nothing.copy(),
            removed=nothing.copy(),
            left=nothing.copy(),
            derived=np.zeros(n, bool),
            inside=np.where(np.isnan(fertile), eggs, fertile),
            closes=np.zeros(n, bool),
        )
        broken |= _zero(part["clear"]) < 0
        inside = part["inside"]
        looks.append(part)
    return _end(layout, of, eggs, inside, broken, looks, everything, placed)


def _one_look(look, values, inside, broken, everything) -> dict:
    n = len(inside)

    def of(name):
        place = look.fields.get(name)
        return np.full(n, np.nan) if place is None else values[place].copy()

    clear, dead, left = of("clear"), of("dead"), of("left")
    removed = np.full(n, np.nan)
    for name in ("removed", "rotten", "cracked"):
        if name in look.fields:
            removed = np.where(np.isnan(of(name)), removed, _zero(removed) + of(name))
    if everything is not None and "left" in look.fields:
        told = _zero(clear) + _zero(dead) + _zero(removed)
        left = _all_but(everything[look.fields["left"]], inside, told, left)
    out = _zero(clear) + _zero(dead) + _zero(removed)
    derived = ~np.isnan(left) & ~np.isnan(inside) & np.isnan(dead)
    gap = inside - out - left
    if "dead" not in look.fields or derived.any():
        dead = np.where(derived, gap, dead)
        broken |= derived & (gap < 0)
    checked = ~np.isnan(left) & ~derived & ~np.isnan(inside)
    broken |= checked & (gap < 0)
    after = np.where(np.isnan(left), inside - out, left)
    short = np.where(checked & (gap > 0), gap, 0.0)
    return dict(clear=clear, dead=dead, removed=removed, left=left, derived=derived, inside=after, short=short, out=out)


def _gap_of_removed(part: dict, unplaced, placed) -> None:
    """Eggs taken out on a day that no column names are missing at the next count, and are no dead of that look."""
    found = np.where(part["derived"], np.clip(_zero(part["dead"]), 0.0, unplaced - placed), 0.0)
    part["dead"] = part["dead"] - found
    part["removed"] = np.where(found > 0, _zero(part["removed"]) + found, part["removed"])
    placed += found


def _from_fertile(part: dict, eggs, fertile, broken) -> None:
    """Clears of the first look from the number of fertile eggs."""
    clears = eggs - fertile
    known = ~np.isnan(clears)
    taken = known & part["derived"]
    part["dead"] = np.where(taken, part["dead"] - clears, part["dead"])
    part["inside"] = np.where(known & ~taken & np.isnan(part["left"]), part["inside"] - clears, part["inside"])
    part["clear"] = np.where(known, clears, part["clear"])
    broken |= known & (clears < 0) | taken & (_zero(part["dead"]) < 0)


def _end(layout, of, eggs, inside, broken, looks, everything, placed) -> Account:
    zero = _zero
    pipped, unhatched, dis = of("pipped"), of("unhatched"), of("dis")
    removed = _sum_known(of("removed"), of("rotten"), of("cracked")) - placed
    within = layout.pipped_within
    if "unhatched" in layout.fields:
        dis = np.where(np.isnan(unhatched), dis, unhatched - (zero(pipped) if within else 0.0))
        broken |= zero(dis) < 0
    elif within and "dis" in layout.fields:
        dis = dis - zero(pipped)
        broken |= zero(dis) < 0
    opened = _sum_known(*(of(name) for name in ("broken_infertile", "broken_early", "broken_mid", "broken_late")))
    end_loss = np.where(np.isnan(dis), zero(opened), np.maximum(zero(dis), zero(opened)))
    hatched = _hatched(layout, of, inside, everything, end_loss + zero(pipped), zero(removed))
    # Chicks in good health are some of those that hatched.
    broken |= _zero(of("healthy")) > np.where(np.isnan(hatched), np.inf, hatched)
    last = looks[-1] if looks else None
    counted_last = np.zeros(len(eggs), bool) if last is None else ~np.isnan(last["left"])
    derived = counted_last & np.isnan(dis) & np.isnan(opened) & ~np.isnan(hatched)
    worked_out = inside - zero(hatched) - zero(pipped) - zero(removed)
    dis = np.where(derived, worked_out, dis)
    broken |= derived & (worked_out < 0)
    end_loss = np.where(derived, worked_out, end_loss)
    short = sum((look["short"] for look in looks if "short" in look), np.zeros(len(eggs)))
    rest = inside - zero(hatched) - end_loss - zero(pipped) - zero(removed)
    rest = np.where(rest < 0, rest, rest + short)
    tested = ~np.isnan(eggs) & ~np.isnan(hatched) & ~derived
    return Account(eggs, hatched, dis, pipped, removed, looks, rest, broken, tested, derived)


def _all_but(everything, inside, told, written):
    """What "all" is of the eggs inside: those that are told of elsewhere or that it leaves out are no part of it."""
    return np.where(np.isnan(everything), written, inside - np.fmax(everything, told))


def _hatched(layout, of, inside, everything, lost, removed):
    hatched, culled, healthy = of("hatched"), of("culled"), of("healthy")
    if everything is not None and layout.fields.get("hatched"):
        hatched = _all_but(everything[layout.fields["hatched"][0]], inside - removed, lost, hatched)
    if np.isnan(hatched).all() and not np.isnan(healthy).all():
        hatched = healthy
    if layout.culled_apart:
        hatched = hatched + _zero(culled) + _zero(of("weak"))
    return hatched


def _zero(values):
    """Not written counts as none (np.nan_to_num takes eight times as long on short arrays)."""
    return np.where(np.isnan(values), 0.0, values)


def _sum_known(*parts):
    return np.where(np.logical_and.reduce([np.isnan(part) for part in parts]), np.nan, sum(map(_zero, parts)))
