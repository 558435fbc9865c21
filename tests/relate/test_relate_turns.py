"""The log turned against the batches: for machines whose batches overlap."""

import numpy as np
import pandas as pd
import pytest

from hatchkit.findings import more_relate
from hatchkit.relate.hazard import relate_counts
from hatchkit.relate.measures import PARTS, known_dose, score, together
from hatchkit.relate.turns import batches_overlap, log_rates, turned_doses

START = pd.Timestamp("2024-03-01", tz="UTC")


def log(hours, hot):
    """A machine's log: half a degree too warm in the hours `hot`."""
    heat = np.zeros(hours)
    heat[hot] = 0.5
    return pd.DataFrame({PARTS[0]: heat, PARTS[1]: 0.0}, index=pd.date_range(START, periods=hours, freq="h"))


def spans(days):
    return pd.DataFrame(
        {
            "batch": [f"b{i}" for i in range(len(days))],
            "incubator": "A",
            "start": [START + pd.Timedelta(days=a) for a, _ in days],
            "end": [START + pd.Timedelta(days=b) for _, b in days],
        }
    )


def test_the_unturned_dose_is_the_windows_own():
    found = turned_doses(spans([(0, 7), (7, 14), (20, 27)]), {"A": log(30 * 24, slice(24, 72))})
    assert found.shape == (30, 3)
    assert found[0].tolist() == pytest.approx([float(np.log2(1 + 24 / 10)), 0.0, 0.0])


def test_turned_by_a_day_the_fault_moves_by_a_day_and_its_end_joins_the_beginning():
    table = spans([(0, 1), (1, 2), (29, 30)])
    found = turned_doses(table, {"A": log(30 * 24, slice(24, 48))})
    hit = float(np.log2(1 + 12 / 10))
    assert found[0].tolist() == pytest.approx([0, hit, 0])
    assert found[1].tolist() == pytest.approx([hit, 0, 0])
    assert found[2].tolist() == pytest.approx([0, 0, hit])
    assert (found > 0).sum(axis=1).max() == 1


def test_hours_not_logged_stay_unknown():
    rate = log(10 * 24, slice(0, 0))
    rate.iloc[5 * 24 :] = np.nan
    found = turned_doses(spans([(0, 4), (5, 9)]), {"A": rate})
    assert found[0, 0] == 0 and np.isnan(found[0, 1])


def test_batches_overlap_only_within_one_machine():
    weekly = spans([(7 * i, 7 * i + 21) for i in range(6)])
    assert batches_overlap(weekly)
    assert not batches_overlap(weekly.assign(incubator=list("ABCDEF")))
    assert not batches_overlap(spans([(30 * i, 30 * i + 21) for i in range(6)]))


def test_rates_average_the_batches_that_share_an_hour():
    time = pd.date_range(START, periods=4, freq="30min")
    track = pd.DataFrame(
        {
            "time": time,
            "egg_c": [38.0, 39.0, 38.0, np.nan],
            "hours": 0.5,
            "egg_range_low_c": 37.0,
            "egg_range_high_c": 38.0,
        }
    )
    cooler = track.assign(egg_c=[36.0, 36.0, 38.0, 38.0])
    rates = log_rates([track, cooler])
    assert rates[PARTS[0]].tolist() == pytest.approx([0.25, 0.0])
    assert rates[PARTS[1]].tolist() == pytest.approx([0.5, 0.0])


def test_turns_stand_in_for_exchanges_in_the_verdict():
    weeks = 26
    table = spans([(7 * i, 7 * i + 7) for i in range(weeks)])
    rng = np.random.default_rng(6)
    turned = turned_doses(table, {"A": log(weeks * 168, slice(70 * 24, 84 * 24))})
    died = rng.binomial(48, np.where(turned[0] > 0, 0.3, 0.03))
    counts = table.assign(window=1, days=7.0, at_risk=48, died=died, dose=turned[0])
    found = relate_counts(counts, turned=turned)
    assert found.test["kind"] == "log turned"
    assert found.test["arrangements"] == weeks * 7
    assert found.verdict == "clear sign"
    told = {one.code: one.facts for one in more_relate.counts(found)}
    assert told["relate_chance"]["turned"]


def test_small_doses_do_not_count_and_doubling_adds_a_step():
    value = score([0.0, 2.9, 10.0, 30.0, np.nan], "egg_degree_hours_warm")
    assert value[:4].tolist() == [0.0, 0.0, 1.0, 2.0]
    assert np.isnan(value[4])


def test_heat_and_cold_add_up_and_the_unknown_stays_unknown():
    heat, cold = np.array([1.0, 0.0, np.nan, np.nan]), np.array([0.5, 0.0, 2.0, 0.0])
    assert together(heat, cold)[:3].tolist() == [1.5, 0.0, 2.0]
    assert np.isnan(together(heat, cold)[3])


def test_a_thin_log_is_not_taken_for_an_even_climate():
    table = pd.DataFrame({PARTS[0]: [0.0, 0.0, 20.0], PARTS[1]: 0.0, "share_logged": [1.0, 0.5, 0.5]})
    dose = known_dose(table)
    assert dose[0] == 0 and np.isnan(dose[1]) and dose[2] > 0
