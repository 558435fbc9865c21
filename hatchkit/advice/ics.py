"""A calendar file that any calendar program reads (RFC 5545, iCalendar).

Only what a plan needs: one VEVENT per step with start, end, summary, description and a reminder.
"""

from __future__ import annotations

import uuid

import pandas as pd

#: Fixed name space, so that the same plan gives the same UIDs and an updated file replaces the old events.
_SPACE = uuid.UUID("6f1d3a70-52cb-4a58-9f0e-2b7a1c9d4e11")


def escape(text) -> str:
    """TEXT value: backslash, semicolon, comma and line breaks escaped (RFC 5545, 3.3.11)."""
    text = str(text).replace("\\", "\\\\").replace(";", "\\;").replace(",", "\\,")
    return text.replace("\r\n", "\\n").replace("\n", "\\n")


def fold(line: str) -> str:
    """Content line folded at 75 octets, never inside a character (RFC 5545, 3.1)."""
    parts, current, room = [], "", 75
    for letter in line:
        if len((current + letter).encode("utf-8")) > room:
            parts.append(current)
            current, room = "", 74  # the blank that opens a continued line counts
        current += letter
    return "\r\n ".join([*parts, current])


def utc(time) -> str:
    """DATE-TIME in UTC (form 2 of RFC 5545, 3.3.5)."""
    return pd.Timestamp(time).tz_convert("UTC").strftime("%Y%m%dT%H%M%SZ")


def calendar_text(calendar: pd.DataFrame, *, title: str, stamp) -> str:
    """The calendar file as text with CRLF line ends.

    Parameters
    ----------
    calendar : DataFrame
        Columns step, starts (tz-aware), ends (tz-aware), what, why.
    title : str
        Name of the plan; with the step it makes each event's UID.
    stamp : Timestamp, tz-aware
        When the file was made (DTSTAMP).
    """
    lines = [
        "BEGIN:VCALENDAR",
        "VERSION:2.0",
        "PRODID:-//hatchkit//next set//EN",
        "CALSCALE:GREGORIAN",
        "METHOD:PUBLISH",
    ]
    for row in calendar.to_dict("records"):
        lines += _event(row, title, stamp)
    return "".join(fold(line) + "\r\n" for line in [*lines, "END:VCALENDAR"])


def _event(row: dict, title: str, stamp) -> list[str]:
    unique = uuid.uuid5(_SPACE, f"{title}|{row['step']}")
    return [
        "BEGIN:VEVENT",
        f"UID:{unique}",
        f"DTSTAMP:{utc(stamp)}",
        f"DTSTART:{utc(row['starts'])}",
        f"DTEND:{utc(row['ends'])}",
        f"SUMMARY:{escape(row['what'])}",
        f"DESCRIPTION:{escape(title + '. ' + row['why'])}",
        "TRANSP:TRANSPARENT",
        "BEGIN:VALARM",
        "ACTION:DISPLAY",
        f"DESCRIPTION:{escape(row['what'])}",
        "TRIGGER:-PT2H",
        "END:VALARM",
        "END:VEVENT",
    ]
