"""Read one logger's file: any separator, decimal mark, encoding, order of dates, unit, layout and set of channels.

The head of each text is looked at, everything is decided, and the whole is parsed once.
"""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from pathlib import Path

import numpy as np

from hatchkit import problems as _problems
from hatchkit.problems import HatchkitError
from hatchkit.records.logs.cells import marks_joined
from hatchkit.records.logs.channels import channel_readings
from hatchkit.records.logs.columns import plan_columns
from hatchkit.records.logs.head import HEAD_BYTES, read_head
from hatchkit.records.logs.join import COLUMNS, empty_readings, join_files
from hatchkit.records.logs.lines import Account, cuts_of, sort_lines
from hatchkit.records.logs.moments import order_heading, times_of
from hatchkit.records.logs.parse import count_lines, parse_whole, refuse_odd_bulk
from hatchkit.records.logs.plan import ORDER_CHOICES
from hatchkit.records.logs.texts import of_bytes, texts_of
from hatchkit.records.logs.when import blocks
from hatchkit.records.times import OPEN, stamp_of

__all__ = ["COLUMNS", "Wishes", "is_log", "read_accounted", "read_parts", "read_readings"]
#: Heading of the question on the code page of a file.
ENCODING = "?log_encoding"


@dataclass(frozen=True)
class Wishes:
    """What the person said about a file beforehand.

    `answers` holds the answers to earlier questions: (file or part of it, heading) -> choice, and for one part
    heading -> choice; `others` the orders of dates of other files.
    """

    timezone: str | None = None
    temp_unit: str | None = None
    day_first: bool | None = None
    channel: str | None = None
    pressure_kpa: float = 101.325
    still_air: bool = False
    spans: tuple = ()
    shown_in: str | None = None
    answers: dict = field(default_factory=dict)
    others: tuple = ()


