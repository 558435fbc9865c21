"""Candling windows: from one look at the eggs to the next, how many were at risk and how many died."""

import math

import pandas as pd

from hatchkit.losses.counted import counted
from hatchkit.losses.fates import batch_fates
from hatchkit.losses.schedule import by_batch, number, schedule, species_figures
from hatchkit.reference import contract

COLUMNS = contract.columns("windows")


def left_out(season) -> pd.DataFrame:
    """Batches that cannot enter rates, and why: columns batch, why, told, set.

    why: "rows" or "counts" (these tell of more eggs, `told`, than the `set` ones), "nothing" (no record of how it
    ended), "chicks" or "hatch" (not counted), "set" (the number of eggs set is missing).
    """
    return season.once(("left_out",), lambda: _left_out(season)).copy(deep=False)


def _left_out(season) -> pd.DataFrame:
    records = {str(row["batch"]): row for row in season.batches.to_dict("records")}
    rows = []
    for batch, part in by_batch(season.fates).items():
        lost = [fate["fate"] == "unaccounted" for fate in part]
        if all(lost):
            more = too_many(season, batch)
            if more or not _chicks_counted(records.get(batch, {}), part):
                rows.append((batch, *(more or ("nothing", math.nan, math.nan))))
        elif any(lost) and not _chicks_counted(records.get(batch, {}), part):
            at_end = any(fate["found_at"] == "hatch" for fate in part)
            rows.append((batch, "chicks" if at_end else "hatch", math.nan, math.nan))
    there = set(season.fates["batch"])
    rows += [(batch, "set", math.nan, math.nan) for batch in records if batch not in there]
    return pd.DataFrame(rows, columns=["batch", "why", "told", "set"], dtype="object")


def _chicks_counted(record, fates) -> bool:
    """Whether a batch whose records leave eggs open says how many chicks there were."""
    by_row = any(fate["egg"] and fate["found_at"] == "hatch" for fate in fates)
    return by_row or not math.isnan(number(record.get("hatched"))) or any(fate["fate"] == "culled" for fate in fates)


def too_many(season, batch: str) -> tuple:
    """How the records of one batch exceed its eggs set (what tells of how many, and the set ones); else empty."""
    own, looks, eggs = (
        by_batch(table[table["batch"].astype(str) == batch]).get(batch, []) if len(table) else []
        for table in (season.batches, season.looks, season.eggs)
    )
    if not own:
        return ()
    problems = batch_fates(own[0], eggs, looks, season.species_table)[1]
    lost = [row for row in problems if row["severity"] == "lost" and "told" in row["facts"]]
    return next(((row["code"].partition("_")[0], row["facts"]["told"], row["facts"]["set"]) for row in lost), ())


def candling_windows(season) -> pd.DataFrame:
    """One row per batch and window between two looks, see ``reference/columns_losses.csv``.

    A death belongs to the window that holds its whole interval; one whose interval reaches over
    several windows counts in the window at whose end it was found. Windows after the last look of an
    unfinished batch, and batches of whose eggs nothing can be read, are not given. `died` is missing
    where dead embryos were not counted at that look and the batch does not close without them, `clear` and `at_risk`
    where the clears of the batch were not counted. Eggs that nobody can account for may have lived to the end.
    """
    looks, fates, kept = by_batch(season.looks), by_batch(season.fates), counted(season)
    skip = set(left_out(season)["batch"])
    rows = []
    for row in season.batches.to_dict("records"):
        batch = str(row["batch"])
        if all(fate["fate"] == "unaccounted" for fate in fates.get(batch, [])):
            continue
        ordered, _ = schedule(row, looks.get(batch, []), species_figures(row, season.species_table))
        rows += _batch_windows(row, ordered, fates[batch], kept[batch], finished=batch not in skip)
    table = pd.DataFrame(rows, columns=COLUMNS)
    zone = "datetime64[us, UTC]"
    return table.astype(
        {
            "batch": "object",
            "window": "int64",
            "name": "object",
            "day_start": "float64",
            "day_end": "float64",
            "start": zone,
            "end": zone,
            "at_risk": "float64",
            "died": "float64",
            "clear": "float64",
        }
    )


def _batch_windows(row, ordered, fates, kept, *, finished):
    ends = [look.day for look in ordered]
    names = [look.name for look in ordered]
    starts = [0.0, *ends[:-1]]
    placed = [(fate, window_of(fate, starts, ends, names, finished=finished)) for fate in fates]
    # Among eggs without a known end there may be clears, unless these were counted.
    known = "clear" in kept.kinds or not any(fate["fate"] == "unaccounted" for fate in fates)
    rows = []
    for window, (look, start, end) in enumerate(zip(ordered, starts, ends, strict=True)):
        if look.name == "hatch" and not finished:
            continue
        at_risk = sum(fate["eggs"] for fate, at in placed if at is not None and at >= window)
        died = sum(fate["eggs"] for fate, at in placed if at == window and fate["fate"] in ("dead", "pipped_dead"))
        clear = sum(fate["eggs"] for fate in fates if fate["fate"] == "clear" and fate["found_at"] == look.name)
        set_at = row.get("set_at")
        clock = [
            pd.NaT if set_at is None or pd.isna(set_at) else set_at + pd.Timedelta(days=day) for day in (start, end)
        ]
        rows.append(
            [
                str(row["batch"]),
                window + 1,
                look.name,
                start,
                end,
                *clock,
                at_risk if known else math.nan,
                died if look.name in kept.looks else math.nan,
                clear if clear or "clear" in kept.kinds else math.nan,
            ]
        )
    return rows


def window_of(fate: dict, starts, ends, names, *, finished: bool) -> float | None:
    """Index of the window up to which the eggs of one fate were at risk; None if they never were.

    For the dead it is the window of their death, for chicks infinity. Clears and infertile eggs were
    never seen to hold a living embryo; an egg taken out at an unknown time gives no window either.
    """
    kind, found = fate["fate"], fate["found_at"]
    if kind in ("hatched", "culled"):
        return math.inf
    if kind in ("dead", "pipped_dead"):
        for index, (start, end) in enumerate(zip(starts, ends, strict=True)):
            if fate["after_day"] >= start and fate["by_day"] <= end:
                return index
        return names.index(found) if found in names else len(names) - 1
    if kind == "removed":
        return names.index(found) if found in names else None
    if kind == "unaccounted":
        # In a batch that is not finished alive up to its after_day; in a finished one it may have lived to the end.
        day = number(fate["after_day"])
        passed = [index for index, end in enumerate(ends) if end <= day]
        return passed[-1] if passed else math.inf if finished else None
    return None
