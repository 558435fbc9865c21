"""How a person keeps the workbook: their own headings, remarks, a total row; and season.toml.

Workbooks are written without creation times, so that the same seed gives the same bytes and
nothing in a file tells when or how it was made.
"""

import io
import re
import zipfile
from dataclasses import dataclass, field
from datetime import datetime
from pathlib import Path

import pandas as pd

from hatchkit.records.writing import write_whole

#: Fixed moment in workbook properties and archive entries (an arbitrary winter day before the season).
FIXED = datetime(2026, 1, 1)

BATCH_HEADINGS = {
    "batch": "Batch",
    "species": "Kind of bird",
    "incubator": "Incubator",
    "flock": "Flock",
    "flock_age_weeks": "Flock age (weeks)",
    "set_at": "Set on",
    "eggs_set": "Eggs in",
    "stored_days": "Days stored",
    "candle1_at": "1st candling",
    "clear1": "Clears 1st candling",
    "dead1": "Dead 1st candling",
    "candle2_at": "2nd candling",
    "clear2": "Clears 2nd candling",
    "dead2": "Dead 2nd candling",
    "transfer_at": "Transfer date",
    "clear3": "Clears at transfer",
    "dead3": "Dead at transfer",
    "removed": "Taken out",
    "first_hatch_at": "First hatch",
    "last_hatch_at": "Last hatch",
    "taken_off_at": "Taken off",
    "hatched": "Hatched",
    "culled": "Culled",
    "pipped_dead": "Pipped dead",
    "dead_in_shell": "Dead in shell",
    "broken_infertile": "Breakout infertile",
    "broken_early": "Breakout early",
    "broken_mid": "Breakout mid",
    "broken_late": "Breakout late",
    "contaminated": "Rotten",
    "cracked": "Cracked",
    "malpositioned": "Malpositioned",
    "notes": "Notes",
}
EGG_HEADINGS = {
    "batch": "Batch",
    "egg": "Egg",
    "tray": "Tray",
    "row": "Row",
    "col": "Col",
    "weight_g": "Weight (g)",
    "candle1": "1st candling",
    "candle2": "2nd candling",
    "transfer": "Transfer",
    "outcome": "Outcome",
    "stage_day": "Stage day",
    "notes": "Notes",
}
WEIGHT_HEADINGS = {
    "batch": "Batch",
    "egg": "Egg",
    "weighed_at": "Weighed on",
    "grams": "Grams",
    "eggs_weighed": "Eggs on scale",
}
BIRDS = {
    "chicken": "Hen",
    "duck": "Duck",
    "quail": "Quail",
    "turkey": "Turkey",
    "goose": "Goose",
    "guinea": "Guinea fowl",
    "muscovy": "Muscovy",
    "pheasant": "Pheasant",
    "bobwhite": "Bobwhite",
    "peafowl": "Peafowl",
}


@dataclass(frozen=True)
class Habit:
    """One person's way of keeping the workbook.

    headings, egg_headings : canonical column -> the person's heading (left out: the column is not kept)
    clock : columns whose hour is written down; the others hold the date alone
    total_row : a row of sums at the foot
    title_rows : lines above the headings
    blank_every : an empty row after every so many batches (0: none)
    species_words : canonical species -> the person's word
    """

    name: str
    headings: dict = field(default_factory=lambda: dict(BATCH_HEADINGS))
    egg_headings: dict = field(default_factory=lambda: dict(EGG_HEADINGS))
    clock: tuple = (
        "set_at",
        "first_hatch_at",
        "last_hatch_at",
        "taken_off_at",
        "candle1_at",
        "candle2_at",
        "transfer_at",
        "weighed_at",
    )
    total_row: bool = True
    title_rows: tuple = ()
    blank_every: int = 0
    species_words: dict = field(default_factory=lambda: dict(BIRDS))


def _changed(*, drop=(), **words):
    return {name: words.get(name, text) for name, text in BATCH_HEADINGS.items() if name not in drop}


HABITS = {
    habit.name: habit
    for habit in (
        Habit("plain"),
        Habit(
            "terse",
            headings=_changed(
                batch="Hatch no",
                species="Species",
                set_at="Set date",
                eggs_set="Set",
                clear1="clear 1",
                dead1="dead 1",
                candle1_at="candled 1",
                candle2_at="candled 2",
                clear2="clear 2",
                dead2="dead 2",
                clear3="clear 3",
                dead3="dead 3",
                transfer_at="transfer",
                drop=("malpositioned", "cracked"),
            ),
            total_row=False,
        ),
        Habit(
            "wordy",
            headings=_changed(
                batch="Batch no",
                species="Type of bird",
                incubator="Machine",
                set_at="Date set",
                eggs_set="Eggs set",
                stored_days="Storage days",
                flock="Pen",
                clear1="Clear at 1st candling",
                dead1="Dead at 1st candling",
                clear2="Clear at 2nd candling",
                dead2="Dead at 2nd candling",
                hatched="Chicks hatched",
                notes="Remarks",
            ),
            title_rows=("Hatching book", ""),
            blank_every=4,
        ),
        Habit(
            "shouting",
            headings={
                name: text.upper() + ("  " if number % 5 == 0 else "")
                for number, (name, text) in enumerate(BATCH_HEADINGS.items())
            },
        ),
    )
}


