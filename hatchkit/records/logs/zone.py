"""In which zone did the logger's clock stand, as the file itself says: by a heading, a line above, or in each line?"""

from __future__ import annotations

import re

import numpy as np
import pandas as pd

from hatchkit.records import times
from hatchkit.records.logs.names import plain
from hatchkit.records.logs.plan import Plan
from hatchkit.records.times import zones
from hatchkit.records.times.forms import zone_seconds
from hatchkit.records.times.words import zones as zone_words

_ZONE = re.compile(r"(?<![A-Za-z])(?:UTC|GMT)\s*(?:[+-]\s*\d{1,2}(?::?\d{2})?)?(?![A-Za-z])")
_REGION = re.compile(
    r"(?<![\w/])(?:Europe|America|Africa|Asia|Australia|Atlantic|Pacific|Indian|Etc)/[A-Za-z_]+"
    r"(?:/[A-Za-z_]+)?(?:[+-]\d{1,2})?(?![\w/])"
)
_SUMMER = re.compile(
    r"\bdst\b|summer ?time|daylight|sommerzeit|heure d.[ée]t[ée]|ora legale|hor[aá]rio de ver|"
    r"zomertijd|czas letni|letn[íi] [čc]as|sommartid|sommertid|ny[áa]ri id",
    re.IGNORECASE,
)
_OFF = re.compile(r"\b(?:off|no|0|false|aus|nein|non|nee|nie|ne|nej|nem|ei|disabled|arrêt|não|nao)\W*$", re.IGNORECASE)
_NAMES = {
    "utc offset",
    "offset utc",
    "gmt offset",
    "tz",
    "tz offset",
    "time zone",
    "timezone",
    "zone",
    "zeitzone",
    "fuso orario",
    "fuseau horaire",
    "zona horaria",
    "fuso horario",
    "tijdzone",
    "strefa czasowa",
    "casove pasmo",
    "tidszon",
    "tidszone",
    "tidssone",
    "idozona",
    "aikavyohyke",
    "utc",
    "gmt",
    "offset",
    "tzoffset",
    "utcoffset",
}


def _told(name: str) -> str:
    return re.sub(r"\b(utc|gmt)\b", lambda match: match[0].upper(), name.replace("_", " "))


def names_zone(name: str) -> bool:
    """Whether a heading says UTC or GMT, perhaps with an offset."""
    return bool(_ZONE.search(_told(name)))


def zone_above(head, plan: Plan, local) -> tuple[float | str | None, str, bool]:
    """The zone named in the heading of the stamp or above it.

    A line above that gives a moment in a zone (when the log was downloaded, say) tells the zone of its readings only if
    that moment is the first or the last of them in `local`.

    Returns
    -------
    zone : float, str or None
        Seconds east of UTC, or the name of a zone.
    words : str
        As they stand there.
    summer : bool
        Whether summer time is spoken of beside an offset, so that the clock may be an hour off in summer.
    """
    names = [head.header[n] for n in plan.stamp if n < len(head.header)] if head.header else []
    for name in names:
        words = re.findall(r"[A-Z]{2,5}", re.sub(r"^.*?(?=[(\[,]|\s\S+$)", "", name))
        if found := [word for word in words if word.lower() in zone_words() and word not in ("UTC", "GMT")]:
            return zone_words()[found[0].lower()], found[0], False
    for text in [*map(_told, names), *head.preamble]:
        if match := _REGION.search(text):
            return match[0], match[0], False
        if match := _ZONE.search(text):
            if text in head.preamble and _of_another_moment(text, local):
                continue
            beside = text[match.end() :] if text in head.preamble else ""
            said = _SUMMER.search(beside)
            return zone_seconds(match[0]), match[0].strip(), bool(said) and not _OFF.search(beside)
    return None, "", False


def _of_another_moment(text: str, local) -> bool:
    good = local[~np.isnat(local)]
    ends = {good[0], good[-1]} if len(good) else set()
    found = [one.moment for one in times.find(text, True) if one.kind == "date" and one.hour_written]
    return bool(found) and not any(abs(moment - end) < np.timedelta64(1, "m") for moment in found for end in ends)


def true_clock(columns: list, kinds: dict, both: int | None) -> int | None:
    """A column of Unix seconds beside a stamp that shows other hours: the count is UTC, the stamp some clock's time."""
    if both is None or names_zone(columns[both].name):
        return None
    counting = [
        column
        for column in columns
        if kinds[column.n] == "epoch" and column.role in ("stamp", "time", "date", "", "record")
    ]
    shown = times.read([cell or None for cell in columns[both].cells], True) if counting else None
    if shown is None or shown.offset is not None:
        return None
    for column in counting:
        counted = times.read([cell or None for cell in column.cells], True).moments
        apart = (shown.moments - counted).astype("timedelta64[s]").astype(np.int64)[~np.isnat(shown.moments - counted)]
        off = np.round(apart / 900) * 900
        if len(apart) > 1 and off.any() and (np.abs(apart - off) < 120).all() and (np.abs(off) <= 50_400).all():
            return column.n
    return None


