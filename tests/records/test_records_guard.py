"""An error that nobody foresaw costs one file or sheet, and its true reason is told."""

import pytest

from hatchkit.records import files, guard
from hatchkit.records.folder import read_folder
from hatchkit.records.logs import season as logs

BATCHES = "batch,species,set_at,eggs_set,hatched\nA,chicken,2026-03-01,42,30\nB,chicken,2026-03-11,48,36\n"
LOG = "time,temperature\n" + "".join(
    f"2026-03-{day:02d} {hour:02d}:00,37.6\n" for day in (1, 2, 3) for hour in range(24)
)


@pytest.fixture
def folder(tmp_path, monkeypatch):
    monkeypatch.delenv("HATCHKIT_STRICT", raising=False)
    (tmp_path / "sensors").mkdir()
    (tmp_path / "batches.csv").write_text(BATCHES)
    (tmp_path / "sensors" / "good.csv").write_text(LOG)
    (tmp_path / "sensors" / "odd.csv").write_text(LOG)
    return tmp_path


def _spoil(monkeypatch, room, name, file):
    real = getattr(room, name)

    def spoilt(path, *rest, **more):
        if path.name == file:
            raise ZeroDivisionError("division by zero")
        return real(path, *rest, **more)

    monkeypatch.setattr(room, name, spoilt)


def test_a_log_that_breaks_the_reader_is_one_lost_row_and_the_rest_is_read(folder, monkeypatch):
    _spoil(monkeypatch, logs, "read_parts", "odd.csv")
    read = read_folder(folder)
    row = read["problems"].query("file == 'sensors/odd.csv'").iloc[0]
    assert (row["severity"], row["code"]) == ("lost", "file_broken")
    assert row["facts"]["reason"] == "ZeroDivisionError: division by zero"
    assert len(read["batches"]) == 2 and set(read["readings"]["file"]) == {"sensors/good.csv"}


def test_a_table_that_breaks_the_reader_is_one_lost_row_and_the_rest_is_read(folder, monkeypatch):
    (folder / "more.csv").write_text(BATCHES.replace("A,", "C,").replace("B,", "D,"))
    _spoil(monkeypatch, files, "read_grids", "more.csv")
    read = read_folder(folder)
    assert read["problems"].query("file == 'more.csv'")["code"].tolist() == ["file_broken"]
    assert read["batches"]["batch"].tolist() == ["A", "B"]


def test_while_the_kit_is_tested_the_error_itself_is_shown(monkeypatch):
    monkeypatch.setenv("HATCHKIT_STRICT", "1")
    with pytest.raises(ZeroDivisionError), guard.guarded("x.csv", "", []):
        _ = 1 / 0
