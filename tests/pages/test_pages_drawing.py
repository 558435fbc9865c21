"""The second process draws what the page itself would draw, and whatever goes wrong there costs time only."""

import pickle

import pandas as pd
import pytest

from hatchkit.findings.finding import Finding, Picture, Said
from hatchkit.pages import drawing, parts


@pytest.fixture
def finding():
    table = pd.DataFrame({"eggs": [10, 20, 30], "chance": [0.1, 0.5, 0.9]})
    rows = pd.DataFrame({"sure": [0.9], "chicks": [8], "eggs": [30], "chance": [0.9]})
    picture = Picture("next_set.eggs_to_set", [table, rows], alt=Said("do_nothing"))
    return Finding("change", "change_set", {}, "likely", more=(picture, Said("causes_method")))


@pytest.fixture(autouse=True)
def two_cores(monkeypatch):
    monkeypatch.setattr(drawing.os, "cpu_count", lambda: 2)


def test_the_other_process_draws_what_the_page_would(finding, monkeypatch):
    picture = finding.more[0]
    here = parts.picture(picture, "de", "C")
    with drawing.Drawer() as drawer:
        drawer.take(finding, "de", "C")
        monkeypatch.setattr(parts, "picture", lambda *_: "drawn here")
        there = drawer.picture(picture, "de", "C")
        assert drawer.picture(picture, "en", "C") == "drawn here"
    assert there == here
    assert drawer._process.returncode is not None


@pytest.mark.parametrize("broken", ["no process", "dies", "cannot be sent"])
def test_a_picture_that_does_not_come_back_is_drawn_by_the_page(finding, monkeypatch, broken):
    monkeypatch.setattr(parts, "picture", lambda *_: "drawn here")
    if broken == "no process":
        monkeypatch.setattr(drawing.sys, "executable", "/no/such/python")
    if broken == "dies":
        monkeypatch.setattr(drawing, "_RUN", ("-c", "raise SystemExit(3)"))
    if broken == "cannot be sent":
        monkeypatch.setattr(drawing.pickle, "dumps", lambda _: (_ for _ in ()).throw(pickle.PicklingError("no")))
    with drawing.Drawer() as drawer:
        drawer.take(finding, "en", "C")
        assert drawer.picture(finding.more[0], "en", "C") == "drawn here"
