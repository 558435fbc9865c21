"""Aims, minutes and progress of the lessons."""

import pytest

from hatchkit import reference
from hatchkit.problems import HatchkitError
from hatchkit.teach import exercises
from hatchkit.teach.exercises import EXERCISES, begin, check, progress
from hatchkit.teach.outline import aim_words, progress_words, section, sections


def test_every_exercise_belongs_to_one_section():
    listed = [
        name
        for lesson in dict.fromkeys(reference.load("lesson_outline")["lesson"])
        for names in sections(lesson)["exercises"]
        for name in names
    ]
    assert sorted(listed) == sorted(EXERCISES)


def test_a_section_says_its_aim_and_minutes(capsys):
    begin("tray")
    said = " ".join(capsys.readouterr().out.split())
    assert said == aim_words("tray") and said.startswith("Aim: Say of what") and said.endswith("minutes.")
    with pytest.raises(HatchkitError, match="section 'nest' is not known"):
        section("nest")
    with pytest.raises(HatchkitError, match="good_batches"):
        sections("nest")


def test_progress_counts_what_was_right_when_last_checked(capsys, monkeypatch):
    monkeypatch.setattr(exercises, "_DONE", {})
    check("dilution", 25, 5, 200)
    check("no_formaldehyde", "a")
    capsys.readouterr()
    progress("clean_hands")
    lines = capsys.readouterr().out.splitlines()
    assert "[#.] 1 of 2" in lines[1] and lines[-1] == "1 of 8 exercises are right."
    check("dilution", 24, 5, 200)
    capsys.readouterr()
    progress("clean_hands")
    assert "[..] 0 of 2" in capsys.readouterr().out


def test_nothing_done_is_no_progress():
    assert progress_words("water", {}).endswith("0 of 8 exercises are right.")
