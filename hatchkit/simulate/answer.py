"""The sealed answer of a simulated season: what was put in and what became of every egg."""

import json
import math
from dataclasses import dataclass
from pathlib import Path

import pandas as pd

from hatchkit import reference
from hatchkit.problems import HatchkitError
from hatchkit.records.writing import write_whole
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

    def lost(self, batch=None) -> int:
        """Eggs of `batch` (the asked one if left out) that would have hatched without the planted cause."""
        rows = self.causes[self.causes["batch"] == (self.batch if batch is None else str(batch))]
        return int(rows["lost"].sum())

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
        eggs = pd.DataFrame(data["eggs"]["data"], columns=data["eggs"]["columns"])
        columns = list(reference.load("columns_simulate").query("table == 'planted'")["column"])
        return Answer(
            seed=data["seed"],
            cause=data["cause"],
            severity=data["severity"],
            batch=data["batch"],
            causes=pd.DataFrame(data["causes"], columns=columns),
            eggs=eggs,
            parameters=data["parameters"],
        )
    except (OSError, ValueError, KeyError) as error:
        raise HatchkitError("not_an_answer", dict(path=str(path), why=str(error))) from error
