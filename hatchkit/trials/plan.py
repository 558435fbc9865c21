"""How many eggs in how many sets, and which go where: the plan of a split trial, made before the first egg is set."""

import math
from dataclasses import dataclass

import numpy as np
import pandas as pd

from hatchkit.problems import HatchkitError

#: What may be asked of a trial: outcome -> (words of the sheet that count as success, words that take an egg out).
OUTCOMES = {
    "hatch": ("hatched", ""),
    "fertility": ("hatched dead pipped", ""),
    "hatch_of_fertile": ("hatched", "clear"),
}
#: A trial is planned so that the difference asked for is found in 8 of 10 such trials, at 1 in 20 by luck alone.
POWER, CHANCE = 0.8, 0.05
#: Where a keeper has no batch on record (extension handbooks give 0.6 to 0.85 of eggs set for small flocks; from
#: memory).
USUAL = {"hatch": 0.7, "fertility": 0.85, "hatch_of_fertile": 0.82}
#: No trial is planned over more sets than this.
MOST_SETS = 40
SHEET = ["set", "egg", "block", "arm", "result"]


@dataclass(frozen=True)
class Plan:
    """A trial as it was drawn up.

    Attributes
    ----------
    arms : tuple of str
        The usual way first, then the one that is tried.
    outcome : str
        hatch, fertility or hatch_of_fertile.
    usual, difference : float
        Share to be expected in the usual way, and the difference that must not be missed.
    eggs, sets : int
        Eggs in each set, and sets.
    needed : int
        Eggs of each arm that the difference asks for.
    power : float
        Share of such trials that would show that difference, simulated with the very analysis.
    blocks : tuple
        (name, eggs of each set): hens or pens; eggs are dealt within each.
    sheet : DataFrame
        set, egg, block, arm, result (empty): which egg goes where.
    seed : int
    """

    arms: tuple
    outcome: str
    usual: float
    difference: float
    eggs: int
    sets: int
    needed: int
    power: float
    blocks: tuple
    sheet: pd.DataFrame
    seed: int


def trial(
    season=None,
    *,
    arms=("as usual", "the new way"),
    outcome="hatch",
    difference=0.1,
    eggs=40,
    blocks=None,
    sets=None,
    seed=None,
) -> Plan:
    """Plan a split trial.

    Parameters
    ----------
    season : Season, optional
        The keeper's own seasons, which say what share is usual.
    arms : (str, str)
        The usual way and the one that is tried.
    outcome : {"hatch", "fertility", "hatch_of_fertile"}
    difference : float
        The difference of shares that must not be missed, such as 0.1.
    eggs : int
        Eggs that fit into one set (both arms together).
    blocks : dict, optional
        Hen or pen -> eggs of it in each set; they add up to `eggs`. Eggs are dealt within each block.
    sets : int, optional
        So many sets instead of as many as the difference asks for.
    seed : int, optional
        For the lot; drawn and kept in the plan if left out.

    Returns
    -------
    Plan

    Raises
    ------
    HatchkitError

    Notes
    -----
    Both arms lie in every set, so what sets differ by falls out, and the eggs needed are those of two shares compared:
    n = (z + z')^2 (p q + p' q') / d^2 of each arm (Fleiss 1981, Statistical Methods for Rates and Proportions, from
    memory). The arms must lie in one machine, or in two that change places from set to set.
    """
    _check(arms, outcome, difference, eggs, blocks)
    seed = int(np.random.SeedSequence().entropy % 2**31) if seed is None else int(seed)
    usual = _usual(season, outcome)
    needed = eggs_needed(usual, difference)
    sets = sets or min(max(math.ceil(2 * needed / eggs), 1), MOST_SETS)
    blocks = tuple((str(name), int(count)) for name, count in (blocks or {"all": eggs}).items())
    sheet = deal(arms, sets, blocks, np.random.default_rng(seed))
    power = power_of(sheet, arms, usual, difference, seed=seed)
    return Plan(tuple(map(str, arms)), outcome, usual, difference, eggs, sets, needed, power, blocks, sheet, seed)


def _check(arms, outcome, difference, eggs, blocks) -> None:
    if len(arms) != 2 or len({str(arm).strip() for arm in arms}) != 2 or not all(str(arm).strip() for arm in arms):
        raise HatchkitError("trial_arms", {})
    if outcome not in OUTCOMES:
        raise HatchkitError("trial_outcome", dict(outcome=str(outcome), known=list(OUTCOMES)))
    if not 0.01 <= difference <= 0.6:
        raise HatchkitError("trial_difference", dict(difference=float(difference)))
    if not 4 <= eggs <= 20_000:
        raise HatchkitError("trial_eggs", dict(eggs=int(eggs)))
    if blocks and (sum(blocks.values()) != eggs or min(blocks.values()) < 1):
        raise HatchkitError("trial_blocks", dict(sum=int(sum(blocks.values())), eggs=int(eggs)))


