"""How a log's reading is put in words: each function turns facts into severity, found, done, fix.

The one place of the logs' sentences, so that they can be moved as a whole.
"""

from __future__ import annotations

from hatchkit.words.spelling import many


def shifted_heading() -> tuple:
    """One heading fewer than cells."""
    return (
        "doubtful",
        "the headings are one fewer than the columns",
        "the first column is taken for line numbers without a heading",
        "write a heading above the first column",
    )


def more_headings(names: list) -> tuple:
    """Headings of temperature or humidity beyond the last column."""
    return (
        "doubtful",
        f"there are more headings than columns; none stands below {', '.join(names[:6])}",
        "the others are taken for the columns below them",
        "put a heading that holds a comma into quotes",
    )


def by_behaviour(has_heading: bool) -> tuple:
    """Columns told apart by behaviour."""
    found = "no header names a temperature or humidity" if has_heading else "the file has no header"
    return (
        "doubtful",
        f"{found}; the columns were told apart by how their values behave",
        "taken as the questions say",
        "put a line of names above the readings, or answer the question",
    )


def against_values(found: list) -> tuple:
    """Headings against which the values speak."""
    shown = ", ".join(f"{name} ({middle:.1f})" for name, middle in found[:6])
    return (
        "doubtful",
        f"the middle values of {shown} do not look like what the headings say",
        "read as the headings say",
        "look whether the headings stand above the wrong columns",
    )


def exchanged(name: str, count: int) -> tuple:
    """Lines in which temperature and humidity seem to have changed places."""
    return (
        "doubtful",
        f"in {many(count, 'line')} the temperature of {name} is above 45 °C and the humidity "
        "stands where its temperature does elsewhere",
        "read as the headings say",
        "look whether two exports of different layout were put together",
    )


def summer_open(words: str, choices: list) -> tuple:
    """An offset, and word of summer time beside it."""
    return (
        "doubtful",
        f"the file says its clock is {words} and speaks of summer time",
        f"read as {choices[0]}; with summer time it would be {choices[1]}",
        "answer the question",
    )


def only_extremes(names: list) -> tuple:
    """Lowest and highest, no mean."""
    return (
        "doubtful",
        f"{', '.join(names)}: the lowest and the highest of each interval, and no mean",
        "each is read as a probe of its own",
        "export the mean as well",
    )


def encoding_open(name: str, other: str, line: int, one: str, two: str) -> tuple:
    """Two code pages fit."""
    return (
        "doubtful",
        f'line {line} reads "{one[:60]}" in the encoding {name} and "{two[:60]}" in {other}',
        f"read as {name}",
        "export the log in UTF-8",
        line,
    )


def member_left_out(name: str, why: str = "it is no text") -> tuple:
    """A member of an archive that is no log."""
    return ("note", f"{name} in the archive cannot be read: {why}", "left out", "")


def refused(name: str, why) -> str:
    """The sentence of a file that is no log."""
    return f"{name} cannot be read as a sensor log: {why}."


def part_refused(part: str, why) -> tuple:
    """One sheet of a workbook, or one member of an archive, that is no log."""
    return ("note", f"{part or 'it'} is no log: {why}", "left out", "")


def sections(count: int, line: int) -> tuple:
    """Several exports in one file."""
    return (
        "note",
        f"{count} exports with headings of their own stand in one file",
        "each is read by its own headings",
        "",
        line,
    )


def twins(names: list) -> tuple:
    """The same temperature once more in another unit."""
    return ("note", f"{', '.join(names)}: the same temperature once more in another unit", "read once", "")


def unused(names: list) -> tuple:
    """Columns that are not read."""
    shown = ", ".join(names[:12]) + (f" and {len(names) - 12} more" if len(names) > 12 else "")
    return ("note", f"columns that are no temperature or humidity of the air: {shown}", "not used", "")


def lone_quotes(count: int, line: int) -> tuple:
    """Quote marks without a partner."""
    return (
        "doubtful",
        f"a quote mark without a partner in {many(count, 'line')}, the first is line {line}",
        "the mark is passed over",
        "look at these lines in a text editor",
        line,
    )


