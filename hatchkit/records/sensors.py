"""Read one logger's file: any separator, decimal mark, encoding, order of dates, unit and set of channels.

The head of the file is looked at, everything is decided, and the whole is parsed once.
"""

from __future__ import annotations

import csv
import io
import os
import warnings
from dataclasses import dataclass
from pathlib import Path

import numpy as np
import pandas as pd

from hatchkit import problems as _problems
from hatchkit.problems import HatchkitError
from hatchkit.records import (
    clock,
    sensors_bulk,
    sensors_channels,
    sensors_columns,
    sensors_head,
    sensors_lines,
)
from hatchkit.records.marks import limit
from hatchkit.spelling import many

COLUMNS = ["incubator", "probe", "time", "temp_c", "rh_pct", "file", "doubt", "temp_logged_c"]


@dataclass(frozen=True)
class Wishes:
    """What the person said about a file beforehand."""

    timezone: str | None = None
    temp_unit: str | None = None
    day_first: bool | None = None
    channel: str | None = None
    pressure_kpa: float = 101.325
    still_air: bool = False
    spans: tuple = ()
    mark: bool = True
    shown_in: str | None = None


def read_readings(path, *, timezone=None, temp_unit=None, day_first=None, channel=None):
    """Read the readings of one logger file.

    Parameters
    ----------
    path : path
        Text file: comma, semicolon, tab, bar or blanks between the columns.
    timezone : str, optional
        Zone of the logger's clock, for example "Europe/Rome". Without it (and without one in the
        file) the clock is taken as it stands.
    temp_unit : {"C", "F", "K"}, optional
        Unit of the temperatures; overrides what the file says.
    day_first : bool, optional
        Order of day and month where the file leaves it open.
    channel : str, optional
        Read this probe only.

    Returns
    -------
    readings : DataFrame
        Columns of the table `readings` (reference/columns_records.csv), sorted by probe and time;
        `incubator` is "".
    problems : DataFrame
        What was assumed, doubted or left out, with line numbers. Lines in the file = lines with
        readings + lines counted here + the header, if it is the one line above the readings.

    Raises
    ------
    HatchkitError
        If the file cannot be opened or is no sensor log; the sentence says why.
    """
    readings, account = read_accounted(path, Wishes(timezone, temp_unit, day_first, channel, shown_in=timezone))
    return readings, _problems.table(account.rows)


def read_accounted(path, wishes: Wishes, *, name=None):
    """As `read_readings`, but returns the Account with the count of every kind of line.

    `name` is what the file is called in the tables; the file name by default.
    """
    path = Path(path)
    name = name or path.name
    try:
        data, _ = sensors_head.as_utf8(load_bytes(path))
        head = sensors_head.read_head(data)
        account = sensors_lines.Account(name, zone=wishes.shown_in)
        if not head.sample:
            return _without_readings(data, head, account)
        plan = sensors_columns.plan_columns(head)
        sensors_bulk.refuse_odd_bulk(data, head)
        data, raw = _parse_whole(data, head, plan, account)
    except HatchkitError as error:
        raise HatchkitError(f"{name} cannot be read as a sensor log: {error}.") from error
    total = account.lines["lines"] = count_lines(data, head, len(raw))
    _count_head(account, head)
    for note in plan.notes:
        account.say("doubtful", note, "check that the right columns were taken",
                    "put a line of names above the readings")
    if plan.unused:
        names = [head.header[n] if head.header and n < len(head.header) else f"column {n + 1}" for n in plan.unused]
        account.say("note", f"columns that are no temperature or humidity of the air: {', '.join(names)}",
                    "not used")
    stamps = _stamps(raw, plan, wishes)
    _say_order(account, stamps, plan, head)
    keep = sensors_lines.sort_lines(account, data, head, plan, raw, stamps)
    readings = sensors_channels.channel_readings(raw, head, plan, stamps, keep, wishes, account)
    _count_rest(account, total, len(raw), head)
    return readings, account


