"""Lines through weighings, the loss with its interval and verdict, and the humidity that is needed, by hand."""

import math

import numpy as np
import pandas as pd
import pytest

from hatchkit.climate import water_loss
from hatchkit.climate.air import saturation_pressure
from hatchkit.climate.weighings import egg_lines


def series_of(egg, days, grams, eggs):
    return pd.DataFrame(dict(egg=egg, name=egg, whole=False, day=np.array(days, float), grams=np.array(grams, float),
                             eggs_weighed=np.array(eggs, float), namesakes=False))  # fmt: skip


def test_a_line_through_weighings_is_numpys():
    days, grams = [0, 4, 9, 15], [60, 58.3, 55.9, 53.2]
    lines = egg_lines(pd.concat([series_of("a", days, grams, [1] * 4), series_of("b", [3], [50], [1])]))
    slope, start = np.polyfit(days, grams, 1)
    assert list(lines.index) == ["a"]
    assert lines.loc["a", ["slope_g_day", "set_g", "taken_off_g_day"]].tolist() == pytest.approx([-slope, start, 0])
    assert lines.loc["a", ["n", "first_day", "last_day", "eggs"]].tolist() == [4, 0, 15, 1]


def test_a_tray_with_fewer_eggs_each_time_by_hand():
    """Doubt of a stretch: eggs taken off (8 % of the weight), the scale (1 g over the eggs), 5 % of the loss."""
    days, grams, eggs = np.array([0.0, 7, 18]), np.array([60.0, 57, 53]), np.array([30.0, 30, 20])
    line = egg_lines(series_of("tray", days, grams, eggs)).loc["tray"]
    rough = -np.polyfit(days, grams, 1)[0]
    step, lost = np.diff(days), -np.diff(grams)
    doubt = [(0.08 * grams.mean()) ** 2 * abs(1 / b - 1 / a) + 1 / a**2 + 1 / b**2 + (0.05 * rough * s) ** 2
             for a, b, s in zip(eggs[:-1], eggs[1:], step, strict=True)]  # fmt: skip
    slope = sum(step * lost / doubt) / sum(step**2 / doubt)
    assert [line["slope_g_day"], line["set_g"]] == pytest.approx([slope, 60.0])
    assert line["taken_off_g_day"] == pytest.approx(1 / math.sqrt(sum(step**2 / doubt)))


LINES = pd.DataFrame(dict(slope_g_day=[0.36, 0.42, 0.33], set_g=[60.0, 62, 58], eggs=1.0, whole=False, first_day=0.0,
                          last_day=14.0, taken_off_g_day=0.0))  # fmt: skip
TARGET = dict(transfer_day=18.0, target_low=0.11, target_high=0.13)


def test_loss_and_its_interval_of_single_eggs_by_hand():
    """t with 2 degrees of freedom is 4.3027; beyond day 14 the line may bend by a tenth."""
    found = water_loss._loss(LINES, TARGET)
    share = np.array([0.006, 0.42 / 62, 0.33 / 58])
    half = math.hypot(4.3027 * share.std(ddof=1) / math.sqrt(3) * 18, 0.1 * share.mean() * 4)
    middle = share.mean() * 18
    assert found["projected_share"] == pytest.approx(middle) and found["loss_share"] == pytest.approx(share.mean() * 14)
    assert found["projected_low"] == pytest.approx(max(middle - half, 0), rel=1e-4)
    assert found["projected_high"] == pytest.approx(middle + half, rel=1e-4)
    assert (found["set_g"], found["last_day"]) == pytest.approx((60.0, 14.0))


def test_loss_of_a_tray_takes_its_spread_from_others():
    """A tray of 30: eggs differ by a quarter, the line bends by 5 % of all and by 10 % beyond, eggs were taken off."""
    tray = LINES.iloc[:1].assign(eggs=30.0, whole=True, taken_off_g_day=0.02)
    found = water_loss._loss(tray, TARGET)
    middle = 0.006 * 18
    parts = [1.96 * 0.25 * middle / math.sqrt(30), 1.96 * 0.02 / 60 * 18, 0.1 * 0.006 * 4 + 0.05 * middle]
    half = math.sqrt(sum(part**2 for part in parts))
    assert [found["projected_low"], found["projected_high"]] == pytest.approx([middle - half, middle + half])
    mixed = pd.concat([tray, tray.assign(eggs=10.0, set_g=50.0)])
    assert water_loss._loss(mixed, TARGET)["projected_share"] == pytest.approx((30 * 0.006 + 10 * 0.0072) / 40 * 18)


