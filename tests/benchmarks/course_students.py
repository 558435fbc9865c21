"""What an automatic and a careful student earn on a class of cases. Prints the table of results/course.md.

    python tests/benchmarks/course_students.py [--cases 32] [--level second] [--first-seed 5000]

Both see what a student sees: the season folder and the statements (codes and numbers), never the answer. The automatic
one copies the kit's first cause, the stage of its largest excess, its eggs with a Wilson interval, and ticks only the
statements that the kit itself names for that cause. The careful one opens log, weights, remarks and the other batches.
"""

from __future__ import annotations

import argparse
import tempfile
from pathlib import Path

import numpy as np
import pandas as pd
from scipy import stats

import hatchkit as hk
from hatchkit import reference
from hatchkit.losses.proportions import interval
from hatchkit.teach import credit
from hatchkit.teach.cases import make_case
from hatchkit.teach.marking import credits_of

STAGE = {
    "infertile": "infertile",
    "clear": "infertile",
    "early": "early",
    "mid": "mid",
    "late": "late",
    "pipped": "pipped",
    "contaminated": "removed",
    "removed": "removed",
}
#: Statements that the kit names for a cause of its own list.
OWN = {
    "cold_spell": ("spell",),
    "heat_spell": ("spell",),
    "long_storage": ("storage",),
    "old_flock": ("age",),
    "too_dry": ("setter_rh",),
    "too_humid": ("setter_rh",),
    "dry_hatch": ("hatch_rh",),
    "cool_throughout": ("last_chick",),
    "warm_throughout": ("last_chick",),
    "bad_luck": ("luck",),
}
COUNTED = {
    "infertile": ("clear1", "clear2", "clear3", "broken_infertile"),
    "early": ("dead1", "broken_early"),
    "mid": ("dead2", "broken_mid"),
    "late": ("dead3", "broken_late"),
    "pipped": ("pipped_dead",),
    "removed": ("removed",),
}

IN_LOG = (
    "power_cut",
    "drift_warm",
    "drift_cool",
    "lid_ajar",
    "overheating",
    "humidity_low",
    "humidity_high",
    "dry_hatch",
)


def automatic(season, batch, statements):
    """Stage, causes, interval, letters: copied."""
    told = hk.likely_causes(season, batch)
    first = told.table.iloc[0]
    planted = reference.load("simulate_causes")
    mine = planted[planted["named_by_advice"] == first["cause"]]["cause"].tolist()
    cause = mine[0] if mine else "none"
    pattern = told.pattern.assign(above=told.pattern["eggs"] - told.pattern["usual"])
    stage = "none" if cause == "none" else STAGE.get(pattern.loc[pattern["above"].idxmax(), "stage"], "late")
    eggs = int(season.batch(batch)["eggs_set"])
    told_lost = first["eggs_lost"]
    lost = 0.0 if cause == "none" or told_lost != told_lost else float(np.clip(told_lost, 0, eggs))
    low, high = (float(end) * eggs for end in interval(lost, eggs))
    letters = {
        letter
        for letter, code, numbers in statements
        if code in OWN.get(first["cause"], ()) or code == "stage" and numbers["stage"] == stage
    }
    return stage, [cause], (low, high), letters


