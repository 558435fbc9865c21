"""What fits a cause, what speaks against it and what is not known, as codes with facts; words are in `say.causes`."""

from __future__ import annotations

from typing import NamedTuple

import numpy as np
import pandas as pd

from hatchkit.advice.published import STAGES

#: A factor beyond this, up or down, is worth a mention.
WORTH = 1.5

#: A stage of whose eggs more than this share is only assumed is not told by itself.
ASSUMED = 0.2

#: A remark is quoted up to so many letters.
QUOTED = 160


class Counted(NamedTuple):
    """What became of one batch's eggs: counts per stage, deaths between stages, eggs without a known end."""

    counts: np.ndarray
    between: tuple
    unaccounted: float

    @property
    def eggs_set(self) -> float:
        """Eggs of the batch, those without a known end too."""
        return float(self.counts.sum() + self.unaccounted)

    def mostly_unknown(self, limit) -> bool:
        """Whether more than the share `limit` of the eggs set have no known end."""
        return self.unaccounted > limit * self.eggs_set

    def assumed(self) -> np.ndarray:
        """Eggs of each stage that are there only because a death between stages was shared out."""
        eggs = np.zeros(len(self.counts))
        for group in self.between:
            eggs[list(group.columns)] += group.eggs * np.array(group.mass) / sum(group.mass)
        return eggs


def for_and_against(row: dict, lines, counted: Counted, pattern, usual, known) -> dict:
    """Fits, against and unknown for one candidate: tuples of (code, facts) for `say.causes.reason`.

    Parameters
    ----------
    row : dict
        The candidate, with its likeliest variant and `by_stage`, the parts of its harm (`harm.by_stage`).
    lines : list of Line
        Its evidence (`evidence.told`).
    counted : Counted
    pattern : DataFrame
        `Causes.pattern`.
    usual : Usual
    known : dict
        Evidence items by name.
    """
    if row["cause"] == "bad_luck":
        return _for_bad_luck(counted, usual)
    if row["cause"] == "unlisted":
        return dict(fits=(), against=(("any_pattern", {}),), unknown=())
    fits, against = _of_stages(row, counted, pattern["usual"].to_numpy(), usual.rho)
    unknown = []
    for part, found, _, factor in lines:  # told twice it counts once, but both are told
        if found == "not known":
            unknown.append(part)
        elif factor >= WORTH or factor <= 1 / WORTH:
            told = ("item", item_facts(known[part])) if found == "known" else ("noted", dict(sign=part, said=found))
            (fits if factor > 1 else against).append(told)
    lacking = tuple(("lacking", dict(item=part)) for part in dict.fromkeys(unknown))
    return dict(fits=tuple(fits), against=tuple(against), unknown=lacking)


def item_facts(item) -> dict:
    """One evidence item with its value; a gauge beside what is usual with this keeper (`usual`, else None)."""
    own = item["kind"] == "gauge" and item["good_batches"]
    return dict(
        item=item["item"],
        unit=item["unit"],
        digits=int(item["digits"]),
        value=item["value"],
        usual=item["usual"] if own else None,
    )


def _of_stages(row, counted: Counted, expected, rho) -> tuple[list, list]:
    """Stages that are as the cause says, and stages that are not."""
    part = row["by_stage"]
    total, assumed = counted.counts.sum(), counted.assumed()
    under = expected + part * max(row["eggs_lost"], 1.0)
    fits, against = _of_days(counted, expected, part, rho)
    for place in range(1, len(STAGES)):
        eggs, normal, wanted = counted.counts[place], expected[place], under[place]
        spread = np.sqrt(max(normal, 1.0) * (1 + (total - 1) * rho))
        if assumed[place] > ASSUMED * max(eggs, 1.0):
            continue  # told by its days
        told = dict(stage=STAGES[place], eggs=float(eggs), usual=float(normal))
        if part[place] >= MAIN and eggs > normal + spread:
            fits.append(("stage_more", told))
        elif (
            part[place] >= MAIN
            and eggs < normal + 0.5 * spread
            and wanted > normal + spread
            and not (counted.unaccounted)
        ):
            against.append(("stage_few" if eggs >= 0.5 else "stage_none", told))
        elif part[place] < MINOR and eggs > normal + 2 * spread:
            against.append(("stage_not_explained", told))
    return fits, against


#: Part of a cause's harm at a stage from which the stage speaks for it, and under which it is none of its own.
MAIN, MINOR = 0.15, 0.03


def _of_days(counted: Counted, expected, part, rho) -> tuple[list, list]:
    """Deaths told by their days, where their stage is only assumed."""
    assumed, fits, against = counted.assumed(), [], []
    for columns in dict.fromkeys(group.columns for group in counted.between):
        groups, columns = [group for group in counted.between if group.columns == columns], list(columns)
        eggs = sum(group.eggs for group in groups)
        first, last = min(group.after_day for group in groups), max(group.by_day for group in groups)
        if not any(assumed[place] > ASSUMED * max(counted.counts[place], 1.0) for place in columns):
            continue
        normal = expected[columns].sum()
        told = dict(
            eggs=float(eggs),
            after_day=float(first),
            by_day=float(last) if np.isfinite(last) else None,
            stages=[STAGES[place] for place in columns],
            usual=float(normal),
        )
        spread = np.sqrt(max(normal, 1.0) * (1 + (counted.counts.sum() - 1) * rho))
        if eggs > normal + spread and part[columns].max() >= MAIN:
            fits.append(("days_more", told))
        elif eggs > normal + 2 * spread and part[columns].max() < MINOR:
            against.append(("days_not_explained", told))
    return fits, against


def _for_bad_luck(counted: Counted, usual) -> dict:
    good, total = counted.counts[0], counted.eggs_set
    expected = usual.shares[0] * total
    spread = np.sqrt(total * usual.shares[0] * (1 - usual.shares[0]) * (1 + (total - 1) * usual.rho))
    away = (good - expected) / spread
    facts = dict(good=float(good), set=float(total), usual=float(expected), spread=float(spread))
    told = (("good_chicks", facts),)
    return dict(fits=told if away > -1.5 else (), against=told if away <= -1.5 else (), unknown=())


def remark(row) -> str:
    """The person's remark on a batch (its row), cut where it is long; empty where there is none."""
    notes = row.get("notes")
    text = "" if notes is None or pd.isna(notes) else " ".join(str(notes).split())
    return text if len(text) <= QUOTED else text[:QUOTED].rsplit(" ", 1)[0] + " ..."


def limits(season, row, items, usual) -> tuple:
    """What bounds every verdict on this batch (its row of batches): (code, facts) for `say.causes.reason`."""
    told = []
    checked = season.settings.get("incubators", {}).get(str(row.get("incubator")), {})
    logged = items.set_index("item").loc[["log_level", "heat", "cold"], "value"].notna().any()
    if not logged:
        told.append(("limit_no_log", {}))
    elif "probe_offset_c" not in checked:
        told.append(("limit_probe", {}))
    if usual.batches < 4:
        told.append(("limit_few", dict(batches=usual.batches)))
    if pd.isna(row.get("broken_early")) and pd.isna(row.get("broken_late")):
        told.append(("limit_not_opened", {}))
    return tuple(told)
