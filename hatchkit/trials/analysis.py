"""What a split trial showed, by the plan that was made before: nothing is chosen after the eggs have hatched."""

from dataclasses import dataclass

import numpy as np
import pandas as pd

from hatchkit.problems import HatchkitError
from hatchkit.trials.plan import CHANCE, OUTCOMES, Plan, chance_of, risk_difference

#: What a keeper may write of an egg -> what it is taken for (plain words of the trade, no source).
RESULTS = {
    "hatched": "hatched",
    "chick": "hatched",
    "h": "hatched",
    "alive": "hatched",
    "clear": "clear",
    "infertile": "clear",
    "c": "clear",
    "dead": "dead",
    "d": "dead",
    "dis": "dead",
    "dead in shell": "dead",
    "early dead": "dead",
    "late dead": "dead",
    "mid dead": "dead",
    "pipped": "pipped",
    "p": "pipped",
    "removed": "out",
    "cracked": "out",
    "rotten": "dead",
    "broken": "out",
    "blood ring": "dead",
}


@dataclass(frozen=True)
class Trial:
    """The outcome of a trial.

    Attributes
    ----------
    plan : Plan
    table : DataFrame
        arm, good, eggs, share; the usual way first.
    difference, low, high : float
        New way less usual way, over sets and blocks, with its 95 % interval.
    chance : float
        Share of ways to deal the eggs that give as large a difference either way.
    verdict : str
        better, worse, not_told or too_few.
    missing, unread : int
        Eggs without a result, and results that could not be read.
    moved : int
        Eggs that do not lie where the plan had put them; they count as planned.
    """

    plan: Plan
    table: pd.DataFrame
    difference: float
    low: float
    high: float
    chance: float
    verdict: str
    missing: int
    unread: int
    moved: int


def analyse(plan: Plan, filled: pd.DataFrame, *, draws: int = 9999) -> Trial:
    """Judge a trial.

    Parameters
    ----------
    plan : Plan
    filled : DataFrame
        The plan's sheet with results: set, egg, result; an `arm` that differs from the plan's is counted and not used.

    Returns
    -------
    Trial

    Notes
    -----
    Each egg counts in the arm to which it was dealt. The test deals the eggs anew as the plan did, within set and block
    (Fisher's randomisation test); the difference is that of Mantel and Haenszel with the variance of Sato 1989
    (Biometrics 45:1323, from memory).
    """
    joined, moved = _joined(plan, filled)
    words = joined["result_given"].fillna("").astype(str).str.strip().str.lower()
    result = words.map(lambda word: RESULTS.get(word, "" if word == "" else "?"))
    good_words, left_out = OUTCOMES[plan.outcome]
    used = ~result.isin(["", "?", "out"]) & ~result.isin(left_out.split())
    good = result.isin(good_words.split())[used].to_numpy()
    rows = joined[used]
    new = (rows["arm"] == plan.arms[1]).to_numpy()
    strata = (rows["set"].astype(str) + "|" + rows["block"].astype(str)).to_numpy()
    table = pd.DataFrame(
        [
            [arm, int(good[own].sum()), int(own.sum()), good[own].mean() if own.any() else np.nan]
            for arm, own in zip(plan.arms, (~new, new), strict=True)
        ],
        columns=["arm", "good", "eggs", "share"],
    )
    told = dict(missing=int((words == "").sum()), unread=int((result == "?").sum()), moved=moved)
    if table["eggs"].min() < 5:
        return Trial(plan, table, np.nan, np.nan, np.nan, np.nan, "too_few", **told)
    difference, low, high = risk_difference(good, new, strata)
    chance = chance_of(good, new, strata, draws=draws, seed=plan.seed)
    verdict = "not_told" if chance > CHANCE else "better" if difference > 0 else "worse"
    return Trial(plan, table, difference, low, high, chance, verdict, **told)


def _joined(plan, filled):
    """The plan's rows with the results that were written for them, and how many eggs were moved."""
    missing = [name for name in ("set", "egg", "result") if name not in filled]
    if missing:
        raise HatchkitError("trial_columns", dict(names=missing))
    own = filled.assign(
        set=pd.to_numeric(filled["set"], errors="coerce"), egg=pd.to_numeric(filled["egg"], errors="coerce")
    )
    own = own.dropna(subset=["set", "egg"]).drop_duplicates(["set", "egg"])
    own = own.rename(columns={"result": "result_given", "arm": "arm_given"})
    kept = own[[name for name in ("set", "egg", "result_given", "arm_given") if name in own]]
    joined = plan.sheet.merge(kept, on=["set", "egg"], how="left")
    if "arm_given" not in joined:
        return joined, 0
    given = joined["arm_given"].fillna("").astype(str).str.strip()
    return joined, int(((given != "") & (given != joined["arm"])).sum())
