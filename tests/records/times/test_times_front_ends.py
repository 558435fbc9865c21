"""What a sheet reads as a time, a log reads as the same time: both front ends stand on one reader."""

import datetime as dt

import pytest
from test_times_forms import WRITERS

from hatchkit.records.logs.read import read_readings
from hatchkit.records.sheets.when import read_dates

TRUTH = [dt.datetime(2026, 3, 11, 6, 30) + n * dt.timedelta(hours=5) for n in range(24)]
OLD = [t.replace(year=1985) for t in TRUTH]


def of_log(tmp_path, texts):
    path = tmp_path / "log.txt"
    lines = [f"{text}\t37.{n % 9}" for n, text in enumerate(texts)]
    path.write_text("\n".join(["when\ttemperature °C", *lines]) + "\n", encoding="utf-8")
    return read_readings(path)[0]["time"].dt.tz_localize(None).dt.to_pydatetime().tolist()


def of_sheet(texts):
    return read_dates(list(texts), True).moments.astype("datetime64[s]").tolist()


@pytest.mark.parametrize("write", [write for _, write in WRITERS], ids=[write(TRUTH[0]) for _, write in WRITERS])
def test_both_front_ends_read_the_same_times(tmp_path, write):
    texts = [write(t) for t in TRUTH]
    assert of_sheet(texts) == TRUTH
    assert of_log(tmp_path, texts) == TRUTH


def test_a_year_of_two_figures_is_of_one_century_in_both(tmp_path):
    texts = [f"{t:%d/%m/%y %H:%M}" for t in OLD]
    assert of_sheet(texts) == OLD and of_log(tmp_path, texts) == OLD
