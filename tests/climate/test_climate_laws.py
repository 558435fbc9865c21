"""The egg's lag by a plain loop; harm, development and the hatch clock by hand."""

import math
from types import SimpleNamespace

import numpy as np
import pandas as pd
import pytest

from hatchkit import reference
from hatchkit.climate import clock, dose, egg_temperature
from hatchkit.climate.egg_heat import conductance, embryo_heat, evaporation_heat, rate, time_constant


def test_heat_of_a_hens_egg_by_hand():
    """60 g in a weak fan: 115 mW/K, 1.12 x 3.3 x 60 / 0.115 s; 0.36 g of water a day at 2410 J/g; exponents by size."""
    assert time_constant(60, "fan") == pytest.approx(1.12 * 3.3 * 60 / 0.115 / 3600)
    assert conductance(80, "still") == pytest.approx(85 * (80 / 60) ** 0.6)
    assert conductance(80, "strong fan") == pytest.approx(170 * (80 / 60) ** 0.54)
    assert conductance(80, "weak fan") == pytest.approx(115 * (80 / 60) ** 0.56)
    assert evaporation_heat(60) == pytest.approx(0.36 * 2410 / 86.4)
    assert evaporation_heat(80, 28) == pytest.approx(0.006 * 80 * 0.75 * 2410 / 86.4)
    table = reference.load("oxygen_uptake")
    ml = np.interp(13.5, table["day"], table["ml_per_day"])
    assert embryo_heat(18.0, 80, 28.0) == pytest.approx(ml * (80 / 60) ** 0.714 * 20 / 86.4)


def egg_by_loop(hours, air, age, tau, factor=1.0):
    """The lag and the embryo's heat step by step; after three (plain) time constants of silence it starts anew."""
    tau_now, lagged, warm, rows = tau * factor, 0.0, 0.0, []
    lost = 0.36 * 2410 / 86.4 / 115
    for i, now in enumerate(air):
        silent = i == 0 or hours[i] - hours[i - 1] > 3 * tau
        keep = 0.0 if silent or tau == 0 else math.exp(-(hours[i] - hours[i - 1]) / tau_now)
        before = lagged
        lagged = now if silent or tau == 0 else keep * lagged + (1 - keep) * (now + air[i - 1]) / 2
        made = embryo_heat(age[i], 60) / 115
        felt = (lagged if silent or tau == 0 else before) + made - lost
        warm = keep * warm + (1 - keep) * (made * 2 ** ((min(max(felt, 15.0), 41.5) - 37.5) / 10) - lost)
        rows.append((lagged, warm))
    return np.array(rows).T


