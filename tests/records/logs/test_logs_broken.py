"""Broken files are read or refused with a reason, never a traceback.

More of them: ``python tests/records/logs/test_logs_broken.py 2000``.
"""

import datetime as dt
import random
import sys
import tempfile
import warnings
from pathlib import Path

from layouts import LAYOUTS
from test_logs_layouts import readings

from hatchkit.problems import HatchkitError
from hatchkit.records.logs.read import Wishes, read_accounted

PIECES = [
    b'"',
    b"\n",
    b"\r",
    b"\t",
    b",,",
    b";",
    b"\x00",
    b"9999-99-99",
    b"NaN",
    b"1e400",
    b"-",
    b"\xff\xfe",
    b"{",
    b"[",
    b"<tr>",
    b"31.02.2026",
    b"99999999999",
]
CELLS = [b"", b"x", b"1e999", b"-999", b"inf", b"12/13/2026 10:00", b"Temperature", b"0"]


def _byte(data, at, draw):
    return data[:at] + bytes([draw.randrange(256)]) + data[at + 1 :]


def _hole(data, at, draw):
    return data[:at] + data[at + draw.randrange(1, 30) :]


def _piece(data, at, draw):
    return data[:at] + draw.choice([*PIECES, draw.randbytes(5)]) + data[at:]


def _cut(data, at, draw):
    return data[:at]


def _shuffled(data, at, draw):
    lines = data.split(b"\n")
    draw.shuffle(lines)
    return b"\n".join(lines)


def _cell(data, at, draw):
    lines = data.split(b"\n")
    place, separator = draw.randrange(len(lines)), draw.choice([b",", b";", b"\t"])
    cells = lines[place].split(separator)
    cells[draw.randrange(len(cells))] = draw.choice(CELLS)
    lines[place] = separator.join(cells)
    return b"\n".join(lines)


def broken(seed: int) -> tuple[str, str, bytes]:
    """(layout, ending, bytes) of one broken file."""
    draw = random.Random(seed)
    name = draw.choice(sorted(LAYOUTS))
    suffix, write = LAYOUTS[name]
    data = write(readings(dt.datetime(2026, 3, 13, 20, 30), 4))
    data = data if isinstance(data, bytes) else data.encode()
    for _ in range(draw.choice([1, 1, 2, 5, 20])):
        harm = draw.choice([_byte, _hole, _piece, _cut, _shuffled, _cell])
        data = harm(data, draw.randrange(len(data) or 1), draw)
    return name, suffix, data


def check(folder: Path, seed: int) -> str:
    """ "read" or "refused"; an error of any other kind passes through."""
    _, suffix, data = broken(seed)
    path = folder / f"log{suffix}"
    path.write_bytes(data)
    try:
        read_accounted(path, Wishes(timezone=[None, "Europe/Rome"][seed % 2]))
    except HatchkitError as error:
        assert len(str(error)) > 20
        return "refused"
    return "read"


def test_fifty_broken_files_give_no_traceback(tmp_path):
    """More of them: this file by itself with their number, and ``tests/benchmarks/fuzz_logs.py``."""
    for seed in range(50):
        try:
            check(tmp_path, seed)
        except Exception as error:
            raise AssertionError(f"seed {seed}, layout {broken(seed)[0]}") from error


if __name__ == "__main__":
    warnings.simplefilter("error")
    with tempfile.TemporaryDirectory() as where:
        found = [check(Path(where), seed) for seed in range(int(sys.argv[1]))]
    print({kind: found.count(kind) for kind in sorted(set(found))})
