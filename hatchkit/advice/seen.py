"""What was seen of one batch, as groups of eggs each of which may have ended in several ways."""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cache

import numpy as np

from hatchkit.advice import course
from hatchkit.advice.published import STAGES

#: Where the eggs of a cell of the model belong in the ledger.
STAGE_OF_CELL = np.array(
    [
        STAGES.index("clear"),
        STAGES.index("removed"),
        *[STAGES.index("early")] * 7,
        *[STAGES.index("mid")] * 7,
        *[STAGES.index("late")] * 7,
        STAGES.index("pipped_dead"),
        STAGES.index("culled"),
        STAGES.index("hatched"),
    ]
)

#: A death in the last hours before a look can't be seen, one of the days before it half the time, and of older ones a
#: few are overlooked (texts on candling: a dead embryo shows when the vessels fade, in a day or two; figures stated by
#: hatchkit) ...
FRESH, FRESH_MISSED, MISSED = (0.3, 2.0), 0.5, 0.07
#: ... and the age of an opened embryo is judged to about a day (logistic scale; stated by hatchkit), at the limits
#: between early, mid and late.
EYE_DAYS, JUDGED, NEAR = 0.6, (7.0, 14.0), 0.15

#: Parts of a day in which chances are averaged.
STEPS = 8

#: Fates that are told by themselves, whatever the model thinks of them.
TOLD = {
    "clear": "clear",
    "infertile": "clear",
    "removed": "removed",
    "pipped_dead": "pipped_dead",
    "culled": "culled",
    "hatched": "hatched",
}


@dataclass(frozen=True)
class Seen:
    """Groups of eggs of one batch.

    Attributes
    ----------
    ways : ndarray, shape (groups, CELLS)
        How likely an egg of each cell of `course` is put down in this group.
    eggs : ndarray, shape (groups,)
    stages : ndarray, shape (groups, CELLS)
        Place in `STAGES` to which an egg of the group and cell counts.
    """

    ways: np.ndarray
    eggs: np.ndarray
    stages: np.ndarray

    def by_stage(self, cells) -> np.ndarray:
        """Eggs per stage, shape (..., stages), from eggs per group and cell, shape (..., groups, CELLS)."""
        onehot = (self.stages[..., None] == np.arange(len(STAGES))).astype(float)
        return np.einsum("...gc,gcs->...s", cells, onehot)


def seen(fates, row, kinds, incubation_days) -> Seen:
    """`Seen` of one batch.

    Parameters
    ----------
    fates : list of dict
        Rows of `fates` of the batch.
    row : dict or Series
        Its row of batches; `opened1_infertile` and `opened1_dead`, clears opened at the first candling, are used
        where they are.
    kinds : frozenset of str
        What was counted (`losses.counted`).
    incubation_days : float
        Days are put on the hen's scale of 21.
    """
    eggs, ways, stages = {}, {}, {}
    infertile, dead = _opened(row)
    for fate in fates:
        name, scale = fate["fate"], course.DAYS / incubation_days
        after, by = float(fate["after_day"] or 0) * scale, float(fate["by_day"] or math.inf) * scale
        after, by = 0.0 if math.isnan(after) else after, math.inf if math.isnan(by) else by
        count = float(fate["eggs"])
        parts = [(name, count)]
        if name == "clear" and infertile + dead > 0:
            barren, died = min(infertile, count), min(dead, max(count - infertile, 0.0))
            infertile, dead = infertile - barren, dead - died
            parts = [("no germ", barren), ("germ died", died), (name, count - barren - died)]
        for kind, part in parts:
            if part > 0:
                key = (kind, round(after, 2), round(by, 2), fate["found_at"] == "hatch")
                eggs[key] = eggs.get(key, 0.0) + part
                ways[key] = _ways(kind, after, by, kinds, at_end=fate["found_at"] == "hatch")
                stages[key] = _stages(kind)
    return Seen(
        np.array(list(ways.values())).reshape(-1, course.CELLS),
        np.array(list(eggs.values())),
        np.array(list(stages.values())).reshape(-1, course.CELLS),
    )


