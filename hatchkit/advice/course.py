"""One model of a batch by the day, and how well what was seen agrees with it.

An egg is lost by the first of a row of hazards that strikes it: no germ or none that lived (clear), taken out, death
on each of 21 hen's days, failure at the pip, culled. Ordinary hazards come from what is usual; a cause adds its own to
some of them. All are multiplied by a random factor for each band of days, normal on the log scale with the spread
between batches: that is ordinary luck, and the looseness of the causes' shapes as well. What was seen is a set of
groups of eggs, each of which may have ended in several ways (between two looks, unopened, no known end), so that a
group's probability is a sum over ways. The random factors are integrated out by Laplace's approximation.

Source: competing risks and interval-censored counts as in Turnbull 1976, J. R. Stat. Soc. B 38:290; Laplace's
approximation as in Tierney & Kadane 1986, J. Am. Stat. Assoc. 81:82. Constants stated by hatchkit are named below.
"""

from __future__ import annotations

from functools import cache

import numpy as np

#: Hazards in the order in which they strike; the last cell of the probabilities is a good chick.
DAYS = 21
CLEAR, REMOVED, FIRST_DAY = 0, 1, 2
PIPPED, CULLED = FIRST_DAY + DAYS, FIRST_DAY + DAYS + 1
HAZARDS = CULLED + 1
HATCHED = HAZARDS
CELLS = HAZARDS + 1

#: Order of the stages of `usual` behind the hazards.
ORDER = ("clear", "removed", "early", "mid", "late", "pipped_dead", "culled")

#: Bands that share a random factor: first hen's day of each band of deaths.
BAND_DAYS = (0, 3, 7, 10, 14, 18)
BANDS = 2 + len(BAND_DAYS) + 2
BAND_OF = np.array([0, 1, *(2 + np.searchsorted(BAND_DAYS, np.arange(DAYS), side="right") - 1), BANDS - 2, BANDS - 1])
STAGE_OF_BAND = np.array([0, 1, 2, 2, 3, 3, 4, 4, 5, 6])

#: Correlation of the random factors of two bands of one stage, and variance that all deaths of a batch share.
WITHIN_STAGE, SHARED_VARIANCE = 0.6, 0.04

#: Part of the late dead that are full-grown embryos which fail at hatching (Butcher & Nilipour, EDIS VM095: derived).
FAIL_AT_TERM = 0.4

#: How likely a dead embryo of each hen's day shows as dead: by candling, and on opening after weeks of warmth. Blood
#: ring and dark eye show from day 3 to 4 (extension texts on candling); stated by hatchkit.
SHOWS_AT_CANDLING = np.concatenate([[0.05, 0.25, 0.6, 0.9], np.ones(DAYS - 4)])
SHOWS_ON_OPENING = np.concatenate([[0.2, 0.6, 0.9], np.ones(DAYS - 3)])

#: How often an opened clear that died on a day is taken for one without a germ: the disc of a germ dead within hours
#: is easily taken for an unfertilised one (Wilson, Florida CIR1112: only practice tells; figures stated by hatchkit).
TAKEN_FOR_BARREN = np.concatenate([[0.5, 0.2, 0.05], np.zeros(DAYS - 3)])

#: How loosely a cause's shape is known: as if its share in each band of days had been learned from so many lost eggs,
#: so that a band of three quarters is sure to a factor of 1.8 and a small one to one of three (set by likelihood in
#: worlds that were seen: 8 and 16 eggs, and a smaller bound, fit worse) ...
SHAPE_EGGS, LOOSEST = 4.0, 1.2
#: ... and sd of the log of its size between two of the sizes that are tried.
BETWEEN_SIZES = 0.25

#: Largest part of the usual clears that are embryos dead too early to be seen (stated by hatchkit).
HIDDEN = 0.4

#: Chance that an egg is put down under a wrong heading.
MISCOUNT = 0.01

#: Turns of Newton's method, and the longest step in one band.
TURNS, LONGEST = 12, 1.5


@cache
def _published_days() -> np.ndarray:
    """Share of each hen's day within its stage, by the published course of deaths (Kuurman et al. 2001)."""
    from hatchkit.losses.two_phase_shape import cumulative

    mass = np.diff(cumulative(np.arange(DAYS + 1.0)))
    parts = []
    for first, last in ((0, 7), (7, 14), (14, DAYS)):
        parts.append(mass[first:last] / mass[first:last].sum())
    parts[2] = (1 - FAIL_AT_TERM) * parts[2]
    parts[2][-1] += FAIL_AT_TERM
    return np.concatenate(parts)


def ordinary_hazards(logits) -> np.ndarray:
    """Hazards of an ordinary batch, shape (HAZARDS,), from the log odds of loss at each stage of `ORDER`.

    Embryos of the first days look clear: of the usual clears their part is taken out, and the early dead are scaled
    so that those which show are as many as is usual. At most `HIDDEN` of the usual clears are such embryos; where the
    published course would hide more, the days on which any are hidden are taken down.
    """
    hazard = np.log1p(np.exp(np.asarray(logits, float)))  # -log(1 - share lost)
    days = _published_days()
    out = np.zeros(HAZARDS)
    shows = SHOWS_AT_CANDLING[:7]
    first, most = shows < 1, HIDDEN * hazard[0]
    hides, seen_first, seen_later = ((days[:7] * part).sum() for part in (1 - shows, shows * first, shows * ~first))
    down = min(1.0, most * seen_later / max(hazard[2] * hides - most * seen_first, 1e-9))
    early = days[:7] * np.where(first, down, 1.0) * hazard[2] / (down * seen_first + seen_later)
    out[CLEAR], out[REMOVED] = hazard[0] - float(early @ (1 - shows)), hazard[1]
    out[FIRST_DAY : FIRST_DAY + 7] = early
    out[FIRST_DAY + 7 : FIRST_DAY + 14] = hazard[3] * days[7:14]
    out[FIRST_DAY + 14 : PIPPED] = hazard[4] * days[14:]
    out[PIPPED], out[CULLED] = hazard[5], hazard[6]
    return out