def read_readings(path, *, timezone=None, temp_unit=None, day_first=None, channel=None):
    """Read the readings of one logger file.

    Parameters
    ----------
    path : path
        Text (comma, semicolon, tab, bar or blanks between the columns, labelled lines, JSON), workbook, or archive of
        those.
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
    """As `read_readings`, but returns the Account with the count of every kind of line, and the questions.

    `name` is what the file is called in the tables; the file name by default.
    """
    parts, account = read_parts(path, wishes, name=name)
    if len(parts) == 1:
        return parts[0], account
    readings, rows = join_files(parts)
    account.rows.extend(rows)
    return readings, account


def read_parts(path, wishes: Wishes, *, name=None) -> tuple[list, Account]:
    """The readings of each log that one file holds (sheets, members of an archive, sections), and their Account."""
    path = Path(path)
    name = name or path.name
    account, parts, refused = Account(name, zone=wishes.shown_in), [], []
    try:
        texts = texts_of(path, lambda part: wishes.answers.get((f"{name}/{part}" if part else name, ENCODING)))
    except HatchkitError as error:
        raise _refused(name, error) from error
    for text in texts:
        label = f"{name}/{text.part}" if text.part else name
        own = Account(label, zone=wishes.shown_in, shift=text.shift)
        mine = replace(wishes, answers={at[1]: choice for at, choice in wishes.answers.items() if at[0] == label})
        for said in text.said:
            own.say(**said)
        if text.pages:
            own.ask(
                ENCODING,
                next(iter(text.pages)),
                text.pages,
                text.data.count(b"\n"),
                "log_encoding",
                names=[f"“{read}” ({page})" for page, read in text.pages.items()],
            )
        try:
            if text.data or not text.said:
                parts.extend(_read_text(text.data, own, mine))
        except HatchkitError as error:
            refused.append(_refused(label, error))
            own.say("note", "log_part_refused", part=text.part, why=error.reason())
        account.add(own)
    if refused and not any(len(part) for part in parts):
        raise refused[0]
    return parts or [empty_readings()], account


def _refused(name: str, error: HatchkitError) -> HatchkitError:
    """That a file is no log, and why."""
    return HatchkitError("log_refused", dict(name=name, why=error.reason()))


def _read_text(data: bytes, account: Account, wishes: Wishes) -> list:
    """Readings of one text, a table for each of its sections."""
    head = read_head(data)
    if not head.sample:
        account.lines["lines"] = count_lines(data, head, 0)
        account.count("no_readings", "lost", account.lines["lines"])
        return [empty_readings()]
    if head.separator == " " and (joined := marks_joined(data, head.width)) != data:
        data, head = joined, read_head(joined)
    refuse_odd_bulk(data, head)
    parts = []
    for place, only in enumerate(blocks(head) or [None]):
        # Of logs side by side each line is counted once.
        own = (
            account
            if place == 0
            else Account(account.file, zone=account.zone, shift=account.shift, first_line=account.first_line)
        )
        parts.extend(_read_block(data, head, plan_columns(head, wishes.answers, only), own, wishes))
        if place:
            account.questions.extend(own.questions)
            account.rows.extend(row for row in own.rows if row["severity"] != "lost")
    return parts


def _read_block(data: bytes, head, plan, account: Account, wishes: Wishes) -> list:
    given = data
    data, raw = parse_whole(data, head, plan, account)
    when = times_of(raw, head, plan, wishes, account.file)
    if cuts := cuts_of(data, head, when):
        return _read_sections(given, cuts, account, wishes)
    total = account.lines["lines"] = count_lines(data, head, len(raw)) + account.shift
    _count_head(account, head)
    for said in plan.said:
        account.say(**said)
    for heading, taken, choices in plan.asked:
        account.ask(heading, taken, choices, len(raw), "log_column")
    if plan.unused:
        names = [
            head.header[n] if head.header and n < len(head.header) and head.header[n] else f"column {n + 1}"
            for n in plan.unused
        ]
        account.say("note", "log_unused", names=names)
    _say_order(account, when, plan, head, raw)
    keep = sort_lines(account, data, head, plan, raw, when)
    readings = channel_readings(raw, head, plan, when, keep, wishes, account)
    # Lines that the parser did not give back as rows: a quoted line break, an end mark.
    account.count("in_quotes", "doubtful", max(total - account.shift - head.first - len(raw), 0))
    return [readings]


def _read_sections(data, cuts, account, wishes) -> list:
    ends = np.flatnonzero(np.frombuffer(data, dtype=np.uint8) == 10)
    edges = [0, *(int(ends[number - 1]) + 1 for number in cuts), len(data)]
    account.say("note", "log_sections", row=cuts[0] + 1 + account.shift, count=len(cuts) + 1)
    parts = []
    for place, (start, stop) in enumerate(zip(edges, edges[1:], strict=False)):
        before = cuts[place - 1] if place else 0
        own = Account(account.file, zone=account.zone, shift=account.shift, first_line=before + account.first_line)
        try:
            parts.extend(_read_text(data[start:stop], own, wishes))
        except HatchkitError as error:
            own.lines["lines"] = data[start:stop].count(b"\n") + (not data[start:stop].endswith(b"\n"))
            own.count("section", "lost", own.lines["lines"], first=before + 1, why=error.reason())
        account.add(own)
    return parts


def is_log(path) -> bool:
    """Whether the first lines of a file are plainly those of a log.

    They are where a header names a temperature or humidity, or where ten lines at least have a date
    with a time of day.
    """
    if not Path(path).is_file():
        return False
    try:
        with open(path, "rb") as handle:
            start = handle.read(HEAD_BYTES + 1)
        whole = start[: start.rfind(b"\n") + 1] if len(start) > HEAD_BYTES and b"\n" in start else start
        head = read_head(of_bytes(whole).data)
        if not head.sample:
            return False
        plan = plan_columns(head)
    except (HatchkitError, OSError):
        return False
    named = {quantity for channel in plan.channels for quantity in channel.columns} - {"value"}
    return bool(named) and (not plan.by_behaviour or len(head.sample) >= 10 and not plan.epoch)


def _say_order(account, when, plan, head, raw) -> None:
    if not plan.stamp or not when.order.how:
        return
    column = order_heading(head, plan)
    account.facts["order"] = when.order
    dates = (row[plan.stamp[0]] for row in head.sample if plan.stamp[0] < len(row))
    example = next((date for date in dates if (stamp := stamp_of(date)) and stamp.layout in OPEN), None)
    if example is None:
        return
    order, sure = when.order, when.order.sure >= 0.9
    if not sure:
        choices = dict.fromkeys([order.order, *ORDER_CHOICES])
        account.ask(column, order.order, choices, len(raw), "log_date_order")
    account.say(
        "note" if sure or order.how == "dots" else "doubtful",
        "log_order" if sure else "log_order_open",
        row=None if sure else head.first + 1,
        column=column,
        example=example,
        order=order.order,
        how=None if order.how == "nothing" else order.how,
        against=list(order.against),
    )


def _count_head(account, head) -> None:
    if account.shift:
        return
    if head.first == 1 and len(head.header_lines) == 1:
        # Nothing to tell: nearly every log begins so. The line is counted all the same.
        account.lines["header"] = 1
    elif head.first:
        titled = head.header_lines and head.header_lines[0]
        above = "both" if titled else "header" if head.header else "title"
        account.count("top", "note", head.first, above=above)
