"""Fates: what became of every egg set, and between which days an embryo died.

The joint of the whole kit. For every batch the eggs of its fates add up to the eggs set; what the
records cannot explain is `unaccounted` and a row of problems. Where a slip of counting tells of an egg or two more
than were set, the fates keep what was written: nobody knows which count is wrong, or whether it is the eggs set.
"""

import math
from dataclasses import replace

import pandas as pd

from hatchkit.losses.counts import Counts, choose, group, groups, read_counts, tally
from hatchkit.losses.egg_rows import egg_fate
from hatchkit.losses.schedule import Look, by_batch, count, number, schedule, species_figures, where
from hatchkit.losses.stages import limits_for
from hatchkit.problems import problem
from hatchkit.problems import table as problems_table
from hatchkit.reference import contract

COLUMNS = contract.columns("fates")

#: So many eggs more than were set are a slip in counting; beyond, the record of the batch can't be read.
MOST_TOO_MANY, MOST_TOO_MANY_SHARE = 2, 0.05


def build_fates(batches, eggs, looks, species_table) -> tuple[pd.DataFrame, pd.DataFrame]:
    """Fates of all batches from counts, egg rows and breakout stages.

    Parameters
    ----------
    batches, eggs, looks : DataFrame
        As in ``reference/columns_records.csv``; `eggs` and `looks` may be empty.
    species_table : DataFrame
        Species figures, index species.

    Returns
    -------
    fates : DataFrame
        ``reference/columns_losses.csv``. Ages are days since setting, day 0 the hour of setting.
        hatched and culled: alive until after_day, by_day missing. infertile: no days. unaccounted:
        alive or not yet looked at after after_day. A batch whose records exceed its eggs set cannot
        be read and is unaccounted as a whole; a slip (`MOST_TOO_MANY`) is kept as it was written.
    problems : DataFrame
    """
    egg_rows, look_rows = by_batch(eggs), by_batch(looks)
    rows, doubts = [], []
    for row in batches.to_dict("records"):
        name = str(row["batch"])
        found, more = batch_fates(row, egg_rows.get(name, []), look_rows.get(name, []), species_table)
        rows += [{"batch": name, **fate} for fate in found]
        doubts += more
    fates = pd.DataFrame(rows, columns=COLUMNS)
    types = {
        "batch": "object",
        "egg": "object",
        "eggs": "float64",
        "fate": "object",
        "after_day": "float64",
        "by_day": "float64",
        "found_at": "object",
    }
    return fates.astype(types), problems_table(doubts)


def batch_fates(row: dict, eggs: list[dict], looks: list[dict], species_table) -> tuple[list[dict], list[dict]]:
    """Fates and problems of one batch (rows as dicts)."""
    eggs_set = count(row.get("eggs_set"))
    if eggs_set <= 0:
        return [], [
            problem(
                "lost",
                code="eggs_set_missing",
                facts=dict(batch=str(row["batch"])),
                **where(row),
                column="eggs_set",
            )
        ]
    figures = species_figures(row, species_table)
    length, species = figures["incubation_days"], str(row.get("species"))
    looks, doubts = schedule(row, looks, figures)
    stages = limits_for(species, length)
    counts = read_counts(row, looks)
    doubts += [_doubt(row, code, **facts) for code, facts in counts.notes]
    known = []
    for egg in eggs:
        fate, more = egg_fate(egg, looks, species, length)
        doubts += more
        if fate is not None:
            known.append(fate)
    if len(known) > eggs_set:
        return _lost(row, eggs_set, doubts, "rows_beyond_set", told=len(known))
    seen = tally(known, looks, stages)
    if known:
        doubts += _disagreements(row, counts, seen, whole=len(known) == eggs_set)
        counts = _less(counts, seen)
    rest = eggs_set - len(known)
    if known and rest == 0:
        return [_clean(fate) for fate in known], doubts
    return _close(row, counts, rest, known, stages, length, doubts)


