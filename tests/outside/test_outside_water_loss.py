"""Published check values for the water that eggs lose."""

import numpy as np
import pandas as pd
import pytest

from hatchkit.climate import air
from hatchkit.climate.water_loss import lost_share, prior_loss, rh_needed, vapour_difference
from hatchkit.climate.weighings import egg_lines


def line_of(days, grams):
    """The line through the weighings of one egg: set_g, slope_g_day."""
    alone = dict(egg="", name="", whole=True, namesakes=False, eggs_weighed=1.0)
    return egg_lines(
        pd.DataFrame({"day": np.asarray(days, float), "grams": np.asarray(grams, float)}).assign(**alone)
    ).iloc[0]


@pytest.mark.parametrize(
    ("specific", "rh", "model"), [(0.31, 53, 12.8), (0.40, 66, 11.9), (0.35, 61, 12.0), (0.41, 67, 11.9)]
)
def test_layers_through_a_season(specific, rh, model):
    """Meir & Ar 2008 (Br. Poult. Sci.): with these shells and humidities hens' eggs lost 12 to 13 % by day 18.

    Independent: nothing is fitted, 37.7 degC is assumed. Three of the four come out 0.1 point of loss low.
    """
    needed = rh_needed(model / 100, specific_g=specific, egg_c=37.7, air_c=37.7, days=18)
    assert needed == pytest.approx(rh, abs=0.4)  # 0.1 point of the loss


@pytest.mark.parametrize(("torr", "loss"), [(19.4, 15.1), (26.6, 11.4), (33.9, 7.5)])
def test_turkeys_at_three_humidities(torr, loss):
    """Meir, Nir & Ar 1984 (Poult. Sci. 63:1489): 18.70 mg/(100 g d torr), 28 days, best loss 12 +- 1 %.

    Independent. The printed torr are the vapour pressures of the setter's air.
    """
    rh = 100 * torr * air.TORR_KPA / air.saturation_pressure(37.5)
    assert rh_needed(loss / 100, specific_g=0.1870, days=28) == pytest.approx(rh, abs=0.4)  # 0.1 point of the loss


def test_the_turkeys_humidity_for_twelve_per_cent():
    rh = rh_needed(0.12, days=28, specific_g=0.1870)
    assert rh == pytest.approx(52.5, abs=0.3)


@pytest.mark.parametrize(("metres", "percent"), [(500, 6), (1000, 13), (1500, 20), (2000, 27), (2500, 36), (3000, 45)])
def test_gas_moves_faster_at_altitude(metres, percent):
    """Independent: a published table for hatcheries at altitude."""
    sea, high = (
        100 - rh_needed(0.1, specific_g=0.3, days=18, pressure_kpa=pressure)
        for pressure in (101.325, air.standard_pressure(metres))
    )
    assert 100 * (sea / high - 1) == pytest.approx(percent, abs=0.55)  # so much drier must the air be below


def test_units_of_conductance():
    """0.31 mg/(d g torr) is 232.5 mg/(d 100 g kPa); the abstract in circulation prints 4.21, wrong by 55 times."""
    assert 0.31 * 100 / air.TORR_KPA == pytest.approx(232.5, abs=0.1)


def test_the_usual_formula_the_right_way_up():
    """100 eggs of 60 g that lose 6 g each: a guide's worked example, 10 % (its printed formula is upside down)."""
    assert lost_share(6000, 5400) == pytest.approx(0.10)
    assert lost_share(50, 45) == pytest.approx(0.10)


def test_a_tray_left_on_the_scale_understates_the_loss():
    """The same eggs with a 300 g tray: 6300 to 5700 g looks like 9.52 %; the guide prints 10.5 %."""
    assert lost_share(6300, 5700) == pytest.approx(0.0952, abs=5e-5)
    assert lost_share(6300, 5700, tare_g=300) == pytest.approx(0.10)


