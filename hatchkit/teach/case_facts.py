"""The statements of a case, of which a student ticks those that are true and bear on the answer.

Each is a code with its numbers (the words are in ``say``); every kind comes up whatever was planted. *Bears*: true, and
it speaks for the right answer or shuts out another. *Not*: of the case but without weight, or not what the records
hold. *Free*: true, and one may think either way, so that it is not counted.
"""

from dataclasses import dataclass

import numpy as np

from hatchkit.simulate.life import DAY, HOUR
from hatchkit.teach.reader import IN_HUMIDITY, IN_TEMPERATURE, STAGES

BEARS, NOT, FREE = "bears", "not", "free"
#: From this probability on the records show that a cause was at work.
SHOWN = 0.5
#: Degrees and hours from which a spell of the log is one to ask about.
FAR, LONG = 3.0, 3.0
#: Share of the statements about neighbours whose count is not that of the book.
WRONG = 0.35
ODD = ("probe_high", "probe_low")


@dataclass(frozen=True)
class Fact:
    """A statement: code, its numbers, whether it bears on the answer, and why it does or does not."""

    code: str
    numbers: dict
    kind: str
    why: str


def facts_of(lived, reading) -> list[Fact]:
    """The statements of a case in an order that tells nothing."""
    book = Book(lived, reading)
    rng = np.random.default_rng([int(lived.answer.seed), 12])
    found = [
        *_stages(book, rng),
        _within_luck(book),
        *_neighbours(book, rng),
        *_spells(book, rng),
        _beside_others(book, "storage", "stored_days", "long_storage", "days"),
        _beside_others(book, "age", "flock_age_weeks", "old_flock", "weeks"),
        *_humidity(book),
        _hours(book),
        *_remark(book),
        _clock(book, rng),
    ]
    found = [fact for fact in found if fact is not None]
    return [found[place] for place in rng.permutation(len(found))]


class Book:
    """The asked batch among the others, as the keeper's tables show them."""

    def __init__(self, lived, reading):
        self.lived, self.reading = lived, reading
        self.rows = lived.tables["batches"].set_index("batch")
        self.mine = self.rows.loc[lived.answer.batch]
        self.others = self.rows.drop(index=lived.answer.batch)
        self.batch = lived.answer.batch
        self.shown = {name for name, sure in reading.shown.items() if sure >= SHOWN}
        log = lived.tables["readings"]
        self.log = log[log["incubator"] == self.mine["incubator"]].set_index("time").sort_index()
        clock = lived.troubles["clock"]
        self.clock_h = clock[1] if clock and clock[0] == self.mine["incubator"] else 0

    def counts(self, stage, rows):
        """Eggs lost in a stage, in one row or in all of a table."""
        kept = [name for name in STAGES[stage] if name in rows]
        return int(np.nansum(rows[kept].astype(float).to_numpy()))

    def between(self, start, end):
        """The log from `start` to just before `end`."""
        return self.log[(self.log.index >= start) & (self.log.index < end)]


def _stages(book, rng):
    """Three stages: the one most above the other batches', the causes' own, and a drawn one."""
    eggs, all_eggs = int(book.mine["eggs_set"]), int(book.others["eggs_set"].sum())
    own = {name: book.counts(name, book.mine) for name in STAGES}
    other = {name: book.counts(name, book.others) for name in STAGES}
    above = {name: own[name] / eggs - other[name] / all_eggs for name in STAGES}
    took = book.reading.stages if book.shown else {}
    chosen = dict.fromkeys(
        [max(above, key=above.get), max(took, key=took.get, default="late"), *map(str, rng.permutation(list(STAGES)))]
    )
    for name in list(chosen)[:3]:
        share = took.get(name, 0) / max(sum(took.values()), 1e-9)
        kind = NOT if share < 0.25 else BEARS if above[name] > 0 else FREE
        yield Fact(
            "stage",
            dict(batch=book.batch, stage=name, eggs=own[name], of=eggs, others=other[name], others_of=all_eggs),
            kind,
            "where" if kind == BEARS else "elsewhere",
        )


