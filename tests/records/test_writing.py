"""A result is never written over what was read, and what can't be written is said before the work."""

import os
import re

import pytest

from hatchkit.problems import HatchkitError
from hatchkit.records.writing import READ, safe_output, whole_file


@pytest.fixture
def season(tmp_path):
    folder = tmp_path / "season"
    (folder / "Sensors" / "deep").mkdir(parents=True)
    for name in ("batches.csv", "season.toml", "Sensors/a.csv", "Sensors/deep/b.txt", "problems.csv", "page.html"):
        (folder / name).write_text("mine", encoding="utf-8")
    return folder


def files(folder):
    return {path: (path.read_bytes(), path.stat().st_mtime_ns) for path in folder.rglob("*") if path.is_file()}


@pytest.mark.parametrize(
    ("name", "words"),
    [
        ("batches.csv", "never written to"),
        ("./Sensors/../batches.csv", "never written to"),
        ("Sensors/a.csv", "never written to"),
        ("Sensors/new.csv", "never written to"),
        ("marks.csv", "would be read as part of the season"),
        ("season.toml", "ends in .csv"),
        ("nowhere/list.csv", "folder that exists"),
        ("list", "ends in .csv"),
        ("x" * 300 + ".csv", "cannot be written"),
    ],
)
def test_what_a_season_reads_is_refused_in_one_sentence(season, name, words):
    before = files(season)
    with pytest.raises(HatchkitError, match=re.escape(words)) as caught:
        safe_output(season / name, season=season, suffix=".csv")
    assert "\n" not in str(caught.value)
    assert files(season) == before


def test_settings_are_refused_whatever_ending_is_wanted(season):
    with pytest.raises(HatchkitError, match="never written to"):
        safe_output(season / "season.toml", season=season, suffix=".toml")


@pytest.mark.skipif(os.name == "nt", reason="links need rights on Windows")
@pytest.mark.parametrize("link", [os.symlink, os.link])
def test_a_link_to_a_file_that_is_read_is_that_file(season, tmp_path, link):
    link(season / "batches.csv", tmp_path / "list.csv")
    with pytest.raises(HatchkitError, match="never written to"):
        safe_output(tmp_path / "list.csv", season=season, suffix=".csv")


def test_a_folder_is_no_file(season):
    (season / "list.csv").mkdir()
    with pytest.raises(HatchkitError, match="name of a file"):
        safe_output(season / "list.csv", season=season, suffix=".csv")


def test_any_other_place_is_taken_and_nothing_is_touched(season, tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    before = files(tmp_path)
    for name in ("list.csv", "season/problems.csv"):
        assert safe_output(name, season="season", suffix=".csv") == tmp_path / name
    assert safe_output(season / "page.html", season=season, suffix=(".html", ".htm")) == season / "page.html"
    assert safe_output("list.CSV", suffix=".csv").name == "list.CSV"
    assert safe_output("list.csv", season="no such season", suffix=".csv")
    assert files(tmp_path) == before


def test_other_files_and_folders_can_be_kept_too(season, tmp_path):
    for kept in (season / "batches.csv", season):
        with pytest.raises(HatchkitError, match="among the files that are read"):
            safe_output(season / "batches.csv", inputs=[kept], suffix=".csv")
    assert safe_output(tmp_path / "marks.csv", inputs=[season, season / "page.html"], suffix=".csv")


@pytest.mark.skipif(os.name == "nt" or os.geteuid() == 0, reason="no folder is closed to this user")
def test_a_folder_closed_to_the_person_is_said_before_the_work(tmp_path):
    tmp_path.chmod(0o500)
    with pytest.raises(HatchkitError, match="cannot be written: Permission denied"):
        safe_output(tmp_path / "list.csv", suffix=".csv")


def test_every_kind_of_file_that_the_reader_takes_is_kept():
    from hatchkit.records import files, workbook

    assert {*workbook.WORKBOOKS, *workbook.TEXTS, *files.LOG_TEXTS} < set(READ)


def test_a_file_is_moved_over_the_old_one_when_it_is_whole(tmp_path):
    out = tmp_path / "page.html"
    out.write_text("old", encoding="utf-8")
    with whole_file(out) as part:
        part.write_text("new", encoding="utf-8")
        assert out.read_text(encoding="utf-8") == "old" and part.parent == tmp_path and part.name.startswith(".")
    assert out.read_text(encoding="utf-8") == "new" and list(tmp_path.iterdir()) == [out]


@pytest.mark.parametrize("error", [KeyError("x"), KeyboardInterrupt(), MemoryError()])
def test_whatever_happens_while_it_is_written_the_old_file_stays(tmp_path, error):
    out = tmp_path / "page.html"
    out.write_text("old", encoding="utf-8")
    with pytest.raises(type(error)), whole_file(out) as part:
        part.write_text("half", encoding="utf-8")
        raise error
    assert out.read_text(encoding="utf-8") == "old" and list(tmp_path.iterdir()) == [out]


@pytest.mark.skipif(not os.path.exists("/dev/full"), reason="a full disk is played by /dev/full")
def test_a_full_disk_leaves_the_old_file_and_names_it(tmp_path):
    out = tmp_path / "page.html"
    out.write_text("old", encoding="utf-8")
    with pytest.raises(HatchkitError, match=re.escape(str(out))) as caught, whole_file(out) as part:
        part.symlink_to("/dev/full")
        part.write_text("new" * 10_000, encoding="utf-8")
    assert caught.value.code == "not_written" and "space" in caught.value.facts["why"]
    assert out.read_text(encoding="utf-8") == "old" and list(tmp_path.iterdir()) == [out]


def test_a_new_file_is_never_laid_over_one_that_turned_up(tmp_path):
    out = tmp_path / "season.toml"
    with pytest.raises(FileExistsError), whole_file(out, new=True) as part:
        part.write_text("blank", encoding="utf-8")
        out.write_text("mine", encoding="utf-8")
    assert out.read_text(encoding="utf-8") == "mine" and list(tmp_path.iterdir()) == [out]


@pytest.mark.skipif(os.name == "nt", reason="no such modes on Windows")
def test_the_mode_of_the_old_file_is_kept(tmp_path):
    out = tmp_path / "page.html"
    out.write_text("old", encoding="utf-8")
    out.chmod(0o640)
    with whole_file(out) as part:
        part.write_text("new", encoding="utf-8")
    assert out.stat().st_mode & 0o777 == 0o640
