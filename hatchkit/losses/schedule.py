"""When were the eggs of a batch looked at? The looks in order, each with its age in days."""

import math
from dataclasses import dataclass

import pandas as pd

from hatchkit.problems import problem

#: Incubation length taken when nothing better is known, so that a batch is not lost for it.
UNKNOWN_LENGTH = 21.0


@dataclass(frozen=True)
class Look:
    """One look at the eggs; counts are NaN where they were not kept."""

    name: str
    day: float
    clear: float = math.nan
    dead: float = math.nan
    removed: float = math.nan

    @property
    def only_moved(self) -> bool:
        """Whether this is a transfer without a count, noughts included: eggs moved, and nobody says candled."""
        return self.name == "transfer" and all(math.isnan(eggs) for eggs in (self.clear, self.dead, self.removed))


def number(value) -> float:
    """A count or measure as float; NaN where it was not kept."""
    return math.nan if value is None or pd.isna(value) else float(value)


def count(value) -> float:
    """A count with "not kept" taken as none."""
    return 0.0 if value is None or pd.isna(value) else float(value)


def where(row: dict) -> dict:
    """File, sheet and row of a record, as the problems table wants them."""
    line = row.get("row") if "sheet_row" not in row else row.get("sheet_row")
    return dict(
        file=str(row.get("file") or ""),
        sheet=str(row.get("sheet") or ""),
        row=None if line is None or pd.isna(line) else int(line),
    )


def by_batch(table: pd.DataFrame) -> dict[str, list[dict]]:
    """Rows of a table as dicts, batch by batch."""
    parts: dict[str, list[dict]] = {}
    for row in table.to_dict("records") if len(table) else []:
        parts.setdefault(str(row["batch"]), []).append(row)
    return parts


def species_by_batch(batches: pd.DataFrame) -> dict[str, str]:
    """batch -> kind of bird, "not given" where the sheet does not say."""
    kinds = batches["species"].astype("object").where(batches["species"].notna(), "not given")
    return dict(zip(batches["batch"].astype(str), kinds.map(str), strict=True))


def species_figures(row: dict, species_table: pd.DataFrame) -> dict:
    """Species figures of a batch row; a species without figures gets a length of 21 days."""
    species = row.get("species")
    known = species is not None and species in species_table.index
    figures = species_table.loc[species].to_dict() if known else {}
    length = number(figures.get("incubation_days"))
    figures["incubation_days"] = UNKNOWN_LENGTH if math.isnan(length) else length
    return figures


def schedule(row: dict, looks: list[dict], figures: dict) -> tuple[list[Look], list[dict]]:
    """Looks of one batch in order of age, the taking off of the hatch ("hatch") last.

    Parameters
    ----------
    row : dict
        The batch's record.
    looks : list of dict
        Its rows of the looks table.
    figures : dict
        Species figures: incubation_days, candle1_day, candle2_day, transfer_day.

    Returns
    -------
    looks : list of Look
        A look without a date gets the species' usual day; without a take-off date the hatch is put
        at the usual incubation length. Both are notes.
    problems : list of dict
    """
    found, notes = [], []
    for look in looks:
        day = _day(look, row)
        if math.isnan(day):
            if look["name"] == "hatch" or _nothing_kept(look):
                continue
            day = _usual_day(look["name"], figures)
            facts = dict(batch=str(row["batch"]), look=look["name"], day=day)
            notes.append(problem("note", code="look_day_taken", facts=facts, **where(row)))
        found.append(
            Look(look["name"], day, number(look.get("clear")), number(look.get("dead")), number(look.get("removed")))
        )
    early = [look for look in found if look.day <= 0]
    if early:
        facts = dict(batch=str(row["batch"]), looks=[look.name for look in early])
        notes.append(problem("doubtful", code="look_before_setting", facts=facts, **where(row)))
        # A take-off that cannot be is as good as none: the usual incubation length stands in below.
        found = [
            look
            if look.day > 0
            else Look(look.name, _usual_day(look.name, figures), look.clear, look.dead, look.removed)
            for look in found
            if look.day > 0 or look.name != "hatch"
        ]
    taken_off = [look for look in found if look.name == "hatch"]
    middle = sorted((look for look in found if look.name != "hatch"), key=lambda look: look.day)
    last = middle[-1].day if middle else 0.0
    if taken_off and taken_off[0].day > last:
        end = taken_off[0]
    else:
        end = Look("hatch", max(figures["incubation_days"], last + 0.5))
        if taken_off:
            facts = dict(batch=str(row["batch"]), off=taken_off[0].day, last=last, day=end.day)
            notes.append(problem("doubtful", code="off_before_look", facts=facts, **where(row)))
    return [*middle, end], notes


def _day(look: dict, row: dict) -> float:
    day = number(look.get("day"))
    if not math.isnan(day):
        return day
    looked, set_at = look.get("looked_at"), row.get("set_at")
    if looked is None or set_at is None or pd.isna(looked) or pd.isna(set_at):
        return math.nan
    return (looked - set_at) / pd.Timedelta(days=1)


def _nothing_kept(look: dict) -> bool:
    return all(math.isnan(number(look.get(name))) for name in ("clear", "dead", "removed"))


def _usual_day(name: str, figures: dict) -> float:
    usual = {"candle1": "candle1_day", "candle2": "candle2_day", "transfer": "transfer_day"}
    day = number(figures.get(usual.get(name)))
    length = figures["incubation_days"]
    # A third or later candling has no usual day; it lies between the second and the transfer.
    return (
        length * {"candle1": 1 / 3, "candle2": 2 / 3, "transfer": 18 / 21}.get(name, 0.75) if math.isnan(day) else day
    )
