"""Readings that are no lines of cells: JSON, labelled lines, web pages, dumps of a database, XML -> lines of cells.

Each line of the file stays a line, so that line numbers hold; a line of headings is put above.
"""

from __future__ import annotations

import re
from html.parser import HTMLParser

from hatchkit.records.logs.documents import json_lines, protocol_lines, stacked_lines
from hatchkit.records.logs.documents import table as table_lines
from hatchkit.records.logs.names import role_of
from hatchkit.records.logs.stamps import kind_of

_PAIR = re.compile(
    r"(?<![\w\-])(?P<name>[^\W\d][^:=,;|&?\t\n]{0,30}?)\s*[:=]\s*(?P<value>[+-]?\d+(?:[.,]\d+)?|nan|--|"
    r"err\w*)(?![\d:])"
    r"\s*(?P<unit>°?\s?[CFK](?![\w])|%(?:\s*r\.?h\.?)?|\*C|deg\.? ?[CF])?",
    re.IGNORECASE,
)
_INSERT = re.compile(
    r"^\s*(?:\d+\s+)?insert\s+(?:or\s+\w+\s+)?(?:ignore\s+)?into\s+[`\"\[]?(?P<table>[\w.]+)[`\"\]]?"
    r"\s*(?:\((?P<names>[^()]*)\))?\s*values\s*(?P<rows>\(.*)?$",
    re.IGNORECASE,
)
_CREATE = re.compile(
    r"create\s+table\s+(?:if\s+not\s+exists\s+)?[`\"\[]?(?P<table>[\w.]+)[`\"\]]?\s*\("
    r"(?P<names>.*?)\)\s*(?:\w+[^;()]*)?;",
    re.IGNORECASE | re.DOTALL,
)


def rows_of(data: bytes) -> bytes | None:
    """The text as a line of headings and lines of cells, where it is of one of these kinds; else None."""
    start = data[:4096].lstrip()
    low = start.lower()
    if (start[:1] in (b"{", b"[") or b'{"' in start[:300]) and (lines := json_lines(data)) is not None:
        return lines
    if b"insert into" in low or low.startswith((b"pragma", b"begin")) or b"create table" in low:
        if (lines := _sql_lines(data.decode("utf-8", "replace"))) is not None:
            return lines
    if b"<tr" in low or low.startswith((b"<html", b"<!doctype html", b"<table")):
        if (lines := _page_lines(data.decode("utf-8", "replace"))) is not None:
            return lines
    if (lines := protocol_lines(data)) is not None:
        return lines
    if low.startswith(b"<?xml") or re.match(rb"<[a-z]", low):
        if (lines := _xml_lines(data)) is not None:
            return lines
    if (lines := stacked_lines(data)) is not None:
        return lines
    return _labelled_lines(data) if _is_labelled(data) else None


def _sql_lines(text: str) -> bytes | None:
    """The table of a dump that has the most rows."""
    names = {
        match["table"].lower(): [
            re.sub(r"[`\"\[\]]", "", part.split()[0]) for part in match["names"].split(",") if part.split()
        ]
        for match in _CREATE.finditer(text)
    }
    tables: dict = {}
    records, last = [], None
    for line in text.removesuffix("\n").split("\n"):
        match = _INSERT.match(line)
        if not match and (last is None or not line.lstrip().startswith("(")):
            records.append((None, []))
            last = None
            continue
        # The rows of one command may each stand in a line of its own.
        given = (match["rows"] or "") if match else line
        match = last = match or last
        rows = [_sql_values(part) for part in re.findall(r"\(((?:[^()']|'(?:[^']|'')*')*)\)", given)]
        table = match["table"].lower()
        said = [part.strip(' `"[]') for part in match["names"].split(",")] if match["names"] else names.get(table)
        rows = [dict(zip(said or [f"column {n + 1}" for n in range(len(row))], row, strict=False)) for row in rows]
        tables[table] = tables.get(table, 0) + len(rows)
        records.append((table, rows))
    most = max(tables, key=tables.get, default=None)
    return table_lines([row for table, rows in records for row in (rows if table == most else [None])])


def _sql_values(text: str) -> list:
    cells = re.findall(r"\s*('(?:[^']|'')*'|[^,]*)\s*(?:,|$)", text)[: text.count(",") + 1]
    cells = [cell.strip() for cell in cells]
    return [
        "" if cell.upper() == "NULL" else cell[1:-1].replace("''", "'") if cell[:1] == "'" else cell for cell in cells
    ]


