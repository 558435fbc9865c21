"""How counts are spelt in sentences that rooms still make themselves."""

from __future__ import annotations


def many(number, one: str, several: str = "") -> str:
    """ "1 reading", "2 readings", "3 batches" (the last with `several` = "batches")."""
    return f"{number} {one if number == 1 or number == '1' else several or one + 's'}"
