"""The plan's promises in numbers: 90 % where 90 % is said, and storage that delays but never hurries a hatch."""

import numpy as np
import pandas as pd
import pytest

from hatchkit import reference
from hatchkit.advice import dates
from hatchkit.advice.plan import next_set
from hatchkit.simulate.seasons import draw_season
from hatchkit.usual import beta_binomial as predictive


def weighed(*parts):
    """Grid weights with these parts of the chance at mean hatches of 10.5, 50.5 and 90.5 %, no spread to speak of."""
    weight = np.zeros((len(predictive.MU), len(predictive.RHO)))
    for place, part in zip((10, 50, 90), parts, strict=True):
        weight[place, 0] = part
    return weight


def limits(*parts):
    return tuple(round(one, 3) for one in predictive.summary(weighed(*parts))[1:3])


def test_the_limits_of_the_hatch_leave_a_twentieth_on_each_side():
    """4 % at the low end are less than a twentieth and lie outside, 6 % do not. At 95 % both would be inside."""
    assert limits(0.04, 0.92, 0.04) == (0.505, 0.505)
    assert limits(0.06, 0.88, 0.06) == (0.105, 0.905)
    assert limits(0.04, 0.90, 0.06) == (0.505, 0.905)
    assert limits(0.06, 0.90, 0.04) == (0.105, 0.505)


def test_mean_and_correlation_are_the_weighted_ones():
    mean, _, _, rho = predictive.summary(weighed(0.25, 0.5, 0.25))
    assert mean == pytest.approx(0.505) and rho == pytest.approx(predictive.RHO[0])


def test_the_range_of_chicks_is_the_middle_80_percent():
    """Twenty eggs of even odds: at most 6 chicks come with 5.8 %, at most 7 with 13.2 % (any binomial table): 7 to 13.

    At 90 % it would be 6 to 14, at 60 % 8 to 12. The grid has 49.5 and 50.5 %, half each.
    """
    weight = np.zeros((len(predictive.MU), len(predictive.RHO)))
    weight[49:51, 0] = 0.5
    assert predictive.range_of_chicks(weight, 20) == (7, 10, 13)


def test_a_plan_without_a_word_is_sure_nine_times_in_ten():
    season = draw_season(seed=71_500, cause="none", batches=4, step_minutes=60)[0]
    plan = next_set(season, "hen", 20, set_at="2026-03-20 18:00")
    assert plan.basis["sure"] == 0.9
    assert list(plan.eggs["sure"]) == [0.5, 0.8, 0.9, 0.95]
    # The fewest eggs for 0.9: one egg less is not enough, and the row for 0.95 needs more.
    by_sure = plan.eggs.set_index("sure")
    assert 0.9 <= by_sure.loc[0.9, "chance"] < 0.95 <= by_sure.loc[0.95, "chance"]
    assert by_sure.loc[0.9, "eggs"] < by_sure.loc[0.95, "eggs"]


@pytest.mark.parametrize("stored", [0.0, 1.0, 2.9, 3.0])
def test_eggs_stored_less_than_three_days_hatch_on_the_species_day(stored):
    """21 days for hens (``reference/species.csv``): the trade's days take three days of storage for granted."""
    assert dates.hatch_middle_days(reference.species("chicken"), stored) == 21.0


@pytest.mark.parametrize(("species", "stored", "days"), [("chicken", 5, 21 + 2 / 24), ("chicken", 13, 21 + 10 / 24),
                                                         ("duck", 13, 28 + 8.2 / 24)])  # fmt: skip
def test_each_day_beyond_three_delays_by_the_species_hours(species, stored, days):
    """An hour a day for hens (rule of thumb, from memory), 0.82 h for ducks (Bagliacca et al. 2005)."""
    assert dates.hatch_middle_days(reference.species(species), stored) == pytest.approx(days, abs=1e-9)


@pytest.mark.parametrize("stored", [0.0, 3.0, 10.0])
def test_the_clock_of_the_review_stands_four_hours_before_the_plan_whatever_the_storage(stored):
    """Middle 4 h before the trade's day of 21 (``reference/egg_physics.csv``), for fresh eggs too."""
    assert dates.clock_earlier_hours(reference.species("chicken"), stored) == pytest.approx(4.0)


def test_fresh_eggs_do_not_bring_any_step_of_the_calendar_forward():
    hen, when = reference.species("chicken"), pd.Timestamp("2026-03-20 18:00", tz="UTC")
    fresh, usual = (dates.calendar(hen, when, stored_days=days).set_index("step")["starts"] for days in (0.0, 3.0))
    # Middle at day 21, half a window of 24 h and 8 h of doubt before it: 20 h before.
    assert fresh["first_hatch"] == usual["first_hatch"] == when + pd.Timedelta(days=21) - pd.Timedelta(hours=20)
    assert fresh["last_hatch"] == usual["last_hatch"] == when + pd.Timedelta(days=21) + pd.Timedelta(hours=20)
