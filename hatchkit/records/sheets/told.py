"""Problem rows of sheets, as codes with facts: odd cells, rows that are no data, batches that can't be used."""

from __future__ import annotations

import pandas as pd

from hatchkit.problems import problem
from hatchkit.records.sheets.cells import shown

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
