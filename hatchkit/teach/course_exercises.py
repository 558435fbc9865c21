"""The exercises of the course: how the right answer follows from the data, and where usual mistakes lead.

The words for each are in ``reference/exercise_words.csv``, under the name given here.
"""

from itertools import combinations
from math import comb, exp, factorial

import numpy as np

from hatchkit.losses.proportions import interval
from hatchkit.teach.course_finding import Writing
from hatchkit.teach.judging import Exercise, HiddenCause, letter, number, share, turned_round

# One tray: columns day7, day18, day21; letters a alive, c clear, d dead, h hatched, p pipped and died.


def _chicks(tray):
    return int((tray["day21"] == "h").sum())


def _fertile(tray):
    return int((tray["day7"] != "c").sum())


def _of_set(tray):
    return _chicks(tray) / len(tray)


def _of_fertile(tray):
    return _chicks(tray) / _fertile(tray)


def _of_transferred(tray):
    return _chicks(tray) / int((tray["day18"] == "a").sum())


def _not_accounted(ledger):
    return 2 * ledger["set"] - sum(ledger.values())


def _early_of_fertile(one):
    return one["early_dead"] / (one["set"] * one["fertility"])


TRAY = {
    "hatch_of_set": share(_of_set, of_fertile=_of_fertile, of_transferred=_of_transferred, chicks=_chicks),
    "hatch_of_fertile": share(_of_fertile, of_set=_of_set, of_transferred=_of_transferred),
    "hatch_of_transferred": share(_of_transferred, of_set=_of_set, of_fertile=_of_fertile),
    "not_accounted": number(_not_accounted, tolerance=0, turned_round=turned_round(_not_accounted)),
    "early_of_fertile": share(_early_of_fertile, tolerance=0.0005, of_set=lambda one: one["early_dead"] / one["set"]),
}


# Clears: what fertility can be, and what a sample of opened clears makes of it.


def _bounds(tray):
    return _fertile(tray) / len(tray), 1.0


def _true_fertility(one):
    infertile = (one["opened"] - one["early_dead"]) / one["opened"]
    return 1 - one["clear"] / one["set"] * infertile


CLEARS = {
    "fertility_bounds": share(
        _bounds, turned_round=turned_round(_bounds), alive_only=lambda tray: (float((tray["day7"] == "a").mean()), 1.0)
    ),
    "true_fertility": share(
        _true_fertility,
        all_infertile=lambda one: 1 - one["clear"] / one["set"],
        opened_only=lambda one: 1 - (one["opened"] - one["early_dead"]) / one["set"],
        turned_round=lambda one: 1 - one["clear"] / one["set"] * one["early_dead"] / one["opened"],
    ),
}


# Luck: arrays of hatches that differ by chance alone.


def _few(hatches, few):
    return float(np.mean(hatches <= few))


def _apart(mine, theirs, apart):
    return float(np.mean(np.abs(mine - theirs) >= apart))


def _covers(low, high, truth):
    return float(np.mean((low <= truth) & (truth <= high)))


def _eggs_for_none(share):
    """Smallest number of eggs without a loss whose interval ends below `share`."""
    eggs = 1
    while interval(0, eggs)[1] >= share:
        eggs += 1
    return eggs


def _variance(hatched, each):
    share = np.sum(hatched) / (each * len(hatched))
    return float(share * (1 - share) / each)


def _chance_spread(hatched, each):
    return _variance(hatched, each) ** 0.5


LUCK = {
    "few_chicks": share(
        _few,
        tolerance=0.0005,
        fewer=lambda hatches, few: float(np.mean(hatches < few)),
        count=lambda hatches, few: float(np.sum(hatches <= few)),
        more=lambda hatches, few: float(np.mean(hatches >= few)),
    ),
    "neighbours": share(
        _apart,
        tolerance=0.0005,
        one_sided=lambda mine, theirs, apart: float(np.mean(mine - theirs >= apart)),
        other_sided=lambda mine, theirs, apart: float(np.mean(theirs - mine >= apart)),
        further=lambda mine, theirs, apart: float(np.mean(np.abs(mine - theirs) > apart)),
    ),
    "covers": share(
        _covers,
        tolerance=0.0005,
        misses=lambda *data: 1 - _covers(*data),
        low_only=lambda low, high, truth: float(np.mean(low <= truth)),
    ),
    "eggs_for_none": number(_eggs_for_none, tolerance=0.5, rule_of_three=lambda share: 3 / share),
    "independent": Exercise(letter("b")),
    "chance_spread": share(
        _chance_spread,
        tolerance=0.003,
        all_eggs=lambda hatched, each: (_variance(hatched, each) / len(hatched)) ** 0.5,
        no_root=_variance,
        seen=lambda hatched, each: float(np.std(hatched / each)),
    ),
}


# Age at death: one egg as a dict of days; one window as a dict died, at_risk, days.


def _death_interval(egg):
    return egg["last_alive"], egg["found_dead"]


def _narrowed(egg):
    return max(egg["last_alive"], egg["stage_from"]), min(egg["found_dead"], egg["stage_to"])


