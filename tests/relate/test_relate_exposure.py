"""Exposure: windows and doses side by side, and "not known" never turned into nought."""

import pandas as pd
import pytest

from hatchkit.relate.exposure import DOSE_COLUMNS, add_doses


def made_windows():
    start = pd.Timestamp("2024-03-01 12:00", tz="UTC")
    return pd.DataFrame(
        {
            "batch": ["A", "A", "B"],
            "window": [1, 2, 1],
            "start": [start, start + pd.Timedelta(days=7), pd.NaT],
            "end": [start + pd.Timedelta(days=7), start + pd.Timedelta(days=14), pd.NaT],
            "at_risk": [40.0, 38.0, 20.0],
            "died": [1.0, 4.0, 0.0],
        }
    )


@pytest.fixture
def warm_window_dose(monkeypatch):
    """Stands in for the climate room: two hours warm in the first window, nothing logged in the second."""
    from hatchkit.relate import exposure as patched

    def window_dose(track, start, end):
        inside = track[(track["time"] >= start) & (track["time"] < end)]
        if inside.empty:
            return {"hours": 168.0, "hours_logged": 0.0, "share_logged": 0.0}
        return {
            "hours": 168.0,
            "hours_logged": 168.0,
            "share_logged": 1.0,
            "hours_warm": 2.0,
            "egg_degree_hours_warm": 3.0,
            "heat_band": "low",
        }

    monkeypatch.setattr(patched, "window_dose", window_dose)


def test_a_window_with_no_reading_is_not_known_and_never_nought(warm_window_dose):
    windows = made_windows()
    track = pd.DataFrame({"time": pd.date_range(windows["start"][0], periods=168, freq="h")})
    table = add_doses(windows, {"A": track, "B": None})
    assert table["egg_degree_hours_warm"][0] == 3.0
    assert table.loc[[1, 2], "egg_degree_hours_warm"].isna().all()
    assert table["share_logged"].tolist() == [1.0, 0.0, 0.0]
    assert list(table.columns[-len(DOSE_COLUMNS) :]) == DOSE_COLUMNS


def test_a_batch_without_a_track_keeps_its_window_length(warm_window_dose):
    table = add_doses(made_windows(), {})
    assert table["hours"][0] == pytest.approx(168)
    assert table["hours_warm"].isna().all()