def test_a_worked_example_in_ounces():
    """Gross 59.8, tray 7.3, target 13 % by day 21: goal 45.7 net, 0.325 a day; after two days 51.8 net."""
    net = 59.8 - 7.3
    assert net * (1 - 0.13) == pytest.approx(45.7, abs=0.05)
    assert net * 0.13 / 21 == pytest.approx(0.325, abs=0.0005)
    assert lost_share(59.8, 51.8 + 7.3, tare_g=7.3) == pytest.approx(0.0133, abs=5e-5)


@pytest.mark.parametrize(("day", "percent"), [(7, 4.33), (14, 8.67), (18, 11.14)])
def test_the_pace_of_thirteen_per_cent_in_three_weeks(day, percent):
    fit = line_of([0, 21], [60, 60 * 0.87])
    assert 100 * fit["slope_g_day"] * day / fit["set_g"] == pytest.approx(percent, abs=0.005)


def test_turkey_losses_are_close_to_a_straight_line():
    """5.76 % by day 15 and 8.72 % by day 21 (Ann. Anim. Sci. 17:447): 0.384 and 0.415 % a day."""
    fit = line_of([0, 15, 21], [100, 94.24, 91.28])
    line = fit["set_g"] - fit["slope_g_day"] * np.array([15, 21])
    assert np.abs(line - [94.24, 91.28]).max() < 0.1 * 8.72


def test_humidity_for_another_loss_by_proportion():
    """14 % at 45 %RH, 12 % wanted: 52.9 %RH, as 100 - RH changes in proportion to the loss."""
    specific = 0.14 * 1000 / (vapour_difference(37.5, 37.5, 45) * 18)
    assert rh_needed(0.12, specific_g=specific, days=18) == pytest.approx(52.9, abs=0.05)


@pytest.mark.parametrize(
    ("specific", "sea", "high"), [(0.31, 53.7, 63.7), (0.35, 59.0, 67.8), (0.40, 64.1, 71.9), (0.26, 44.8, 56.7)]
)
def test_humidity_for_twelve_and_a_half_per_cent(specific, sea, high):
    """Worked with another program from the same law; eggs carried up to 2000 m need damper air."""
    assert rh_needed(0.125, days=18, specific_g=specific) == pytest.approx(sea, abs=0.1)
    up = rh_needed(0.125, days=18, specific_g=specific, pressure_kpa=air.standard_pressure(2000))
    assert up == pytest.approx(high, abs=0.1)


def test_three_weighings_of_one_egg():
    """60.0, 57.3, 54.7 g on days 0, 7, 14 at 37.5 degC, 55 %RH: 0.379 g/d, 17.4 mg/(d torr), 11.4 % at day 18."""
    fit = line_of([0, 7, 14], [60.0, 57.3, 54.7])
    assert fit["slope_g_day"] == pytest.approx(0.379, abs=0.0005)
    assert fit["slope_g_day"] * 1000 / vapour_difference(37.5, 37.5, 55) == pytest.approx(17.4, abs=0.05)
    assert 100 * fit["slope_g_day"] * 18 / fit["set_g"] == pytest.approx(11.4, abs=0.05)


def test_size_alone_is_good_to_a_factor_of_two():
    """Hens' eggs measure 18 to 24 mg/(d torr); 0.384 W^0.814 (Ar & Rahn 1985, from memory) gives 10.8."""
    middle, low, high = prior_loss(60, torr=1.0, days=1.0)
    assert middle * 60 * 1000 == pytest.approx(10.8, abs=0.1)
    assert low < 18 / 60 / 1000 < high


def test_the_eggs_own_temperature_counts():
    """An egg 1.4 K above the air loses about a sixth more a day."""
    same, warm = (vapour_difference(egg_c, 37.5, 55) for egg_c in (37.5, 38.9))
    assert warm / same == pytest.approx(0.79 / 0.675, rel=0.02)
