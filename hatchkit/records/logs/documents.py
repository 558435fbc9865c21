"""Readings in documents of nested values: JSON, and records that stand over several lines."""

from __future__ import annotations

import json
import re

from hatchkit.records.logs.names import MEASURES, role_of
from hatchkit.records.logs.stamps import kind_of

#: A list of so many values beside a time is probes side by side.
_MOST_IN_A_CELL = 8
_FIELD = re.compile(r"\s*(?:-\s+)?[\"']?([^\W\d][^:=\"']{0,30}?)[\"']?\s*[:=]\s*(.*?)\s*,?\s*")

_PROTOCOL = re.compile(
    r"(?P<head>(?:[^\s,\\]|\\.)+(?:,(?:[^\s,=\\]|\\.)+=(?:[^\s,\\]|\\.)+)*) "
    r"(?P<fields>[^\s,=]+=(?:\"(?:[^\"\\]|\\.)*\"|[^\s,]+)(?:,(?:[^\s,=\\]|\\.)+=(?:\"(?:[^\"\\]|\\.)*\"|"
    r"[^\s,]+))*)(?: (?P<time>\d{9,19}))?"
)


def cell_text(cell) -> str:
    """A cell of a workbook or of a JSON document as text."""
    if cell is None:
        return ""
    if isinstance(cell, float):
        return format(cell, ".10g")
    return " ".join(str(cell).split())


def table(records: list) -> bytes | None:
    """Records (dicts, None for a line without one) as lines parted by tabs, the headings first."""
    keys = list(dict.fromkeys(key for record in records if record for key in record))
    if not keys or len(keys) > 200:
        return None
    lines = ["\t".join(cell_text(record.get(key, "")) for key in keys) if record else "" for record in records]
    return ("\t".join(keys) + "\n" + "\n".join(lines) + "\n").encode()


def json_lines(data: bytes) -> bytes | None:
    """A JSON document, or one object a line, as a table parted by tabs; None where it is neither."""
    text = data.decode("utf-8", "replace")
    try:
        records = _records(json.loads(text))
    except (ValueError, RecursionError):
        records = [_one(line) for line in text.removesuffix("\n").split("\n")]
    return table([None if record is None else _flat(record) for record in records])


def _one(line: str):
    before, brace, rest = line.strip().rstrip(",").partition("{")
    if before.rstrip().endswith('"'):
        # A cell of a table, in quotes, with its own quotes doubled.
        before, rest = before.replace('"', " "), rest.rstrip('"').replace('""', '"')
    try:
        found = json.loads(brace + rest) if brace else None
    except (ValueError, RecursionError):
        return None
    if not isinstance(found, dict):
        return None
    words = re.sub(r"[,;]\s*$", " ", before.rstrip()).split()
    stamp = next(
        (text for n in (3, 2, 1) if kind_of(text := " ".join(words[:n]).strip("[],;")) in ("both", "epoch")), ""
    )
    return {"received at": stamp, **found} if stamp else found


def _plain_rows(whole) -> bool:
    return (
        isinstance(whole, list)
        and bool(whole)
        and all(isinstance(one, list) and not any(isinstance(cell, (dict, list)) for cell in one) for one in whole)
    )


def _records(whole) -> list:
    """The longest list of objects (or of rows) in a document."""
    if isinstance(whole, dict):
        for form in (_columns_side_by_side, _named_rows, _labelled_series, _by_moment, _series_apart):
            if (found := form(whole)) is not None:
                return found
        return max((_records(value) for value in whole.values()), key=len, default=[])
    if not isinstance(whole, list) or not whole:
        return []
    if _plain_rows(whole):
        return [{f"column {n + 1}": cell for n, cell in enumerate(row)} for row in whole]
    if not all(isinstance(one, dict) for one in whole):
        return [record for value in whole for record in _records(value)]
    for form in (_points, _named_rows, _held):
        if all(parts := [form(one) for one in whole]):
            return [record for part in parts for record in part]
    return whole


