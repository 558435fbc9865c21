"""Ages known as intervals: published estimates, and the log-likelihood to 1e-6."""

import numpy as np
import pytest
from interval_data import (
    CHICK_DEATHS,
    INF,
    MICE_CONVENTIONAL,
    MICE_GERM_FREE,
    RADIO_AND_CHEMOTHERAPY,
    RADIOTHERAPY,
)

from hatchkit.losses.death_age import age_at_death_from
from hatchkit.losses.two_phase_shape import cumulative

# Fay & Shaw 2010 J. Stat. Softw. 36(2), pages 11-12 of the package vignette: printed to four digits.
PUBLISHED = {
    "radiotherapy": (
        RADIOTHERAPY,
        -58.060022,
        [
            (4, 5, 0.0463),
            (6, 7, 0.0334),
            (7, 8, 0.0887),
            (11, 12, 0.0708),
            (24, 25, 0.0926),
            (33, 34, 0.0818),
            (38, 40, 0.1209),
            (46, 48, 0.4656),
        ],
    ),
    "with chemotherapy": (
        RADIO_AND_CHEMOTHERAPY,
        -65.636965,
        [
            (4, 5, 0.0433),
            (5, 8, 0.0433),
            (11, 12, 0.0692),
            (16, 17, 0.1454),
            (18, 19, 0.1411),
            (19, 20, 0.1157),
            (24, 25, 0.0999),
            (30, 31, 0.0709),
            (35, 36, 0.1608),
            (44, 48, 0.0552),
            (48, 60, 0.0552),
        ],
    ),
}


@pytest.mark.parametrize("group", list(PUBLISHED))
def test_breast_cosmesis_masses_as_published(group):
    intervals, log_likelihood, masses = PUBLISHED[group]
    ages, mass, reached = age_at_death_from(*np.array(intervals).T)
    kept = [(after, by, share) for (after, by), share in zip(ages, mass, strict=True) if share > 1e-4]
    assert [row[:2] for row in kept] == [row[:2] for row in masses]
    assert [row[2] for row in kept] == pytest.approx([row[2] for row in masses], abs=5.1e-5)
    # Log-likelihood measured with R npsurv 0.5.
    assert reached == pytest.approx(log_likelihood, abs=1e-6)


@pytest.mark.parametrize(
    ("intervals", "log_likelihood"), [(MICE_CONVENTIONAL, -51.09773107), (MICE_GERM_FREE, -24.03893588)]
)  # R npsurv 0.5
def test_lung_tumour_mice_log_likelihood(intervals, log_likelihood):
    assert age_at_death_from(*np.array(intervals).T).log_likelihood == pytest.approx(log_likelihood, abs=1e-6)


@pytest.mark.parametrize(
    ("limits", "deaths"),
    [
        # Counts of Jassim et al. 1996 by week, by the bands of Butcher & Nilipour (EDIS VM101), by usual looks.
        ([0, 7, 14, 21], [29, 1, 13]),
        ([0, 4, 10, 17, 21], [24, 5, 3, 11]),
        ([0, 7, 14, 18, 21], [29, 1, 7, 6]),
    ],
)
def test_daily_chick_deaths_grouped_into_looks_give_the_grouped_shares(limits, deaths):
    days = np.arange(1, 22)
    window = np.searchsorted(limits, days) - 1
    edges = np.array(limits, dtype=float)
    found = age_at_death_from(edges[window], edges[window + 1], CHICK_DEATHS)
    share = np.array(deaths) / 43
    assert found.mass == pytest.approx(share, abs=1e-9)
    assert found.ages.tolist() == np.column_stack([edges[:-1], edges[1:]]).tolist()
    assert found.log_likelihood == pytest.approx(float(np.sum(deaths * np.log(share))), abs=1e-6)


def test_daily_deaths_in_two_sets_of_looks_reach_the_maximum_of_a_general_optimiser():
    from scipy.optimize import minimize

    # The same deaths seen by two breeders, one candling on days 7, 14, 18, the other on days 5, 10, 18.
    first, second = np.array([0, 7, 14, 18, 21.0]), np.array([0, 5, 10, 18, 21.0])
    days = np.arange(1, 22)
    a, b = np.searchsorted(first, days) - 1, np.searchsorted(second, days) - 1
    after, by = np.concatenate([first[a], second[b]]), np.concatenate([first[a + 1], second[b + 1]])
    eggs = np.concatenate([CHICK_DEATHS, CHICK_DEATHS]).astype(float)
    found = age_at_death_from(after, by, eggs)
    keep = eggs > 0
    holds = (after[keep, None] <= found.ages[None, :, 0]) & (found.ages[None, :, 1] <= by[keep, None])

    def loss(free):
        mass = np.exp(free - free.max())
        return -float(np.sum(eggs[keep] * np.log(np.maximum(holds @ (mass / mass.sum()), 1e-300))))

    best = min(
        minimize(loss, start, method="BFGS", options={"gtol": 1e-10}).fun
        for start in (np.zeros(len(found.mass)), np.log(found.mass + 1e-3))
    )
    assert found.log_likelihood == pytest.approx(-best, abs=1e-6)


def test_a_life_table_with_common_looks_is_the_count_over_those_set():
    # 300 embryos, 12, 6, 5, 15 dead at days 7, 14, 18, 21: survival as statsmodels SurvfuncRight gives it.
    found = age_at_death_from([0, 7, 14, 18, 21], [7, 14, 18, 21, INF], [12, 6, 5, 15, 262])
    assert 1 - np.cumsum(found.mass)[:4] == pytest.approx([0.96, 0.94, 0.923333, 0.873333], abs=1e-6)


def test_published_two_phase_shape_has_the_printed_means_and_spreads():
    # Kuurman et al. 2001 Poult. Sci. 80:710-717: phase 1 mean 2.6 d SD 3.3 d, phase 2 17.4 d SD 2.0 d, 77 : 23.
    age = np.linspace(0, 80, 400_001)
    for weight, mean, spread in ((1.0, 2.6, 3.3), (0.0, 17.4, 2.0)):
        shares = np.diff(cumulative(age, shape=(weight, 0.795, 2.284, 10.49, 18.25)))
        middle = (age[1:] + age[:-1]) / 2
        found = np.sum(shares * middle)
        assert found == pytest.approx(mean, abs=0.05)
        assert np.sqrt(np.sum(shares * (middle - found) ** 2)) == pytest.approx(spread, abs=0.05)
    weeks = np.diff(cumulative([0, 7, 14, 21]))
    assert weeks / weeks.sum() == pytest.approx([0.71, 0.07, 0.22], abs=0.006)
