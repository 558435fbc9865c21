"""What is the number in a cell? As written, which are missing codes, and in which unit."""

from __future__ import annotations

from functools import cache

import numpy as np
import pandas as pd

from hatchkit import reference
from hatchkit.records.logs.cells import is_number, without_mark
from hatchkit.records.logs.names import MEASURES, is_share, name_rest, other_unit, role_of, unit_of

# The loader of the reference tables takes these spellings for empty cells, so they stand here.
_EMPTY_WORDS = {"", "na", "n/a", "nan", "null", "none", "<na>", "#n/a", "#na", "#value!", "#div/0!", "#ref!"}


@cache
def missing_words() -> frozenset:
    """Texts in small letters that stand for a missing value."""
    table = reference.load("missing_codes")
    return frozenset(_EMPTY_WORDS | {str(code).lower() for code in table.loc[table["kind"] == "text", "code"]})


@cache
def _missing_numbers(quantity: str, unit: str) -> np.ndarray:
    table = reference.load("missing_codes")
    rows = table[
        (table["kind"] == "number") & table["quantity"].isin([quantity, "any"]) & table["unit"].isin([unit, "any"])
    ]
    return rows["code"].astype(float).to_numpy()


def as_numbers(column) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Values of a column, which cells hold a text that is neither a number nor a missing code, which bear a mark.

    Parameters
    ----------
    column : Series
        As the parser gave it: float, or text where some cell is no number.

    Returns
    -------
    values : ndarray of float
        NaN where there is no number.
    text, marked : ndarray of bool
    """
    if column.dtype.kind in "fiu":
        values, nothing = column.to_numpy(dtype=float), np.zeros(len(column), dtype=bool)
        endless = np.isinf(values)
        return (np.where(endless, np.nan, values) if endless.any() else values), nothing, nothing
    codes, distinct = pd.factorize(column.to_numpy(dtype=object))
    values = np.array([_number(cell) for cell in distinct] + [np.nan])
    text = np.array(
        [
            isinstance(cell, str) and np.isnan(value) and cell.strip(' "').lower() not in missing_words()
            for cell, value in zip(distinct, values, strict=False)
        ]
        + [False]
    )
    marked = np.array(
        [
            isinstance(cell, str) and not np.isnan(value) and without_mark(_plain(cell)) != _plain(cell)
            for cell, value in zip(distinct, values, strict=False)
        ]
        + [False]
    )
    return values[codes], text[codes], marked[codes]


def _plain(cell: str) -> str:
    return cell.strip().strip('"').strip().replace("\u2212", "-")


def _number(cell) -> float:
    if not isinstance(cell, str):
        return float(cell) if np.isfinite(cell) else np.nan
    text = _plain(cell)
    if not is_number(text):
        return np.nan
    value = float(without_mark(text).rstrip("%°℃℉CFKcfkrRhH. \t").replace(",", "."))
    return value if np.isfinite(value) else np.nan


def missing_codes(values: np.ndarray, quantity: str, unit: str) -> np.ndarray:
    """Row numbers whose value is a code for "no reading" (reference/missing_codes.csv)."""
    low, high = {"C": (-20, 60), "F": (-4, 140), "K": (250, 340)}.get(unit, (0, 100))
    odd = np.flatnonzero((values > high) | (values < low))
    return odd[np.isin(np.round(values[odd], 4), _missing_numbers(quantity, unit))] if len(odd) else odd


def to_celsius(values: np.ndarray, unit) -> np.ndarray:
    """Temperatures in °C from "C", "F" or "K", one for all or one for each; any other letter is °C."""
    if isinstance(unit, str) and unit not in ("F", "K"):
        return values
    return np.where(unit == "F", (values - 32.0) / 1.8, np.where(unit == "K", values - 273.15, values))


def unit_from_range(values: np.ndarray) -> tuple[str, bool]:
    """Unit of temperatures judged by their middle, and whether that is beyond doubt.

    An incubator or egg room at 15 to 45 can only be °C, at 70 to 115 only °F, at 288 to 318 only K.
    """
    some = values[:: max(1, len(values) // 20_000)]
    some = some[np.isfinite(some)]
    some = some if len(some) else values[np.isfinite(values)]
    if not len(some):
        return "C", True
    middle = float(np.median(some))
    if 15 <= middle <= 45:
        return "C", True
    if 70 <= middle <= 115:
        return "F", True
    if 288 <= middle <= 318:
        return "K", True
    return ("F", False) if 45 < middle < 70 else ("C", False)


def row_units(column) -> np.ndarray:
    """Unit letter of each row from a unit column: "C", "F", "K", "%" or ""."""
    codes, distinct = pd.factorize(column.to_numpy(dtype=object))
    return np.array([_unit_letter(cell) for cell in distinct] + [""], dtype=object)[codes]


def _unit_letter(cell) -> str:
    if not isinstance(cell, str):
        return ""
    if is_share(cell) or cell.strip().lower() in ("rh", "rf"):
        return "%"
    return unit_of(cell)


def row_owners(raw, plan, quantities) -> np.ndarray | None:
    """Probe of each line where a column names it; "Hum low" goes with "Temp low" where names hold the quantity."""
    if plan.probe is None:
        return None
    codes, distinct = pd.factorize(raw[plan.probe].to_numpy(dtype=object))
    names = [str(name) for name in distinct]
    if quantities is not None:
        temps = {name_rest(name): name for name in names if role_of(name) == "temp"}
        names = [temps.get(name_rest(name), name) if role_of(name) in MEASURES else name for name in names]
    return np.array([*names, np.nan], dtype=object)[codes]


def row_quantities(raw, plan) -> np.ndarray | None:
    """Quantity of each line ("temp", "rh", "wet_bulb", "dew_point", "" for any other), else None.

    A file with one value a line says in a column of its own, by its unit,
    or by the name of the probe what the value is.
    Where some lines are told so, the lines of which nothing is known are no temperatures.
    """
    places = [place for place in (plan.quantity, plan.unit, plan.probe) if place is not None]
    if not places or len(plan.channels) != 1 or list(plan.channels[0].columns) != ["temp"]:
        return None
    said = raw[places].astype(object)
    group = said.groupby(places, dropna=False, sort=False).ngroup().to_numpy()
    rows = said.drop_duplicates().itertuples(index=False)
    units = [place == plan.unit for place in places]
    found = [_quantity([_said_by(*cell) for cell in zip(row, units, strict=True)]) for row in rows]
    known = any(role in MEASURES for role in found)
    found = ["" if role == "other" else ("" if known else "temp") if role == "" else role for role in found]
    return np.array(found, dtype=object)[group]


def _said_by(cell, is_unit: bool) -> str:
    if is_unit:
        letter = _unit_letter(cell)
        if letter:
            return "%" if letter == "%" else "temp"
        return "other" if isinstance(cell, str) and other_unit(cell) else ""
    role = role_of(cell) if isinstance(cell, str) else ""
    return role if role in (*MEASURES, "other") else "other" if role == "outdoor" else ""


def _quantity(said: list) -> str:
    """The first word on it; per cent beside nothing else is humidity, a battery in per cent is not."""
    if "other" in said:
        return "other"
    found = next((role for role in said if role in MEASURES and role != "temp"), "temp" if "temp" in said else "")
    return "rh" if "%" in said and found in ("", "temp") else found
