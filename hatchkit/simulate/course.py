"""From a plan of batches and faults to the tables of a season and the truth behind them."""

from copy import deepcopy
from dataclasses import dataclass, field

import numpy as np
import pandas as pd

from hatchkit.reference import contract
from hatchkit.simulate import biology, bookkeeping, machine

DAY = pd.Timedelta(days=1)


@dataclass(frozen=True)
class BatchPlan:
    """One batch as it is meant to be; times UTC. Shares and hazards are the truth behind the counts."""

    batch: str
    species: str
    incubator: str
    set_at: pd.Timestamp
    eggs_set: int
    flock: str
    flock_age_weeks: int
    fertility: float
    stored_days: float = 4.0
    storage_harm: float = 1.0  # of what so long a storage costs; well kept eggs lose less
    early_factor: float = 1.0
    rotten_share: float | None = None
    turning: tuple = (0.0, 0.0)
    look_days: dict = field(default_factory=dict)  # candle1, candle2, transfer; by species if left out
    opens_unhatched: bool = True
    opens_clears: bool = False
    egg_rows: bool = False
    weighs: str = ""  # "", "single" or "tray"
    setter_rh: float | None = None
    note: str = ""


@dataclass(frozen=True)
class SeasonPlan:
    """All that is needed to draw a season; `probe_offset_c` is reading minus truth, per incubator."""

    title: str
    timezone: str
    batches: tuple
    faults: dict = field(default_factory=dict)  # incubator -> list of machine.Fault
    probe_offset_c: dict = field(default_factory=dict)
    step_minutes: int = 30
    log_days: float | None = None  # logged so long after setting; until the take-off if left out
    p: dict = field(default_factory=biology.parameters)
    luck: dict = field(default_factory=dict)  # batch -> extra background deaths, log hazard

    def batch(self, name) -> BatchPlan:
        """The plan of one batch."""
        return next(item for item in self.batches if item.batch == name)


def run(rng, plan: SeasonPlan):
    """Draw the season.

    Returns
    -------
    (tables, eggs) : dict of DataFrame, DataFrame
        tables: batches, eggs, weights, looks, readings in hatchkit's own columns, times UTC;
        eggs: the true course of every egg with what the person saw of it.
    """
    wide = biology.birds()
    parts = [
        _run_batch(own, plan, batch, wide.loc[batch.species])
        for own, batch in zip(rng.spawn(len(plan.batches)), plan.batches, strict=True)
    ]
    eggs = [part["eggs"] for part in parts]
    weights = [part["weights"] for part in parts if part["weights"] is not None]
    tables = {
        "batches": _batches_table([part["row"] for part in parts]),
        "eggs": _eggs_table([part["sheet"] for part in parts if part["sheet"] is not None]),
        "weights": pd.concat(weights, ignore_index=True) if weights else contract.empty("weights"),
        "readings": _readings_table([part["readings"] for part in parts]),
    }
    tables["looks"] = looks_of(tables["batches"])
    return tables, pd.concat(eggs, ignore_index=True)


def _run_batch(rng, plan, batch, species):
    moments, air, eggs, seen, taken_off = draw_batch(rng, plan, batch, species)
    row = batch_row(batch, moments, taken_off, eggs, seen, species)
    stop = taken_off + pd.Timedelta(hours=1) if plan.log_days is None else batch.set_at + plan.log_days * DAY
    shown = air[air["time"] <= stop]
    shown = machine.logged(rng, shown, offset_c=plan.probe_offset_c.get(batch.incubator, 0.0))
    return dict(
        row=row,
        eggs=_truth(batch, eggs, seen),
        sheet=_sheet(batch, eggs, seen),
        weights=_weights(rng, batch, eggs, seen, moments, species),
        readings=shown.assign(incubator=batch.incubator),
    )


