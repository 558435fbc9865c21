"""Chicks lost through windows that are themselves exposed, and how many covariates a season can carry: by hand."""

import numpy as np
import pandas as pd
import pytest

from hatchkit.relate.design import design
from hatchkit.relate.excess import DRAWS, excess

#: Log cumulative hazards of nobody dying, and of a quarter and a half dying: -log(1 - share).
NOBODY, QUARTER, HALF = -50.0, np.log(np.log(4 / 3)), np.log(np.log(2))


def lost(windows, hazards):
    """Excess of one batch; `windows` are (at risk, died, dose), `hazards` what they would have lost unexposed."""
    rows = [("bad", number, 7.0, *window) for number, window in enumerate(windows, start=1)]
    rows += [("good", number, 7.0, 20, 0, 0.0) for number in range(1, len(windows) + 1)]
    coded = design(pd.DataFrame(rows, columns=["batch", "window", "days", "at_risk", "died", "dose"]))
    found = excess(coded, log_hazard=np.tile(np.array([*hazards, *hazards]), (DRAWS, 1)))
    return found.set_index("batch").loc["bad"]


def test_embryos_saved_in_one_exposed_window_still_meet_the_hazard_of_the_next():
    """Ten too many die of 20; of 10 at risk next, half would die anyway and 2 did: 10 x 1/2 + 2 - 5 = 2 chicks.

    Were the second window's hazard left out for the ten, it would be 10 + 2 - 5 = 7.
    """
    found = lost([(20, 10, 1.0), (10, 2, 1.0)], [NOBODY, HALF])
    # The mean of 4,000 draws of a binomial (10, 1/2) has an error of 0.025.
    assert found["expected"] == pytest.approx(5, abs=0.1)
    assert found["excess"] == pytest.approx(10 + 2 - 5, abs=0.1)
    assert found["chicks_lost"] == pytest.approx(2, abs=0.1)


def test_chicks_lost_pass_every_later_window_exposed_or_not():
    """8 too many; 8 x 1/2 left after an exposed window in which 5 of 10 die as expected, three quarters of it: 3."""
    found = lost([(18, 8, 1.0), (10, 5, 2.0), (5, 0, 0.0)], [NOBODY, HALF, QUARTER])
    assert found["excess"] == pytest.approx(8, abs=0.1)
    assert found["chicks_lost"] == pytest.approx(3, abs=0.1)


def test_a_window_before_the_exposure_costs_nothing_of_what_the_exposure_took():
    found = lost([(20, 4, 0.0), (16, 6, 1.0)], [HALF, NOBODY])
    assert found["eggs"] == 16
    assert found["chicks_lost"] == pytest.approx(6)


def carried(deaths, batches, *, machines=1):
    """Names carried and not carried by a season of one window with storage and age of flock kept."""
    count = np.zeros(batches)
    count[:2] = deaths - deaths // 2, deaths // 2
    number = np.arange(batches)
    table = pd.DataFrame({"batch": number.astype(str), "window": 1, "days": 7.0, "at_risk": 200, "died": count,
                          "dose": (number < 3).astype(float), "incubator": (number % machines).astype(str),
                          "stored_days": number % 5, "flock_age_weeks": 30 + number % 7})  # fmt: skip
    made = design(table)
    return made.extra_names, made.not_carried


@pytest.mark.parametrize(("deaths", "terms"), [(9, 0), (10, 1), (19, 1), (20, 2), (100, 2)])
def test_a_covariate_costs_ten_deaths(deaths, terms):
    """Ten events a term: Peduzzi et al. 1996, J Clin Epidemiol 49:1373 (from memory). 30 batches would carry 5."""
    names = ["stored_days", "flock_age_weeks"]
    assert carried(deaths, 30) == (names[:terms], names[terms:])


@pytest.mark.parametrize(("batches", "terms"), [(6, 0), (7, 1), (11, 1), (12, 2), (30, 2)])
def test_a_covariate_costs_five_batches_beyond_two(batches, terms):
    """The kit's own rule; 100 deaths would carry ten terms."""
    names = ["stored_days", "flock_age_weeks"]
    assert carried(100, batches) == (names[:terms], names[terms:])


def test_three_machines_take_two_terms_and_leave_the_rest_to_the_others():
    """12 batches and 30 deaths carry min(3, 2) = 2 terms: the machines take both; 17 batches carry a third."""
    assert carried(30, 12, machines=3) == (["incubator"], ["stored_days", "flock_age_weeks"])
    assert carried(30, 17, machines=3) == (["incubator", "stored_days"], ["flock_age_weeks"])