class Careful:
    """Looks up every statement, and decides by what the records hold."""

    def __init__(self, season, batch, statements):
        self.season, self.batch, self.statements = season, batch, statements
        self.rows = season.batches.set_index("batch")
        self.mine, self.others = self.rows.loc[batch], self.rows.drop(index=batch)
        self.eggs = int(self.mine["eggs_set"])
        self.log = season.readings

    def run(self, machine, start, end):
        log = self.log[(self.log["incubator"] == machine) & (self.log["time"] >= start) & (self.log["time"] < end)]
        return log.set_index("time")

    def counts(self, stage, rows):
        names = [name for name in COUNTED[stage] if name in rows]
        return float(np.nansum(pd.to_numeric(pd.Series(np.ravel(rows[names].to_numpy(dtype=object))), errors="coerce")))

    def usual(self):
        """Share that hatched in the keeper's own good batches, and how many eggs luck reaches from it (80 %)."""
        shares = (self.others["hatched"] / self.others["eggs_set"]).astype(float)
        good = self.others[shares >= 0.8 * shares.median()]
        usual = float(good["hatched"].sum() / good["eggs_set"].sum())
        return usual, 1.28 * np.sqrt(self.eggs * usual * (1 - usual) * 1.5)

    def excess(self):
        """Stage -> (eggs above the other batches', chance of so many by luck)."""
        total = float(self.others["eggs_set"].sum())
        found = {}
        for stage in COUNTED:
            own, other = self.counts(stage, self.mine), self.counts(stage, self.others)
            share = (other + 1) / (total + 2)
            rho = 0.02  # batches differ by more than luck
            chance = float(stats.betabinom.sf(own - 1, self.eggs, share * (1 / rho - 1), (1 - share) * (1 / rho - 1)))
            found[stage] = (own - share * self.eggs, chance)
        return found

    def spell(self, numbers):
        """Whether the log holds the spell, and how far off it was."""
        start = self.mine["set_at"] + pd.Timedelta(days=numbers["day"])
        log = self.run(self.mine["incubator"], start, start + pd.Timedelta(days=1, hours=numbers["hours"]))["temp_c"]
        near = log[(log - numbers["extreme"]).abs() <= 0.15]
        off = numbers["extreme"] - 37.5
        long = ((log - 37.5) * np.sign(off) > 0.4 * abs(off)).sum()  # an opened lid is back within the hour
        step = (log.index[1:] - log.index[:-1]).min() / pd.Timedelta(hours=1) if len(log) > 1 else 1.0
        return near.index[0] if len(near) and long * step >= 0.4 * numbers["hours"] else None

    def causes(self):
        found, excess = [], self.excess()
        # six stages are looked at: where the hatch as a whole is no worse than luck, one of them must stand out more
        usual, half = self.usual()
        poor = usual * self.eggs - float(self.mine["hatched"]) >= half
        above = {stage for stage, (_, chance) in excess.items() if chance < (0.10 if poor else 0.015)}
        species = self.season.species_table.loc[self.mine["species"]]
        for _, code, numbers in self.statements:
            if code == "spell" and (moment := self.spell(numbers)) is not None:
                off, hours = numbers["extreme"] - 37.5, numbers["hours"]
                if hours >= 2.5 and abs(off) >= 2.3:
                    found.append((self.kind_of_spell(moment, off, hours), 10))
            elif code == "setter_rh":
                off = numbers["rh"] - (numbers["low"] + numbers["high"]) / 2
                if abs(off) >= 11:
                    found.append(("humidity_low" if off < 0 else "humidity_high", 8))
            elif code == "hatch_rh" and numbers["rh"] < min(60, numbers["low"] - 12):
                found.append(("dry_hatch", 9))
        if not any(name in ("power_cut", "drift_cool", "lid_ajar", "drift_warm", "overheating") for name, _ in found):
            found += self.by_hour(species)
        stored, whole_flock = float(self.mine["stored_days"] or 0), self.flock_too()
        if stored >= 11 and not whole_flock and ("infertile" in above or excess["early"][1] < 0.25):
            found.append(("long_storage", 5))
        elif "infertile" in above:
            old = float(self.mine["flock_age_weeks"] or 0) >= 58 and excess["early"][0] > 0.5
            found.append(("old_flock" if old else "low_fertility", 6))
        elif "early" in above and "infertile" not in above and float(self.mine["flock_age_weeks"] or 0) >= 58:
            found.append(("old_flock", 4))
        if "removed" in above and excess["removed"][0] > 2:
            found.append(("contaminated", 7))
        if not found and above & {"early", "late"}:
            found.append(("turning_fault", 3))
        if not found and above:
            copied = automatic(self.season, self.batch, self.statements)[1]
            found += [(copied[0], 1)] if copied != ["none"] else []
        return [name for name, _ in sorted(dict(found).items(), key=lambda item: -item[1])], above, excess

    def flock_too(self):
        """Whether the other batches of these hens have more clears than those of other hens; False without one."""
        flock = self.others["flock"] == self.mine["flock"]
        if not flock.any() or flock.all():
            return False
        own, other = self.others[flock], self.others[~flock]
        shares = [self.counts("infertile", rows) / float(rows["eggs_set"].sum()) for rows in (own, other)]
        return shares[0] > shares[1] + 0.07

    def kind_of_spell(self, moment, off, hours):
        if off > 0:
            return "overheating" if hours <= 5 else "drift_warm"
        other = self.log[
            (self.log["incubator"] != self.mine["incubator"])
            & ((self.log["time"] - moment).abs() < pd.Timedelta(hours=2))
        ]["temp_c"]
        if len(other) and other.min() < 34:
            return "power_cut"
        return "drift_cool" if hours >= 30 else "lid_ajar"

    def by_hour(self, species):
        days = (self.rows["last_hatch_at"] - self.rows["set_at"]).dt.total_seconds() / 86400
        others = days.drop(index=self.batch)[self.rows["incubator"].drop(index=self.batch) != self.mine["incubator"]]
        own = days[self.rows["incubator"] == self.mine["incubator"]]
        if not len(others.dropna()) or not len(own.dropna()):
            return []
        off = float(own.median() - others.median()) / float(species["incubation_days"]) * 21
        rows = self.rows.assign(share=(self.rows["hatched"] / self.rows["eggs_set"]).astype(float))
        here = rows["incubator"] == self.mine["incubator"]
        if rows.loc[here, "share"].median() < rows.loc[~here, "share"].median() - 0.25 and abs(off) > 0.3:
            return [("probe_high" if off > 0 else "probe_low", 7)]  # every batch of the machine is poor
        return [("probe_high", 6)] if off > 0.7 else [("probe_low", 6)] if off < -0.7 else []

    def answer(self):
        names, above, excess = self.causes()
        usual, half = self.usual()
        gap = usual * self.eggs - float(self.mine["hatched"])
        if not above and gap < half:
            names = [name for name in names if name in IN_LOG][:1]
        names = names[:2]
        stage = max(excess, key=lambda name: excess[name][0]) if names else "none"
        low, high = max(gap - half, 0.0), max(gap + half, 3.0)
        if not names:
            low, high = 0.0, 4.0
        ticked = {letter for letter, code, numbers in self.statements if self.ticks(code, numbers, names, above)}
        return stage, names or ["none"], (low, high), ticked

    def ticks(self, code, numbers, names, above):
        machine = {*IN_LOG, "probe_high", "probe_low"}
        if code == "stage":
            return numbers["stage"] in above and bool(names)
        if code in ("same_hens", "same_days", "same_machine"):
            own = self.rows.loc[str(numbers["other"])]
            real = abs(int(own["hatched"]) - numbers["eggs"]) <= 1
            return real and (code == "same_hens" or not names or bool(machine & set(names)))
        if code == "luck":
            return not names
        if code == "no_spell":
            start = self.mine["set_at"] + pd.Timedelta(days=1)
            log = self.run(self.mine["incubator"], start, self.mine["taken_off_at"])
            far = (log["temp_c"] - 37.2).abs() > 3
            return not names and far.rolling(18).sum().max() < 18
        if code == "spell":
            return numbers["hours"] >= 2.5 and abs(numbers["extreme"] - 37.5) >= 2.3 and self.spell(numbers) is not None
        if code == "remark":
            listed = reference.load("case_remarks").set_index("remark")["cause"]
            return listed.get(numbers["remark"], "") in names
        return {
            "storage": "long_storage" in names,
            "age": "old_flock" in names,
            "setter_rh": bool({"humidity_low", "humidity_high"} & set(names)),
            "hatch_rh": "dry_hatch" in names,
            "last_chick": bool({"probe_high", "probe_low"} & set(names)),
        }.get(code, False)


