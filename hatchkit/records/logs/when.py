"""Which columns say when, in which zone, and are there several logs side by side?"""

from __future__ import annotations

import re
from statistics import mode

import numpy as np

from hatchkit.problems import HatchkitError
from hatchkit.records import times
from hatchkit.records.logs.head import Head, parts_of
from hatchkit.records.logs.moments import refuse_written_days
from hatchkit.records.logs.names import part_of_time, plain
from hatchkit.records.logs.plan import Plan, column_of
from hatchkit.records.logs.since import counts, is_elapsed, start_above, step_above
from hatchkit.records.logs.stamps import kind_of, midnight_off
from hatchkit.records.logs.zone import names_zone, true_clock


def blocks(head: Head) -> list:
    """Where several logs stand side by side, each with its own stamps: the columns of each; else an empty list.

    Stamps that differ by the same time in every line are one clock told twice.
    """
    kinds = [usual_of([row[n].strip('"') if n < len(row) else "" for row in head.sample]) for n in range(head.width)]
    stamped = [kind for kind in kinds if kind in ("both", "date")]
    if len(stamped) < 2 or len(set(stamped)) > 1:
        return []
    columns = [column_of(head, n, {}) for n in range(head.width)]
    starts = [c for c, kind in zip(columns, kinds, strict=True) if kind in ("both", "date")]
    moments = [times.read([cell or None for cell in c.cells], True).moments for c in starts]
    timed = stamped[0] == "both"
    if timed and all(len(np.unique((other - moments[0])[~np.isnat(other - moments[0])])) < 2 for other in moments[1:]):
        return []
    edges = [0, *(c.n for c in starts[1:]), head.width]
    groups = [set(range(a, b)) for a, b in zip(edges, edges[1:], strict=False)]
    named = [any(c.n in group and c.role in ("temp", "rh", "value") for c in columns) for group in groups]
    clocks = [timed or any(usual_of(columns[n].cells) == "time" for n in group) for group in groups]
    groups = [group for group, measured, clock in zip(groups, named, clocks, strict=True) if measured and clock]
    shown = [c.cells for c in columns if usual_of(c.cells) == "time"]
    return groups if timed or any(cells != shown[0] for cells in shown[1:]) else []


def usual_of(cells: list) -> str:
    """The kind of stamp that most of some cells have, "" where none has one."""
    kinds = [kind_of(cell) for cell in cells if cell]
    # Of kinds that are as common the first, whatever the order in which Python keeps a set.
    return mode(kinds) if kinds else ""