def test_the_egg_is_found_again_by_a_plain_loop():
    rng = np.random.default_rng(2)
    hours = np.cumsum(np.r_[0.0, rng.uniform(0.05, 0.6, 40), 1.5, 1.7, rng.uniform(0.05, 0.6, 40)])
    air = 37.5 + 3 * np.sin(hours) + rng.normal(0, 0.5, len(hours))
    air[30:36], air[60:64] = 12.0, 46.0
    age = np.linspace(3, 19, len(hours))
    tau = 1.12 * 3.3 * 60 / 0.115 / 3600
    lagged, warm = egg_by_loop(hours, air, age, tau)
    wide = math.exp(1.2815516 * 0.2)
    others = [sum(egg_by_loop(hours, air, age, tau, factor)) for factor in (1 / wide, wide)]
    egg, k, lost = lagged + warm, math.exp(1.2815516 * 0.25), 0.36 * 2410 / 86.4 / 115
    probe = 1.2815516 * 0.3 * (1 + math.log(2) / 10 * (warm + lost))
    more, less = np.abs(warm) * (k - 1), np.abs(warm) * (1 - 1 / k)
    up = np.where(warm > 0, more, less) ** 2 + probe**2 + np.maximum(np.maximum(*others) - egg, 0) ** 2
    down = np.where(warm > 0, less, more) ** 2 + probe**2 + np.maximum(egg - np.minimum(*others), 0) ** 2
    want = [egg, egg - np.sqrt(down), egg + np.sqrt(up), lagged]
    found = egg_temperature.egg_temperature(hours, air, age_days=age, egg_mass_g=60.0)
    for name, column in zip(("egg_c", "low_c", "high_c", "lagged_air_c"), want, strict=True):
        assert found[name].to_numpy() == pytest.approx(column, abs=1e-6)
    hole = air.copy()
    hole[20] = np.nan
    found = egg_temperature.egg_temperature(hours, hole, age_days=age, egg_mass_g=60.0, sensor_sd_c=0.0)
    assert found.iloc[20].isna().all()
    kept = np.delete(np.arange(len(air)), 20)
    again = sum(egg_by_loop(hours[kept], air[kept], age[kept], tau))
    assert found["egg_c"].to_numpy()[kept] == pytest.approx(again, abs=1e-6)
    damped = egg_temperature.egg_temperature(hours, air, age_days=age, egg_mass_g=60.0, damped=True)
    assert damped["egg_c"].to_numpy() == pytest.approx(sum(egg_by_loop(hours, air, age, 0.0)), abs=1e-9)
    assert damped["lagged_air_c"].to_numpy() == pytest.approx(air)
    slow = egg_temperature.egg_temperature(hours, air, age_days=age, egg_mass_g=60.0, tau_h=1.0)
    assert slow["lagged_air_c"].to_numpy() == pytest.approx(egg_by_loop(hours, air, age, 1.0)[0], abs=1e-9)
    assert egg_temperature.unseen_share(0.5, 0.7) == pytest.approx(1 - math.exp(-5 / 7))
    with pytest.raises(Exception, match="order"):
        egg_temperature.egg_temperature([0.0, 1.0, 0.9], [37.5] * 3, age_days=3.0, egg_mass_g=60.0)
    stamps = pd.DatetimeIndex(["2025-03-01 10:00", "2025-03-01 10:30", "2025-03-01 10:30"])
    assert egg_temperature._hours(stamps).tolist() == [0.0, 0.5, 0.5]


def test_harm_of_heat_by_hand():
    """One hour at 43 is 1, a kelvin more 3, a kelvin less a quarter, nothing at 39 and below, held from 60 on."""
    found = dose.heat_per_hour([38.0, 39.0, 39.01, 42.0, 43.0, 44.0, 45.5, 60.0, 70.0])
    assert found == pytest.approx([0, 0, 0.25**3.99, 0.25, 1, 3, 3**2.5, 3**17, 3**17])
    half = float(dose.half_dose(10.0))
    table = reference.load("heat_doses")
    table = table[table["kind"] == "half"]
    lower = np.minimum(table["dose_weak_fan_h"], table["dose_strong_fan_h"])
    assert half == pytest.approx(np.interp(10.0, table["age_days"], lower))
    for share, band in (
        (0.0009, "none"),
        (0.0011, "low"),
        (0.2, "low"),
        (0.201, "watch"),
        (0.7, "watch"),
        (0.701, "high"),
    ):
        assert dose.heat_band([0.0, share * half, np.nan], [10.0, 10.0, 10.0]) == band
    assert dose.heat_band([], []) == "none"


def test_doses_of_a_stretch_by_hand():
    """Range 37 to 38, egg 37 to 39; five readings of half an hour, the fourth without a temperature."""
    columns = dict(
        age_days=np.arange(5) / 48, air_c=np.array([36.0, 38.0, 40.0, np.nan, 37.0]),
        rate=np.array([0.9, 1, 1.1, 1, 0.5]),
        egg_c=np.array([36.5, 38.0, 43.0, np.nan, 9.9]), egg_low_c=np.full(5, 1.0), egg_high_c=np.arange(5.0),
        low_c=np.full(5, 37.0), high_c=np.full(5, 38.0), egg_range_low_c=np.full(5, 37.0),
        egg_range_high_c=np.full(5, 39.0), hen_days=np.full(5, 10.0),
    )  # fmt: skip
    found = dose.dose_of(columns, np.array([0.5, 0.5, 0.5, 0.0, 0.5]))
    want = dict(hours_warm=0.5, hours_cold=0.5, degree_hours_warm=1.0, degree_hours_cold=0.5, egg_degree_hours_warm=2.0,
                egg_degree_hours_cold=0.25 + 13.55, egg_peak_c=43.0, egg_peak_low_c=1.0, egg_peak_high_c=2.0,
                egg_min_c=9.9, heat_dose_h=0.5, lost_hours=0.05 - 0.05 + 0.25, hours_egg_below_20=0.5,
                hours_egg_below_10=0.5)  # fmt: skip
    assert {name: found[name] for name in want} == pytest.approx(want)
    assert math.isnan(dose.dose_of(columns, np.zeros(5))["hours_warm"])


