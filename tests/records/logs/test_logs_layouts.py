"""Whatever the layout, the same readings come back, or the file is refused with a reason: never another number."""

import datetime as dt

import numpy as np
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from layouts import ASKED, LAYOUTS

from hatchkit.problems import HatchkitError
from hatchkit.records.logs.read import Wishes, read_accounted

CLEAN = [HealthCheck.function_scoped_fixture, HealthCheck.too_slow]


def readings(start, seed, count=30, step=30):
    noise = np.random.default_rng(seed)
    temps = np.round(37.6 + np.cumsum(noise.normal(0, 0.08, count)).clip(-1.5, 1.5), 1)
    rh = np.round(52 + np.cumsum(noise.normal(0, 0.9, count)).clip(-20, 25)).astype(int)
    return [(start + n * dt.timedelta(minutes=step), float(c), int(h)) for n, (c, h) in enumerate(zip(temps, rh,
                                                                                                      strict=True))]


def read(tmp_path, name, truth):
    suffix, write = LAYOUTS[name]
    data = write(truth)
    path = tmp_path / f"log{suffix}"
    path.write_bytes(data if isinstance(data, bytes) else data.encode())
    return read_accounted(path, Wishes())


def compare(found, truth, *, humid=True):
    assert found["time"].dt.tz_localize(None).dt.to_pydatetime().tolist() == [t for t, _, _ in truth]
    np.testing.assert_allclose(found["temp_c"], [c for _, c, _ in truth], atol=0.006)
    if humid:
        np.testing.assert_allclose(found["rh_pct"], [h for _, _, h in truth])
    assert (found["doubt"] == "").all() and found["probe"].nunique() == 1


@pytest.mark.parametrize("name", LAYOUTS)
def test_every_layout_is_read(tmp_path, name):
    truth = readings(dt.datetime(2026, 3, 13, 20, 30), 4)
    found, account = read(tmp_path, name, truth)
    compare(found, truth, humid=name != "depth and temperature")
    assert bool([q for q in account.questions if q["code"] == "log_column"]) == (name in ASKED)


@settings(max_examples=25, deadline=None, derandomize=True, suppress_health_check=CLEAN)
@given(start=st.datetimes(dt.datetime(1985, 1, 1), dt.datetime(2060, 1, 1)), seed=st.integers(0, 10_000),
       count=st.integers(12, 60), step=st.sampled_from([1, 10, 60]))
def test_equal_or_refused_with_a_reason_or_asked(tmp_path, start, seed, count, step):
    truth = readings(start.replace(second=0, microsecond=0), seed, count, step)
    for name in LAYOUTS:
        try:
            found, account = read(tmp_path, name, truth)
        except HatchkitError as error:
            assert len(str(error)) > 20
            continue
        if any(q["code"] == "log_date_order" for q in account.questions) or name in ASKED:
            continue
        table = found[found["doubt"].isin(["", "stuck"])]
        expected = {t: c for t, c, _ in truth}
        for time, temp in zip(table["time"].dt.tz_localize(None), table["temp_c"], strict=True):
            assert abs(expected[time.to_pydatetime()] - temp) < 0.01, name
        assert len(table) == count, name