def _usual(season, outcome) -> float:
    """The keeper's own share of this outcome, held off nought and one."""
    from hatchkit.yearly.outcomes import counted, outcomes

    if season is None:
        return USUAL[outcome]
    _, count, total = counted(outcomes(season), outcome)
    return float(np.clip((count.sum() + 1) / (total.sum() + 2), 0.05, 0.95)) if total.sum() >= 20 else USUAL[outcome]


def eggs_needed(usual: float, difference: float) -> int:
    """Eggs of each arm by which a rise from `usual` by `difference` (a fall, where no room is left) is found."""
    from scipy.special import ndtri

    other = _other(usual, difference)
    spread = usual * (1 - usual) + other * (1 - other)
    return math.ceil((ndtri(1 - CHANCE / 2) + ndtri(POWER)) ** 2 * spread / difference**2)


def _other(usual: float, difference: float) -> float:
    """The share of the new way: higher by the difference, or lower where no room is left above."""
    return usual + difference if usual + difference < 0.99 else usual - difference


def deal(arms, sets, blocks, rng) -> pd.DataFrame:
    """Which egg goes where: half of each block to each arm, in every set; an odd egg by lot."""
    rows = []
    for number in range(1, sets + 1):
        egg = 0
        for name, count in blocks:
            half = [0] * (count // 2) + [1] * (count // 2) + ([int(rng.integers(2))] if count % 2 else [])
            for arm in rng.permutation(half):
                egg += 1
                rows.append((number, egg, name, str(arms[arm]), ""))
    return pd.DataFrame(rows, columns=SHEET)


def power_of(sheet, arms, usual, difference, *, trials=200, seed=1) -> float:
    """Share of trials by this plan that would show the difference, by the analysis of the plan."""
    rng = np.random.default_rng(seed)
    new = (sheet["arm"] == str(arms[1])).to_numpy()
    strata = (sheet["set"].astype(str) + "|" + sheet["block"]).to_numpy()
    other = _other(usual, difference)
    sets = sheet["set"].to_numpy() - 1
    found = 0
    for _ in range(trials):
        # Sets differ by a spread of 0.4 on the log odds, alike for both arms.
        level = 0.4 * rng.standard_normal(sets.max() + 1)[sets]
        share = np.where(new, other, usual)
        odds = np.exp(np.log(share / (1 - share)) + level)
        good = rng.random(len(sheet)) < odds / (1 + odds)
        found += chance_of(good, new, strata, draws=199, seed=int(rng.integers(1e9))) <= CHANCE
    return found / trials


def chance_of(good, new, strata, *, draws=9999, seed=1) -> float:
    """Share of dealings within strata with as large a difference either way; the seen one counts in."""
    good, new = np.asarray(good, float), np.asarray(new, bool)
    rng = np.random.default_rng(seed)
    seen, drawn = 0.0, np.zeros(draws)
    for label in np.unique(strata):
        own = np.flatnonzero(strata == label)
        tried, hits, size = int(new[own].sum()), int(good[own].sum()), len(own)
        expected = tried * hits / size
        seen += good[own][new[own]].sum() - expected
        if 0 < tried < size and 0 < hits < size:
            drawn += rng.hypergeometric(hits, size - hits, tried, size=draws) - expected
    return float((1 + (np.abs(drawn) >= abs(seen) - 1e-9).sum()) / (1 + draws))


def risk_difference(good, new, strata) -> tuple[float, float, float]:
    """Mantel-Haenszel difference of shares with a 95 % interval (variance of Sato 1989)."""
    weight, above, spread = 0.0, 0.0, np.zeros(2)
    for label in np.unique(strata):
        own = strata == label
        a, m = good[own & new].sum(), (own & new).sum()
        b, n = good[own & ~new].sum(), (own & ~new).sum()
        if m == 0 or n == 0:
            continue
        total = m + n
        above += (a * n - b * m) / total
        weight += m * n / total
        p = (m**2 * b - n**2 * a + m * n * (n - m) / 2) / total**2
        q = (a * (n - b) + b * (m - a)) / (2 * total)
        spread += np.array([p, q])
    difference = above / weight
    error = np.sqrt(max(difference * spread[0] + spread[1], 0.0)) / weight
    return float(difference), float(max(difference - 1.96 * error, -1)), float(min(difference + 1.96 * error, 1))