def test_development_by_its_q10():
    """1.85 per 10 K, held 2 K above the usual, fading from 30 to 25 degC."""
    found = rate(np.array([37.5, 36.5, 39.5, 41.0, 28.0, 30.0, 25.0, 20.0]), 37.5)
    assert found == pytest.approx([1, 1.85**-0.1, 1.85**0.2, 1.85**0.2, 1.85**-0.95 * 0.6, 1.85**-0.75, 0, 0])


def test_when_a_development_is_reached():
    """20 hours at 1.1 from hour 10 on, one of them not logged: 30 of development at hour 10 + 20/1.1 and so on."""
    hours, speaks = np.arange(10.0, 30), np.ones(20)
    pace = np.full(20, 1.1)
    assert clock.hours_until(21.0, hours, pace, speaks) == pytest.approx((20.0, 10.0))
    assert clock.hours_until(20.55, hours, pace, speaks) == pytest.approx((10 + 10.55 / 1.1, 10.0))
    assert clock.hours_until(9.0, hours, pace, speaks) == pytest.approx((9.0, 9.0))
    assert clock.hours_until(40.0, hours, pace, speaks) == pytest.approx((38.0, 18.0))
    speaks[4], pace[4] = 0.0, np.nan
    assert clock.hours_until(21.0, hours, pace, speaks) == pytest.approx((10 + 11.1 / 1.1, 11.0))
    assert clock.hours_until(5.0, np.empty(0), np.empty(0), np.empty(0)) == (5.0, 5.0)


def test_when_they_were_due_by_hand():
    """Hens: 21 x 24 - 4 h; each day of storage beside three moves it by the species' delay. 28 days: 4 x 28/21."""
    figures = dict(incubation_days=28.0, storage_delay_hours_per_day=0.9)
    assert clock.due_hours(figures, 10.0) == pytest.approx((28 * 24 - 16 / 3 + 6.3, 6.3))
    assert clock.due_hours(figures, 1.0)[1] == pytest.approx(-1.8) and clock.due_hours(figures, np.nan)[1] == 0
    first, last = pd.Timestamp("2025-03-22 06:00", tz="UTC"), pd.Timestamp("2025-03-23 06:00", tz="UTC")
    for one, two, middle in ((first, last, "2025-03-22 18:00"), (first, pd.NaT, "2025-03-22 22:00"),
                             (pd.NaT, last, "2025-03-22 14:00")):  # fmt: skip
        found = clock._middle(dict(first_hatch_at=one, last_hatch_at=two), figures)
        assert found == pd.Timestamp(middle, tz="UTC")
    assert clock._middle(dict(first_hatch_at=pd.NaT, last_hatch_at=pd.NaT), figures) is pd.NaT


def test_the_error_of_a_probe_by_hand():
    """100 h at a rate of 1.1 from hour 50 on, hatch seen at hour 130: 130 + 0.1 x 80 done where 120 were due."""
    track = pd.DataFrame(dict(age_days=np.arange(50, 150) / 24, hours=1.0, rate=1.1))
    assert clock.probe_error(track, 130.0, 120.0) == pytest.approx(10 * math.log(138 / 120) / math.log(1.85))
    table = pd.DataFrame(dict(difference_h=[31.0], species=["hen"]))
    species = SimpleNamespace(species_table=pd.DataFrame(dict(incubation_days=[21.0]), index=["hen"]))
    assert clock.bias_of(table, species).iloc[0] == pytest.approx(31 / (504 * math.log(1.85) / 10))
