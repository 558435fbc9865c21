"""Water loss of a batch: fitted on its own weighings, like with like, honest when it cannot tell."""

import numpy as np
import pandas as pd
import pytest
from climate_seasons import hour, level, readings, season
from hypothesis import given
from hypothesis import strategies as st

from hatchkit.climate.water_loss import (
    batch_water_loss,
    fit_conductance,
    loss_points,
    loss_share,
    rh_needed,
    vapour_difference,
)


def weighed(shares, days=(0, 7, 14), *, grams=60.0, batch="1"):
    """Weighings of eggs that lose the given share of their weight a day."""
    return [{"batch": batch, "egg": str(number), "weighed_at": hour(24 * day), "grams": grams * (1 - share * day),
             "eggs_weighed": 1} for number, share in enumerate(shares, start=1) for day in days]


def row(weights, **more):
    return batch_water_loss(season(weights=weights, **more)).iloc[0]


EVEN = np.linspace(0.0062, 0.0070, 10)


def test_loss_so_far_and_at_transfer():
    got = row(weighed(EVEN))
    assert got["loss_share"] == pytest.approx(0.0066 * 14, rel=1e-6) and got["loss_day"] == 14
    assert got["projected_share"] == pytest.approx(0.0066 * 18, rel=1e-6)
    assert got["projected_low"] < got["projected_share"] < got["projected_high"]
    assert got["verdict"] == "on target"


@pytest.mark.parametrize(("daily", "verdict"), [
    (0.0040, "too little"), (0.0066, "on target"), (0.0090, "too much")])
def test_verdicts(daily, verdict):
    got = row(weighed(np.full(8, daily) + np.linspace(-1e-4, 1e-4, 8)))
    assert got["verdict"] == verdict


def test_just_outside_the_target_cannot_be_told():
    got = row(weighed(np.linspace(0.0050, 0.0070, 5)))
    assert got["projected_share"] < got["target_low"] < got["projected_high"]
    assert got["verdict"] == "cannot tell" and "interval" in got["reason"]


def test_the_humidity_advised_gives_the_target_by_the_same_law():
    got = row(weighed(np.full(6, 0.0080)))
    specific = got["conductance"] / got["set_g"]
    loss = loss_share(specific, egg_c=37.5, air_c=37.5, rh_pct=got["rh_next_pct"], days=18)
    assert loss == pytest.approx(0.12, abs=0.004)
    assert got["rh_next_pct"] > got["rh_pct"]
    rest = loss_share(specific, egg_c=37.7, air_c=37.5, rh_pct=got["rh_now_pct"], days=4)
    assert got["loss_share"] + rest == pytest.approx(0.12, abs=0.006)


def test_conductance_is_recovered_from_eggs_that_follow_the_law():
    torr = vapour_difference(37.5, 37.5, 55.0)
    got = row(weighed(np.full(6, 0.30 * torr / 1000)))
    assert got["conductance"] / got["set_g"] == pytest.approx(0.30, rel=0.02)


def test_infertile_early_dead_and_removed_eggs_are_left_out():
    shares = np.append(np.full(6, 0.0066), [0.0090, 0.0090, 0.0090])
    fates = pd.DataFrame({"batch": "1", "egg": [str(n) for n in range(1, 10)], "eggs": 1,
                          "fate": ["hatched"] * 6 + ["infertile", "dead", "removed"],
                          "by_day": [21.0] * 6 + [7.0] * 3})
    got = row(weighed(shares), fates=fates)
    assert got["series"] == 6 and got["left_out"] == 3
    assert got["projected_share"] == pytest.approx(0.0066 * 18, rel=1e-6)
    assert "infertile" in got["why_left_out"]


def test_late_dead_eggs_count_because_they_lived_until_transfer():
    fates = pd.DataFrame({"batch": "1", "egg": ["1"], "eggs": 1, "fate": ["dead"], "by_day": [20.5]})
    assert row(weighed(EVEN), fates=fates)["left_out"] == 0


def test_a_cracked_egg_is_left_out_and_said_so():
    got = row(weighed(np.append(EVEN, 0.02)))
    assert got["left_out"] == 1 and "cracked" in got["why_left_out"]
    assert got["projected_share"] == pytest.approx(0.0066 * 18, rel=1e-6)


