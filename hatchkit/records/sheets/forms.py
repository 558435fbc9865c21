"""Labels at the left of their values -> blocks: batches in columns, or one form after another."""

from __future__ import annotations

from collections.abc import Iterator

from hatchkit.records.sheets.block import Block, starts_with_total
from hatchkit.records.sheets.cells import count_of, is_empty, is_number, mentions, text_of
from hatchkit.records.sheets.labels import is_label
from hatchkit.records.sheets.rows import drop_sums
from hatchkit.records.sheets.when import is_dateish, looks_like_date

#: Roles that make a line without a value a heading for the lines below it ("Candling, day 7").
_GROUPS = frozenset({"candle", "day", "transfer", "hatch", "week", "first", "second", "third", "opened", "hatched"})


#: Labels that come again for each look.
_LOSSES = frozenset({"dead", "clear", "left", "alive", "removed", "rotten", "cracked", "fertile"})
#: Labels of the end of a hatch.
_ENDS = frozenset({"hatched", "chicks", "shell", "unhatched", "pipped"})
_OF_LOOKS = _LOSSES | {"egg", "number", "early", "late", "shell", "out", "day"}
#: Roles of a label that stands for a look, and codes of a value that counts nothing.
_LOOKS = frozenset({"candle", "day", "transfer", "first", "second", "third", "week"})
_NO_COUNT = frozenset({"bad", "date", "huge", "negative"})


def labelled_blocks(reader, columns: list[int]) -> Iterator[Block]:
    """Blocks of a sheet whose labels stand in `columns`, with the values to their right.

    Parameters
    ----------
    reader : shape._Reader
    columns : list of int
        Columns of labels, left to right.
    """
    width = max(len(row) for row in reader.cells)
    spans = [(column, right) for column, right in zip(columns, [*columns[1:], width], strict=True)]
    beside = len(spans) == 2 and columns[1] == columns[0] + 1
    if (len(spans) == 1 or beside) and _lies(reader, *spans[-1]):
        yield _sideways(reader, *spans[-1], over=columns[0] if beside else None)
        return
    labels = [
        {_key(row[column]) for row in reader.cells if column < len(row) and is_label(reader, str(row[column]))}
        for column, _ in spans
    ]
    apart = len(spans) > 1 and all(len(names & labels[0]) >= 0.6 * len(names) for names in labels[1:])
    records: list[dict] = []
    above: list[tuple] = []
    for parts in [[span] for span in spans] if apart else [spans]:
        records += _forms(reader, parts, above)
    if records:
        yield _as_block(reader, records, above)


def _key(text) -> str:
    return str(text).partition(":")[0].strip().lower()


def _lies(reader, column: int, right: int) -> bool:
    """Whether several columns of values stand beside the labels, and no headings among them."""
    several = single = 0
    for number, row in enumerate(reader.cells):
        if _mini_heading(reader, row, reader.filled(number)):
            return False
        if column < len(row) and isinstance(row[column], str) and is_label(reader, row[column]):
            values = sum(not is_empty(cell) and not str(cell).endswith(":") for cell in row[column + 1 : right])
            several += values >= 2
            single += values == 1
    return several > single and several >= 3


def _sideways(reader, column: int, right: int, over: int | None = None) -> Block:
    """A table lying on its side: a record per column of values, a heading per label; groups of labels may stand `over`.

    A group's cell is merged or written once, and holds for the labels below it.
    """
    block = Block("sideways", reader.grid.file, reader.grid.sheet, [], [], [], [])
    group, lines = "", []
    for row, cells in enumerate(reader.cells):
        label = cells[column] if column < len(cells) else ""
        values = [cells[place] if place < len(cells) else "" for place in range(column + 1, right)]
        filled = [value for value in values if not is_empty(value)]
        text = text_of(label) or ""
        above = text_of(cells[over]) if over is not None and over < len(cells) else None
        group = above if above and text else group
        text = text or above or ""
        if text and not filled:
            if reader.roles(text) & _GROUPS:
                group = text
            elif not lines:
                block.titles.append(text)
            else:
                block.skipped.append((row + 1, "section", text))
            continue
        if not filled:
            group = ""
            continue
        if not text and lines:
            continue
        if not text and len(filled) == 1:
            block.titles.append(text_of(filled[0]))
            continue
        lines.append((row, text, group, values))
    kept = [
        place
        for place in range(right - column - 1)
        if sum(not is_empty(values[place]) for _, _, _, values in lines) >= 2
        and not any(starts_with_total(values[place], reader.language) for _, _, _, values in lines)
    ]
    for row, text, own, values in lines:
        block.headings.append(text.rstrip(" :"))
        block.groups.append(own)
        block.columns.append([values[place] for place in kept])
        block.heading_row = block.heading_row or row + 1
    block.rows = [block.heading_row] * len(kept)
    block.sections = [""] * len(kept)
    drop_sums(block)
    return block