def is_log(path) -> bool:
    """Whether the first lines of a file are plainly those of a log.

    They are where a header names a temperature or humidity, or where ten lines at least have a date
    with a time of day.
    """
    if not Path(path).is_file():
        return False
    try:
        with open(path, "rb") as handle:
            head = sensors_head.read_head(sensors_head.as_utf8(handle.read(sensors_head.HEAD_BYTES + 1))[0])
        if not head.sample:
            return False
        plan = sensors_columns.plan_columns(head)
    except (HatchkitError, OSError):
        return False
    named = {quantity for channel in plan.channels for quantity in channel.columns} - {"value"}
    return bool(named) and (not plan.notes or len(head.sample) >= 10 and not plan.epoch)


def load_bytes(path: Path) -> bytes:
    """The file as it is now; what a logger adds while it is read is left for the next time."""
    if path.exists() and not path.is_file():
        # A pipe would be waited for without end.
        raise HatchkitError("it cannot be opened (it is not an ordinary file)")
    try:
        with open(path, "rb") as handle:
            size = os.fstat(handle.fileno()).st_size
            most = limit("file_most_mb")
            if size > most * 1e6:
                raise HatchkitError(f"it is larger than {most:.0f} MB; split it by month")
            data = handle.read(size)
    except OSError as error:
        raise HatchkitError(f"it cannot be opened ({error.strerror or error})") from error
    if b"\r" in data[:65_536] and b"\n" not in data[:65_536] and b"\x00" not in data[:100]:
        data = data.replace(b"\r", b"\n")
    return data


def count_lines(data: bytes, head, rows: int) -> int:
    """Lines of the text, the last one also without a line end.

    Where neither quotes nor stray marks can join or part lines, each row that was read is one line.
    """
    if not head.quoted and head.sample and b"\r" not in data and b"\x00" not in data[-65_536:]:
        return head.first + rows
    return data.count(b"\n") + (not data.endswith(b"\n") and len(data) > 0)


def _parse_whole(data: bytes, head, plan, account) -> tuple[bytes, pd.DataFrame]:
    """The file parsed, and its text; quote marks without a partner are taken out where they join lines."""
    try:
        raw = parse(data, head, plan)
        if not head.quoted or head.first + len(raw) == count_lines(data, head, len(raw)):
            return data, raw
    except pd.errors.ParserError as error:
        if not head.quoted:
            raise HatchkitError(f"its lines cannot be told apart ({error})") from error
    lines = data.split(b"\n")
    odd = [number for number, line in enumerate(lines) if line.count(b'"') % 2]
    for number in odd:
        lines[number] = lines[number].replace(b'"', b"")
    if odd:
        account.say("doubtful", f"a quote mark without a partner in {many(len(odd), 'line')}, the first is line "
                    f"{odd[0] + 1}", "the mark is passed over",
                    "look at these lines in a text editor", row=odd[0] + 1)
    data = b"\n".join(lines)
    try:
        return data, parse(data, head, plan)
    except pd.errors.ParserError as error:
        raise HatchkitError(f"its lines cannot be told apart ({error})") from error


def parse(data: bytes, head, plan) -> pd.DataFrame:
    """All lines from the first reading on, in one call of the C parser; row i is line `head.first` + i.

    Columns are named by their number. Dates in ISO order are parsed with it, others stay text.
    """
    used = sorted({*plan.stamp, *plan.text, *(n for n in (plan.unit, plan.probe, plan.quantity) if n is not None),
                   *(n for channel in plan.channels for n in channel.columns.values())})
    start = 0
    for _ in range(head.first):
        start = data.index(b"\n", start) + 1
    text = io.BytesIO(data)
    text.seek(start)
    as_text = {n: str for n in [*plan.stamp, plan.unit, plan.probe, plan.quantity, *plan.text] if n is not None}
    options: dict = {}
    if _iso(head, plan):
        as_text.pop(plan.stamp[0])
        options = dict(parse_dates=[plan.stamp[0]], date_format="ISO8601")
    elif plan.epoch:
        as_text.pop(plan.stamp[0])
    with warnings.catch_warnings():
        # A column of numbers with a text in some part of it is expected here and settled afterwards.
        warnings.simplefilter("ignore", pd.errors.DtypeWarning)
        return pd.read_csv(text, sep=r"\s+" if head.separator == " " else head.separator, header=None,
                           names=list(range(max(head.width, max(used) + 1))), usecols=used, dtype=as_text,
                           decimal=head.decimal, skip_blank_lines=False, skipinitialspace=head.spaced,
                           quoting=csv.QUOTE_MINIMAL if head.quoted else csv.QUOTE_NONE, engine="c",
                           encoding="utf-8", encoding_errors="replace", **options)


