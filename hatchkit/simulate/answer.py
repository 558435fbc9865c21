"""The sealed answer of a simulated season: what was put in and what became of every egg."""

import json
import math
from dataclasses import dataclass
from pathlib import Path

import pandas as pd

from hatchkit.problems import HatchkitError
from hatchkit.records.writing import write_whole
from hatchkit.reference import contract
from hatchkit.say import text
from hatchkit.say.values import Joined


@dataclass(frozen=True)
class Answer:
    """What the analysis should find.

    Attributes
    ----------
    seed : int
    cause, severity : str
        The planted cause (a key of ``reference/simulate_causes.csv``) and mild, moderate or severe.
    batch : str
        The batch that a person would ask about.
    causes : DataFrame
        One row per batch that a planted cause touched: batch, incubator, cause, severity,
        day_start, day_end, size, unit, lost (chicks that the same eggs would have given without
        it, less those they gave), stages, fertile, eggs_set.
    eggs : DataFrame
        True course of every egg (`died_of` names what killed it) and what the person saw.
    parameters : dict
        Generative figures in force.
    """

    seed: int
    cause: str
    severity: str
    batch: str
    causes: pd.DataFrame
    eggs: pd.DataFrame
    parameters: dict

    def lost(self) -> int:
        """Eggs of the asked batch that would have hatched without the planted cause."""
        return int(self.causes.loc[self.causes["batch"] == self.batch, "lost"].sum())

    def words(self) -> str:
        """What was planted in the batch and what it took, for the teacher (in English, as the course is)."""
        rows = self.causes[self.causes["batch"] == self.batch]
        if rows.empty:
            return text("planted_nothing", dict(batch=self.batch))
        told = [
            text("planted_took", dict(what=planted(row), lost=row["lost"], set=row["eggs_set"]))
            for row in rows.to_dict("records")
        ]
        return text("planted_in", dict(batch=self.batch, told=Joined(told)))

    def write(self, path) -> Path:
        """Write the answer as one JSON file, which belongs outside the season folder."""
        path = Path(path)
        path.parent.mkdir(parents=True, exist_ok=True)
        data = dict(
            seed=self.seed,
            cause=self.cause,
            severity=self.severity,
            batch=self.batch,
            words=self.words(),
            parameters=self.parameters,
            causes=json.loads(self.causes.to_json(orient="records")),
            eggs=json.loads(self.eggs.to_json(orient="split", index=False, double_precision=3)),
        )
        return write_whole(path, json.dumps(data, indent=1))


def answer_for(plan, eggs, causes, *, seed, cause, severity, batch, without=None) -> Answer:
    """The sealed answer: what was put in, and how many eggs each planted cause took.

    Parameters
    ----------
    causes : list of dict
        batch, incubator, cause, severity, died_of (tuple of `died_of` values that belong to it),
        day_start, day_end, size, unit, said.
    without : dict or list, optional
        Batch -> (eggs lost, in which stages), from `without.losses`; or a list of such pairs, one for each entry of
        `causes`, where a batch has several. Where it is left out, as in the
        demo with its several causes, the eggs that the cause killed first are counted.
    """
    rows = []
    for place, item in enumerate(causes):
        mine = eggs[eggs["batch"] == item["batch"]]
        fertile = int(mine["fertile"].sum())
        lost, stages = (
            _killed_first(plan, mine, item)
            if without is None
            else (without[place] if isinstance(without, list) else without[item["batch"]])
        )
        row = {name: value for name, value in item.items() if name != "died_of"}
        rows.append(row | dict(lost=lost, stages=stages, fertile=fertile, eggs_set=len(mine)))
    table = pd.DataFrame(rows, columns=contract.columns("planted"))
    return Answer(
        seed=seed, cause=cause, severity=severity, batch=batch, causes=table, eggs=eggs, parameters=dict(plan.p)
    )


def _killed_first(plan, mine, item):
    lost = int(mine["died_of"].isin(item["died_of"]).sum())
    if item["cause"] == "low_fertility":
        # what an ordinary flock would have lost as well is not the cause's doing
        lost += int((~mine["fertile"]).sum()) - round(len(mine) * (1 - plan.p["fertility"]))
    return max(lost, 0), ""


def planted(row) -> str:
    """One planted cause (a row of `Answer.causes`) in a sentence."""
    hours = 24 * (row["day_end"] - row["day_start"])
    harmed = 1 - math.exp(-row["size"]) if row["cause"] == "turning_fault" else None
    facts = dict(size=row["size"], hours=round(hours), day=row["day_start"], share=harmed)
    return text(f"planted_{row['cause']}", facts)


def read_answer(path) -> Answer:
    """Read what `Answer.write` wrote.

    Parameters
    ----------
    path : path
        The .json file.

    Returns
    -------
    Answer

    Raises
    ------
    HatchkitError
        If it is no such file.
    """
    try:
        data = json.loads(Path(path).read_text(encoding="utf-8"))
        return Answer(
            seed=data["seed"],
            cause=data["cause"],
            severity=data["severity"],
            batch=data["batch"],
            causes=pd.DataFrame(data["causes"], columns=contract.columns("planted")),
            eggs=pd.DataFrame(data["eggs"]["data"], columns=data["eggs"]["columns"]),
            parameters=data["parameters"],
        )
    except (OSError, ValueError, KeyError) as error:
        raise HatchkitError("not_an_answer", dict(path=str(path), why=str(error))) from error
