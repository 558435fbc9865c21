"""Words for what became of an egg -> one of the kit's words, with the day if one is named."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

from hatchkit.records.sheets.cells import text_of
from hatchkit.records.sheets.fields import Look
from hatchkit.records.sheets.lexicon import all_roles, cell_words, tokens, without_negated
from hatchkit.records.sheets.lookwords import look_of
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
    found = sure if _from_roles(all_roles(sure)) else found
    roles = all_roles(found)
    fate = _from_roles(roles)
    return None if fate is None else Fate(fate, look_of(found), bool(roles & {"early"}))


def _from_roles(roles: frozenset) -> str | None:
    has = roles.__contains__
    negated = has("not")
    if has("incubator") and has("out"):
        return None  # "out of the machine" says where an egg is, not what became of it
    if has("pipped") and not (has("hatched") and not negated and not has("dead")):
        return "pipped_dead"
    if has("shell") or has("unhatched") or negated and roles & {"hatched", "hatch", "out"}:
        return "dead_in_shell"
    if has("culled") and not has("removed"):
        return "culled"
    if roles & {"hatched", "chicks"} or has("hatch") and not has("dead"):
        return "hatched"
    if roles & {"rotten", "cracked", "removed"} and not has("dead"):
        return "removed"
    if has("opened") and has("clear"):
        return "infertile"
    if has("clear") or negated and has("fertile"):
        return "clear"
    if has("dead"):
        return "dead"
    if roles & {"alive", "fertile", "left"}:
        return "alive"
    if roles & {"weak"}:
        return "hatched"
    if has("out"):
        return "out"
    return None
