"""Students' notebooks are the teacher's without the answers, and cannot drift apart from them."""

import re
import runpy
from math import sqrt
from pathlib import Path
from types import SimpleNamespace

import matplotlib.pyplot as plt
import nbformat
import numpy as np
import pandas as pd
import pytest

from hatchkit import reference
from hatchkit.losses.proportions import interval
from hatchkit.simulate import seasons
from hatchkit.start.surface import copy_notebooks
from hatchkit.teach.exercises import EXERCISES, judge
from hatchkit.teach.judging import RIGHT
from hatchkit.teach.outline import sections

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
    assert IDS[:2] == ["3_course_solutions", "4_course_two_solutions"] and len(IDS) == 9


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
    assert "All parts found" not in text


@pytest.mark.parametrize("path", TEACHERS, ids=IDS)
def test_every_answer_of_the_teacher_is_right_and_every_blank_is_open(path):
    teacher, student = _read(path), _read(BUILD["student_path"](path))
    for page, start in ((teacher, r"(Right|All parts found)\. "), (student, "Not answered yet.")):
        said = [_printed(cell) for cell in _code(page) if "check(" in cell.source]
        assert len(said) == len(_checks(page))
        assert all(re.search(f"^{start}", text, re.MULTILINE) for text in said), said
        assert all("nbval-check-output" in cell.metadata["tags"] for cell in _code(page) if "check(" in cell.source)


def test_every_exercise_is_asked_once_and_they_are_numbered():
    pages = [_read(path) for path in TEACHERS]
    assert sorted(name for page in pages for name in _checks(page)) == sorted(EXERCISES)
    numbers = [
        [
            int(number)
            for cell in page.cells
            if cell.cell_type == "markdown"
            for number in re.findall(r"\*\*Exercise (\d+)\.\*\*", cell.source)
        ]
        for page in pages
    ]
    assert numbers[0] + numbers[1] == list(range(1, 32))
    for own in numbers[2:]:
        assert own == list(range(1, len(own) + 1)) and 6 <= len(own) <= 10


def test_the_outline_is_that_of_the_notebooks():
    for path in TEACHERS:
        page, lesson = _read(path), re.sub(r"^(?:lesson_)?\d_|_solutions$", "", path.stem)
        rows = sections(lesson)
        begun = [name for cell in _code(page) for name in re.findall(r'begin\("(\w+)"', cell.source)]
        assert begun == list(rows["section"])
        assert [name for row in rows["exercises"] for name in row] == _checks(page)
        heads = [
            line[3:]
            for cell in page.cells
            for line in cell.source.splitlines()
            if cell.cell_type == "markdown" and re.match(r"## \d", line)
        ]
        assert heads == list(rows["title"])
        if path.stem.startswith("lesson_"):
            assert 30 <= rows["minutes"].sum() <= 45


@pytest.mark.parametrize("path", TEACHERS, ids=IDS)
def test_cells_are_short_and_each_follows_a_text(path):
    cells = _read(path).cells
    code = [cell for cell in cells if cell.cell_type == "code"]
    assert len(code) <= 45
    assert max(len(cell.source.splitlines()) for cell in code[1:]) <= 8
    alone = sum(one.cell_type == two.cell_type == "code" for one, two in zip(cells, cells[1:], strict=False))
    assert alone <= len(code) / 4


@pytest.mark.parametrize("path", TEACHERS, ids=IDS)
def test_every_answer_is_still_right_for_somebody_who_goes_back_to_it(path, capsys):
    cells, names = [cell.source for cell in _code(_read(path))], {"display": lambda shown: None}
    for source in cells:
        exec(source, names)
    plt.close("all")
    capsys.readouterr()
    for source in cells:
        if "check(" in source:
            exec(source, names)
            assert re.search(r"^(Right|All parts found)\. ", capsys.readouterr().out, re.MULTILINE), source


def _text(number):
    return " ".join(" ".join(cell.source for cell in _read(TEACHERS[number]).cells).split())


def test_letters_are_asked_for_between_quotation_marks():
    for number in (0, 1):
        cells = _read(TEACHERS[number]).cells
        asked = [
            before.source
            for before, cell in zip(cells, cells[1:], strict=False)
            if re.search(r'^answer = "[a-c]"', cell.source, re.MULTILINE)
        ]
        assert len(asked) == (2, 3)[number]
        assert all('"a"' in text for text in asked), asked


