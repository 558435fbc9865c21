"""What could be known: the posterior over the causes of one batch under the fifth world's own likelihood.

Monte Carlo over what nobody saw: flock and its hens, the batch's own departures, the share struck, the day of an
unlogged event, the shape of the ages of death. It reads the `book` (what the keeper recorded), never the truth, and is
told the world's rates and the keeper's eye. Pairs are weighed among the causes that come near to the best alone.
"""

from __future__ import annotations

from itertools import combinations

import numpy as np
from scipy.special import logsumexp

from worlds.fifth import HIDDEN, PAIR, SPELLS
from worlds.fifth_causes import CAUSES
from worlds.fifth_eggs import CELLS, batch_levels, chances, chosen, counting, flock_levels, log_likelihood
from worlds.fifth_kernels import harm, strengths
from worlds.fifth_traces import event_days_given, measure_ratio, origin_ratio
from worlds.fifth_words import EVENTS, words_ratio

SINGLE, NONE, PAIRS = 0.6, 0.2, 0.2
TOPIC_OF = {cause: topic for topic, cause in EVENTS.items()}
FLOCKS, WITHIN = 500, 6
BEST_ALONE = 7


def posterior(book, name, *, draws=500, pair_draws=250, seed=0):
    """Probability that each cause is at work in a batch.

    Parameters
    ----------
    book : dict, the ``book`` of `make_season`
    name : str, the batch
    draws, pair_draws : worlds drawn for each cause and each pair

    Returns
    -------
    dict : cause or ``bad_luck`` -> probability, the most likely first; causes of pairs count in both
    """
    draw = np.random.default_rng(seed)
    batch = next(one for one in book["batches"] if one["name"] == name)
    flock = _flock(book, batch, draw)
    count = counting(batch["habits"], batch["looks"])

    def evidence(causes, n):
        rows = chosen(flock, draw.integers(len(flock["fertile"]), size=n))
        return _evidence(book, batch, rows, count, causes, draw)

    alone = {cause: evidence((cause,), draws) for cause in CAUSES}
    luck = evidence((), 2 * draws) + np.log(NONE) + _asked_for_being_poorest(book, name)
    best = sorted(alone, key=alone.get, reverse=True)[:BEST_ALONE]
    pairs = {pair: evidence(pair, pair_draws) for pair in combinations(best, 2)}
    every = len(CAUSES) * (len(CAUSES) - 1) / 2
    logs = {(cause,): value + np.log(SINGLE / len(CAUSES)) for cause, value in alone.items()}
    logs |= {pair: value + np.log(PAIRS / every) for pair, value in pairs.items()}
    logs[("bad_luck",)] = luck
    total, out = logsumexp(list(logs.values())), dict.fromkeys([*CAUSES, "bad_luck"], 0.0)
    for causes, value in logs.items():
        for cause in causes:
            out[cause] += float(np.exp(value - total))
    return dict(sorted(out.items(), key=lambda item: -item[1]))


def poorest(book):
    """The batch with the lowest share of chicks, as far as the keeper tells sound ones apart."""
    return min(book["batches"], key=lambda batch: batch["counts"]["good"] / batch["eggs"])["name"]


def _asked_for_being_poorest(book, name):
    """Of a causeless season the poorest of its n batches is asked about: n to one that a given batch is not."""
    return np.log(len(book["batches"])) if poorest(book) == name else 0.0


def _counts(batch):
    return np.array([batch["counts"][cell] for cell in CELLS])


def _stored(batch):
    return batch["origin"].get("stored") or 4.0


def _flock(book, asked, draw):
    """Worlds of the asked batch's flock, drawn anew by what became of the flock's other batches."""
    species = asked["species"]
    flock = flock_levels(draw, FLOCKS, species, book["flock_age"][species], book["hens"][species])
    weight, many = np.zeros(FLOCKS), chosen(flock, np.repeat(np.arange(FLOCKS), WITHIN))
    for batch in book["batches"]:
        if batch is asked or batch["species"] != species:
            continue
        chance = chances(batch_levels(draw, many, _stored(batch)), [], counting(batch["habits"], batch["looks"]))
        each = log_likelihood(_counts(batch), chance).reshape(FLOCKS, WITHIN)
        weight += logsumexp(each, axis=1) - np.log(WITHIN)
    share = np.exp(weight - logsumexp(weight))
    return chosen(flock, draw.choice(FLOCKS, size=FLOCKS, p=share / share.sum()))


def _evidence(book, batch, flock, count, causes, draw):
    """Log of the mean likelihood of the batch's records over drawn worlds in which `causes` struck."""
    n = len(flock["fertile"])
    objects = [CAUSES[name] for name in causes]
    ks = [draw.uniform(*PAIR, size=n) if len(causes) > 1 else strengths(draw, n) for _ in causes]
    hidden = [(draw.random(n) < HIDDEN).astype(float) for _ in causes]
    weight, harms = np.zeros(n), []
    for name, cause, k in zip(causes, objects, ks, strict=True):
        day = np.zeros(n)
        if cause.window:
            day, more = event_days_given(batch, cause, SPELLS.get(name), TOPIC_OF.get(name), k, draw)
            weight = weight + more
        weight = weight + origin_ratio(book, batch, name, k)
        harms.append(harm(cause, k, day, draw))
    if causes:
        weight = weight + measure_ratio(book, batch, objects, ks, hidden)
        weight = weight + words_ratio(batch["words"], objects, ks, batch["habits"])
    stored = 4.0 if "long_storage" in causes else _stored(batch)
    chance = chances(batch_levels(draw, flock, stored), harms, count)
    weight = weight + log_likelihood(_counts(batch), chance)
    return float(logsumexp(weight) - np.log(n))
