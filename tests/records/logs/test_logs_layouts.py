"""Whatever the layout, the same readings come back, or the file is refused with a reason: never another number."""

import datetime as dt

import numpy as np
import pytest
from hypothesis import HealthCheck, Phase, example, given, settings
from hypothesis import strategies as st
from layouts import ASKED, LAYOUTS

from hatchkit.problems import HatchkitError
from hatchkit.records.logs.read import Wishes, read_accounted

CLEAN = [HealthCheck.function_scoped_fixture, HealthCheck.too_slow]
#: Each try writes a file in every layout, so that a search for the smallest failing log would hang the suite.
UNSHRUNK = (Phase.explicit, Phase.generate)


def readings(start, seed, count=30, step=30):
    noise = np.random.default_rng(seed)
    temps = np.round(37.6 + np.cumsum(noise.normal(0, 0.08, count)).clip(-1.5, 1.5), 1)
    rh = np.round(52 + np.cumsum(noise.normal(0, 0.9, count)).clip(-20, 25)).astype(int)
    return [
        (start + n * dt.timedelta(minutes=step), float(c), int(h))
        for n, (c, h) in enumerate(zip(temps, rh, strict=True))
    ]


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


@settings(max_examples=25, deadline=None, derandomize=True, suppress_health_check=CLEAN, phases=UNSHRUNK)
@given(
    start=st.datetimes(dt.datetime(1985, 1, 1), dt.datetime(2060, 1, 1)),
    seed=st.integers(0, 10_000),
    count=st.integers(12, 60),
    step=st.sampled_from([1, 10, 60]),
)
@example(start=dt.datetime(2000, 1, 1), seed=0, count=12, step=1)
def test_equal_or_refused_with_a_reason_or_asked(tmp_path, start, seed, count, step):
    truth = readings(start.replace(second=0, microsecond=0), seed, count, step)
    for name in LAYOUTS:
        tried = f"{name}: from {truth[0][0]}, seed {seed}, {count} readings every {step} min"
        try:
            found, account = read(tmp_path, name, truth)
        except HatchkitError as error:
            assert len(str(error)) > 20, tried
            continue
        if any(q["code"] == "log_date_order" for q in account.questions) or name in ASKED:
            continue
        table = found[found["doubt"].isin(["", "stuck"])]
        expected = {t: c for t, c, _ in truth}
        for time, temp in zip(table["time"].dt.tz_localize(None), table["temp_c"], strict=True):
            assert abs(expected.get(time.to_pydatetime(), np.nan) - temp) < 0.01, f"{tried}: {time} {temp}"
        assert len(table) == count, tried


@pytest.mark.parametrize("clock, first", [("{h:02}{m:02}", (0, 7)), ("{h:02}{m:02}{s:02}", (0, 7)), ("{hm}", (1, 40))])
def test_figures_of_a_clock_are_never_taken_for_hours(tmp_path, clock, first):
    """0007 is seven minutes past midnight, also where no reading of the log is of a later hour."""
    truth = readings(dt.datetime(2026, 3, 5, *first), 1, 12, 1)
    lines = [
        f"{t:%Y\t%m\t%d}\t{clock.format(h=t.hour, m=t.minute, s=0, hm=t.hour * 100 + t.minute)}\t{c}\t{h}"
        for t, c, h in truth
    ]
    path = tmp_path / "log.txt"
    path.write_text("YEAR\tMONTH\tDAY\tTIME\tTEMP\tRH\n" + "\n".join(lines) + "\n")
    compare(read_accounted(path, Wishes())[0], truth)


def test_figures_that_may_be_hours_or_minutes_are_refused(tmp_path):
    lines = [f"2026\t3\t5\t{n}\t37.{n % 10}\t50" for n in range(12)]
    path = tmp_path / "log.txt"
    path.write_text("YEAR\tMONTH\tDAY\tTIME\tTEMP\tRH\n" + "\n".join(lines) + "\n")
    with pytest.raises(HatchkitError, match="hours or minutes past midnight"):
        read_accounted(path, Wishes())
