"""What was said of an egg, look by look and at the end -> its state at each look, its outcome, what its shell held."""

from __future__ import annotations

from hatchkit.records.sheets.fatewords import Fate
from hatchkit.records.sheets.fields import Look

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
    elif state == "dead" and last.early and looks:
        at_look[0] = "dead"
    elif state == "dead" and last.fate == "dead" and last.look.order and last.look.order <= len(looks):
        at_look[last.look.order - 1] = "dead"
    else:
        return "infertile" if state == "clear" else state
    return None