def _within_luck(book):
    eggs, chicks = int(book.mine["eggs_set"]), int(book.mine["hatched"])
    true = abs(chicks - book.reading.usual) <= book.reading.width / 2
    kind = (BEARS if not book.shown else FREE) if true else NOT
    return Fact(
        "luck",
        dict(
            batch=book.batch,
            eggs=chicks,
            of=eggs,
            others=int(book.others["hatched"].sum()),
            others_of=int(book.others["eggs_set"].sum()),
        ),
        kind,
        "luck" if true else "no_luck",
    )


def _neighbours(book, rng):
    """What shares the hens, what shares the days, what shares nothing, and a figure that is not in the book."""
    mine = book.mine
    others = book.others
    apart = (others["set_at"] - mine["set_at"]).abs()
    local = not book.shown or any(name in (*IN_TEMPERATURE, *IN_HUMIDITY, *ODD) for name in book.shown)
    same_machine = others["incubator"] == mine["incubator"]
    near = BEARS if local else FREE
    for code, shared, kind in (
        ("same_hens", others["flock"] == mine["flock"], BEARS),
        ("same_machine", same_machine, near),
        ("same_days", ~same_machine & (apart < 12 * DAY), near),
    ):
        if shared.any():
            yield _misquoted(rng, Fact(code, _hatch(book, others.loc[apart[shared].idxmin()]), kind, code))
    far = others[(others["flock"] != mine["flock"]) & ~same_machine & (apart >= 12 * DAY)]
    if len(far):
        yield Fact("nothing_shared", _hatch(book, far.iloc[int(rng.integers(len(far)))]), NOT, "nothing_shared")
    row = others.iloc[int(rng.integers(len(others)))]
    yield _misquoted(rng, Fact("other_hatch", _hatch(book, row), NOT, "nothing_shared"), often=0.5)


def _misquoted(rng, fact, often=WRONG):
    """The statement with a count that is not in the book, so often; who does not look it up cannot know."""
    draw, off = rng.random(), int(rng.choice([-9, -7, 7, 9]))
    eggs, of = fact.numbers["eggs"], fact.numbers["of"]
    wrong = next((value for value in (eggs + off, eggs - off) if 0 <= value <= of), None)
    if draw >= often or wrong is None:
        return fact
    return Fact(fact.code, fact.numbers | {"eggs": wrong}, NOT, "not_so")


def _hatch(book, row):
    return dict(batch=book.batch, other=row.name, eggs=int(row["hatched"]), of=int(row["eggs_set"]))


def _spells(book, rng):
    """A spell of the log that did no harm, the one that did where the log has it, and one that never was."""
    planted = book.lived.answer.causes
    planted = planted[(planted["batch"] == book.batch) & planted["cause"].isin(IN_TEMPERATURE)]
    seen = []
    for entry in planted.itertuples():
        start, end = (book.mine["set_at"] + day * DAY for day in (entry.day_start, entry.day_end))
        seen.append(_spell(book, start, end, BEARS if entry.cause in book.shown else FREE, "spell"))
    last = book.mine["set_at"] + 17 * DAY
    for fault in book.lived.troubles["spells"]:
        if book.mine["set_at"] + DAY < fault.start < last:
            seen.append(_spell(book, fault.start, fault.end, NOT, "harmless"))
            break
    seen = [fact for fact in seen if fact is not None]
    yield from seen
    if len(seen) < 2:
        day, warm = int(rng.integers(3, 13)), bool(rng.random() < 0.5)
        extreme = round(float(rng.uniform(40.0, 42.8) if warm else rng.uniform(20, 32)), 1)
        hours = int(rng.integers(3, 12))
        yield Fact("spell", dict(batch=book.batch, day=day, hours=hours, extreme=extreme), NOT, "not_so")
    quiet = _quiet(book)
    if quiet is not None:
        yield Fact(
            "no_spell",
            dict(batch=book.batch),
            NOT if not quiet else BEARS if not book.shown else FREE,
            "no_spell" if quiet else "not_so",
        )


