"""Labels at the left of their values -> blocks: one form after another, or batches in columns."""

from __future__ import annotations

from collections.abc import Iterator

from hatchkit.records.sheets.cells import is_empty, is_number, text_of
from hatchkit.records.sheets.formlines import GROUPS, LOSSES, is_label, look_beside, mini_heading, pairs_in
from hatchkit.records.sheets.parts import Block, starts_with_total
from hatchkit.records.sheets.rows import drop_sums


def lies(reader, column: int, right: int) -> bool:
    """Whether several columns of values stand beside the labels, and no headings among them."""
    several = single = 0
    for number, row in enumerate(reader.cells):
        if mini_heading(reader, row, reader.filled(number)):
            return False
        if column < len(row) and isinstance(row[column], str) and is_label(reader, row[column]):
            values = sum(not is_empty(cell) and not str(cell).endswith(":") for cell in row[column + 1 : right])
            several += values >= 2
            single += values == 1
    return several > single and several >= 3


def sideways(reader, column: int, right: int, over: int | None = None) -> Block:
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
            if _left_blank(reader, text):
                group = ""
            elif reader.roles(text) & GROUPS:
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
        lines.append((row, text, group, values))
    kept = [
        place
        for place in range(right - column - 1)
        if sum(not is_empty(values[place]) for _, _, _, values in lines) >= 2
        and not any(starts_with_total(values[place], reader.language) for _, _, _, values in lines)
    ]
    for _, text, own, values in lines:
        block.headings.append(text.rstrip(" :"))
        block.groups.append(own)
        block.columns.append([values[place] for place in kept])
    block.rows = [lines[0][0] + 1] * len(kept)
    block.sections = [""] * len(kept)
    drop_sums(block)
    return block


#: What a label of a loss names, and which look it is of.
_LOST = frozenset({"dead", "clear", "removed", "rotten", "cracked"})
_WHICH = frozenset({"first", "second", "third"})
#: Labels of the end of a hatch.
_ENDS = frozenset({"hatched", "chicks", "shell", "unhatched", "pipped"})


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
    if (len(spans) == 1 or beside) and lies(reader, *spans[-1]):
        yield sideways(reader, *spans[-1], over=columns[0] if beside else None)
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
        if mini_heading(reader, cells, places):
            state["under"] = {place: text_of(cells[place]) for place in places[1:]}
            state["lead"] = places[0]
            continue
        if state["under"] and _under(reader, state, cells):
            continue
        state["under"] = None
        beside = look_beside(reader, cells[: spans[-1][1]], spans[0][0])
        pairs = [] if beside else list(pairs_in(reader, cells, spans))
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
            # What stands over another form beside this one says nothing of it.
            mine = [place for place in places if spans[0][0] <= place < spans[-1][1]] or places
            text = " ".join(text_of(cells[place]) for place in mine)
            if len(mine) == 1 and state["record"] and _left_blank(reader, text):
                state["blank"] = False
            elif len(mine) == 1 and reader.roles(text) & GROUPS and state["record"] and not _starts(reader, text):
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
            if all(not reader.roles(label) or not reader.roles(label) <= LOSSES for label, _, _ in pairs):
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
            if reader.roles(label) & {"candle", "transfer"} and not reader.roles(label) & LOSSES:
                state["look"] = label
    return [record for record in records if len(record["items"]) >= 2]


def _left_blank(reader, text: str) -> bool:
    """Whether a line without a value is a loss that was left blank ("Broken", "Deaths 2nd candling"), no heading."""
    roles = reader.roles(text)
    return bool(roles & _LOST) and (bool(roles & _WHICH) or roles <= LOSSES) and ":" not in text.rstrip(": ")


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
        and all(reader.roles(cells[place]) & GROUPS for place in places)
    )


def _look_above(reader, state: dict, label: str) -> str:
    """The look that a loss told of once more belongs to: the last line above that names one."""
    return state.get("look", "") if reader.roles(label) <= LOSSES else ""


def _starts(reader, text: str) -> bool:
    """Whether a line names a batch ("Hatch 3"), so that a new form starts; "Hatch (day 21)" heads a part of one."""
    roles = reader.roles(text)
    return bool(roles & {"batch"}) or bool(roles & {"hatch"}) and any(map(str.isdigit, text)) and not roles & {"day"}


def _under(reader, state: dict, cells) -> bool:
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
    )
