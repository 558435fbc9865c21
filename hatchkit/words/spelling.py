"""How stages, shares, counts and chances are spelt in sentences for breeders."""

from __future__ import annotations

import pandas as pd

DENOMINATORS = {
    "set": "eggs set",
    "fertile": "eggs that were not clear or infertile",
    "transferred": "eggs moved to hatch",
}


def percent(share: float) -> str:
    """A share 0-1 as percent, with one digit below 10 %."""
    if pd.isna(share):
        return "not known"
    value = 100 * share
    return f"{value:.0f} %" if value >= 9.95 else f"{value:.1f} %"


def range_words(low: float, high: float) -> str:
    """An interval in percent: "4.2 to 11 %"."""
    return f"{percent(low).removesuffix(' %')} to {percent(high)}"


def eggs_words(eggs: float) -> str:
    """A count of eggs, whole where it is whole."""
    return f"{eggs:.0f}" if abs(eggs - round(eggs)) < 0.05 else f"{eggs:.1f}"


def many(number, one: str, several: str = "") -> str:
    """ "1 reading", "2 readings", "3 batches" (the last with `several` = "batches")."""
    return f"{number} {one if number == 1 or number == '1' else several or one + 's'}"


def batch_count(number: int) -> str:
    """ "1 batch", "3 batches"."""
    return "1 batch" if number == 1 else f"{number} batches"


def named_batches(names) -> str:
    """ "batch G2", "batches G2 and G3", "batches G1, G2 and G3"."""
    return f"batch{'es' if len(names) > 1 else ''} {listed(names)}"


def listed(parts) -> str:
    """ "a", "a and b", "a, b and c"."""
    *first, last = parts
    return f"{', '.join(first)} and {last}" if first else str(last)


def day_words(day: float) -> str:
    """An age in days to a tenth, whole where it is whole."""
    return f"{day:.1f}".removesuffix(".0")


def odds_words(chance: float) -> str:
    """A chance as "about 1 in n" for people who do not think in decimals."""
    if pd.isna(chance):
        return "not known"
    if chance >= 0.3:
        return "nothing out of the way"
    return f"about 1 in {_round_odds(1 / max(chance, 1e-4))}" if chance >= 1e-4 else "rarer than 1 in 10 000"


def batches_words(chance: float) -> str:
    """How many batches of chance alone look like this: "in about 1 batch of 240"."""
    if chance >= 0.3:
        return "in many a batch"
    return f"in about 1 batch of {_round_odds(1 / chance)}" if chance >= 1e-4 else "in fewer than 1 batch of 10 000"


def _round_odds(value: float) -> str:
    digits = 1 if value < 100 else 10 ** (len(str(int(value))) - 2)
    return f"{round(value / digits) * digits:.0f}" if value >= 2 else "2"