@pytest.mark.parametrize(("slope", "eggs", "target", "verdict"), [
    (0.40, 400, (0.115, 0.125), "on target"), (0.30, 400, (0.115, 0.125), "too little"),
    (0.50, 400, (0.115, 0.125), "too much"), (0.375, 400, (0.115, 0.125), "cannot tell"),
    (0.40, 1, (0.115, 0.125), "cannot tell"), (0.40, 2, (0.115, 0.125), "cannot tell"),
    (0.40, 2, (0.05, 0.2), "on target"),
])  # fmt: skip
def test_the_verdict_on_a_loss(slope, eggs, target, verdict):
    lines = LINES.iloc[:1].assign(slope_g_day=slope, eggs=float(eggs), whole=True, last_day=18.0)
    found = water_loss._loss(lines, TARGET | dict(target_low=target[0], target_high=target[1]))
    assert found["verdict"] == verdict


def test_an_interval_up_to_twice_the_target_is_told():
    """300 eggs at 12 %: half 1.96 x 0.25 x 12 % / 17.3 and 0.6 % of bend: 0.69 % either way."""
    lines = LINES.iloc[:1].assign(slope_g_day=0.4, eggs=300.0, whole=True, last_day=18.0)
    half = math.hypot(1.96 * 0.25 * 0.12 / math.sqrt(300), 0.006)
    for factor, verdict in ((1.01, "on target"), (0.99, "cannot tell")):
        target = dict(target_low=0.12 - factor * half / 2, target_high=0.12 + factor * half / 2)
        assert water_loss._loss(lines, TARGET | target)["verdict"] == verdict


def test_humidity_for_the_rest_by_hand():
    """10.5 % lost by day 14 of 18, target 12 %: 1.5 % are left for the rest; next time 12 % in 18 days."""
    track = pd.DataFrame(
        dict(age_days=[1.0, 5.0, 20.0], rh_pct=[50.0, 50, 90], egg_c=37.5, air_c=37.5, hours=[1.0, 3, 9])
    )
    out = TARGET | dict(
        first_day=0.0, last_day=14.0, day_share=0.0075, loss_share=0.105, set_g=60.0, verdict="too much"
    )
    found = water_loss._humidity(out, track)
    full = saturation_pressure(37.5) / 0.1333224
    assert found["torr"] == pytest.approx(full / 2) and found["rh_pct"] == pytest.approx(50)
    specific = 7.5 / (full / 2)
    assert found["conductance"] == pytest.approx(specific * 60)
    assert found["rh_now_pct"] == pytest.approx(100 * (1 - 1000 * (0.12 - 0.105) / (specific * 4) / full))
    assert found["rh_next_pct"] == pytest.approx(100 * (1 - 1000 * 0.12 / (specific * 18) / full))
    assert "rh_now_pct" not in water_loss._humidity(out | dict(verdict="on target"), track)
    for last, told in ((17.0, True), (17.01, False)):
        assert np.isfinite(water_loss._humidity(out | dict(last_day=last), track)["rh_now_pct"]) == told
    for rh, told in ((100 - 100 * 5.0 / full - 1e-6, True), (100 - 100 * 5.0 / full + 1e-6, False)):
        assert ("conductance" in water_loss._humidity(out, track.assign(rh_pct=rh))) == told


def test_loss_expected_without_weighings_by_hand():
    """Ar & Rahn: 0.384 W^0.814 mg per day and torr, good to a factor of two; tares come off the share lost."""
    middle = 0.384 * 60**0.814 * 20 * 18 / 1000 / 60
    assert water_loss.prior_loss(60.0, torr=20.0, days=18.0) == pytest.approx((middle, middle / 2, 2 * middle))
    assert water_loss.lost_share(1060, 1000, 60) == pytest.approx(0.06)
    vapour = water_loss.vapour_difference(38.0, 37.5, 55)
    assert vapour == pytest.approx((saturation_pressure(38.0) - 0.55 * saturation_pressure(37.5)) / 0.1333224)
    specific = 0.12 * 1000 / 18 / vapour
    assert water_loss.rh_needed(0.12, days=18, specific_g=specific, egg_c=38.0) == pytest.approx(55)
    high = water_loss.rh_needed(0.12, days=18, specific_g=specific, egg_c=38.0, pressure_kpa=80.0)
    torr = 0.12 * 1000 / 18 / (specific * 101.325 / 80)
    assert high == pytest.approx(100 * (saturation_pressure(38.0) - torr * 0.1333224) / saturation_pressure(37.5))
