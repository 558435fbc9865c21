"""Ages at death: bounds, risks and bands of three stretches by hand, the smoothed shape by a plain loop."""

import math

import numpy as np
import pandas as pd
import pytest

from hatchkit.losses import death_age, stages, tray
from hatchkit.losses.clears import true_infertile
from hatchkit.losses.death_shape import smooth_shape
from hatchkit.losses.proportions import interval, widened
from hatchkit.losses.two_phase_shape import cumulative

INF = np.inf
#: Two of ten eggs die by day 7, three between day 7 and 14, five live.
AGES, MASS = np.array([[0.0, 7], [7, 14], [14, INF]]), np.array([[0.2, 0.3, 0.5]])
DAYS = np.array([0.0, 7, 10, 14])


def test_least_and_most_that_are_lost_by_each_day():
    least, most = death_age._bounds(np.array([0.0, 6.9, 7, 7.1, 14, 21]), AGES, MASS)
    assert least[0] == pytest.approx([0, 0, 0.2, 0.2, 0.5, 0.5])
    assert most[0] == pytest.approx([0, 0.2, 0.2, 0.5, 0.5, 0.5])


def test_the_risk_of_a_stretch_lies_between_all_deaths_before_and_all_after():
    """Days 7 to 10: none of 80 % alive, or 3 of 8; days 10 to 14: none of the 50 % that lived, or 3 of 8."""
    (low, alive_low), (high, alive_high) = death_age._risk(DAYS, AGES, MASS)
    assert low[0] == pytest.approx([0.2, 0, 0]) and high[0] == pytest.approx([0.2, 0.375, 0.375])
    assert alive_low[0] == pytest.approx([1, 0.8, 0.5]) and alive_high[0] == pytest.approx([1, 0.8, 0.8])


def test_daily_risk_is_what_a_stretch_of_days_compounds_from():
    found = death_age._hazard(DAYS, AGES, MASS, MASS, np.array([10.0, 10, 8, 5]), 1, 0.95)
    assert 1 - (1 - found["daily_low"]) ** [7, 3, 4] == pytest.approx([0.2, 0, 0], abs=1e-12)
    assert 1 - (1 - found["daily_high"]) ** [7, 3, 4] == pytest.approx([0.2, 0.375, 0.375])
    # One batch whose draws all agree: Wilson's interval of the eggs alive at the start of the stretch.
    eggs_low, eggs_high = np.array([10, 8, 4.0]), np.array([10, 8, 6.4])
    assert 1 - (1 - found["band_low"]) ** [7, 3, 4] == pytest.approx(interval(eggs_low * [0.2, 0, 0], eggs_low)[0])
    assert 1 - (1 - found["band_high"]) ** [7, 3, 4] == pytest.approx(
        interval(eggs_high * [0.2, 0.375, 0.375], eggs_high)[1]
    )
    assert (found["after_day"].tolist(), found["by_day"].tolist()) == ([0, 7, 10], [7, 10, 14])
    assert death_age._hazard(DAYS[:1], AGES, MASS, MASS, np.array([10.0]), 1, 0.95)["after_day"] == []
    one = death_age._hazard(DAYS[[0, 3]], AGES, MASS, MASS, np.array([10.0, 5.0]), 1, 0.95)
    assert 1 - (1 - one["daily_low"]) ** 14 == pytest.approx([0.5]) and one["by_day"].tolist() == [14]


def test_nothing_is_known_of_the_risk_where_none_is_alive():
    ages, mass = np.array([[0.0, 7], [7, 14]]), np.array([[1.0, 0.0]])
    found = death_age._hazard(np.array([0.0, 7, 14]), ages, mass, mass, np.full(3, 10.0), 1, 0.95)
    assert (found["band_low"][1], found["band_high"][1]) == (0, 1)


def test_the_band_of_several_batches_by_hand():
    """Draws 0.1, 0.2, 0.3 of 100 eggs: variance 1/150 over 0.16/100, for two batches twice that: phi 8.33."""
    drawn = np.array([[0.1], [0.2], [0.3]])
    low, high = death_age._band(np.array([0.2]), drawn, np.array([100.0]), 2, 0.95)
    phi = (0.02 / 3) / (0.2 * 0.8 / 100) * 2
    ends = widened(20.0, 100.0, phi, 2)
    assert (low[0], high[0]) == pytest.approx(ends) and ends[0] < 0.105 < 0.295 < ends[1]
    low, high = death_age._band(np.array([0.2]), drawn, np.array([100.0]), 1, 0.95)
    plain = interval(20, 100)
    assert (low[0], high[0]) == pytest.approx((min(0.105, plain[0]), max(0.295, plain[1])))
    # Draws that agree: phi 0 is taken as 1, with the t of the batches.
    low, high = death_age._band(np.array([0.2]), np.full((3, 1), 0.2), np.array([100.0]), 6, 0.95)
    assert (low[0], high[0]) == pytest.approx(widened(20.0, 100.0, 1.0, 6))
    low, high = death_age._band(np.array([0.2]), drawn, np.array([1e6]), 1, 0.5)
    assert (low[0], high[0]) == pytest.approx((0.15, 0.25))


