"""What nbval does not see: an unexecuted cell is never compared, so each notebook must be whole and fresh."""

from pathlib import Path

import nbformat
import pytest

ROOT = Path(__file__).resolve().parent.parent
NOTEBOOKS = sorted(path for path in (ROOT / "notebooks").rglob("*.ipynb") if ".ipynb_checkpoints" not in path.parts)
IDS = [path.stem for path in NOTEBOOKS]
SURFACE = [path for path in NOTEBOOKS if path.name[0] in "012"]


def _cells(path, kind):
    return [cell for cell in nbformat.read(path, as_version=4).cells if cell.cell_type == kind]


@pytest.mark.parametrize("path", NOTEBOOKS, ids=IDS)
def test_every_code_cell_was_run_in_order_and_none_failed(path):
    code = _cells(path, "code")
    assert [cell.execution_count for cell in code] == list(range(1, len(code) + 1))
    assert not [output for cell in code for output in cell.outputs if output.output_type == "error"]
    assert not [cell for cell in code if "execution" in cell.metadata]


@pytest.mark.parametrize("path", NOTEBOOKS, ids=IDS)
def test_notebooks_stay_light(path):
    assert path.stat().st_size <= 500_000


@pytest.mark.parametrize("path", NOTEBOOKS, ids=IDS)
def test_no_stored_result_carries_a_path_of_one_machine(path):
    text = path.read_text(encoding="utf-8")
    assert not [root for root in ("/root/", "/home/", "/tmp/", "/work/", "C:\\\\") if root in text]


@pytest.mark.parametrize("path", SURFACE, ids=[path.stem for path in SURFACE])
def test_the_surface_tells_a_story_and_holds_no_logic(path):
    code = _cells(path, "code")
    assert "parameters" in code[0].metadata.get("tags", [])
    assert 'os.environ.get("HATCHKIT_FOLDER", "demo")' in code[0].source
    assert not [cell.source for cell in code if "def " in cell.source or "lambda" in cell.source]
    assert max(len(cell.source.splitlines()) for cell in code) <= 12


@pytest.mark.parametrize("path", NOTEBOOKS, ids=IDS)
def test_some_results_are_compared_by_nbval(path):
    assert [cell for cell in _cells(path, "code") if "nbval-check-output" in cell.metadata.get("tags", [])]


@pytest.mark.parametrize("path", NOTEBOOKS, ids=IDS)
def test_each_notebook_says_what_it_cannot_tell(path):
    lines = [line for cell in _cells(path, "markdown") for line in cell.source.splitlines()]
    assert any(line.startswith("#") and "What this cannot tell" in line for line in lines)


@pytest.mark.parametrize("path", NOTEBOOKS, ids=IDS)
def test_every_stored_picture_has_alt_text(path):
    for cell in _cells(path, "code"):
        for output in cell.outputs:
            data = output.get("data", {})
            assert "image/png" not in data, "show pictures with chart(), which keeps the alt text"
            assert data.get("text/html", "").count("<img ") == data.get("text/html", "").count('<img alt="')
