"""Which column is what, where no heading says so: by behaviour, doubted and asked."""

from __future__ import annotations

import numpy as np

from hatchkit.problems import HatchkitError
from hatchkit.records.logs.head import Head
from hatchkit.records.logs.names import MEASURES, is_share, role_of, unit_of
from hatchkit.records.logs.plan import CHOICES, Plan
from hatchkit.records.logs.stamps import kind_of
from hatchkit.records.logs.values import missing_words


def by_behaviour_of(plan: Plan, head: Head, columns: list, free: list) -> None:
    """Where no heading is understood: temperature and humidity by how the numbers behave; doubted and asked."""
    kinds = {kind_of(cell) for n in plan.stamp for cell in columns[n].cells if cell}
    if kinds <= {"date", ""} and not plan.parts:
        raise HatchkitError("refuse_days_without_measure", {})
    open_ = [
        c
        for c in free
        if c.role in ("", "probe", "machine", "record", "mean")
        and len(c.values) > 0.8 * sum(cell.lower() not in missing_words() for cell in c.cells)
        and len(c.values) > 1
    ]
    warm = {c.n: warmth(c.values) for c in open_}
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
    damp = sorted(((dampness(c.values, guide), -c.n, c) for c in rest), reverse=True)
    chosen = [] if damp_by_name else damp_by_unit or [c for score, _, c in damp[:1] if score >= 0.5]
    for column in chosen[:1]:
        column.role = "rh"
    if not temps and not chosen:
        return
    for column in rest:
        if column.role in ("", "probe", "machine"):
            column.role = "record" if counts_up(column.values) else "other"
    plan.by_behaviour = True
    plan.said.append(dict(severity="doubtful", code="log_by_behaviour", header=bool(head.header)))
    plan.probe = next((c.n for c in free if c.role == "probe"), None)
    for column in temps + chosen[:1]:
        unit = warm.get(column.n, (0, ""))[1] or "C"
        taken = f"temp_{unit}" if column.role == "temp" else "rh"
        plan.asked.append((column.name or f"column {column.n + 1}", taken, list(CHOICES)))


def nameless_values(plan: Plan, free: list, preamble: list) -> list:
    """Columns called "value" or "state" of which neither a unit nor a name says what was measured.

    They are taken by behaviour, and where a column of probes parts them, each probe by its own.
    """
    found = [c for c in free if c.role == "value" and len(c.values)]
    told_by = [n for n in (plan.unit, plan.quantity, plan.probe) if n is not None]
    cells = {cell for c in free if c.n in told_by for cell in c.cells if cell}
    if (
        any(_tells(cell) for cell in cells)
        or any(c.unit for c in found)
        or any(sum(bool(unit_of(cell)) or "%" in cell for cell in c.cells) > 0.9 * len(c.values) for c in found)
    ):
        return []
    return [] if any(_tells(line) for line in preamble) else found


def _tells(text: str) -> bool:
    return role_of(text) in (*MEASURES, "other", "outdoor") or bool(unit_of(text)) or is_share(text)


def ask_values(plan: Plan, found: list, columns: list) -> None:
    """Ask what a nameless column of values is; refuse it where its probes differ, for no one answer fits them."""
    for column in found:
        groups = [column.values]
        if plan.probe is not None:
            names = [name for name, cell in zip(columns[plan.probe].cells, column.cells, strict=False) if cell]
            if len(names) == len(column.values):
                groups = [column.values[np.array([name == one for name in names])] for one in sorted(set(names))]
        kinds = {_looks(values) for values in groups}
        if len(kinds) > 1:
            raise HatchkitError("refuse_several_kinds", dict(column=column.name))
        kind = kinds.pop()
        column.role, column.unit = ("rh", "") if kind == "rh" else ("temp", kind[-1])
        plan.asked.append((column.name or f"column {column.n + 1}", kind, list(CHOICES)))
    plan.by_behaviour = True
    plan.said.append(dict(severity="doubtful", code="log_by_behaviour", header=True))


def _looks(values) -> str:
    warm, unit = warmth(values)
    damp = dampness(values)
    return "rh" if warm < 0.6 and damp >= 0.4 and np.median(values) > 45 else f"temp_{unit or 'C'}"


def letter_of_damp(free: list) -> list:
    """A column headed F alone beside one of temperatures: Feuchte in German, °F elsewhere."""
    return [
        c
        for c in free
        if c.name.strip().upper() == "F"
        and c.role == "temp"
        and len(c.values)
        and any(d.role == "temp" and d is not c for d in free)
        and dampness(c.values) >= 0.4
        and not any(
            len(d.values) == len(c.values) and (np.abs(d.values * 1.8 + 32 - c.values) < 0.2).all()
            for d in free
            if d.role == "temp" and d is not c
        )
    ]