def _quiet(book):
    """Whether the log, after the first day, is nowhere more than `FAR` off for `LONG` hours; None without a log."""
    rows = book.between(book.mine["set_at"] + DAY, book.mine["taken_off_at"])["temp_c"]
    if not len(rows):
        return None
    off = ((rows - 37.2).abs() > FAR).to_numpy()
    runs = np.diff(np.flatnonzero(np.diff(np.concatenate([[0], off, [0]]))))[::2]
    return bool(max(runs, default=0) * book.lived.plan.step_minutes < 60 * LONG)


def _spell(book, start, end, kind, why):
    moved = book.clock_h * HOUR
    rows = book.between(start + moved, end + moved)
    if not len(rows):
        return None
    temps = rows["temp_c"]
    extreme = temps.loc[(temps - 37.5).abs().idxmax()]
    extreme = float(extreme if np.ndim(extreme) == 0 else extreme.iloc[0])
    day = (start + moved - book.mine["set_at"]) / DAY
    hours = max(round((end - start) / HOUR), 1)
    return Fact("spell", dict(batch=book.batch, day=int(day), hours=hours, extreme=round(extreme, 1)), kind, why)


def _beside_others(book, code, column, cause, name):
    """What a batch was like before it was set, beside the others."""
    kind = BEARS if cause in book.shown else NOT
    own, others = book.mine[column], book.others[column]
    numbers = {"batch": book.batch, name: int(own), "low": int(others.min()), "high": int(others.max())}
    return Fact(code, numbers, kind, code if kind == BEARS else f"harmless_{code}")


def _humidity(book):
    """Mean humidity before and after the transfer beside the other runs of the machine; weights where there are any."""
    for code, names, ends in (
        ("setter_rh", ("humidity_low", "humidity_high"), ("set_at", "transfer_at")),
        ("hatch_rh", ("dry_hatch",), ("transfer_at", "taken_off_at")),
    ):
        own = book.between(book.mine[ends[0]], book.mine[ends[1]])["rh_pct"]
        runs = book.others[book.others["incubator"] == book.mine["incubator"]]
        other = [book.between(row[ends[0]], row[ends[1]])["rh_pct"].mean() for _, row in runs.iterrows()]
        other = [value for value in other if value == value]
        if len(own) and other:
            kind = BEARS if book.shown & set(names) else NOT
            yield Fact(
                code,
                dict(batch=book.batch, rh=round(float(own.mean())), low=round(min(other)), high=round(max(other))),
                kind,
                "humidity" if kind == BEARS else "usual_humidity",
            )


def _hours(book):
    def day(row):
        return (row["last_hatch_at"] - row["set_at"]) / DAY

    if book.mine["last_hatch_at"] != book.mine["last_hatch_at"]:
        return None
    other = [round(day(row), 1) for _, row in book.others.iterrows() if row["last_hatch_at"] == row["last_hatch_at"]]
    if not other:
        return None
    kind = BEARS if book.shown & set(ODD) else FREE if book.shown & {"power_cut", "drift_cool", "lid_ajar"} else NOT
    return Fact(
        "last_chick",
        dict(batch=book.batch, day=round(day(book.mine), 1), low=min(other), high=max(other)),
        kind,
        "hours" if kind == BEARS else "usual_hours",
    )


def _remark(book):
    if not book.mine["notes"]:
        return
    said, planted = book.lived.troubles["remark"]
    kind = BEARS if planted and said in book.shown else FREE if planted else NOT
    yield Fact(
        "remark",
        dict(batch=book.batch, remark=str(book.mine["notes"])),
        kind,
        "remark" if planted else "wrong_remark" if said else "idle_remark",
    )


def _clock(book, rng):
    clock = book.lived.troubles["clock"]
    true = clock is not None and clock[0] == book.mine["incubator"]
    hours = abs(clock[1]) if true else int(rng.choice([1, 12, 24]))
    return Fact(
        "clock",
        dict(incubator=str(book.mine["incubator"]), hours=hours),
        FREE if true else NOT,
        "clock" if true else "not_so",
    )
