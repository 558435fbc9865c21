"""First-use set-up: plain sentences where it cannot go on. (That it goes on is what CI itself shows.)"""

import subprocess
import sys
from pathlib import Path

import pytest

from hatchkit import bootstrap

ROOT = Path(__file__).resolve().parent.parent


def test_a_python_that_has_everything_does_the_work_itself():
    assert bootstrap.run_in_own_environment(["review"]) is None


def test_an_old_python_gets_one_plain_sentence(monkeypatch):
    monkeypatch.setattr(bootstrap.sys, "version_info", (3, 9, 1))
    with pytest.raises(bootstrap.SetupError, match="needs Python 3.11 or newer; this is Python 3.9"):
        bootstrap.run_in_own_environment([])


def test_files_that_an_old_python_must_read_use_old_syntax():
    import ast

    for name in ("__init__", "__main__", "bootstrap"):
        ast.parse((ROOT / "hatchkit" / f"{name}.py").read_text(), feature_version=(3, 7))


def test_no_network_is_said_plainly(tmp_path, monkeypatch):
    (tmp_path / "pyproject.toml").write_text("[project]\n")
    monkeypatch.setattr(bootstrap, "_make", lambda home: Path(home).mkdir())
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


def test_the_package_runs_as_a_module():
    said = subprocess.run([sys.executable, "-m", "hatchkit", "--version"], capture_output=True, text=True, cwd=ROOT)
    assert said.returncode == 0
    assert said.stdout.startswith("hatchkit ")
