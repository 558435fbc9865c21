"""What a careful reader can say of a case: how sure the records make the planted cause, and how many eggs it cost.

The reader knows what was planted and asks whether the records show it. Two plans are held against them, with the
cause and without it, at even odds: the counts of the asked batch and its hour of hatching, each under `REDRAWS` courses
of either plan, and the traces that the cause leaves in log, book and remark. Where the two explain the records
about equally well, "none can be told" is as right as the cause.
"""

from dataclasses import dataclass, replace

import numpy as np
from scipy.special import expit, gammaln

from hatchkit.simulate import biology, course, life

REDRAWS = 60
#: Stages as a book shows them: which counts of a batch row belong to each. An embryo that died too soon to be seen is
#: a clear there, and so it is for the marks.
STAGES = {
    "infertile": ("clear1", "clear2", "clear3", "broken_infertile"),
    "early": ("dead1", "broken_early"),
    "mid": ("dead2", "broken_mid"),
    "late": ("dead3", "broken_late"),
    "pipped": ("pipped_dead",),
    "removed": ("removed",),
}
#: Counts of a batch row that the reader goes by; the rest of the eggs set are taken together.
COUNTS = (
    "clear1",
    "dead1",
    "clear2",
    "dead2",
    "clear3",
    "dead3",
    "removed",
    "hatched",
    "pipped_dead",
    "broken_infertile",
    "broken_early",
    "broken_mid",
    "broken_late",
)
#: Causes that the log of temperature or humidity shows while it runs.
IN_TEMPERATURE = ("power_cut", "drift_warm", "drift_cool", "lid_ajar", "overheating")
IN_HUMIDITY = ("humidity_low", "humidity_high", "dry_hatch")
#: How many times likelier a trace is with the cause than in a season without one (harmless spells are shorter).
SEEN, WEIGHED = 20.0, 5.0
#: Middle share of an interval that students are asked for, and what half a width of it is in standard deviations.
SHARE, Z = 0.8, 1.2816


@dataclass(frozen=True)
class Reading:
    """What the records can show.

    shown : dict
        Planted cause -> probability (even odds beforehand) that it was at work rather than nothing.
    width : float
        Width in eggs of the careful reader's 80 % interval for the eggs lost.
    usual : float
        Chicks of so many eggs without the causes, on average.
    stages : dict
        Stage -> eggs that the causes took there as a book shows it, on average over courses.
    """

    shown: dict
    width: float
    usual: float
    stages: dict

    @property
    def sure(self) -> float:
        """Probability that anything was at work; 0 where nothing was planted."""
        return max(self.shown.values(), default=0.0)


def read_case(lived, level_name) -> Reading:
    """Hold the records of a case against its plan with each planted cause and without any."""
    item = lived.plan.batch(lived.answer.batch)
    row = lived.tables["batches"].set_index("batch").loc[item.batch]
    bare = _courses(lived, lived.plain, seed=1)
    full = _courses(lived, lived.plan, seed=1) if lived.causes else bare
    counts = _log_chance(row, full) - _log_chance(row, bare)
    share = _shares(lived) if len(lived.causes) > 1 else {name: 1.0 for name in lived.causes}
    odds = {name: share[name] * counts + _trace(lived, item, name, level_name) for name in lived.causes}
    shown = {name: float(expit(odd)) for name, odd in odds.items()}
    chicks = [drawn["chicks"] for drawn in bare]
    spread = max(float(np.std(chicks)), 1.0)
    stages = {name: _mean(full, name) - _mean(bare, name) for name in STAGES}
    return Reading(
        shown,
        round(2 * Z * spread + 1, 1),
        float(np.mean(chicks)),
        {name: round(eggs, 1) for name, eggs in stages.items() if eggs >= 0.5},
    )


def _mean(drawn, stage):
    return float(np.mean([one["stages"].get(stage, 0) for one in drawn]))