ORDER_WORDS = {"dmy": "day, month, year", "mdy": "month, day, year", "ymd": "year, month, day"}
_ORDER_WHY = {
    "said": "as day_first says",
    "continuity": "only so do the days follow each other",
    "a day above 12": "other orders give days that do not exist",
    "in order": "only so are the lines in order",
    "weekday": "only so do the days of the week fit",
    "other files": "as in the other files",
    "dots": "dates with dots are written day first",
    "half day": "with am and pm the month is written first",
    "batches": "which falls into the season's batches",
}
_AGAINST = {
    "said": "day_first says otherwise",
    "other files": "other files are written otherwise",
    "a day above 12": "some dates exist only the other way round",
}


def order_of_dates(order, example: str) -> tuple:
    """How day and month were told apart."""
    words = ORDER_WORDS[order.order]
    against = "".join(f"; {_AGAINST[name]}" for name in order.against)
    why = _ORDER_WHY.get(order.how, "")
    if order.sure >= 0.9:
        return ("note", f"dates such as {example}", f"read as {words}: {why}{against}", "")
    return (
        "doubtful" if order.how != "dots" else "note",
        f"dates such as {example} can be read in more than one order",
        f"read as {words}" + (f", {why}" if why else "") + against,
        "write day_first = true or false under [sensors] in season.toml",
    )


def two_orders(both, examples) -> str:
    """Why a log is refused whose dates change their order."""
    (one, _), (two, _) = both
    return (
        f'its dates change their order: "{examples[0]}" and those around it are written {ORDER_WORDS[one]}, '
        f'"{examples[1]}" and those around it {ORDER_WORDS[two]}; part the file in two where the order changes'
    )


_BAD_DATE = {
    "no such day": "there is no such day in the calendar",
    "year": "its year cannot be right",
    "hour": "there is no such time of day",
    "no hour": "its time of day cannot be read",
    "order": "it fits only if day and month stand the other way round",
    "no year": "it has no year",
}


def fix_date(why: str) -> str:
    """How a line without a readable time is mended."""
    return "correct the date in the file" + (f": {_BAD_DATE[why]}" if why in _BAD_DATE else "")


_GUESSED = {
    "only one": "the only one of the season",
    "likeness": "which its name resembles",
    "dates": "the only machine without a log that had eggs at that time",
}


def machine_guessed(file: str, name: str, how: str, key: str) -> dict:
    """A log of which no name says the machine, and for which it was taken."""
    return dict(
        found=f"{file} names no incubator",
        done=f"taken for {name}, {_GUESSED[how]}",
        fix=f'[incubators.{key}] files = ["{file}"]',
    )


def machine_unknown(file: str, probes: list, stem: str, line: str) -> dict:
    """A log that belongs to no machine that is known."""
    shown = ", ".join(probes[:6]) + (f" and {len(probes) - 6} more" if len(probes) > 6 else "")
    return dict(
        found=f"{file} (probe {shown}) names no incubator of the season",
        done=f'kept as incubator "{stem}"',
        fix=f"write in season.toml, with the right name: {line}",
    )


def not_a_log(name: str) -> dict:
    """A file among the logs that is of no kind that is read."""
    return dict(
        found=f"{name} is no text, workbook or archive",
        done="left out",
        fix="take it out of the folder sensors, or export it as CSV",
    )


def marked(name: str, count: int, line: int, example: str, doubted: bool) -> tuple:
    """Values with a mark behind them."""
    return (
        "doubtful",
        f'a mark behind {many(count, "value")} of {name}, the first in line {line}: "{example[:40]}"',
        'kept and marked "marked"' if doubted else "read without the mark, as nearly all bear it",
        "see in the logger's manual what the mark means",
        line,
    )


def without_decimals(name: str, middle: float, factor: float) -> tuple:
    """Values that lack their decimal mark."""
    return (
        "doubtful",
        f"the middle value of {name} is {middle:g}",
        f"divided by {factor:.0f}",
        "export with decimals, or answer the question",
    )