def zone_column(free: list) -> tuple[int | None, bool]:
    """The column that says of each line in which zone its clock stood, and whether it says so by a number."""
    for column in free:
        name = plain(re.sub(r"[\[(].*", "", column.name))
        cells = {cell for cell in column.cells if cell}
        if name not in _NAMES or not cells:
            continue
        if all(_seconds(cell) is not None or _REGION.fullmatch(cell) for cell in cells):
            return column.n, False
        if ("offset" in name or name in ("utc", "gmt")) and all(_number(cell) is not None for cell in cells):
            return column.n, True
    return None, False


def _seconds(cell: str) -> float | None:
    text = cell.strip().lower()
    known = text in zone_words() or re.fullmatch(r"(?:utc|gmt|z)?\s?(?:[+-]\s?\d{1,2}(?::?\d{2})?)?", text)
    return zone_seconds(text) if known and text and not re.fullmatch(r"[+-]?0?", text) else None


def _number(cell: str) -> float | None:
    """Seconds of an offset in hours, minutes or seconds, told apart by its size."""
    if not re.fullmatch(r"[+-]?\d+(?:\.\d+)?", cell):
        return None
    value = float(cell)
    value *= 3600 if abs(value) <= 14 else 60 if abs(value) <= 840 else 1
    return value if abs(value) <= 50_400 and value % 900 == 0 else None


def put_zones(stamps, cells: np.ndarray, numbers: bool) -> None:
    """Give each stamp that carries no offset that of the column of zones.

    Raises HatchkitError where a zone is named that does not exist.
    """
    codes, distinct = pd.factorize(cells)
    offset = np.full(len(cells), np.nan)
    for code, cell in enumerate(distinct):
        mine = codes == code
        text = str(cell).strip()
        if not numbers and _REGION.fullmatch(text):
            utc, _ = zones.to_utc(np.where(mine, stamps.local, np.datetime64("NaT", "us")), text)
            offset[mine] = ((stamps.local - utc).astype("timedelta64[us]").astype(np.int64) / 1e6)[mine]
            continue
        seconds = _number(text) if numbers else _seconds(text)
        if seconds is not None:
            offset[mine] = seconds
    stamps.offset = offset if stamps.offset is None else np.where(np.isnan(stamps.offset), offset, stamps.offset)


def hours_apart(seconds: float) -> str:
    """UTC+01:00 of an offset in seconds."""
    minutes = round(abs(seconds) / 60)
    return f"UTC{'-' if seconds < 0 else '+'}{minutes // 60:02d}:{minutes % 60:02d}"


#: Headings of the questions on the logger's zone, and on a clock that was put right by hand.
ZONE, CLOCK = "?log_zone", "?log_clock"
PUT_RIGHT = ("put_right", "kept_old_time")


def utc_of(stamps, head, plan, wishes, account) -> np.ndarray:
    """Times in UTC, and the note that says which zone was taken."""
    if stamps.offset is not None:
        given = np.isfinite(stamps.offset)
        own = stamps.local - (np.nan_to_num(stamps.offset) * 1e6).astype("timedelta64[us]")
        if given[~np.isnat(stamps.local)].all():
            return own
    offset, words, summer = zone_above(head, plan, stamps.local)
    named = wishes.timezone if offset is None else offset if isinstance(offset, str) else None
    if isinstance(offset, str):
        account.say("note", "log_zone_said", clock=words)
    if summer:
        offset, named = _summer(stamps, offset, words, wishes, account)
    if offset is not None and named is None:
        account.say("note", "log_zone_said", clock=words)
        return stamps.local - np.timedelta64(int(float(offset) * 1e6), "us")
    if named is None:
        account.say("note", "log_zone_none")
    utc, notes = zones.to_utc(stamps.local, named, put_right=wishes.answers.get(CLOCK) != PUT_RIGHT[1])
    if any(code == "clock_put_right" for _, code, _ in notes):
        account.ask(CLOCK, PUT_RIGHT[0], PUT_RIGHT, len(utc), "log_clock")
    for severity, code, facts in notes:
        account.say(severity, code, **facts)
    return utc if stamps.offset is None else np.where(given, own, utc)


def _summer(stamps, offset, words, wishes, account) -> tuple[float | None, str | None]:
    """Offset or zone of a file that names an offset and speaks of summer time.

    The season's zone is taken where its winter time is that offset; else it is asked, and the offset holds.
    """
    if wishes.timezone is not None:
        winter = np.array(["2025-01-15", "2025-07-15"], dtype="datetime64[D]")
        zone = zones.zone_of(wishes.timezone)
        if min([0] if zone is None else zones.offsets_at(zone, winter)) == offset * 1e6:
            return None, wishes.timezone
    choices = [hours_apart(offset), hours_apart(offset + 3600)]
    taken = wishes.answers.get(ZONE)
    if taken not in choices:
        account.ask(ZONE, choices[0], choices, len(stamps.local), "log_zone")
        account.say("doubtful", "log_summer_open", clock=words, taken=choices[0], other=choices[1])
    return (offset + 3600 if taken == choices[1] else offset), None
