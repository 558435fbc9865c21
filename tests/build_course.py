"""Make the students' course notebooks from the teacher's, and store the results of both.

From the top of the checkout, after a change to a notebook in ``notebooks/teacher``::

    python tests/build_course.py

A teacher's notebook holds the answers. In the student's, each run of lines that end in ``# solution``
becomes ``answer = ...``, and cells tagged ``teacher`` are left out.
"""

import sys
from pathlib import Path

import nbformat
from nbformat.v4 import new_code_cell, new_markdown_cell, new_notebook

ROOT = Path(__file__).resolve().parent.parent
TEACHER = ROOT / "notebooks" / "teacher"
SOLUTION = "# solution"


def student_path(teacher: Path) -> Path:
    """``teacher/3_course_solutions.ipynb`` -> ``3_course.ipynb``."""
    return teacher.parent.parent / teacher.name.replace("_solutions", "")


def student_cells(page) -> list[tuple]:
    """(cell type, source, tags) of the student's notebook, cell by cell."""
    return [
        (cell.cell_type, _without_solution(cell.source), cell.metadata.get("tags", []))
        for cell in page.cells
        if "teacher" not in cell.metadata.get("tags", [])
    ]


def _without_solution(source: str) -> str:
    lines = []
    for line in source.splitlines():
        if not line.rstrip().endswith(SOLUTION):
            lines.append(line)
        elif lines[-1:] != ["answer = ..."]:
            lines.append("answer = ...")
    return "\n".join(lines)


def write_student(teacher: Path) -> Path:
    """Write the student's notebook, without results."""
    page = nbformat.read(teacher, as_version=4)
    make = {"code": new_code_cell, "markdown": new_markdown_cell}
    cells = [
        make[kind](source, metadata={"tags": tags} if tags else {}, id=f"cell-{number:02d}")
        for number, (kind, source, tags) in enumerate(student_cells(page))
    ]
    nbformat.write(new_notebook(cells=cells, metadata=page.metadata), student_path(teacher))
    return student_path(teacher)


if __name__ == "__main__":
    sys.path.insert(0, str(ROOT / "tests"))
    from refresh_notebooks import refresh

    wanted = sys.argv[1:]
    for path in sorted(TEACHER.glob("*_solutions.ipynb")):
        if not wanted or any(name in path.name for name in wanted):
            refresh(path)
            refresh(write_student(path))
