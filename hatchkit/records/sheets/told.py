"""Problem rows of sheets, as codes with facts: odd cells, rows that are no data, batches that can't be used.

And where a sheet's own sums and percentages differ from its reading, or a batch's end lies ahead.
"""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit.problems import problem
from hatchkit.records.sheets.amounts import measure_of
from hatchkit.records.sheets.cells import is_empty, is_number, shown
from hatchkit.records.sheets.fields import COUNTS
from hatchkit.records.sheets.lexicon import all_roles, tokens
from hatchkit.records.sheets.when import today

#: A percentage that was worked out lies this near the share read, in points; further off than FAR it is another number.
NEAR, FAR = 0.6, 1.0
#: What a heading says whose percentages are those of a hatch.
_OF_HATCH = frozenset({"hatched", "hatch", "fertile", "chicks", "clear"})


def checked(item, part) -> list[dict]:
    """Problem rows for totals and percentages of a table of batches that its reading does not give.

    Parameters
    ----------
    item : Understood
    part : Part
    """
    return _totals(item) + _percentages(item, part)


def _totals(item) -> list[dict]:
    """A row of totals that differs from the counts above it, where another of its totals agrees."""
    block, found = item.block, []
    rows, since = np.array(block.rows), 0
    for row, cells in block.totals:
        above, part = rows < row, (rows < row) & (rows > since)
        since = row
        differ, agree = [], 0
        for column, meaning in zip(item.columns, item.chosen, strict=True):
            cell = cells.get(column.heading)
            if meaning.field not in COUNTS or len(column.values) != len(rows):
                continue
            once = block.headings.count(column.heading) == 1  # of two columns that are called the same, the totals mix
            if not once or cell is None or is_empty(cell) or not is_number(cell):
                continue
            written = measure_of(cell, {"": 1.0})[0]
            sums = [float(np.nansum(column.values[own])) for own in (above, part)]
            if written in sums:
                agree += 1
            elif written is not None and written == int(written):
                differ.append((column.heading, int(written), int(sums[0])))
        if differ and agree:
            headings, written, worked = map(list, zip(*differ, strict=True))
            facts = dict(headings=headings, written=written, sums=worked)
            found.append(_doubt(block, "total_differs", row, headings[0], facts))
    return found


def _percentages(item, part) -> list[dict]:
    """Rows whose percentage is not what the counts give, in a column that most rows agree with."""
    table, block = part.batches, item.block
    if "hatched" not in table or "eggs_set" not in table or len(set(block.rows)) < len(block.rows):
        return []
    clear = np.zeros(len(table))
    if len(part.looks):
        sums = part.looks.groupby("place")["clear"].sum()
        clear = sums.reindex(range(len(table)), fill_value=0.0).to_numpy(float)
    eggs, hatched = (table[name].to_numpy(float) for name in ("eggs_set", "hatched"))
    with np.errstate(divide="ignore", invalid="ignore"):
        shares = [100 * hatched / eggs, 100 * hatched / (eggs - clear), 100 * (eggs - clear) / eggs, 100 * clear / eggs]
    found = []
    for column in item.columns:
        roles = all_roles(tokens(column.heading, item.language))
        if column.percents is None or not roles & _OF_HATCH or len(column.percents) != len(block.rows):
            continue
        at = {row: place for place, row in enumerate(block.rows)}
        told = np.array([column.percents[at[row]] if row in at else np.nan for row in table["row"]], float)
        tried = ~np.isnan(told) & ~np.isnan(hatched) & (eggs > 0)
        if tried.sum() < 2:
            continue
        best = max(shares, key=lambda share: int((np.abs(share - told)[tried] <= NEAR).sum()))
        near = np.abs(best - told) <= NEAR
        if 2 * (near & tried).sum() <= tried.sum():
            continue  # a percentage of something else: no telling what
        for place in np.flatnonzero(tried & ~(np.abs(best - told) <= FAR)):
            facts = dict(heading=column.heading, written=round(told[place], 1), worked=round(float(best[place]), 1))
            found.append(_doubt(block, "percent_differs", int(table["row"].iloc[place]), column.heading, facts))
    return found


def _doubt(block, code: str, row, heading: str, facts: dict) -> dict:
    return problem("doubtful", code=code, facts=facts, file=block.file, sheet=block.sheet, row=int(row), column=heading)


#: Chicks come no more than this many days before the species' usual day (common practice, no source).
EARLY_DAYS = 2
#: What the end of a batch says, which is not known before it.
_END = ("hatched", "dead_in_shell", "pipped_dead", "culled", "broken_infertile")


