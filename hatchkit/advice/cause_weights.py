"""The weight of every cause of one batch, alone and in pairs, and the eggs that each would account for.

1. Pattern: the likelihood of what was seen under the cause (`course.log_marginal`), averaged over its ways and sizes,
   against that of ordinary luck.
2. Evidence: a factor for each fact of log, records and remarks (`evidence.told`); what is not known counts 1.
3. Both and the prior odds are multiplied. A pair of causes has both evidences, both prior odds and the pattern of
   both harms together; each of the two has half its weight, for neither is less true for costing fewer eggs. Weights
   over all candidates add up to 1.

Source: Bayes factors as in Kass & Raftery 1995, J. Am. Stat. Assoc. 90:773. Priors and the trust in patterns are stated
by hatchkit; they were set in a family of made worlds (tests/benchmarks/world_family.py), not in one.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

import numpy as np

from hatchkit import reference
from hatchkit.advice import course, harm
from hatchkit.advice.published import STAGES
from hatchkit.advice.seen import Seen
from hatchkit.usual.stages import Usual

UNNAMED = ("bad_luck", "unlisted")

#: Prior shares before anything is looked at; the rest goes to the named causes by commonness.
PRIOR_BAD_LUCK, PRIOR_UNLISTED = 0.3, 0.015

#: "Unlisted" allows any pattern: the usual shares, but stages that stray by this (log odds).
UNLISTED_SD = 1.5

#: Shapes of causes are rough. The log of a pattern's factor counts whole up to the first number and by the second
#: beyond it, so that no pattern alone outvotes a measured dose.
PATTERN_WHOLE, PATTERN_BEYOND = 6.0, 0.6

#: So many causes, those with most weight, are each tried together with every other one: what the first leaves open is
#: often explained by one that alone has little weight.
PAIRED = 3

#: Prior odds of a second cause are this part of what they are for a first one: about one poor batch in five has two.
#: A first cause is looked for because the batch was poor; nothing of that speaks for a second.
SECOND = 0.15

NEVER_TOGETHER = ({"too_dry", "too_humid"}, {"warm_throughout", "cool_throughout"})


@dataclass(frozen=True)
class Weighed:
    """Weights of one batch.

    Attributes
    ----------
    ways : dict
        {cause: {variant: (part of the cause, factor of the pattern)}}.
    shares : dict
        {cause: weight}, UNNAMED among them; adds up to 1.
    alone : dict
        {cause: weight of it alone}.
    pairs : list of dict
        first, second, share, eggs_first, eggs_second; heaviest first.
    lost : dict
        {cause: eggs per stage that it would account for alone, shape (stages,)}.
    expected : dict
        {cause: eggs per stage that are put down to it, alone and in pairs, each times its weight}.
    kernels : dict
        {cause: hazards of its likeliest way}.
    """

    ways: dict
    shares: dict
    alone: dict
    pairs: list
    lost: dict
    expected: dict
    kernels: dict


@cache
def priors() -> dict:
    """Prior share of each candidate: bad luck and "not on the list" as stated, the rest by commonness."""
    table = reference.load("causes").set_index("cause")["commonness"].astype(float)
    rest = 1 - PRIOR_BAD_LUCK - PRIOR_UNLISTED
    named = table.drop(list(UNNAMED))
    return {**(rest * named / named.sum()).to_dict(), "bad_luck": PRIOR_BAD_LUCK, "unlisted": PRIOR_UNLISTED}


def log_sum(logs, axis=None):
    """Log of the sum of exponentials."""
    top = np.max(logs, axis=axis, keepdims=True)
    return np.squeeze(top, axis=axis) + np.log(np.exp(logs - top).sum(axis=axis))


def trusted(log_factor):
    """Log factor of a pattern with large ones held down (`PATTERN_WHOLE`)."""
    beyond = np.abs(log_factor) - PATTERN_WHOLE
    return np.where(beyond > 0, np.sign(log_factor) * (PATTERN_WHOLE + PATTERN_BEYOND * beyond), log_factor)


def weigh(what: Seen, usual: Usual, doses, evidence: dict) -> Weighed:
    """`Weighed` of one batch.

    Parameters
    ----------
    what : Seen
    usual : Usual
    doses : evidence_climate.Doses
    evidence : dict
        {cause: log of the product of its evidence factors}.
    """
    base = course.ordinary_hazards(usual.logits)
    ways = harm.ways(doses)
    added = np.vstack([0 * base, *(way.sizes[:, None] * way.kernel for way in ways)])
    logs, cells = course.log_marginal(
        what.ways, what.eggs, base + added, course.precision(usual.spread, *course.loosened(base, added))
    )
    luck, logs, cells = logs[0], logs[1:], cells[1:]
    wide = course.precision(np.maximum(usual.spread, UNLISTED_SD))
    unlisted = course.log_marginal(what.ways, what.eggs, base[None], wide)[0][0]
    edges = np.cumsum([0, *(len(way.sizes) for way in ways)])
    parts, lost, best = {}, {}, {}
    for way, first, last in zip(ways, edges[:-1], edges[1:], strict=True):
        each = logs[first:last] - luck + way.log_chance
        part = float(np.exp(log_sum(way.log_chance)))
        pattern = float(trusted(log_sum(each) - np.log(part)))
        parts.setdefault(way.cause, {})[way.variant] = (part, pattern)
        mean = np.einsum("s,sgc->gc", np.exp(each - log_sum(each)), cells[first:last] * _put_down(base, way))
        lost.setdefault(way.cause, []).append((np.log(part) + pattern, what.by_stage(mean)))
        if way.cause not in best or best[way.cause][0] < np.log(part) + pattern:
            best[way.cause] = (np.log(part) + pattern, way)
    prior = priors()
    single = {
        cause: float(log_sum(np.array([np.log(part) + log for part, log in variants.values()])))
        + evidence.get(cause, 0.0)
        + np.log(prior[cause])
        for cause, variants in parts.items()
    }
    logs_of = {
        **single,
        "bad_luck": np.log(prior["bad_luck"]),
        "unlisted": float(trusted(unlisted - luck)) + np.log(prior["unlisted"]),
    }
    order = sorted(single, key=single.get, reverse=True)
    paired = _pairs({cause: best[cause][1] for cause in order}, what, base, usual.spread, luck, evidence)
    parts["unlisted"] = {"always": (1.0, float(trusted(unlisted - luck)))}
    return _shared(
        parts,
        logs_of,
        paired,
        {cause: _mean(rows) for cause, rows in lost.items()},
        {cause: way.kernel for cause, (_, way) in best.items()},
    )


def _put_down(base, way) -> np.ndarray:
    """Part of an egg lost in each cell that is put down to the cause, shape (sizes, 1, CELLS)."""
    added = way.sizes[:, None] * way.kernel
    return np.pad(added / (base + added + 1e-12), ((0, 0), (0, 1)))[:, None]


def _mean(rows) -> np.ndarray:
    logs = np.array([log for log, _ in rows])
    return np.exp(logs - log_sum(logs)) @ np.stack([eggs for _, eggs in rows])


def _sizes(way) -> np.ndarray:
    """A small and a large size of a cause, for trying it in pairs."""
    return way.sizes[[2, 4]] if way.measured else way.sizes[[1, 3]]


def _pairs(best, what, base, spread, luck, evidence) -> list[tuple]:
    """(first, second, log weight, eggs of the first and of the second by stage); `best` is in the order of weight."""
    order = list(best)
    names = [(a, b) for at, a in enumerate(order[:PAIRED]) for b in order[at + 1 :] if {a, b} not in NEVER_TOGETHER]
    added = []
    for a, b in names:
        one, two = (_sizes(best[name])[:, None] * best[name].kernel for name in (a, b))
        added += [(one[i], two[j]) for i in range(len(one)) for j in range(len(two))]
    one, two = map(np.array, zip(*added, strict=True))
    logs, cells = course.log_marginal(
        what.ways, what.eggs, base + one + two, course.precision(spread, *course.loosened(base, one + two))
    )
    prior, out, each = priors(), [], 4
    for place, (a, b) in enumerate(names):
        part = slice(place * each, (place + 1) * each)
        log = float(trusted(log_sum(logs[part]) - np.log(each) - luck))
        weight = np.exp(logs[part] - log_sum(logs[part]))
        share = [np.pad(x[part] / (base + one[part] + two[part] + 1e-12), ((0, 0), (0, 1))) for x in (one, two)]
        eggs = [what.by_stage(np.einsum("s,sgc,sc->gc", weight, cells[part], x)) for x in share]
        odds = np.log(SECOND) + sum(
            evidence.get(name, 0.0) + np.log(prior[name] / prior["bad_luck"]) for name in (a, b)
        )
        out.append((a, b, log + odds + np.log(prior["bad_luck"]), *eggs))
    return out


def _shared(parts, logs_of, paired, lost, kernels) -> Weighed:
    """Weights that add up to 1, each pair's halved between its causes."""
    names = list(logs_of)
    logs = np.array([*logs_of.values(), *(pair[2] for pair in paired)])
    weight = np.exp(logs - log_sum(logs))
    alone = dict(zip(names, weight[: len(names)], strict=True))
    shares, rows = dict(alone), []
    expected = {name: alone[name] * eggs for name, eggs in lost.items()}
    for (a, b, _, *stages), share in zip(paired, weight[len(names) :], strict=True):
        for name, eggs in zip((a, b), stages, strict=True):
            shares[name] += share / 2
            expected[name] = expected[name] + share * eggs
        eggs_a, eggs_b = (float(eggs.sum()) for eggs in stages)
        if eggs_a < eggs_b:
            a, b, eggs_a, eggs_b = b, a, eggs_b, eggs_a
        rows.append(dict(first=a, second=b, share=float(share), eggs_first=eggs_a, eggs_second=eggs_b))
    rows.sort(key=lambda row: -row["share"])
    return Weighed(
        parts,
        {name: float(share) for name, share in shares.items()},
        {name: float(share) for name, share in alone.items()},
        rows,
        {**lost, **{name: np.zeros(len(STAGES)) for name in UNNAMED}},
        expected,
        kernels,
    )