def _courses(lived, plan, *, seed):
    """Courses of the asked batch under a plan: its counts, chicks, stages of loss, hour of the last chick."""
    item = plan.batch(lived.answer.batch)
    plan = replace(plan, step_minutes=30)  # fine enough for counts, and three times as quick
    species = biology.birds().loc[item.species]
    drawn = []
    for rng in np.random.default_rng([int(lived.answer.seed), 11, seed]).spawn(REDRAWS):
        moments, _, eggs, seen, taken_off = course.draw_batch(rng, plan, item, species)
        row = course.batch_row(item, moments, taken_off, eggs, seen, species)
        drawn.append(
            dict(
                row=row,
                chicks=row["hatched"],
                stages={stage: sum(row[name] or 0 for name in names) for stage, names in STAGES.items()},
            )
        )
    return drawn


def _vector(row):
    counts = np.array([0 if row[name] is None or row[name] != row[name] else float(row[name]) for name in COUNTS])
    return np.append(counts, max(float(row["eggs_set"]) - counts.sum(), 0.0))


def _log_chance(row, drawn):
    """Log chance of the counts (Dirichlet-multinomial by moments) and of the hours of hatching (normal)."""
    table = np.array([_vector(one["row"]) for one in drawn])
    eggs = table.sum(axis=1).mean()
    mean = (table.sum(axis=0) + 0.3) / (table.sum() + 0.3 * table.shape[1])
    place = int(mean.argmax())
    inflation = np.clip(table[:, place].var() / max(eggs * mean[place] * (1 - mean[place]), 1e-9), 1.05, eggs / 2)
    weight = mean * max((eggs - inflation) / (inflation - 1), 1.0)
    seen = _vector(row)
    total = (
        gammaln(weight.sum()) - gammaln(weight.sum() + seen.sum()) + (gammaln(weight + seen) - gammaln(weight)).sum()
    )
    return float(total) + _log_hours(row, drawn)


def _log_hours(row, drawn):
    found = 0.0
    for name in ("first_hatch_at", "last_hatch_at"):
        hours = [
            (one["row"][name] - one["row"]["set_at"]).total_seconds() / 3600
            for one in drawn
            if one["row"][name] == one["row"][name]
        ]
        if len(hours) < 10 or row[name] != row[name]:
            continue
        spread = max(float(np.std(hours)), 3.0)
        off = (row[name] - row["set_at"]).total_seconds() / 3600 - float(np.mean(hours))
        found += -0.5 * min((off / spread) ** 2, 25.0) - np.log(spread)
    return found / 2  # the two go together


def _shares(lived):
    """Two causes: the counts speak for each by its part of the eggs lost."""
    rows = lived.answer.causes
    lost = rows[rows["batch"] == lived.answer.batch].groupby("cause")["lost"].sum()
    return {name: float((lost.get(name, 0) + 0.5) / (lost.sum() + 0.5 * len(lived.causes))) for name in lived.causes}


def _trace(lived, item, cause, level_name):
    """Log of how many times likelier what log, book and remark hold is with the cause than without."""
    often = life.level(level_name)
    said, planted = lived.troubles["remark"]
    wrong = often["wrong_remark"] / 15
    told = np.log((often["told"] + wrong) / wrong) if planted and said == cause else np.log1p(-often["told"])
    entry = lived.answer.causes
    entry = entry[(entry["batch"] == item.batch) & (entry["cause"] == cause)].iloc[0]
    if cause in IN_TEMPERATURE or cause in IN_HUMIDITY:
        own = _logged(lived, item, entry["day_start"], entry["day_end"])
        weighed = cause in IN_HUMIDITY and cause != "dry_hatch" and item.weighs
        return told + (np.log(SEEN) if own else 0.0) + (np.log(WEIGHED) if weighed else 0.0)
    if cause == "long_storage":  # so long a storage is as usual as the level makes it
        return told - np.log(often["long_stored"] * 9 / 13)
    if cause == "old_flock":
        return told - np.log(often["old_hens"])
    return told


def _logged(lived, item, start, end):
    """Whether at least half of the time of a fault is in the log."""
    log = lived.tables["readings"]
    times = log.loc[log["incubator"] == item.incubator, "time"]
    clock = lived.troubles["clock"]
    hours = clock[1] if clock and clock[0] == item.incubator else 0
    begin, stop = (item.set_at + day * life.DAY + hours * life.HOUR for day in (start, end))
    inside = times.between(begin, stop).sum() * lived.plan.step_minutes / 60
    return inside >= 0.5 * (stop - begin).total_seconds() / 3600
