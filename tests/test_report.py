"""One notebook run on one folder becomes one page that stands alone."""

import json
import os
import re
import subprocess
import sys
from contextlib import nullcontext
from pathlib import Path

import nbformat
import pytest
from nbformat.v4 import new_code_cell, new_markdown_cell, new_notebook

from hatchkit import folders, report
from hatchkit.problems import HatchkitError

ROOT = Path(__file__).resolve().parent.parent
PICTURE = """
from hatchkit.figures.chart import chart
from hatchkit.figures.style import axes
ax = axes(size=(3, 2)); ax.plot([1, 2]); chart(ax, alt="A line that rises from 1 to 2.")
"""


@pytest.fixture
def notebook(tmp_path):
    def write(*cells):
        page = new_notebook(cells=[new_markdown_cell("# A <test> page"), *cells])
        path = tmp_path / "page.ipynb"
        nbformat.write(page, path)
        return path
    return write


def test_the_page_stands_alone_and_shows_no_code(tmp_path, notebook):
    path = notebook(new_code_cell("import os\nprint('unit', os.environ['HATCHKIT_UNIT'])"), new_code_cell(PICTURE))
    before = path.read_bytes()
    out = report.write_report(tmp_path, path, tmp_path / "out.html", unit="f")
    html = out.read_text(encoding="utf-8")
    assert "unit F" in html
    assert "os.environ" not in html and "figures.chart" not in html
    assert 'alt="A line that rises from 1 to 2."' in html
    assert not re.search(r"<script|<link|src=\"(?!data:)|url\(", html)
    assert "<title>A &lt;test&gt; page</title>" in html
    assert '<html lang="en">' in html and "Content-Security-Policy" in html
    assert path.read_bytes() == before


def test_the_folder_reaches_the_notebook_but_not_our_own_environment(tmp_path, notebook):
    path = notebook(new_code_cell("import os\nprint(os.environ['HATCHKIT_FOLDER'], os.environ['HATCHKIT_BATCH'])"))
    html = report.write_report(tmp_path, path, tmp_path / "out.html", batch="B 7").read_text(encoding="utf-8")
    assert f"{tmp_path.resolve()} B 7" in html
    assert "HATCHKIT_FOLDER" not in os.environ


def test_an_error_in_the_kit_s_words_stays_in_those_words(tmp_path, notebook):
    path = notebook(new_code_cell("import hatchkit as hk\nraise hk.HatchkitError('The folder is empty.')"))
    with pytest.raises(HatchkitError, match="^The folder is empty.$"):
        report.write_report(tmp_path, path, tmp_path / "out.html")


def test_another_error_is_one_sentence_without_a_traceback(tmp_path, notebook):
    path = notebook(new_code_cell("1 / 0"))
    with pytest.raises(HatchkitError, match="did not expect .ZeroDivisionError") as caught:
        report.write_report(tmp_path, path, tmp_path / "out.html")
    assert "\n" not in str(caught.value)


def test_a_place_that_cannot_be_written_to_is_said(tmp_path, notebook):
    with pytest.raises(HatchkitError, match="cannot be written"):
        report.write_report(tmp_path, notebook(), tmp_path / "nowhere" / "out.html")


@pytest.mark.parametrize("name", ["batches.csv", "season.toml", "sensors/a.html"])
def test_a_report_is_never_written_over_the_season(tmp_path, notebook, name):
    (tmp_path / "sensors").mkdir()
    (tmp_path / name).write_text("mine", encoding="utf-8")
    with pytest.raises(HatchkitError):
        report.write_report(tmp_path, notebook(), tmp_path / name)
    assert (tmp_path / name).read_text(encoding="utf-8") == "mine"


def test_a_kernel_of_the_person_s_own_does_not_come_in_between(tmp_path, notebook, monkeypatch):
    own = tmp_path / "kernels" / "python3"
    own.mkdir(parents=True)
    spec = dict(argv=[sys.executable, "-c", "raise SystemExit(1)"], display_name="mine", language="python")
    (own / "kernel.json").write_text(json.dumps(spec), encoding="utf-8")
    monkeypatch.setenv("JUPYTER_PATH", str(tmp_path))
    path = notebook(new_code_cell("import sys\nprint('Python:', sys.executable)"))
    html = report.write_report(tmp_path, path, tmp_path / "out.html").read_text(encoding="utf-8")
    assert f"Python: {sys.executable}" in html


def test_a_kernel_that_does_not_start_is_one_sentence_and_no_traceback_follows(tmp_path, notebook):
    (tmp_path / "ipykernel_launcher.py").write_text("raise SystemExit(1)", encoding="utf-8")
    code = ("import sys; from hatchkit.report import write_report; from hatchkit.problems import HatchkitError\n"
            "try: write_report(*sys.argv[1:])\nexcept HatchkitError as error: print(error)")
    run = subprocess.run([sys.executable, "-c", code, str(tmp_path), str(notebook(new_code_cell("1"))), "out.html"],
                         env=folders.environment(PYTHONPATH=os.pathsep.join([str(ROOT), str(tmp_path)])),
                         cwd=tmp_path, capture_output=True, text=True)
    assert run.stdout.startswith("The report was not begun") and len(run.stdout.splitlines()) == 1
    assert run.stderr == ""


def test_an_unknown_notebook_is_said(tmp_path):
    with pytest.raises(HatchkitError, match="no notebook 'poem'"):
        report.write_report(tmp_path, "poem", tmp_path / "out.html")


def test_progress_counts_the_cells(tmp_path, notebook):
    seen = []
    path = notebook(new_code_cell("1"), new_code_cell("2"))
    report.write_report(tmp_path, path, tmp_path / "out.html", progress=lambda *step: seen.append(step))
    assert seen == [(1, 2), (2, 2)]


def test_the_kit_s_own_notebooks_are_found_by_name():
    assert report.notebook_path("1_season_review").name == "1_season_review.ipynb"
    assert isinstance(report.notebook_path("1_season"), Path)


def test_a_cell_finds_nothing_that_it_did_not_import(tmp_path, notebook):
    path = notebook(new_code_cell("print(sorted(set(globals()) & {'pandas', 'matplotlib', 'name'}))"))
    assert "[]" in report.write_report(tmp_path, path, tmp_path / "out.html").read_text(encoding="utf-8")


@pytest.mark.skipif(os.name == "nt", reason="asks the process table the POSIX way")
@pytest.mark.parametrize("ending", ["", "1 / 0"])
def test_no_kernel_is_left_behind(tmp_path, notebook, ending):
    path = notebook(new_code_cell(f"import os\nfrom pathlib import Path\n"
                                  f"Path({str(tmp_path / 'pid')!r}).write_text(str(os.getpid()))\n{ending}"))
    with nullcontext() if not ending else pytest.raises(HatchkitError):
        report.write_report(tmp_path, path, tmp_path / "out.html")
    with pytest.raises(ProcessLookupError):
        os.kill(int((tmp_path / "pid").read_text(encoding="utf-8")), 0)


def test_a_kernel_that_dies_is_one_sentence(tmp_path, notebook):
    path = notebook(new_code_cell("import os\nos._exit(1)"))
    with pytest.raises(HatchkitError, match="stopped before it was done"):
        report.write_report(tmp_path, path, tmp_path / "out.html")
