"""Which column of a sensor file is what: stamp, temperature, humidity, unit, probe.

The words of the header decide (`sensors_names`); without a header the cells do.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, field

from hatchkit.problems import HatchkitError
from hatchkit.records import clock_words
from hatchkit.records.sensors_head import Head, is_number
from hatchkit.records.sensors_names import MEASURES, name_rest, probe_name, role_of, unit_of


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
    plan = _stamp_columns(roles, kinds, cells, head.header or [])
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
    read = {n for channel in plan.channels for n in channel.columns.values()}
    plan.unused = [n for n in free if n not in read and roles[n] not in ("unit", "probe", "quantity", "text")
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


def _stamp_columns(roles: list, kinds: list, cells: list, header: list) -> Plan:
    def first(wanted, named):
        at = [n for n, kind in enumerate(kinds) if kind == wanted]
        # Of two stamps the one that names its zone needs no guess.
        at.sort(key=lambda n: not (n < len(header) and _ZONE.search(header[n])))
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
    for n in temps[1:]:
        twins = [t for t in temps if t < n and probe_name(names[t]) == probe_name(names[n])]
        if units[n] and any(units[t] and units[t] != units[n] for t in twins):
            # The same temperature once more in the other unit.
            temps, measures = [t for t in temps if t != n], [m for m in measures if m != n]
    if not any(units[n] for n in temps) and len({unit_of(names[n], bare=True) for n in temps}) == 1:
        for n in temps:
            units[n] = unit_of(names[n], bare=True)
            names[n] = re.sub(r"\s[CFK]$", "", names[n].strip()) if units[n] else names[n]
    channels = [Channel(_once([probe_name(names[t]) for t in temps], i) or f"channel {i + 1}",
                        {"temp": t}, {"temp": units[t]}) for i, t in enumerate(temps)]
    for n in (n for n in measures if n not in temps):
        role = roles[n]
        free = [c for c in channels if role not in c.columns]
        same = [c for c in free
                if "temp" in c.columns and name_rest(names[n]) == name_rest(names[c.columns["temp"]])]
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


def _once(names: list, i: int) -> str:
    """The i-th name; where the same text stands above several columns, with its place in the order."""
    if not names[i] or names.count(names[i]) == 1:
        return names[i]
    return f"{names[i]} {names[: i + 1].count(names[i])}"


_ZONE = re.compile(r"\b(?:UTC|GMT)\s*(?:[+-]\s*\d{1,2}(?::?\d{2})?)?(?!\w)")


def zone_offset(head: Head, plan: Plan) -> tuple[float | None, str]:
    """Seconds east of UTC named in the header of the stamp or above it, and the words that say so."""
    names = [head.header[n] for n in plan.stamp if n < len(head.header)] if head.header else []
    for text in names + list(head.preamble):
        match = _ZONE.search(text)
        if match:
            return clock_words.offset_seconds(match[0]), match[0].strip()
    return None, ""
