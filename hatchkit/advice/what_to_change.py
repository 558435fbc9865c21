"""Settings and habits to change for the next set, each with its reason."""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit import reference
from hatchkit.advice.cause_weights import UNNAMED
from hatchkit.advice.reasons import WORTH, item_facts
from hatchkit.climate.ranges import limits
from hatchkit.problems import HatchkitError

COLUMNS = ["change", "facts"]

#: Humidity is moved only by at least this much (points), steps of the trade being 1-2 % a batch.
RH_STEP = 3.0

#: A setting this far from the wanted temperature is told (degC).
TEMPERATURE_STEP = 0.3

#: A look closer than this to another adds nothing (days).
LOOK_APART = 3.0

#: Only so many batches are asked which records they lack, the last ones set.
ASKED = 4

#: At most so many lines are about records, and about causes.
RECORDS, ACTIONS = 2, 3

#: A cause is acted against from this weight on, over a season from so many eggs.
ACT_FROM, LEAST_EGGS = 0.2, 1.0


def changes(season, species, *, batch=None) -> pd.DataFrame:
    """What to change, from what went wrong: causes first, then settings proved off, record-keeping last.

    Parameters
    ----------
    season : Season
    species : str
    batch : str, optional
        The batch whose causes are acted against; the species' whole season if left out, by the eggs that would be won.

    Returns
    -------
    DataFrame
        change (code of a message ``changed_<code>``), facts. Empty where nothing calls for a change.
    """
    mine = season.batches[season.batches["species"] == species]
    if mine.empty:
        return _table([])
    told = _against(season, mine, batch)
    rows = [row for _, row in told]
    done = {cause for cause, _ in told}
    rows += [row for cause, find in _SETTINGS for row in find(season, species, mine) if not done & cause]
    rows += [row for find in _RECORDS for row in find(season, species, mine)][:RECORDS]
    return _table(rows)


def _table(rows) -> pd.DataFrame:
    return pd.DataFrame(list(rows), columns=COLUMNS, dtype=object)


def _against(season, mine, batch) -> list[tuple]:
    """(cause, change) against the causes that have most weight in a batch, or cost most eggs in the season."""
    from hatchkit.advice.account import account, of_causes
    from hatchkit.advice.causes import CONFIDENT, likely_causes, season_causes

    if batch is not None:
        try:
            one = likely_causes(season, batch)
        except HatchkitError:
            return []
        table = one.table[one.table["cause"].isin(_to_act(one))].head(ACTIONS)
        found = [(row["cause"], row["eggs_lost"], row["share"], [str(batch)]) for row in table.to_dict("records")]
        causes = {str(batch): one}
    else:
        names = set(mine["batch"].astype(str))
        causes = {name: one for name, one in season_causes(season).items() if name in names}
        table = of_causes(account(causes))
        table = table[(table["eggs"] >= LEAST_EGGS) & (table["firmest"] >= ACT_FROM)].head(ACTIONS)
        found = [
            (row["key"], row["eggs"], row["firmest"], _where(causes, row["key"])) for row in table.to_dict("records")
        ]
    sides = reference.load("causes").set_index("cause")["side"]
    out = []
    for cause, eggs, share, where in found:
        machine = next((season.batch(name).get("incubator") for name in where), None)
        here = machine if sides[cause] in ("machine", "hatch") and isinstance(machine, str) else None
        facts = dict(
            cause=cause,
            machine=here,
            eggs=eggs,
            where=where,
            share=share,
            sure="very" if share >= CONFIDENT else "probable" if share >= 0.5 else "several",
            shown=_shown(causes[where[0]], cause) if where else None,
            target=_target(season, cause, mine, machine),
        )
        out.append((cause, ("cause", facts)))
    return out


