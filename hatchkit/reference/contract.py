"""The tables of the kit as ``columns_*.csv`` describe them: the one list of their columns, units and kinds."""

from __future__ import annotations

from functools import cache
from importlib import resources

import numpy as np
import pandas as pd

from hatchkit.reference import load

TIME = "datetime64[us, UTC]"
#: The dtype that pandas itself gives to text.
TEXT = pd.Series(["a"]).dtype
_DTYPES = {"time": TIME, "count": "Int64", "number": float, "yes/no": bool}


@cache
def _described() -> pd.DataFrame:
    names = sorted(
        file.name.removesuffix(".csv")
        for file in resources.files("hatchkit.reference").iterdir()
        if file.name.startswith("columns_")
    )
    return pd.concat([load(name) for name in names], ignore_index=True).fillna("")


@cache
def described(table: str) -> tuple[tuple[str, str, str], ...]:
    """(column, unit, kind) of a table, in its order.

    Raises
    ------
    KeyError
        If no table of that name is described.
    """
    facts = _described()
    facts = facts[facts["table"] == table]
    if facts.empty:
        raise KeyError(table)
    return tuple(facts[["column", "unit", "kind"]].itertuples(index=False, name=None))


def columns(table: str) -> list[str]:
    """Names of a table's columns, in its order."""
    return [name for name, _, _ in described(table)]


def blank(kind: str, rows: int) -> pd.Series:
    """A column of one kind in which nothing is known: no time, no number, no word, not so."""
    empty = {"time": pd.NaT, "count": pd.NA, "number": np.nan, "yes/no": False}.get(kind)
    return pd.Series([empty] * rows, dtype=_DTYPES.get(kind, TEXT))


def empty(table: str) -> pd.DataFrame:
    """A table without rows, with its columns and their types."""
    return pd.DataFrame({name: blank(kind, 0).array for name, _, kind in described(table)})
