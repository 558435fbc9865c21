"""Cautions are there for each task that can hurt someone, and say the same everywhere."""

import pytest

from hatchkit import reference
from hatchkit.words import cautions


@pytest.mark.parametrize(
    ("task", "word"),
    [
        ("machine", "unplug"),
        ("opening_eggs", "gloves"),
        ("killing", "law"),
        ("disease", "veterinarian"),
        ("hatch", "burst"),
        ("storage", "cracked"),
        ("cleaning", "formaldehyde"),
    ],
)
def test_each_task_has_its_caution(task, word):
    assert word in " ".join(cautions.cautions(task)).lower()


def test_a_missing_caution_is_never_silent():
    with pytest.raises(KeyError, match="juggling"):
        cautions.cautions("juggling")


def test_the_box_is_escaped_html_and_plain_text():
    box = cautions.CautionBox("opening_eggs")
    assert box._repr_html_().count("<li>") == len(box.sentences) == repr(box).count("Take care")


def test_every_caution_names_its_source_and_how_sure():
    assert reference.load("cautions")[["source", "sure"]].notna().all(axis=None)
