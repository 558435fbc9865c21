"""Cells that count several classes in words ("5 clear, 2 dead") -> a column per class, to be read like any other.

The words of a look or of the end of the hatch become columns of numbers; whether they are right is then tested by the
same arithmetic as every other column.
"""

from __future__ import annotations

import re
from functools import cache

from hatchkit.records.sheets.cells import cell_words, count_of, is_empty, mentions, text_of, whole_of
from hatchkit.records.sheets.entries import class_of
from hatchkit.records.sheets.lexicon import all_roles, phrases, roles_in, tokens
from hatchkit.records.sheets.meanings import look_of
from hatchkit.records.sheets.parts import Block
from hatchkit.records.sheets.when import is_dateish
from hatchkit.records.words import plain

#: Classes that belong to a look; the others are told of once.
_AT_LOOKS = frozenset({"clear", "dead", "left", "removed"})


def counts_by_look(cell, language: str | None) -> dict[tuple[str, str], float]:
    """What a cell counts: (group that names the look, class) -> eggs; the group is "" for what belongs to no look.

    A day in front of a clause holds until the next one, a day at its end for that clause. Where no day parts them, a
    class told of once more is of the next look.

    Parameters
    ----------
    cell : object
    language : str or None
    """
    text = re.sub(rf"(\d{{1,2}})\.\s*(?=(?:{_day_words()})\b)", r"\1 ", plain(str(cell))[:600])
    found: dict[tuple[str, str], float] = {}
    current, order = "", 1
    for clause in re.split(r"[;,\n]|\.(?=\s|$)|\s[-–/]\s", text):
        words = tokens(clause, language)
        look = look_of(list(words))
        # In "5 clear" the five counts eggs; a day is called one.
        timed = look.day is not None and all_roles(words) & {"day", "week", "candle"}
        group = f"day {look.day}" if timed else ""
        if group and any("day" in token.roles for token in words[:2]):
            current = group
        elif "transfer" in all_roles(words):
            current = ""
        group = group or current or ("transfer" if "transfer" in all_roles(words) else "")
        told = list(mentions(clause, language))
        for mention in told:
            name = class_of(mention.roles)
            if name is None:
                continue
            if name not in _AT_LOOKS:
                found["", name] = found.get(("", name), 0.0) + mention.count
                continue
            if not group and (f"candling {order}", name) in found:
                order += 1
            key = (group or f"candling {order}", name)
            found[key] = found.get(key, 0.0) + mention.count
        if not told and words:
            _lone(words, group, found)
        if group.startswith("day"):
            found.setdefault((group, ""), 0.0)
    return found


def _lone(words, group: str, found: dict) -> None:
    """A number without a class: the eggs that went on at the move, or those that were set ("24 in")."""
    roles = all_roles(words)
    days = [token for token in words if token.number is not None and not token.roles - {"word number"}]
    numbers = [t.number for t in days if f"day {t.number}" != group]
    if len(numbers) != 1:
        return
    if "transfer" in roles:
        found[group or "transfer", "left"] = float(numbers[0])
    elif roles & {"in", "egg"} and not found:
        found["", "eggs_set"] = float(numbers[0])


@cache
def _day_words() -> str:
    words = [key for key, roles in phrases().items() if "day" in roles and " " not in key]
    words.sort(key=len, reverse=True)
    return "|".join(map(re.escape, words))


#: Class -> the English word that heads its column.
_HEADING = {
    "eggs_set": "eggs set",
    "clear": "clear",
    "dead": "dead",
    "removed": "removed",
    "pipped": "pipped",
    "dis": "dead in shell",
    "hatched": "hatched",
    "left": "left",
    "culled": "culled",
}
#: Letters of a cell on average from which a column holds sentences rather than names.
MOST_LETTERS = 12
#: Rows whose remarks must tell of their looks before they are taken for counts.
LEAST_COURSES = 2
#: Cells of a long column from which it is seen whether they count.
SAMPLE = 400
_LOSSES = frozenset({"clear", "dead", "shell", "pipped", "hatched", "chicks", "left", "unhatched", "fertile"})
_ENDS = frozenset({"left", "unhatched", "result", "hatch", "hatched", "opened", "chicks", "shell"})


