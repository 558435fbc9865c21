"""Style is checked where the tests are run, notebooks included."""

import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent


def test_ruff_finds_nothing():
    checked = subprocess.run(
        [sys.executable, "-m", "ruff", "check", "--no-cache", "."], cwd=ROOT, capture_output=True, text=True
    )
    assert checked.returncode == 0, checked.stdout


def test_ruff_would_format_nothing():
    checked = subprocess.run(
        [sys.executable, "-m", "ruff", "format", "--no-cache", "--check", "hatchkit", "tests"],
        cwd=ROOT,
        capture_output=True,
        text=True,
    )
    assert checked.returncode == 0, checked.stdout
