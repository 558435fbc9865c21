"""The sixth world's own likelihood: what anyone could know of a batch from the book alone.

Monte Carlo over what nobody saw: the keeper's usual level (weighed by his other batches of that bird), the batch's own
luck, the strength, age and pattern of the cause. Not exact in: miscounts (a floor for each cell), readings (taken at
the planted value where the log covers it), the wide levels of storage and flock age (normal instead of a mixture), the
limits of a figure. One cause at most is thought of; two together are beyond it.
"""

from __future__ import annotations

import numpy as np
from scipy.special import logsumexp

from .sixth_causes import BANDS, TABLE
from .sixth_eggs import BIRDS, USUAL_ROT, draw_deaths, draw_keepers, draw_usual, fates, in_cells, log_chance, seen_as
from .sixth_keeper import GAUGES, look_days
from .sixth_traces import SPELLS_A_BATCH, log_gauges, log_harmful_spell, log_harmless_spell, log_traces

KEEPERS, BATCHES_EACH, DRAWS = 300, 12, 1000
LUCK_BEFOREHAND = 0.25  # one season in four without a cause
NOT_THE_POOREST = 0.05  # a keeper without a cause hardly asks about another batch than his poorest
WIDER = {"stored": 3.3, "age": 13.0}


def good_share(batch):
    """Good chicks of eggs set."""
    return batch["counts"]["good"] / batch["set"]


def poorest(book):
    """Name of the batch with the fewest good chicks of eggs set."""
    return min(book["batches"], key=good_share)["name"]


def posterior(book, batch):
    """{cause or "bad_luck": probability}, likeliest first. `batch`: its name."""
    rng = np.random.default_rng(6)
    asked = next(one for one in book["batches"] if one["name"] == str(batch))
    others = [one for one in book["batches"] if one is not asked]
    keepers = _keepers(rng, book["keeper"], asked["bird"], others)
    usual = _usual_figures(asked, others)
    told = {name: _log_cause(rng, book, asked, name, keepers, usual) for name in TABLE}
    told = {name: value + np.log((1 - LUCK_BEFOREHAND) / len(TABLE)) for name, value in told.items()}
    luck = len(book["batches"]) if poorest(book) == asked["name"] else NOT_THE_POOREST
    told["bad_luck"] = _log_luck(rng, book, asked, keepers, usual) + np.log(LUCK_BEFOREHAND * luck)
    total = logsumexp(list(told.values()))
    weights = {name: float(np.exp(value - total)) for name, value in told.items()}
    return dict(sorted(weights.items(), key=_second, reverse=True))


def _second(pair):
    return pair[1]


def _keepers(rng, habits, bird, others):
    """Levels of DRAWS keepers, drawn by how well they fit the other batches of this bird."""
    drawn = draw_keepers(rng, KEEPERS, *BIRDS[bird])
    many = {name: np.repeat(values, BATCHES_EACH, axis=0) for name, values in drawn.items()}
    fit = np.zeros(KEEPERS)
    for batch in others:
        if batch["bird"] == bird:
            chances = _chances(rng, habits, batch, many, [], np.full(KEEPERS * BATCHES_EACH, USUAL_ROT))
            fit += logsumexp(chances.reshape(KEEPERS, BATCHES_EACH), axis=1)
    weights = np.exp(fit - logsumexp(fit))
    taken = rng.choice(KEEPERS, DRAWS, p=weights)
    return {name: values[taken] for name, values in drawn.items()}


def _chances(rng, habits, batch, keepers, causes, rot):
    """Log chance of a batch's counts under each draw; shape (n,)."""
    seen = seen_as(look_days(batch), batch["opens"], habits["pipped"])
    chances = fates(*draw_usual(rng, keepers), causes)
    return log_chance(list(batch["counts"].values()), in_cells(chances, seen, rot))


def _usual_figures(asked, others):
    """Middle and variance of a figure's level as the other batches tell it: {figure: (middle, variance)}."""
    out = {}
    for name, (middle, among, spread, whose) in GAUGES.items():
        among = WIDER.get(name, among)
        alike = [one for one in others if whose == "keeper" or one["machine"] == asked["machine"]]
        seen = [one["gauges"][name] for one in alike if name in one["gauges"]]
        weight = 1 / among**2 + len(seen) / spread**2
        out[name] = ((middle / among**2 + sum(seen) / spread**2) / weight, 1 / weight)
    return out


def _mean(values):
    """Log of the mean of exponentials."""
    return float(logsumexp(values) - np.log(np.size(values)))


def _log_luck(rng, book, asked, keepers, usual):
    """Log chance of the batch without a cause, up to what all hypotheses share."""
    counts = _chances(rng, book["keeper"], asked, keepers, [], np.full(DRAWS, USUAL_ROT))
    return _mean(counts) + float((log_traces(asked, []) + log_gauges(asked["gauges"], usual, "", 0.0))[0])


def _log_cause(rng, book, asked, name, keepers, usual):
    """The same with a cause; the log's spells count as a ratio to harmless ones."""
    if not TABLE[name].spell:
        return _mean(_log_draws(rng, book, asked, name, keepers, usual, None))
    bare = 1 - asked["cover"][:20].mean()
    parts = [np.log(max(bare, 1e-9)) + _mean(_log_draws(rng, book, asked, name, keepers, usual, None))]
    for spell in asked["spells"]:
        if spell[1] == TABLE[name].spell:
            parts.append(_mean(_log_draws(rng, book, asked, name, keepers, usual, spell)))
    return float(logsumexp(parts))


def _log_draws(rng, book, asked, name, keepers, usual, spell):
    """Log chance under each draw of strength, age and pattern; `spell` is the one of the log that did it, if any."""
    bands = np.array(list(BANDS.values()))[rng.integers(0, len(BANDS), DRAWS)]
    strength = rng.uniform(bands[:, 0], bands[:, 1])
    start = None if spell is None else spell[0]
    deaths, struck = draw_deaths(rng, name, DRAWS, start)
    rot = rng.uniform(*TABLE[name].rot, DRAWS) if TABLE[name].rot else np.full(DRAWS, USUAL_ROT)
    told = _chances(rng, book["keeper"], asked, keepers, [(name, strength, deaths)], rot)
    told = told + log_traces(asked, [(name, strength)]) + log_gauges(asked["gauges"], usual, name, strength)
    if spell is not None:
        _, kind, hours, off = spell
        harmless = np.log(SPELLS_A_BATCH[kind]) + log_harmless_spell(kind, hours, off)
        return told + log_harmful_spell(kind, hours, off, strength) - harmless
    if TABLE[name].spell:
        hidden = ~asked["cover"][np.minimum(struck.astype(int), 20)]
        if hidden.any():
            return told[hidden]
    return told
