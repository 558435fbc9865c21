"""Sheets broken in many ways at once give the truth back, or a problem that names the place."""

import tempfile
from pathlib import Path

from broken_sheets import break_it, draw_truth, faults, write_sheet
from hypothesis import Phase, example, given, settings
from hypothesis import strategies as st

from hatchkit.problems import HatchkitError
from hatchkit.records.folder import read_folder
from hatchkit.records.workbook import read_grids

#: A failure is shown as it was drawn: to shrink it would write thousands of files.
DRAWN = (Phase.explicit, Phase.generate)


@settings(max_examples=50, deadline=None, derandomize=True, phases=DRAWN)
@given(st.data())
def test_a_broken_sheet_gives_the_truth_or_names_the_place(data):
    def pick(options):
        return data.draw(st.sampled_from(options))

    truth = draw_truth(pick)
    grid, place, headings, form = break_it(truth, pick)
    with tempfile.TemporaryDirectory() as folder:
        write_sheet(Path(folder), grid, form, pick)
        read = read_folder(Path(folder))
    assert faults(read, truth, place, headings) == []


@settings(max_examples=25, deadline=None, derandomize=True, phases=DRAWN)
@example(b"\xff\xfe", "batches.xls")
@given(st.binary(max_size=400), st.sampled_from(["batches.csv", "batches.xlsx", "batches.ods", "batches.xls"]))
def test_any_bytes_give_a_grid_or_a_problem_never_a_traceback(content, name):
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / name
        path.write_bytes(content)
        grids, problems = read_grids(path, file=name)
        assert grids or problems
        try:
            read_folder(folder)
        except HatchkitError as error:
            assert str(error)


@settings(max_examples=25, deadline=None, derandomize=True, phases=DRAWN)
@given(
    st.lists(
        st.lists(
            st.text(st.characters(exclude_characters="\0", exclude_categories=["Cs"]), max_size=12),
            min_size=6,
            max_size=6,
        ),
        min_size=1,
        max_size=8,
    )
)
def test_any_text_under_known_headings_is_a_batch_or_a_named_row(rows):
    import csv

    head = ["batch", "species", "set_at", "eggs_set", "hatched", "candle1_at"]
    with tempfile.TemporaryDirectory() as folder:
        with open(Path(folder) / "batches.csv", "w", newline="", encoding="utf-8") as handle:
            csv.writer(handle).writerows([head, *rows])
        read = read_folder(folder)
    told = set(read["problems"]["row"].dropna().astype(int)) | set(read["batches"]["row"].astype(int))
    filled = {number for number, row in enumerate(rows, 2) if any(cell.strip() for cell in row)}
    assert filled <= told
