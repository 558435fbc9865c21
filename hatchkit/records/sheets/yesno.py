"""Columns of a list of eggs that answer yes or no ("Fertile?", "Hatched?") -> words for what became of each egg."""

from __future__ import annotations

from hatchkit.records.sheets.cells import cell_words, is_empty, text_of
from hatchkit.records.sheets.fatewords import fate_of
from hatchkit.records.sheets.lexicon import all_roles, tokens
from hatchkit.records.words import plain

#: What a heading asks, with the words for yes and for no.
_ASKED = (("fertile", "fertile", "clear"), ("clear", "clear", "fertile"), ("hatched", "hatched", "not hatched"))
_NO = frozenset("n no nein non nee nej nie ne nao nem".split())
#: Eggs from which a list is one.
LEAST_EGGS = 3


def with_answers(block, language: str | None):
    """The block with yes and no written out; "not hatched" gives way to what a remark in its row tells."""
    roles = [all_roles(tokens(heading, language)) for heading in block.headings]
    eggs = any("egg" in of and of <= {"egg", "number"} for of in roles)
    if block.shape != "table" or len(block.rows) < LEAST_EGGS or not eggs:
        return block
    remarks = [cells for of, cells in zip(roles, block.columns, strict=True) if of & {"notes", "result"}]
    yes, asked = {*cell_words("yes")}, []
    for place, cells in enumerate(block.columns):
        words = next((words for words in _ASKED if words[0] in roles[place]), None)
        if words is None:
            continue
        known = {cell: plain(text_of(cell) or "") for cell in set(cells)}
        if any(known.values()) and {*known.values()} <= {"", *_NO, *yes}:
            asked.append((place, words, [known[cell] for cell in cells]))
    out = [False] * len(block.rows)
    for place, words, said in asked:
        for row, text in enumerate(said):
            word = "clear" if out[row] else "" if not text else words[2] if text in _NO else words[1]
            told = next((notes[row] for notes in remarks if not is_empty(notes[row])), "")
            out[row] = word == "clear"
            if place == asked[-1][0]:  # the last answer holds what the ones before it told
                mended = word == "not hatched" and fate_of(str(told), language) is not None
                block.columns[place][row] = told if mended else word
    return block
