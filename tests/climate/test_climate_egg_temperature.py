"""The estimated egg: same as a plain loop, honest band, restarts, and what must not be filtered twice."""

import numpy as np
import pandas as pd
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from hatchkit.climate import egg_heat
from hatchkit.climate.egg_temperature import RESTART_TAUS, egg_temperature
from hatchkit.problems import HatchkitError


def plain_loop(hours, air_c, age_days, grams, air, tau=None, conductance_factor=1.0, bias=0.0, restart=None):
    """The same model, one reading after the other."""
    k = egg_heat.conductance(grams, air) * conductance_factor
    tau = egg_heat.time_constant(grams, air) if tau is None else tau
    restart = RESTART_TAUS * egg_heat.time_constant(grams, air) if restart is None else restart
    heat, loss = egg_heat.embryo_heat(age_days, grams), egg_heat.evaporation_heat(grams)
    usual = (heat - loss) / egg_heat.conductance(grams, air)
    air_c = np.asarray(air_c) - bias
    egg, lagged, warming = np.empty(len(air_c)), 0.0, 0.0

    def offset(i, lagged_c):
        felt = min(max(lagged_c + usual[i], 15.0), 41.5)
        return (heat[i] * 2 ** ((felt - 37.5) / 10) - loss) / k

    for i in range(len(air_c)):
        step = hours[i] - hours[i - 1] if i else np.inf
        if step > restart:
            lagged, warming = air_c[i], offset(i, air_c[i])
        else:
            keep = np.exp(-step / tau)
            new = offset(i, lagged)
            lagged = keep * lagged + (1 - keep) * (air_c[i] + air_c[i - 1]) / 2
            warming = keep * warming + (1 - keep) * new
        egg[i] = lagged + warming
    return egg


def _log(seed, count=3000):
    rng = np.random.default_rng(seed)
    steps = rng.choice([1, 5, 5, 5, 30, 240], count) / 60 * rng.uniform(0.7, 1.3, count)
    hours = np.cumsum(steps)
    air = 37.5 + rng.normal(0, 0.3, count) + 5 * np.sin(hours / 7) * (rng.random(count) < 0.3)
    return hours, air, hours / hours[-1] * 20


@given(st.integers(0, 10_000), st.sampled_from(["still", "fan", "strong fan"]), st.floats(8, 150))
@settings(max_examples=12, deadline=None)
def test_the_filter_equals_a_plain_loop_on_any_steps(seed, air_kind, grams):
    hours, air, age = _log(seed, 400)
    egg = egg_temperature(hours, air, age_days=age, egg_mass_g=grams, air=air_kind)
    expected = plain_loop(hours, air, age, grams, air_kind)
    assert np.abs(egg["egg_c"].to_numpy() - expected).max() < 1e-9


def test_times_as_datetimes_give_the_same_as_hours():
    hours, air, age = _log(3)
    stamps = pd.Timestamp("2025-03-01", tz="UTC") + pd.to_timedelta(hours, unit="h")
    by_hours = egg_temperature(hours, air, age_days=age, egg_mass_g=60)
    by_times = egg_temperature(stamps, air, age_days=age, egg_mass_g=60)
    assert np.abs(by_hours - by_times).max().max() < 1e-6


def test_the_band_is_that_of_random_draws():
    """Quadrature of the three doubts against 600 draws, on a spike, an outage and plain days."""
    rng = np.random.default_rng(5)
    hours = np.arange(0, 60, 0.1)
    air = np.where((hours > 20) & (hours < 22), 42.0, np.where((hours > 40) & (hours < 44), 25.0, 37.5))
    age = 14 + hours / 24
    egg = egg_temperature(hours, air, age_days=age, egg_mass_g=60, air="still")
    tau = egg_heat.time_constant(60, "still")
    draws = np.stack(
        [
            plain_loop(
                hours,
                air,
                age,
                60,
                "still",
                tau=tau * np.exp(rng.normal(0, 0.2)),
                conductance_factor=np.exp(rng.normal(0, 0.25)),
                bias=rng.normal(0, 0.3),
            )
            for _ in range(600)
        ]
    )
    low, high = np.quantile(draws, [0.1, 0.9], axis=0)
    assert np.abs(egg["low_c"] - low).mean() < 0.06
    assert np.abs(egg["high_c"] - high).mean() < 0.06
    # On the steep flanks of the outage a draw's quantile itself moves by tenths of a degree.
    assert np.abs(egg["low_c"] - low).max() < 0.45
    assert np.abs(egg["high_c"] - high).max() < 0.45