def test_a_share_that_never_falls_is_bounded_by_its_neighbours():
    share, eggs = np.array([0.2, 0.2, 0.2]), np.full(3, 100.0)
    drawn = np.array([[0.1, 0.2, 0.0], [0.3, 0.2, 0.4]])
    low, high = death_age._band(share, drawn, eggs, 3, 0.95, grows=True)
    alone = [widened(20.0, 100.0, drawn[:, at].var() / 0.0016 * 1.5, 3) for at in range(3)]
    assert low[0] == pytest.approx(alone[0][0]) and low[1] == pytest.approx(alone[1][0])
    assert high[2] == pytest.approx(alone[2][1]) and high[1] == pytest.approx(min(alone[1][1], alone[2][1]))
    assert high[0] == pytest.approx(max(min(end for _, end in alone), 0.295))


def test_chicks_outlast_every_look_and_batches_are_drawn_whole():
    part = pd.DataFrame({
        "batch": ["a", "a", "b", "b"], "fate": ["dead", "hatched", "dead", "culled"], "eggs": [2.0, 8, 3, 7],
        "after_day": [0.0, 20, 7, 22], "by_day": [7.0, INF, 14, INF],
    })  # fmt: skip
    after, by, names, weight = death_age._by_batch(part)
    assert list(zip(after, by, strict=True)) == [(0, 7), (7, 14), (22, INF)]
    assert names.tolist() == ["a", "b"] and weight.tolist() == [[2, 0, 8], [0, 3, 7]]
    drawn = death_age._draw(weight, 4000, np.random.default_rng(1))
    assert set(map(tuple, drawn)) == {(4, 0, 16), (2, 3, 15), (0, 6, 14)}
    assert (drawn[:, 1] == 3).mean() == pytest.approx(0.5, abs=0.04)
    single = death_age._draw(weight[:1], 4000, np.random.default_rng(1))
    assert (single.sum(axis=1) == 10).all() and single[:, 0].mean() == pytest.approx(2, abs=0.1)
    assert single[:, 0].var() == pytest.approx(1.6, rel=0.1)


def shape_by_loops(intervals, length, smooth=1.0):
    """Deaths shared by the shape so far, the ratio to the published shape smoothed by a normal kernel, repeated."""
    scale = length / 21
    ends = [end for one in intervals for end in one[:2]]
    edges = sorted({0.0, *ends, *np.arange(0.0, max(one[1] for one in intervals), 0.25 * scale)})
    cells = list(zip(edges[:-1], edges[1:], strict=True))
    base = [cumulative(b, length) - cumulative(a, length) + 1e-6 * (b - a) for a, b in cells]
    kernel = [[math.exp(-0.5 * ((a + b - c - d) / 2 / (smooth * scale)) ** 2) for c, d in cells] for a, b in cells]
    usual = np.array(kernel) @ base
    shape, before = np.array(base) / sum(base), None
    for _ in range(200):
        shared = np.zeros(len(cells))
        for after, by, eggs in intervals:
            inside = np.array([after <= a and b <= by for a, b in cells])
            shared += eggs * shape * inside / shape[inside].sum()
        if before is not None and abs(shared - before).sum() < 1e-4 * sum(one[2] for one in intervals):
            break
        before = shared
        shape = base * (np.array(kernel) @ shared) / usual
        shape /= shape.sum()
    total = np.concatenate([[0], np.cumsum(shared)]) / shared.sum()
    return lambda age: np.interp(age, edges, total)


@pytest.mark.parametrize(("length", "smooth"), [(21.0, 1.0), (28.0, 0.5)])
def test_the_smoothed_shape_is_found_again_by_a_plain_loop(length, smooth):
    intervals = [(0.0, 6.9, 4.0), (0.0, 7.1, 2.0), (6.9, 14.2, 3.0), (14.2, 21.0, 9.0)]
    columns = [np.array(column) for column in zip(*intervals, (3.0, INF, 5.0), (2.0, 5.0, 0.0), strict=True)]
    found = smooth_shape(*columns, length, smooth_days=smooth)
    want = shape_by_loops(intervals, length, smooth)
    ages = np.array([0.0, 1, 3.3, 6.9, 7.05, 10, 14.2, 17, 19.9, 21, 30])
    assert [found(age) for age in ages] == pytest.approx(want(ages), abs=1e-9)
    if smooth == 1.0:
        assert smooth_shape(*columns, length)(10.0) == pytest.approx(found(10.0))
    assert smooth_shape([], [], [], length)(9.0) == pytest.approx(cumulative(9.0, length))


