"""Settings and habits to change for the next set, each with its reason."""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit import reference
from hatchkit.advice import change_words as words
from hatchkit.advice.cause_words import WORTH, item_words
from hatchkit.advice.weighing import UNNAMED
from hatchkit.climate.ranges import limits
from hatchkit.problems import HatchkitError
from hatchkit.units import worded

COLUMNS = ["what", "now", "to", "why", "how_sure"]

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


def changes(season, species, *, batch=None, unit="C") -> pd.DataFrame:
    """What to change, from what went wrong: causes first, then settings proved off, record-keeping last.

    Parameters
    ----------
    season : Season
    species : str
    batch : str, optional
        The batch whose causes are acted against; the species' whole season if left out, by the eggs that would be won.
    unit : {"C", "F"}

    Returns
    -------
    DataFrame
        what, now, to, why, how_sure. Empty where nothing calls for a change.
    """
    mine = season.batches[season.batches["species"] == species]
    if mine.empty:
        return _table([], unit)
    told = _against(season, mine, batch)
    rows = [row for _, row in told]
    done = {cause for cause, _ in told}
    rows += [row for cause, find in _SETTINGS for row in find(season, species, mine) if not done & cause]
    rows += [row for find in _RECORDS for row in find(season, species, mine)][:RECORDS]
    return _table(rows, unit)


def _table(rows: list[dict], unit: str) -> pd.DataFrame:
    table = pd.DataFrame(rows, columns=COLUMNS, dtype=object).map(lambda text: worded(text, unit))
    table.attrs["said"] = [row["said"] for row in rows]
    return table


def _against(season, mine, batch) -> list[tuple]:
    """(cause, change) against the causes that have most weight in a batch, or cost most eggs in the season."""
    from hatchkit.advice.account import account, of_causes
    from hatchkit.advice.causes import likely_causes, season_causes

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
            (row["cause"] if "cause" in row else row["key"], row["eggs"], row["firmest"], _where(causes, row["key"]))
            for row in table.to_dict("records")
        ]
    check = reference.load("causes").set_index("cause")
    out = []
    for cause, eggs, share, where in found:
        machine = next((season.batch(name).get("incubator") for name in where), None)
        shown = _shown(causes[where[0]], cause) if where else ""
        out.append(
            (
                cause,
                words.against_cause(
                    check.loc[cause], shown, eggs, share, where, machine, _target(season, cause, mine, machine)
                ),
            )
        )
    return out


def _shown(one, cause) -> str:
    """What the records show of a cause: the item that speaks for it most; else the first thing that fits."""
    known = one.sums[(one.sums["cause"] == cause) & one.sums["found"].str.startswith("known")]
    known = known[known["factor"] >= WORTH].sort_values("factor", ascending=False, kind="stable")
    if len(known):
        return item_words(one.evidence.set_index("item", drop=False).loc[known["part"].iloc[0]])
    return one.table.set_index("cause").at[cause, "fits"].split(";")[0]


def _to_act(one) -> set:
    """Causes of one batch that are worth an action: those with weight, and both of two that are told together."""
    table = one.table[~one.table["cause"].isin(UNNAMED)]
    found = set(table.loc[table["share"] >= ACT_FROM, "cause"])
    return found | (set(one.pairs.loc[0, ["first", "second"]]) if one.verdict == "two causes" else set())


def _where(causes, cause) -> list[str]:
    """Batches in which a cause has weight, most first."""
    shares = {name: float(one.table.set_index("cause").at[cause, "share"]) for name, one in causes.items()}
    return sorted((name for name, share in shares.items() if share >= ACT_FROM), key=lambda name: -shares[name])


def _target(season, cause, mine, machine) -> str:
    """The figure to go to on this machine, where the cause has one."""
    species = season.species_table.loc[mine["species"].iloc[0]]
    if cause in ("warm_throughout", "cool_throughout", "heat_spell", "cold_spell"):
        return words.wanted_temperature(_wanted(season, species, machine), machine)
    if cause in ("too_dry", "too_humid"):
        needed = [row for row in _humidity(season, mine["species"].iloc[0], mine) if row["what"] == words.HUMIDITY]
        return needed[0]["to"] if needed else words.humidity_range(species, "setter")
    if cause == "dry_hatch":
        return words.humidity_range(species, "hatcher")
    return words.storage_days(species) if cause == "long_storage" else ""


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
            yield words.probe_off(row)


def _unchecked(season, species, mine):
    """A probe that nobody ever checked, or no log at all."""
    from hatchkit.climate.probes import probe_truth

    if season.readings.empty:
        yield words.no_log()
        return
    truth = probe_truth(season)
    truth = truth[truth["incubator"].isin(mine["incubator"]) & ~truth["checked"].astype(bool)]
    for row in truth.drop_duplicates("incubator").to_dict("records"):
        if not row["verdict"].startswith("reads"):
            yield words.probe_unchecked(row)


def _temperature(season, species, mine):
    """A machine whose everyday mean is off the species' temperature."""
    from hatchkit.climate.probes import steadiness

    if season.readings.empty:
        return
    table, figures = steadiness(season), season.species_table.loc[species]
    for row in table[table["incubator"].isin(mine["incubator"])].to_dict("records"):
        wanted = _wanted(season, figures, row["incubator"])
        if abs(row["mean_c"] - wanted) >= TEMPERATURE_STEP:
            yield words.temperature(row, wanted)


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
        yield words.humidity(now, to, table)


def _storage(season, species, mine):
    best = season.species_table.at[species, "storage_best_days"]
    days = mine["stored_days"].dropna().astype(float)
    if (days > best).any():
        yield words.storage(int((days > best).sum()), len(days), float(days.max()), best)


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
        yield words.candling(float(np.round(np.median(list(days.values())))), len(days))


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
        yield words.record(need, round(share * len(values)), len(values))


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
