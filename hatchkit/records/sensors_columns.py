"""Which column of a sensor file is what: stamp, temperature, humidity, unit, probe.

Header words come from ``reference/sensor_words.csv``; without a header the cells decide.
"""

from __future__ import annotations

import re
import unicodedata
from dataclasses import dataclass, field
from functools import cache

from hatchkit import reference
from hatchkit.problems import HatchkitError
from hatchkit.records import clock_words
from hatchkit.records.sensors_head import Head, is_number

#: Where a header holds words of two kinds, the first of these wins ("set temp" is no reading).
_ORDER = ("other", "wet_bulb", "dew_point", "rh", "temp", "stamp", "date", "time", "half_day", "unit",
          "value", "quantity", "probe", "machine", "record", "text", "summary")
MEASURES = ("temp", "rh", "wet_bulb", "dew_point")


@dataclass
class Channel:
    """One probe: its name, and the column number of each quantity it logs."""

    name: str
    columns: dict = field(default_factory=dict)
    units: dict = field(default_factory=dict)


@dataclass
class Plan:
    """What each column is taken for; column numbers count from 0."""

    stamp: list
    channels: list
    epoch: bool = False
    unit: int | None = None
    probe: int | None = None
    quantity: int | None = None
    offset: float | None = None
    text: list = field(default_factory=list)
    unused: list = field(default_factory=list)
    notes: list = field(default_factory=list)


def plain(text) -> str:
    """A header in plain small letters: no accents, marks or brackets; "Temp1_C" is "temp 1 c"."""
    text = re.sub(r"([a-zà-ÿ])([A-Z])(?=[A-Z_ \d(\[]|$|[a-z])", r"\1 \2", str(text))
    text = unicodedata.normalize("NFKD", text.replace("ß", "ss")).lower()
    text = "".join(c for c in text if not unicodedata.combining(c))
    text = re.sub(r"(?<=[^\W\d_])(?=\d)|(?<=\d)(?=[^\W\d_])", " ", text)
    return " ".join(re.sub(r"[\W_]+", " ", text).split())


@cache
def _words() -> dict:
    table = reference.load("sensor_words")
    return {plain(word): means for word, means in zip(table["word"], table["means"], strict=True)}


def role_of(header) -> str:
    """What the words of a header say the column is; "" if no word is known."""
    text = plain(header)
    known = _words()
    if text in known:
        return known[text]
    tokens = text.split()
    runs = {" ".join(tokens[i:j]) for i in range(len(tokens)) for j in range(i + 1, min(i + 4, len(tokens)) + 1)}
    found = {known[run]: len(run.split()) for run in sorted(runs, key=lambda r: len(r.split())) if run in known}
    if "stamp" in found or {"date", "time"} <= set(found):
        found["stamp"] = 9
    if found.get("summary") and "temp" in found and not {"mean", "avg", "average"} & set(tokens):
        return "other"
    for role in _ORDER:
        if role in found:
            return role
    return _role_of_letters(str(header).strip(), tokens)


def _role_of_letters(header: str, tokens: list) -> str:
    if re.fullmatch(r"[\[(]?\W{0,2}[CFK][\])]?", header) and re.search(r"\W", header):
        return "temp"
    if "%" in header or re.fullmatch(r"h(\s?\d+)?", " ".join(tokens)):
        return "rh"
    return "temp" if re.fullmatch(r"t(\s?\d+)?(\s[cf])?", " ".join(tokens)) else ""


def unit_of(header, *, bare=False) -> str:
    """"C", "F" or "K" where a header or unit cell names the unit of temperature, else "".

    `bare` also takes a letter that follows a blank only ("Temp C"), which may be a probe's name.
    """
    text = str(header).strip()
    if re.search(r"celsius|celcius|centigrade|deg\.?\s*c\b|degc\b|℃", text, re.IGNORECASE):
        return "C"
    if re.search(r"fahrenheit|deg\.?\s*f\b|degf\b|℉", text, re.IGNORECASE):
        return "F"
    if re.search(r"kelvin", text, re.IGNORECASE):
        return "K"
    # A degree sign often arrives garbled, so any mark before the letter counts.
    match = re.search(r"(?:[^\w\s][^\w\s]?\s?|_|(?<=[a-z]))([CFK])\s*[\])]?(?![\w])", text) or re.fullmatch(
        r"\W*([cfkCFK])\W*", text) or (re.search(r"_([cfk])$", text))
    if not match and bare:
        match = re.search(r"\s([CFK])$", text)
    return match[1].upper() if match else ""


