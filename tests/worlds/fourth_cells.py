"""What becomes of the eggs of one batch, and as what the keeper counts them: one likelihood for world and oracle.

An egg is infertile, or dies at an age from ordinary causes or from a planted one (whichever comes first), or pips and
dies, or hatches fit or unfit. Given the batch's own levels, eggs are independent, so that the counts are multinomial.
"""

from __future__ import annotations

import numpy as np
from scipy.special import expit, gammaln

from .fourth_causes import BINS

NAMES = (
    "clear1",
    "opened1_infertile",
    "opened1_dead",
    "dead1",
    "clear2",
    "dead2",
    "clear3",
    "dead3",
    "contaminated",
    "broken_infertile",
    "broken_early",
    "broken_mid",
    "broken_late",
    "malpositioned",
    "dead_in_shell",
    "pipped_dead",
    "culled",
    "sound",
)
AT = {name: place for place, name in enumerate(NAMES)}
EARLY = np.exp(-0.5 * ((BINS - 2.8) / 1.5) ** 2)
MIDDLE = ((BINS > 6) & (BINS < 17)).astype(float)
LATE = np.exp(-0.5 * ((BINS - 19.4) / 1.0) ** 2)
ORDINARY = np.array([0.05, 0.018, 0.05, 0.018, 0.015])  # early, middle, late, pipped, culled
SEASON_SD, BATCH_SD = 0.35, 0.30
FERTILE_SD, FERTILE_BATCH_SD = 0.55, 0.35


def season_levels(draw, n, age_weeks, stored):
    """Levels that all batches of a season share: logit of fertility (n), log of the ordinary deaths (n x 5)."""
    tired, kept = max(age_weeks - 45, 0) / 50, max(stored - 6, 0) / 8
    fertile = draw.normal(2.3 - 0.6 * tired - 0.15 * kept, FERTILE_SD, n)
    deaths = np.log(ORDINARY) + draw.normal(0, SEASON_SD, (n, 5))
    deaths[:, 0] += 0.35 * kept + 0.2 * tired
    return fertile, deaths


def batch_levels(draw, fertile, deaths):
    """The batch's own levels about those of its season: fertile share, ordinary deaths (n x 5)."""
    own = np.exp(deaths + draw.normal(0, BATCH_SD, deaths.shape))
    own *= np.minimum(1.0, 0.6 / own.sum(1))[:, None]
    return expit(fertile + draw.normal(0, FERTILE_BATCH_SD, len(fertile))), own


def counting(habits, looks):
    """As what an egg that died in each bin is counted.

    Parameters
    ----------
    habits : dict opens (unhatched eggs), opens_clears
    looks : dict of look 1, 2, 3 -> age in days (of 21); a look that the keeper does not hold is absent

    Returns
    -------
    dead : 42 x 18, infertile : 18 (rows add up to 1)
    """
    dead, infertile = np.zeros((len(BINS), len(NAMES))), np.zeros(len(NAMES))
    seems_clear = np.interp(BINS, [1.0, 4.0], [0.97, 0.04])
    there, bare = np.ones(len(BINS)), 1.0
    for look in sorted(looks):
        found = there * np.where(BINS + 0.4 < looks[look], np.clip((looks[look] - BINS) / 2.0, 0.25, 0.92), 0.0)
        there = there - found
        clear, dull = found * seems_clear, found * (1 - seems_clear)
        if look == 1 and habits["opens_clears"]:
            dead[:, AT["opened1_dead"]] += 0.85 * clear
            dead[:, AT["opened1_infertile"]] += 0.15 * clear
            infertile[AT["opened1_infertile"]] += 0.95 * 0.96 * bare
            infertile[AT["opened1_dead"]] += 0.95 * 0.04 * bare
        else:
            dead[:, AT[f"clear{look}"]] += clear
            infertile[AT[f"clear{look}"]] += 0.95 * bare
        dead[:, AT[f"dead{look}"]] += dull
        bare *= 0.05
    if not habits["opens"]:
        dead[:, AT["dead_in_shell"]] += there
        infertile[AT["dead_in_shell"]] += bare
        return dead, infertile
    early, late = expit((7 - BINS) / 0.5), expit((BINS - 14) / 0.5)
    as_infertile = np.interp(BINS, [1.0, 4.0], [0.35, 0.03])
    for name, share in (
        ("broken_infertile", as_infertile),
        ("broken_early", (1 - as_infertile) * early),
        ("broken_late", (1 - as_infertile) * late),
        ("broken_mid", (1 - as_infertile) * np.clip(1 - early - late, 0, 1)),
    ):
        dead[:, AT[name]] += there * share
    infertile[AT["broken_infertile"]] += 0.93 * bare
    infertile[AT["broken_early"]] += 0.07 * bare
    return dead / dead.sum(1)[:, None], infertile


def chances(levels, planted, count, habits):
    """Probability of each count's cell for one egg.

    Parameters
    ----------
    levels : (fertile n, ordinary n x 5)
    planted : list of (Cause, k (n), shares dict); none, one or two
    count : what `counting` gives

    Returns
    -------
    array n x 18
    """
    fertile, own = levels
    dead, infertile = count
    ordinary = sum(own[:, [i]] * (shape / shape.sum()) for i, shape in enumerate((EARLY, MIDDLE, LATE)))
    kills, struck_alive = [ordinary], []
    for _, k, share in planted:
        fertile = fertile * (1 - k * share["infertile"])
        rest = k * (1 - share["infertile"])
        kills.append((rest * (1 - share["pipped"] - share["culled"]))[:, None] * share["ages"])
        struck_alive.append((rest * share["pipped"], rest * share["culled"]))
    alive = [1 - np.cumsum(kill, 1) + 0.5 * kill for kill in kills]
    last = [1 - kill.sum(1) for kill in kills]
    out = np.zeros((len(fertile), len(NAMES)))
    marks = [(0.10, 0.22), *((cause.rotten, cause.wrong) for cause, _, _ in planted)]
    for place, (kill, (rotten, wrong)) in enumerate(zip(kills, marks, strict=True)):
        for other, still in enumerate(alive):
            if other != place:
                kill = kill * still
        counted = kill @ dead * (1 - rotten)
        if habits["opens"] and habits["counts_wrong"]:
            lying = counted[:, AT["broken_late"]] * wrong
            counted[:, AT["broken_late"]] -= lying
            counted[:, AT["malpositioned"]] += lying
        counted[:, AT["contaminated"]] += kill.sum(1) * rotten
        out += counted
    end = np.prod(last, axis=0)
    pipped, culled = own[:, 3], own[:, 4]
    for (more_pipped, more_culled), left in zip(struck_alive, last[1:], strict=True):
        pipped = 1 - (1 - pipped) * (1 - np.clip(more_pipped / left, 0, 1))
        culled = 1 - (1 - culled) * (1 - np.clip(more_culled / np.maximum(left - more_pipped, 1e-3), 0, 1))
    out[:, AT["pipped_dead"]] += end * pipped
    out[:, AT["culled"]] += end * (1 - pipped) * culled
    out[:, AT["sound"]] += end * (1 - pipped) * (1 - culled)
    out *= fertile[:, None]
    out += (1 - fertile)[:, None] * infertile
    out = np.maximum(out, 0)
    return out / out.sum(1)[:, None]


def log_likelihood(counts, chance):
    """Log of the multinomial probability of `counts` (18) under each row of `chance` (n x 18)."""
    seen = counts > 0
    return (
        gammaln(counts.sum() + 1)
        - gammaln(counts + 1).sum()
        + np.log(np.maximum(chance[:, seen], 1e-12)) @ counts[seen]
    )
