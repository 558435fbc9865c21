"""Which logs does a file hold? A text is one; a workbook has one a sheet, an archive one a member; JSON becomes lines."""

from __future__ import annotations

import datetime as dt
import io
import json
import os
import re
import zipfile
from dataclasses import dataclass, field
from pathlib import Path

from hatchkit.problems import HatchkitError
from hatchkit.records.logs import encoding, told
from hatchkit.records.logs.names import role_of
from hatchkit.records.logs.stamps import kind_of
from hatchkit.records.marks import limit

WORKBOOKS = (".xlsx", ".xlsm", ".xls", ".ods")
_MOST_MEMBERS = 100
_PAIR = re.compile(r"(?<![\w\-])(?P<name>[^\W\d][^:=,;|\t\n]{0,30}?)\s*[:=]\s*(?P<value>[+-]?\d+(?:[.,]\d+)?|nan|--|err\w*)(?![\d:])"
                   r"\s*(?P<unit>°?\s?[CFK](?![\w])|%(?:\s*r\.?h\.?)?|\*C|deg\.? ?[CF])?", re.IGNORECASE)


@dataclass
class Text:
    """One log as UTF-8 lines.

    Attributes
    ----------
    part : str
        Name of the sheet or of the member of an archive; "" for a plain file.
    said : list of dict
        Problem rows' facts, as `told` makes them.
    shift : int
        -1 where a line of headings was put above the file's own lines.
    """

    data: bytes
    part: str = ""
    said: list = field(default_factory=list)
    shift: int = 0


def texts_of(path: Path) -> list[Text]:
    """The logs of one file.

    Raises HatchkitError where it cannot be opened or holds no text.
    """
    data = load_bytes(path)
    if data[:4] == b"PK\x03\x04" or data[:4] == b"\xd0\xcf\x11\xe0":
        return _of_archive(path, data)
    if data[:2] == b"\x1f\x8b":
        return [of_bytes(_unpacked(data))]
    return [of_bytes(data)]


def load_bytes(path: Path) -> bytes:
    """The file as it is now; what a logger adds while it is read is left for the next time."""
    if path.exists() and not path.is_file():
        # A pipe would be waited for without end.
        raise HatchkitError("it cannot be opened (it is not an ordinary file)")
    try:
        with open(path, "rb") as handle:
            size = os.fstat(handle.fileno()).st_size
            if size > limit("file_most_mb") * 1e6:
                raise HatchkitError(f"it is larger than {limit('file_most_mb'):.0f} MB; split it by month")
            return handle.read(size)
    except OSError as error:
        raise HatchkitError(f"it cannot be opened ({error.strerror or error})") from error


def _unpacked(data: bytes) -> bytes:
    import gzip

    most = int(limit("file_most_mb") * 1e6)
    try:
        with gzip.open(io.BytesIO(data)) as handle:
            out = handle.read(most + 1)
    except (OSError, EOFError) as error:
        raise HatchkitError("it is a damaged archive") from error
    if len(out) > most:
        raise HatchkitError(f"unpacked it is larger than {most / 1e6:.0f} MB; split it by month")
    return out


def _of_archive(path: Path, data: bytes) -> list[Text]:
    names: list = []
    if data[:2] == b"PK":
        try:
            with zipfile.ZipFile(io.BytesIO(data)) as archive:
                names = [info for info in archive.infolist() if not info.is_dir()]
                if not any(info.filename in ("content.xml", "xl/workbook.xml") for info in names):
                    return _of_members(archive, names)
        except (zipfile.BadZipFile, RuntimeError, NotImplementedError, OSError) as error:
            raise HatchkitError("it is a damaged archive, a damaged workbook, or locked with a password") from error
    return _of_workbook(path)


