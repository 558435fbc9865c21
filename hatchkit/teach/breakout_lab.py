"""The breakout lab: eggs of a hidden day to be dated, as one dates what is found when unhatched eggs are opened."""

from dataclasses import dataclass, field

import numpy as np

from hatchkit.figures.egg_candled import candled
from hatchkit.figures.egg_opened import opened
from hatchkit.figures.style import axes
from hatchkit.say import text
from hatchkit.teach.judging import NOT_YET, RIGHT

#: Days that a drawing can tell apart to within `NEAR` days: from 15 to 18 only the yolk sac outside shrinks.
DAYS = {"opened": (*range(2, 15), 19), "candled": (3, 4, 5, 6, 7, 8, 10, 12, 14, 19)}
#: An answer within so many days is right, as the eye is good to about that.
NEAR = 1.0


@dataclass(frozen=True)
class HiddenEgg:
    """An egg to look at, whose day its printed form does not tell.

    kind : "opened" or "candled"
    """

    kind: str
    _day: int = field(repr=False)

    def draw(self, ax=None):
        """The egg, without its day."""
        ax = axes(ax, size=(2.6, 3.4))
        return (opened if self.kind == "opened" else candled)(ax, self._day, "which day?")


def hidden_egg(case: int, kind: str = "opened") -> HiddenEgg:
    """An egg whose day is drawn with the number of the case; the same number gives the same egg.

    Parameters
    ----------
    case : int
        Any whole number.
    kind : {"opened", "candled"}

    Returns
    -------
    HiddenEgg
        ``.day`` is the day of a hen's egg, 0 to 21.

    Notes
    -----
    Source: what is seen by day in ``reference/embryo_stages.csv``, sizes in ``embryo_proportions.csv``.
    """
    return HiddenEgg(kind, int(np.random.default_rng([int(case), len(kind)]).choice(DAYS[kind])))


@dataclass(frozen=True)
class DateTheEgg:
    """An exercise whose answer is the day of a hidden egg; says how many days an answer is off."""

    def judge(self, answer, egg) -> tuple[str, str]:
        """Right within `NEAR` days, else how far off."""
        try:
            day = float(answer)
        except (TypeError, ValueError):
            return NOT_YET, text("teach_lab_number")
        off = abs(day - egg._day)
        if off <= NEAR:
            return RIGHT, text("teach_lab_right", dict(day=egg._day))
        return NOT_YET, text("teach_lab_off", dict(off=round(off), later=bool(egg._day > day)))
