"""Is a workbook safe to hand to a fast reader? Size, far cells and repeats are checked before, not after.

A workbook of a few kilobytes can ask for gigabytes of memory (a lone cell in the last row and
column, a bomb of zeros, one cell repeated a million times), often by accident. What is too large is
refused in a sentence; a lone far cell costs only that cell.
"""

from __future__ import annotations

import posixpath
import re
import zipfile
import zlib
from dataclasses import dataclass, field
from xml.parsers import expat

from hatchkit.problems import HatchkitError

MOST_BYTES = 100_000_000  # unpacked; 50,000 rows x 12 columns are about 20 MB
MOST_ROWS = 100_000
MOST_COLUMNS = 200
MOST_CELLS = 4_000_000

#: A cell whose address is not one letter and at most five digits; without any, there are 26 x 99,999 at most.
_LARGE = re.compile(rb"<c[\s/>](?!r=\"[A-Z]\d{1,5}\")")
_ADDRESS = re.compile(rb"\sr=[\"']([A-Za-z]*)(\d+)[\"']")
_CELL_START = re.compile(rb"<(?:\w+:)?c[\s/>]")
_ROW_START = re.compile(rb"<(?:\w+:)?row\b")
_CELL = rb"<c\b[^>]*?\br=\"([A-Z]+)(\d+)\""
_ERROR_CELL = re.compile(_CELL + rb"[^>]*?\bt=\"e\"[^>]*>.*?<v>([^<]*)</v>", re.S)
_FORMULA_CELL = re.compile(_CELL + rb"[^>]*>\s*<f\b(?:[^>]*/>|.*?</f>)\s*(<v>[^<]*</v>|)", re.S)


class Refused(HatchkitError):
    """The file will not be opened; the code says why."""


def megabytes(size: int, most: int) -> dict:
    """The facts of a file that is too large."""
    return dict(mb=round(size / 1e6), most=round(most / 1e6))


@dataclass
class SheetFacts:
    """What one sheet of an .xlsx file holds, found without building it."""

    rows: int = 0
    columns: int = 0
    far: list[str] = field(default_factory=list)
    errors: list[tuple[int, str, str]] = field(default_factory=list)  # row from 1, letters of the column, what it shows
    unsaved: list[str] = field(default_factory=list)  # cells whose formula has no saved result
    merged: bool = False


def column_number(letters: str) -> int:
    """ "A" -> 1, "Z" -> 26, "AA" -> 27."""
    number = 0
    for letter in letters.upper():
        number = number * 26 + ord(letter) - 64
    return number


def open_parts(path) -> zipfile.ZipFile:
    """The zip file of a workbook, refused if it unpacks to more than `MOST_BYTES`."""
    try:
        parts = zipfile.ZipFile(path)
    except (zipfile.BadZipFile, NotImplementedError, ValueError, EOFError, IndexError) as error:
        raise Refused("book_damaged", {}) from error
    size = sum(part.file_size for part in parts.infolist())
    if size > MOST_BYTES:
        parts.close()
        raise Refused("book_unpacks_too_large", megabytes(size, MOST_BYTES))
    return parts


def read_part(parts: zipfile.ZipFile, name: str) -> bytes:
    """One part, unpacked; a part that is longer than it says, damaged or missing is refused."""
    try:
        return parts.read(name)
    except (
        zipfile.BadZipFile,
        KeyError,
        NotImplementedError,
        RuntimeError,
        EOFError,
        OSError,
        zlib.error,
    ) as error:
        raise Refused("book_not_whole", {}) from error


def sheet_facts(xml: bytes) -> SheetFacts:
    """Extent, far cells, error cells and unsaved formulas of one worksheet part.

    Parameters
    ----------
    xml : bytes
        The part ``xl/worksheets/sheetN.xml``.
    """
    start, end = xml.find(b"<sheetData"), xml.rfind(b"</sheetData>")
    facts = SheetFacts(rows=MOST_ROWS, columns=26, merged=b"<mergeCell " in xml[end:])
    if start < 0 or b":c" in xml or _LARGE.search(xml, start):  # ":c": cells may be written with a prefix
        _measure(facts, xml)
    if b't="e"' in xml:
        facts.errors = [
            (int(row), letters.decode(), text.decode("utf-8", "replace"))
            for letters, row, text in _ERROR_CELL.findall(xml)
        ]
    if b"<f" in xml:
        facts.unsaved = [
            letters.decode() + row.decode() for letters, row, value in _FORMULA_CELL.findall(xml) if not value
        ]
    return facts