def probe_name(header) -> str:
    """A header without its unit: "Temp A (°C)" is the probe "Temp A"."""
    text = re.sub(r"[\[(][^\])]*(?:[CFK%]|celsius|fahrenheit|rh|UTC|GMT[^\])]*)\s*[\])]", "", str(header),
                  flags=re.IGNORECASE)
    text = re.sub(r"\s*[^\w\s)]\s?[CFK]\s*$|\s*%.*$", "", text)
    return " ".join(text.split()).strip(" ,;:/_-") or str(header).strip()


def plan_columns(head: Head) -> Plan:
    """Decide what each column of the file is.

    Raises HatchkitError where there is no stamp or nothing to read.
    """
    if head.separator == "," and head.header and _split_decimals(head):
        raise HatchkitError("a comma parts both its columns and its decimals, without quotes, so they cannot be "
                            "told apart; export it with semicolons or with decimal points")
    cells = _columns(head)
    roles = [role_of(name) for name in head.header] if head.header else []
    roles += [""] * (len(cells) - len(roles))
    kinds = [_usual_kind(column) for column in cells]
    plan = _stamp_columns(roles, kinds, cells)
    free = [n for n in range(len(cells)) if n not in plan.stamp]
    units = [_unit_at(head, n) for n in range(len(cells))]
    for n in free:
        roles[n] = _settle_role(roles[n], cells[n], units[n], n, head)
    for role in ("unit", "probe", "quantity"):
        setattr(plan, role, next((n for n in free if roles[n] == role), None))
    plan.text = [n for n in free if roles[n] == "text"]
    if not any(roles[n] in MEASURES or roles[n] == "value" for n in free):
        _roles_from_values(plan, head, cells, roles, free)
    measures = [n for n in free if roles[n] in MEASURES or roles[n] == "value"]
    if not measures:
        raise HatchkitError("it has dates and times but no column of temperature or humidity")
    plan.channels = _channels(head, measures, roles, units)
    plan.unused = [n for n in free if n not in measures and roles[n] not in ("unit", "probe", "quantity", "text")
                   and any(cells[n])]
    return plan


def _split_decimals(head: Head) -> bool:
    """Whether every number of the readings seems to be cut at its decimal comma."""
    row = head.sample[0]
    stamps = sum(clock_words.kind_of(cell) != "" for cell in row)
    names = len([name for name in head.header if name])
    numbers = len(row) - stamps
    return numbers >= 2 and numbers == 2 * (names - stamps) and all(
        cell.lstrip("-").isdigit() for row in head.sample[:50] for cell in row if not clock_words.kind_of(cell))


def _columns(head: Head) -> list:
    return [[row[n] if n < len(row) else "" for row in head.sample] for n in range(head.width)]


def _usual_kind(column: list) -> str:
    kinds = [clock_words.kind_of(cell) for cell in column if cell]
    return max(set(kinds), key=kinds.count) if kinds else ""


def _stamp_columns(roles: list, kinds: list, cells: list) -> Plan:
    def first(wanted, named):
        at = [n for n, kind in enumerate(kinds) if kind == wanted]
        return next((n for n in at if roles[n] in named), at[0] if at else None)

    both = first("both", ("stamp", "date", "time"))
    if both is not None:
        return Plan([both], [])
    date, time = first("date", ("date", "stamp")), first("time", ("time", "stamp"))
    if date is not None and time is not None:
        stamp = [date, time]
        half = [n for n, column in enumerate(cells)
                if set(c.lower() for c in column if c) and {clock_words.words().get(c.lower()) for c in column if c}
                <= {"am", "pm"}]
        return Plan(stamp + half[:1], [])
    epoch = first("epoch", ("stamp", "time", "date"))
    if epoch is not None:
        return Plan([epoch], [], epoch=True)
    if date is not None:
        return Plan([date], [])
    raise HatchkitError("no column of it holds dates with times")


def _unit_at(head: Head, n: int) -> str:
    for row in (head.units, head.header):
        if row and n < len(row):
            unit = unit_of(row[n])
            if unit:
                return unit
    return ""


def _settle_role(role: str, column: list, unit: str, n: int, head: Head) -> str:
    filled = [cell for cell in column if cell]
    numeric = bool(filled) and sum(is_number(cell) for cell in filled) >= 0.5 * len(filled)
    if head.units and n < len(head.units) and role in ("", "probe"):
        role = "rh" if "%" in head.units[n] else "temp" if unit else role
    role = "probe" if role == "machine" else role
    if role in ("probe", "text", "unit", "quantity") and numeric and any(re.search(r"[.,]\d", c) for c in filled):
        return "temp" if role == "probe" or unit else "other"
    if role == "" and unit and numeric:
        return "temp"
    return role


