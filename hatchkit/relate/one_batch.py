"""One batch, one excursion: no test of the excursion exists, but three questions can be asked.

Did its windows with and after the excursion hold more deaths than this person's other batches give? Do the
ages of the dead fall on or after it? What else was different about this batch?
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import pandas as pd

from hatchkit.losses.predictive import count_for
from hatchkit.relate.design import design as make_design
from hatchkit.relate.excess import unexposed_hazard
from hatchkit.relate.measures import PRIMARY, known_dose, measures
from hatchkit.relate.verdict import rules

UNUSUAL = "more deaths than usual: consistent with harm from the excursion"
UNTOLD = "cannot tell: so many can come by luck alone, and {needed} or more would have been needed to stand out"
TOO_FEW_EGGS = "cannot tell: so few embryos were at risk that not even the loss of all would have stood out"
NOT_HIT = "no excursion reached this batch"
NOT_KNOWN = "cannot tell: {why}"
NOT_COUNTED = "the living or the dead of the window with the excursion were not counted"


@dataclass(frozen=True)
class OneBatch:
    """What can be said about one batch.

    Attributes
    ----------
    batch : str
    verdict : str
    chance : float
        How often a batch like the others, unexposed, would lose as many in the windows that count.
    needed : float
        Deaths there from which on that would be seldom enough to call it unusual; missing if none is.
    others : int
        Batches it was compared with.
    windows : DataFrame
        name, part ("before", "with excursion", "after", "not known"), at_risk, died, expected,
        low, high, chance.
    ages : DataFrame
        when ("before", "on or after", "may be either"), dead.
    besides : list of str
        Other things that set this batch apart.
    """

    batch: str
    verdict: str
    chance: float
    needed: float
    others: int
    windows: pd.DataFrame
    ages: pd.DataFrame
    besides: list

    def words(self) -> str:
        """A short verdict with its sureness."""
        from hatchkit.relate.one_batch_words import one_batch_in_words

        return one_batch_in_words(self)


WINDOW_COLUMNS = ["name", "part", "at_risk", "died", "expected", "low", "high", "chance"]


def one_batch(season, batch, *, relation=None, measure=PRIMARY, seed=1) -> OneBatch:
    """Compare one batch with the others of the season.

    Parameters
    ----------
    season : Season
    batch : str
    relation : Relation, optional
        The season's relation, if it has been computed already; its exposure table is used.
    measure : str
    seed : int
    """
    from hatchkit.relate.exposure import exposure
    from hatchkit.relate.relation import with_factors

    season.batch(batch)
    batch = str(batch)
    table = relation.exposure if relation is not None else with_factors(exposure(season), season.batches)
    compared = compare(table, batch, measure=measure, seed=seed)
    first = _first_hit(season, table, batch, measure)
    return OneBatch(batch=batch, ages=_ages(season.fates, batch, first), besides=_besides(season, batch), **compared)


def compare(exposure, batch, *, measure=PRIMARY, seed=1) -> dict:
    """The batch's windows beside a predictive draw from the others; keys as in `OneBatch`."""
    table = exposure.assign(dose=known_dose(exposure, measure), window=exposure["name"])
    design = make_design(table)
    own = np.flatnonzero(design.rows["batch"].astype(str).to_numpy() == batch)
    teach = design.known & ~design.exposed
    teach[own] = False
    others = len(np.unique(design.batch[teach]))
    blank = dict(chance=np.nan, needed=np.nan, others=others, windows=pd.DataFrame(columns=WINDOW_COLUMNS))
    if len(own) == 0:
        return {**blank, "verdict": NOT_KNOWN.format(why="its windows are not counted")}
    own = own[np.argsort(design.window[own])]
    parts = _parts_of(design, own)
    if others == 0:
        return {**blank, "verdict": NOT_KNOWN.format(why="there is no other batch with a log and counted losses")}
    leave_out = np.zeros(len(design.rows), bool)
    leave_out[own] = True
    log_hazard, _ = unexposed_hazard(design, seed=seed, leave_out=leave_out)
    rng = np.random.default_rng(seed)
    eggs = np.round(design.at_risk[own]).astype(int)
    would = rng.binomial(eggs, -np.expm1(-np.exp(log_hazard[:, own])))
    died = design.died[own]
    tail = 100 * (1 - rules()["interval"]) / 2
    low, high = np.percentile(would, [tail, 100 - tail], axis=0, method="inverted_cdf")
    windows = pd.DataFrame(
        {
            "name": design.windows[design.window[own]],
            "part": parts,
            "at_risk": eggs.astype(float),
            "died": died,
            "expected": would.mean(axis=0),
            "low": low,
            "high": high,
            "chance": (would >= died).mean(axis=0),
        },
        columns=WINDOW_COLUMNS,
    )
    hit = np.isin(parts, ["with excursion"])
    if not hit.any():
        why = "the log does not cover it" if "not known" in parts else ""
        unseen = design.left_out["exposed"] & (design.left_out["batch"].astype(str) == batch)
        why = NOT_COUNTED if unseen.any() else why
        return {**blank, "windows": windows, "verdict": NOT_KNOWN.format(why=why) if why else NOT_HIT}
    lost, most = would[:, hit].sum(axis=1), eggs[hit][0]
    chance, rare = float((lost >= died[hit].sum()).mean()), rules()["clear_chance"]
    needed = count_for(np.bincount(np.minimum(lost, most), minlength=most + 1) / len(lost), rare)
    untold = UNTOLD.format(needed=f"{needed:.0f}") if np.isfinite(needed) else TOO_FEW_EGGS
    return {
        "chance": chance,
        "needed": needed,
        "others": others,
        "windows": windows,
        "verdict": UNUSUAL if chance <= rare else untold,
    }


