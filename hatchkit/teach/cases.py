"""One case for one student: a season as life has it, what its records can show, and the row of the answer book."""

import json
from dataclasses import dataclass
from typing import Any

import numpy as np

from hatchkit.simulate import life
from hatchkit.simulate.course import DAY
from hatchkit.simulate.folder import empty_folder, write_folder
from hatchkit.teach import case_facts, case_words
from hatchkit.teach.reader import read_case


@dataclass(frozen=True)
class Case:
    """A case ready to be written.

    lived : life.LivedSeason
    reading : reader.Reading
    facts : list of case_facts.Fact
    level : str
    """

    lived: life.LivedSeason
    reading: Any
    facts: list
    level: str

    def lettered(self):
        """(letter, fact) of each statement."""
        return list(zip(case_words.LETTERS, self.facts, strict=False))

    def row(self, case) -> dict:
        """The row of the answer book (columns: ``reference/columns_lesson.csv``)."""
        answer, reading = self.lived.answer, self.reading
        mine = answer.causes[answer.causes["batch"] == answer.batch]
        item = self.lived.plan.batch(answer.batch)
        return {
            "case": case,
            "seed": answer.seed,
            "level": self.level,
            "species": item.species,
            "batch": answer.batch,
            "eggs_set": item.eggs_set,
            "causes": " ".join(self.lived.causes) or "none",
            "shown": ", ".join(f"{name} {sure:.2f}" for name, sure in reading.shown.items()),
            "severity": answer.severity if len(mine) else "",
            "can_tell": " ".join(self.told()) or "none",
            "stages": ", ".join(f"{name} {eggs:g}" for name, eggs in reading.stages.items()) if len(mine) else "",
            "eggs_lost": answer.lost(),
            "width": reading.width,
            "statements": ", ".join(f"{letter} {fact.kind}" for letter, fact in self.lettered()),
            "other_batches": " ".join(sorted(set(answer.causes["batch"]) - {answer.batch})),
            "said": answer.words(),
        }

    def told(self) -> list:
        """Planted causes that the records show."""
        return [name for name, sure in self.reading.shown.items() if sure >= case_facts.SHOWN]

    def write_season(self, folder) -> None:
        """The season as its keeper has it, in a new folder."""
        folder = empty_folder(folder)
        write_folder(folder, self.lived.plan, self.lived.tables, seed=self.lived.answer.seed)

    def shown_again(self) -> str:
        """What a student is shown after the marks, as JSON: statements with their reasons, figures for a picture."""
        book = case_facts.Book(self.lived, self.reading)
        log = book.log[book.log.index >= book.mine["set_at"]]
        days = ((log.index - book.mine["set_at"]) / DAY).astype(float)
        length = (book.mine["taken_off_at"] - book.mine["set_at"]) / DAY
        inside = np.flatnonzero(days <= length)
        kept = inside[:: max(len(inside) // 1000, 1)]
        return json.dumps(
            {
                "statements": [
                    dict(letter=letter, code=fact.code, numbers=fact.numbers, kind=fact.kind, why=fact.why)
                    for letter, fact in self.lettered()
                ],
                "stages": {
                    name: [book.counts(name, rows) for rows in (book.mine, book.others)] for name in case_facts.STAGES
                },
                "eggs": [int(book.mine["eggs_set"]), int(book.others["eggs_set"].sum())],
                "log": {"day": [round(day, 2) for day in days[kept]], "temp_c": log["temp_c"].iloc[kept].tolist()},
            },
            indent=1,
            default=str,
        )


def make_case(seed, *, level="first", batches=6, eggs=48, **more) -> Case:
    """Draw a case; `more` as in `life.draw_lived`."""
    lived = life.draw_lived(seed, level_name=level, batches=batches, eggs=eggs, **more)
    reading = read_case(lived, level)
    return Case(lived, reading, case_facts.facts_of(lived, reading), level)
