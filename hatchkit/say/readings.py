"""What a column was taken for, as its key tells: "dead@day7" is dead at the look of day 7."""

from __future__ import annotations

import re


def parts_of(taken: str) -> dict:
    """A reading's key taken apart.

    Parameters
    ----------
    taken : str
        A field, ``~within`` where it is part of the column before, and after ``@`` its look: ``dayN``, ``lookN``,
        ``transfer``, joined by ``+``.

    Returns
    -------
    dict
        field, within ("yes" or "no"), day and order (int or None), transfer ("yes" or "no").
    """
    field, _, look = str(taken).partition("@")
    day, order = (re.search(rf"(?:^|\+){word}(\d{{1,6}})(?:\+|$)", look) for word in ("day", "look"))
    return dict(
        field=field.removesuffix("~within"),
        within="yes" if field.endswith("~within") else "no",
        day=int(day[1]) if day else None,
        order=int(order[1]) if order else None,
        transfer="yes" if "transfer" in look.split("+") else "no",
    )
