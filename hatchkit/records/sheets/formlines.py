"""Which columns of a sheet hold labels, and one line of a form -> its labels, each with its value."""

from __future__ import annotations

from hatchkit.records.sheets.cells import is_empty, is_number, mentions, text_of
from hatchkit.records.sheets.rows import is_date, lists
from hatchkit.records.sheets.when import is_dateish, looks_like_date


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


#: Roles that make a line without a value a heading for the lines below it ("Candling, day 7").
GROUPS = frozenset({"candle", "day", "transfer", "hatch", "week", "first", "second", "third", "opened", "hatched"})
#: Labels that come again for each look.
LOSSES = frozenset({"dead", "clear", "left", "alive", "removed", "rotten", "cracked", "fertile"})
_OF_LOOKS = LOSSES | {"egg", "number", "early", "late", "shell", "out", "day"}
#: Roles of a label that stands for a look.
_LOOKS = frozenset({"candle", "day", "transfer", "first", "second", "third", "week"})


def pairs_in(reader, cells, spans):
    """(label, value, column of the label) of one row."""
    for column, right in spans:
        label = cells[column] if column < len(cells) else ""
        if not isinstance(label, str) or not label.strip():
            continue
        head, colon, tail = label.partition(":")
        if tail.strip() and reader.roles(tail) and any(not is_empty(cell) for cell in cells[column + 1 : right]):
            head, colon, tail = label, "", ""  # "Candling day 7: clear" beside its number is one label
        if not is_label(reader, label) and (
            colon and tail.strip() or not any(not is_empty(cell) for cell in cells[column + 1 : right])
        ):
            continue
        if colon and tail.strip() and not tail.strip().startswith("/"):
            yield head.strip(), tail.strip(), column
            continue
        values = [cell for cell in cells[column + 1 : right] if not is_empty(cell) and not _is_line(cell)]
        if not values:
            continue
        # Further labels of the line that stand in no column of labels: "Hatched: | 19 | Pipped: | 0".
        further = [place for place in range(1, len(values) - 1) if _colon(reader, values[place])]
        rest = values
        values = values[: further[0]] if further else values
        value = (
            values[0]
            if len(values) == 1 or not all(isinstance(cell, str) and not is_number(cell) for cell in values[1:])
            else " ".join(text_of(cell) for cell in values)
        )
        head = head.strip() if colon else label.strip()
        yield head, value, column
        when = next((cell for cell in values[1:] if not is_number(cell) and is_dateish(cell)), None)
        if when is not None and is_number(values[0]):
            yield f"{head} date", when, column  # "Hatched 11 on 1 April"
        for place in further:
            yield rest[place].rstrip(": "), rest[place + 1], column


def _colon(reader, cell) -> bool:
    """Whether a cell is a label that says so itself, by a colon at its end."""
    return isinstance(cell, str) and cell.rstrip().endswith(":") and is_label(reader, cell)


def look_beside(reader, cells, column: int) -> list:
    """((class, look), value) of a line that tells of one look: "Day 7 | clear | 4 | dead | 1", "Day 7 | 4 | clear".

    Empty for any other line.
    """
    look = cells[column] if column < len(cells) else ""
    rest = [cell for cell in cells[column + 1 :] if not is_empty(cell)]
    if not isinstance(look, str) or len(rest) < 2 or not reader.roles(look.partition(":")[0]) & _LOOKS:
        return []
    words = [isinstance(cell, str) and bool(reader.roles(cell)) and reader.roles(cell) <= _OF_LOOKS for cell in rest]
    found, look = [], look.rstrip(": ")
    if len(rest) % 2 and not words[0]:
        # The label has a value of its own: "Day 7 clear | 4 | dead | 1".
        found.append(((look, ""), rest[0]))
        rest, words = rest[1:], words[1:]
    if len(rest) % 2 or words[::2] == words[1::2] or len(set(words[::2])) > 1 or len(set(words[1::2])) > 1:
        return []
    names, values = (rest[::2], rest[1::2]) if words[0] else (rest[1::2], rest[::2])
    return found + [((name.rstrip(": "), look), value) for name, value in zip(names, values, strict=True)]


def _is_line(cell) -> bool:
    """A line to write on ("____") that nobody wrote on."""
    return isinstance(cell, str) and not cell.strip("_.… ")


def mini_heading(reader, cells, places) -> bool:
    """A row of headings within a form ("Candling | clear | dead | left")."""
    if len(places) < 3:
        return False
    kinds = [
        reader.roles(cells[place]) for place in places if isinstance(cells[place], str) and ":" not in cells[place]
    ]
    classes = {"clear", "dead", "left", "alive", "removed", "rotten", "date", "weight"}
    texts = [text_of(cells[place]) for place in places]
    if len(set(texts)) < len(texts) or any(
        is_number(text) or looks_like_date(text) or mentions(text, reader.language) for text in texts
    ):
        return False
    return len(kinds) == len(places) and sum(bool(roles & classes) for roles in kinds) >= 2
