"""Numbers of a sensor column: as written, which cells are missing codes, and in which unit."""

from __future__ import annotations

from functools import cache

import numpy as np
import pandas as pd

from hatchkit import reference
from hatchkit.records.sensors_head import is_number
from hatchkit.records.sensors_names import name_rest, role_of, unit_of

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
    rows = table[(table["kind"] == "number") & table["quantity"].isin([quantity, "any"])
                 & table["unit"].isin([unit, "any"])]
    return rows["code"].astype(float).to_numpy()


def as_numbers(column) -> tuple[np.ndarray, np.ndarray | None]:
    """Values of a column, and which cells hold a text that is neither a number nor a missing code.

    Parameters
    ----------
    column : Series
        As the parser gave it: float, or text where some cell is no number.

    Returns
    -------
    values : ndarray of float
        NaN where there is no number.
    text : ndarray of bool, or None where the whole column is numbers
    """
    if column.dtype.kind in "fiu":
        return column.to_numpy(dtype=float), None
    codes, distinct = pd.factorize(column.to_numpy(dtype=object))
    values = np.array([_number(cell) for cell in distinct] + [np.nan])
    text = np.array([isinstance(cell, str) and np.isnan(value) and cell.strip().lower() not in missing_words()
                     for cell, value in zip(distinct, values, strict=False)] + [False])
    return values[codes], text[codes]


def _number(cell) -> float:
    if not isinstance(cell, str):
        return float(cell)
    text = cell.strip().strip('"').replace("\u2212", "-")
    if not is_number(text):
        return np.nan
    return float(text.rstrip("%°℃℉CFKcfkrRhH. \t").replace(",", "."))


def missing_codes(values: np.ndarray, quantity: str, unit: str) -> np.ndarray:
    """Row numbers whose value is a code for "no reading" (reference/missing_codes.csv)."""
    low, high = {"C": (-20, 60), "F": (-4, 140), "K": (250, 340)}.get(unit, (0, 100))
    odd = np.flatnonzero((values > high) | (values < low))
    return odd[np.isin(np.round(values[odd], 4), _missing_numbers(quantity, unit))] if len(odd) else odd


def to_celsius(values: np.ndarray, unit: str) -> np.ndarray:
    """Temperatures in °C from "C", "F" or "K"."""
    if unit == "F":
        return (values - 32.0) / 1.8
    return values - 273.15 if unit == "K" else values


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
    letters = ["%" if isinstance(cell, str) and ("%" in cell or cell.strip().lower() in ("rh", "rf"))
               else unit_of(cell) if isinstance(cell, str) else "" for cell in distinct]
    return np.array(letters + [""], dtype=object)[codes]


def row_owners(raw, plan, quantities) -> np.ndarray | None:
    """Probe of each line where a column names it; "Hum low" goes with "Temp low" where names hold the quantity."""
    if plan.probe is None:
        return None
    codes, distinct = pd.factorize(raw[plan.probe].to_numpy(dtype=object))
    names = list(distinct)
    if quantities is not None and plan.quantity is None:
        temps = {name_rest(name): name for name in names if role_of(name) in ("temp", "")}
        names = [name if role_of(name) in ("temp", "") else temps.get(name_rest(name), name) for name in names]
    return np.array([*names, np.nan], dtype=object)[codes]


def row_quantities(raw, plan) -> np.ndarray | None:
    """Quantity of each line ("temp", "rh", "wet_bulb", "dew_point", "") where a column names it, else None.

    A file with one value a line says in a column of its own, or by its unit, what the value is.
    """
    if len(plan.channels) != 1 or list(plan.channels[0].columns) != ["temp"]:
        return None
    for place in (plan.quantity, plan.probe):
        if place is None:
            continue
        codes, distinct = pd.factorize(raw[place].to_numpy(dtype=object))
        roles = [role_of(cell) for cell in distinct]
        # A column of probes tells the quantity only where some of its names say humidity.
        if place == plan.quantity or {"rh", "wet_bulb", "dew_point"} & set(roles):
            return np.array(["temp" if role == "" else role for role in roles] + [""], dtype=object)[codes]
    if plan.unit is not None:
        letters = row_units(raw[plan.unit])
        if (letters == "%").any():
            return np.where(letters == "%", "rh", np.where(letters == "", "", "temp")).astype(object)
    return None