def _opened(row) -> tuple[float, float]:
    """Clears opened at the first candling: without a germ, and with one that had died."""
    counts = (row.get(name) for name in ("opened1_infertile", "opened1_dead"))
    infertile, dead = (0.0 if count is None or count != count else float(count) for count in counts)
    return infertile, dead


def _stages(kind) -> np.ndarray:
    told = {"no germ": "clear", "germ died": "clear"}.get(kind) or TOLD.get(kind)
    return STAGE_OF_CELL if told is None else np.full(course.CELLS, STAGES.index(told))


def _ways(kind, after, by, kinds, *, at_end) -> np.ndarray:
    """How likely an egg of each cell is put down as this."""
    out = np.zeros(course.CELLS)
    days = slice(course.FIRST_DAY, course.PIPPED)
    shows = course.SHOWS_ON_OPENING if at_end else course.SHOWS_AT_CANDLING
    if kind in ("clear", "infertile"):
        out[course.CLEAR], out[days] = 1.0, 1 - shows
    elif kind == "no germ":
        out[course.CLEAR] = 1.0
        out[days] = _inside(after, by) * course.TAKEN_FOR_BARREN
    elif kind == "germ died":
        out[days] = _inside(after, by) * (1 - course.SHOWS_AT_CANDLING)  # else it would not have been put down as clear
    elif kind == "removed":
        out[course.REMOVED] = 1.0
    elif kind == "pipped_dead":
        out[course.PIPPED] = 1.0
    elif kind == "culled":
        out[course.CULLED] = 1.0
    elif kind == "hatched":
        out[course.HATCHED], out[course.CULLED] = 1.0, float("culled" not in kinds)
    elif kind == "dead":
        out[days] = _inside(after, by, at_end=at_end) * shows
        to_the_end = at_end and by >= course.DAYS - NEAR  # one opened and put at an earlier age is neither of the two
        if to_the_end and "pipped_dead" not in kinds:
            out[course.PIPPED] = 1.0
        if to_the_end and "clear" not in kinds:
            out[course.CLEAR], out[days] = 1.0, _inside(after, by, at_end=at_end)
    else:  # nobody knows
        out[days], out[course.REMOVED], out[course.PIPPED] = _inside(after, math.inf), 1.0, 1.0
        out[course.CLEAR] = float("clear" not in kinds)
    return out


@cache
def _inside(after, by, *, at_end=False) -> np.ndarray:
    """How likely a death of each hen's day is found between two looks; the last day stands for all later ones.

    A death just before a look is not seen yet, and now and then an older one is overlooked. At the take-off nothing is
    overlooked, but the age of an opened embryo is judged by eye.
    """
    day = (np.arange(course.DAYS * STEPS) + 0.5) / STEPS
    after = round(min(after, course.DAYS - 0.5), 6)
    missed = np.ones_like(day)
    if after > 0:
        judged = at_end and min(abs(after - limit) for limit in JUDGED) < NEAR
        missed = _judged_older(day, after) if judged else _overlooked(day, after)
    found = np.ones_like(day)
    if by < course.DAYS - NEAR:
        by = max(by, after + 0.1)
        found = 1 - (_judged_older(day, by) if at_end else _overlooked(day, by))
    return (missed * found).reshape(course.DAYS, STEPS).mean(axis=1)


def _overlooked(day, look) -> np.ndarray:
    """Chance that an embryo dead since a day is still taken for a living one at a look."""
    return np.interp(look - day, [FRESH[0], FRESH[0] + 0.01, FRESH[1]], [1.0, FRESH_MISSED, MISSED])


def _judged_older(day, limit) -> np.ndarray:
    """Chance that an opened embryo is put above an age."""
    return 1 / (1 + np.exp((limit - day) / EYE_DAYS))
