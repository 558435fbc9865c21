"""Which columns of a sheet hold labels, each with its value to the right, and what is a label."""

from __future__ import annotations

from hatchkit.records.sheets.cells import is_empty, is_number
from hatchkit.records.sheets.rows import is_date, lists


def label_columns(reader) -> list[int]:
    """Columns that hold labels: words that name fields, each a different one, with a value to their right."""
    width = max((len(row) for row in reader.cells), default=0)
    found = []
    for column in range(min(width, 12)):
        texts = [
            (row, cells[column])
            for row, cells in enumerate(reader.cells[:400])
            if column < len(cells) and isinstance(cells[column], str) and cells[column].strip()
        ]
        labels = [(row, text) for row, text in texts if is_label(reader, text)]
        named = {text.lower().strip(" :") for _, text in labels}
        known = len(labels)
        values = sum(_has_value(reader, row, column, text) for row, text in labels)
        before = (cell for row, _ in labels for cell in reader.cells[row][:column])
        if not found and sum(not is_empty(cell) for cell in before) > 0.3 * known:
            continue
        colons = sum(text.strip().endswith(":") for _, text in texts)
        if colons >= 3 and colons >= 0.6 * len(texts):
            found.append(column)
            continue
        filled = sum(column < len(cells) and not is_empty(cells[column]) for cells in reader.cells[:400])
        numbers = sum(
            column < len(cells) and not is_empty(cells[column]) and (is_number(cells[column]) or is_date(cells[column]))
            for cells in reader.cells[:400]
        )
        if (
            len(named) >= 3
            and known >= 0.5 * len(texts)
            and values >= 0.5 * known
            and numbers <= 0.2 * filled
            and (not found or known >= 0.7 * len(texts))
        ):
            found.append(column)
    return found


def is_label(reader, text: str) -> bool:
    """Whether a text is a label: words that name a field, with or without a colon behind them."""
    label = text.partition(":")[0] if ":" in text and len(text.partition(":")[0]) < 40 else text
    return len(label) < 60 and bool(reader.roles(label)) and not lists(label, reader.language) and not is_date(label)


def labels_in(reader, columns: list[int]) -> int:
    """How many different fields the first column of labels names, together with one right beside it."""
    mine = [column for column in columns[:2] if column - columns[0] < 2]
    return len(
        {
            reader.roles(cells[column].partition(":")[0])
            for cells in reader.cells[:400]
            for column in mine
            if column < len(cells) and isinstance(cells[column], str) and is_label(reader, cells[column])
        }
    )


def _has_value(reader, row: int, column: int, text: str) -> bool:
    if ":" in text and text.partition(":")[2].strip():
        return True
    rest = reader.cells[row][column + 1 :]
    return any(not is_empty(cell) for cell in rest)