def later_and_high(windows) -> list:
    """Names of the windows after the excursion with more deaths than usual.

    Each of k later windows is asked at the k-th part of the usual limit, so that the whole of them is called
    unusual no more often than one would be (Bonferroni).
    """
    after = windows[windows["part"] == "after"]
    return after.loc[after["chance"] <= rules()["clear_chance"] / max(len(after), 1), "name"].tolist()


def _parts_of(design, own):
    """Where each window lies to the first exposed one."""
    exposed, known = design.exposed[own], design.known[own]
    first = np.flatnonzero(exposed)[0] if exposed.any() else len(own)
    return [
        "with excursion" if hit else "not known" if not sure else "after" if i > first else "before"
        for i, (hit, sure) in enumerate(zip(exposed, known, strict=True))
    ]


def _first_hit(season, table, batch, measure):
    """Age of the batch when its first excursion began; nan if there is none."""
    from hatchkit.climate.excursions import find_excursions

    own = table[(table["batch"].astype(str) == batch) & (known_dose(table, measure) > 0)]
    if own.empty:
        return np.nan
    kinds = {"heat": ["warm"], "cold": ["cold"], "either": ["warm", "cold"]}[measures().loc[measure, "kind"]]
    found = find_excursions(season)
    found = found[(found["batch"].astype(str) == batch) & found["kind"].isin(kinds)]
    inside = [
        any(row.day_end >= window.day_start and row.day_start <= window.day_end for window in own.itertuples())
        for row in found.itertuples()
    ]
    found = found[inside]
    if found.empty:
        return float(own["day_start"].min())
    # The one with the most degree-hours: the warming up of new eggs is an excursion as well.
    return float(found.loc[found["egg_degree_hours"].fillna(found["degree_hours"]).idxmax(), "day_start"])


def _ages(fates, batch, first) -> pd.DataFrame:
    """Dead embryos by where their age interval lies to the excursion's beginning."""
    dead = fates[(fates["batch"].astype(str) == batch) & fates["fate"].isin(["dead", "pipped_dead"])]
    counts = dict.fromkeys(["before", "on or after", "may be either"], 0.0)
    if np.isfinite(first):
        for row in dead.itertuples():
            when = (
                "before"
                if row.by_day <= first
                else "on or after"
                if row.after_day >= np.floor(first)
                else "may be either"
            )
            counts[when] += float(row.eggs)
    return pd.DataFrame({"when": list(counts), "dead": list(counts.values())}).assign(excursion_day=first)


def _besides(season, batch) -> list:
    """What else sets this batch apart from the season's others of its species, in sentences."""
    row = season.batch(batch)
    others = season.batches[
        (season.batches["batch"].astype(str) != batch) & (season.batches["species"] == row["species"])
    ]
    said = []
    for column, word, unit in (
        ("stored_days", "stored", "days"),
        ("flock_age_weeks", "from a flock aged", "weeks"),
    ):
        if column not in season.batches or pd.isna(row.get(column)):
            continue
        rest = pd.to_numeric(others[column], errors="coerce").dropna()
        value = float(row[column])
        if len(rest) >= 3 and (value > rest.max() or value < rest.min()):
            side = "longer" if value > rest.max() else "shorter"
            side = side if column == "stored_days" else {"longer": "older", "shorter": "younger"}[side]
            said.append(
                f"Its eggs were {word} {value:g} {unit}, {side} than any other batch of its kind "
                f"({rest.min():g} to {rest.max():g})."
            )
    if "flock" in row and pd.notna(row["flock"]) and len(others) and not (others["flock"] == row["flock"]).any():
        said.append(f"No other batch of its kind came from flock {row['flock']}.")
    if "notes" in row and pd.notna(row["notes"]) and str(row["notes"]).strip():
        said.append(f"You noted: {str(row['notes']).strip()}")
    return said
