"""A sheet cannot hide from the guard by where it lies in the file, or by how its cells are spelt."""

import zipfile

import pytest
from sheet_files import ROW, TIDY, far_cell, said, tidy_season, write_xlsx

from hatchkit.records import workbook_guard
from hatchkit.records.folder import read_folder


def _hidden(path, part="xl/worksheets/sheet1.xml", cell=b"<c r=", quote=b'"'):
    """The workbook with its sheet under another part name, or its cells and links spelt another way."""
    with zipfile.ZipFile(path) as parts:
        kept = {name: parts.read(name) for name in parts.namelist()}
    kept[part] = kept.pop("xl/worksheets/sheet1.xml").replace(b"<c r=", cell)
    for name in ("xl/_rels/workbook.xml.rels", "[Content_Types].xml"):
        kept[name] = kept[name].replace(b"xl/worksheets/sheet1.xml", part.encode()).replace(b'"', quote)
    with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as parts:
        for name, data in kept.items():
            parts.writestr(name, data)


@pytest.mark.parametrize(
    "disguise",
    [
        {},
        {"cell": b"<c\tr="},
        {"cell": b"<c\nr="},
        {"part": "xl/sheets2/s.xml"},
        {"part": "xl/worksheets/sub/s.xml"},
        {"part": "XL/WORKSHEETS/sheet1.xml"},
        {"quote": b"'"},
    ],
)
def test_a_lone_far_cell_is_seen_however_the_file_spells_it(tmp_path, disguise):
    path = tmp_path / "batches.xlsx"
    far_cell(path, "XFD1048576")
    _hidden(path, **disguise)
    with workbook_guard.open_parts(path) as parts:
        (name,) = workbook_guard.sheet_parts(parts).values()
        assert workbook_guard.sheet_facts(workbook_guard.read_part(parts, name)).far == ["XFD1048576"]


def test_a_workbook_whose_sheet_cannot_be_found_is_refused(tmp_path):
    path = tmp_path / "book.xlsx"
    write_xlsx(tmp_path, [TIDY, ROW], name=path.name)
    with zipfile.ZipFile(path) as parts:
        kept = {name: parts.read(name) for name in parts.namelist() if "sheet1" not in name}
    with zipfile.ZipFile(path, "w") as parts:
        for name, data in kept.items():
            parts.writestr(name, data)
    assert said(read_folder(tidy_season(tmp_path)), "one of its sheets can't be found").shape[0] == 1
