"""A file with tables in it -> grids of cells, row 1 first, with the row numbers that the person sees."""

from __future__ import annotations

import csv
import io
import re
from dataclasses import dataclass, field
from pathlib import Path

from hatchkit.problems import problem
from hatchkit.records import workbook_guard as guard
from hatchkit.records.code_pages import decode
from hatchkit.records.plain_text import rows_of
from hatchkit.records.workbook_guard import Refused

WORKBOOKS = (".xlsx", ".xlsm", ".ods", ".xls")
TEXTS = (".csv", ".tsv")
#: A text that may hold a table, a form or a diary; read where a season holds none of the others.
PLAIN = ".txt"
MOST_TEXT_BYTES = 30_000_000
_OLD_FORMAT = b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1"


@dataclass
class Grid:
    """The cells of one sheet: a list of rows, each a list of values; "" where a cell is empty."""

    file: str
    sheet: str
    cells: list[list]
    problems: list[dict] = field(default_factory=list)


def read_grids(path, *, file: str) -> tuple[list[Grid], list[dict]]:
    """Every sheet of a workbook, or the one table of a text file.

    Parameters
    ----------
    path : Path
    file : str
        Name of the file as messages give it.

    Returns
    -------
    grids : list of Grid
    problems : list of dict
        A file that can't be read is one row of severity "lost"; nothing is raised.
    """
    path = Path(path)
    try:
        if not path.is_file():
            raise Refused("book_not_ordinary", {})
        reader = _read_workbook if path.suffix.lower() in WORKBOOKS else _read_text
        grids = reader(path, file)
    except PermissionError:
        return [], [_lost(file, Refused("book_in_use", {}))]
    except Refused as refused:
        return [], [_lost(file, refused)]
    except OSError as error:
        return [], [_lost(file, Refused("book_unreadable", dict(why=error.strerror)))]
    return grids, [row for grid in grids for row in grid.problems]


#: How a refused file is put right, where saving it anew would not help.
_FIXES = {
    "book_in_use": "close",
    "book_unreadable": "copy",
    "book_password": "password",
    "book_password_or_old": "password",
} | dict.fromkeys(
    (
        "book_too_large",
        "book_unpacks_too_large",
        "book_text_too_large",
        "book_spans",
        "book_repeats",
        "book_too_many",
    ),
    "smaller",
)


def _lost(file: str, refused: Refused) -> dict:
    facts = dict(why=refused.reason(), fix=_FIXES.get(refused.code, "anew"))
    return problem("lost", file=file, code="file_refused", facts=facts)


def _read_workbook(path: Path, file: str) -> list[Grid]:
    size = path.stat().st_size
    if size > guard.MOST_BYTES:
        raise Refused("book_too_large", guard.megabytes(size, guard.MOST_BYTES))
    with open(path, "rb") as handle:
        head = handle.read(8)
    if not head:
        raise Refused("book_empty", {})
    if head == _OLD_FORMAT:
        if path.suffix.lower() != ".xls":
            raise Refused("book_password_or_old", {})
        return _fast_grids(path, file, None)
    if head[:2] != b"PK":
        if path.suffix.lower() == ".xls":
            return _read_text(path, file)
        raise Refused("book_damaged", {})
    with guard.open_parts(path) as parts:
        names = parts.namelist()
        if "content.xml" in names:
            guard.ods_cells(guard.read_part(parts, "content.xml"))
            facts = None
        else:
            if "xl/workbook.xml" not in names:
                raise Refused("book_damaged", {})
            if "xl/sharedStrings.xml" in names:
                guard.read_part(parts, "xl/sharedStrings.xml")
            facts = {
                title: guard.sheet_facts(guard.read_part(parts, name))
                for title, name in guard.sheet_parts(parts).items()
            }
    if facts is not None:
        _refuse_dense(facts)
        if any(fact.far for fact in facts.values()):
            return _careful_grids(path, file, facts)
    return _fast_grids(path, file, facts)


def _refuse_dense(facts: dict) -> None:
    for title, fact in facts.items():
        if fact.rows * fact.columns > guard.MOST_CELLS:
            raise Refused("book_spans", dict(sheet=title, rows=fact.rows, columns=fact.columns))


def _fast_grids(path: Path, file: str, facts) -> list[Grid]:
    import python_calamine as calamine

    try:
        book = calamine.load_workbook(str(path))
    except calamine.PasswordError as error:
        raise Refused("book_password", {}) from error
    except Exception as error:  # the reader's own kinds of error differ by version
        if facts is not None:
            return _careful_grids(path, file, facts)
        raise Refused("book_damaged", {}) from error
    grids = []
    for meta in book.sheets_metadata:
        if meta.typ != calamine.SheetTypeEnum.WorkSheet:
            continue
        try:
            sheet = book.get_sheet_by_name(meta.name)
            cells = sheet.to_python(skip_empty_area=False)
        except Exception as error:
            raise Refused("book_sheet_damaged", dict(sheet=meta.name)) from error
        grid = Grid(file, meta.name, cells)
        fact = (facts or {}).get(meta.name)
        if fact is None or fact.merged:
            _fill_merged(cells, sheet.merged_cell_ranges or [])
        if fact is not None:
            _mark_cells(grid, fact)
        if meta.visible != calamine.SheetVisibleEnum.Visible and any(map(any, cells)):
            grid.problems.append(problem("note", file=file, sheet=meta.name, code="book_sheet_hidden"))
        grids.append(grid)
    return grids


