"""Which logs does a file hold? A text is one; a workbook has one a sheet, an archive one a member."""

from __future__ import annotations

import io
import os
import re
import struct
import zipfile
import zlib
from dataclasses import dataclass, field, replace
from pathlib import Path

from hatchkit.problems import HatchkitError
from hatchkit.records.logs import encoding
from hatchkit.records.logs.documents import cell_text
from hatchkit.records.logs.names import MEASURES, role_of
from hatchkit.records.logs.rows import rows_of
from hatchkit.records.marks import limit

_MOST_MEMBERS = 100
#: First bytes of a database in one file.
_DATABASE = b"SQLite format 3\x00"
_MOST_TABLES = 40
#: What zipfile raises where bytes of an archive are wrong, or a password is missing.
_DAMAGED = (
    zipfile.BadZipFile,
    RuntimeError,
    NotImplementedError,
    OSError,
    EOFError,
    ValueError,
    KeyError,
    zlib.error,
    struct.error,
)


@dataclass
class Text:
    """One log as UTF-8 lines.

    Attributes
    ----------
    part : str
        Name of the sheet or of the member of an archive; "" for a plain file.
    said : list of dict
        What is said of it: severity, code and facts, as `lines.Account.say` takes them.
    pages : dict
        Code page -> how a line reads in it, the one taken first; empty where only one makes sense.
    shift : int
        -1 where a line of headings was put above the file's own lines.
    """

    data: bytes
    part: str = ""
    said: list = field(default_factory=list)
    pages: dict = field(default_factory=dict)
    shift: int = 0


def texts_of(path: Path, page_of=dict().get) -> list[Text]:
    """The logs of one file; `page_of` gives the code page that a person named for a part of it, or None.

    Raises HatchkitError where it cannot be opened or holds no text.
    """
    data = load_bytes(path)
    if data[:4] == b"PK\x03\x04" or data[:4] == b"\xd0\xcf\x11\xe0":
        return _of_archive(path, data, page_of)
    if data[:16] == _DATABASE:
        return _of_database(data)
    if data[:2] == b"\x1f\x8b":
        data = _unpacked(data)
    return [of_bytes(data, page_of(""))]


def load_bytes(path: Path) -> bytes:
    """The file as it is now; what a logger adds while it is read is left for the next time."""
    if path.exists() and not path.is_file():
        # A pipe would be waited for without end.
        raise HatchkitError("refuse_no_ordinary_file", {})
    try:
        with open(path, "rb") as handle:
            size = os.fstat(handle.fileno()).st_size
            if size > limit("file_most_mb") * 1e6:
                raise HatchkitError("refuse_too_large", dict(mb=limit("file_most_mb")))
            return handle.read(size)
    except OSError as error:
        raise HatchkitError("refuse_not_opened", dict(why=error.strerror or str(error))) from error


def _unpacked(data: bytes) -> bytes:
    import gzip

    most = int(limit("file_most_mb") * 1e6)
    try:
        with gzip.open(io.BytesIO(data)) as handle:
            out = handle.read(most + 1)
    except (OSError, EOFError) as error:
        raise HatchkitError("refuse_archive", {}) from error
    if len(out) > most:
        raise HatchkitError("refuse_unpacks_too_large", dict(mb=round(most / 1e6)))
    return out


def _of_archive(path: Path, data: bytes, page_of) -> list[Text]:
    if data[:2] == b"PK":
        try:
            with zipfile.ZipFile(io.BytesIO(data)) as archive:
                names = [info for info in archive.infolist() if not info.is_dir()]
                if not any(info.filename in ("content.xml", "xl/workbook.xml") for info in names):
                    return _of_members(archive, names, page_of)
        except _DAMAGED as error:
            raise HatchkitError("refuse_archive_locked", {}) from error
    return _of_workbook(path)


def _of_members(archive: zipfile.ZipFile, members: list, page_of) -> list[Text]:
    most = limit("file_most_mb") * 1e6
    members = [
        info
        for info in members
        if not Path(info.filename).name.startswith((".", "_")) and not info.filename.startswith("__MACOSX")
    ][:_MOST_MEMBERS]
    if sum(info.file_size for info in members) > most:
        raise HatchkitError("refuse_unpacks_too_large", dict(mb=round(most / 1e6)))
    if not members:
        raise HatchkitError("refuse_archive_empty", {})
    out = []
    for info in members:
        name = info.filename
        try:
            out.append(replace(_of_member(archive, info, page_of(name)), part=name))
        except HatchkitError as error:
            out.append(
                Text(b"", name, [dict(severity="note", code="log_member_left_out", name=name, why=error.reason())])
            )
    return out