def _forms(reader, spans, above: list) -> list[dict]:
    """Records of forms, one after another down the sheet: label and value in the same cell or side by side.

    Titles of the whole sheet are added to `above`.
    """
    records: list[dict] = []
    state: dict = {"record": None, "group": "", "under": None, "of": {}}

    def fresh(title: str, row: int):
        state.update(record={"title": title, "row": row, "items": {}}, group="", under=None, of={})
        records.append(state["record"])

    for row, cells in enumerate(reader.cells):
        places = reader.filled(row)
        if not places:
            state["under"] = None
            state["blank"] = True
            continue
        if _mini_heading(reader, cells, places):
            state["under"] = {place: text_of(cells[place]) for place in places[1:]}
            state["lead"] = places[0]
            if not reader.roles(cells[places[0]]) & {"candle", "date", "day"}:
                state["under"][places[0]] = text_of(cells[places[0]])
            continue
        if state["under"] and _under(reader, state, cells, places, row):
            continue
        state["under"] = None
        beside = _beside(reader, cells[: spans[-1][1]], spans[0][0])
        pairs = [] if beside else list(_pairs(reader, cells, spans))
        if _captions(reader, cells, places, spans):
            state["of"] = {column: text_of(cells[column]) for column, _ in spans if column in places}
            state["blank"] = False
            continue
        if beside and state["record"] is not None:
            for key, value in beside:
                state["record"]["items"].setdefault(key, value)
            state["look"], state["blank"] = beside[0][0][1] or beside[0][0][0], False
            continue
        if not pairs:
            text = " ".join(text_of(cells[place]) for place in places)
            if len(places) == 1 and reader.roles(text) & _GROUPS and state["record"] and not _starts(reader, text):
                state["group"], state["of"], state["blank"] = text, {}, False
            elif state["record"] is None or state["record"]["items"]:
                fresh(text, row + 1)
                state["blank"] = False
            elif state.pop("blank", False) or _starts(reader, text) and not _starts(reader, state["record"]["title"]):
                # What stands apart above the first form's own title is of the whole sheet.
                above.append((state["record"]["row"], "title", state["record"]["title"]))
                state["record"].update(title=text, row=row + 1)
            else:
                state["record"]["title"] += " " + text
            continue
        if state.pop("blank", False):
            state["of"], state["look"] = {}, ""
            if all(not reader.roles(label) or not reader.roles(label) <= _LOSSES for label, _, _ in pairs):
                state["group"] = ""
        for label, value, column in pairs:
            if _starts(reader, label) and any(c.isdigit() for c in label) and not is_number(value):
                # "Batch 2 | White Calls" opens the next form, and says what is in it.
                fresh(label, row + 1)
                state["record"]["items"]["breed", ""] = value
                continue
            if state["record"] is not None and len(state["record"]["items"]) > 2 and label == _first(state["record"]):
                fresh("", row + 1)
            key = (label, state["of"].get(column, state["group"]))
            if state["record"] is not None and key in state["record"]["items"] and _look_above(reader, state, label):
                key = (label, _look_above(reader, state, label))
            if state["record"] is None or key in state["record"]["items"]:
                if state["record"] is not None and (
                    key != next(iter(state["record"]["items"])) and len(state["record"]["items"]) < 3
                ):
                    continue
                fresh(state["record"]["title"] if state["record"] and not state["record"]["items"] else "", row + 1)
                key = (label, "")
            state["record"]["items"][key] = value
            if reader.roles(label) & {"candle", "transfer"} and not reader.roles(label) & _LOSSES:
                state["look"] = label
    return [record for record in records if len(record["items"]) >= 2]


def _first(record: dict) -> str:
    """The label that a form begins with: where it comes again, the next one begins."""
    return next(iter(record["items"]))[0]


def _captions(reader, cells, places, spans) -> bool:
    """A row of captions, one over each column of labels ("First | Second"), that say which look stands below."""
    columns = {column for column, _ in spans}
    return (
        len(places) > 1
        and set(places) <= columns
        and all(isinstance(cells[place], str) and ":" not in cells[place] for place in places)
        and all(reader.roles(cells[place]) & _GROUPS for place in places)
    )


def _look_above(reader, state: dict, label: str) -> str:
    """The look that a loss told of once more belongs to: the last line above that names one."""
    return state.get("look", "") if reader.roles(label) <= _LOSSES else ""


def _starts(reader, text: str) -> bool:
    """Whether a line names a batch ("Hatch 3"), so that a new form starts; "Hatch (day 21)" heads a part of one."""
    roles = reader.roles(text)
    return bool(roles & {"batch"}) or bool(roles & {"hatch"}) and any(map(str.isdigit, text)) and not roles & {"day"}


def _mini_heading(reader, cells, places) -> bool:
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


def _under(reader, state: dict, cells, places, row: int) -> bool:
    """Take a row below such headings: its first cell says which look."""
    lead = state["lead"]
    name = text_of(cells[lead]) if lead < len(cells) else ""
    if name and reader.roles(name) & _ENDS:
        return False  # "Hatched 11 on 1 April" is a line of its own below the looks
    taken = False
    for place, heading in state["under"].items():
        if place != lead and place < len(cells) and not is_empty(cells[place]) and state["record"] is not None:
            state["record"]["items"].setdefault((heading, name or ""), cells[place])
            taken = True
    return taken


def _pairs(reader, cells, spans):
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


def _beside(reader, cells, column: int) -> list:
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
    if any(isinstance(value, str) and count_of(value, reader.language).code in _NO_COUNT for value in values):
        return []
    return found + [((name.rstrip(": "), look), value) for name, value in zip(names, values, strict=True)]


def _is_line(cell) -> bool:
    """A line to write on ("____") that nobody wrote on."""
    return isinstance(cell, str) and not cell.strip("_.… ")


def _as_block(reader, records: list[dict], above: list[tuple]) -> Block:
    keys: dict = {}
    for record in records:
        for label, group in record["items"]:
            keys.setdefault((label.strip().lower(), group.strip().lower()), (label, group))
    told = [
        {(label.strip().lower(), group.strip().lower()): value for (label, group), value in record["items"].items()}
        for record in records
    ]
    columns = [[items.get(key, "") for items in told] for key in keys]
    return Block(
        "form",
        reader.grid.file,
        reader.grid.sheet,
        [label for label, _ in keys.values()],
        [group for _, group in keys.values()],
        columns,
        [record["row"] for record in records],
        sections=[record["title"] for record in records],
        titles=[text for _, _, text in above],
        skipped=above,
        heading_row=records[0]["row"],
    )
