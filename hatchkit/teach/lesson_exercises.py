"""The exercises of the further lessons: how the right answer follows from the data, and where usual mistakes lead.

The words for each are in ``reference/exercise_words.csv``, under the name given here.
"""

import numpy as np

from hatchkit.losses.proportions import interval
from hatchkit.teach.breakout_lab import DateTheEgg
from hatchkit.teach.judging import Exercise, letter, number, share, turned_round

# Against your own good batches: a table eggs, hatched; counts of good and poor batches with and without something.


def _pooled(good):
    return float(good["hatched"].sum() / good["eggs"].sum())


def _expected(good, eggs):
    return _pooled(good) * eggs


def _missing(good, eggs, hatched):
    return _expected(good, eggs) - hatched


def _had_it(counts):
    return counts["poor_with"] / counts["poor"], counts["good_with"] / counts["good"]


def _poor_given(counts):
    without = counts["poor"] - counts["poor_with"]
    rest = without + counts["good"] - counts["good_with"]
    return counts["poor_with"] / (counts["poor_with"] + counts["good_with"]), without / rest


def _distance(value, usual):
    return (value - float(np.mean(usual))) / float(np.std(usual, ddof=1))


GOOD = {
    "good_share": share(
        _pooled,
        tolerance=0.001,
        mean_of_shares=lambda good: float((good["hatched"] / good["eggs"]).mean()),
        lost=lambda good: 1 - _pooled(good),
    ),
    "expected_chicks": number(_expected, tolerance=0.1, share_only=lambda good, eggs: _pooled(good)),
    "missing_chicks": number(
        _missing,
        tolerance=0.1,
        turned_round=turned_round(_missing),
        all_eggs=lambda good, eggs, hatched: eggs - hatched,
    ),
    "shared_by_all": Exercise(letter("c")),
    "had_it": share(_had_it, turned_round=turned_round(_had_it), given=_poor_given),
    "poor_given": share(_poor_given, tolerance=0.003, turned_round=turned_round(_poor_given), had=_had_it),
    "out_of_line": number(
        _distance,
        tolerance=0.06,
        turned_round=turned_round(_distance),
        no_spread=lambda value, usual: value - float(np.mean(usual)),
    ),
    "what_differs": Exercise(letter("b")),
}


# The second look: hatches of many flocks in two years; many comparisons of nothing.


def _worst(first, few):
    return np.argsort(first, kind="stable")[:few]


def _again(first, second, each, few):
    return float(np.mean(second[_worst(first, few)]) / each)


def _better(first, second, few):
    worst = _worst(first, few)
    return float(np.mean(second[worst] > first[worst]))


def _shrunk(flock):
    return (flock["hatched"] + flock["usual"] * flock["weight"]) / (flock["eggs"] + flock["weight"])


def _any_of(level, looks):
    return 1 - (1 - level) ** looks


def _seasons_with(chances, level):
    return float((np.asarray(chances) < level).any(axis=1).mean())


SECOND = {
    "worst_again": share(
        _again,
        tolerance=0.002,
        first_year=lambda first, second, each, few: float(np.mean(first[_worst(first, few)]) / each),
        chicks=lambda first, second, each, few: float(np.mean(second[_worst(first, few)])),
    ),
    "got_better": share(
        _better,
        tolerance=0.002,
        all_flocks=lambda first, second, few: float(np.mean(second > first)),
        worse=lambda first, second, few: 1 - _better(first, second, few),
    ),
    "the_tonic": Exercise(letter("b")),
    "shrunk": share(
        _shrunk, tolerance=0.003, own=lambda flock: flock["hatched"] / flock["eggs"], usual=lambda flock: flock["usual"]
    ),
    "any_of": share(
        _any_of,
        tolerance=0.003,
        added=lambda level, looks: level * looks,
        none=lambda level, looks: (1 - level) ** looks,
    ),
    "seasons_with": share(
        _seasons_with,
        tolerance=0.002,
        each=lambda chances, level: float((np.asarray(chances) < level).mean()),
        none=lambda chances, level: 1 - _seasons_with(chances, level),
    ),
    "level_each": number(
        lambda level, looks: level / looks, tolerance=0.0001, times=lambda level, looks: level * looks
    ),
    "chosen_after": Exercise(letter("a")),
}