def _of_members(archive: zipfile.ZipFile, members: list) -> list[Text]:
    most = limit("file_most_mb") * 1e6
    members = [info for info in members if not Path(info.filename).name.startswith((".", "_")) and
               not info.filename.startswith("__MACOSX")][:_MOST_MEMBERS]
    if sum(info.file_size for info in members) > most:
        raise HatchkitError(f"unpacked it is larger than {most / 1e6:.0f} MB; split it by month")
    out = []
    for info in members:
        inner = archive.read(info)[: int(most)]
        if inner[:4] in (b"PK\x03\x04", b"\xd0\xcf\x11\xe0", b"%PDF", b"\x89PNG", b"\xff\xd8\xff\xe0"):
            out.append(Text(b"", info.filename, [told.member_left_out(info.filename)]))
            continue
        try:
            text = of_bytes(inner)
        except HatchkitError as error:
            out.append(Text(b"", info.filename, [told.member_left_out(info.filename, str(error))]))
            continue
        text.part = info.filename
        out.append(text)
    if not out:
        raise HatchkitError("the archive holds no file")
    return out


def _of_workbook(path: Path) -> list[Text]:
    """Each sheet as lines of cells parted by tabs; line numbers are those of the sheet's rows."""
    from hatchkit.records.workbook import read_grids

    grids, problems = read_grids(path, file=path.name)
    if not grids:
        raise HatchkitError(problems[0]["found"] if problems else "the workbook has no sheet")
    grids = [grid for grid in grids if any(any(cell != "" for cell in row) for row in grid.cells)]
    if not grids:
        raise HatchkitError("the file is empty")
    out = []
    for grid in grids:
        lines = ["\t".join(_cell_text(cell) for cell in row).rstrip("\t") for row in grid.cells]
        out.append(Text(("\n".join(lines) + "\n").encode(), grid.sheet if len(grids) > 1 else ""))
    return out


def _cell_text(cell) -> str:
    if cell is None:
        return ""
    if isinstance(cell, dt.datetime):
        return f"{cell:%Y-%m-%d %H:%M:%S}" + (f".{cell.microsecond:06d}" if cell.microsecond else "")
    if isinstance(cell, dt.timedelta):
        seconds = round(cell.total_seconds())
        return f"{seconds // 3600:02d}:{seconds // 60 % 60:02d}:{seconds % 60:02d}"
    if isinstance(cell, float):
        return format(cell, ".10g")
    return " ".join(str(cell).split())


def of_bytes(data: bytes) -> Text:
    """One log from the bytes of a text of any encoding and layout."""
    data, name, doubts = encoding.as_utf8(data)
    if b"\r" in data[:65_536] and b"\n" not in data[:65_536]:
        data = data.replace(b"\r", b"\n")
    said = [told.encoding_open(name, *doubts[0])] if doubts else []
    start = data[:4096].lstrip()
    if start[:1] in (b"{", b"[") or b'{"' in start[:300]:
        lines = _json_lines(data)
        if lines is not None:
            return Text(lines, said=said, shift=-1)
    if _is_labelled(data):
        return Text(_labelled_lines(data), said=said, shift=-1)
    return Text(data, said=said)


def _json_lines(data: bytes) -> bytes | None:
    """A JSON document, or one object a line, as a table parted by tabs; None where it is neither."""
    text = data.decode("utf-8", "replace")
    try:
        whole = json.loads(text)
        records = _records(whole)
    except (ValueError, RecursionError):
        records = [_one(line) for line in text.removesuffix("\n").split("\n")]
        if sum(record is not None for record in records) < 0.5 * sum(bool(line.strip()) for line in text.split("\n")):
            return None
    if not records:
        return None
    flat = [None if record is None else _flat(record) for record in records]
    keys = list(dict.fromkeys(key for record in flat if record for key in record))
    if not keys or len(keys) > 200:
        return None
    rows = ["\t".join(_cell_text(record.get(key, "")) for key in keys) if record else "" for record in flat]
    return ("\t".join(keys) + "\n" + "\n".join(rows) + "\n").encode()


def _one(line: str):
    before, brace, rest = line.strip().rstrip(",").partition("{")
    try:
        found = json.loads(brace + rest) if brace else None
    except (ValueError, RecursionError):
        return None
    if not isinstance(found, dict):
        return None
    words = before.split()
    stamp = next((text for n in (3, 2, 1) if kind_of(text := " ".join(words[:n]).strip("[],;")) in ("both", "epoch")), "")
    return {"received at": stamp, **found} if stamp else found


