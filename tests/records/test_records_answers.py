"""What a person confirmed is kept beside the season, bound to file, sheet and heading, and asked no second time."""

import tomllib
from pathlib import Path

import pytest
from sheet_files import write_csv

import hatchkit as hk
from hatchkit.problems import HatchkitError
from hatchkit.records.answers import FILE, keep_answers, load_answers, read_answers
from hatchkit.records.places import demo_folder

LEFT = ("hatches.xlsx", "2025", "Left")


@pytest.fixture(autouse=True)
def homes(tmp_path, monkeypatch):
    """A working folder and a home folder of the test's own."""
    for name in ("work", "home"):
        (tmp_path / name).mkdir()
    monkeypatch.chdir(tmp_path / "work")
    monkeypatch.setattr(Path, "home", lambda: tmp_path / "home")
    return tmp_path


@pytest.fixture
def season(tmp_path):
    folder = tmp_path / "season"
    folder.mkdir()
    return folder


def blocked(folder):
    """A folder in which answers.toml can't be written, whoever runs the test."""
    (folder / FILE).mkdir()
    return folder


def test_answers_are_kept_in_the_folder_and_read_again(season):
    assert load_answers(season) == {}
    assert keep_answers(season, {LEFT: "left@look1"}) == season / FILE
    keep_answers(season, {("hatches.xlsx", "", "?species"): "duck"})
    assert read_answers(season) == ({LEFT: "left@look1", ("hatches.xlsx", "", "?species"): "duck"}, [])
    rows = tomllib.loads((season / FILE).read_text(encoding="utf-8"))["answer"]
    assert rows[1] == dict(file="hatches.xlsx", sheet="2025", heading="Left", code="meaning", taken="left@look1")
    assert rows[0]["code"] == "species" and not list(season.glob("*.part"))


def test_a_later_answer_takes_the_place_of_an_earlier_one(season):
    keep_answers(season, {LEFT: "left@look1"})
    keep_answers(season, {LEFT: "dis"})
    assert load_answers(season) == {LEFT: "dis"}


@pytest.mark.parametrize("heading", ['"Left"', "a\\b", "line\none", "\x1b[2J\x7f", "]]\n[[answer]]", "Übrig 🥚", ""])
def test_any_heading_comes_back_as_it_was(season, heading):
    keep_answers(season, {("a.csv", "", heading): "dis"})
    assert load_answers(season) == {("a.csv", "", heading): "dis"}


def test_a_folder_that_cannot_be_written_to_has_its_answers_in_the_working_folder_and_says_so(season, homes):
    path = keep_answers(blocked(season), {LEFT: "dis"})
    assert path.parent == homes / "work" and path.name.startswith("answers-season-")
    answers, told = read_answers(season)
    assert answers == {LEFT: "dis"} and [row["code"] for row in told] == ["answers_elsewhere"]
    assert str(path) in told[0]["found"]
    other = homes / "other" / "season"
    other.mkdir(parents=True)
    assert load_answers(other) == {}


def test_without_a_working_folder_they_go_home_and_without_a_home_it_is_said(season, homes):
    path = keep_answers(blocked(season), {LEFT: "dis"})
    path.unlink()
    path.mkdir()
    at_home = keep_answers(season, {LEFT: "dis"})
    assert at_home == homes / "home" / path.name and load_answers(season) == {LEFT: "dis"}
    at_home.unlink()
    at_home.mkdir()
    with pytest.raises(HatchkitError, match="could be written neither to"):
        keep_answers(season, {LEFT: "dis"})


def test_the_demo_season_is_never_written_to(homes):
    before = sorted(path.name for path in demo_folder().iterdir())
    assert keep_answers(demo_folder(), {LEFT: "dis"}).parent == homes / "work"
    assert sorted(path.name for path in demo_folder().iterdir()) == before


@pytest.mark.parametrize("text", ["[[answer", "\xff\xfe", "a = " + "[" * 3_000])
def test_a_file_that_cannot_be_read_is_a_problem_and_no_end(season, text):
    (season / FILE).write_text(text, encoding="latin-1")
    answers, told = read_answers(season)
    assert answers == {} and told[0]["code"] == "answers_unreadable" and FILE in told[0]["found"]


@pytest.mark.parametrize("text", ["answer = 3", "[[answer]]\nfile = 3\ntaken = 'dis'", "[[answer]]\nfile = 'a'", ""])
def test_entries_that_are_not_ours_are_passed_over(season, text):
    (season / FILE).write_text(text, encoding="utf-8")
    assert load_answers(season) == {}


def test_a_season_tells_of_answers_that_cannot_be_read_and_uses_those_that_can(season):
    lines = [
        "Hatch,Breed,Date in,Eggs,Rest,Dead,Chicks",
        "1,Leghorn,2025-03-01,24,3,4,17",
        "2,Leghorn,2025-04-01,30,4,6,20",
        "3,Leghorn,2025-05-01,20,2,3,15",
    ]
    write_csv(season, lines, name="hatches.csv")
    asked = hk.load_season(season).questions
    # No word tells what "Rest" counts, and the eggs add up in more ways than one: it is left out until it is told.
    assert asked["heading"].tolist() == ["Rest"] and asked["taken"].tolist() == ["ignore"]
    assert {"dis", "clear"} <= {choice["taken"].partition("@")[0] for choice in asked["choices"][0]}
    keep_answers(season, {("hatches.csv", asked["sheet"][0], "Rest"): "clear"})
    read = hk.load_season(season)
    assert read.questions.empty and read.reading.set_index("heading")["taken"]["Rest"].startswith("clear")
    (season / FILE).write_text("[[answer", encoding="utf-8")
    broken = hk.load_season(season)
    assert broken.questions["heading"].tolist() == ["Rest"] and "answers_unreadable" in set(broken.problems["code"])
    # Another sheet's answer says nothing about this one.
    keep_answers(season, {("other.csv", "", "Rest"): "clear"})
    assert hk.load_season(season).questions["heading"].tolist() == ["Rest"]