def draw_batch(rng, plan, batch, species, *, drawn_as=None):
    """Moments of the looks, air, eggs, what was seen of them, and when the hatch was taken off.

    Parameters
    ----------
    drawn_as : SeasonPlan, optional
        The air takes as much chance from `rng` as under this plan, so that the eggs of the two plans
        are the same eggs (a lid ajar needs draws of its own).
    """
    days = batch.look_days or {
        "candle1": species["candle1_day"],
        "candle2": species["candle2_day"],
        "transfer": species["transfer_day"],
    }
    moments = {name: _by_day(batch.set_at + day * DAY, rng) for name, day in days.items()}
    setter_rh = batch.setter_rh or (species["setter_rh_low_pct"] + species["setter_rh_high_pct"]) / 2
    last = batch.set_at + max(species["incubation_days"] + 3.5, plan.log_days or 0) * DAY
    setup = machine.Run(
        set_at=batch.set_at,
        transfer_at=moments.get("transfer", batch.set_at + species["transfer_day"] * DAY),
        end=last,
        setter_c=species["setter_c"],
        hatcher_c=species["hatcher_c"],
        setter_rh=setter_rh,
        hatcher_rh=(species["hatcher_rh_low_pct"] + species["hatcher_rh_high_pct"]) / 2 - 4,
        opened=_openings(rng, batch, moments),
    )

    def air_of(rng, plan):
        faults = [f for f in plan.faults.get(batch.incubator, []) if f.end > batch.set_at and f.start < last]
        return machine.trace(rng, setup, step_minutes=plan.step_minutes, faults=faults, p=plan.p)

    own = rng if drawn_as is None else deepcopy(rng)
    air = air_of(own, plan)
    if drawn_as is not None:
        air_of(rng, drawn_as)
    age = ((air["time"] - batch.set_at) / DAY).to_numpy()
    climate = biology.egg_climate(
        air["air_c"].to_numpy(), air["rh_pct"].to_numpy(), age_days=age, species=species, p=plan.p
    )
    taken_off = _taken_off(rng, batch, climate, species, plan.p)
    off_day = (taken_off - batch.set_at) / DAY
    figures = plan.p
    if batch.batch in plan.luck:
        figures = figures | {
            "batch_sd": 0.0,
            "death_share": min(0.6, figures["death_share"] * np.exp(plan.luck[batch.batch])),
        }
    eggs = biology.draw_eggs(
        rng,
        count=batch.eggs_set,
        species=species,
        climate=climate,
        p=figures,
        fertility=batch.fertility,
        stored_days=batch.stored_days,
        storage_harm=batch.storage_harm,
        early_factor=batch.early_factor,
        rotten_share=batch.rotten_share,
        turning=batch.turning,
        taken_off_day=off_day,
    )
    look_days = {name: (moment - batch.set_at) / DAY for name, moment in moments.items()}
    seen = bookkeeping.candle(
        rng, eggs, look_days=look_days, species=species, p=plan.p, opened_clears=batch.opens_clears
    )
    return moments, air, eggs, seen, taken_off


def _by_day(moment, rng):
    """A look is made at a waking hour, on a whole quarter of an hour."""
    return moment.floor("D") + pd.Timedelta(minutes=15 * int(rng.integers(60, 76)))


def _openings(rng, batch, moments):
    looks = [(moment, 4.5) for moment in moments.values()]
    days = np.arange(2.4, 25, 2.5) + rng.uniform(-0.3, 0.3, 10)
    water = [
        (batch.set_at + day * DAY, 0.8)
        for day in days
        if day < max((m - batch.set_at) / DAY for m in moments.values()) - 0.5
    ]
    return tuple(looks + water)


def _taken_off(rng, batch, climate, species, p):
    """When the person ends the hatch: half a day to a day after most should be out, at a waking hour."""
    after = climate["age_days"] > 0
    done = np.cumsum(np.where(after, climate["speed"], 0)) * climate["step_hours"]
    place = np.searchsorted(done, biology.hatching_hours(species, batch.stored_days, p))
    due = float(np.append(climate["age_days"], np.inf)[place])
    day = min(max(due, species["incubation_days"] - 1) + rng.uniform(0.75, 1.1), species["incubation_days"] + 2.6)
    moment = (batch.set_at + day * DAY).floor("h")
    return moment.replace(hour=min(max(moment.hour, 6), 19))


def batch_row(batch, moments, taken_off, eggs, seen, species):
    """The row of the batch sheet: plan, moments, counts."""
    limits = (
        (7, 14) if batch.species == "chicken" else (species["incubation_days"] / 3, species["incubation_days"] * 2 / 3)
    )
    hatched = eggs.loc[seen["outcome"].isin(["hatched", "culled"]), "hatched_day"]
    first, last = (
        (batch.set_at + pd.Timedelta(days=round(d, 2)) for d in (hatched.min(), hatched.max()))
        if len(hatched)
        else (pd.NaT, pd.NaT)
    )
    return {
        "batch": batch.batch,
        "species": batch.species,
        "incubator": batch.incubator,
        "set_at": batch.set_at,
        "eggs_set": batch.eggs_set,
        "stored_days": batch.stored_days,
        "flock": batch.flock,
        "flock_age_weeks": batch.flock_age_weeks,
        "candle1_at": moments.get("candle1"),
        "candle2_at": moments.get("candle2"),
        "transfer_at": moments.get("transfer"),
        "taken_off_at": taken_off,
        "first_hatch_at": first.floor("h"),
        "last_hatch_at": last.ceil("h"),
        "notes": batch.note,
    } | bookkeeping.count_up(seen, eggs, limits=limits, opens_unhatched=batch.opens_unhatched)