def _shown(one, cause):
    """What the records show of a cause: the item that speaks for it most; else the first thing that fits, or None."""
    known = one.sums[(one.sums["cause"] == cause) & (one.sums["found"] == "known")]
    known = known[known["factor"] >= WORTH].sort_values("factor", ascending=False, kind="stable")
    if len(known):
        return "item", item_facts(one.evidence.set_index("item", drop=False).loc[known["part"].iloc[0]])
    return next(iter(one.table.set_index("cause").at[cause, "fits"]), None)


def _to_act(one) -> set:
    """Causes of one batch that are worth an action: those with weight, and both of two that are told together."""
    table = one.table[~one.table["cause"].isin(UNNAMED)]
    found = set(table.loc[table["share"] >= ACT_FROM, "cause"])
    return found | (set(one.pairs.loc[0, ["first", "second"]]) if one.verdict == "two causes" else set())


def _where(causes, cause) -> list[str]:
    """Batches in which a cause has weight, most first."""
    shares = {name: float(one.table.set_index("cause").at[cause, "share"]) for name, one in causes.items()}
    return sorted((name for name, share in shares.items() if share >= ACT_FROM), key=lambda name: -shares[name])


def _target(season, cause, mine, machine):
    """The figure to go to on this machine, as (code, facts), where the cause has one; else None."""
    species = season.species_table.loc[mine["species"].iloc[0]]
    if cause in ("warm_throughout", "cool_throughout", "heat_spell", "cold_spell"):
        named = machine if isinstance(machine, str) else None
        return "temperature", dict(wanted=_wanted(season, species, machine), machine=named)
    if cause in ("too_dry", "too_humid"):
        needed = list(_humidity(season, mine["species"].iloc[0], mine))
        return ("humidity", dict(to=needed[0][1]["to"])) if needed else _range(species, "setter")
    if cause == "dry_hatch":
        return _range(species, "hatcher")
    return ("storage", dict(best=float(species["storage_best_days"]))) if cause == "long_storage" else None


def _range(species, where):
    low, high = (float(species[f"{where}_rh_{side}_pct"]) for side in ("low", "high"))
    return "humidity_range", dict(low=low, high=high, where=where)


def _wanted(season, species, machine) -> float:
    """The temperature to hold with this machine's kind of air: in still air the middle of its range."""
    air = season.settings.get("incubators", {}).get(str(machine), {}).get("air", "fan")
    low, high = limits(species, stage="setting", air=air)[0]
    return float(low + high) / 2 if air == "still" else float(species["setter_c"])


def _probe(season, species, mine):
    """A probe that the hatching hours contradict."""
    from hatchkit.climate.probes import probe_truth

    if season.readings.empty:
        return
    truth = probe_truth(season)
    truth = truth[truth["incubator"].isin(mine["incubator"])].drop_duplicates("incubator")
    for row in truth.to_dict("records"):
        if row["verdict"].startswith("reads"):
            bias = row["clock_bias_c"]
            # As season.toml wants it: with a point in every language.
            off = dict(way="high" if bias > 0 else "low", off=round(abs(bias), 1), write=f"{-bias:+.1f}", right=37.5)
            yield "probe_off", dict(machine=row["incubator"], batches=row["clock_batches"], **off)


def _unchecked(season, species, mine):
    """A probe that nobody ever checked, or no log at all."""
    from hatchkit.climate.probes import probe_truth

    if season.readings.empty:
        yield "no_log", {}
        return
    truth = probe_truth(season)
    truth = truth[truth["incubator"].isin(mine["incubator"]) & ~truth["checked"].astype(bool)]
    for row in truth.drop_duplicates("incubator").to_dict("records"):
        if not row["verdict"].startswith("reads"):
            yield "probe_unchecked", dict(machine=row["incubator"], right=37.5)


def _temperature(season, species, mine):
    """A machine whose everyday mean is off the species' temperature."""
    from hatchkit.climate.probes import steadiness

    if season.readings.empty:
        return
    table, figures = steadiness(season), season.species_table.loc[species]
    for row in table[table["incubator"].isin(mine["incubator"])].to_dict("records"):
        wanted = _wanted(season, figures, row["incubator"])
        if abs(row["mean_c"] - wanted) >= TEMPERATURE_STEP:
            gap = row["mean_c"] - wanted
            facts = dict(off=abs(gap), way="high" if gap > 0 else "low", mean=row["mean_c"])
            yield "temperature", dict(machine=row["incubator"], wanted=wanted, **facts)