def precision(spread, part=None, loose=None) -> np.ndarray:
    """Inverse covariance of the bands' random factors from the spread of each stage.

    Parameters
    ----------
    spread : array, shape (stages,)
        In the order of `ORDER`.
    part, loose : array, shape (hypotheses, BANDS), optional
        From `loosened`. The spread between batches is that of ordinary hazards: as far as a band is the cause's the
        looseness of its shape stands in.

    Returns
    -------
    array, shape (BANDS, BANDS), or with `part` (hypotheses, BANDS, BANDS)
    """
    sd = np.asarray(spread, float)[STAGE_OF_BAND]
    same = STAGE_OF_BAND[:, None] == STAGE_OF_BAND[None, :]
    cover = np.outer(sd, sd) * np.where(same, WITHIN_STAGE, 0.0)
    cover[2:-1, 2:-1] += SHARED_VARIANCE
    np.fill_diagonal(cover, sd**2)
    if part is not None:
        ordinary = 1 - part
        cover = (
            cover * ordinary[:, :, None] * ordinary[:, None, :]
            + np.eye(BANDS) * (part * loose)[:, None, :] ** 2
            + BETWEEN_SIZES**2 * part[:, :, None] * part[:, None, :]
            + 1e-3 * np.eye(BANDS)
        )
    return np.linalg.inv(cover)


def loosened(base, added) -> tuple[np.ndarray, np.ndarray]:
    """Part of each band's hazard that a cause adds, and sd of the log of its share there; both (hypotheses, BANDS).

    A share learned from n eggs has a log of variance about 1 / (n x share) (as in a Dirichlet distribution).
    """
    onehot = np.eye(BANDS)[BAND_OF]
    mass = added @ onehot
    share = mass / np.maximum(mass.sum(axis=-1, keepdims=True), 1e-12)
    loose = np.minimum(1 / np.sqrt(SHAPE_EGGS * np.maximum(share, 1e-6)), LOOSEST)
    return mass / (base @ onehot + mass + 1e-12), loose


def chances(hazards) -> np.ndarray:
    """Probability of each cell, shape (..., CELLS), from hazards, shape (..., HAZARDS)."""
    passed = np.cumsum(hazards, axis=-1)
    lost = np.exp(hazards - passed) * -np.expm1(-hazards)
    return np.concatenate([lost, np.exp(-passed[..., -1:])], axis=-1)


def log_marginal(ways, eggs, hazards, inverse):
    """Log likelihood of what was seen under each set of hazards, random factors integrated out.

    Parameters
    ----------
    ways : array, shape (groups, CELLS)
        How likely an egg of each cell is put down in each group.
    eggs : array, shape (groups,)
    hazards : array, shape (hypotheses, HAZARDS)
        Ordinary hazards with those of a cause added.
    inverse : array, shape (BANDS, BANDS) or (hypotheses, BANDS, BANDS)

    Returns
    -------
    logs : array, shape (hypotheses,)
        A constant common to all is left out.
    cells : array, shape (hypotheses, groups, CELLS)
        Eggs of each group in each cell, as likely as the best random factors make them.
    """
    hazards = np.asarray(hazards, float)
    inverse = np.broadcast_to(inverse, (len(hazards), BANDS, BANDS))
    factor, onehot = np.zeros((len(hazards), BANDS)), np.eye(BANDS)[BAND_OF]
    for _ in range(TURNS):
        told, slope, bend = _slopes(ways, eggs, hazards, factor, onehot)
        step = np.linalg.solve(bend + inverse, (slope - np.einsum("hij,hj->hi", inverse, factor))[..., None])[..., 0]
        factor = factor + np.clip(step, -LONGEST, LONGEST)
    told, _, bend = _slopes(ways, eggs, hazards, factor, onehot)
    logs = (
        told
        - 0.5 * np.einsum("hi,hij,hj->h", factor, inverse, factor)
        + 0.5 * np.linalg.slogdet(inverse)[1]
        - 0.5 * np.linalg.slogdet(bend + inverse)[1]
    )
    cell = chances(hazards * np.exp(factor)[:, BAND_OF])
    each = ways[None] * cell[:, None, :]
    return logs, eggs[None, :, None] * each / each.sum(axis=2, keepdims=True)


def _slopes(ways, eggs, hazards, factor, onehot):
    """Log likelihood, its slope in the bands' factors, and the sum of squared slopes (its bend)."""
    now = hazards * np.exp(np.clip(factor, -8, 8))[:, BAND_OF]
    cell = chances(now)
    left = np.exp(-np.cumsum(now, axis=1))
    chance = (1 - MISCOUNT) * cell @ ways.T + MISCOUNT / len(ways)
    # A hazard that grows puts more eggs into its own cell and takes them from all later ones.
    later = np.cumsum((ways * cell[:, None, :])[..., :0:-1], axis=2)[..., ::-1]
    by_hazard = now[:, None, :] * (ways[:, :-1] * left[:, None, :] - later)
    relative = (1 - MISCOUNT) * (by_hazard @ onehot) / chance[..., None]
    weighed = relative * eggs[:, None]
    return np.log(chance) @ eggs, weighed.sum(axis=1), weighed.transpose(0, 2, 1) @ relative