def _truth(batch, eggs, seen):
    return pd.concat([pd.Series(batch.batch, eggs.index, name="batch"), eggs, seen.drop(columns="egg")], axis=1)


def _sheet(batch, eggs, seen):
    if not batch.egg_rows:
        return None
    tray, row, col = biology.tray_places(len(eggs))
    return pd.DataFrame(
        {
            "batch": batch.batch,
            "egg": eggs["egg"].astype(str),
            "tray": tray.astype(str),
            "row": row.astype(float),
            "col": col.astype(float),
            "weight_g": eggs["weight_g"].round(1),
            "candle1": seen["candle1"],
            "candle2": seen["candle2"],
            "transfer": seen["transfer"],
            "outcome": seen["outcome"],
            "stage_day": seen["stage_day"],
            "notes": "",
        }
    )


def _weights(rng, batch, eggs, seen, moments, species):
    if not batch.weighs:
        return None
    times = [batch.set_at, *moments.values()]
    days = [(moment - batch.set_at) / DAY for moment in times]
    return bookkeeping.weighings(
        rng,
        eggs,
        seen,
        batch=batch.batch,
        moments=times,
        days=days,
        transfer_day=species["transfer_day"],
        single=batch.weighs == "single",
    )


def _batches_table(rows: list) -> pd.DataFrame:
    kinds = {
        "count": lambda values: pd.array([pd.NA if _none(v) else int(v) for v in values], dtype="Int64"),
        "time": lambda values: pd.DatetimeIndex(pd.to_datetime(values, utc=True)),
        "number": lambda values: np.array([np.nan if _none(v) else float(v) for v in values]),
        "text": lambda values: np.array(["" if _none(v) else v for v in values], dtype=object),
    }
    described = contract.described("batches")
    return pd.DataFrame({name: kinds[kind]([row.get(name) for row in rows]) for name, _, kind in described})


def _none(value) -> bool:
    return value is None or value != value


def _eggs_table(sheets):
    order = contract.columns("eggs")
    table = pd.concat(sheets, ignore_index=True) if sheets else pd.DataFrame(columns=order)
    table = table.reindex(columns=order)
    table[["file", "sheet"]] = table[["file", "sheet"]].astype(object).fillna("")
    return table.astype({"sheet_row": "Int64"} | dict.fromkeys(("row", "col", "weight_g", "stage_day"), float))


def _readings_table(parts):
    table = pd.concat(parts, ignore_index=True)
    table["temp_logged_c"] = table["temp_c"]
    table["probe"], table["doubt"] = "", ""
    table["file"] = "sensors/" + table["incubator"].astype(str) + ".csv"
    kept = [name for name in contract.columns("readings") if name in table]
    return table[kept].sort_values(["incubator", "time"], ignore_index=True)


def looks_of(batches: pd.DataFrame) -> pd.DataFrame:
    """The table of looks that the batch rows imply (candlings, transfer, take-off)."""
    rows = []
    for _, row in batches.iterrows():
        order = 0
        for name, number in (("candle1", 1), ("candle2", 2), ("transfer", 3), ("hatch", 0)):
            when = row["taken_off_at"] if name == "hatch" else row[f"{name}_at"]
            if pd.isna(when):
                continue
            order += 1
            clear, dead = (row[f"clear{number}"], row[f"dead{number}"]) if number else (pd.NA, pd.NA)
            rows.append((row["batch"], order, name, when, (when - row["set_at"]) / DAY, clear, dead, pd.NA))
    columns = ["batch", "look", "name", "looked_at", "day", "clear", "dead", "removed"]
    table = pd.DataFrame(rows, columns=columns).astype(dict.fromkeys(("look", "clear", "dead", "removed"), "Int64"))
    return table.assign(looked_at=pd.to_datetime(table["looked_at"], utc=True))
