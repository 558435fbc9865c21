"""What could be known: the posterior over the causes of one batch under the fourth world's own likelihood.

Monte Carlo over everything that nobody saw: the season's and the batch's levels, the share struck, the day of an
unlogged event, the shape of the ages of death. It reads the `book` (what the keeper recorded), never the truth. It is
told the world's rates, and, a little beyond the records, the season's own middle age of hens and of eggs and the dose
of a spell that the logger slept through.
"""

from __future__ import annotations

from itertools import combinations

import numpy as np
from scipy import stats
from scipy.special import logsumexp

from .fourth import CAUSES, PAIR
from .fourth_air import DOSE_SD, HARMLESS, MOST, STEEP, make_spell
from .fourth_causes import CAUSES as SPECS
from .fourth_causes import shares, strikes
from .fourth_cells import NAMES, batch_levels, chances, counting, log_likelihood, season_levels
from .fourth_traces import departures, metadata_ratio, odds_of_topics

PRIOR = {"none": 0.2, "one": 0.6, "two": 0.2}  # shares of the groups that the benchmark runs
STRUCK_ELSEWHERE = 0.02
SPELLS = 50


def posterior(book, name, *, draws=1500, pair_draws=250, seed=0):
    """Probability that each cause is at work in a batch.

    Parameters
    ----------
    book : dict, the ``book`` of `make_season`
    name : str, the batch

    Returns
    -------
    dict : cause or ``bad_luck`` -> probability, the most likely first; causes of pairs count in both
    """
    draw = np.random.default_rng(seed)
    batch = next(b for b in book["batches"] if b["batch"] == name)
    fertile, deaths = _season(book, batch, draws, draw)
    task = {
        "batch": batch,
        "keeper": book["keeper"],
        "off": departures(book, batch),
        "count": counting(book["keeper"]["habits"], batch["looks"]),
        "counts": np.array([batch["counts"][cell] for cell in NAMES]),
    }
    levels = batch_levels(draw, fertile, deaths)
    few = tuple(level[:pair_draws] for level in levels)
    logs = {(): _evidence(task, levels, ()) + np.log(PRIOR["none"]) + _asked_for_being_poorest(book, batch)}
    for cause in CAUSES:
        logs[(cause,)] = _evidence(task, levels, (_drawn(task, cause, draws, draw),)) + np.log(
            PRIOR["one"] / len(CAUSES)
        )
    halves = {cause: _drawn(task, cause, pair_draws, draw, pair=True) for cause in CAUSES}
    possible = [cause for cause in CAUSES if np.isfinite(halves[cause]["ratio"]).any()]
    for two in combinations(possible, 2):
        logs[two] = _evidence(task, few, tuple(halves[cause] for cause in two)) + np.log(
            PRIOR["two"] / (len(CAUSES) * (len(CAUSES) - 1) / 2)
        )
    total = logsumexp(list(logs.values()))
    found = dict.fromkeys((*CAUSES, "bad_luck"), 0.0)
    for causes, log in logs.items():
        for cause in causes or ("bad_luck",):
            found[cause] += float(np.exp(log - total))
    return dict(sorted(found.items(), key=lambda item: -item[1]))


def poorest(book):
    """The batch with the lowest share hatched."""
    return min(book["batches"], key=_hatched)["batch"]


def _hatched(batch):
    return (batch["counts"]["sound"] + batch["counts"]["culled"]) / batch["eggs_set"]


def _asked_for_being_poorest(book, batch):
    """Of a causeless season the poorest of its n batches is asked about: n to one that a given batch is not."""
    return float(np.log(len(book["batches"]))) if batch["batch"] == poorest(book) else 0.0


def _season(book, asked, draws, draw):
    """`draws` levels of the season, weighed by what became of its other batches."""
    keeper = book["keeper"]
    fertile, deaths = season_levels(draw, 2000, keeper["flock_age"], keeper["stored"])
    log = np.zeros(len(fertile))
    for batch in book["batches"]:
        if batch is asked:
            continue
        count, counts = counting(keeper["habits"], batch["looks"]), np.array(list(batch["counts"].values()))
        well = np.logaddexp(
            *(
                log_likelihood(counts, chances(batch_levels(draw, fertile, deaths), [], count, keeper["habits"]))
                for _ in range(2)
            )
        ) - np.log(2)
        part = slice(0, 240)
        struck = []
        for cause in CAUSES[::3]:
            k, day = strikes(draw, 240), draw.uniform(1, 19, 240)
            planted = [(SPECS[cause], k, shares(SPECS[cause], k, day, draw))]
            struck.append(
                log_likelihood(
                    counts, chances(batch_levels(draw, fertile[part], deaths[part]), planted, count, keeper["habits"])
                )
            )
        ill = logsumexp(struck) - np.log(len(struck) * 240)
        log += np.logaddexp(well + np.log(1 - STRUCK_ELSEWHERE), ill + np.log(STRUCK_ELSEWHERE))
    chosen = draw.choice(len(log), draws, p=np.exp(log - logsumexp(log)))
    return fertile[chosen], deaths[chosen]