def _roles_from_values(plan: Plan, head: Head, cells: list, roles: list, free: list) -> None:
    """Where no header names a quantity: temperatures and humidity told apart by their values."""
    kinds = {clock_words.kind_of(cell) for n in plan.stamp for cell in cells[n] if cell}
    if kinds <= {"date", ""}:
        raise HatchkitError("it has dates without a time of day, and no column named temperature or humidity")
    first = None
    for n in free:
        values = [float(re.sub(r"[^\d.+-]", "", c.replace(",", "."))) for c in cells[n] if c and is_number(c)]
        if not values or roles[n] not in ("", "probe"):
            if not values and roles[n] == "" and any(cells[n]):
                roles[n] = "text"
            continue
        middle = sorted(values)[len(values) // 2]
        warm = 5 <= middle <= 115 or 280 <= middle <= 320
        if any("%" in c for c in cells[n]):
            roles[n] = "rh"
        elif _counts_up(values):
            roles[n] = "record"
        elif any(unit_of(c) for c in cells[n]) or (warm and (first is None or abs(middle - first) < 5)):
            roles[n], first = "temp", middle if first is None else first
        elif "rh" not in roles and 0 <= middle <= 100:
            roles[n] = "rh"
    plan.text = [n for n in free if roles[n] == "text"]
    plan.notes.append("no header names a temperature or humidity; the columns were told apart by their values"
                      if head.header else "the file has no header; the columns were told apart by their values")


def _counts_up(values: list) -> bool:
    """Whether a column is a running number, a repeated or missing line allowed."""
    steps = [b - a for a, b in zip(values, values[1:], strict=False)]
    return bool(steps) and all(v == int(v) for v in values) and steps.count(1.0) >= 0.7 * len(steps)


def _channels(head: Head, measures: list, roles: list, units: list) -> list:
    names = {n: (head.header[n] if head.header and n < len(head.header) else "") for n in measures}
    temps = [n for n in measures if roles[n] in ("temp", "value")]
    if not any(units[n] for n in temps) and len({unit_of(names[n], bare=True) for n in temps}) == 1:
        for n in temps:
            units[n] = unit_of(names[n], bare=True)
            names[n] = re.sub(r"\s[CFK]$", "", names[n].strip()) if units[n] else names[n]
    channels = [Channel(_once([probe_name(names[t]) for t in temps], i) or f"channel {i + 1}",
                        {"temp": t}, {"temp": units[t]}) for i, t in enumerate(temps)]
    for n in (n for n in measures if n not in temps):
        role = roles[n]
        free = [c for c in channels if role not in c.columns]
        same = [c for c in free if "temp" in c.columns and _rest(names[n]) == _rest(names[c.columns["temp"]])]
        before = [c for c in free if c.columns.get("temp", 10**6) < n]
        # The partner has the same words apart from the quantity; else it is the temperature just
        # left of it; else the first that lacks this quantity.
        partner = (same or (before[-1:] if _turns(measures, roles) else free) or free or [None])[0]
        if partner is None:
            partner = Channel(probe_name(names[n]) or f"channel {len(channels) + 1}")
            channels.append(partner)
        partner.columns[role], partner.units[role] = n, units[n]
    return channels


def _turns(measures: list, roles: list) -> bool:
    order = [roles[n] for n in measures if roles[n] in ("temp", "rh")]
    return order.count("temp") == order.count("rh") and order[::2] == ["temp"] * (len(order) // 2)


def _rest(header) -> tuple:
    known = _words()
    return tuple(t for t in plain(probe_name(header)).split() if known.get(t) not in MEASURES and t != "relative")


def _once(names: list, i: int) -> str:
    """The i-th name; where the same text stands above several columns, with its place in the order."""
    if not names[i] or names.count(names[i]) == 1:
        return names[i]
    return f"{names[i]} {names[: i + 1].count(names[i])}"


def zone_offset(head: Head) -> tuple[float | None, str]:
    """Seconds east of UTC named in the header of the stamp or above it, and the words that say so."""
    for text in (head.header or []) + list(head.preamble):
        match = re.search(r"\b(?:UTC|GMT)\s*(?:[+-]\s*\d{1,2}(?::?\d{2})?)?(?!\w)", text)
        if match and (role_of(text) in ("stamp", "date", "time") or text in head.preamble):
            return clock_words.offset_seconds(match[0]), match[0]
    return None, ""
