"""Words for what became of an egg -> one of the kit's words, with the day if one is named."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

from hatchkit.records.sheets.cells import text_of
from hatchkit.records.sheets.fields import Look
from hatchkit.records.sheets.lexicon import all_roles, cell_words, tokens, without_negated
from hatchkit.records.sheets.lookwords import look_of
from hatchkit.records.sheets.wordrules import word_for
from hatchkit.records.words import plain

#: Kit's own words, which the kit's blank workbook offers.
OWN = {"alive", "clear", "dead", "removed", "hatched", "culled", "pipped_dead", "infertile"}


@dataclass(frozen=True)
class Fate:
    """What a cell says of one egg.

    fate: alive, clear, infertile, dead, dead_in_shell, pipped_dead, hatched, culled, removed or out (of the shell at
    the hatch, of the machine before it).
    """

    fate: str
    look: Look = Look()
    early: bool = False


@cache
def fate_of(cell, language: str | None) -> Fate | None:
    """The fate that a cell names, or None.

    Parameters
    ----------
    cell : str
    language : str or None
    """
    text = plain(text_of(cell) or "")
    if text.replace(" ", "_") in OWN:
        return Fate(text.replace(" ", "_"))
    if text == "c":
        return Fate("clear")
    if not text or text in cell_words("unknown"):
        return None
    if text in ("x", "+", "v", "✓", "√", "1", "*"):
        return Fate("alive") if text in ("+", "v", "✓", "√") else None
    found = without_negated(list(tokens(str(cell), language)))
    # A word that only looks like a known one says nothing beside known ones.
    sure = [token for token in found if not token.guessed]
    found = sure if word_for("egg", all_roles(sure)) else found
    roles = all_roles(found)
    fate = word_for("egg", roles)
    return None if fate is None else Fate(fate, look_of(found), bool(roles & {"early"}))
