"""The one rule that turns the numbers into a verdict. Its limits: ``reference/verdict_rules.csv``."""

from functools import cache
from math import isfinite, sqrt

from hatchkit import reference

CLEAR = "clear sign"
SOME = "some sign"
#: ... and a doubling would have shown.
NONE = "no sign"
UNTOLD = "cannot tell"
#: The exposure cannot be told from a factor.
NOT_APART = "not apart"


@cache
def rules() -> dict:
    """The limits by name."""
    table = reference.load("verdict_rules")
    return dict(zip(table["item"], table["value"].astype(float), strict=True))


def verdict(
    *,
    more=float("nan"),
    drawn=float("nan"),
    smallest=0.0,
    floor=float("nan"),
    low=float("nan"),
    high=float("nan"),
    power=0.0,
    enough=True,
    not_apart="",
) -> tuple[str, dict]:
    """The verdict on harm: one of the codes above, and its facts (`factor` or `missed`, where they apply).

    Parameters
    ----------
    more : float
        Share of chance arrangements that put as many deaths on the exposed batches.
    drawn : float
        Share of redrawn seasons that do (`redrawn`); missing where only the arrangements speak.
    smallest : float
        The smallest `more` that the design can give.
    floor : float
        One-sided lower bound of the hazard ratio at the usual dose of the exposed windows.
    low, high : float
        Its interval.
    power : float
        Share of seasons of this size in which a doubling would have given a clear sign.
    enough : bool
        Whether batches, exposed batches and deaths reach the least numbers for a test.
    not_apart : str
        Factor (such as "incubator") from which the exposure cannot be told apart.

    Returns
    -------
    code : str
    facts : dict
        missed: in how many of 10 such seasons a doubling would have been missed.
    """
    limit = rules()
    if not_apart:
        return NOT_APART, dict(factor=not_apart)
    if enough and _clear(more, drawn, smallest, floor, limit):
        return CLEAR, {}
    rare = more if not isfinite(drawn) else drawn
    if enough and (rare <= limit["some_chance"] or low > 1) and _worth_naming(low, high):
        return SOME, {}
    if enough and power >= limit["detect_power"] and high < limit["detect_ratio"]:
        return NONE, {}
    missed = 10 * (1 - (power if enough else 0.0))
    return UNTOLD, dict(missed=min(10, max(1, round(missed))))


def _clear(more, drawn, smallest, floor, limit) -> bool:
    """Rare among redrawn seasons and, where batches can be exchanged in many ways, not common among these."""
    if not isfinite(drawn):
        return more <= limit["clear_chance"] and floor > 1
    return drawn <= limit["redrawn_chance"] and (smallest > limit["guard_smallest"] or more <= limit["guard_chance"])


def _worth_naming(low, high) -> bool:
    """Whether the middle of an interval of hazard ratios is an effect, not only a rare arrangement.

    Where no interval could be made, the arrangement alone speaks.
    """
    if not (isfinite(low) and isfinite(high)):
        return True
    return sqrt(max(low, 0.0) * high) >= rules()["some_ratio"]
