"""What are the columns called? Headings of one line or several, groups above, units below, one name too few."""

from __future__ import annotations

import re

from hatchkit.records.logs.cells import split_line
from hatchkit.records.logs.names import is_share, other_unit, role_of, statistic_of, unit_of
from hatchkit.records.logs.stamps import kind_of


def heading_lines(cells: list, first: int, width: int, separator: str = ",") -> list:
    """Numbers of the lines above the first reading that can be headings: at most five, words in most of their cells."""
    block: list = []
    for number in range(first - 1, max(first - 12, -1), -1):
        filled = [cell for cell in cells[number] if cell.strip("-=:+# ")]
        if not filled:
            continue
        worded = sum(bool(re.search(r"[^\W\d_]|[°%#]", cell)) for cell in filled)
        wide = len(cells[number]) >= max(2, width - 2) or len(filled) >= max(2, width - 2)
        if separator == " " and not block and not wide and is_units(filled):
            block.insert(0, number)  # units below some of the names only
            continue
        if not (wide and worded >= len(filled) / 2 and len(filled) >= 1) or len(block) == 5:
            break
        if cells[number][0][:1] == "#" and len(cells[number][0]) > 1 and block:
            break
        kinds = {kind_of(cell) for cell in filled}
        if "both" in kinds or "date" in kinds and not _known(cells[number]):
            break
        block.insert(0, number)
    return block


def _known(row: list) -> int:
    return sum(
        role_of(cell)
        not in ("", "record", "text", "summary", "mean", "minimum", "maximum", "spread", "second", "minute")
        or bool(unit_of(cell))
        for cell in row
        if cell
    )


def headings_of(cells, block, lines, separator, sample) -> tuple[list, list, int]:
    """One name for each column, from one line of headings or several; the cells of the line of units; the main line."""
    if not block:
        return [], [], 0
    named = [number for number in block if not is_units(cells[number])]
    named = [number for number in named or block[:1] if _known(cells[number])]
    if not named:
        return [], [], 0
    filled = {number: sum(map(bool, cells[number])) for number in named}
    main = max(
        (number for number in named if filled[number] >= 0.6 * max(filled.values())),
        key=lambda number: (_known(cells[number]), -number),
    )
    names = _aligned(lines[main], separator, sample[0])
    if len(names) < len(sample[0]) and all(row[0].isdigit() for row in sample):
        # Line numbers without a heading, and one heading over a date and a time.
        moved = _aligned(lines[main], separator, sample[0][1:])
        names = ["", *moved] if len(moved) == len(sample[0]) - 1 > len(names) else names
    units: list = []
    for number in block:
        row = cells[number]
        if number > main and is_units(row):
            units = _below(lines[number], lines[main]) if separator == " " and len(row) < len(names) else row
        elif number > main and sum(map(bool, row)) > 1 and not any(re.fullmatch(r"-?\d+[.,]\d+", cell) for cell in row):
            names = _joined(names, row)
        elif number < main and _is_group(row, names):
            names = _joined(_spread_right(row, len(names)), names)
    return names, units, main


def _below(line: str, heading: str) -> list:
    """The words of a line in columns of blanks, each in the place of the name above it."""
    names = [match.span() for match in re.finditer(r"\S+", heading)]
    out = [""] * len(names)
    for match in re.finditer(r"\S+(?: \S+)*", line):
        start, stop = match.span()
        near = max(range(len(names)), key=lambda n: min(stop, names[n][1]) - max(start, names[n][0]))
        out[near] = match[0]
    return out


def _is_group(row: list, names: list) -> bool:
    """Whether a line above the headings names groups of them: "Box 1,,Box 2," over Temp, RH, Temp, RH."""
    filled = [cell for cell in row if cell]
    twice = len({name for name in names if name}) < len([name for name in names if name])
    measures = any(role_of(cell) in ("temp", "rh", "dew_point") for cell in filled)
    grouped = twice or measures and any(statistic_of(name) for name in names)
    return len(filled) >= 2 and grouped and len(row) <= len(names) + 1


def _spread_right(row: list, width: int) -> list:
    out, last = [], ""
    for n in range(width):
        cell = row[n] if n < len(row) else ""
        last = cell or last
        out.append(last)
    return out


def _joined(one: list, two: list) -> list:
    return [
        " ".join(
            dict.fromkeys(part for part in ((one[n] if n < len(one) else ""), (two[n] if n < len(two) else "")) if part)
        )
        for n in range(max(len(one), len(two)))
    ]


def _aligned(line: str, separator: str, data: list) -> list:
    """Names of the columns, one for each cell of the readings.

    Between blanks a name may itself hold a blank, and one name may stand over a date and a time.
    """
    line = line.lstrip("# ") if line.startswith("#") and len(line) > 3 and line[1] in " \t" else line
    names = split_line(line, separator)
    if separator == " ":
        wide = [name.strip() for name in re.split(r"\s{2,}|\t", line.strip())]
        names = wide if len(names) != len(data) and max(len(data) - 2, 2) <= len(wide) <= len(data) else names
    data = data[: max((n + 1 for n, cell in enumerate(data) if cell), default=0)]
    kinds = [kind_of(cell) for cell in data]
    for place in range(1, len(kinds)):
        if (
            kinds[place - 1 : place + 1] == ["date", "time"]
            and len(names) < len(data)
            and place <= len(names)
            and role_of(names[place - 1]) in ("stamp", "date", "time")
            and (place == len(names) or role_of(names[place]) != "time")
        ):
            names = [*names[:place], "", *names[place:]]
    return names


def is_shifted(names: list, sample: list) -> bool:
    """Whether the headings are one fewer than the cells and stand one cell too far left."""
    width = len(sample[0])
    if len(names) != width - 1 or not sample[0][-1] or role_of(names[0]) == "record":
        return False
    first = [row[0] for row in sample if row]
    if not all(re.fullmatch(r"\d+", cell) for cell in first) or len(set(first)) < len(first):
        return False
    stamped = next((n for n, name in enumerate(names) if role_of(name) in ("stamp", "date", "time")), None)
    at = next((n for n, cell in enumerate(sample[0]) if kind_of(cell) in ("both", "date", "epoch")), None)
    return stamped is None or at is None or at == stamped + 1


_UNIT = re.compile(r"[\[(]?\s*(?:°\s*[CFK]|[CFK]|deg\.?\s*[CFK]|%(?:\s*r\.?[hf]\.?)?)\s*[\])]?", re.IGNORECASE)
_SHORT = re.compile(r"[\[(]?\s*(?:[-a-z:./ _#]{1,19}|.{0,3})\s*[\])]?", re.IGNORECASE)


def is_units(row: list) -> bool:
    """Whether a line below the header holds units: one at least, and else only short words."""
    filled = [cell for cell in row if cell]
    if any(role_of(cell) == "temp" and not unit_of(cell) and not _UNIT.fullmatch(cell) for cell in filled):
        return False  # "Temp" is a name, and "RH" beside it too
    if not any(
        _UNIT.fullmatch(cell)
        or is_share(cell)
        or (unit_of(cell) and len(cell) < 20 and not role_of(cell).startswith("dew"))
        for cell in filled
    ):
        return False
    short = all(_UNIT.fullmatch(cell) or _SHORT.fullmatch(cell) or other_unit(cell) or unit_of(cell) for cell in filled)
    stamped = any(
        role_of(cell) in ("stamp", "date") and len(cell) > 3 and not re.search(r"[\[(]|[dmyh]{2}", cell)
        for cell in filled
    )
    return short and not stamped
