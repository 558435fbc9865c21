"""One batch by the day: hazards, what was seen, and the likelihood; arithmetic that can be done by hand."""

import numpy as np
import pytest

from hatchkit.advice import course, harm
from hatchkit.advice.evidence_climate import Doses
from hatchkit.advice.published import STAGES
from hatchkit.advice.seen import seen

#: Log odds of 10 % clears, 1 % removed, 6 % early ... one after the other.
LOGITS = np.log(np.array([0.10, 0.011, 0.067, 0.03, 0.074, 0.027, 0.034]))
SPREAD = np.full(7, 0.5)
EVERY = frozenset({"clear", "culled", "dead", "pipped_dead", "hatched", "removed"})


def group(fate, eggs, after=0.0, by=np.nan, at="hatch"):
    return dict(fate=fate, eggs=eggs, after_day=after, by_day=by, found_at=at, egg="")


def logs(fates, kernels, kinds=EVERY, row=None, spread=SPREAD):
    what = seen(fates, row or {}, kinds, 21.0)
    base = course.ordinary_hazards(LOGITS)
    return course.log_marginal(what.ways, what.eggs, base + np.asarray(kernels), course.precision(spread))[0]


def days(first, last, size):
    kernel = np.zeros(course.HAZARDS)
    kernel[course.FIRST_DAY + first : course.FIRST_DAY + last] = size / (last - first)
    return kernel


NONE = np.zeros(course.HAZARDS)


def test_every_egg_ends_in_one_cell():
    cells = course.chances(course.ordinary_hazards(LOGITS))
    assert cells.sum() == pytest.approx(1) and (cells >= 0).all()


def test_competing_hazards_by_hand():
    hazards = np.zeros(course.HAZARDS)
    hazards[course.CLEAR], hazards[course.PIPPED] = np.log(2), np.log(4)
    cells = course.chances(hazards)
    assert cells[[course.CLEAR, course.PIPPED, course.HATCHED]] == pytest.approx([1 / 2, 3 / 8, 1 / 8])


def test_the_usual_shares_come_back_from_the_hazards():
    cells = course.chances(course.ordinary_hazards(LOGITS))
    shown = cells[2:9] @ course.SHOWS_AT_CANDLING[:7]
    hidden = cells[2:9] @ (1 - course.SHOWS_AT_CANDLING[:7])
    assert cells[course.CLEAR] + hidden == pytest.approx(0.0909, abs=0.01)
    assert shown == pytest.approx(0.06 * 0.9, abs=0.012)


def test_laplace_is_near_the_whole_integral():
    fates = [
        group("clear", 4, by=7, at="candle1"),
        group("dead", 3, by=7, at="candle1"),
        group("dead", 9, 7),
        group("hatched", 20, 21),
    ]
    what, base = seen(fates, {}, EVERY, 21.0), course.ordinary_hazards(LOGITS)
    inverse = course.precision(SPREAD)
    kernels = np.stack([NONE, days(9, 12, 0.3)])
    told = course.log_marginal(what.ways, what.eggs, base + kernels, inverse)[0]
    factor = np.random.default_rng(3).multivariate_normal(np.zeros(course.BANDS), np.linalg.inv(inverse), 100_000)
    for kernel, log in zip(kernels, told, strict=True):
        cells = course.chances((base + kernel) * np.exp(factor)[:, course.BAND_OF])
        chance = (1 - course.MISCOUNT) * cells @ what.ways.T + course.MISCOUNT / len(what.ways)
        each = np.log(chance) @ what.eggs
        assert log == pytest.approx(np.log(np.mean(np.exp(each - each.max()))) + each.max(), abs=0.3)


def test_deaths_between_two_looks_speak_for_any_day_between_them():
    fates = [group("dead", 9, 7, 14, "candle2"), group("hatched", 25, 21)]
    early, inside, late = (logs(fates, [NONE, days(first, first + 2, 0.4)]) for first in (1, 10, 17))
    assert inside[1] - inside[0] > 2 > max(early[1] - early[0], late[1] - late[0])


def test_unopened_dead_say_less_than_opened_ones():
    kernel = [NONE, days(7, 14, 0.4)]
    opened = logs([group("dead", 9, 7, 14), group("dead", 2, 14), group("hatched", 25, 21)], kernel)
    unopened = logs([group("dead", 11, 0), group("hatched", 25, 21)], kernel)
    assert opened[1] - opened[0] > unopened[1] - unopened[0]


def test_an_early_death_may_look_clear_and_an_opened_germ_settles_it():
    kernels = np.zeros((3, course.HAZARDS))
    kernels[1, course.CLEAR], kernels[2, course.FIRST_DAY] = 0.5, 0.5
    fates = [group("clear", 12, by=7, at="candle1"), group("hatched", 24, 21)]
    closed = logs(fates, kernels)
    assert abs(closed[1] - closed[2]) < 1.5
    barren = logs(fates, kernels, row={"opened1_infertile": 12.0})
    died = logs(fates, kernels, row={"opened1_infertile": 0.0, "opened1_dead": 12.0})
    assert barren[1] - barren[2] > 3 and died[2] - died[1] > 3