def without_ends_ahead(batches: pd.DataFrame, species_table: pd.DataFrame, found: list) -> pd.DataFrame:
    """The batches, the zeros at the end of those whose day lies ahead taken for "not kept"; they stay out of shares.

    Parameters
    ----------
    batches : DataFrame
        batch, species, set_at (wall clock), counts; with file, sheet and row.
    species_table : DataFrame
    found : list of dict
        A note on each such batch is added.
    """
    length = species_table.loc[batches["species"], "incubation_days"].to_numpy(float)
    due = pd.to_datetime(batches["set_at"]) + pd.to_timedelta(length, unit="D")
    ahead = due - pd.Timedelta(days=EARLY_DAYS) > pd.Timestamp(today()) + pd.Timedelta(days=1)
    hatched = (
        pd.to_numeric(batches["hatched"], errors="coerce") if "hatched" in batches else pd.Series(np.nan, due.index)
    )
    for index in batches.index[ahead & hatched.eq(0)]:
        row = batches.loc[index]
        facts = dict(batch=row["batch"], day=f"{due[index]:%Y-%m-%d}")
        place = dict(file=row["file"], sheet=row["sheet"], row=int(row["row"]), column="hatched")
        found.append(problem("note", code="not_due_yet", facts=facts, **place))
        batches.loc[index, [name for name in _END if name in batches]] = np.nan
    return batches


#: How bad each oddness of a cell is; what is not listed is doubtful. "" is not told.
_SEVERITY = {
    "zero": "",
    "all": "note",
    "sum": "note",
    "words": "note",
    "remark": "note",
    "about": "note",
    "of": "note",
    "range": "note",
    "unit": "note",
    "unknown": "note",
    "unsure": "doubtful",
    "huge": "lost",
    "too much": "lost",
    "date year": "lost",
    "no fate": "doubtful",
    "serial": "note",
    "no year": "doubtful",
}
#: Cells told one by one; the rest in one row.
EACH = 6


def odd_cells(item, part) -> list[dict]:
    """Problem rows for cells that could not be taken as they stand."""
    found = []
    for mark in part.odd:
        for code, hits in mark.hits.items():
            severity = _SEVERITY.get(code, "doubtful")
            if not severity:
                continue
            code = f"cell_{code.replace(' ', '_')}"
            for row, cell in hits[:EACH]:
                found.append(
                    problem(
                        severity,
                        code=code,
                        facts=dict(cell=shown(cell), field=mark.field),
                        file=item.block.file,
                        sheet=item.block.sheet,
                        row=int(row),
                        column=mark.heading,
                    )
                )
            if len(hits) > EACH:
                rows = [int(row) for row, _ in hits[EACH:]]
                found.append(
                    problem(
                        severity,
                        code="cells_more",
                        facts=dict(count=len(rows), rows=rows[:20], like=code),
                        file=item.block.file,
                        sheet=item.block.sheet,
                        row=rows[0],
                        column=mark.heading,
                    )
                )
    for code, facts in part.notes:
        found.append(
            problem("note", code=code, facts=facts, file=item.block.file, sheet=item.block.sheet, row=int(facts["row"]))
        )
    return found


def skipped_rows(block) -> list[dict]:
    """Problem rows for rows that are no data: titles together, the others each."""
    return [
        problem(
            "note",
            code="row_remark" if reason == "section" and _below(block, row) else f"row_{reason}",
            facts=dict(text=text),
            file=block.file,
            sheet=block.sheet,
            row=row,
        )
        for row, reason, text in block.skipped
    ]


def _below(block, row: int) -> bool:
    """Whether a line stands below the last record of a table: it heads nothing, it is a remark."""
    return block.shape == "table" and row > max(block.rows, default=row)


def rows_told(row: pd.Series) -> dict:
    """The problem row of a batch that can't be used, with all it holds."""
    eggs, species = row.get("eggs_set"), row.get("species")
    known = dict(eggs_set=eggs if eggs is not None and eggs > 0 else None, set_at=row.get("set_at"), species=species)
    lacks = [field for field, value in known.items() if pd.isna(value)]
    name = row.get("name")
    held = {
        key: str(value)
        for key, value in row.items()
        if key in ("breed", "species_text", "set_at", "eggs_set", "hatched", "notes") and not pd.isna(value)
    }
    return problem(
        "lost",
        code="batch_lacks",
        facts=dict(
            name="" if name is None or isinstance(name, float) else str(name),
            lacks=lacks,
            held=held,
            how=row.get("species_how", ""),
        ),
        file=row["file"],
        sheet=row["sheet"],
        row=int(row["row"]),
    )
