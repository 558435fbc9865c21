"""Which column is what? The words of the headings decide and the values check; without headings the behaviour decides.

Behaviour is a doubt with a question, never a silent choice.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, field

import numpy as np

from hatchkit.problems import HatchkitError
from hatchkit.records import times
from hatchkit.records.logs import behaviour, told
from hatchkit.records.logs.head import Head, is_number, parts_of
from hatchkit.records.logs.names import (
    MEASURES,
    is_share,
    name_rest,
    other_unit,
    part_of_time,
    plain,
    probe_name,
    role_of,
    statistic_of,
    unit_of,
)
from hatchkit.records.logs.since import counts, start_above, step_above
from hatchkit.records.logs.stamps import kind_of
from hatchkit.records.times.forms import zone_seconds

#: What a person can answer to "what is this column?".
CHOICES = ("temperature °C", "temperature °F", "temperature K", "humidity %", "not used")

#: Names that only number the columns: field 1, channel 2, sensor 3.
_NUMBERED = re.compile(r"(?:[a-z]{1,8} )?(?:field|column|col|ch|channel|kanal|canal|canale|value|val|wert|data|input|sensor|"
                       r"probe|fuhler|sonde|sonda|capteur|var|in|ai?|s|x|v) ?\d{1,2}")


@dataclass
class Channel:
    """One probe: its name, and the column number of each quantity it logs."""

    name: str
    columns: dict = field(default_factory=dict)
    units: dict = field(default_factory=dict)
    scales: dict = field(default_factory=dict)


@dataclass
class Plan:
    """What each column is taken for; column numbers count from 0.

    Attributes
    ----------
    stamp : list of int
        The stamp; or date and time, and perhaps AM/PM.
    parts : dict
        year, month, day, hour ... -> column, where they stand apart.
    epoch, clock_only : bool
    channels : list of Channel
    unit, probe, quantity : int or None
        Columns that say of each line which unit, probe or quantity it has.
    text, unused : list of int
    said : list
        Facts to tell (see `told`).
    asked : list of (heading, taken, choices)
        Questions.
    """

    stamp: list
    parts: dict = field(default_factory=dict)
    epoch: bool = False
    clock_only: bool = False
    serial: bool = False
    since: bool = False
    channels: list = field(default_factory=list)
    unit: int | None = None
    probe: int | None = None
    quantity: int | None = None
    text: list = field(default_factory=list)
    unused: list = field(default_factory=list)
    said: list = field(default_factory=list)
    asked: list = field(default_factory=list)
    by_behaviour: bool = False
    unit_above: str = ""


@dataclass
class _Column:
    """What is known of one column from its heading and from its cells in the first lines."""

    n: int
    name: str
    role: str
    unit: str
    statistic: str
    cells: list
    values: np.ndarray
    scale: float = 1.0

    @property
    def numeric(self) -> bool:
        filled = [cell for cell in self.cells if cell]
        return bool(filled) and len(self.values) >= 0.5 * len(filled)


def blocks(head: Head) -> list:
    """Where several logs stand side by side, each with its own stamps: the columns of each; else an empty list.

    Stamps that differ by the same time in every line are one clock told twice.
    """
    columns = [_column(head, n, {}) for n in range(head.width)]
    starts = [c for c in columns if _usual_kind(c) in ("both", "date")]
    if len(starts) < 2 or len({_usual_kind(c) for c in starts}) > 1:
        return []
    moments = [times.read([cell or None for cell in c.cells], True).moments for c in starts]
    if _usual_kind(starts[0]) == "both" and all(
            len(np.unique((other - moments[0])[~np.isnat(other - moments[0])])) < 2 for other in moments[1:]):
        return []
    edges = [0, *(c.n for c in starts[1:]), head.width]
    groups = [set(range(a, b)) for a, b in zip(edges, edges[1:], strict=False)]
    named = [any(c.n in group and c.role in ("temp", "rh", "value") for c in columns) for group in groups]
    clocks = [_usual_kind(starts[0]) == "both" or any(_usual_kind(columns[n]) == "time" for n in group) for group in groups]
    groups = [group for group, measured, timed in zip(groups, named, clocks, strict=True) if measured and timed]
    differ = _usual_kind(starts[0]) == "both" or _clocks_differ(columns)
    return groups if groups and differ else []


def _clocks_differ(columns: list) -> bool:
    clocks = [c.cells for c in columns if _usual_kind(c) == "time"]
    return len(clocks) > 1 and any(clock != clocks[0] for clock in clocks[1:])


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
    if head.separator == "," and head.header and _split_decimals(head):
        raise HatchkitError("a comma parts both its columns and its decimals, without quotes, so they cannot be "
                            "told apart; export it with semicolons or with decimal points")
    legend = _legend(head.preamble)
    columns = [_column(head, n, legend) for n in range(head.width)]
    for column in columns if only is not None else ():
        if column.n not in only:
            column.name, column.role, column.unit, column.cells, column.values = "", "", "", [], column.values[:0]
    plan = _stamp_columns(columns, head)
    taken = {*plan.stamp, *plan.parts.values()}
    free = [column for column in columns if column.n not in taken]
    hours = _hours(columns, plan)
    for column in free:
        column.role = _settled(column, hours)
    _name_turns(free)
    _take_answers(free, answers or {})
    if any(c.role in ("temp", "rh") for c in free):
        for column in free:
            column.role = "other" if column.role == "value" else column.role
    for role in ("unit", "probe", "quantity"):
        setattr(plan, role, next((c.n for c in free if c.role == role and any(c.cells)), None))
    if not any(c.role in ("temp", "wet_bulb", "value") for c in free):
        _by_behaviour(plan, head, columns, free)
    plan.text = [c.n for c in free if c.role == "text"]
    measures = _one_statistic([c for c in free if c.role in MEASURES or c.role == "value"], plan)
    if not any(c.role in ("temp", "rh", "value") for c in measures):
        raise HatchkitError("it has dates and times but no column of temperature or humidity"
                            + _headings_seen(head))
    plan.channels, plan.unit_above = _channels(measures), unit_above(head.preamble)
    if head.shifted:
        plan.said.append(told.shifted_heading())
    read = {n for channel in plan.channels for n in channel.columns.values()}
    plan.unused = [c.n for c in free if c.n not in read and c.role not in ("unit", "probe", "quantity", "text", "record")
                   and any(c.cells)]
    return plan


def _headings_seen(head: Head) -> str:
    return f"; its headings are {', '.join(name for name in head.header if name)[:150]}" if head.header else ""


def _legend(preamble) -> dict:
    """Short name of a column -> what the lines above the readings say it is: "T = temperature in 0.1 degrees C"."""
    found = {}
    for line in preamble:
        if match := re.match(r"[\W_]*(\w{1,12})\s*[=:]\s*(\D.{3,})$", line):
            found[match[1]] = match[2].strip()
    return found


_TENTHS = re.compile(r"\b0[.,]1\s*(?:°|deg|grad|graus|stop|st\b|%|c\b|f\b|k\b)|tenths?|zehntel|dixi[eè]mes?|decimi|d[eé]cimas|"
                     r"tiende|dziesi|desetin|tiond|tiend|tized", re.IGNORECASE)


def _column(head: Head, n: int, legend: dict) -> _Column:
    name = head.header[n] if head.header and n < len(head.header) else ""
    said = legend.get(name, "")
    name = f"{name} {said}" if said and role_of(said) in (*MEASURES, "other") and not (
        role_of(name) in MEASURES and unit_of(name)) else name
    scale = 0.1 if _TENTHS.search(name) else 1.0
    cells = [row[n].strip('"') if n < len(row) else "" for row in head.sample]
    unit_cell = head.units[n] if n < len(head.units) else ""
    role, unit = role_of(name) if name else "", unit_of(unit_cell) or unit_of(name)
    role = "" if role in ("quantity", "probe", "value", "record") and _NUMBERED.fullmatch(plain(name)) else role
    role = "" if not any(cells) else role
    if is_share(unit_cell) and role in ("", "probe", "machine", "value"):
        role, unit = "rh", ""
    elif unit_of(unit_cell) and role in ("", "probe", "machine", "record", "mean", "minimum", "maximum"):
        role = "temp"
    if role in ("", "probe", "record", "machine", "temp", "rh", "value") and (other_unit(unit_cell) or other_unit(name, heading=True)) and not (
            unit_of(name) or unit_of(unit_cell)):
        role = "other"
    values = np.array([_value(cell) for cell in cells if cell and is_number(cell)], dtype=float)
    return _Column(n, name, role, unit, statistic_of(name), cells, values * scale, scale)


def _value(cell: str) -> float:
    return float(re.sub(r"[^\d.+-]", "", re.sub(r"(?<=\d)[eE].*$", "", cell.replace(",", "."))))


def _split_decimals(head: Head) -> bool:
    """Whether every number of the readings seems to be cut at its decimal comma."""
    row = head.sample[0]
    stamps = sum(kind_of(cell) != "" for cell in row)
    names = len([name for name in head.header if name])
    numbers = len(row) - stamps
    return numbers >= 2 and numbers == 2 * (names - stamps) and all(
        cell.lstrip("-").isdigit() for row in head.sample[:50] for cell in row if not kind_of(cell))


def _usual_kind(column: _Column) -> str:
    kinds = [kind_of(cell) for cell in column.cells if cell]
    return max(set(kinds), key=kinds.count) if kinds else ""


def _stamp_columns(columns: list, head: Head) -> Plan:
    kinds = {c.n: _usual_kind(c) for c in columns}

    def first(wanted, named):
        at = [c for c in columns if kinds[c.n] == wanted]
        # Of two stamps the one that names its zone needs no guess; else the one that a heading calls so.
        at.sort(key=lambda c: (not _ZONE.search(c.name), c.role not in named))
        return at[0].n if at else None

    if head.dated_by == "parts":
        places = parts_of(head.header or [])
        apart = {part: n for part, n in places.items() if part in ("year", "month", "day") or len(places) > 3}
        if "hour" not in apart:
            clock = next((c.n for c in columns if c.role == "time" or kinds[c.n] == "time"), None)
            apart |= {"hour": clock} if clock is not None and kinds[clock] != "time" else {}
        if "hour" not in apart:
            raise HatchkitError("it has dates without a time of day")
        return Plan([], parts=apart)
    if head.dated_by == "serial":
        return Plan([next(c.n for c in columns if c.role in ("stamp", "date", "time"))], serial=True)
    if head.dated_by == "since":
        counting = next((c.n for c in columns if counts(c.name) and c.numeric), None)
        if counting is None and (start_above(head.preamble) is None or step_above(head.preamble) is None):
            raise HatchkitError("no line of it holds a date, and the lines above the readings do not say when it began and how "
                                "long a step is")
        return Plan([] if counting is None else [counting], since=True)
    both = first("both", ("stamp", "date", "time"))
    if both is not None:
        return Plan([both])
    date = first("date", ("date", "stamp"))
    time = first("time", ("time", "stamp"))
    if time is None and date is not None:
        # 18.30 or 1830 is a clock time only where its heading says so.
        time = next((c.n for c in columns if c.n != date and any(c.cells) and (
            c.role in ("time", "hour") or part_of_time(c.name) == "hour" and len(c.values)
            and ((c.values == np.round(c.values)) & (c.values >= 0) & (c.values <= 24)).all())), None)
    if date is not None and time is not None:
        half = [c.n for c in columns if c.n not in (date, time) and any(c.cells) and all(
            plain(cell).replace(" ", "") in ("am", "pm", "a", "p") for cell in c.cells if cell)]
        return Plan([date, time, *half[:1]])
    epoch = first("epoch", ("stamp", "time", "date"))
    if epoch is not None:
        return Plan([epoch], epoch=True)
    if date is not None:
        days = [cell for cell in columns[date].cells if cell]
        if len(days) > 3 and len(set(days)) < 0.7 * len(days):
            raise HatchkitError("it has dates without a time of day, and several lines a day")
        return Plan([date])
    if head.dated_by == "clock" and time is not None:
        return Plan([time], clock_only=True)
    raise HatchkitError("no column of it holds dates with times")


def _hours(columns: list, plan: Plan) -> list:
    """The hour that each of the first lines' stamps shows; None where it shows none."""
    if not plan.stamp or plan.epoch or plan.serial or plan.since:
        return []
    found = [times.stamp_of(cell) or times.clock_of(cell) for cell in columns[plan.stamp[-1]].cells]
    return [None if stamp is None or stamp.seconds is None else int(stamp.seconds // 3600) for stamp in found]


def _name_turns(free: list) -> None:
    """An unnamed column of few words that change from line to line: sensors that take turns."""
    if any(column.role == "probe" for column in free):
        return
    for column in free:
        cells = [cell for cell in column.cells if cell]
        if column.role == "text" and 2 <= len(set(cells)) <= 12 and len(cells) > 10 and role_of(column.name) == "" and (
                sum(a != b for a, b in zip(cells, cells[1:], strict=False)) > 0.3 * len(cells)):
            column.role = "probe"
            return


def _settled(column: _Column, hours: list) -> str:
    """The role of a column once its cells have been looked at."""
    role, filled = column.role, [cell for cell in column.cells if cell]
    decimal = any(re.search(r"\d[.,]\d", cell) for cell in filled)
    distinct = len(set(filled))
    if role in ("rh", "temp") and column.numeric and not column.unit and len(plain(column.name)) <= 2 and (
            behaviour.is_hour(column.values) or _same_hours(column, hours)):
        return "hour"  # "hr" is an hour or, in French, humidity
    if role in ("probe", "machine", "text", "quantity", "unit", "record") and column.numeric:
        if decimal and role in ("probe", "machine", "quantity"):
            return "temp" if column.unit else ""
        if behaviour.counts_up(column.values) or distinct > max(12, len(filled) // 3):
            return "record" if not decimal else ""
    if role in ("probe", "machine", "quantity") and len(filled) < len(column.cells) // 2:
        return "record"  # a serial number beside the first reading only
    if role in ("probe", "machine") and distinct > max(12, len(filled) // 2):
        return "text"
    if role == "machine":
        return "probe"
    if role == "" and column.unit and column.numeric:
        return "temp"
    if role in ("mean", "minimum", "maximum", "spread"):
        return "temp" if column.unit else "other"
    if role == "" and filled and not column.numeric:
        return "text"
    return role


def _same_hours(column: _Column, hours: list) -> bool:
    pairs = [(cell, hour) for cell, hour in zip(column.cells, hours, strict=False) if cell and hour is not None]
    return len(pairs) > 2 and sum(cell.lstrip("0") == str(hour or "") for cell, hour in pairs) > 0.9 * len(pairs)


def _take_answers(free: list, answers: dict) -> None:
    for column in free:
        choice = answers.get(column.name or f"column {column.n + 1}")
        if choice in CHOICES:
            column.role = {"t": "temp", "h": "rh", "n": "other"}[choice[0]]
            column.unit = choice[-1] if choice[0] == "t" else ""


def _by_behaviour(plan: Plan, head: Head, columns: list, free: list) -> None:
    """Where no heading is understood: temperature and humidity by how the numbers behave; doubted and asked."""
    kinds = {kind_of(cell) for n in plan.stamp for cell in columns[n].cells if cell}
    if kinds <= {"date", ""} and not plan.parts:
        raise HatchkitError("it has dates without a time of day, and no column named temperature or humidity")
    open_ = [c for c in free if c.role in ("", "probe", "machine", "record", "mean")
             and len(c.values) > 0.8 * sum(map(bool, c.cells)) and len(c.values) > 1]
    warm = {c.n: behaviour.warmth(c.values) for c in open_}
    marked = [c for c in open_ if sum(bool(unit_of(cell)) for cell in c.cells) > 0.9 * len(c.values)]
    best = max([score for score, _ in warm.values()], default=0.0)
    damp_by_unit = [c for c in open_ if sum("%" in cell for cell in c.cells) > 0.9 * len(c.values)]
    damp_by_name = [c for c in free if c.role == "rh"]
    # Beside a column that is called humidity only what is as warm as an incubator is taken for its temperature.
    least = 0.6 if damp_by_name else 0.3
    temps = marked or [c for c in open_ if warm[c.n][0] >= max(least, 0.75 * best) and c not in damp_by_unit]
    temps = [c for c in temps if abs(np.median(c.values) - np.median(temps[0].values)) < 5] if not marked else temps
    for column in temps:
        column.role, column.unit = "temp", column.unit
    rest = [c for c in open_ if c not in temps]
    guide = temps[0].values if temps else None
    damp = sorted(((behaviour.dampness(c.values, guide), -c.n, c) for c in rest), reverse=True)
    chosen = [] if damp_by_name else damp_by_unit or [c for score, _, c in damp[:1] if score >= 0.5]
    for column in chosen[:1]:
        column.role = "rh"
    if not temps and not chosen:
        return
    for column in rest:
        if column.role in ("", "probe", "machine"):
            column.role = "record" if behaviour.counts_up(column.values) else "other"
    plan.by_behaviour = True
    plan.said.append(told.by_behaviour(bool(head.header)))
    plan.probe = next((c.n for c in free if c.role == "probe"), None)
    for column in temps + chosen[:1]:
        unit = warm.get(column.n, (0, ""))[1] or "C"
        taken = f"temperature {'K' if unit == 'K' else '°' + unit}" if column.role == "temp" else "humidity %"
        plan.asked.append((column.name or f"column {column.n + 1}", taken, list(CHOICES)))


def _one_statistic(measures: list, plan: Plan) -> list:
    """Of mean, lowest and highest of one quantity the mean (or the reading itself) is kept."""
    kept = []
    for column in measures:
        same = [c for c in measures if c.role == column.role and name_rest(c.name) == name_rest(column.name)]
        readings = [c for c in same if c.statistic == ""] or [c for c in same if c.statistic == "mean"]
        if column.statistic == "spread" or (readings and column.statistic not in ("", "mean")) or (
                column.statistic == "mean" and any(c.statistic == "" for c in same)):
            continue
        kept.append(column)
    extremes = [c for c in kept if c.statistic in ("minimum", "maximum") and c.role == "temp"]
    if extremes:
        plan.said.append(told.only_extremes([c.name for c in extremes]))
    return kept


def _channels(measures: list) -> list:
    temps = [c for c in measures if c.role in ("temp", "value")]
    for column in list(temps[1:]):
        twins = [t for t in temps if t.n < column.n and name_rest(t.name) == name_rest(column.name)]
        if column.unit and any(t.unit and t.unit != column.unit for t in twins):
            # The same temperature once more in the other unit.
            temps.remove(column)
            measures = [m for m in measures if m is not column]
    names = {c.n: c.name for c in measures}
    if not any(c.unit for c in temps) and len({unit_of(c.name, bare=True) for c in temps}) == 1:
        for column in temps:
            column.unit = unit_of(column.name, bare=True)
            names[column.n] = re.sub(r"\s[CFK]$", "", column.name.strip()) if column.unit else column.name
    labels = [probe_name(names[t.n]) for t in temps]
    channels = [Channel(_once(labels, i) or f"channel {i + 1}", {"temp": t.n}, {"temp": t.unit},
                        {"temp": t.scale}) for i, t in enumerate(temps)]
    turns = _turns(measures)
    for column in (c for c in measures if c not in temps):
        role = column.role
        free = [c for c in channels if role not in c.columns]
        same = [c for c in free if "temp" in c.columns and name_rest(column.name) == name_rest(names[c.columns["temp"]])]
        before = [c for c in free if c.columns.get("temp", 10**6) < column.n]
        # The partner has the same words apart from the quantity; else it is the temperature just left of it; else the
        # first that lacks this quantity.
        partner = (same or (before[-1:] if turns else free if role == "rh" or len(channels) == 1 else []) or [None])[0]
        if partner is None and role == "rh":
            partner = free[0] if free and len(free) == 1 else Channel(
                probe_name(column.name) or f"channel {len(channels) + 1}")
            if partner not in channels:
                channels.append(partner)
        if partner is not None:
            partner.columns[role], partner.units[role] = column.n, column.unit
            partner.scales[role] = column.scale
    return channels


def _turns(measures: list) -> bool:
    order = [c.role for c in measures if c.role in ("temp", "rh", "value")]
    return order.count("temp") == order.count("rh") and order[::2] == ["temp"] * (len(order) // 2)


def _once(names: list, i: int) -> str:
    """The i-th name; where the same text stands above several columns, with its place in the order."""
    if not names[i] or names.count(names[i]) == 1:
        return names[i]
    return f"{names[i]} {names[: i + 1].count(names[i])}"


_ZONE = re.compile(r"(?<![A-Za-z])(?:UTC|GMT)\s*(?:[+-]\s*\d{1,2}(?::?\d{2})?)?(?![A-Za-z])")


def zone_offset(head: Head, plan: Plan) -> tuple[float | None, str]:
    """Seconds east of UTC named in the header of the stamp or above it, and the words that say so."""
    names = [head.header[n] for n in plan.stamp if n < len(head.header)] if head.header else []
    names = [re.sub(r"_", " ", name).replace("utc", "UTC") for name in names]
    for text in names + list(head.preamble):
        match = _ZONE.search(text)
        if match:
            return zone_seconds(match[0]), match[0].strip()
    return None, ""


_UNIT_ABOVE = re.compile(r"(?:unit|units|scale|einheit|unité|unità|unidad|eenheid|jednost\w+|jednotk\w+|enhet|enhed|egység)"
                         r"[^\n]{0,25}?[\s:;=,\t(]\W{0,3}(celsius|fahrenheit|kelvin|[CFK])(?![A-Za-z])", re.IGNORECASE)


def unit_above(preamble) -> str:
    """"C", "F" or "K" where the lines above the readings name the unit of temperature, else ""."""
    found = {match[1][0].upper() for line in preamble if (match := _UNIT_ABOVE.search(line))}
    return found.pop() if len(found) == 1 else ""