def test_figures_told_in_part_one_are_those_that_come_out():
    from scipy.stats import beta

    text = _text(0)
    assert 100 * interval(0, 72)[1] == pytest.approx(5.07, abs=0.005)
    assert 1.959964**2 / 0.05 - 1.959964**2 == pytest.approx(72.99, abs=0.005)
    assert "n > 72.99, so 73 eggs" in text
    ends = np.array([beta.ppf(0.025, 9, 8 + 1), beta.ppf(0.975, 9 + 1, 8)])
    low, high = ends / (1 - ends) * (111 * 11) / (120 * 7)
    ratio = (9 / 120 / 7) / (8 / 111 / 11)
    assert f"{ratio:.1f} times as dangerous" in text
    assert f"reaches from {low:.1f} to {high:.1f}" in text
    low, high = 40 * np.array(interval(3, 10))
    assert f"so {low:.0f} to {high:.0f} eggs, about {low / 2:.0f} to {high / 2:.0f} % of all" in text


def _difference(died, eggs, other_died, other_eggs):
    """Newcombe's interval of a difference between two shares, in points (Statistics in Medicine 1998, 17:873)."""
    one, two = died / eggs, other_died / other_eggs
    (low, high), (other_low, other_high) = interval(died, eggs), interval(other_died, other_eggs)
    return (
        100 * (one - two - sqrt((one - low) ** 2 + (other_high - two) ** 2)),
        100 * (one - two + sqrt((high - one) ** 2 + (two - other_low) ** 2)),
    )


def test_figures_told_in_part_two_are_those_that_come_out():
    text = _text(1)
    (low, high), (lowest, highest) = _difference(3, 48, 10, 168), _difference(31, 168, 7, 36)
    assert f"from about −{-low:.0f} to +{high:.0f} points (stored short)" in text
    assert f"from −{-lowest:.0f} to +{highest:.0f} points (stored long)" in text
    assert "did no worse" not in text
    assert "luck is not a good explanation" not in text


def test_the_stage_of_the_opened_egg_is_that_of_the_kit():
    mid = reference.load("stage_limits").query("limits == 'weeks' and stage == 'mid'").iloc[0]
    assert f"*after day {mid['after']:.0f} and by day {mid['to']:.0f}*" in _text(0)


def test_temperatures_are_told_in_both_units():
    told = re.findall(
        r"\d °C\b(?! \(\d+(?:\.\d)? °F\))",
        " ".join(cell.source for cell in _read(TEACHERS[1]).cells if cell.cell_type == "markdown").replace("**", ""),
    )
    assert not told


class _Planted(Exception):
    """Thrown when a case's cause has been chosen, so that no season need be drawn."""

    def __init__(self, cause, batch, touched):
        super().__init__(cause)
        self.sealed = SimpleNamespace(
            cause=cause, batch=batch, causes=pd.DataFrame(touched, columns=["batch"]), words=lambda: f"Batch {batch}."
        )


@pytest.fixture
def cases(monkeypatch):
    """What is sealed in the cases 0 to 99."""
    real = seasons.causes.plant

    def plant(rng, plan, *, cause, severity, batch):
        _, touched = real(rng, plan, cause=cause, severity=severity, batch=batch)
        raise _Planted(cause, batch, [row["batch"] for row in touched])

    def sealed(number):
        with pytest.raises(_Planted) as caught:
            seasons.draw_season(seed=number)
        return caught.value.sealed

    monkeypatch.setattr(seasons.causes, "plant", plant)
    return [sealed(number) for number in range(100)]


def test_what_is_said_of_a_case_holds_for_every_number(cases):
    hint = reference.load("exercise_words").query("exercise == 'case' and answer == 'other'")["words"].item()
    for claim in ("Something went wrong", "with one fault hidden", "not in the others"):
        assert claim not in _text(1) + hint
    assert "In some there is none" in _text(1)
    assert "others too" in _text(1)
    assert any(sealed.cause == "none" for sealed in cases)
    for sealed in cases:
        touched = set(sealed.causes["batch"]) - {sealed.batch}
        verdict = judge("case", sealed.cause, sealed)
        named = re.search(r"The fault touched batch(?:es)? (.*) as well", verdict.words)
        assert verdict.state == RIGHT
        assert set(re.findall(r"\d+", named[1]) if named else []) == touched
        assert sealed.causes.empty == (sealed.cause == "none")


def test_students_do_not_get_the_teachers_notebooks(tmp_path):
    written = copy_notebooks(tmp_path)
    assert {"0_your_records.ipynb", "3_course.ipynb", "4_course_two.ipynb"} <= {path.name for path in written}
    assert not [path for path in tmp_path.rglob("*") if "teacher" in path.name or "solutions" in path.name]


def test_copied_notebooks_name_their_kernel_so_that_jupyterlab_need_not_ask(tmp_path):
    for path in copy_notebooks(tmp_path):
        assert _read(path).metadata["kernelspec"]["name"] == "python3"
