"""Notebooks copied to a season folder start on that folder, hold no results, and are never overwritten."""

import subprocess
import sys

import nbformat

from hatchkit.start import surface


def test_copies_start_on_the_folder_they_lie_in(tmp_path):
    written = surface.copy_notebooks(tmp_path)
    assert "1_season_review.ipynb" in {path.name for path in written}
    for path in written:
        code = [cell for cell in nbformat.read(path, as_version=4).cells if cell.cell_type == "code"]
        assert not any(cell.outputs or cell.execution_count for cell in code)
    review = nbformat.read(tmp_path / "notebooks" / "1_season_review.ipynb", as_version=4)
    first = next(cell for cell in review.cells if cell.cell_type == "code")
    assert '"HATCHKIT_FOLDER", ".."' in first.source


def test_a_second_copy_changes_nothing(tmp_path):
    surface.copy_notebooks(tmp_path)
    mine = tmp_path / "notebooks" / "1_season_review.ipynb"
    mine.write_text("mine", encoding="utf-8")
    assert surface.copy_notebooks(tmp_path) == []
    assert mine.read_text(encoding="utf-8") == "mine"


def test_jupyterlab_opens_the_review_and_calls_nobody(tmp_path):
    surface.copy_notebooks(tmp_path)
    command = " ".join(surface.lab_command(tmp_path, port=8899, browser=False))
    assert "1_season_review.ipynb" in command
    assert "--no-browser" in command and "NeverCheckForUpdate" in command


def test_the_notebooks_of_jupyterlab_know_the_folder(tmp_path):
    assert surface.lab_environment(tmp_path)["HATCHKIT_FOLDER"] == str(tmp_path.resolve())


def test_the_notebooks_of_jupyterlab_find_this_very_hatchkit(tmp_path, monkeypatch):
    """Also from a checkout that is not installed, and beside what the person keeps in PYTHONPATH."""
    monkeypatch.setenv("PYTHONPATH", str(tmp_path / "mine"))
    told = subprocess.run(
        [sys.executable, "-c", "import hatchkit, sys; print(hatchkit.__file__); print(*sys.path)"],
        env=surface.lab_environment(tmp_path),
        cwd=tmp_path,
        capture_output=True,
        text=True,
        check=True,
    ).stdout.splitlines()
    assert told[0] == str(surface._HERE.parent / "__init__.py")
    assert str(tmp_path / "mine") in told[1]
