"""From the counts that a person keeps of a batch to groups of eggs that share a fate."""

import math
from dataclasses import dataclass, field, replace

from hatchkit.losses.schedule import Look, count, number
from hatchkit.losses.stages import pip_day, stage_of

#: Columns that say something about the end of the hatch; with none of them the batch is not finished.
AT_TAKE_OFF = (
    "hatched",
    "culled",
    "pipped_dead",
    "dead_in_shell",
    "broken_infertile",
    "broken_early",
    "broken_mid",
    "broken_late",
)


@dataclass
class Counts:
    """Counts of one batch (or of the part of it that has no egg rows), eggs."""

    looks: list[Look]
    hatched: float
    culled: float
    pipped: float
    in_shell: float
    infertile: float
    early: float
    mid: float
    late: float
    removed: float
    spoilt: float
    finished: bool
    notes: list[tuple] = field(default_factory=list)


def read_counts(row: dict, looks: list[Look]) -> Counts:
    """The counts of a batch's record; what was not kept counts as none."""
    hatched, culled = count(row.get("hatched")), count(row.get("culled"))
    notes = []
    if culled > hatched:
        notes.append(("culled_beyond_hatched", dict(culled=culled, hatched=hatched)))
        hatched = culled
    at_looks = sum(count(look.removed) for look in looks)
    total = count(row.get("removed"))
    if total and at_looks > total:
        notes.append(("taken_out_twice", dict(looks=at_looks, total=total)))
    return Counts(
        looks=looks,
        hatched=hatched,
        culled=culled,
        pipped=count(row.get("pipped_dead")),
        in_shell=count(row.get("dead_in_shell")),
        infertile=count(row.get("broken_infertile")),
        early=count(row.get("broken_early")),
        mid=count(row.get("broken_mid")),
        late=count(row.get("broken_late")),
        removed=max(0.0, total - at_looks),
        spoilt=max(0.0, count(row.get("contaminated")) + count(row.get("cracked")) - max(total, at_looks)),
        finished=any(not math.isnan(number(row.get(name))) for name in AT_TAKE_OFF),
        notes=notes,
    )


@dataclass(frozen=True)
class Reading:
    """One way to read the opened eggs: dead at take-off by stage, infertile, and clears opened."""

    early: float
    mid: float
    late: float
    unopened: float
    infertile: float
    clears_infertile: float = 0.0
    clears_early: float = 0.0
    note: str = ""

    @property
    def eggs(self) -> float:
        """Eggs beyond those counted at the looks (opened clears are counted there already)."""
        return self.early + self.mid + self.late + self.unopened + self.infertile


def readings(counts: Counts) -> list[Reading]:
    """Ways to read dead_in_shell and the opened eggs together, the plainest first.

    People count "dead in shell" with, beside or apart from the eggs that they open, and some open the
    clears; which it was shows in what closes to the eggs set.
    """
    early, mid, late, infertile = counts.early, counts.mid, counts.late, counts.infertile
    opened = early + mid + late
    plain = Reading(early, mid, late, max(0.0, counts.in_shell - opened), infertile)
    ways = [plain]
    if counts.in_shell and infertile:
        ways.append(replace(plain, unopened=max(0.0, counts.in_shell - infertile - opened), note="unhatched"))
    if counts.in_shell and early:
        ways.append(replace(plain, unopened=max(0.0, counts.in_shell - mid - late), note="without_early"))
    if counts.in_shell and opened:
        ways.append(replace(plain, unopened=counts.in_shell, note="apart"))
    clears = sum(count(look.clear) for look in counts.looks)
    if clears and 0 < infertile + early <= clears:
        left = max(0.0, counts.in_shell - mid - late)
        ways.append(Reading(0.0, mid, late, left, 0.0, infertile, early, note="clears"))
    return ways


def seen_before(counts: Counts) -> float:
    """Eggs accounted for by the looks, the chicks and the eggs taken out, before any reading."""
    at_looks = sum(
        count(look.clear) + count(look.dead) + count(look.removed) for look in counts.looks if look.name != "hatch"
    )
    return at_looks + counts.hatched + counts.pipped + counts.removed


def choose(counts: Counts, eggs_set: float) -> tuple[Reading, float]:
    """The first reading that closes to `eggs_set` and what is left over (negative: too many).

    If none closes, the plainest one that does not exceed the eggs set, else the plainest.
    """
    before = seen_before(counts)
    ways = [(way, eggs_set - before - way.eggs) for way in readings(counts)]
    for way, left in ways:
        if left == 0:
            return way, left
    return next(((way, left) for way, left in ways if left > 0), ways[0])


