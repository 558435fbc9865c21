"""Clocks: which order day and month have, the hour that comes twice or never, and clocks that jump."""

import numpy as np
import pandas as pd
import pytest

from hatchkit.records.logs.read import read_readings
from hatchkit.records.logs.stamps import read_stamps
from hatchkit.records.times.zones import to_utc

ROME = "Europe/Rome"


def log(tmp_path, stamps, temps=None, name="log.csv"):
    """A file with these stamps as they stand."""
    temps = 37.5 + np.arange(len(stamps)) % 7 / 10 if temps is None else temps
    path = tmp_path / name
    path.write_text(
        "Time;Temp (°C)\n" + "".join(f"{s};{t:.1f}\n" for s, t in zip(stamps, temps, strict=True)), encoding="utf-8"
    )
    return path


def shown(times, style="%d/%m/%Y %H:%M"):
    return [time.strftime(style) for time in times]


def test_days_that_follow_each_other_settle_the_order(tmp_path):
    # 4, 5 and 6 May; read the other way they would be 5 April, 5 May and 5 June.
    times = pd.date_range("2026-05-04", periods=72, freq="h")
    readings, problems = read_readings(log(tmp_path, shown(times)))
    assert list(readings["time"]) == list(times.tz_localize("UTC"))
    assert [facts["how"] for facts in problems.loc[problems["code"] == "log_order", "facts"]] == ["continuity"]


def test_the_days_win_over_a_wrong_rule(tmp_path):
    times = pd.date_range("2026-05-04", periods=72, freq="h")
    readings, _ = read_readings(log(tmp_path, shown(times)), day_first=False)
    assert list(readings["time"]) == list(times.tz_localize("UTC"))


@pytest.mark.parametrize(("day_first", "month"), [(True, 5), (False, 4), (None, 5)])
def test_a_single_day_is_read_as_the_person_says_and_doubted_without(tmp_path, day_first, month):
    times = pd.date_range("2026-05-04", periods=20, freq="h")
    readings, problems = read_readings(log(tmp_path, shown(times)), day_first=day_first)
    assert set(readings["time"].dt.month) == {month}
    said = problems[problems["code"].isin(["log_order", "log_order_open"])]
    assert said["severity"].tolist() == ["note" if day_first is not None else "doubtful"]


def test_one_wrong_date_does_not_turn_the_order(tmp_path):
    times = pd.date_range("2026-04-10", periods=240, freq="h")
    stamps = shown(times)
    stamps[100] = "31/02/2026 04:00"
    readings, problems = read_readings(log(tmp_path, stamps))
    assert list(readings["time"]) == list(times.delete(100).tz_localize("UTC"))
    assert problems.loc[problems["severity"] == "lost", "row"].tolist() == [102]


def test_stamps_written_digit_under_digit_and_stamps_written_loosely_give_the_same():
    times = pd.date_range("2024-02-27 22:00", periods=500, freq="37min")
    fixed = read_stamps(np.array(shown(times, "%d.%m.%Y %H:%M"), dtype=object)).local
    texts = [f"{t.day}.{t.month}.{t.year} {t.hour}:{t.minute:02d}" for t in times]
    loose = read_stamps(np.array(texts, dtype=object)).local
    assert (fixed == times.to_numpy().astype("datetime64[us]")).all() and (loose == fixed).all()


@pytest.mark.parametrize(
    "text", ["29.02.2026 10:00", "32.01.2026 10:00", "01.13.2026x", "01.01.2026 25:00", "", "?", "01.01.2026 10:75"]
)
def test_what_is_no_time_gives_none(text):
    stamps = ["30.01.2026 10:00"] * 5 + [text]
    local = read_stamps(np.array(stamps, dtype=object)).local
    assert not np.isnat(local[:5]).any() and np.isnat(local[5])


def test_the_hour_that_comes_twice_is_told_by_the_order_of_the_file():
    # 25 October 2026: 3:00 summer time becomes 2:00.
    utc = pd.date_range("2026-10-24 22:00", "2026-10-25 04:00", freq="10min", tz="UTC")
    local = utc.tz_convert(ROME).tz_localize(None).to_numpy().astype("datetime64[us]")
    found, notes = to_utc(local, ROME)
    assert (found == utc.tz_localize(None).to_numpy()).all()
    assert [note[0] for note in notes] == ["note"] and notes[0][1] == "clock_hour_twice"


def test_the_hour_that_is_left_out_leaves_no_hole_in_utc():
    utc = pd.date_range("2026-03-28 22:00", "2026-03-29 04:00", freq="10min", tz="UTC")
    local = utc.tz_convert(ROME).tz_localize(None).to_numpy().astype("datetime64[us]")
    found, notes = to_utc(local, ROME)
    assert (found == utc.tz_localize(None).to_numpy()).all() and notes == []


@pytest.mark.parametrize(("day", "offset"), [("2026-10-25", 2), ("2026-03-29", 1)])
def test_a_logger_that_does_not_know_of_summer_time_is_noticed(day, offset):
    local = pd.date_range(f"{day} 00:00", f"{day} 06:00", freq="10min")
    found, notes = to_utc(local.to_numpy().astype("datetime64[us]"), ROME)
    assert (found == (local - pd.Timedelta(hours=offset)).to_numpy()).all()
    assert [note[0] for note in notes] == ["doubtful"] and notes[0][1] == "clock_not_followed"


