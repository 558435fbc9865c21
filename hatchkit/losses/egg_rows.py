"""From the row of a single egg to its fate."""

import math

from hatchkit.losses.counts import group
from hatchkit.losses.schedule import Look, number, where
from hatchkit.losses.stages import age_from_look, pip_day
from hatchkit.problems import problem

#: What an outcome says by itself.
OUTCOMES = ("hatched", "culled", "pipped_dead", "dead", "infertile", "clear", "removed")


def text(value) -> str:
    """A mark as plain lower-case text; blank when nothing was written."""
    return "" if value is None or value != value else str(value).strip().lower()


def egg_fate(egg: dict, looks: list[Look], species: str, incubation_days: float) -> tuple[dict | None, list[dict]]:
    """Fate of one egg, or None where its row does not say how it ended.

    Returns
    -------
    row : dict or None
        A row of the fates table, with `was_clear` for an egg that was taken out as clear (and
        perhaps opened).
    problems : list of dict
    """
    mark, end = str(egg.get("egg") or ""), looks[-1].day
    outcome, stage_day = text(egg.get("outcome")), number(egg.get("stage_day"))
    alive, end_look = 0.0, None
    for look in looks[:-1]:
        seen = text(egg.get(look.name))
        if seen == "alive" and end_look is None:
            alive = look.day
        elif seen in ("clear", "dead", "removed") and end_look is None:
            end_look, how = look, seen
    doubts = []
    if end_look is None:
        if outcome not in OUTCOMES:
            return None, doubts
        name, by = "hatch", end
        fate = outcome
    else:
        name, by = end_look.name, end_look.day
        fate = _fate_at_look(how, outcome)
        if fate is None:
            doubts.append(_contradiction(egg, "egg_outcome_differs", seen=how, look=name, outcome=outcome))
            fate, name, by = outcome, "hatch", end
    if alive > 0 and (fate == "infertile" or (fate == "clear" and name == "hatch")):
        doubts.append(_contradiction(egg, "egg_seen_alive", day=alive, outcome=fate))
        fate = "dead"
    row, more = _row(egg, mark, fate, name, by, alive, stage_day, species, incubation_days)
    row["was_clear"] = end_look is not None and how == "clear" and name != "hatch"
    return row, doubts + more


def _fate_at_look(how: str, outcome: str) -> str | None:
    """What an egg taken out at a look was, with the outcome found on opening it, if any."""
    if not outcome or outcome not in OUTCOMES:
        return how
    if outcome in ("hatched", "culled", "pipped_dead"):
        return None
    # Clear says that nobody opened it, so it tells nothing beyond what was seen at the look.
    return how if how == "removed" or outcome == "clear" else outcome


def _row(egg, mark, fate, name, by, alive, stage_day, species, incubation_days):
    after, until = {
        "hatched": (by, math.nan),
        "culled": (by, math.nan),
        "infertile": (math.nan, math.nan),
        "clear": (0.0, by),
        "pipped_dead": (max(alive, min(pip_day(incubation_days), by - 1.0)), by),
    }.get(fate, (alive, by))
    doubts = []
    if fate == "dead" and not math.isnan(stage_day):
        low, high = age_from_look(stage_day, species, incubation_days)
        if low >= by:
            doubts.append(_contradiction(egg, "egg_older_than_found", stage=stage_day, after=alive, by=by))
        elif high <= alive:
            facts = dict(stage=stage_day, alive=alive, after=low, by=by)
            doubts.append(_contradiction(egg, "egg_younger_than_alive", **facts))
            after = low
        else:
            after, until = max(alive, low), min(by, high)
    return group(fate, 1.0, after, until, name, mark), doubts


def _contradiction(egg: dict, code: str, **facts) -> dict:
    facts = dict(batch=str(egg["batch"]), egg=str(egg.get("egg")), **facts)
    return problem("doubtful", code=code, facts=facts, **where(egg), column="outcome")