def stamp_columns(columns: list, head: Head) -> Plan:
    """Which columns say when, by what their cells look like and their headings say."""
    kinds = {c.n: usual_of(c.cells) for c in columns}

    def first(wanted, named):
        at = [c for c in columns if kinds[c.n] == wanted]
        # Of two stamps the one that names its zone needs no guess; else the one that a heading calls so.
        at.sort(key=lambda c: (not names_zone(c.name), c.role not in named))
        return at[0].n if at else None

    if head.dated_by == "parts":
        places = parts_of(head.header or [])
        apart = {
            part: n
            for part, n in places.items()
            if part in ("year", "month", "day", "yearday") or len(places) > 2 + ("yearday" not in places)
        }
        if "hour" not in apart:
            clock = next((c.n for c in columns if c.role == "time" or kinds[c.n] == "time"), None)
            apart |= {"hour": clock} if clock is not None and kinds[clock] != "time" else {}
        in_days = "yearday" in apart and any("." in cell for cell in columns[apart["yearday"]].cells)
        if "hour" not in apart and not in_days:
            raise HatchkitError("refuse_no_time", {})
        return Plan([], parts=apart)
    if head.dated_by == "serial":
        return Plan([next(c.n for c in columns if c.role in ("stamp", "date", "time"))])
    if head.dated_by == "since":
        if dated := [c for c in columns if c.role == "date" and c.numeric]:
            raise HatchkitError("refuse_no_date_column", dict(column=dated[0].name, example=dated[0].cells[0]))
        counting = next((c.n for c in columns if counts(c.name) and c.numeric), None)
        if counting is None and (start_above(head.preamble) is None or step_above(head.preamble) is None):
            lacks = "start" if start_above(head.preamble) is None else "step"
            raise HatchkitError("refuse_no_date", dict(lacks=lacks))
        return Plan([] if counting is None else [counting], since=True)
    both = first("both", ("stamp", "date", "time"))
    if (epoch := true_clock(columns, kinds, both)) is not None:
        return Plan([epoch], epoch=True)
    # Days that a spreadsheet shows with midnight are days, if beside them stand times that change.
    midnights = both is not None and all(midnight_off(cell) != cell for cell in columns[both].cells if cell)
    date = both if midnights else first("date", ("date", "stamp"))
    time = first("time", ("time", "stamp"))
    if time is None and date is not None:
        # 18.30 or 1830 is a clock time only where its heading says so.
        time = next(
            (
                c.n
                for c in columns
                if c.n != date
                and any(c.cells)
                and (
                    c.role in ("time", "hour")
                    or part_of_time(c.name) == "hour"
                    and len(c.values)
                    and ((c.values == np.round(c.values)) & (c.values >= 0) & (c.values <= 24)).all()
                )
            ),
            None,
        )
    if both is not None and (not midnights or time is None or len(set(columns[time].cells)) < 2):
        return Plan([both])
    if date is not None and time is not None:
        half = [
            c.n
            for c in columns
            if c.n not in (date, time)
            and any(c.cells)
            and all(plain(cell).replace(" ", "") in ("am", "pm", "a", "p") for cell in c.cells if cell)
        ]
        minute = [c.n for c in columns if c.n not in (date, time) and part_of_time(c.name) == "minute" and any(c.cells)]
        bare = all(re.fullmatch(r"\d{1,2}", cell) for cell in columns[time].cells if cell)
        return Plan([date, time, *half[:1]], minute=minute[0] if minute and bare else None)
    epoch = first("epoch", ("stamp", "time", "date"))
    if epoch is not None:
        refuse_written_days(columns[epoch].cells)
        return Plan([epoch], epoch=True)
    if date is not None:
        days = [cell for cell in columns[date].cells if cell]
        if len(days) > 3 and len(set(days)) < 0.7 * len(days):
            raise HatchkitError("refuse_no_time_several", {})
        return Plan([date])
    if head.dated_by == "clock" and time is not None:
        elapsed = is_elapsed(columns[time].name, columns[time].cells)
        return Plan([time], since=elapsed, clock_only=not elapsed)
    raise HatchkitError("refuse_no_stamp", {})


def hours_of(columns: list, plan: Plan) -> list:
    """The hour that each of the first lines' stamps shows; None where it shows none."""
    if not plan.stamp or plan.epoch or plan.since:
        return []
    found = [times.stamp_of(cell) or times.clock_of(cell) for cell in columns[plan.stamp[-1]].cells]
    return [None if stamp is None or stamp.seconds is None else int(stamp.seconds // 3600) for stamp in found]


_UNIT_ABOVE = re.compile(
    r"(?:unit|units|scale|einheit|unité|unità|unidad|eenheid|jednost\w+|jednotk\w+|enhet|enhed|"
    r"egység)"
    r"[^\n]{0,25}?[\s:;=,\t(]\W{0,3}(celsius|fahrenheit|kelvin|[CFK])(?![A-Za-z])",
    re.IGNORECASE,
)


def unit_above(preamble) -> str:
    """ "C", "F" or "K" where the lines above the readings name the unit of temperature, else ""."""
    found = {match[1][0].upper() for line in preamble if (match := _UNIT_ABOVE.search(line))}
    return found.pop() if len(found) == 1 else ""