def test_the_published_course_of_deaths():
    """Kuurman et al. 2001: 77 % in a first phase of 2.6 days in the mean (sd 3.3), 23 % about day 17.4 (sd 2.0)."""
    day = np.linspace(0, 60, 60_001)
    both = cumulative(day)
    parts = [np.diff(cumulative(day, 21.0, (share, 0.795, 2.284, 10.49, 18.25))) for share in (1.0, 0.0)]
    middle = (day[1:] + day[:-1]) / 2
    for part, mean, sd in zip(parts, (2.6, 17.4), (3.3, 2.0), strict=True):
        assert part @ middle == pytest.approx(mean, abs=0.05)
        assert math.sqrt(part @ middle**2 - (part @ middle) ** 2) == pytest.approx(sd, abs=0.05)
    assert np.diff(both) == pytest.approx(0.77 * parts[0] + 0.23 * parts[1])
    assert cumulative(14.0, 42.0) == pytest.approx(cumulative(7.0)) and cumulative(-1.0) == 0


def test_a_death_between_stages_is_shared_by_the_shape_or_by_length():
    three = [("early", 0.0, 7.0), ("mid", 7.0, 14.0), ("late", 14.0, INF)]
    assert stages.share_between(5, 15, three, lambda age: age**2) == pytest.approx([24 / 200, 147 / 200, 29 / 200])
    assert stages.share_between(5, 15, three, lambda age: 0.0) == pytest.approx([0.2, 0.7, 0.1])
    assert stages.pip_day(21.0) == 19.5 and stages.pip_day(28.0) == 26.0


def test_opened_clears_by_beta_draws():
    """20 clears of 100, 10 of them opened, 4 dead: 0.2 x 0.6."""
    found = true_infertile(100, 20, 10, 4, draws=200_000)
    assert found.share == pytest.approx(0.12)
    random = np.random.default_rng(5)
    made = random.beta(20.5, 80.5, 400_000) * random.beta(6.5, 4.5, 400_000)
    assert (found.low, found.high) == pytest.approx(np.quantile(made, [0.025, 0.975]), abs=6e-4)
    narrow = true_infertile(100, 20, 10, 4, level=0.8)
    assert (narrow.low, narrow.high) == pytest.approx(np.quantile(made, [0.1, 0.9]), abs=2e-3)
    whole = true_infertile(100, 20, 20, 5, level=0.8)
    assert (whole.low, whole.high) == pytest.approx(interval(15, 100, level=0.8))
    for wrong in ((100, 20, 0, 0), (100, 20, 21, 0), (19, 20, 10, 4), (100, 20, 10, -1), (100, 20, 10, 11)):
        with pytest.raises(Exception, match="clears"):
            true_infertile(*wrong)
    assert true_infertile(20, 20, 20, 20).share == 0 and true_infertile(20, 20, 1, 0).share == 1


def test_touching_eggs_and_the_edge_of_a_tray():
    """A row of three and one below its middle, one two places off: five pairs touch, only the middle is inside."""
    row, col = np.array([0, 0, 0, 1, 3]), np.array([0, 1, 2, 1, 1])
    assert tray.neighbours(row, col).tolist() == [[0, 1], [0, 3], [1, 2], [1, 3], [2, 3]]
    assert tray.joins(np.array([True, True, False, True, True]), tray.neighbours(row, col)) == 3
    assert tray.at_edge([0, 1, 1, 1, 2], [1, 0, 1, 2, 1]).tolist() == [True, True, False, True, True]


def test_chances_of_a_pattern_by_hand():
    """Draws: joins 0, 1, 1, 2 about 1 (sd 0.707); edge 1, 1, 3, 3 about 2 (sd 1). Seen: 2 joins, 1 at the edge."""
    drawn = np.array([[0.0, 1], [1, 1], [1, 3], [2, 3]])
    joined, edge, both = tray._answers(np.array([2.0, 1.0]), drawn, 4)
    assert (joined["seen"], joined["expected"], joined["chance"]) == pytest.approx((2, 1, 2 / 5))
    assert (edge["seen"], edge["expected"], edge["chance"]) == pytest.approx((0.25, 0.5, 1))
    assert both["chance"] == pytest.approx(2 / 5) and joined["smallest"] == pytest.approx(2 / 5)
    beyond = tray._answers(np.array([3.0, 2.0]), drawn, 4)
    assert [row["chance"] for row in beyond] == pytest.approx([1 / 5, 1, 1 / 5])
    assert [row["smallest"] for row in beyond] == pytest.approx([1 / 5, 1, 1 / 5])
    flat = tray._answers(np.array([1.0, 2.0]), np.tile([1.0, 2.0], (4, 1)), 4)
    assert [row["chance"] for row in flat] == [1, 1, 1]
