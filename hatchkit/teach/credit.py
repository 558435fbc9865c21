"""How much of each part of the mark an answer earns, as plain functions of numbers.

What is right is what the records can show: `sure` is a careful reader's probability, at even odds beforehand, that
a planted cause was at work (`reader`).
"""

#: Parts of the mark. The cause is a fifth, so that a name copied from a program cannot carry an answer.
WEIGHTS = {"stage": 0.15, "cause": 0.20, "size": 0.15, "facts": 0.50}
#: Part of its mark that an answer earns without reasons; the rest comes with the statements.
ALONE = 0.35
HALF = 0.5
#: A stage with so large a part of what the worst stage took is as right; one with a quarter of all earns half.
NEARLY, SOME = 0.8, 0.25
#: Share of the interval that is asked for.
COVER = 0.8


def mark(earned: dict) -> float:
    """The mark, 0 to 1, from the credit of each part.

    Stage, cause and size count as `ALONE` says without reasons, and in full with all of them; as the factor does not
    depend on the interval, the interval score stays proper.
    """
    reasons = earned["facts"]
    answer = sum(WEIGHTS[part] * earned[part] for part in WEIGHTS if part != "facts")
    return answer * (ALONE + (1 - ALONE) * reasons) + WEIGHTS["facts"] * reasons


def as_right(sure: float) -> float:
    """Credit for naming what has the probability `sure` against the rest: 1 from one half on, else its odds."""
    return 1.0 if sure >= 0.5 else sure / (1 - sure)


def none_credit(sure: float, took: float, width: float) -> float:
    """Credit for "none can be told".

    Parameters
    ----------
    sure : float
        Probability that a cause was at work; 0 if nothing was planted.
    took : float
        Eggs that the causes took on average.
    width : float
        Width of a careful reader's interval: a loss of less than half of it is within luck, and half is earned.
    """
    return max(as_right(1 - sure), HALF if took < width / 2 else 0.0)


def stage_credit(stage: str, *, stages: dict, sure: float, width: float) -> float:
    """Credit for a stage; `stages` holds the eggs that the causes took on average in each."""
    if stage == "none":
        return none_credit(sure, sum(stages.values()), width)
    here, most = stages.get(stage, 0.0), max(stages.values(), default=0.0)
    part = 1.0 if here and here >= NEARLY * most else HALF if here >= SOME * sum(stages.values()) and here else 0.0
    return part * as_right(sure)


def cause_credit(named, *, shown: dict, kinds: dict, took: float, width: float) -> float:
    """Credit for the causes named.

    Parameters
    ----------
    named : list of str
        At most two, without "none"; empty for "none can be told".
    shown : dict
        Planted cause -> probability that the records show it.
    kinds : dict
        Cause -> kind; one of the same kind as a planted cause earns half.
    took, width : float
        As in `none_credit`.

    Returns
    -------
    float
        Sum of what each named cause is worth over the causes named or, if more, the causes that can be told.
    """
    if not named:
        return none_credit(max(shown.values(), default=0.0), took, width)
    left, worth = dict(shown), 0.0
    for cause in sorted(dict.fromkeys(named), key=lambda name: name not in shown):
        near = cause if cause in left else next((own for own in left if kinds[own] == kinds[cause]), None)
        if near is not None:
            worth += as_right(left.pop(near)) * (1.0 if near == cause else HALF)
    told = sum(sure >= 0.5 for sure in shown.values())
    return worth / max(len(dict.fromkeys(named)), told, 1)


def interval_score(low: float, high: float, truth: float, cover: float = COVER) -> float:
    """Interval score, in eggs: the width, and 2 / (1 - cover) for each egg by which the truth lies outside.

    A proper scoring rule: it is lowest, on average, for the interval that one honestly believes in.
    Source: Gneiting & Raftery 2007, J. Am. Stat. Assoc. 102:359, equation 43.
    """
    outside = max(low - truth, truth - high, 0.0)
    return (high - low) + 2 / (1 - cover) * outside


def size_credit(low: float, high: float, truth: float, width: float) -> float:
    """1 for an interval score up to the width of a careful reader's interval, 0 from three times that width."""
    return min(max(1 - (interval_score(low, high, truth) - width) / (2 * width), 0.0), 1.0)


def facts_credit(ticked, kinds: dict) -> float:
    """Share ticked of the statements that bear on the answer, less the share ticked of those that do not; at least 0.

    Parameters
    ----------
    ticked : set of str
        Letters.
    kinds : dict
        Letter -> "bears", "not" or "free"; free ones are not counted. To tick all or none earns nothing.
    """
    groups = {kind: [letter for letter, own in kinds.items() if own == kind] for kind in ("bears", "not")}
    hit, false = (sum(letter in ticked for letter in group) / max(len(group), 1) for group in groups.values())
    return max(hit - false, 0.0)
