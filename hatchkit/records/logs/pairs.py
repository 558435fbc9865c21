"""Which humidity goes with which temperature, and which of mean, lowest and highest is the reading?"""

from __future__ import annotations

import re

import numpy as np

from hatchkit.records.logs.names import name_rest, plain, probe_name, unit_of
from hatchkit.records.logs.plan import Channel, Plan


def one_statistic(measures: list, plan: Plan) -> list:
    """Of mean, lowest and highest of one quantity the mean (or the reading itself) is kept."""
    kept, alike = [], {}
    measures = [column for column in measures if not any(_outdoes(other, column) for other in measures)]
    for column in measures:
        alike.setdefault((column.role, _rest(column)), []).append(column)
    for column in measures:
        same = alike[column.role, _rest(column)]
        readings = [c for c in same if c.statistic == ""] or [c for c in same if c.statistic == "mean"]
        if (
            column.statistic == "spread"
            or (readings and column.statistic not in ("", "mean"))
            or (column.statistic == "mean" and any(c.statistic == "" for c in same))
        ):
            continue
        kept.append(column)
    extremes = [c for c in kept if c.statistic in ("minimum", "maximum") and c.role == "temp"]
    if extremes:
        plan.said.append(dict(severity="doubtful", code="log_only_extremes", names=[c.name for c in extremes]))
    return kept


_NOW = set(
    "current actual now present live momentan aktuell aktuelle actuel actuelle attuale actuales atual huidig huidige "
    "aktualna aktualni jelenlegi".split()
)
#: These may be places too ("Temp high" is the upper tray), so they tell only beside a value of the moment.
_ENDS = set(
    "high low highest lowest hi lo peak hoch tief haut haute bas basse alta alto baja bajo bassa basso baixa baixo "
    "hoog laag".split()
)
_RAW = set(
    "raw uncorrected uncalibrated uncompensated uncorr uncal roh rohwert unkorrigiert unkalibriert brut brute grezzo "
    "grezza bruto bruta ruw".split()
)
_CORRECTED = set(
    "corrected calibrated compensated adjusted corr cal comp korrigiert kalibriert corrige corrigee calibre corretto "
    "corretta corregido corregida corrigido corrigida gecorrigeerd".split()
)


def _outdoes(other, column) -> bool:
    """Whether `other` is the same quantity corrected, or its value of the moment, where `column` is raw or an end."""
    if other is column or other.role != column.role or _place(other) != _place(column):
        return False
    better, words = set(plain(other.name).split()), set(plain(column.name).split())
    end = words & _ENDS or column.statistic in ("minimum", "maximum")
    if end and better & _NOW and not words & _NOW and not better & _ENDS:
        return True
    return bool(words & _RAW) and not better & _RAW and column.statistic == other.statistic


def _place(column) -> tuple:
    """The words of a name that say of which probe it is."""
    return tuple(
        word for word in name_rest(column.name) if word not in _NOW | _ENDS | _RAW | _CORRECTED | _SPANS | {"value"}
    )


#: Words that say over how long a mean was taken.
_SPANS = {
    "h",
    "hr",
    "hour",
    "hours",
    "hourly",
    "min",
    "minute",
    "d",
    "day",
    "daily",
    "rolling",
    "running",
    "moving",
    "last",
    "std",
    "stunde",
    "heure",
    "ora",
    "hora",
    "uur",
}


def _rest(column) -> tuple:
    rest = name_rest(column.name)
    return tuple(word for word in rest if word not in _SPANS and not word.isdigit()) if column.statistic else rest


def channels_of(measures: list) -> list:
    """Columns of measures as channels: a temperature with the humidity that goes with it."""
    temps = [c for c in measures if c.role in ("temp", "value")]
    for column in list(temps[1:]):
        before = [t for t in temps if t.n < column.n]
        named = any(
            t.unit and column.unit not in ("", t.unit) and name_rest(t.name) == name_rest(column.name) for t in before
        )
        if named or any(_converted(t.values, column.values) for t in before):
            # The same temperature once more in the other unit.
            column.role = "twin"
            temps.remove(column)
            measures = [m for m in measures if m is not column]
    names = {c.n: c.name for c in measures}
    if not any(c.unit for c in temps) and len({unit_of(c.name, bare=True) for c in temps}) == 1:
        for column in temps:
            column.unit = unit_of(column.name, bare=True)
            names[column.n] = re.sub(r"\s[CFK]$", "", column.name.strip()) if column.unit else column.name
    labels = [probe_name(names[t.n]) for t in temps]
    channels = [
        Channel(_once(labels, i) or f"channel {i + 1}", {"temp": t.n}, {"temp": t.unit}, {"temp": t.scale})
        for i, t in enumerate(temps)
    ]
    turns = _turns(measures)
    for column in (c for c in measures if c not in temps):
        role = column.role
        free = [c for c in channels if role not in c.columns]
        same = [
            c for c in free if "temp" in c.columns and name_rest(column.name) == name_rest(names[c.columns["temp"]])
        ]
        before = [c for c in free if c.columns.get("temp", 10**6) < column.n]
        # The partner has the same words apart from the quantity; else it is the temperature just left of it; else the
        # first that lacks this quantity.
        partner = (same or (before[-1:] if turns else free if role == "rh" or len(channels) == 1 else []) or [None])[0]
        if partner is None and role == "rh":
            partner = (
                free[0]
                if free and len(free) == 1
                else Channel(probe_name(column.name) or f"channel {len(channels) + 1}")
            )
            if partner not in channels:
                channels.append(partner)
        if partner is not None:
            partner.columns[role], partner.units[role] = column.n, column.unit
            partner.scales[role] = column.scale
    return channels


def _converted(one, two) -> bool:
    """Whether two columns hold the same temperatures, one in °C and one in °F."""
    if len(one) != len(two) or len(one) < 5:
        return False
    return bool((np.abs(one * 1.8 + 32 - two) < 0.12).all() or (np.abs(two * 1.8 + 32 - one) < 0.12).all())


def _turns(measures: list) -> bool:
    order = [c.role for c in measures if c.role in ("temp", "rh", "value")]
    return order.count("temp") == order.count("rh") and order[::2] == ["temp"] * (len(order) // 2)


def _once(names: list, i: int) -> str:
    """The i-th name; where the same text stands above several columns, with its place in the order."""
    if not names[i] or names.count(names[i]) == 1:
        return names[i]
    return f"{names[i]} {names[: i + 1].count(names[i])}"
