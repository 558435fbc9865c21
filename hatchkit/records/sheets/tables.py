"""A table with a row per batch (or breed within a hatch), its columns understood -> batches and their looks."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pandas as pd

from hatchkit.records.sheets import typed
from hatchkit.records.sheets.around import count_remarks, fill_from_around, remarks_to_notes
from hatchkit.records.sheets.cells import is_empty, text_of
from hatchkit.records.sheets.fields import COUNTS, OWN_COLUMNS
from hatchkit.records.sheets.ledger import account
from hatchkit.records.sheets.parts import LOOK_COLUMNS, TEXT_FIELDS, TIME_FIELDS, Context, Part

MEASURE_FIELDS = {"stored_days": typed.DAYS, "flock_age_weeks": typed.WEEKS}
_PLAIN_COUNTS = (
    "culled",
    "malpos",
    "broken_infertile",
    "broken_early",
    "broken_mid",
    "broken_late",
    "cracked",
    "cracked_of",
    "contaminated",
    "opened1_infertile",
    "opened1_dead",
)


def read_batches(block, reading, context: Context) -> Part:
    """The batches of a table whose columns are understood.

    Parameters
    ----------
    block : Block
    reading : assign.Reading
    context : Context
    """
    columns = block.columns
    kept = _rows_with_eggs(block, reading, columns)
    odd: list = []
    rows = [block.rows[i] for i in kept]
    columns = [[cells[i] for i in kept] for cells in columns]
    sections = [block.sections[i] for i in kept] if block.sections else [""] * len(kept)
    if isinstance(context.year, list):
        context = replace(context, year=[context.year[i] for i in kept])
    n = len(rows)
    layout = reading.layout
    values, everything, special = [], [], {}
    counted = {place for places in layout.fields.values() for place in places}
    counted |= {
        place for look in layout.looks for name, place in look.fields.items() if name not in ("look_at", "fate")
    }
    for place, meaning in enumerate(reading.chosen):
        if place in counted and meaning.field in _COUNTED:
            mark = typed.Odd(block.headings[place], meaning.field)
            read = typed.counts(columns[place], rows, context.language, mark)
            odd.append(mark)
            values.append(read.values)
            everything.append(read.everything)
            special[place] = read.special
        else:
            values.append(np.full(n, np.nan))
            everything.append(np.full(n, np.nan))
    part = Part(_plain_fields(block, reading, columns, rows, context, odd), pd.DataFrame(columns=LOOK_COLUMNS), odd=odd)
    part.batches["section"] = sections
    part.batches["row"] = rows
    part.batches["file"], part.batches["sheet"] = block.file, block.sheet
    fill_from_around(part.batches, block, context)
    _shared_hatch(part.batches, block, _unreadable(odd, rows))
    result = account(layout, values, everything)
    _put_counts(part, layout, values, result)
    every = [~np.isnan(everything[place]) for place in layout.fields.get("hatched", ())[:1]]
    part.batches["all_hatched"] = every[0] if every else False
    looks = _looks(layout, columns, rows, context, result, values, odd, part.batches.get("set_at"))
    count_remarks(part, looks, layout, special, context)
    remarks_to_notes(part, columns, special)
    part.looks = _long(looks)
    return part


_COUNTED = frozenset(COUNTS) | {"look_day"}


def _rows_with_eggs(block, reading, columns) -> list[int]:
    """Rows that say something of a batch; the others are remarks beside the table."""
    key = [place for place, meaning in enumerate(reading.chosen) if meaning.field in _COUNTED | {"set_at", "fate"}]
    full = [columns[place] for place in key]
    said = np.zeros(len(block.rows), bool)
    for cells in sorted(full, key=lambda cells: "" in cells):
        if not said.all():
            said |= np.fromiter((not is_empty(cell) for cell in cells), bool, len(cells))
    block.skipped += [(block.rows[i], "note", _text(columns, i)) for i in np.flatnonzero(~said)]
    told = [columns[place] for place, meaning in enumerate(reading.chosen) if meaning.field not in ("notes", "ignore")]
    named = [columns[place] for place, meaning in enumerate(reading.chosen) if meaning.field in ("batch", "set_at")]
    kept = np.flatnonzero(said).tolist()
    if len(named) < 2 or len(set(zip(*named, strict=True))) == len(block.rows):
        return kept
    # The same batch, day and numbers once more are the same row once more.
    once: dict = {}
    for i in kept:
        once.setdefault(tuple(cells[i] for cells in told) if not any(is_empty(cells[i]) for cells in named) else i, i)
    block.skipped += [(block.rows[i], "twice", _text(columns, i)) for i in sorted(set(kept) - set(once.values()))]
    return sorted(once.values())


def _text(columns, i: int) -> str:
    return ", ".join(text_of(cells[i]) for cells in columns if not is_empty(cells[i]))[:200]


def _plain_fields(block, reading, columns, rows, context, odd) -> pd.DataFrame:
    """Names, times and measures; notes are joined."""
    frame: dict = {}
    n, notes, extra = len(rows), [[] for _ in rows], {}
    # Setting first: the year of the other dates follows from it.
    for place in sorted(range(len(columns)), key=lambda place: reading.chosen[place].field != "set_at"):
        meaning = reading.chosen[place]
        name, cells = meaning.field, columns[place]
        if name in TEXT_FIELDS:
            target = TEXT_FIELDS[name]
            frame[target] = typed.texts(cells) if target not in frame else _joined(frame[target], typed.texts(cells))
        elif name in TIME_FIELDS and TIME_FIELDS[name] not in frame:
            mark = typed.Odd(block.headings[place], name)
            target = TIME_FIELDS[name]
            frame[target], frame[f"{target}_hour"] = typed.times(
                cells, rows, context.day_first, context.year, mark, near=frame.get("set_at")
            )
            odd.append(mark)
        elif name in MEASURE_FIELDS:
            mark = typed.Odd(block.headings[place], name)
            frame[name] = typed.measures(cells, rows, MEASURE_FIELDS[name], mark)
            odd.append(mark)
            if name == "flock_age_weeks":
                frame[name] = frame[name] * typed.factor_in(block.headings[place], typed.WEEKS)
        elif name in ("notes", "result", "ignore", "what") and any(isinstance(cell, str) and cell for cell in cells):
            if name == "ignore":
                extra[block.headings[place]] = typed.texts(cells)
                continue
            for said, cell in zip(notes, cells, strict=True):
                said += [text_of(cell)] if isinstance(cell, str) and cell.strip() else []
    result = pd.DataFrame(frame, index=range(n))
    result["notes"] = ["; ".join(parts) or None for parts in notes]
    for heading, cells in extra.items():
        name = f"{heading} (as written)" if heading in OWN_COLUMNS or heading in result else heading
        if heading and name not in result:
            result[name] = cells
    return result


def _joined(one: list, other: list) -> list:
    return [" ".join(filter(None, pair)) or None for pair in zip(one, other, strict=True)]


def _unreadable(odd, rows) -> dict:
    """Column of the contract -> places of rows whose date could not be read."""
    found: dict = {}
    for mark in odd:
        bad = {row for code, hits in mark.hits.items() if code.startswith("date") for row, _ in hits}
        if mark.field in TIME_FIELDS:
            found[TIME_FIELDS[mark.field]] = [place for place, row in enumerate(rows) if row in bad]
    return found


def _shared_hatch(batches: pd.DataFrame, block, unreadable: dict) -> None:
    """Rows of breeds or pens within one hatch: date, machine and number written once hold for the rows below."""
    if len(batches) < 2 or block.shape != "table":
        return
    has_name = "name" in batches and batches["name"].notna().any()
    blank_name = batches["name"].isna() if "name" in batches else pd.Series(True, batches.index)
    for column in ("set_at", "incubator", "hatcher", "taken_off_at", "due_at", "keeper", "species_text"):
        if column not in batches or not batches[column].isna().any() or batches[column].isna().all():
            continue
        same = batches["section"].eq(batches["section"].shift())
        below = column == "set_at" and has_name and _groups_come_back(batches)
        fill = batches[column].isna() & same & (blank_name if has_name and not below else True)
        if column in ("incubator", "hatcher", "taken_off_at", "due_at", "keeper", "species_text"):
            fill &= blank_name if has_name else batches.get("set_at_blank", pd.Series(False, batches.index))
        if column == "set_at":
            batches["set_at_blank"] = batches[column].isna()
        # A date that is written but can't be read ends what the one above it says.
        unread = batches.index.isin(unreadable.get(column, ()))
        run = pd.Series(unread).cumsum()
        filled = batches[column].groupby(run).ffill()
        batches[column] = batches[column].where(~fill, filled)
        if f"{column}_hour" in batches:
            batches[f"{column}_hour"] = batches[f"{column}_hour"].astype(object).where(~fill, None).ffill().astype(bool)
    if has_name and blank_name.any() and not blank_name.iloc[0]:
        # A row with a day of its own is no part of the hatch above.
        part = blank_name & (batches["set_at"].eq(batches["set_at"].ffill().shift()) if "set_at" in batches else True)
        batches["hatch_name"] = batches["name"].ffill().where(part | ~blank_name)
        batches["part"] = part | part.shift(-1, fill_value=False)
        batches["name"] = batches["hatch_name"]


def _groups_come_back(batches: pd.DataFrame) -> bool:
    """Whether the names are of groups (pens) within a hatch: each once below a date, and again below another."""
    run = batches["set_at"].notna().cumsum()
    names = batches["name"]
    return (
        run.min() > 0
        and names.notna().all()
        and not pd.DataFrame({"run": run, "name": names}).duplicated().any()
        and names.duplicated(keep=False)[batches["set_at"].isna()].mean() >= 0.5
    )


def _put_counts(part: Part, layout, values, result) -> None:
    """Counts that belong to no look."""
    frame = part.batches
    frame["eggs_set"], frame["hatched"] = result.set, result.hatched
    frame["pipped_dead"], frame["dead_in_shell"] = result.pipped, result.dis
    frame["dis_derived"] = result.dis_derived
    removed = result.removed
    for look in result.looks:
        known = ~np.isnan(look["removed"])
        removed = np.where(known, np.nan_to_num(removed) + look["removed"], removed)
    frame["removed"] = removed
    for name in _PLAIN_COUNTS:
        places = layout.fields.get(name, [])
        if places:
            target = {"malpos": "malpositioned", "cracked_of": "cracked"}.get(name, name)
            frame[target] = np.nansum([values[place] for place in places], axis=0)
            frame[target] = frame[target].where(~np.isnan(values[places[0]]))
    rotten = layout.fields.get("rotten", [])
    if rotten and "contaminated" not in frame:
        frame["contaminated"] = values[rotten[0]]
    frame["rest"], frame["broken"] = result.rest, result.broken


def _looks(layout, columns, rows, context, result, values, odd, set_at) -> list[dict]:
    """Each look with its date, day and counts, as arrays over the rows."""
    found = []
    n = len(rows)
    start = None if set_at is None else pd.to_datetime(set_at, errors="coerce").to_numpy("datetime64[us]")
    for number, counts in enumerate(result.looks):
        look = layout.looks[number] if number < len(layout.looks) else None
        at = np.full(n, np.datetime64("NaT", "us"))
        hours = np.zeros(n, bool)
        day = np.full(n, np.nan)
        if look is not None:
            if look.look.day is not None:
                day[:] = look.look.day
            if "look_at" in look.fields:
                mark = typed.Odd("", "look_at")
                at, hours = typed.times(
                    columns[look.fields["look_at"]], rows, context.day_first, context.year, mark, near=start
                )
                odd.append(mark)
            if "look_day" in look.fields:
                day = np.where(np.isnan(values[look.fields["look_day"]]), day, values[look.fields["look_day"]])
        found.append(
            dict(
                counts,
                day=day,
                at=at,
                hour=hours,
                row=np.array(rows),
                order=(look.look.order if look is not None and look.look.order else number + 1),
                transfer=bool(look is not None and look.look.transfer),
            )
        )
    return found


def _long(looks: list[dict]) -> pd.DataFrame:
    """The looks of all rows, one below the other; only where something was kept."""
    parts = []
    for look in looks:
        kept = ~(
            np.isnan(look["clear"])
            & np.isnan(look["dead"])
            & np.isnan(look["removed"])
            & np.isnat(look["at"])
            & np.isnan(look["left"])
        )
        place = np.flatnonzero(kept)
        parts.append(
            pd.DataFrame(
                {
                    name: (look[name][kept] if isinstance(look[name], np.ndarray) else look[name])
                    for name in LOOK_COLUMNS
                    if name != "place"
                }
                | {"place": place}
            )
        )
    if not parts:
        return pd.DataFrame(columns=LOOK_COLUMNS)
    return pd.concat(parts, ignore_index=True)[LOOK_COLUMNS]
