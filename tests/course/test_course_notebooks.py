"""Students' notebooks are the teacher's without the answers, and cannot drift apart from them."""

import re
import runpy
from pathlib import Path

import nbformat
import pytest

from hatchkit.course_exercises import EXERCISES
from hatchkit.surface import copy_notebooks

ROOT = Path(__file__).resolve().parents[2]
BUILD = runpy.run_path(str(ROOT / "tests" / "build_course.py"))
TEACHERS = sorted((ROOT / "notebooks" / "teacher").glob("*.ipynb"))
IDS = [path.stem for path in TEACHERS]


def _read(path):
    return nbformat.read(path, as_version=4)


def _code(page):
    return [cell for cell in page.cells if cell.cell_type == "code"]


def _checks(page):
    return [name for cell in _code(page) for name in re.findall(r'check\("(\w+)"', cell.source)]


def _printed(cell):
    return "".join(output.get("text", "") for output in cell.outputs)


def test_there_is_a_course():
    assert IDS == ["3_course_solutions", "4_course_two_solutions"]


@pytest.mark.parametrize("path", TEACHERS, ids=IDS)
def test_the_students_copy_is_the_teachers_without_answers(path):
    student = _read(BUILD["student_path"](path))
    cells = [(cell.cell_type, cell.source, cell.metadata.get("tags", [])) for cell in student.cells]
    assert cells == BUILD["student_cells"](_read(path))


@pytest.mark.parametrize("path", TEACHERS, ids=IDS)
def test_no_answer_is_left_in_the_students_copy(path):
    text = BUILD["student_path"](path).read_text(encoding="utf-8")
    assert BUILD["SOLUTION"] not in text
    assert "*Teacher.*" not in text
    assert "Right. " not in text


@pytest.mark.parametrize("path", TEACHERS, ids=IDS)
def test_every_answer_of_the_teacher_is_right_and_every_blank_is_open(path):
    teacher, student = _read(path), _read(BUILD["student_path"](path))
    for page, start in ((teacher, "Right. "), (student, "Not answered yet.")):
        said = [_printed(cell) for cell in _code(page) if "check(" in cell.source]
        assert len(said) == len(_checks(page))
        assert all(re.search(f"^{start}", text, re.MULTILINE) for text in said), said
        assert all("nbval-check-output" in cell.metadata["tags"] for cell in _code(page) if "check(" in cell.source)


def test_every_exercise_is_asked_once_and_they_are_numbered():
    pages = [_read(path) for path in TEACHERS]
    assert sorted(name for page in pages for name in _checks(page)) == sorted(EXERCISES)
    words = " ".join(cell.source for page in pages for cell in page.cells if cell.cell_type == "markdown")
    assert [int(number) for number in re.findall(r"\*\*Exercise (\d+)\.\*\*", words)] == list(range(1, 32))


@pytest.mark.parametrize("path", TEACHERS, ids=IDS)
def test_cells_are_short_and_each_follows_a_text(path):
    cells = _read(path).cells
    code = [cell for cell in cells if cell.cell_type == "code"]
    assert len(code) <= 45
    assert max(len(cell.source.splitlines()) for cell in code[1:]) <= 8
    alone = sum(one.cell_type == two.cell_type == "code" for one, two in zip(cells, cells[1:], strict=False))
    assert alone <= len(code) / 4


def test_students_do_not_get_the_teachers_notebooks(tmp_path):
    written = copy_notebooks(tmp_path)
    assert {"0_your_records.ipynb", "3_course.ipynb", "4_course_two.ipynb"} <= {path.name for path in written}
    assert not [path for path in tmp_path.rglob("*") if "teacher" in path.name or "solutions" in path.name]


def test_copied_notebooks_name_their_kernel_so_that_jupyterlab_need_not_ask(tmp_path):
    for path in copy_notebooks(tmp_path):
        assert _read(path).metadata["kernelspec"]["name"] == "python3"
