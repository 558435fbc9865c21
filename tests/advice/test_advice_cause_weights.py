"""Harms of a measured dose, and the weight of two causes, worked by hand."""

import numpy as np
import pytest

from hatchkit.advice import cause_weights, course, harm
from hatchkit.advice.evidence_climate import NOTHING, Doses


def dose(heat=None, cold=None):
    by_day = [np.zeros(course.DAYS), np.zeros(course.DAYS)]
    for place, found in enumerate((heat, cold)):
        if found:
            by_day[place][found[0]] = found[1]
    return Doses(*by_day, 1.0)


def ways_of(cause, doses):
    return [way for way in harm.ways(doses) if way.cause == cause]


def test_a_dose_of_one_adds_the_log_of_two_after_its_day():
    """Half of the hatch: hazard ln 2 in all, none of it before the day of the heat."""
    kernel = harm.from_dose(dose(heat=(9, 1.0)).heat, delay=1.8)
    assert kernel.sum() == pytest.approx(np.log(2))
    assert kernel[: course.FIRST_DAY + 9].sum() == 0 and kernel[course.FIRST_DAY + 9] > 0
    assert kernel[course.CULLED] == pytest.approx(0.05 * np.log(2))


def test_a_soon_death_falls_on_the_day_and_a_late_one_after_it():
    soon, late = (harm.from_dose(dose(heat=(9, 1.0)).heat, delay=delay) for delay in (0.4, 4.5))
    day = course.FIRST_DAY + 9
    assert soon[day] > 4 * late[day] and late[day + 3 : day + 8].sum() > soon[day + 3 : day + 8].sum()


def test_without_a_dose_every_age_is_open_and_the_chances_add_up():
    ways = ways_of("heat_spell", NOTHING)
    assert {way.variant for way in ways} == {"early", "mid", "late"}
    assert sum(np.exp(way.log_chance).sum() for way in ways) == pytest.approx(1)


def test_a_measured_dose_leaves_little_to_an_unmeasured_one():
    ways = ways_of("heat_spell", dose(heat=(9, 1.0)))
    measured = sum(np.exp(way.log_chance).sum() for way in ways if way.measured)
    assert measured > 0.99 and sum(np.exp(way.log_chance).sum() for way in ways) == pytest.approx(1)


def test_a_dose_that_did_no_harm_is_no_cause():
    """1.5 h lost to cold is a sixteenth of the half dose: hazard 0.043, and only the upper sizes reach 0.05."""
    ways = ways_of("cold_spell", dose(cold=(9, 1.5)))
    assert 0 < sum(np.exp(way.log_chance).sum() for way in ways if way.measured) < 0.6


def test_no_dose_counts_for_more_than_four_halvings():
    assert harm.halvings("heat_spell", dose(heat=(9, 30.0))).sum() == pytest.approx(harm.MOST_HALVINGS)


def test_each_of_two_causes_has_half_the_weight_of_the_pair():
    logs = {"a": np.log(0.2), "b": np.log(0.1), "bad_luck": np.log(0.1), "unlisted": np.log(0.1)}
    alone = {"a": np.array([0.0, 3.0]), "b": np.array([0.0, 8.0])}
    told = cause_weights._shared(
        {}, logs, [("a", "b", np.log(0.5), np.array([0.0, 1.0]), np.array([0.0, 9.0]))], alone, {}
    )
    assert told.shares == pytest.approx({"a": 0.45, "b": 0.35, "bad_luck": 0.1, "unlisted": 0.1})
    assert told.pairs == [dict(first="b", second="a", share=pytest.approx(0.5), eggs_first=9.0, eggs_second=1.0)]
    # 3 eggs at a weight of 0.2 and 1 at 0.5; 8 at 0.1 and 9 at 0.5
    assert told.expected["a"] == pytest.approx([0, 1.1]) and told.expected["b"] == pytest.approx([0, 5.3])


def test_a_second_cause_is_no_likelier_beforehand_than_one_poor_batch_in_three():
    """Prior odds of some second cause beside a first: the named causes' prior odds against luck, times `SECOND`."""
    prior = cause_weights.priors()
    named = sum(share for cause, share in prior.items() if cause not in cause_weights.UNNAMED)
    odds = cause_weights.SECOND * named / prior["bad_luck"]
    assert 0.25 < odds / (1 + odds) < 0.35