# Water: a tray weighed (gross_first, gross_later, tray, in grams); losses as shares; humidity in percent.


def _loss(weights):
    return (weights["gross_first"] - weights["gross_later"]) / (weights["gross_first"] - weights["tray"])


def _tare_in(weights):
    return (weights["gross_first"] - weights["gross_later"]) / weights["gross_first"]


def _projected(loss, day, transfer):
    return loss * transfer / day


def _rate_left(target, loss, day, transfer):
    return (target - loss) / (transfer - day)


def _humidity(rh_pct, loss, target):
    return 100 - (100 - rh_pct) * target / loss


def _conductance(egg):
    return egg["grams_a_day"] * 1000 / (egg["inside_kpa"] - egg["outside_kpa"])


WATER = {
    "water_loss": share(
        _loss,
        tolerance=0.0006,
        tare_in=_tare_in,
        of_later=lambda w: (w["gross_first"] - w["gross_later"]) / (w["gross_later"] - w["tray"]),
    ),
    "tare_error": share(
        lambda w: _loss(w) - _tare_in(w), tolerance=0.0004, turned_round=turned_round(lambda w: _loss(w) - _tare_in(w))
    ),
    "projection": share(
        _projected,
        tolerance=0.0006,
        whole=lambda loss, day, transfer: loss * 21 / day,
        added=lambda loss, day, transfer: loss + transfer - day,
    ),
    "rate_left": share(
        _rate_left,
        tolerance=0.0001,
        from_start=lambda target, loss, day, transfer: target / transfer,
        all_days=lambda target, loss, day, transfer: (target - loss) / transfer,
    ),
    "humidity_next": number(
        _humidity,
        tolerance=0.15,
        of_humidity=lambda rh, loss, target: rh * target / loss,
        upside_down=lambda rh, loss, target: 100 - (100 - rh) * loss / target,
    ),
    "conductance": number(
        _conductance,
        tolerance=0.6,
        no_difference=lambda egg: egg["grams_a_day"] * 1000 / egg["inside_kpa"],
        grams=lambda egg: _conductance(egg) / 1000,
    ),
    "eggs_gone": Exercise(letter("c")),
    "which_way": Exercise(letter("b")),
}


# A fair trial: turning in a published experiment; blocks with two sides; how many eggs.


def _between(blocks):
    return (blocks["hatched_a"] / blocks["eggs_a"] - blocks["hatched_b"] / blocks["eggs_b"]).to_numpy()


def _block_mean(blocks):
    return float(_between(blocks).mean())


def _lumped(blocks):
    one = blocks["hatched_a"].sum() / blocks["eggs_a"].sum()
    return float(one - blocks["hatched_b"].sum() / blocks["eggs_b"].sum())


def _same_way(blocks):
    return 2 / 2**blocks


def _eggs_needed(share, difference):
    return 2 * (1.96 + 0.84) ** 2 * share * (1 - share) / difference**2


def _half_width(one, other):
    variances = [
        side["hatched"] / side["eggs"] * (1 - side["hatched"] / side["eggs"]) / side["eggs"] for side in (one, other)
    ]
    return 1.96 * sum(variances) ** 0.5


