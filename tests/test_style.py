"""Style is checked where the tests are run, notebooks included."""

import os
import subprocess
import sys
import tempfile
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent


def test_ruff_finds_nothing():
    checked = subprocess.run(
        [sys.executable, "-m", "ruff", "check", "--no-cache", "."], cwd=ROOT, capture_output=True, text=True
    )
    assert checked.returncode == 0, checked.stdout


def test_types_hold():
    """The names, arguments and attributes of the kit's own functions; how strict, pyproject.toml says."""
    kept = Path(tempfile.gettempdir()) / f"hatchkit-mypy-{os.getuid() if hasattr(os, 'getuid') else 'me'}"
    checked = subprocess.run(
        [sys.executable, "-m", "mypy", "--cache-dir", str(kept)], cwd=ROOT, capture_output=True, text=True
    )
    assert checked.returncode == 0, checked.stdout


def test_nothing_is_kept_for_the_tests_alone():
    tool = [sys.executable, "tests/benchmarks/only_tests_call.py"]
    told = subprocess.run(tool, cwd=ROOT, capture_output=True, text=True, check=True).stdout
    assert told == "0 functions and classes\n"


def test_ruff_would_format_nothing():
    checked = subprocess.run(
        [sys.executable, "-m", "ruff", "format", "--no-cache", "--check", "hatchkit", "tests"],
        cwd=ROOT,
        capture_output=True,
        text=True,
    )
    assert checked.returncode == 0, checked.stdout