def doubt_by_values(plan: Plan, free: list) -> None:
    """Headings that the values speak against: the heading is followed, and the person asked.

    Under "Humidity" stand the values of an incubator's warmth and under "Temperature" those of a humidity; or a
    temperature stands where neither an incubator nor a room does.
    """
    temps, damp = ([c for c in free if c.role == role and len(c.values)] for role in ("temp", "rh"))
    doubted = []
    for column in temps:
        hot = not _can_be_air(column)
        warm = [
            c
            for c in damp
            if _stands_warm(c.values)
            and (hot or warmth(column.values)[0] < 0.3 or _spread(column) > 4 * max(_spread(c), 0.1))
        ]
        if warm or hot:
            doubted += [column, *warm]
    for column in {c.n: c for c in doubted}.values():
        taken = "rh" if column.role == "rh" else f"temp_{column.unit or 'C'}"
        plan.asked.append((column.name, taken, list(CHOICES)))
    if doubted:
        middles = [round(float(np.median(c.values)), 1) for c in doubted]
        names = [c.name for c in doubted]
        plan.said.append(dict(severity="doubtful", code="log_against_values", names=names, middles=middles))


def _can_be_air(column) -> bool:
    low, high = {"C": (-30.0, 46.0), "F": (-22.0, 115.0), "K": (243.0, 319.0)}.get(column.unit, (-30.0, 319.0))
    return bool(low <= np.median(column.values) <= high) or column.unit == "" or np.median(column.values) > 115


def _stands_warm(values) -> bool:
    middle, spread = float(np.median(values)), float(np.subtract(*np.percentile(values, (90, 10))))
    return 36.3 <= middle <= 38.8 and spread < 1.2 or 97.3 <= middle <= 101.9 and spread < 2.2


def _spread(column) -> float:
    return float(np.subtract(*np.percentile(column.values, (90, 10))))


#: Where the air of an incubator stands: °C, °F, K. Common practice, no source.
_WARM = {"C": (33.0, 41.0), "F": (92.0, 106.0), "K": (306.0, 314.5)}
#: Where an egg store or a room stands, less telling.
_COOL = {"C": (8.0, 33.0), "F": (50.0, 92.0), "K": (281.0, 306.0)}


def counts_up(values) -> bool:
    """A running number; a repeated or missing line is allowed."""
    if len(values) < 3 or (values != np.round(values)).any():
        return False
    step = np.diff(values)
    usual = np.median(step)
    return bool(usual >= 1 and (step == usual).mean() >= 0.7 and (step >= 0).all())


def is_hour(values) -> bool:
    """Whole numbers that go round from 0 to 23 (or 1 to 24)."""
    if len(values) < 12 or (values != np.round(values)).any() or values.min() < 0 or values.max() > 24:
        return False
    step = np.diff(values)
    return bool(np.isin(step, (0, 1, -23)).mean() > 0.95 and len(np.unique(values)) > 1)


def falls_slowly(values) -> bool:
    """A battery: never up by more than it fell, few values, ending at or below its beginning."""
    step = np.diff(values)
    if len(values) < 10 or not step.any():
        return False
    return bool(
        (step > 0).sum() <= 0.02 * len(step) and values[-1] < values[0] and len(np.unique(values)) < 0.5 * len(values)
    )


def is_constant(values) -> bool:
    """One value throughout."""
    return len(values) > 3 and bool((values == values[0]).all())


def warmth(values) -> tuple[float, str]:
    """How much a column behaves like the air of an incubator (0 to 1), and the unit in which it does.

    Air of an incubator keeps near one temperature and changes slowly.
    """
    if len(values) < 2 or is_hour(values) or counts_up(values):
        return 0.0, ""
    middle, near = float(np.median(values)), float(np.percentile(np.abs(np.diff(values)), 75))
    for share, ranges in ((1.0, _WARM), (0.4, _COOL)):
        for unit, (low, high) in ranges.items():
            if low <= middle <= high:
                slow = 1.0 if near <= (2.0 if unit == "F" else 1.2) else 0.4
                whole = 0.8 if (values == np.round(values)).all() else 1.0
                still = 0.6 if is_constant(values) or falls_slowly(values) else 1.0
                return share * slow * whole * still, unit
    return 0.0, ""


def dampness(values, warm=None) -> float:
    """How much a column behaves like relative humidity (0 to 1): within 5 to 100, alive, moving against the warmth."""
    if len(values) < 2 or values.min() < 0 or values.max() > 101 or is_hour(values) or counts_up(values):
        return 0.0
    middle = float(np.median(values))
    if not 5 <= middle <= 99 or is_constant(values) or falls_slowly(values):
        return 0.1 * (15 <= middle <= 95)
    score = 0.7 if 20 <= middle <= 90 else 0.4
    if warm is not None and len(warm) == len(values) and np.std(warm) > 0 and np.std(values) > 0:
        score -= 0.15 * float(np.corrcoef(warm, values)[0, 1])
    return float(np.clip(score, 0.0, 1.0))
