"""The ledger of each batch: eggs set, and what became of them stage by stage."""

import math

import pandas as pd

from hatchkit.losses.counted import counted
from hatchkit.losses.death_shape import season_shapes
from hatchkit.losses.schedule import by_batch, count, number, species_by_batch, species_figures
from hatchkit.losses.stages import limits_for, share_between, stage_of
from hatchkit.losses.windows import left_out, too_many
from hatchkit.problems import HatchkitError

SUMS = ["set", "fertile", "transferred", "excess"]
COLUMNS = ["batch", "stage", "eggs", "seen", "shared_out", "at_hatch", "counted", *SUMS]

BEFORE = ("hatched", "culled", "clear", "infertile")
AFTER = ("pipped_dead", "removed", "unaccounted")


def ledger(season, *, stages: str = "development", limits=None) -> pd.DataFrame:
    """One row per batch and stage, in the order of the ledger.

    Parameters
    ----------
    stages : {"development", "candling"}
        development: hatched (good chicks), culled, clear, infertile, early, mid, late (or the stages of
        `limits`), pipped_dead, removed, unaccounted; these add up to the eggs set and the excess.
        candling: embryos found dead at each look; missing where they were not counted then, or nobody looked.
    limits : None, str or dict
        See `stages.limits_for`.

    Returns
    -------
    DataFrame
        batch, stage; eggs = seen + shared_out, where shared_out is the part of deaths whose interval
        crosses a limit and that the season's ages at death put here (`death_shape`); at_hatch, eggs of it among the
        eggs that were still in at the hatch; counted: whether the batch's records hold a number for the stage (where
        not, eggs are the least there were); set, fertile (set less clears and infertile eggs; clears hold very early
        dead too; missing where the clears were not counted), transferred (set less all taken out before or at
        transfer; missing without a transfer or a count of clears), excess (eggs told of beyond those set, a slip of
        counting: each share may be of so many eggs more). Of a batch whose records exceed its eggs set only
        the chicks are given, as the sheet has them. Eggs.
    """
    if stages not in ("development", "candling"):
        raise HatchkitError("no_such_split", dict(given=str(stages)))
    records = {str(row["batch"]): row for row in season.batches.to_dict("records")}
    figures = {batch: species_figures(row, season.species_table) for batch, row in records.items()}
    fates = {batch: rows for batch, rows in by_batch(season.fates).items() if batch in records}
    kept = counted(season)
    moved = {str(look["batch"]) for look in season.looks.to_dict("records") if look["name"] == "transfer"}
    if stages == "candling":
        made = {batch: {look["name"] for look in rows} for batch, rows in by_batch(season.looks).items()}
        split = {batch: _by_look(fates[batch], made.get(batch, set()), known.looks) for batch, known in kept.items()}
    else:
        split = _by_stage(season, records, figures, fates, limits)
    order = _stage_order(split, stages)
    rows = []
    for batch, record in records.items():
        if batch not in fates:
            continue
        clears = kept[batch].stage("clear")
        sums = _denominators(count(record["eggs_set"]), fates[batch], clears, clears and batch in moved)
        chicks = _chicks_of_the_sheet(season, record, fates[batch])
        for stage in order:
            # A look without a count tells nothing; a stage that nobody died in is a true nought.
            none = (math.nan,) * 3 if stages == "candling" else (0.0,) * 3
            seen, shared, at_hatch = split[batch].get(stage, none)
            if chicks is not None:
                seen = chicks if stage == "hatched" else math.nan
            told = kept[batch].stage(stage) if stages == "development" else not math.isnan(seen)
            rows.append([batch, stage, seen + shared, seen, shared, at_hatch, told, *sums])
    return pd.DataFrame(rows, columns=COLUMNS).astype({"counted": bool})


def usable(season) -> set[str]:
    """Batches that can enter rates."""
    return set(season.fates["batch"]) - set(left_out(season)["batch"])


def _chicks_of_the_sheet(season, record, rows) -> float | None:
    """Good chicks that the sheet tells of a batch whose records exceed its eggs set; None for any other batch."""
    if any(row["fate"] != "unaccounted" for row in rows) or not too_many(season, str(record["batch"])):
        return None
    return number(record.get("hatched")) - count(record.get("culled"))


def _denominators(total, rows, clears, moved) -> list[float]:
    """As in `SUMS`."""
    barren = sum(row["eggs"] for row in rows if row["fate"] in ("clear", "infertile"))
    out = sum(
        row["eggs"]
        for row in rows
        if row["found_at"] not in ("hatch", "") or (row["fate"] == "removed" and not row["found_at"])
    )
    excess = max(sum(row["eggs"] for row in rows) - total, 0.0)
    left = [max(total - barren, 0.0) if clears else math.nan, max(total - out, 0.0) if moved else math.nan]
    return [total, *left, excess]


def _by_look(rows, made, looked) -> dict:
    """Eggs found dead at each look that was made; missing where the dead were not counted."""
    found = {name: [math.nan if name not in looked else 0.0] * 3 for name in made | {"hatch"}}
    for row in rows:
        if row["fate"] in ("dead", "pipped_dead"):
            eggs = found.setdefault(row["found_at"], [0.0, 0.0, 0.0])
            eggs[0] += row["eggs"]
            eggs[2] += row["eggs"] if row["found_at"] == "hatch" else 0.0
    return {stage: tuple(eggs) for stage, eggs in found.items()}


def _by_stage(season, records, figures, fates, limits) -> dict:
    species = species_by_batch(season.batches)
    lengths = {species[batch]: figures[batch]["incubation_days"] for batch in records}
    bounds = {name: limits_for(name, length, limits) for name, length in lengths.items()}
    shapes = None
    split = {}
    for batch, rows in fates.items():
        stages = bounds[species[batch]]
        eggs = {stage: [0.0, 0.0, 0.0] for stage, *_ in stages}
        for row in rows:
            parts = {row["fate"]: 1.0}
            seen = True
            if row["fate"] == "dead":
                whole = stage_of(row["after_day"], row["by_day"], stages)
                seen = whole is not None
                if not seen:
                    shapes = shapes or season_shapes(season.fates, species, lengths)
                    shares = share_between(row["after_day"], row["by_day"], stages, shapes[species[batch]])
                    parts = {stage[0]: share for stage, share in zip(stages, shares, strict=True) if share > 0}
                else:
                    parts = {whole: 1.0}
            for stage, share in parts.items():
                sums = eggs.setdefault(stage, [0.0, 0.0, 0.0])
                sums[0 if seen else 1] += row["eggs"] * share
                # Nobody knows whether an egg without a known end was still in at the hatch.
                at_hatch = math.nan if row["fate"] == "unaccounted" else float(row["found_at"] == "hatch")
                sums[2] += row["eggs"] * share * at_hatch
        split[batch] = {stage: tuple(sums) for stage, sums in eggs.items()}
    return split


def _stage_order(split, stages) -> list[str]:
    found = list(dict.fromkeys(stage for part in split.values() for stage in part))
    if stages == "candling":
        looks = {name for name in found if name.startswith("candle")}
        ordered = sorted(looks, key=lambda name: int(name.removeprefix("candle") or 0))
        return [*ordered, *(name for name in ("transfer", "hatch"))]
    deaths = [name for name in found if name not in BEFORE + AFTER]
    return [*BEFORE, *deaths, *AFTER]