def _drawn(task, cause, n, draw, pair=False):
    """n worlds in which `cause` struck: k, ages, whether the probe hid it, and the log ratio of records to none."""
    spec, batch = SPECS[cause], task["batch"]
    k = draw.uniform(*PAIR, n) if pair else strikes(draw, n)
    day, ratio = _days(task, cause, k, draw)
    ratio = ratio + metadata_ratio(batch, task["keeper"], cause, k)
    lost = np.zeros(n)
    if spec.spell == "cold" and not batch["logged"] and task["keeper"]["habits"]["times_hatch"]:
        some = np.arange(n) % SPELLS  # as many spells as are worth their time, each for n / SPELLS worlds
        k, day = k[some], day[some]
        lost = np.array([_lost(one, when, batch["species"], draw) for one, when in zip(k[:SPELLS], day, strict=False)])[
            some
        ]
    return {
        "cause": cause,
        "spec": spec,
        "k": k,
        "ratio": ratio,
        "lost": lost,
        "shares": shares(spec, k, day, draw),
        "hides": draw.random(n) < spec.hidden,
    }


def _lost(k, day, species, draw):
    """Hours of development lost in one cold spell that strikes the share k."""
    dose = np.log(k / (1 - k)) / STEEP + DOSE_SD * draw.standard_normal()
    return make_spell("cold", day, dose, species, draw)["lost_h"]


def _days(task, cause, k, draw):
    """Days of the event in n worlds, and the log ratio of the log and the told day to an ordinary batch's."""
    spec, batch, n = SPECS[cause], task["batch"], len(k)
    if not spec.window:
        return np.zeros(n), np.zeros(n)
    if cause == "transfer_jolt":
        return np.full(n, batch["transfer_age"]), np.zeros(n)
    if spec.spell and batch["logged"]:
        spells = [spell for spell in batch["spells"] if spell["kind"] == spec.spell]
        if not spells:
            return np.full(n, 10.0), np.full(n, -np.inf)
        rate, mean, sd = HARMLESS[spec.spell]
        which = draw.integers(0, len(spells), n)
        dose = np.array([spell["dose"] for spell in spells])[which]
        harmless = np.where(dose < MOST, stats.truncnorm.pdf(dose, -np.inf, (MOST - mean) / sd, mean, sd), 0.0)
        harmful = stats.norm.logpdf(dose, np.log(k / (1 - k)) / STEEP, DOSE_SD)
        ratio = harmful + np.log(len(spells)) - np.log(rate * harmless + 1e-12)
        return np.array([spell["day"] for spell in spells])[which], ratio
    if batch["told_day"] and batch["told_day"][0] in spec.traces:
        day, (low, high) = batch["told_day"][1], spec.window
        inside = np.log(18.5 / (high - low)) if low <= day <= high else -np.inf
        return np.full(n, day), np.full(n, inside)
    return draw.uniform(*spec.window, n), np.zeros(n)


def _evidence(task, levels, drawn):
    """Log of the mean likelihood of the batch's records over the drawn worlds."""
    n, keeper = len(levels[0]), task["keeper"]
    log = sum((part["ratio"] for part in drawn), np.zeros(n))
    possible = np.isfinite(log)
    if not possible.any():
        return -np.inf
    planted = [(part["spec"], part["k"], part["shares"]) for part in drawn]
    log = log + log_likelihood(task["counts"], chances(levels, planted, task["count"], keeper["habits"]))
    for topic, chance in odds_of_topics(task["batch"], keeper["habits"], {p["cause"]: p["k"] for p in drawn}).items():
        log = log + (np.log(chance) if topic in task["batch"]["topics"] else np.log1p(-chance))
    for kind, (off, sd) in task["off"].items():
        # the constant of the normal density is the same for every cause
        log = log - 0.5 * ((off - _shift(kind, drawn, n)) / sd) ** 2
    return float(logsumexp(log) - np.log(n))


def _shift(kind, drawn, n):
    """By how much the drawn causes move a level."""
    name, factor = {
        "rh_set": ("water", -53 / 12),
        "water": ("water", 1.0),
        "rh_hatch": ("hatch_rh", 1.0),
        "level": ("level", 1.0),
        "first_h": ("hours", 1.0),
        "wide_h": ("spread", 1.0),
    }[kind]
    shift = np.zeros(n)
    for part in drawn:
        start, slope = getattr(part["spec"], name)
        shift += factor * (start + slope * part["k"]) + (part["lost"] if kind == "first_h" else 0.0)
    if kind == "level":
        for part in drawn:
            shift = np.where(part["hides"], 0.0, shift)
    return shift