def _held(whole: dict) -> list | None:
    """Of the form {"device": "box 1", "readings": [{"time": ..., "temp": ...}, ...]}: what is said of all, to each."""
    found = _records(whole)
    measured = any(role_of(name) in MEASURES and not isinstance(value, (dict, list)) for name, value in whole.items())
    if measured or not found or not any(role_of(name) in ("stamp", "date", "time") for name in found[0]):
        return None
    # The moment at which the document was written is no time of its readings.
    said = {name: value for name, value in whole.items() if isinstance(value, str) and not kind_of(value)}
    return [{**said, **record} for record in found]


def _columns_side_by_side(whole: dict) -> list | None:
    """Of the form {"time": [...], "temperature": [...]}."""
    tables = [value for value in whole.values() if isinstance(value, list) and value]
    if (
        tables
        and all(len(column) == len(tables[0]) for column in tables)
        and len(tables) > 1
        and not any(isinstance(cell, (dict, list)) for column in tables for cell in column[:3])
    ):
        names = [name for name, value in whole.items() if isinstance(value, list) and value]
        return [dict(zip(names, row, strict=True)) for row in zip(*tables, strict=True)]
    return None


def _named_rows(whole: dict) -> list | None:
    """Of the form {"columns": ["time", ...], "values": [[...], ...]}."""
    rows = [value for value in whole.values() if _plain_rows(value)]
    names = [
        value
        for value in whole.values()
        if isinstance(value, list) and value and all(isinstance(cell, str) for cell in value)
    ]
    if len(rows) == 1 and len(names) == 1 and all(len(row) == len(names[0]) for row in rows[0]):
        return [dict(zip(names[0], row, strict=True)) for row in rows[0]]
    return None


def _points(whole: dict) -> list | None:
    """Of the form {"target": "box temperature", "datapoints": [[37.5, 1757628300], ...]}."""
    rows = [value for value in whole.values() if _plain_rows(value)]
    name = next((value for value in whole.values() if isinstance(value, str) and role_of(value)), None)
    if len(rows) != 1 or name is None or any(len(row) != 2 for row in rows[0]):
        return None
    at = [n for n in (0, 1) if all(kind_of(cell_text(row[n])) in ("both", "epoch") for row in rows[0][:50])]
    if len(at) != 1:
        return None
    return [{"time": row[at[0]], "quantity": name, "value": row[1 - at[0]]} for row in rows[0]]


def _labelled_series(whole: dict) -> list | None:
    """Of the form {"labels": [...], "datasets": [{"label": "Temperature", "data": [...]}]}."""
    axes = [
        (name, value)
        for name, value in whole.items()
        if isinstance(value, list) and value and not isinstance(value[0], (dict, list))
    ]
    sets = [
        value
        for value in whole.values()
        if isinstance(value, list) and value and all(isinstance(one, dict) for one in value)
    ]
    if len(axes) != 1 or len(sets) != 1:
        return None
    out = [{"time": moment} for moment in axes[0][1]]
    for number, one in enumerate(sets[0]):
        data = next((value for value in one.values() if isinstance(value, list) and len(value) == len(out)), None)
        names = [value for value in one.values() if isinstance(value, str) and role_of(value)]
        name = names[0] if names else f"data {number + 1}"
        if data is None or any(isinstance(cell, (dict, list)) for cell in data):
            return None
        for record, cell in zip(out, data, strict=True):
            record[name] = cell
    return out


def _by_moment(whole: dict) -> list | None:
    """Of the form {"1757628300": {"temp": 37.5}, ...}."""
    if (
        len(whole) > 2
        and all(isinstance(value, dict) for value in whole.values())
        and all(kind_of(str(key)) in ("both", "epoch") for key in whole)
    ):
        return [{"time": key, **value} for key, value in whole.items()]
    return None


