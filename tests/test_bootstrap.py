"""First-use set-up: plain sentences where it cannot go on. (That it goes on is what CI itself shows.)"""

import importlib.metadata
import os
import re
import signal
import subprocess
import sys
import time
import tomllib
from pathlib import Path

import pytest

from hatchkit import bootstrap

ROOT = Path(__file__).resolve().parent.parent
FILL = bootstrap._fill


def test_a_python_that_has_everything_does_the_work_itself():
    assert bootstrap.run_in_own_environment(["review"]) is None


def test_an_old_python_gets_one_plain_sentence(monkeypatch):
    monkeypatch.setattr(bootstrap.sys, "version_info", (3, 9, 1))
    with pytest.raises(bootstrap.SetupError, match="needs Python 3.11 or newer; this is Python 3.9"):
        bootstrap.run_in_own_environment([])


def test_files_that_an_old_python_must_read_use_old_syntax():
    import ast

    for name in ("__init__", "__main__", "bootstrap"):
        ast.parse((ROOT / "hatchkit" / f"{name}.py").read_text(encoding="utf-8"), feature_version=(3, 7))


def test_no_network_is_said_plainly(tmp_path, monkeypatch):
    (tmp_path / "pyproject.toml").write_text("[project]\n", encoding="utf-8")
    monkeypatch.setattr(bootstrap, "_make", lambda home, *_: Path(home).mkdir())
    monkeypatch.setattr(bootstrap.subprocess, "call", lambda *a, **k: 1)
    with pytest.raises(bootstrap.SetupError, match="Is this machine online"):
        bootstrap._environment(str(tmp_path))


def test_a_damaged_environment_does_not_loop(monkeypatch):
    monkeypatch.setattr(bootstrap, "NEEDED", ["no_such_library_anywhere"])
    monkeypatch.setenv("HATCHKIT_SET_UP", bootstrap.checkout())
    with pytest.raises(bootstrap.SetupError, match="Delete the folder .venv"):
        bootstrap.run_in_own_environment(["review"])


def test_an_installed_copy_without_a_library_says_how_to_get_it(monkeypatch):
    monkeypatch.setattr(bootstrap, "NEEDED", ["no_such_library_anywhere"])
    monkeypatch.setattr(bootstrap, "checkout", lambda: None)
    with pytest.raises(bootstrap.SetupError, match="no_such_library_anywhere"):
        bootstrap.run_in_own_environment(["review"])


@pytest.fixture
def own_checkout(tmp_path, monkeypatch):
    """A checkout in which every set-up step is noted instead of done."""
    steps = []
    (tmp_path / "pyproject.toml").write_text('[project]\ndependencies = ["pandas>=99.1"]\n', encoding="utf-8")
    (tmp_path / ".venv" / "bin").mkdir(parents=True)
    monkeypatch.setattr(bootstrap, "checkout", lambda: str(tmp_path))
    monkeypatch.delenv("HATCHKIT_SET_UP", raising=False)
    monkeypatch.setattr(bootstrap, "_make", lambda home, *options: steps.append(("make", *options)))
    monkeypatch.setattr(bootstrap, "_fill", lambda *_: steps.append(("fill",)))
    monkeypatch.setattr(bootstrap, "run_and_wait", lambda command, **_: steps.append(("run",)) or 0)
    return tmp_path, steps


def test_a_library_older_than_pyproject_asks_for_is_as_good_as_missing(own_checkout):
    assert bootstrap.run_in_own_environment(["review"]) == 0
    assert own_checkout[1][-2:] == [("fill",), ("run",)]


def test_an_installed_copy_with_an_old_library_says_which(monkeypatch):
    monkeypatch.setattr(bootstrap, "checkout", lambda: None)
    monkeypatch.setattr(bootstrap, "_oldest_versions", lambda: {"pandas": "99.1"})
    with pytest.raises(bootstrap.SetupError, match=r"pandas 99.1 or newer, here is \d"):
        bootstrap.run_in_own_environment(["review"])


@pytest.mark.parametrize(
    ("here", "asked", "enough"),
    [
        ("2.2.3", "3.0", False),
        ("3.0.0", "3.0", True),
        ("1.9.4", "1.15", False),
        ("1.15.0rc1", "1.15", True),
        ("0.14.4", "0.14.4", True),
        ("2026.1", "2024.1", True),
    ],
)
def test_versions_are_compared_by_number(here, asked, enough):
    assert (bootstrap._numbers(here) >= bootstrap._numbers(asked)) is enough


def test_every_library_has_an_oldest_version_and_it_is_the_one_in_pyproject():
    asked = bootstrap._oldest_versions()
    assert {*bootstrap.NEEDED, *bootstrap.NEEDED_FOR_TESTS} <= set(asked)
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    assert f"pandas>={asked['pandas']}" in project["dependencies"]
    assert all(importlib.metadata.version(name) for name in asked if name != "tzdata")