def _iso(head, plan) -> bool:
    if len(plan.stamp) != 1 or plan.epoch:
        return False
    cells = [row[plan.stamp[0]] for row in head.sample if plan.stamp[0] < len(row)]
    return all(clock.is_plain_iso(cell) for cell in cells[:50])


def _stamps(raw, plan, wishes) -> clock.Stamps:
    first = raw[plan.stamp[0]]
    if first.dtype.kind == "M":
        return clock.Stamps(first.to_numpy().astype("datetime64[us]", copy=False))
    if plan.epoch:
        return clock.read_epoch(pd.to_numeric(first, errors="coerce").to_numpy())
    clocks = None
    if len(plan.stamp) > 1:
        clocks = sensors_lines.as_text(raw[plan.stamp[1]])
        if len(plan.stamp) > 2:
            half = sensors_lines.as_text(raw[plan.stamp[2]])
            clocks = np.array([f"{a} {b}" if isinstance(a, str) and isinstance(b, str) else a
                               for a, b in zip(clocks, half, strict=True)], dtype=object)
    return clock.read_stamps(sensors_lines.as_text(first), clocks, day_first=wishes.day_first, spans=wishes.spans)


def _say_order(account, stamps, plan, head) -> None:
    words = clock.ORDER_WORDS[stamps.order]
    column = head.header[plan.stamp[0]] if head.header and plan.stamp[0] < len(head.header) else ""
    example = head.sample[0][plan.stamp[0]]
    if stamps.decided == "nothing":
        account.say("doubtful", f"dates such as {example} can be read in more than one order",
                    f"read as {words}", "write day_first = true or false under [sensors] in season.toml",
                    row=head.first + 1, column=column)
    elif stamps.decided == "batches":
        account.say("doubtful", f"dates such as {example} can be read in more than one order",
                    f"read as {words}, which falls into the season's batches",
                    "write day_first = true or false under [sensors] in season.toml",
                    row=head.first + 1, column=column)
    elif stamps.decided:
        why = {"rule": "as day_first says", "continuity": "only so do the days follow each other",
               "a day above 12": "other orders give days that do not exist",
               "dots": "dates with dots are written day first"}[stamps.decided]
        account.say("note", f"dates such as {example}", f"read as {words}: {why}", column=column)


def _count_head(account, head) -> None:
    if head.first == 1 and head.header_line == 0:
        # Nothing to tell: nearly every log begins so. The line is counted all the same.
        account.lines["header line"] = 1
    elif head.first:
        above = "title and header" if head.header_line else "header" if head.header else "title"
        account.count(f"lines at the top ({above})", "note", head.first, "not readings")


def _count_rest(account, total, read, head) -> None:
    """Lines that the parser did not give back as rows (a quoted line break, an end mark)."""
    missing = total - head.first - read
    account.count("lines that run on inside quotes or after the end mark", "doubtful", max(missing, 0), "left out",
                  "open the file in a text editor and look for a stray quote mark")


def _without_readings(data, head, account):
    account.lines["lines"] = count_lines(data, head, 0)
    account.count("lines and no readings", "lost", account.lines["lines"],
                  "the file has the header of a log and nothing below it", "export the log again")
    return empty_readings(), account


def empty_readings() -> pd.DataFrame:
    """A readings table without rows."""
    frame = pd.DataFrame({name: pd.Series(dtype="str") for name in COLUMNS})
    frame["time"] = pd.Series(dtype="datetime64[us, UTC]")
    for name in ("temp_c", "rh_pct", "temp_logged_c"):
        frame[name] = pd.Series(dtype=float)
    return frame