class _Page(HTMLParser):
    """The rows of the tables of a web page."""

    def __init__(self):
        super().__init__()
        self.rows: list = []
        self.cell: list | None = None

    def handle_starttag(self, tag, attrs):
        if tag == "tr":
            self.rows.append([])
        elif tag in ("td", "th"):
            self.cell = []

    def handle_endtag(self, tag):
        if tag in ("td", "th") and self.cell is not None:
            if self.rows:
                self.rows[-1].append(" ".join("".join(self.cell).split()))
            self.cell = None

    def handle_data(self, data):
        if self.cell is not None:
            self.cell.append(data)


def _page_lines(text: str) -> bytes | None:
    page = _Page()
    page.feed(text)
    rows = ["\t".join(row) for row in page.rows]
    return ("\n".join(["", *rows]) + "\n").encode() if len(rows) > 2 else None


def _xml_lines(data: bytes) -> bytes | None:
    """The elements that come most often, each with its attributes and children, as a table."""
    from xml.etree import ElementTree

    if b"<!ENTITY" in data or b"<!DOCTYPE" in data[:2000]:
        return None
    try:
        root = ElementTree.fromstring(data)
    except ElementTree.ParseError:
        return None
    best: list = []
    for parent in root.iter():
        names = [child.tag for child in parent]
        usual = max(set(names), key=names.count, default=None)
        if usual is not None and names.count(usual) > len(best):
            best = [child for child in parent if child.tag == usual]
    return table_lines([_element(child) for child in best]) if len(best) > 2 else None


def _element(element) -> dict:
    found = dict(element.attrib)
    for child in element:
        name = child.tag.rpartition("}")[2]
        if (child.text or "").strip():
            found[f"{name} {' '.join(child.attrib.values())}".strip()] = child.text.strip()
        else:
            found.update({f"{name} {key}": value for key, value in child.attrib.items()})
    return found


def _is_labelled(data: bytes) -> bool:
    """Whether most lines name their values: "12:00 Temperature: 37.6 Humidity: 54"."""
    lines = [line for line in data[:20_000].decode("utf-8", "replace").splitlines()[:-1] if line.strip()][-60:]
    return len(lines) > 1 and sum(bool(_labels(line)) for line in lines) > 0.6 * len(lines)


def _labels(line: str) -> list:
    return [
        match
        for match in _PAIR.finditer(line)
        if role_of(re.sub(r"^.*[\d:)\]>]\s+", "", match["name"])) in ("temp", "rh", "dew_point", "wet_bulb")
    ]


_TIME_LABEL = re.compile(
    r"(?:^|(?<=[\s,;|]))\W*(?:time|date|datum|zeit|uhrzeit|timestamp|heure|ora|hora|tid|czas|data|fecha)\s*[:=]\s*",
    re.IGNORECASE,
)


def _source_of(stamp: str) -> dict:
    """A stamp with words behind it, parted: "2025-09-11 22:05:00 box1" was written by box1."""
    words = stamp.split()
    if kind_of(stamp) in ("both", "epoch", "time"):
        return {}
    for count in range(len(words) - 1, 0, -1):
        text = " ".join(words[:count]).strip("[],;:")
        if kind_of(text) in ("both", "epoch"):
            return {"time": text, "sensor": re.sub(r"\[\d+\]", "", " ".join(words[count:])).strip("[]():,;-> ")}
    return {}


def _labelled_lines(data: bytes) -> bytes:
    """Lines that name their values as a table parted by tabs; the stamp stands before the first name or behind all."""
    rows: list[dict] = []
    keys: dict = {}
    for line in data.decode("utf-8", "replace").removesuffix("\n").split("\n"):
        first = next(iter(_labels(line)), None)
        if first is None:
            rows.append({None: " ".join(line.split())})
            continue
        name = re.sub(r"^.*[\d:)\]>]\s+", "", first["name"])
        stamp = line[: first.start() + len(first["name"]) - len(name)]
        pairs = list(_PAIR.finditer(line, first.start()))
        if not re.search(r"\d", stamp):
            stamp = line[pairs[-1].end() :].strip(" @%\t,;|-[]()>")
        stamp = _TIME_LABEL.sub(" ", stamp.strip(" \t,;|-[]()>"))
        row = {"time": re.sub(r"[\])}>]*\s*(?:->|[-|>,;:])*\s*$", "", " ".join(stamp.split())).strip("[]() ")}
        row |= _source_of(row["time"])
        for match in pairs:
            label = name if match.start() == first.start() else match["name"].strip()
            unit = f" ({match['unit'].strip().replace('*', '°')})" if match["unit"] else ""
            row[label + unit] = match["value"]
        keys.update(dict.fromkeys(row))
        rows.append(row)
    names = list(keys)
    lines = ["\t".join(row.get(name, "") for name in names) if None not in row else row[None] for row in rows]
    return ("\t".join(names) + "\n" + "\n".join(lines) + "\n").encode()
