"""Words for what became of an egg -> one of the kit's words; look by look -> its state, outcome and shell."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

from hatchkit.records.sheets.cells import text_of
from hatchkit.records.sheets.fields import Look
from hatchkit.records.sheets.lexicon import all_roles, cell_words, tokens, without_negated
from hatchkit.records.sheets.meanings import look_of, word_for
from hatchkit.records.words import plain

#: A fate as the outcome of an egg.
_IN_SHELL = ("dead", "dead_in_shell", "infertile", "clear", "pipped_dead")
_AT_END = {"dead_in_shell": "dead", "alive": None, "out": "hatched"}
_AT_LOOK = {"infertile": "clear", "dead_in_shell": "dead", "out": "removed"}
#: Days on which eggs of one list came out; more are the ages of the embryos.
MOST_DAYS = 7


def look_list(fates, result) -> list:
    """The looks of a sheet: its columns, and the days that the results name ("dead d7") where there are none."""
    looks = [(look, words) for look, words in fates]
    if looks:
        order = sorted(
            range(len(looks)),
            key=lambda i: (
                looks[i][0].day
                if looks[i][0].day is not None
                else 99
                if looks[i][0].transfer
                else 7 * (looks[i][0].order or i + 1)
            ),
        )
        return [looks[i] for i in order]
    days = sorted(
        {
            fate.look.day
            for fate in result
            if fate is not None and fate.look.day and fate.fate in ("clear", "dead", "removed", "infertile")
        }
    )
    if days and len(days) <= MOST_DAYS:
        return [(Look(day=day), None) for day in days]
    orders = sorted(
        {
            fate.look.order
            for fate in result
            if fate is not None and fate.look.order and fate.fate in ("clear", "dead", "removed", "infertile")
        }
    )
    if orders and orders[-1] <= 4:
        return [(Look(order=number), None) for number in range(1, orders[-1] + 1)]
    if any(fate is not None and (fate.fate == "clear" or fate.fate == "dead" and fate.early) for fate in result):
        return [(Look(order=1), None)]
    return []


def fate_of_egg(said: tuple, looks, ends: set) -> tuple[list, str | None, str | None]:
    """(state at each look, outcome, what the opened shell held) of an egg from its words at looks and its result."""
    at_look: list = [None] * len(looks)
    outcome = opened = None
    gone = False
    for number, fate in enumerate(said[:-1]):
        if fate is None or gone:
            continue
        said_so = "hatched" if fate.fate == "out" and number in ends else fate.fate
        state = _AT_LOOK.get(said_so, said_so)
        if state in ("alive", "clear", "dead", "removed") and number not in ends:
            at_look[number] = state
            gone = state != "alive"
        elif state != "alive":
            outcome, gone = {"clear": "infertile"}.get(state, state), True
    last = said[-1]
    if last is not None and not gone:
        outcome = _end_of_egg(last, looks, at_look)
    elif last is not None and outcome is None and last.fate in _IN_SHELL:
        # Taken out at a look and opened: what the shell held stays beside it.
        opened = _AT_END.get(last.fate, last.fate)
    return at_look, outcome, opened


def _end_of_egg(last: Fate, looks, at_look: list) -> str | None:
    """Put the result of an egg where it belongs: at the look it names, or at the end, which is given back."""
    state = _AT_END.get(last.fate, last.fate)
    days = [look.day for look, _ in looks]
    if last.fate in ("clear", "dead", "removed") and last.look.day in days and last.look.day is not None:
        at_look[days.index(last.look.day)] = state
    elif state == "clear" and looks:
        at_look[0] = "clear"
    elif state == "dead" and last.fate == "dead" and last.look.order and last.look.order <= len(looks):
        at_look[last.look.order - 1] = "dead"
    else:
        return "infertile" if state == "clear" else state
    return None


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