def _close(row, counts: Counts, rest, known, stages, length, doubts):
    """The eggs without a row of their own, by the counts, so that all add up to the eggs set."""
    way, left = choose(counts, rest)
    if left < 0:
        if not known and -left <= max(MOST_TOO_MANY, MOST_TOO_MANY_SHARE * rest):
            rows = groups(counts, way, 0.0, stages, length)
            doubts.append(_doubt(row, "too_many_eggs", told=int(rest - left), set=int(rest), excess=int(-left)))
            return rows, doubts
        if not known:
            return _lost(row, rest, doubts, "counts_beyond_set", told=rest - left, **_told(counts))
        doubts.append(_doubt(row, "counts_beyond_rows", told=rest - left, rows=len(known), left=rest))
        return [*map(_clean, known), group("unaccounted", rest, 0.0, math.nan, "")], doubts
    if way.note:
        facts = dict(batch=str(row["batch"]), way=way.note)
        doubts.append(problem("note", code="opened_two_ways", facts=facts, **where(row)))
    rows = groups(counts, way, left, stages, length)
    lost = sum(fate["eggs"] for fate in rows if fate["fate"] == "unaccounted")
    if lost and counts.finished:
        eggs_set = count(row["eggs_set"])
        doubts.append(_doubt(row, "eggs_unexplained", told=eggs_set - lost, set=eggs_set, lost=lost))
    elif lost:
        facts = dict(batch=str(row["batch"]), eggs=lost)
        doubts.append(problem("note", code="hatch_not_counted", facts=facts, **where(row), column="hatched"))
    return [*map(_clean, known), *rows], doubts


def _lost(row, eggs_set, doubts, code, **facts):
    facts = dict(batch=str(row["batch"]), set=eggs_set, **facts)
    lost = problem("lost", code=code, facts=facts, **where(row), column="eggs_set")
    return [group("unaccounted", eggs_set, 0.0, math.nan, "")], [*doubts, lost]


def _doubt(row, code, **facts):
    return problem("doubtful", code=code, facts=dict(batch=str(row["batch"]), **facts), **where(row))


def _clean(fate: dict) -> dict:
    return {name: fate[name] for name in COLUMNS if name != "batch"}


def _told(counts: Counts) -> dict:
    """What the counts hold, for a message: kinds (fields) and eggs, in one order."""
    parts = {
        "clear": sum(count(look.clear) for look in counts.looks),
        "dead": sum(count(look.dead) for look in counts.looks if look.name != "hatch"),
        "hatched": counts.hatched,
        "pipped_dead": counts.pipped,
        "dead_in_shell": max(counts.in_shell, counts.early + counts.mid + counts.late),
        "broken_infertile": counts.infertile,
        "removed": counts.removed + sum(count(look.removed) for look in counts.looks if look.name != "hatch"),
    }
    held = {kind: eggs for kind, eggs in parts.items() if eggs}
    return dict(kinds=list(held), eggs=list(held.values()))


def _disagreements(row, counts: Counts, seen: dict, *, whole: bool) -> list[dict]:
    """One problem row naming every count that the egg rows contradict.

    With a row for every egg the two must be equal; with rows for some, the rows cannot exceed the count.
    """
    pairs = {
        f"{kind}@{look.name.replace('candle', 'look')}": (number(getattr(look, kind)), seen[look.name, kind])
        for look in counts.looks
        if look.name != "hatch"
        for kind in ("clear", "dead", "removed")
    }
    kept = {name: number(row.get(name)) for name in ("hatched", "culled", "pipped_dead")}
    pairs.update({name: (value, seen[name]) for name, value in kept.items()})
    wrong = [
        (kind, told, rows)
        for kind, (told, rows) in pairs.items()
        if not math.isnan(told) and (rows != told if whole else rows > told)
    ]
    if not wrong:
        return []
    kinds, told, rows = map(list, zip(*wrong, strict=True))
    return [_doubt(row, "rows_against_counts", kinds=kinds, counts=told, rows=rows)]


def _less(counts: Counts, seen: dict) -> Counts:
    """The counts less the eggs that have rows of their own."""

    def rest(value, key):
        return value if math.isnan(value) else max(0.0, value - seen[key])

    looks = [
        look
        if look.name == "hatch"
        else Look(
            look.name,
            look.day,
            *(rest(getattr(look, kind), (look.name, kind)) for kind in ("clear", "dead", "removed")),
        )
        for look in counts.looks
    ]
    hatched = rest(counts.hatched, "hatched")
    return replace(
        counts,
        looks=looks,
        hatched=hatched,
        culled=min(rest(counts.culled, "culled"), hatched),
        pipped=rest(counts.pipped, "pipped_dead"),
        in_shell=rest(counts.in_shell, "in_shell"),
        infertile=rest(counts.infertile, "infertile"),
        early=rest(counts.early, "early"),
        mid=rest(counts.mid, "mid"),
        late=rest(counts.late, "late"),
        removed=rest(counts.removed, "removed"),
    )