TRIAL = {
    "turning_cost": number(
        lambda turned: turned[24] - turned[6],
        tolerance=0.05,
        turned_round=lambda turned: turned[6] - turned[24],
        ratio=lambda turned: turned[6] / turned[24],
    ),
    "fair_lots": Exercise(letter("b")),
    "block_mean": share(_block_mean, tolerance=0.003, lumped=_lumped, turned_round=lambda blocks: -_block_mean(blocks)),
    "same_way": share(_same_way, tolerance=0.0005, one_side=lambda blocks: 1 / 2**blocks, half=lambda blocks: 0.5),
    "eggs_needed": number(
        _eggs_needed,
        tolerance=3,
        both=lambda share, difference: 2 * _eggs_needed(share, difference),
        no_power=lambda share, difference: 2 * 1.96**2 * share * (1 - share) / difference**2,
    ),
    "half_width": share(_half_width, tolerance=0.002, no_factor=lambda one, other: _half_width(one, other) / 1.96),
    "stop_early": Exercise(letter("c")),
    "who_counts": Exercise(letter("a")),
}


# Other birds: rows of the species table; published figures.


def _scaled(hen_day, days):
    return hen_day * days / 21


OTHERS = {
    "last_days": number(
        lambda bird: float(bird["incubation_days"] - bird["transfer_day"]),
        tolerance=0.01,
        transfer=lambda bird: float(bird["transfer_day"]),
    ),
    "scaled_day": number(
        _scaled,
        tolerance=0.06,
        added=lambda hen_day, days: hen_day + days - 21,
        upside_down=lambda hen_day, days: hen_day * 21 / days,
    ),
    "scale_error": number(
        lambda seen, hen_day, days: seen - _scaled(hen_day, days),
        tolerance=0.06,
        turned_round=lambda seen, hen_day, days: _scaled(hen_day, days) - seen,
    ),
    "thirds": number(
        lambda days: (days / 3, 2 * days / 3),
        tolerance=0.06,
        hen=lambda days: (7, 14),
        turned_round=lambda days: (2 * days / 3, days / 3),
    ),
    "stored_duck": number(
        lambda stored: 27.82 + 0.0343 * stored,
        tolerance=0.01,
        only_delay=lambda stored: 0.0343 * stored,
        no_storage=lambda stored: 27.82,
    ),
    "still_air": Exercise(letter("b")),
    "first_look": Exercise(letter("c")),
    "cooling": Exercise(letter("a")),
}


# Clean hands: eggs taken out rotten, a disinfectant to be thinned, the day of care.

CLEAN = {
    "wash_water": Exercise(letter("c")),
    "rotten_high": share(
        lambda rotten, eggs: float(interval(rotten, eggs)[1]), tolerance=0.003, seen=lambda rotten, eggs: rotten / eggs
    ),
    "dilution": number(
        lambda litres, parts: litres * 1000 / parts,
        tolerance=0.5,
        litres=lambda litres, parts: litres / parts,
        percent=lambda litres, parts: litres * 1000 * parts / 100,
    ),
    "order_of_work": Exercise(letter("a")),
    "one_stage": Exercise(letter("b")),
    "care_day": number(
        lambda bird: float(bird["embryo_care_day"]),
        tolerance=0.35,
        eighty=lambda bird: 0.8 * float(bird["incubation_days"]),
    ),
    "sudden_deaths": Exercise(letter("b")),
    "no_formaldehyde": Exercise(letter("c")),
}


# Breakout lab: eggs of a hidden day, drawings with letters.

LAB = {
    "candled_day": DateTheEgg(),
    "opened_day": DateTheEgg(),
    "another_day": DateTheEgg(),
    "died_when": number(
        lambda looks: (max(looks["last_alive"], looks["from"]), min(looks["found"], looks["to"])),
        tolerance=0.05,
        looks_only=lambda looks: (looks["last_alive"], looks["found"]),
        stage_only=lambda looks: (looks["from"], looks["to"]),
    ),
    "which_wing": Exercise(letter("b")),
    "wet_or_dry": Exercise(letter("a")),
}


FURTHER = {**GOOD, **SECOND, **WATER, **TRIAL, **OTHERS, **CLEAN, **LAB}