def _of_member(archive: zipfile.ZipFile, info, page) -> Text:
    """One log of an archive; HatchkitError where it is none."""
    try:
        inner = archive.read(info)
    except _DAMAGED as error:
        raise HatchkitError("refuse_damaged", {}) from error
    if inner[:4] in (b"PK\x03\x04", b"\xd0\xcf\x11\xe0", b"%PDF", b"\x89PNG", b"\xff\xd8\xff\xe0"):
        raise HatchkitError("refuse_no_text", {})
    return of_bytes(inner, page)


def _of_database(data: bytes) -> list[Text]:
    """Each table of a database file as lines of cells; line numbers count its rows."""
    tables = [(name, names, rows) for name, names, rows in _tables_of(data) if rows]
    if not tables:
        raise HatchkitError("refuse_no_rows", {})
    out = []
    for name, names, rows in _joined(tables):
        lines = ["\t".join(cell_text(cell) for cell in row) for row in (names, *rows)]
        out.append(Text(("\n".join(lines) + "\n").encode(), name if len(tables) > 1 else "", shift=-1))
    return out


def _tables_of(data: bytes) -> list[tuple[str, list, list]]:
    """Name, headings and rows of each table, read from a copy in memory; the file itself is never opened for writing.

    Raises HatchkitError where it is damaged.
    """
    import sqlite3

    # A database that was being written names a second file; the copy is read as it stands without it.
    data = data[:18] + b"\x01\x01" + data[20:]
    connection = sqlite3.connect(":memory:")
    try:
        connection.deserialize(data)
        connection.text_factory = lambda text: text.decode("utf-8", "replace")
        names = [
            row[0]
            for row in connection.execute(
                "select name from sqlite_master where type = 'table' and name not like 'sqlite\\_%' escape '\\'"
            )
        ]
        out = []
        for name in names[:_MOST_TABLES]:
            quoted = name.replace('"', '""')
            rows = connection.execute(f'select * from "{quoted}"')
            cells = [["" if isinstance(cell, bytes) else cell for cell in row] for row in rows]
            out.append((name, [column[0] for column in rows.description], cells))
        return out
    except sqlite3.Error as error:
        raise HatchkitError("refuse_database", dict(why=str(error))) from error
    finally:
        connection.close()


def _joined(tables: list) -> list:
    """Tables named after a quantity, alike in their headings, as one with a column that says the quantity."""
    alike: dict = {}
    for name, names, rows in tables:
        key = tuple(names) if role_of(name) in MEASURES and not any(role_of(one) in MEASURES for one in names) else name
        alike.setdefault(key, []).append((name, names, rows))
    return [
        (part[0][0], [*part[0][1], "quantity"], [[*row, name] for name, _, rows in part for row in rows])
        if isinstance(key, tuple)
        else part[0]
        for key, part in alike.items()
    ]


def _of_workbook(path: Path) -> list[Text]:
    """Each sheet as lines of cells parted by tabs; line numbers are those of the sheet's rows."""
    from hatchkit.records.workbook import read_grids

    grids, problems = read_grids(path, file=path.name)
    if not grids:
        raise HatchkitError(*problems[0]["facts"]["why"].values()) if problems else HatchkitError("refuse_no_sheet", {})
    grids = [grid for grid in grids if any(any(cell != "" for cell in row) for row in grid.cells)]
    if not grids:
        raise HatchkitError("refuse_empty", {})
    out = []
    for grid in grids:
        lines = ["\t".join(cell_text(cell) for cell in row).rstrip("\t") for row in grid.cells]
        out.append(Text(("\n".join(lines) + "\n").encode(), grid.sheet if len(grids) > 1 else ""))
    return out


def _without_outer_quotes(data: bytes) -> bytes:
    """The text without the quotes around whole lines, as a table has that was saved as text twice."""
    lines = [line.rstrip(b"\r") for line in data[:8192].split(b"\n")[:50] if line.strip()][:-1]
    quoted = [re.fullmatch(rb'"(?:[^"]|"")*[;,\t](?:[^"]|"")*"', line) for line in lines]
    if len(lines) < 2 or sum(map(bool, quoted)) < 0.8 * len(lines):
        return data
    return re.sub(rb'(?m)^"(.*)"(\r?)$', rb"\1\2", data).replace(b'""', b'"')


def of_bytes(data: bytes, page: str | None = None) -> Text:
    """One log from the bytes of a text of any encoding and layout."""
    data, name, doubts = encoding.as_utf8(data, page)
    if b"\r" in data[:65_536] and b"\n" not in data[:65_536]:
        data = data.replace(b"\r", b"\n")
    said, pages = [], {}
    if doubts:
        other, line, one, two = doubts[0]
        facts = dict(line=line, one=one[:60], page=name, two=two[:60], other=other)
        said = [dict(severity="doubtful", code="log_encoding_open", row=line, **facts)]
        pages = {name: one} | {other: read for other, _, _, read in doubts}
    data = _without_outer_quotes(data)
    table = rows_of(data)
    return Text(data if table is None else table, said=said, pages=pages, shift=0 if table is None else -1)
