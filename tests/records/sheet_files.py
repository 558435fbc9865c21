"""Files as people keep them, written for the tests of sheets; everything in them is invented."""

import zipfile
from xml.sax.saxutils import escape

import openpyxl
import pandas as pd

TIDY = ["batch", "species", "incubator", "set_at", "eggs_set", "candle1_at", "clear1", "dead1", "transfer_at"]
TIDY += ["clear3", "dead3", "taken_off_at", "hatched", "culled", "pipped_dead"]
ROW = ["B1", "hen", "A", "2026-03-01 18:00", 30, "2026-03-08 12:00", 3, 1, "2026-03-19 12:00"]
ROW += [0, 1, "2026-03-22 20:00", 22, 1, 3]


def write_csv(folder, lines, name="batches.csv", encoding="utf-8"):
    """Lines of text as a file in the folder; gives the folder back."""
    (folder / name).write_bytes("\n".join(lines).encode(encoding))
    return folder


def write_xlsx(folder, rows, title="batches", name="batches.xlsx"):
    """Rows as a workbook of one sheet; gives the folder back."""
    book = openpyxl.Workbook()
    book.active.title = title
    for row in rows:
        book.active.append(row)
    book.save(folder / name)
    return folder


def write_ods(path, rows, repeat=""):
    """Rows as a minimal .ods file after the open standard; `repeat` goes into each cell's tag."""
    urn = "urn:oasis:names:tc:opendocument:xmlns:"
    body = "".join(
        f"<table:table-row>{''.join(_ods_cell(cell, repeat) for cell in row)}</table:table-row>" for row in rows
    )
    # Every spreadsheet program fills up to the edge of the sheet with repeated empty cells.
    body += (
        '<table:table-row table:number-rows-repeated="1048000">'
        '<table:table-cell table:number-columns-repeated="16384"/></table:table-row>'
    )
    xml = (
        f'<?xml version="1.0" encoding="UTF-8"?><office:document-content xmlns:office="{urn}office:1.0" '
        f'xmlns:text="{urn}text:1.0" xmlns:table="{urn}table:1.0" office:version="1.2"><office:body>'
        f'<office:spreadsheet><table:table table:name="batches">{body}</table:table></office:spreadsheet>'
        "</office:body></office:document-content>"
    )
    manifest = f'<?xml version="1.0"?><manifest:manifest xmlns:manifest="{urn}manifest:1.0"/>'
    with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as parts:
        parts.writestr("mimetype", "application/vnd.oasis.opendocument.spreadsheet")
        parts.writestr("content.xml", xml)
        parts.writestr("META-INF/manifest.xml", manifest)


def _ods_cell(value, repeat):
    kind = (
        f'office:value-type="float" office:value="{value}"'
        if isinstance(value, (int, float))
        else 'office:value-type="string"'
    )
    return f"<table:table-cell {kind}{repeat}><text:p>{escape(str(value))}</text:p></table:table-cell>"


def said(read, *words):
    """The problem rows whose text holds all the words."""
    problems = read["problems"] if isinstance(read, dict) else read.problems
    text = problems[["file", "sheet", "column", "found", "done", "fix"]].astype(str).agg(" ".join, axis=1)
    keep = pd.Series(True, index=text.index)
    for word in words:
        keep &= text.str.contains(word, regex=False)
    return problems[keep]


def told(read, code, **facts):
    """The problem rows of a code whose facts hold all of `facts`."""
    problems = read["problems"] if isinstance(read, dict) else read.problems
    keep = [
        row["code"] == code and all(row["facts"].get(name) == value for name, value in facts.items())
        for row in problems.to_dict("records")
    ]
    return problems[pd.Series(keep, index=problems.index, dtype=bool)]


def taken(read, heading):
    """What a column was taken for, by its heading."""
    table = read["reading"] if isinstance(read, dict) else read.reading
    return dict(zip(table["heading"], table["taken"], strict=True)).get(heading)


def asked(read, heading):
    """The choices of the questions about one heading, the one that was taken first."""
    table = read["questions"] if isinstance(read, dict) else read.questions
    return [
        [choice["taken"] for choice in row["choices"]] for row in table.to_dict("records") if row["heading"] == heading
    ]


def tidy_season(folder, **cells):
    """A season of one tidy batch in which some cells are written differently; gives the folder back."""
    row = dict(zip(TIDY, ROW, strict=True)) | cells
    return write_csv(folder, [",".join(row), ",".join(f'"{value}"' for value in row.values())])


def far_cell(path, address):
    """A good table, and one cell at an address far away."""
    write_xlsx(path.parent, [TIDY, ROW], name=path.name)
    with zipfile.ZipFile(path) as parts:
        content = {name: parts.read(name) for name in parts.namelist()}
    row = int("".join(filter(str.isdigit, address)))
    sheet = content["xl/worksheets/sheet1.xml"]
    extra = f'<row r="{row}"><c r="{address}"><v>1</v></c></row></sheetData>'.encode()
    if row == 2:
        sheet = sheet.replace(b"</row></sheetData>", f'<c r="{address}"><v>1</v></c></row></sheetData>'.encode())
    else:
        sheet = sheet.replace(b"</sheetData>", extra)
    content["xl/worksheets/sheet1.xml"] = sheet
    with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as parts:
        for name, data in content.items():
            parts.writestr(name, data)
