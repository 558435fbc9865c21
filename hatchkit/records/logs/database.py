"""Databases of phone apps and boards: a database file by its tables, and the line protocol of time-series databases."""

from __future__ import annotations

import re

from hatchkit.problems import HatchkitError

#: First bytes of a database in one file.
MARK = b"SQLite format 3\x00"
_MOST_TABLES = 40
_PROTOCOL = re.compile(
    r"(?P<head>(?:[^\s,\\]|\\.)+(?:,(?:[^\s,=\\]|\\.)+=(?:[^\s,\\]|\\.)+)*) "
    r"(?P<fields>[^\s,=]+=(?:\"(?:[^\"\\]|\\.)*\"|[^\s,]+)(?:,(?:[^\s,=\\]|\\.)+=(?:\"(?:[^\"\\]|\\.)*\"|"
    r"[^\s,]+))*)(?: (?P<time>\d{9,19}))?"
)


def tables_of(data: bytes) -> list[tuple[str, list, list]]:
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
            out.append(
                (
                    name,
                    [column[0] for column in rows.description],
                    [["" if isinstance(cell, bytes) else cell for cell in row] for row in rows.fetchall()],
                )
            )
        return out
    except sqlite3.Error as error:
        raise HatchkitError("refuse_database", dict(why=str(error))) from error
    finally:
        connection.close()


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
    keys: dict = {}
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
        keys.update(dict.fromkeys(record))
        records.append(record)
    if not any(records):
        return None
    lines = ["\t".join(record.get(key, "") for key in keys) if record else "" for record in records]
    return ("\t".join(keys) + "\n" + "\n".join(lines) + "\n").encode()


def _plain(text: str) -> str:
    return " ".join(re.sub(r"\\(.)", r"\1", text).split())
