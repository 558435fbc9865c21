"""Which column is what? The words of the headings decide and the values check; without headings the behaviour decides.

Behaviour is a doubt with a question, never a silent choice.
"""

from __future__ import annotations

import re

from hatchkit.problems import HatchkitError
from hatchkit.records.logs.guess import (
    ask_values,
    by_behaviour_of,
    counts_up,
    doubt_by_values,
    is_hour,
    letter_of_damp,
    nameless_values,
    warmth,
)
from hatchkit.records.logs.head import Head
from hatchkit.records.logs.names import (
    MEASURES,
    plain,
    role_of,
)
from hatchkit.records.logs.pairs import channels_of, one_statistic
from hatchkit.records.logs.plan import CHOICES, UNIT_CHOICES, Column, Plan, column_of, legend_of
from hatchkit.records.logs.stamps import kind_of
from hatchkit.records.logs.when import hours_of, stamp_columns, unit_above
from hatchkit.records.logs.zone import zone_column
from hatchkit.records.marks import limit


def plan_columns(head: Head, answers=None, only=None) -> Plan:
    """Decide what each column of the file is.

    Parameters
    ----------
    head : Head
    answers : dict, optional
        Heading -> one of `CHOICES`.
    only : set of int, optional
        Columns of one block, see `blocks`.

    Raises
    ------
    HatchkitError
        Where there is no stamp or nothing to read.
    """
    if head.separator == "," and (head.header and _split_decimals(head) or _odd_digits(head)):
        raise HatchkitError("refuse_commas", {})
    legend = legend_of(head.preamble)
    columns = [column_of(head, n, legend) for n in range(head.width)]
    for column in columns if only is not None else ():
        if column.n not in only:
            column.name, column.role, column.unit, column.cells, column.values = "", "", "", [], column.values[:0]
    plan = stamp_columns(columns, head)
    taken = {*plan.stamp, *plan.parts.values(), plan.minute}
    free = [column for column in columns if column.n not in taken]
    hours = hours_of(columns, plan)
    for column in free:
        column.role = _settled(column, hours)
    damp = [c for c in free if c.role == "rh"]
    if any(plain(c.name) for c in damp):
        # "(%)" alone is humidity only where no other column bears its name.
        for column in damp:
            column.role = "rh" if plain(column.name) or not column.name else "other"
    _name_turns(free)
    _take_answers(free, answers or {})
    measuring = sum(column.role in MEASURES for column in free)
    if measuring > limit("probes_most"):
        raise HatchkitError("refuse_many_columns", dict(count=measuring, most=limit("probes_most")))
    if any(c.role in ("temp", "rh") for c in free):
        for column in free:
            column.role = "other" if column.role == "value" else column.role
    if any(c.role in ("unit", "probe", "quantity") for c in free) and not any(c.role in MEASURES for c in free):
        for column in free:
            # Mean, lowest and highest of each interval, of which the unit or the probe says the quantity.
            if column.statistic == "mean" and column.numeric and not any(c.role == "value" for c in free):
                column.role, column.statistic = "value", ""
    for role in ("unit", "probe", "quantity"):
        setattr(plan, role, next((c.n for c in free if c.role == role and any(c.cells)), None))
    for column in letter_of_damp(free):
        column.role, column.unit = "rh", ""
        if column.name not in (answers or {}):
            plan.asked.append((column.name, "rh", list(CHOICES)))
    if not any(c.role in ("temp", "rh", "wet_bulb") for c in free) and (
        found := nameless_values(plan, free, head.preamble)
    ):
        ask_values(plan, found, columns)
    if not any(c.role in ("temp", "wet_bulb", "value") for c in free) and not plan.by_behaviour:
        by_behaviour_of(plan, head, columns, free)
    else:
        doubt_by_values(plan, [c for c in free if (c.name or f"column {c.n + 1}") not in (answers or {})])
    if head.header and any(c.role == "temp" for c in free):
        plan.asked += [
            (f"column {c.n + 1}", "not_used", list(CHOICES))
            for c in free
            if c.role == "" and not c.name and warmth(c.values)[0] >= 0.6
        ]
    plan.zone, plan.zone_numbers = zone_column(free)
    plan.text = [c.n for c in free if c.role == "text" and c.n != plan.zone]
    measures = one_statistic([c for c in free if c.role in MEASURES or c.role == "value"], plan)
    if not any(c.role in ("temp", "rh", "value") for c in measures):
        headings = ", ".join(name for name in head.header or [] if name)[:150]
        raise HatchkitError("refuse_no_measure", dict(headings=headings))
    plan.channels, plan.unit_above = channels_of(measures), unit_above(head.preamble)
    for channel in plan.channels:
        if "rh" in channel.columns:
            channel.columns = {key: n for key, n in channel.columns.items() if key in ("temp", "rh")}
    extra = [name for name in (head.header or [])[max(map(len, head.sample)) :] if name]
    if any(role_of(name) in MEASURES for name in extra):
        plan.said.append(dict(severity="doubtful", code="log_headings_more", names=extra))
    if head.shifted:
        plan.said.append(dict(severity="doubtful", code="log_headings_fewer"))
    if twins := [c.name or f"column {c.n + 1}" for c in free if c.role == "twin"]:
        plan.said.append(dict(severity="note", code="log_twins", names=twins))
    read = {n for channel in plan.channels for n in channel.columns.values()}
    known = ("unit", "probe", "quantity", "text", "record", "twin")
    plan.unused = [c.n for c in free if c.n not in read and c.n != plan.zone and c.role not in known and any(c.cells)]
    return plan