def test_clears_that_nobody_counted_may_be_among_the_dead():
    kernel = np.zeros((2, course.HAZARDS))
    kernel[1, course.CLEAR] = 0.5
    fates = [group("dead", 20, 0), group("hatched", 16, 21)]
    counted, uncounted = logs(fates, kernel), logs(fates, kernel, kinds=EVERY - {"clear"})
    assert uncounted[1] - uncounted[0] > counted[1] - counted[0] + 1


def test_eggs_put_in_cells_are_those_of_the_groups():
    fates = [group("dead", 9, 7), group("clear", 5, by=7, at="candle1"), group("unaccounted", 2, 0)]
    what = seen(fates, {}, EVERY, 21.0)
    base = course.ordinary_hazards(LOGITS)
    cells = course.log_marginal(what.ways, what.eggs, base[None], course.precision(SPREAD))[1][0]
    assert cells.sum(axis=1) == pytest.approx(what.eggs)
    by_stage = what.by_stage(cells)
    assert by_stage.sum() == pytest.approx(16) and by_stage[STAGES.index("clear")] == pytest.approx(5)


def test_a_quails_days_are_put_on_the_hens():
    what = seen([group("dead", 3, 7 * 17 / 21, 14 * 17 / 21, "candle2")], {}, EVERY, 17.0)
    days = what.ways[0][course.FIRST_DAY : course.PIPPED]
    # An embryo dead since day 4 was overlooked once (0.07) and then found (0.93), one of days 8 to 11 is found.
    assert days[4] == pytest.approx(0.07 * 0.93, rel=0.05) and days[8:11] == pytest.approx(0.93, rel=0.01)
    # Of those that died within two days of a look about half show, and nobody finds one that lives.
    assert 0.4 < days[6] < 0.8 and 0.3 < days[13] < 0.6 and (days[14:] == 0).all()


def test_an_opened_embryo_of_another_age_is_no_failed_pip():
    """With the pipped not counted apart, dead eggs may be pipped ones, but not those opened and called mid dead."""
    kinds = frozenset(EVERY) - {"pipped_dead"}
    mid, late = (seen([group("dead", 3, *ages)], {}, kinds, 21.0).ways[0] for ages in ((7, 14), (14, 22)))
    assert mid[course.PIPPED] == 0 and late[course.PIPPED] == 1
    # Judged by eye: of those of the day at the limit half.
    assert mid[course.FIRST_DAY + 6] + mid[course.FIRST_DAY + 7] == pytest.approx(1, abs=0.01)


def test_a_wider_spread_lets_luck_explain_more():
    fates = [group("dead", 9, 7, 14, "candle2"), group("hatched", 25, 21)]
    kernel = [NONE, days(7, 14, 0.4)]
    narrow, wide = (logs(fates, kernel, spread=np.full(7, sd)) for sd in (0.3, 1.2))
    assert narrow[1] - narrow[0] > wide[1] - wide[0] + 1


def doses(day, heat=0.0, cold=0.0, logged=1.0):
    met = np.zeros((2, course.DAYS))
    met[0, day], met[1, day] = heat, cold
    return Doses(met[0], met[1], logged)


def test_one_half_lethal_dose_halves_the_hatch():
    kernel = harm.from_dose(harm.halvings("heat_spell", doses(9, heat=1.0)), 0.4)
    assert np.exp(-kernel.sum()) == pytest.approx(0.5, rel=1e-6)


def test_deaths_come_on_the_day_of_the_heat_and_after_it_never_before():
    kernel = harm.from_dose(harm.halvings("heat_spell", doses(9, heat=1.0)), 1.8)
    died = kernel[course.FIRST_DAY : course.PIPPED]
    assert died[:9].sum() == 0 and died[9:13].sum() > 0.6 * kernel.sum()


def test_without_an_event_in_the_log_heat_may_have_struck_at_any_age_it_missed():
    measured = [way for way in harm.ways(doses(9, heat=1.0)) if way.cause == "heat_spell"]
    bare = [way for way in harm.ways(doses(9)) if way.cause == "heat_spell"]
    assert {way.variant for way in bare} == {"early", "mid", "late"}
    assert sum(np.exp(way.log_chance).sum() for way in measured) == pytest.approx(1)
    assert sum(np.exp(way.log_chance).sum() for way in measured if way.measured) > 0.95


def test_the_kernels_of_the_table_add_up():
    for (cause, variant), (kernel, why) in harm.patterns().items():
        assert kernel.sum() == pytest.approx(1) and why, (cause, variant)