def sheet_parts(parts: zipfile.ZipFile) -> dict[str, str]:
    """Title of each sheet -> name of its part as the file spells it, in the order of the tabs.

    A sheet whose part cannot be found is refused: a reader may find it all the same, and unchecked.
    """
    spelt = {name.lower(): name for name in parts.namelist()}
    targets = {
        link.get("Id"): link.get("Target", "")
        for link in _tags(read_part(parts, "xl/_rels/workbook.xml.rels"), "Relationship")
    }
    found = {}
    for sheet in _tags(read_part(parts, "xl/workbook.xml"), "sheet"):
        link = next((value for key, value in sheet.items() if key.endswith(":id")), None)
        target = posixpath.normpath(posixpath.join("/xl", targets.get(link, "")))[1:]
        name = spelt.get(target.lower()) or spelt.get(f"xl/{target}".lower())
        if name is None:
            raise Refused("book_sheet_missing", {})
        found[sheet.get("name", "")] = name
    return found


def _tags(xml: bytes, wanted: str) -> list[dict]:
    """Attributes of every element of that name, whatever its prefix."""
    seen = []

    def start(name, attributes):
        if name.rpartition(":")[2] == wanted:
            seen.append(attributes)

    _walk(xml, "book_sheets_unread", start)
    return seen


def _walk(xml: bytes, refused: str, start, end=None) -> None:
    """Call `start` and `end` for each element; without entities, which may unfold without end."""
    parser = expat.ParserCreate()
    parser.StartElementHandler, parser.EndElementHandler, parser.EntityDeclHandler = start, end, _no_entities
    try:
        parser.Parse(xml, True)
    except expat.ExpatError as error:
        raise Refused(refused, {}) from error


def _measure(facts: SheetFacts, xml: bytes) -> None:
    """Exact extent of a sheet with wide or far cells, told apart."""
    cells = [
        (int(row), column_number(letters.decode()), letters + row)
        for letters, row in set(_ADDRESS.findall(xml))
        if len(row) < 12
    ]
    near = [cell for cell in cells if cell[0] <= MOST_ROWS and cell[1] <= MOST_COLUMNS]
    far = sorted(cell for cell in cells if cell[0] > MOST_ROWS or cell[1] > MOST_COLUMNS)
    facts.far = [name.decode() for _, column, name in far if column][:5] or ["row " + str(far[0][0])] if far else []
    facts.rows = max((row for row, _, _ in near), default=0)
    facts.columns = max((column for _, column, _ in near), default=0)
    if len(cells) < len(_CELL_START.findall(xml)):
        # Cells without an address follow one another, row after row.
        rows = _ROW_START.split(xml)[1:]
        facts.rows = max(facts.rows, len(rows))
        facts.columns = max(facts.columns, max((len(_CELL_START.findall(row)) for row in rows), default=0))


def ods_cells(xml: bytes) -> None:
    """Refuse an .ods content part whose repeats unfold to more cells than hatchkit opens.

    Empty cells and rows at the end, which every program repeats to the edge of the sheet, cost nothing.
    """
    state = dict(row_repeat=1, width=0, used=0, rows=0, cells=0)

    def start(name, attributes):
        if name == "table:table":
            state.update(rows=0, widest=0)
        elif name == "table:table-row":
            state.update(row_repeat=_repeat(attributes, "table:number-rows-repeated"), width=0, used=0)
        elif name in ("table:table-cell", "table:covered-table-cell"):
            state["width"] += _repeat(attributes, "table:number-columns-repeated")
            if any(key.startswith("office:") and key.endswith("value") for key in attributes):
                state["used"] = state["width"]
        elif name == "text:p":
            state["used"] = state["width"]

    def end(name):
        if name == "table:table-row":
            state["rows"] += state["row_repeat"]
            if state["used"]:
                state["widest"] = max(state.get("widest", 0), state["used"])
                if state["rows"] > MOST_ROWS or state["rows"] * state["widest"] > MOST_CELLS:
                    raise Refused("book_repeats", dict(cells=state["rows"] * state["widest"]))

    _walk(xml, "book_table_unread", start, end)


def _repeat(attributes: dict, name: str) -> int:
    text = attributes.get(name, "1")
    return int(text) if text.isdigit() and len(text) < 10 else 1


def _no_entities(*_):
    raise Refused("book_entities", {})
