"""Which column is what, where no heading says so: by behaviour, doubted and asked."""

from __future__ import annotations

import numpy as np

from hatchkit.problems import HatchkitError
from hatchkit.records.logs import behaviour, told
from hatchkit.records.logs.head import Head
from hatchkit.records.logs.names import unit_of
from hatchkit.records.logs.plan import CHOICES, Plan
from hatchkit.records.logs.stamps import kind_of
from hatchkit.records.logs.values import missing_words


def by_behaviour_of(plan: Plan, head: Head, columns: list, free: list) -> None:
    """Where no heading is understood: temperature and humidity by how the numbers behave; doubted and asked."""
    kinds = {kind_of(cell) for n in plan.stamp for cell in columns[n].cells if cell}
    if kinds <= {"date", ""} and not plan.parts:
        raise HatchkitError("it has dates without a time of day, and no column named temperature or humidity")
    open_ = [c for c in free if c.role in ("", "probe", "machine", "record", "mean")
             and len(c.values) > 0.8 * sum(cell.lower() not in missing_words() for cell in c.cells)
             and len(c.values) > 1]
    warm = {c.n: behaviour.warmth(c.values) for c in open_}
    marked = [c for c in open_ if sum(bool(unit_of(cell)) for cell in c.cells) > 0.9 * len(c.values)]
    best = max([score for score, _ in warm.values()], default=0.0)
    damp_by_unit = [c for c in open_ if sum("%" in cell for cell in c.cells) > 0.9 * len(c.values)]
    damp_by_name = [c for c in free if c.role == "rh"]
    # Beside a column that is called humidity only what is as warm as an incubator is taken for its temperature.
    least = 0.6 if damp_by_name else 0.3
    temps = marked or [c for c in open_ if warm[c.n][0] >= max(least, 0.75 * best) and c not in damp_by_unit]
    temps = [c for c in temps if abs(np.median(c.values) - np.median(temps[0].values)) < 5] if not marked else temps
    for column in temps:
        column.role, column.unit = "temp", column.unit
    rest = [c for c in open_ if c not in temps]
    guide = temps[0].values if temps else None
    damp = sorted(((behaviour.dampness(c.values, guide), -c.n, c) for c in rest), reverse=True)
    chosen = [] if damp_by_name else damp_by_unit or [c for score, _, c in damp[:1] if score >= 0.5]
    for column in chosen[:1]:
        column.role = "rh"
    if not temps and not chosen:
        return
    for column in rest:
        if column.role in ("", "probe", "machine"):
            column.role = "record" if behaviour.counts_up(column.values) else "other"
    plan.by_behaviour = True
    plan.said.append(told.by_behaviour(bool(head.header)))
    plan.probe = next((c.n for c in free if c.role == "probe"), None)
    for column in temps + chosen[:1]:
        unit = warm.get(column.n, (0, ""))[1] or "C"
        taken = f"temp_{unit}" if column.role == "temp" else "rh"
        plan.asked.append((column.name or f"column {column.n + 1}", taken, list(CHOICES)))