def _per_window(*windows):
    return tuple(window["died"] / window["at_risk"] for window in windows)


def _daily_risk(*windows):
    return tuple(share / window["days"] for share, window in zip(_per_window(*windows), windows, strict=True))


AGE = {
    "death_interval": number(
        _death_interval,
        tolerance=0,
        from_start=lambda egg: (0, egg["found_dead"]),
        turned_round=turned_round(_death_interval),
        middle=lambda egg: (sum(_death_interval(egg)) / 2,) * 2,
    ),
    "narrowed": number(
        _narrowed,
        tolerance=0,
        stage_only=lambda egg: (egg["stage_from"], egg["stage_to"]),
        looks_only=_death_interval,
        turned_round=turned_round(_narrowed),
    ),
    "candling_pile": Exercise(letter("c")),
    "daily_risk": share(
        _daily_risk,
        tolerance=0.0002,
        turned_round=turned_round(_daily_risk),
        per_window=_per_window,
        per_day_only=lambda *windows: tuple(window["died"] / window["days"] for window in windows),
    ),
}


# The machine: a lid opened, a short log (attrs: step_hours), two exposures of a published trial.


def _distance_left(lid):
    return (lid["egg_c"] - lid["room_c"]) * exp(-lid["minutes"] / lid["tau_minutes"])


def _egg_after_lid(lid):
    return lid["room_c"] + _distance_left(lid)


def _hours_warm(log, limit):
    return float((log["air_c"] > limit).sum() * log.attrs["step_hours"])


def _share_logged(log, hours):
    return len(log) * log.attrs["step_hours"] / hours


def _degree_hours(first, second, base):
    return tuple((one["air_c"] - base) * one["hours"] for one in (first, second))


MACHINE = {
    "egg_after_lid": number(
        _egg_after_lid,
        tolerance=0.06,
        distance=_distance_left,
        away=lambda lid: lid["egg_c"] + _distance_left(lid),
        air=lambda lid: lid["room_c"],
    ),
    "which_egg": Exercise(letter("b")),
    "hours_warm": number(
        _hours_warm,
        tolerance=0.01,
        readings=lambda log, limit: float((log["air_c"] > limit).sum()),
        on_limit=lambda log, limit: float((log["air_c"] >= limit).sum() * log.attrs["step_hours"]),
    ),
    "share_logged": share(_share_logged, missing=lambda log, hours: 1 - _share_logged(log, hours)),
    "degree_hours": number(
        _degree_hours,
        tolerance=0.06,
        whole=lambda first, second, base: _degree_hours(first, second, 0),
        turned_round=turned_round(_degree_hours),
    ),
    "shape": Exercise(letter("a")),
}


# Cause: a table of batches with columns warm (yes, no), stored (short, long), eggs, died; then shares to permute.


def _share_died(rows):
    return rows["died"].sum() / rows["eggs"].sum()


def _crude(table):
    warm = table["warm"] == "yes"
    return float(_share_died(table[warm]) - _share_died(table[~warm]))


def _within(table):
    return tuple(_crude(table[table["stored"] == kind]) for kind in ("short", "long"))


def _mean_of_shares(table):
    warm, shares = table["warm"] == "yes", table["died"] / table["eggs"]
    return float(shares[warm].mean() - shares[~warm].mean())


def _differences(shares, warm):
    """Mean of the chosen less mean of the others, for every way to choose that many batches; and the one seen."""
    shares, warm = np.asarray(shares, dtype=float), np.asarray(warm, dtype=bool)
    ways = np.array(
        [np.isin(np.arange(len(shares)), group) for group in combinations(range(len(shares)), int(warm.sum()))]
    )
    means = ways @ shares / warm.sum() - ~ways @ shares / (~warm).sum()
    return means, shares[warm].mean() - shares[~warm].mean()


def _permutation(shares, warm):
    means, seen = _differences(shares, warm)
    return float(np.mean(means >= seen - 1e-9))


def _without_seen(shares, warm):
    means, seen = _differences(shares, warm)
    return float(np.mean(means > seen + 1e-9))


CAUSE = {
    "crude": share(_crude, tolerance=0.003, turned_round=turned_round(_crude), mean_of_shares=_mean_of_shares),
    "within": share(_within, tolerance=0.003, turned_round=turned_round(_within)),
    "confounder": Exercise(letter("c")),
    "arrangements": number(
        comb,
        tolerance=0,
        repeats=lambda batches, warm: batches**warm,
        ordered=lambda batches, warm: comb(batches, warm) * factorial(warm),
    ),
    "permutation": share(
        _permutation,
        tolerance=0.002,
        without_seen=_without_seen,
        smaller=lambda shares, warm: 1 - _permutation(shares, warm),
        count=lambda shares, warm: _permutation(shares, warm) * comb(len(shares), int(np.sum(warm))),
    ),
    "smallest": share(lambda batches, warm: 1 / comb(batches, warm), tolerance=0.0005),
}

PARTS = {**TRAY, **CLEARS, **LUCK, **AGE, **MACHINE, **CAUSE, "finding": Writing(), "case": HiddenCause()}