def mark(row, answer):
    """Credits and the mark of an answer."""
    stage, causes, ends, letters = answer
    kinds = dict(part.split() for part in row["statements"].split(", "))
    earned = credits_of(row, stage, causes, ends, letters, kinds)
    return earned | {"mark": credit.mark(earned)}


def run(cases, level, first_seed):
    """One row per case and student."""
    rows = []
    for seed in range(first_seed, first_seed + cases):
        case = make_case(seed, level=level)
        row = case.row("01")
        statements = [(letter, fact.code, fact.numbers) for letter, fact in case.lettered()]
        with tempfile.TemporaryDirectory() as home:
            case.write_season(Path(home) / "season")
            season = hk.load_season(Path(home) / "season")
            for name, answer in (
                ("automatic", automatic(season, row["batch"], statements)),
                ("careful", Careful(season, row["batch"], statements).answer()),
            ):
                rows.append(
                    dict(
                        seed=seed,
                        student=name,
                        causes=row["causes"],
                        can_tell=row["can_tell"],
                        named=" ".join(answer[1]),
                        lost=row["eggs_lost"],
                        low=round(answer[2][0], 1),
                        high=round(answer[2][1], 1),
                        stages=row["stages"],
                        said_stage=answer[0],
                        ticked="".join(sorted(answer[3])),
                        statements=row["statements"],
                    )
                    | mark(row, answer)
                )
    return pd.DataFrame(rows)


if __name__ == "__main__":
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--cases", type=int, default=32)
    parser.add_argument("--level", default="second")
    parser.add_argument("--first-seed", type=int, default=5000)
    parser.add_argument("--csv")
    options = parser.parse_args()
    table = run(options.cases, options.level, options.first_seed)
    if options.csv:
        table.to_csv(options.csv, index=False)
    print(f"{options.cases} cases, level {options.level}, seeds from {options.first_seed}")
    print((100 * table.groupby("student")[[*credit.WEIGHTS, "mark"]].mean()).round(0).astype(int).to_string())