def _series_apart(whole: dict) -> list | None:
    """{"temperature": [{"ts": 1, "value": 2}, ...], "humidity": [...]}: the name says what the values are."""
    series = {
        name: value
        for name, value in whole.items()
        if isinstance(value, list) and value and all(isinstance(one, dict) for one in value)
    }
    if len(series) < 2 or not any(role_of(name) in MEASURES for name in series):
        return None
    return [{**one, "quantity": name} for name, value in series.items() for one in value]


def _flat(record: dict, before: str = "", depth: int = 0) -> dict:
    out: dict = {}
    for key, value in record.items():
        name = f"{before} {key}".strip()
        if isinstance(value, dict) and depth < 4:
            out.update(_flat(value, name, depth + 1))
        elif isinstance(value, list) and depth < 4 and len(value) <= _MOST_IN_A_CELL:
            out.update(_flat({str(n + 1): one for n, one in enumerate(value)}, name, depth + 1))
        else:
            out[name] = "" if value is None or isinstance(value, list) else value
    return out


def stacked_lines(data: bytes) -> bytes | None:
    """Records that stand over several lines, one "name: value" each, as a table; None where it is no such text.

    The first name begins each record; the table has a record in the line in which its own ends.
    """
    lines = data[:8192].decode("utf-8", "replace").split("\n")[:-1][:200] or [data[:8192].decode("utf-8", "replace")]
    fields = [_FIELD.fullmatch(line.rstrip("\r")) for line in lines]
    filled = [field for field, line in zip(fields, lines, strict=False) if line.strip(" \r-=_*#")]
    known = [field for field in filled if field]
    if len(known) < 6 or len(known) < 0.9 * len(filled):
        return None
    names = [field[1].strip().lower() for field in known]
    # What stands above the first record comes once only.
    often = [name for name in dict.fromkeys(names) if names.count(name) > 1]
    roles = {role_of(name) for name in often}
    if not roles & {"temp", "rh"} or not roles & {"stamp", "date", "time"} or names.count(often[0]) < 3:
        return None
    records: list = []
    record: dict = {}
    for line in data.decode("utf-8", "replace").removesuffix("\n").split("\n"):
        field = _FIELD.fullmatch(line.rstrip("\r"))
        name = field[1].strip() if field else ""
        if name.lower() == often[0] and record:
            records[-1] = record if len(record) > 1 else None
            record = {}
        if name.lower() in often:
            record[name] = field[2].strip("\"'")
        records.append(None)
    records[-1] = record if len(record) > 1 else None
    return table(records)


def protocol_lines(data: bytes) -> bytes | None:
    """Lines such as "climate,place=attic temperature=37.5,humidity=54 1750215600000000000" as a table, else None."""
    start = [
        line
        for line in data[:8192].decode("utf-8", "replace").splitlines()[:-1]
        if line.strip() and not line.startswith("#")
    ][:40]
    start = start or data[:8192].decode("utf-8", "replace").splitlines()
    if not start or sum(bool(_PROTOCOL.fullmatch(line.strip())) for line in start) < 0.8 * len(start):
        return None
    records: list = []
    for line in data.decode("utf-8", "replace").removesuffix("\n").split("\n"):
        match = _PROTOCOL.fullmatch(line.strip())
        if not match:
            records.append(None)
            continue
        name, *tags = re.split(r"(?<!\\),", match["head"])
        fields = re.findall(r"((?:[^\s,=\\]|\\.)+)=(\"(?:[^\"\\]|\\.)*\"|[^\s,]+)", match["fields"])
        record = {"time": match["time"] or "", "measurement": _plain(name)}
        record.update({_plain(key): _plain(value) for key, _, value in (tag.partition("=") for tag in tags)})
        record.update({_plain(key): re.sub(r"(?<=\d)[iu]$", "", _plain(value.strip('"'))) for key, value in fields})
        records.append(record)
    return table(records)


def _plain(text: str) -> str:
    return " ".join(re.sub(r"\\(.)", r"\1", text).split())