def _wall(value, zone, *, hour):
    if pd.isna(value):
        return None
    local = value.tz_convert(zone).tz_localize(None)
    if hour and local.hour == 0:
        local += pd.Timedelta(hours=1)  # midnight would read as a date without an hour
    return local.to_pydatetime().replace(second=0, microsecond=0) if hour else local.date()


def _cell(name, value, habit, zone):
    if name.endswith("_at"):
        return _wall(value, zone, hour=name in habit.clock)
    if name == "species":
        return habit.species_words.get(value, value)
    if pd.isna(value) or value == "":
        return None
    if isinstance(value, str):
        return value
    return int(value) if float(value).is_integer() else round(float(value), 1)


def _rows(table, headings, habit, zone):
    kept = [name for name in headings if name in table]
    yield [headings[name] for name in kept]
    for _, row in table.iterrows():
        yield [_cell(name, row[name], habit, zone) for name in kept]


def _sheet(book, name, rows):
    sheet = book.create_sheet(name)
    for row in rows:
        sheet.append(row)
    for cells in sheet.iter_rows():
        for cell in cells:
            if isinstance(cell.value, datetime):
                cell.number_format = "yyyy-mm-dd hh:mm"
    for column in sheet.columns:
        sheet.column_dimensions[column[0].column_letter].width = 14
    return sheet


def _batch_rows(batches, habit, zone):
    for line in habit.title_rows:
        yield [line or None]
    head, *rows = _rows(batches, habit.headings, habit, zone)
    yield head
    for number, row in enumerate(rows, start=1):
        yield row
        if habit.blank_every and number % habit.blank_every == 0 and number < len(rows):
            yield [None]
    if habit.total_row:
        kept = [name for name in habit.headings if name in batches]
        counted = {"eggs_set", "hatched", "clear1", "dead1", "culled"}
        yield ["Total"] + [int(batches[name].sum()) if name in counted else None for name in kept[1:]]


def write_workbook(path, tables: dict, *, habit: Habit, timezone) -> Path:
    """Write batches, and eggs and weights where there are any, as a person's workbook.

    Parameters
    ----------
    tables : dict of DataFrame
        batches, eggs, weights in hatchkit's columns, times UTC.
    """
    from openpyxl import Workbook

    book = Workbook()
    book.remove(book.active)
    _sheet(book, "batches", _batch_rows(tables["batches"], habit, timezone))
    if len(tables["eggs"]):
        _sheet(book, "eggs", _rows(tables["eggs"], habit.egg_headings, habit, timezone))
    if len(tables["weights"]):
        _sheet(book, "weights", _rows(tables["weights"], WEIGHT_HEADINGS, habit, timezone))
    book.properties.creator = book.properties.lastModifiedBy = ""
    buffer = io.BytesIO()
    book.save(buffer)
    return write_whole(path, without_times(buffer.getvalue()))


def without_times(data: bytes) -> bytes:
    """The same workbook with fixed times, and filled up with blanks to a whole multiple of 16 kB.

    Without the filling the size of the file would tell a little of what the sheets hold.
    """
    moment = FIXED.strftime("%Y-%m-%dT%H:%M:%SZ").encode()
    with zipfile.ZipFile(io.BytesIO(data)) as source:
        parts = {name: source.read(name) for name in sorted(source.namelist())}
    core = "docProps/core.xml"
    parts[core] = re.sub(rb"\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d+)?Z", moment, parts[core])
    parts["docProps/app.xml"] += b" " * (-len(_packed(parts)) % 16384)
    return _packed(parts)


def _packed(parts) -> bytes:
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as target:
        for name, content in parts.items():
            kind = zipfile.ZIP_STORED if name == "docProps/app.xml" else zipfile.ZIP_DEFLATED
            target.writestr(zipfile.ZipInfo(name, date_time=FIXED.timetuple()[:6]), content, compress_type=kind)
    return out.getvalue()


def write_settings(path, *, title, timezone, incubators: dict, set_point_c=37.5) -> Path:
    """Write season.toml: title, time zone and which files belong to which incubator ("" for one without a log)."""
    lines = [f'title = "{title}"', f'timezone = "{timezone}"', ""]
    for name, pattern in incubators.items():
        files = [f'files = ["{pattern}"]'] if pattern else []
        lines += [f"[incubators.{name}]", *files, 'air = "fan"', f"set_point_c = {set_point_c}", ""]
    return write_whole(path, "\n".join(lines))
