"""The exercises of the further lessons: how the right answer follows from the data, and where usual mistakes lead.

The words for each are in ``reference/exercise_words.csv``, under the name given here.
"""

import numpy as np

from hatchkit.teach.breakout_lab import DateTheEgg
from hatchkit.teach.judging import Exercise, letter, turned_round

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
    "good_share": Exercise(
        _pooled,
        share=True,
        tolerance=0.001,
        mistakes=dict(
            mean_of_shares=lambda good: float((good["hatched"] / good["eggs"]).mean()),
            lost=lambda good: 1 - _pooled(good),
        ),
    ),
    "expected_chicks": Exercise(_expected, tolerance=0.1, mistakes=dict(share_only=lambda good, eggs: _pooled(good))),
    "missing_chicks": Exercise(
        _missing,
        tolerance=0.1,
        mistakes=dict(turned_round=turned_round(_missing), all_eggs=lambda good, eggs, hatched: eggs - hatched),
    ),
    "shared_by_all": Exercise(letter("c")),
    "had_it": Exercise(_had_it, share=True, mistakes=dict(turned_round=turned_round(_had_it), given=_poor_given)),
    "poor_given": Exercise(
        _poor_given, share=True, tolerance=0.003, mistakes=dict(turned_round=turned_round(_poor_given), had=_had_it)
    ),
    "out_of_line": Exercise(
        _distance,
        tolerance=0.06,
        mistakes=dict(
            turned_round=turned_round(_distance), no_spread=lambda value, usual: value - float(np.mean(usual))
        ),
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
    "worst_again": Exercise(
        _again,
        share=True,
        tolerance=0.002,
        mistakes=dict(
            first_year=lambda first, second, each, few: float(np.mean(first[_worst(first, few)]) / each),
            chicks=lambda first, second, each, few: float(np.mean(second[_worst(first, few)])),
        ),
    ),
    "got_better": Exercise(
        _better,
        share=True,
        tolerance=0.002,
        mistakes=dict(
            all_flocks=lambda first, second, few: float(np.mean(second > first)),
            worse=lambda first, second, few: 1 - _better(first, second, few),
        ),
    ),
    "the_tonic": Exercise(letter("b")),
    "shrunk": Exercise(
        _shrunk,
        share=True,
        tolerance=0.003,
        mistakes=dict(own=lambda flock: flock["hatched"] / flock["eggs"], usual=lambda flock: flock["usual"]),
    ),
    "any_of": Exercise(
        _any_of,
        share=True,
        tolerance=0.003,
        mistakes=dict(added=lambda level, looks: level * looks, none=lambda level, looks: (1 - level) ** looks),
    ),
    "seasons_with": Exercise(
        _seasons_with,
        share=True,
        tolerance=0.002,
        mistakes=dict(
            each=lambda chances, level: float((np.asarray(chances) < level).mean()),
            none=lambda chances, level: 1 - _seasons_with(chances, level),
        ),
    ),
    "level_each": Exercise(
        lambda level, looks: level / looks, tolerance=0.0001, mistakes=dict(times=lambda level, looks: level * looks)
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
    "water_loss": Exercise(
        _loss,
        share=True,
        tolerance=0.0006,
        mistakes=dict(
            tare_in=_tare_in, of_later=lambda w: (w["gross_first"] - w["gross_later"]) / (w["gross_later"] - w["tray"])
        ),
    ),
    "tare_error": Exercise(
        lambda w: _loss(w) - _tare_in(w),
        share=True,
        tolerance=0.0004,
        mistakes=dict(turned_round=turned_round(lambda w: _loss(w) - _tare_in(w))),
    ),
    "projection": Exercise(
        _projected,
        share=True,
        tolerance=0.0006,
        mistakes=dict(
            whole=lambda loss, day, transfer: loss * 21 / day, added=lambda loss, day, transfer: loss + transfer - day
        ),
    ),
    "rate_left": Exercise(
        _rate_left,
        share=True,
        tolerance=0.0001,
        mistakes=dict(
            from_start=lambda target, loss, day, transfer: target / transfer,
            all_days=lambda target, loss, day, transfer: (target - loss) / transfer,
        ),
    ),
    "humidity_next": Exercise(
        _humidity,
        tolerance=0.15,
        mistakes=dict(
            of_humidity=lambda rh, loss, target: rh * target / loss,
            upside_down=lambda rh, loss, target: 100 - (100 - rh) * loss / target,
        ),
    ),
    "conductance": Exercise(
        _conductance,
        tolerance=0.6,
        mistakes=dict(
            no_difference=lambda egg: egg["grams_a_day"] * 1000 / egg["inside_kpa"],
            grams=lambda egg: _conductance(egg) / 1000,
        ),
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
    "turning_cost": Exercise(
        lambda turned: turned[24] - turned[6],
        tolerance=0.05,
        mistakes=dict(turned_round=lambda turned: turned[6] - turned[24], ratio=lambda turned: turned[6] / turned[24]),
    ),
    "fair_lots": Exercise(letter("b")),
    "block_mean": Exercise(
        _block_mean,
        share=True,
        tolerance=0.003,
        mistakes=dict(lumped=_lumped, turned_round=lambda blocks: -_block_mean(blocks)),
    ),
    "same_way": Exercise(
        _same_way,
        share=True,
        tolerance=0.0005,
        mistakes=dict(one_side=lambda blocks: 1 / 2**blocks, half=lambda blocks: 0.5),
    ),
    "eggs_needed": Exercise(
        _eggs_needed,
        tolerance=3,
        mistakes=dict(
            both=lambda share, difference: 2 * _eggs_needed(share, difference),
            no_power=lambda share, difference: 2 * 1.96**2 * share * (1 - share) / difference**2,
        ),
    ),
    "half_width": Exercise(
        _half_width,
        share=True,
        tolerance=0.002,
        mistakes=dict(no_factor=lambda one, other: _half_width(one, other) / 1.96),
    ),
    "stop_early": Exercise(letter("c")),
    "who_counts": Exercise(letter("a")),
}


# Other birds: rows of the species table; published figures.


def _scaled(hen_day, days):
    return hen_day * days / 21


OTHERS = {
    "last_days": Exercise(
        lambda bird: float(bird["incubation_days"] - bird["transfer_day"]),
        tolerance=0.01,
        mistakes=dict(transfer=lambda bird: float(bird["transfer_day"])),
    ),
    "scaled_day": Exercise(
        _scaled,
        tolerance=0.06,
        mistakes=dict(
            added=lambda hen_day, days: hen_day + days - 21, upside_down=lambda hen_day, days: hen_day * 21 / days
        ),
    ),
    "scale_error": Exercise(
        lambda seen, hen_day, days: seen - _scaled(hen_day, days),
        tolerance=0.06,
        mistakes=dict(turned_round=lambda seen, hen_day, days: _scaled(hen_day, days) - seen),
    ),
    "thirds": Exercise(
        lambda days: (days / 3, 2 * days / 3),
        tolerance=0.06,
        mistakes=dict(hen=lambda days: (7, 14), turned_round=lambda days: (2 * days / 3, days / 3)),
    ),
    "stored_duck": Exercise(
        lambda stored: 27.82 + 0.0343 * stored,
        tolerance=0.01,
        mistakes=dict(only_delay=lambda stored: 0.0343 * stored, no_storage=lambda stored: 27.82),
    ),
    "still_air": Exercise(letter("b")),
    "first_look": Exercise(letter("c")),
    "cooling": Exercise(letter("a")),
}


# Clean hands: eggs taken out rotten, a disinfectant to be thinned, the day of care.

CLEAN = {
    "wash_water": Exercise(letter("c")),
    "rotten_high": Exercise(
        lambda rotten, eggs: _upper(rotten, eggs),
        share=True,
        tolerance=0.003,
        mistakes=dict(seen=lambda rotten, eggs: rotten / eggs),
    ),
    "dilution": Exercise(
        lambda litres, parts: litres * 1000 / parts,
        tolerance=0.5,
        mistakes=dict(
            litres=lambda litres, parts: litres / parts, percent=lambda litres, parts: litres * 1000 * parts / 100
        ),
    ),
    "order_of_work": Exercise(letter("a")),
    "one_stage": Exercise(letter("b")),
    "care_day": Exercise(
        lambda bird: float(bird["embryo_care_day"]),
        tolerance=0.35,
        mistakes=dict(eighty=lambda bird: 0.8 * float(bird["incubation_days"])),
    ),
    "sudden_deaths": Exercise(letter("b")),
    "no_formaldehyde": Exercise(letter("c")),
}


def _upper(count, eggs):
    from hatchkit.losses.proportions import interval

    return float(interval(count, eggs)[1])


# Breakout lab: eggs of a hidden day, drawings with letters.

LAB = {
    "candled_day": DateTheEgg(),
    "opened_day": DateTheEgg(),
    "another_day": DateTheEgg(),
    "died_when": Exercise(
        lambda looks: (max(looks["last_alive"], looks["from"]), min(looks["found"], looks["to"])),
        tolerance=0.05,
        mistakes=dict(
            looks_only=lambda looks: (looks["last_alive"], looks["found"]),
            stage_only=lambda looks: (looks["from"], looks["to"]),
        ),
    ),
    "which_wing": Exercise(letter("b")),
    "wet_or_dry": Exercise(letter("a")),
}


FURTHER = {**GOOD, **SECOND, **WATER, **TRIAL, **OTHERS, **CLEAN, **LAB}