def test_a_log_far_from_any_change_is_moved_by_one_offset():
    local = pd.date_range("2026-06-01", periods=100, freq="h")
    found, notes = to_utc(local.to_numpy().astype("datetime64[us]"), ROME)
    assert (found == (local - pd.Timedelta(hours=2)).to_numpy()).all() and notes == []


def test_both_changes_in_one_log():
    utc = pd.date_range("2026-03-01", "2026-11-30", freq="h", tz="UTC")
    local = utc.tz_convert(ROME).tz_localize(None).to_numpy().astype("datetime64[us]")
    assert (to_utc(local, ROME)[0] == utc.tz_localize(None).to_numpy()).all()


def test_a_clock_set_back_is_marked_and_nothing_is_lost(tmp_path):
    times = pd.date_range("2026-04-13", periods=100, freq="10min")
    wrong = times[:30].union(times[30:36] + pd.Timedelta(days=2)).tolist() + times[36:].tolist()
    readings, problems = read_readings(log(tmp_path, shown(wrong, "%Y-%m-%d %H:%M")))
    assert len(readings) == 100 and readings["time"].is_monotonic_increasing
    assert (readings["doubt"] == "clock step").sum() == 6
    assert problems.loc[problems["code"] == "log_clock_step", "row"].tolist() == [32]


def test_a_clock_that_lost_its_date_is_marked(tmp_path):
    times = pd.date_range("2026-04-13", periods=100, freq="10min").tolist()
    times[:8] = pd.date_range("2000-01-01", periods=8, freq="10min")
    readings, _ = read_readings(log(tmp_path, shown(times, "%Y-%m-%d %H:%M")))
    assert (readings["doubt"] == "clock step").tolist() == [True] * 8 + [False] * 92


def test_a_log_written_newest_first_is_put_in_order(tmp_path):
    times = pd.date_range("2026-04-13", periods=100, freq="10min")
    readings, problems = read_readings(log(tmp_path, shown(times[::-1], "%Y-%m-%d %H:%M")))
    assert list(readings["time"]) == list(times.tz_localize("UTC")) and (readings["doubt"] == "").all()
    assert problems["code"].eq("log_newest_first").sum() == 1


def test_one_time_with_two_values_keeps_both_in_doubt(tmp_path):
    times = pd.date_range("2026-04-13", periods=10, freq="10min").tolist()
    times.insert(5, times[4])
    readings, _ = read_readings(log(tmp_path, shown(times, "%Y-%m-%d %H:%M")))
    assert len(readings) == 11
    assert (readings["doubt"] == "repeated").tolist() == [False] * 4 + [True] * 2 + [False] * 5


def test_an_unknown_zone_is_named(tmp_path):
    from hatchkit.problems import HatchkitError

    times = pd.date_range("2026-04-13", periods=10, freq="10min")
    with pytest.raises(HatchkitError, match="There is no time zone 'Rome'"):
        read_readings(log(tmp_path, shown(times)), timezone="Rome")


@pytest.mark.parametrize(
    "text",
    [
        "2026-04-13 15:05",
        "13.04.2026 15:05",
        "13. April 2026 15:05",
        "13 avr. 2026 15:05",
        "Apr 13 2026 3:05PM",
        "2026年4月13日 15:05",
        "2026-04-13 15h05",
        "2026-04-13 15.05.00",
        "2026/04/13 下午 3:05:00",
        "Mo. 13.04.2026, 15:05",
        "13-Apr-26 15:05",
        "13.4.26 15:5",
        "04/13/26 3:05:00 p. m.",
        "15:05:00 13/04/2026",
        "20260413 150500",
        "20260413T1505",
        "2026.04.13. 15:05",
        "2026-04-13_15:05:00",
        "13/04/2026 03:05 nachm.",
    ],
)
def test_many_ways_to_write_one_minute(text):
    assert read_stamps(np.array([text], dtype=object)).local[0] == np.datetime64("2026-04-13T15:05")


@pytest.mark.parametrize(
    "text",
    ["2026-04-13T15:05Z", "2026-04-13 17:05:00 +0200", "2026-04-13T10:05:00.000-05:00", "13.04.2026 17:05 UTC+2"],
)
def test_an_offset_in_the_stamp_is_read(text):
    stamps = read_stamps(np.array([text], dtype=object))
    assert stamps.local[0] - np.timedelta64(int(stamps.offset[0]), "s") == np.datetime64("2026-04-13T15:05")


@pytest.mark.parametrize("day", ["2026-10-25", "2026-03-29"])
def test_a_log_written_newest_first_passes_the_change_of_the_hour(tmp_path, day):
    utc = pd.date_range(f"{day} 00:00", periods=180, freq="5min", tz="UTC") - pd.Timedelta(hours=6)
    stamps = shown(utc.tz_convert(ROME), "%Y-%m-%d %H:%M")
    either = [
        read_readings(log(tmp_path, order, name=name), timezone=ROME)
        for order, name in ((stamps, "oldest.csv"), (stamps[::-1], "newest.csv"))
    ]
    for readings, problems in either:
        assert list(readings["time"]) == list(utc)
        assert not readings["doubt"].astype(bool).any()
        assert not problems["severity"].isin(["lost", "doubtful"]).any()


def test_a_log_of_one_reading_has_no_direction():
    local = np.array(["2026-10-25T12:00"], dtype="datetime64[us]")
    assert to_utc(local, ROME)[0].tolist() == np.array(["2026-10-25T11:00"], dtype="datetime64[us]").tolist()
