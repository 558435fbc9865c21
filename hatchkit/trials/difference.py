"""How far two ways of hatching differ over sets and blocks, and how easily the lot alone would do that."""

import numpy as np


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
