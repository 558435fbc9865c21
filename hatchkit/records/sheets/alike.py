"""Forms that call one thing by two names ("hatched chicks", "hatched ducklings") -> one column."""

from __future__ import annotations

from hatchkit.records.sheets.cells import is_empty
from hatchkit.records.sheets.fields import COUNTS
from hatchkit.records.sheets.meanings import meanings


def with_one_name(block, language: str | None):
    """The block of forms with columns joined that mean the same number and are never both filled.

    Parameters
    ----------
    block : Block
    language : str or None
    """
    if block.shape != "form" or len(block.rows) < 2:
        return block
    kept: dict = {}
    drop = []
    for place, (heading, group) in enumerate(zip(block.headings, block.groups, strict=True)):
        named = meanings(heading, group, language)
        if not named or named[0].field not in COUNTS:
            continue
        key = (named[0].field, named[0].look)
        first = kept.setdefault(key, place)
        pairs = list(zip(block.columns[first], block.columns[place], strict=True))
        if first != place and not any(not is_empty(one) and not is_empty(other) for one, other in pairs):
            block.columns[first] = [other if is_empty(one) else one for one, other in pairs]
            drop.append(place)
    for name in ("headings", "groups", "columns"):
        setattr(block, name, [value for place, value in enumerate(getattr(block, name)) if place not in drop])
    return block