def group(fate: str, eggs: float, after: float, by: float, found_at: str, egg: str = "") -> dict:
    """A group of eggs of one fate, known to have ended in (after, by] days."""
    return dict(egg=egg, eggs=eggs, fate=fate, after_day=after, by_day=by, found_at=found_at)


def groups(counts: Counts, way: Reading, left: float, stages, incubation_days: float) -> list[dict]:
    """Rows of the fates table for the eggs known by count; `left` eggs are unaccounted."""
    rows, before = [], 0.0
    opened_infertile, opened_early = way.clears_infertile, way.clears_early
    for look in counts.looks:
        if look.name == "hatch":
            continue
        clear = count(look.clear)
        # Clears that were opened are given to the first looks that found clears.
        infertile = min(clear, opened_infertile)
        early = min(clear - infertile, opened_early)
        opened_infertile, opened_early = opened_infertile - infertile, opened_early - early
        rows += [
            group("infertile", infertile, math.nan, math.nan, look.name),
            group("dead", early, 0.0, look.day, look.name),
            group("clear", clear - infertile - early, 0.0, look.day, look.name),
            group("dead", count(look.dead), before, look.day, look.name),
            group("removed", count(look.removed), before, look.day, look.name),
        ]
        # Eggs moved at a transfer at which nobody wrote a number were not looked through: dead ones may lie among them.
        before = before if look.only_moved else look.day
    end = counts.looks[-1].day
    rows += [
        group("hatched", counts.hatched - counts.culled, end, math.nan, "hatch"),
        group("culled", counts.culled, end, math.nan, "hatch"),
        group("pipped_dead", counts.pipped, max(before, min(pip_day(incubation_days), end - 1.0)), end, "hatch"),
        group("infertile", way.infertile, math.nan, math.nan, "hatch"),
        group("dead", way.unopened, before, end, "hatch"),
    ]
    for stage, after, to in stages:
        if stage in ("early", "mid", "late"):
            low, high = opened_interval(after, min(to, end), before, end)
            rows.append(group("dead", getattr(way, stage), low, high, "hatch"))
    rows.append(group("removed", counts.removed, 0.0, end, ""))
    spoilt = min(counts.spoilt, max(0.0, left))
    rows.append(group("removed", spoilt, before, end, "hatch"))
    # With the hatch not yet counted, the eggs left are those still in the incubator after the last look.
    rows.append(group("unaccounted", left - spoilt, 0.0 if counts.finished else before, math.nan, ""))
    return [row for row in rows if row["eggs"] > 0]


def opened_interval(after: float, by: float, alive_day: float, end: float) -> tuple[float, float]:
    """Interval of an egg opened at take-off and put into a stage (after, by].

    Where the stage reaches past the last look, that look narrows it. Where it ends before the last
    look, the dead egg was passed over at the looks, and the opened egg is the better witness.
    """
    low = max(after, alive_day) if by > alive_day else after
    return low, min(by, end) if min(by, end) > low else end


def tally(rows: list[dict], looks: list[Look], stages) -> dict:
    """Egg rows counted in the terms of the sheet, to compare with its counts and to take from them."""
    kinds = ("hatched", "culled", "pipped_dead", "infertile", "removed", "in_shell", "early", "mid", "late")
    found: dict = dict.fromkeys(kinds, 0.0)
    found |= {(look.name, kind): 0.0 for look in looks if look.name != "hatch" for kind in ("clear", "dead", "removed")}
    for row in rows:
        fate, look = row["fate"], row["found_at"]
        if row.get("was_clear"):
            found[look, "clear"] += row["eggs"]
        elif (look, fate) in found:
            found[look, fate] += row["eggs"]
        elif fate in ("hatched", "culled"):
            found["hatched"] += row["eggs"]
            found["culled"] += row["eggs"] if fate == "culled" else 0.0
        elif fate == "dead":
            found["in_shell"] += row["eggs"]
            stage = stage_of(row["after_day"], row["by_day"], stages)
            if stage in found:
                found[stage] += row["eggs"]
        elif fate in found:
            found[fate] += row["eggs"]
        if fate == "removed" and (look, fate) in found:
            found["removed"] += row["eggs"]
    return found
