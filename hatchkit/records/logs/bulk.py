"""Guards that keep a file that is no log, or is one only at its head, from filling the memory."""

from __future__ import annotations

from hatchkit.problems import HatchkitError
from hatchkit.records.logs.cells import split_line
from hatchkit.records.logs.head import Head
from hatchkit.records.logs.stamps import kind_of
from hatchkit.records.marks import limit

_SMALL = 1_000_000
_PLACES, _PIECE = 24, 4096


def refuse_odd_bulk(data: bytes, head: Head) -> None:
    """Look into a large file at places spread over it before it is parsed as a whole.

    Raises HatchkitError where most of it holds no lines like those at its head, or where it has more
    lines than any log.
    """
    if len(data) < _SMALL:
        return
    odd = [place for place in range(1, _PLACES + 1) if not _like_head(data, place, head)]
    if len(odd) > _PLACES // 2:
        raise HatchkitError("refuse_tail", dict(percent=100 * odd[0] // (_PLACES + 1)))
    most = limit("lines_most_million") * 1e6
    if len(data) > 6 * most and data.count(b"\n") > most:
        raise HatchkitError("refuse_too_many_lines", dict(millions=round(most / 1e6)))


def _like_head(data: bytes, place: int, head: Head) -> bool:
    """Whether the lines at one of the places have a stamp where those at the head have one."""
    start = len(data) * place // (_PLACES + 1)
    lines = data[start : start + _PIECE].decode("utf-8", "replace").split("\n")[1:-1]
    if head.dated_by in ("parts", "serial", "since"):
        return any(len(split_line(line, head.separator)) >= head.width - 1 for line in lines[:20])
    stamps = {n for n, cell in enumerate(head.sample[0]) if kind_of(cell)}
    for line in lines[:20]:
        cells = split_line(line, head.separator)
        if any(n < len(cells) and kind_of(cells[n]) for n in stamps):
            return True
    return False