def _split_decimals(head: Head) -> bool:
    """Whether every number of the readings seems to be cut at its decimal comma."""
    row = head.sample[0]
    stamps = sum(kind_of(cell) != "" for cell in row)
    names = len([name for name in head.header if name])
    numbers = len(row) - stamps
    return (
        numbers >= 2
        and numbers == 2 * (names - stamps)
        and all(cell.lstrip("-").isdigit() for row in head.sample[:50] for cell in row if not kind_of(cell))
    )


def _odd_digits(head: Head) -> bool:
    """Whether a column of single digits without a name follows one of whole numbers: tenths behind a decimal comma."""
    named = sum(map(bool, head.header)) if head.header else 0
    if named >= head.width or len(head.sample) < 4 or head.quoted:
        return False
    rows = [row for row in head.sample[:200] if len(row) == head.width]
    cells = list(zip(*rows, strict=True)) if rows else []
    for one, two in zip(cells, cells[1:], strict=False):
        digits = [cell for cell in two if re.fullmatch(r"\d", cell)]
        whole = sum(bool(re.fullmatch(r"-?\d{1,3}", cell)) for cell in one)
        if len(digits) > 0.95 * len(rows) and whole > 0.95 * len(rows) and len(set(digits)) > 3:
            return True
    return False


def _name_turns(free: list) -> None:
    """An unnamed column of few words that change from line to line: sensors that take turns."""
    if any(column.role == "probe" for column in free):
        return
    for column in free:
        cells = [cell for cell in column.cells if cell]
        if (
            column.role == "text"
            and 2 <= len(set(cells)) <= 12
            and len(cells) > 10
            and role_of(column.name) == ""
            and (sum(a != b for a, b in zip(cells, cells[1:], strict=False)) > 0.3 * len(cells))
        ):
            column.role = "probe"
            return


def _settled(column: Column, hours: list) -> str:
    """The role of a column once its cells have been looked at."""
    role, filled = column.role, [cell for cell in column.cells if cell]
    decimal = any(re.search(r"\d[.,]\d", cell) for cell in filled)
    distinct = len(set(filled))
    if (
        role in ("rh", "temp")
        and column.numeric
        and not column.unit
        and len(plain(column.name)) <= 2
        and (is_hour(column.values) or _same_hours(column, hours))
    ):
        return "hour"  # "hr" is an hour or, in French, humidity
    if role in ("temp", "rh") and not decimal and len(column.values) > 20 and counts_up(column.values):
        return "record"  # "Temp #" numbers the readings
    if role in ("probe", "machine", "quantity") and len(filled) < len(column.cells) // 2:
        return "record"  # a serial number beside the first reading only
    if role in ("probe", "machine", "text", "quantity", "unit", "record") and column.numeric:
        if decimal and role in ("probe", "machine", "quantity"):
            return "temp" if column.unit else ""
        if counts_up(column.values) or distinct > max(12, len(filled) // 3):
            return "record" if not decimal else ""
    if role in ("probe", "machine") and distinct > max(12, len(filled) // 2):
        return "text"  # a remark in each line, and no probe for each
    if role == "machine":
        return "probe"
    if role in ("", "mean", "minimum", "maximum") and column.unit and column.numeric:
        return "temp"
    if role == "" and filled and not column.numeric:
        return "text"
    return role


def _same_hours(column: Column, hours: list) -> bool:
    pairs = [(cell, hour) for cell, hour in zip(column.cells, hours, strict=False) if cell and hour is not None]
    return len(pairs) > 2 and sum(cell.lstrip("0") == str(hour or "") for cell, hour in pairs) > 0.9 * len(pairs)


def _take_answers(free: list, answers: dict) -> None:
    for column in free:
        choice = answers.get(column.name or f"column {column.n + 1}")
        if choice in CHOICES:
            column.role = {"rh": "rh", "not_used": "other"}.get(choice, "temp")
            column.unit = choice[-1] if choice in UNIT_CHOICES else ""
