"""The two-phase shape fitted to a season, and how far it is from the plain estimate."""

import numpy as np
import pytest
from tiny_season import tiny_season

from hatchkit.figures import losses as figures
from hatchkit.losses.death_age import age_at_death
from hatchkit.losses.two_phase import fit_two_phase, season_two_phase
from hatchkit.losses.two_phase_shape import cumulative
from hatchkit.problems import HatchkitError


def season():
    rows = [
        dict(
            batch=n,
            eggs_set=100,
            day1=5 + n,
            dead1=9 + n % 2,
            day2=12 + n,
            dead2=1,
            day3=18,
            dead3=2,
            dead_in_shell=4,
            hatched=84 - n % 2,
        )
        for n in range(4)
    ]
    return tiny_season(rows)


def test_a_shape_comes_back_from_its_own_deaths():
    truth = (0.7, 1.0, 3.0, 12.0, 18.0)
    days = np.arange(1.0, 22.0)
    deaths = 1000 * np.diff(cumulative(np.arange(22.0), shape=truth))
    fit = fit_two_phase(days - 1, days, deaths)
    assert fit.shape[0] == pytest.approx(0.7, abs=0.02)
    assert fit.shape[2] == pytest.approx(3.0, abs=0.15) and fit.shape[4] == pytest.approx(18.0, abs=0.2)
    assert fit.deviance < 0.1 and fit.largest_miss < 1


def test_the_smooth_curve_ends_where_the_estimate_ends():
    curve, _ = season_two_phase(season(), "chicken")
    assert curve["lost"].is_monotonic_increasing
    assert curve["lost"].iloc[-1] == pytest.approx(age_at_death(season(), draws=0).curve["at_most"].max())
    ax = figures.death_age(age_at_death(season(), draws=5), smooth=curve)
    dotted = [line for line in ax.lines if line.get_linestyle() == ":"]
    assert any(line.get_ydata()[-1] == pytest.approx(100 * curve["lost"].iloc[-1]) for line in dotted)


def test_other_species_are_fitted_on_the_hens_scale():
    days = np.arange(1.0, 29.0)
    deaths = 500 * np.diff(cumulative(np.arange(29.0), 28.0))
    assert fit_two_phase(days - 1, days, deaths, incubation_days=28).shape[4] == pytest.approx(18.25, abs=0.3)


def test_too_few_looks_are_refused_in_words():
    with pytest.raises(HatchkitError, match="at least 5 different stretches"):
        season_two_phase(tiny_season([dict(batch=1, eggs_set=20, day1=7, dead1=3, hatched=17)]), "chicken")
