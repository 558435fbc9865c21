"""The whole text in one call of the parser; row i is line `first` + i."""

from __future__ import annotations

import csv
import io
import re
import warnings

import pandas as pd

from hatchkit.problems import HatchkitError
from hatchkit.records.logs.cells import split_line
from hatchkit.records.logs.head import Head
from hatchkit.records.logs.stamps import kind_of
from hatchkit.records.marks import limit


def count_lines(data: bytes, head, rows: int) -> int:
    """Lines of the text, the last one also without a line end.

    Where neither quotes nor stray marks can join or part lines, each row that was read is one line.
    """
    if not head.quoted and head.sample and b"\r" not in data and b"\x00" not in data[-65_536:]:
        return head.first + rows
    return data.count(b"\n") + (not data.endswith(b"\n") and len(data) > 0)


def parse_whole(data: bytes, head, plan, account) -> tuple[bytes, pd.DataFrame]:
    """The file parsed, and its text; quote marks without a partner are taken out where they join lines."""
    try:
        raw = parse(data, head, plan)
        if not head.quoted or head.first + len(raw) == count_lines(data, head, len(raw)):
            return data, raw
    except ValueError as error:
        if not head.quoted:
            raise HatchkitError("refuse_lines", dict(why=str(error))) from error
    lines = data.split(b"\n")
    odd = [number for number, line in enumerate(lines) if line.count(b'"') % 2]
    for number in odd:
        lines[number] = lines[number].replace(b'"', b"")
    if odd:
        account.say("doubtful", "log_lone_quotes", row=odd[0] + 1, count=len(odd), line=odd[0] + 1)
    data = b"\n".join(lines)
    try:
        return data, parse(data, head, plan)
    except ValueError as error:
        raise HatchkitError("refuse_lines", dict(why=str(error))) from error


def parse(data: bytes, head, plan) -> pd.DataFrame:
    """All lines from the first reading on, in one call of the C parser; row i is line `head.first` + i.

    Columns are named by their number. Dates in ISO order are parsed with it, others stay text.
    """
    told = (plan.unit, plan.probe, plan.quantity, plan.zone, plan.minute)
    words = [n for n in [*plan.stamp, *told, *plan.text] if n is not None]
    used = sorted({*words, *plan.parts.values(), *(n for channel in plan.channels for n in channel.columns.values())})
    start = 0
    for _ in range(head.first):
        start = data.index(b"\n", start) + 1
    text = io.BytesIO(data)
    text.seek(start)
    # Names are texts: pandas takes a number in parse_dates for a place among the columns used.
    names = [str(n) for n in range(max(head.width, max(used) + 1))]
    as_words = {str(n): str for n in words}
    options: dict = {}
    if _iso(head, plan):
        as_words.pop(str(plan.stamp[0]))
        options = dict(parse_dates=[str(plan.stamp[0])], date_format="ISO8601")
    elif plan.epoch:
        as_words.pop(str(plan.stamp[0]))
    with warnings.catch_warnings():
        # A column of numbers with a text in some part of it is expected here and settled afterwards.
        warnings.simplefilter("ignore", pd.errors.DtypeWarning)
        raw = pd.read_csv(
            text,
            sep=r"\s+" if head.separator == " " else head.separator,
            header=None,
            names=names,
            usecols=[str(n) for n in used],
            dtype=as_words,
            decimal=head.decimal,
            skip_blank_lines=False,
            skipinitialspace=head.spaced,
            quoting=csv.QUOTE_MINIMAL if head.quoted else csv.QUOTE_NONE,
            engine="c",
            encoding="utf-8",
            encoding_errors="replace",
            **options,
        )
    raw.columns = [int(name) for name in raw.columns]
    return raw


def _iso(head, plan) -> bool:
    if len(plan.stamp) != 1 or head.dated_by != "stamp" or plan.epoch:
        return False
    cells = [row[plan.stamp[0]] for row in head.sample if plan.stamp[0] < len(row)]
    return all(_ISO.fullmatch(cell) for cell in cells[:50])


#: Year-month-day with a clock time and no zone, which the parser reads by itself.
_ISO = re.compile(r"\d{4}-\d\d-\d\d[ T]\d\d:\d\d(:\d\d(\.\d{1,6})?)?")
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