@pytest.mark.skipif(os.name == "nt", reason="a .venv on Windows holds no link")
def test_an_environment_whose_python_went_away_is_made_again(own_checkout):
    home, steps = own_checkout
    (home / ".venv" / "bin" / "python").symlink_to(home / "upgraded away")
    bootstrap.run_in_own_environment(["review"])
    assert steps == [("make", "--clear"), ("fill",), ("run",)]


@pytest.mark.skipif(os.name == "nt", reason="a .venv on Windows holds no link")
def test_a_half_made_environment_is_completed_and_nothing_in_it_deleted(own_checkout):
    home, steps = own_checkout
    python = home / ".venv" / "bin" / "python"
    python.write_text('#!/bin/sh\n[ "$1" = -c ]\n', encoding="utf-8")  # runs, but has no pip
    python.chmod(0o755)
    bootstrap.run_in_own_environment(["review"])
    assert steps == [("make",), ("fill",), ("run",)]


def test_ctrl_c_while_setting_up_is_one_sentence(own_checkout, monkeypatch):
    def stop(*_):
        raise KeyboardInterrupt

    monkeypatch.setattr(bootstrap, "_fill", stop)
    with pytest.raises(bootstrap.SetupError, match="stopped before it was done") as said:
        bootstrap.run_in_own_environment(["review"])
    assert "\n" not in str(said.value)


@pytest.mark.parametrize("name", ["hatchkit-setup", "hatchkit-setup.log"])
def test_a_file_that_cannot_be_written_is_one_sentence(own_checkout, monkeypatch, name):
    home, _ = own_checkout
    (home / ".venv" / name).mkdir()  # a folder in its place: not to be written to, whoever asks
    if name.endswith("log"):
        monkeypatch.setattr(bootstrap, "_fill", FILL)
    with pytest.raises(bootstrap.SetupError, match=rf"{re.escape(name)} cannot be used \(") as said:
        bootstrap.run_in_own_environment(["review"])
    assert "\n" not in str(said.value)


@pytest.mark.skipif(os.name == "nt", reason="signals the POSIX way")
def test_ctrl_c_is_left_to_the_command_that_runs():
    child = (
        "import signal, sys, time; signal.signal(signal.SIGINT, lambda *_: (time.sleep(1), sys.exit(7)));"
        "print('up', flush=True); time.sleep(30)"
    )
    code = (
        "import sys; from hatchkit import bootstrap; "
        f"sys.exit(bootstrap.run_and_wait([sys.executable, '-c', {child!r}]))"
    )
    both = subprocess.Popen(
        [sys.executable, "-c", code],
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        text=True,
        cwd=ROOT,
        start_new_session=True,
    )
    assert both.stdout.readline() == "up\n"
    time.sleep(0.1)
    os.killpg(both.pid, signal.SIGINT)
    assert both.communicate(timeout=20) == ("", "") and both.returncode == 7


def test_help_and_version_need_no_library(monkeypatch):
    monkeypatch.setattr(bootstrap, "NEEDED", ["no_such_library_anywhere"])
    for arguments in ([], ["--help"], ["--version"]):
        assert bootstrap.run_in_own_environment(arguments) is None


def test_the_package_runs_as_a_module():
    said = subprocess.run([sys.executable, "-m", "hatchkit", "--version"], capture_output=True, text=True, cwd=ROOT)
    assert said.returncode == 0
    assert said.stdout.startswith("hatchkit ")


def test_a_file_named_as_the_environment_is_said_to_be_in_the_way(tmp_path):
    home = tmp_path / ".venv"
    home.write_text("mine", encoding="utf-8")
    with pytest.raises(bootstrap.SetupError, match="is a file where hatchkit wants to keep its libraries"):
        bootstrap._make(str(home), "--clear")
    assert home.read_text(encoding="utf-8") == "mine"


@pytest.mark.skipif(os.name == "nt", reason="Windows has no SIGTERM to pass on")
def test_a_wish_to_end_is_passed_on_to_the_command_that_runs(tmp_path):
    inner = f"import os, time; open({str(tmp_path / 'pid')!r}, 'w').write(str(os.getpid())); time.sleep(60)"
    outer = (
        "import sys; from hatchkit.bootstrap import run_and_wait; "
        f"sys.exit(run_and_wait([sys.executable, '-c', {inner!r}]))"
    )
    ours = subprocess.Popen([sys.executable, "-c", outer], cwd=ROOT)
    deadline = time.monotonic() + 30
    while not ((tmp_path / "pid").exists() and (tmp_path / "pid").read_text()) and time.monotonic() < deadline:
        time.sleep(0.05)
    inside = int((tmp_path / "pid").read_text())
    ours.terminate()
    ours.wait(timeout=30)
    with pytest.raises(ProcessLookupError):
        os.kill(inside, 0)