def _fill_merged(cells: list[list], ranges) -> None:
    """Write the value of a merged cell into every row it spans (only downwards: titles stay as they are)."""
    for (top, left), (bottom, _) in ranges:
        if bottom <= top or top >= len(cells) or left >= len(cells[top]):
            continue
        for row in cells[top + 1 : bottom + 1]:
            if left < len(row) and row[left] == "":
                row[left] = cells[top][left]


def _mark_cells(grid: Grid, fact) -> None:
    """Problem rows for cells that show an error and for formulas whose result was never saved."""
    for row, letters, text in fact.errors[:50]:
        grid.problems.append(
            problem(
                "doubtful",
                file=grid.file,
                sheet=grid.sheet,
                row=row,
                column=letters,
                code="book_cell_error",
                facts=dict(shown=text),
            )
        )
    if fact.unsaved:
        letters, row = re.fullmatch(r"([A-Z]+)(\d+)", fact.unsaved[0]).groups()
        grid.problems.append(
            problem(
                "doubtful",
                file=grid.file,
                sheet=grid.sheet,
                row=int(row),
                column=letters,
                code="book_cells_unsaved",
                facts=dict(count=len(fact.unsaved), cell=fact.unsaved[0]),
            )
        )
    for row, letters, text in fact.errors:
        cells, column = grid.cells[row - 1] if row <= len(grid.cells) else [], guard.column_number(letters)
        if column <= len(cells) and cells[column - 1] == text:
            cells[column - 1] = ""


def _careful_grids(path: Path, file: str, facts: dict) -> list[Grid]:
    """The bounded reader for workbooks with far cells: the table is read, the lone far cell is named."""
    import openpyxl

    try:
        book = openpyxl.load_workbook(path, read_only=True, data_only=True)
    except Exception as error:
        raise Refused("book_damaged", {}) from error
    grids = []
    try:
        for sheet in book.worksheets:
            fact = facts.get(sheet.title, guard.SheetFacts())
            rows = sheet.iter_rows(max_row=max(fact.rows, 1), max_col=max(fact.columns, 1), values_only=True)
            cells = [["" if value is None else value for value in row] for row in rows]
            grid = Grid(file, sheet.title, cells)
            if fact.far:
                grid.problems.append(
                    problem(
                        "doubtful",
                        file=file,
                        sheet=sheet.title,
                        code="book_cell_far",
                        facts=dict(cell=fact.far[0], rows=fact.rows, columns=fact.columns),
                    )
                )
            _mark_cells(grid, fact)
            grids.append(grid)
    except Exception as error:
        raise Refused("book_damaged", {}) from error
    finally:
        book.close()
    return grids


def _read_text(path: Path, file: str) -> list[Grid]:
    size = path.stat().st_size
    if size > MOST_TEXT_BYTES:
        raise Refused("book_text_too_large", guard.megabytes(size, MOST_TEXT_BYTES))
    with open(path, "rb") as handle:
        raw = handle.read(MOST_TEXT_BYTES)  # no more, even if the file grows meanwhile
    if not raw.strip():
        raise Refused("book_empty", {})
    text = decode(raw)
    if text is None:
        raise Refused("book_not_text", {})
    if not text.strip():
        raise Refused("book_empty", {})  # nothing but the mark of its encoding
    csv.field_size_limit(1_000_000)
    try:
        if path.suffix.lower() == PLAIN:
            cells = rows_of(text)
        else:
            cells = list(csv.reader(io.StringIO(text, newline=None), delimiter=guess_separator(text)))
    except csv.Error as error:
        raise Refused("book_not_table", {}) from error
    if any(len(row) > guard.MOST_COLUMNS for row in cells) or len(cells) > guard.MOST_ROWS:
        raise Refused("book_too_many", dict(rows=guard.MOST_ROWS, columns=guard.MOST_COLUMNS))
    width = max(map(len, cells))
    cells = [[cell.strip() for cell in row] + [""] * (width - len(row)) for row in cells]
    return [Grid(file, "", cells)]


def guess_separator(text: str) -> str:
    """The separator that cuts most lines of the head into one and the same number of cells (at least two)."""
    # Only line ends part lines here, as for the reader: splitlines() would also cut at other control marks.
    lines = [line for line in re.split(r"\r\n|\r|\n", text[:65536]) if line.strip()][:200]
    best, best_score = ",", (0, 0)
    for separator in (";", "\t", ",", "|"):
        widths = [len(row) for row in csv.reader(lines, delimiter=separator)]
        several = [width for width in widths if width > 1]
        if several:
            common = max(set(several), key=lambda width: (several.count(width), width))
            score = (several.count(common), common)
            # A decimal comma also cuts lines, but not each into the same number of cells.
            if score > best_score:
                best, best_score = separator, score
    return best