def _humidity(season, species, mine):
    """Humidity for the wanted water loss, from the conductance of this season's own eggs."""
    from hatchkit.climate.water_loss import batch_water_loss

    if season.weights.empty:
        return
    table = batch_water_loss(season.with_batches(mine))
    table = table[table["rh_next_pct"].notna()]
    if table.empty:
        return
    now, to = table["rh_pct"].median(), float(np.clip(table["rh_next_pct"].median(), 20, 85))
    if abs(now - to) >= RH_STEP:
        low, high = (float(table[f"target_{side}"].iloc[0]) for side in ("low", "high"))
        loss = float(table["projected_share"].median())
        yield "humidity", dict(to=to, now=now, loss=loss, low=low, high=high, batches=len(table))


def _storage(season, species, mine):
    best = season.species_table.at[species, "storage_best_days"]
    days = mine["stored_days"].dropna().astype(float)
    if (days > best).any():
        over = int((days > best).sum())
        yield "storage", dict(best=best, over=over, known=len(days), longest=float(days.max()))


def _candling(season, species, mine):
    """A look that would have told deaths before an excursion from those after it."""
    from hatchkit.climate.excursions import find_excursions
    from hatchkit.losses.windows import candling_windows

    if season.readings.empty:
        return
    found = find_excursions(season.with_batches(mine))
    # Openings and the eggs going in are no accidents: nobody can look just before them.
    found = found[found["notable"] & found["level"].isin(["alarm", "serious"])]
    windows = candling_windows(season)
    days = {}
    for row in found.to_dict("records"):
        day = _look_between(windows[windows["batch"] == row["batch"]], row["day_start"], row["day_end"])
        if day is not None:
            days.setdefault(row["event"], day)
    if days:
        yield "candling", dict(day=float(np.round(np.median(list(days.values())))), times=len(days))


def _look_between(windows, start, end):
    """Two days after the excursion, if no look of this batch came near; None where one did."""
    look = end + 2.0
    inside = windows[(windows["day_start"] <= start) & (windows["day_end"] >= look + LOOK_APART)]
    return None if inside.empty or inside["name"].iloc[0] == "hatch" else look


def _records(season, species, mine):
    """Records that were missing most and would have weighed most in naming a cause, as things to write down."""
    from hatchkit.advice.evidence import gather

    names = [name for name in mine.sort_values("set_at")["batch"].astype(str) if name in gather(season).values.index]
    values = gather(season).values.loc[names[-ASKED:]]
    items = reference.load("evidence_items").set_index("item")["write_down"].dropna()
    if season.readings.empty:  # said already, in one line of its own
        items = items[~items.str.startswith(("temperature", "humidity"))]
    missing = values.isna().mean()
    worth = (missing * _most_told()).reindex(items.index).dropna()
    for need in dict.fromkeys(items[worth[worth > 0].sort_values(ascending=False, kind="stable").index]):
        share = missing[items.index[items == need]].max()
        yield "record", dict(need=need, lacking=round(share * len(values)), asked=len(values))


def _most_told() -> pd.Series:
    """How much an item can say at most: its largest log factor for any cause, summed over causes."""
    from hatchkit.advice.evidence import links

    told = {}
    for rows in links().values():
        for item, _, _, logs, _ in rows:
            told[item] = told.get(item, 0.0) + float(logs.max())
    return pd.Series(told)


#: Settings proved off, with the causes that say the same.
_SETTINGS = [
    (set(), _probe),
    ({"warm_throughout", "cool_throughout"}, _temperature),
    ({"too_dry", "too_humid"}, _humidity),
    ({"long_storage"}, _storage),
]

_RECORDS = [_unchecked, _candling, _records]