def expanded(block: Block, language: str | None) -> Block:
    """The block with its columns of words about several classes parted into columns of numbers.

    Parameters
    ----------
    block : Block
    language : str or None
    """
    if block.shape == "lines" or not block.rows or not block.columns or told_by_day(block) is not None:
        return block
    kept: list[tuple] = []
    counted = _told_in_counts(block, language)
    for heading, group, cells in zip(block.headings, block.groups, block.columns, strict=True):
        classes = _classes(heading, group, cells, language)
        if classes and _is_diary(block, classes, cells, language):
            return block
        if not classes and not counted and roles_in(heading, language) & {"notes"}:
            # Remarks that hold the whole course of a batch, in a table that tells of no loss elsewhere.
            told = [cell for cell in cells if not is_empty(cell)]
            classes = ["course"] if len(told) >= LEAST_COURSES and _by_look(told, language, 0.8) else []
        if not classes:
            kept.append((heading, group, cells))
            continue
        by_look = _by_look(cells, language)
        if by_look:
            kept += [(_HEADING[name], look, counts) for (look, name), counts in by_look.items()]
            kept += [(heading, group, cells)] if "course" in classes else []
            continue
        whole = [None if is_empty(cell) else whole_of(cell) for cell in cells]
        if "hatched" in classes and not counted and sum(map(bool, whole)) > 0.8 * sum(not is_empty(c) for c in cells):
            kept.append((_HEADING["eggs_set"], "", [float(count) if count else "" for count in whole]))
        end = bool(roles_in(f"{group} {heading}", language) & _ENDS)
        for name in classes:
            target = "dis" if end and name == "dead" and "dis" not in classes else name
            above = "" if target in ("dis", "pipped", "hatched") else " ".join(filter(None, (group, heading)))
            kept.append((_HEADING[target], above, [_of_class(cell, name, language) for cell in cells]))
    block.headings, block.groups, block.columns = map(list, zip(*kept, strict=True))
    return block


def _told_in_counts(block: Block, language: str | None) -> bool:
    """Whether a column of numbers counts what became of the eggs."""
    for heading, group, cells in zip(block.headings, block.groups, block.columns, strict=True):
        if not roles_in(f"{group} {heading}", language) & _LOSSES:
            continue
        full = [cell for cell in cells[:SAMPLE] if not is_empty(cell)]
        numbers = sum(_counted(cell, language) for cell in full if isinstance(cell, (int, float, str)))
        if numbers > 0.6 * len(full):
            return True
    return False


def _is_diary(block: Block, classes: list, cells, language: str | None) -> bool:
    """Whether the words tell in one row of the setting and in another of the hatch, each with its day."""
    if not {"eggs_set", "hatched"} <= set(classes):
        return False
    told = [{class_of(m.roles) for m in mentions(str(cell), language)} for cell in cells if not is_empty(cell)]
    both = sum({"eggs_set", "hatched"} <= kinds for kinds in told)
    dated = any(sum(map(is_dateish, column)) > 0.6 * len(column) for column in block.columns)
    return dated and not both and sum("hatched" in kinds for kinds in told) > 0


def _by_look(cells, language: str | None, share: float = 0.3) -> dict:
    """(look, class) -> column, where the cells tell of more looks than one; empty where they tell of one."""
    told = [{} if is_empty(cell) else counts_by_look(cell, language) for cell in cells]
    looks = [{look for look, name in counts if look} for counts in told]
    if sum(len(names) > 1 for names in looks) < share * sum(not is_empty(cell) for cell in cells):
        return {}
    keys = list(dict.fromkeys(key for counts in told for key in counts if key[1]))
    keys.sort(key=lambda key: (key[0] == "", list(_HEADING).index(key[1]) if not key[0] else 0))
    return {
        (look, name): [
            counts.get((look, name), 0.0 if (look in seen or not look) and name not in ("left", "eggs_set") else "")
            for counts, seen in zip(told, looks, strict=True)
        ]
        for look, name in keys
    }


