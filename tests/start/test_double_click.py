"""The file to double-click in a new season folder: does it run, wherever its folder lies and whatever it is called?"""

import configparser
import os
import re
import shlex
import subprocess
import sys

import pytest

from hatchkit.start import double_click
from hatchkit.start.double_click import write_double_click


@pytest.fixture
def stand_ins(tmp_path, monkeypatch):
    """A Python and an xdg-open that note what they are asked for; the Python writes the page."""
    tools = tmp_path / "too ls"
    tools.mkdir()
    noted = tmp_path / "noted.txt"
    (tools / "python").write_text(
        f'#!/bin/sh\necho "python $@ in $(pwd)" >> {shlex.quote(str(noted))}\nexit "${{FAIL:-0}}"\n'
    )
    (tools / "xdg-open").write_text(f'#!/bin/sh\necho "show $@" >> {shlex.quote(str(noted))}\n')
    for tool in tools.iterdir():
        tool.chmod(0o755)
    monkeypatch.setattr(double_click.sys, "executable", str(tools / "python"))
    monkeypatch.setenv("PATH", f"{tools}:{os.environ['PATH']}")
    return noted


def _exec_of(file):
    """The command of a desktop entry as a desktop reads it: escapes of the value, then its quotes and percent signs."""
    entry = configparser.ConfigParser(interpolation=None, strict=True)
    entry.optionxform = str
    entry.read_string(file.read_text(encoding="utf-8"))
    value = entry["Desktop Entry"]["Exec"].replace("\\\\", "\\")
    quoted = re.fullmatch(r'sh -c "((?:[^"\\`$]|\\["`$\\])*)"', value)[1]
    return ["sh", "-c", re.sub(r'\\(["`$\\])', r"\1", quoted).replace("%%", "%")]


@pytest.mark.skipif(sys.platform in ("win32", "darwin"), reason="a desktop entry is for Linux and its kin")
@pytest.mark.parametrize("name", ["spring", "my season", 'it\'s 50% "off" $HOME `x` \\ ü', "a;b&c"])
def test_a_double_click_writes_the_review_and_shows_it(tmp_path, stand_ins, name):
    folder = tmp_path / name
    folder.mkdir()
    [file] = write_double_click(folder, system="linux")
    assert file.suffix == ".desktop" and os.access(file, os.X_OK)
    subprocess.run(_exec_of(file), check=True, stdin=subprocess.DEVNULL, timeout=30)
    ran, shown = stand_ins.read_text(encoding="utf-8").splitlines()
    assert ran == f"python -m hatchkit review . --out season-review.html in {folder.resolve()}"
    assert shown == "show season-review.html"


@pytest.mark.skipif(sys.platform in ("win32", "darwin"), reason="a desktop entry is for Linux and its kin")
def test_a_review_that_fails_shows_nothing_and_keeps_its_window_open(tmp_path, stand_ins, monkeypatch):
    monkeypatch.setenv("FAIL", "2")
    [file] = write_double_click(tmp_path, system="linux")
    said = subprocess.run(_exec_of(file), input="\n", capture_output=True, text=True, timeout=30)
    assert "Press Enter to close" in said.stdout
    assert [line.split()[0] for line in stand_ins.read_text(encoding="utf-8").splitlines()] == ["python"]


@pytest.mark.parametrize(
    ("system", "name"), [("win32", "Review this season.bat"), ("darwin", "Review this season.command")]
)
def test_files_for_systems_that_were_never_tried_say_so(tmp_path, system, name):
    [file] = write_double_click(tmp_path, system=system)
    assert file.name == name and "Untried" in file.read_text(encoding="utf-8")


def test_the_file_that_is_there_is_left_as_it_is(tmp_path):
    [file] = write_double_click(tmp_path)
    file.write_text("mine")
    assert write_double_click(tmp_path) == [] and file.read_text() == "mine"