def _records(whole) -> list:
    """The longest list of objects (or of rows) in a document."""
    if isinstance(whole, dict):
        tables = [value for value in whole.values() if isinstance(value, list) and value]
        if tables and all(len(table) == len(tables[0]) for table in tables) and len(tables) > 1 and not any(
                isinstance(cell, (dict, list)) for table in tables for cell in table[:3]):
            names = [name for name, value in whole.items() if isinstance(value, list)]
            return [dict(zip(names, row, strict=True)) for row in zip(*tables, strict=True)]
        inner = [_records(value) for value in whole.values() if isinstance(value, (dict, list))]
        return max(inner, key=len, default=[])
    if isinstance(whole, list):
        if whole and all(isinstance(one, dict) for one in whole):
            return whole
        if whole and all(isinstance(one, list) and not any(isinstance(c, (dict, list)) for c in one) for one in whole):
            return [{f"column {n + 1}": cell for n, cell in enumerate(row)} for row in whole]
        inner = [_records(value) for value in whole if isinstance(value, (dict, list))]
        return [record for part in inner for record in part]
    return []


def _flat(record: dict, before: str = "", depth: int = 0) -> dict:
    out: dict = {}
    for key, value in record.items():
        name = f"{before} {key}".strip()
        if isinstance(value, dict) and depth < 4:
            out.update(_flat(value, name, depth + 1))
        elif isinstance(value, list) and depth < 4 and len(value) <= 8 and not any(isinstance(v, list) for v in value):
            out.update(_flat({str(n + 1): v for n, v in enumerate(value)}, name, depth + 1))
        else:
            out[name] = "" if value is None or isinstance(value, list) else value
    return out


def _is_labelled(data: bytes) -> bool:
    """Whether most lines name their values: "12:00 Temperature: 37.6 Humidity: 54"."""
    lines = [line for line in data[:20_000].decode("utf-8", "replace").splitlines()[:-1] if line.strip()][-60:]
    if len(lines) < 3:
        lines = [line for line in data[:20_000].decode("utf-8", "replace").splitlines() if line.strip()]
    return len(lines) > 1 and sum(bool(_labels(line)) for line in lines) > 0.6 * len(lines)


def _labels(line: str) -> list:
    return [match for match in _PAIR.finditer(line)
            if role_of(re.sub(r"^.*[\d:)\]>]\s+", "", match["name"])) in ("temp", "rh", "dew_point", "wet_bulb")]


def _labelled_lines(data: bytes) -> bytes:
    """Lines that name their values as a table parted by tabs; what stands before the first name is the stamp."""
    rows, keys = [], {}
    for line in data.decode("utf-8", "replace").removesuffix("\n").split("\n"):
        found = list(_PAIR.finditer(line)) if _labels(line) else []
        first = _labels(line)[0] if found else None
        if first is None:
            rows.append({None: " ".join(line.split())})
            continue
        name = re.sub(r"^.*[\d:)\]>]\s+", "", first["name"])
        stamp = line[: first.start() + len(first["name"]) - len(name)]
        stamp = re.sub(r"^\W*(?:time|date|datum|zeit|timestamp)\s*[:=]\s*", "", stamp.strip(" \t,;|-[]()>"), flags=re.IGNORECASE)
        row = {"time": re.sub(r"[\])}>]*\s*(?:->|[-|>,;:])*\s*$", "", " ".join(stamp.split())).strip("[]() ")}
        for match in found:
            if match.start() < first.start():
                continue
            label = name if match.start() == first.start() else match["name"].strip()
            unit = f" ({match['unit'].strip().replace('*', '°')})" if match["unit"] else ""
            row[label + unit] = match["value"]
        keys.update(dict.fromkeys(row))
        rows.append(row)
    names = list(keys)
    lines = ["\t".join(row.get(name, "") for name in names) if None not in row else row[None] for row in rows]
    return ("\t".join(names) + "\n" + "\n".join(lines) + "\n").encode()