def test_a_tray_is_taken_per_egg_when_eggs_are_removed():
    tray = [{"batch": "1", "egg": np.nan, "weighed_at": hour(24 * day), "grams": count * 60 * (1 - 0.0066 * day),
             "eggs_weighed": count} for day, count in ((0, 30), (7, 27), (14, 26))]
    got = row(tray)
    assert got["weighed"] == "tray" and got["projected_share"] == pytest.approx(0.0066 * 18, rel=1e-6)
    assert "taken off" in got["reason"]


def test_a_tray_left_on_the_scale_is_noticed():
    tray = [{"batch": "1", "egg": "", "weighed_at": hour(24 * day), "grams": 1500 + 30 * 60 * (1 - 0.0066 * day),
             "eggs_weighed": 30} for day in (0, 10)]
    assert "tray left on the scale" in row(tray)["reason"]


def test_weights_of_the_egg_sheet_count_as_day_0():
    eggs = pd.DataFrame({"batch": "1", "egg": [str(n) for n in range(1, 11)], "weight_g": 60.0})
    got = row(weighed(EVEN, days=(9,)), eggs=eggs)
    assert got["series"] == 10 and got["first_day"] == 0 and got["last_day"] == 9


def test_weighings_after_transfer_are_not_used():
    """A pipped egg loses much faster; the last weighing is on day 20."""
    late = weighed(EVEN) + [{"batch": "1", "egg": str(n), "weighed_at": hour(480), "grams": 40.0, "eggs_weighed": 1}
                            for n in range(1, 11)]
    assert row(late)["projected_share"] == pytest.approx(0.0066 * 18, rel=1e-6)


def test_one_weighing_or_two_days_are_refused():
    assert row(weighed(EVEN, days=(0, 2)))["verdict"] == "no weighings"
    assert row(weighed(EVEN, days=(5,)))["verdict"] == "no weighings"
    assert fit_conductance([0, 2], [60, 59], 24.0)["reason"]
    assert np.isnan(fit_conductance([0, 9], [60, 57], 3.0)["conductance"])


def test_without_humidity_in_the_log_loss_is_told_and_conductance_not():
    rows = readings().assign(rh_pct=np.nan)
    got = row(weighed(EVEN), rows=rows)
    assert got["verdict"] == "on target" and np.isnan(got["conductance"]) and np.isnan(got["rh_next_pct"])


def test_without_weighings_the_size_of_the_egg_gives_an_indication():
    got = row([])
    assert got["verdict"] == "no weighings" and got["weighed"] == "no"
    assert got["projected_high"] / got["projected_low"] == pytest.approx(4)
    assert "factor of two" in got["reason"]


def test_altitude_counts_for_brought_in_eggs_only():
    high = {"altitude_m": 2000}
    here = row([], settings={"incubators": {"A": high}})
    brought = row([], settings={"incubators": {"A": high | {"eggs_brought_in": True}}})
    assert here["projected_share"] == pytest.approx(row([])["projected_share"])
    assert brought["projected_share"] / here["projected_share"] == pytest.approx(1.275, abs=0.005)


def test_points_for_the_picture_say_which_eggs_count():
    made = season(weights=weighed(np.append(EVEN, 0.02)))
    points = loss_points(made, "1")
    assert len(points) == 33 and set(points.loc[~points["used"], "egg"]) == {"11"}
    assert points.loc[points["day"] == 0, "lost_share"].abs().max() < 1e-9


def test_a_season_without_weights_or_log_gives_a_row_for_each_batch():
    made = season(readings(level(37.5), incubator="Z"), [{}, {"batch": "2", "species": "dodo"}])
    table = batch_water_loss(made)
    assert list(table["verdict"]) == ["no weighings", "cannot tell"]


@given(st.floats(0.1, 0.5), st.floats(20, 85), st.floats(36, 39), st.floats(5, 40), st.floats(60, 102))
def test_needed_humidity_turns_loss_round(specific, rh, temp, days, pressure):
    loss = loss_share(specific, egg_c=temp + 0.5, air_c=temp, rh_pct=rh, days=days, pressure_kpa=pressure)
    back = rh_needed(loss, days=days, specific_g=specific, egg_c=temp + 0.5, air_c=temp, pressure_kpa=pressure)
    assert back == pytest.approx(rh, abs=1e-6)
