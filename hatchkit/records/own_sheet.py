"""The kit's own blank workbook, in any of its languages: its headings are known, not guessed."""

from __future__ import annotations

from functools import cache

from hatchkit.records.sheets.fields import own_key
from hatchkit.records.words import plain
from hatchkit.say import LANGUAGES, text

#: A sheet is taken for the kit's own if it has so many of the headings; a person may strike some and add others.
ENOUGH = 0.7

#: Columns of each sheet in order. What season.toml says once (keeper, place) and what is worked out has none.
COLUMNS = {
    "batches": (
        "batch",
        "species",
        "breed",
        "pen",
        "flock_age_weeks",
        "posted",
        "broody",
        "incubator",
        "shelf",
        "hatcher",
        "set_at",
        "eggs_set",
        "stored_days",
        "candle1_at",
        "clear1",
        "dead1",
        "opened1_infertile",
        "opened1_dead",
        "candle2_at",
        "clear2",
        "dead2",
        "transfer_at",
        "clear3",
        "dead3",
        "removed",
        "contaminated",
        "cracked",
        "taken_off_at",
        "first_hatch_at",
        "last_hatch_at",
        "hatched",
        "culled",
        "pipped_dead",
        "dead_in_shell",
        "broken_infertile",
        "broken_early",
        "broken_mid",
        "broken_late",
        "malpositioned",
        "signs",
        "notes",
    ),
    "eggs": (
        "batch",
        "egg",
        "hen",
        "cock",
        "tray",
        "row",
        "col",
        "weight_g",
        "candle1",
        "candle2",
        "transfer",
        "outcome",
        "stage_day",
        "notes",
    ),
    "weights": ("batch", "egg", "tray", "weighed_at", "grams", "eggs_weighed"),
    "candlings": ("batch", "looked_at", "name", "clear", "dead", "removed", "left", "notes"),
}


def headings(sheet: str, language: str) -> dict[str, str]:
    """Column of the kit -> its heading in the blank workbook."""
    return {column: text(f"col_{sheet}_{column}", {}, language) for column in COLUMNS[sheet]}


def own_readings(grids) -> dict:
    """(file, sheet) -> {heading: reading} of every sheet that is the kit's own blank one, filled in.

    Parameters
    ----------
    grids : list of Grid
    """
    found = {}
    for grid in grids:
        first = [cell for cell in (grid.cells[0] if grid.cells else ()) if isinstance(cell, str) and cell]
        known = _known(first)
        if known:
            found[grid.file, grid.sheet] = known
    return found


@cache
def _plainly(sheet: str, language: str) -> dict[str, str]:
    return {plain(words): column for column, words in headings(sheet, language).items()}


def _known(cells: list[str]) -> dict:
    seen = {plain(cell): cell for cell in cells}
    for language in LANGUAGES:
        for sheet in COLUMNS:
            if plain(text(f"col_{sheet}_batch", {}, language)) not in seen:
                continue  # a look at one heading, before all of them are said
            named = _plainly(sheet, language)
            here = {seen[words]: own_key(column) for words, column in named.items() if words in seen}
            if len(here) >= ENOUGH * len(named):
                return here
    return {}