def test_the_band_holds_the_estimate():
    hours, air, age = _log(11)
    egg = egg_temperature(hours, air, age_days=age, egg_mass_g=12)
    assert (egg["low_c"] < egg["egg_c"]).all() and (egg["egg_c"] < egg["high_c"]).all()


def test_after_a_long_silence_the_egg_starts_anew():
    hours = np.array([0.0, 0.1, 0.2, 10.0, 10.1])
    egg = egg_temperature(hours, np.array([37.5, 37.5, 37.5, 20.0, 20.0]), age_days=1.0, egg_mass_g=60)
    # Not the slow way down from 37.5: nobody knows what happened in those ten hours.
    assert egg["egg_c"].iloc[3] == pytest.approx(20.0, abs=0.2)


def test_a_short_silence_does_not():
    egg = egg_temperature(np.array([0.0, 0.1, 1.1]), np.array([37.5, 37.5, 20.0]), age_days=1.0, egg_mass_g=60)
    assert 25 < egg["egg_c"].iloc[2] < 33


def test_a_damped_probe_is_not_filtered_again():
    hours, air, _ = _log(2)
    egg = egg_temperature(hours, air, age_days=2.0, egg_mass_g=60, damped=True)
    assert np.abs(egg["lagged_air_c"] - air).max() == 0
    assert np.abs(egg["egg_c"] - air).max() < 0.2


def test_missing_air_is_missing_egg_and_nothing_else():
    hours, air, age = _log(4, 200)
    holes = air.copy()
    holes[50:53] = np.nan
    egg = egg_temperature(hours, holes, age_days=age, egg_mass_g=60)
    assert egg["egg_c"].isna().sum() == 3 and egg["egg_c"].isna().to_numpy()[50:53].all()
    kept = np.isfinite(holes)
    bare = egg_temperature(hours[kept], air[kept], age_days=age[kept], egg_mass_g=60)
    assert np.array_equal(egg["egg_c"].to_numpy()[kept], bare["egg_c"].to_numpy())


def test_no_readings_no_egg():
    assert egg_temperature(np.empty(0), np.empty(0), age_days=np.empty(0), egg_mass_g=60).empty
    nothing = egg_temperature([0.0, 1.0], [np.nan, np.nan], age_days=1.0, egg_mass_g=60)
    assert nothing.isna().all().all()


def test_readings_out_of_order_are_refused_in_plain_words():
    with pytest.raises(HatchkitError, match="order of time"):
        egg_temperature(np.array([0.0, 2.0, 1.0]), np.full(3, 37.5), age_days=1.0, egg_mass_g=60)


def test_the_embryos_heat_does_not_run_away_in_hot_air():
    hours = np.arange(0, 24, 0.1)
    egg = egg_temperature(hours, np.full(len(hours), 48.0), age_days=18.0, egg_mass_g=60, air="still")
    assert egg["egg_c"].iloc[-1] < 48 + 2.3


def test_a_small_egg_follows_the_air_faster():
    hours = np.arange(0, 2, 0.05)
    air = np.where(hours < 1, 37.5, 25.0)
    quail, hen = (egg_temperature(hours, air, age_days=1.0, egg_mass_g=g)["egg_c"].iloc[30] for g in (12, 60))
    assert quail < hen - 2


def test_unknown_air_is_named():
    with pytest.raises(HatchkitError, match="gale"):
        egg_heat.conductance(60, "gale")