def told_by_day(block: Block) -> tuple[int, int, int] | None:
    """The columns of date, batch and words of a table that tells of its batches by the day, or None.

    Such a table holds these three alone; its batches come back on other days.
    """
    filled = [i for i, cells in enumerate(block.columns) if any(not is_empty(cell) for cell in cells)]
    if block.shape != "table" or len(filled) != 3 or len(block.rows) < 4:
        return None
    kept = {i: [cell for cell in block.columns[i] if not is_empty(cell)] for i in filled}
    dated = [i for i in filled if sum(map(is_dateish, kept[i])) > 0.6 * len(kept[i])]
    long = [
        i for i in filled if i not in dated and sum(len(str(cell)) for cell in kept[i]) > MOST_LETTERS * len(kept[i])
    ]
    named = [
        i
        for i in filled
        if i not in dated + long
        and len(kept[i]) > 0.6 * len(block.rows)
        and len({text_of(cell) for cell in kept[i]}) <= 0.6 * len(kept[i])
    ]
    return (dated[0], named[0], long[0]) if len(dated) == len(long) == len(named) == 1 else None


def _classes(heading: str, group: str, cells, language) -> list[str]:
    """The classes that a column of words counts; none for a column of numbers, names or remarks."""
    texts = [cell for cell in cells[:60] if not is_empty(cell)]
    words = [cell for cell in texts if isinstance(cell, str) and not cell.strip().isdigit()]
    roles = roles_in(f"{group} {heading}", language)
    if (
        not words
        or len(words) < 0.4 * len(texts)
        or roles & {"notes", "breed", "species", "incubator", "pen", "batch", "set"}
    ):
        return []
    if not roles & (_ENDS | {"candle", "day", "transfer", "first", "second", "third", "what"}) and roles:
        return []
    found: dict = {}
    several = 0
    for cell in words:
        kinds = [class_of(mention.roles) for mention in mentions(cell, language)]
        kinds = [kind for kind in kinds if kind in _HEADING]
        several += len(kinds) > 1
        for kind in kinds:
            found[kind] = found.get(kind, 0) + 1
    look = roles & {"candle", "transfer", "first", "second", "third"}
    told = sum(
        bool(mentions(cell, language))
        or _zero(cell)
        or _counted(cell, language)
        or bool(look)
        and _quiet(cell, language)
        for cell in words
    )
    if not found or told < 0.5 * len(words):
        return []
    if not several and (
        roles & {"hatched", "chicks"}
        or len(found) < 2
        and (roles & set(_HEADING) or not roles & {"candle", "day", "transfer", "left"})
    ):
        return []
    return sorted(found, key=list(_HEADING).index)


def _zero(cell: str) -> bool:
    text = (text_of(cell) or "").lower()
    return text in cell_words("zero") or text in cell_words("unknown")


def _quiet(cell: str, language) -> bool:
    """Whether words beside a look tell of no loss and no number ("all looking good")."""
    found = tokens(cell, language)
    return not all_roles(found) & _LOSSES and all(token.number is None for token in found)


def _counted(cell, language) -> bool:
    return count_of(cell, language).value is not None


def _of_class(cell, name: str, language):
    """The number that a cell gives for one class: "" where it says nothing, 0 where it says none."""
    if is_empty(cell):
        return ""
    found = [mention.count for mention in mentions(str(cell), language) if class_of(mention.roles) == name]
    if found:
        return float(sum(found))
    text = (text_of(cell) or "").lower()
    return "" if text in cell_words("unknown") else 0.0
