"""Settings and habits to change for the next set, each with its reason."""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit import reference
from hatchkit.advice import change_words as words

COLUMNS = ["what", "now", "to", "why", "how_sure"]

#: Humidity is moved only by at least this much (points), steps of the trade being 1-2 % a batch.
RH_STEP = 3.0

#: A setting this far from the wanted temperature is told (degC).
TEMPERATURE_STEP = 0.3

#: A look closer than this to another adds nothing (days).
LOOK_APART = 3.0

#: Only so many batches are asked which records they lack, the last ones set.
ASKED = 4

#: At most so many records are named as worth keeping.
RECORDS = 3


def changes(season, species) -> pd.DataFrame:
    """What the season's records call for: probe, temperature, humidity, storage, candling day, records.

    Returns
    -------
    DataFrame
        what, now, to, why, how_sure. Empty where nothing calls for a change.
    """
    mine = season.batches[season.batches["species"] == species]
    rows = [] if mine.empty else [row for find in _FINDERS for row in find(season, species, mine)]
    return pd.DataFrame(rows, columns=COLUMNS, dtype=object)


def _probe(season, species, mine):
    """A probe that the hatching hours contradict, or one that was never checked."""
    from hatchkit.climate.probes import probe_truth

    if season.readings.empty:
        yield words.no_log()
        return
    truth = probe_truth(season)
    truth = truth[truth["incubator"].isin(mine["incubator"])].drop_duplicates("incubator")
    for row in truth.to_dict("records"):
        if row["verdict"].startswith("eggs say"):
            yield words.probe_off(row)
        elif not row["checked"]:
            yield words.probe_unchecked(row)


def _temperature(season, species, mine):
    """A machine whose everyday mean is off the species' temperature."""
    from hatchkit.climate.probes import steadiness

    if season.readings.empty:
        return
    table, wanted = steadiness(season), season.species_table.at[species, "setter_c"]
    for row in table[table["incubator"].isin(mine["incubator"])].to_dict("records"):
        still = season.settings.get("incubators", {}).get(str(row["incubator"]), {}).get("air") == "still"
        if not still and abs(row["mean_c"] - wanted) >= TEMPERATURE_STEP:
            yield words.temperature(row, wanted)


def _humidity(season, species, mine):
    """Humidity for the wanted water loss, from the conductance of this season's own eggs."""
    from hatchkit.climate.water_loss import batch_water_loss

    if season.weights.empty:
        yield words.no_weights()
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
    from hatchkit.advice.evidence import evidence, gather

    last = mine.sort_values("set_at").tail(ASKED)
    asked = last["batch"]
    gathered = gather(season.with_batches(last))
    items = reference.load("evidence_items").set_index("item")
    told_already = (["temperature", "humidity"] if season.readings.empty else []) + (
        ["weights"] if season.weights.empty else [])
    wanted = items["write_down"][[not str(text).startswith(tuple(told_already)) for text in items["write_down"]]]
    missing = pd.concat([evidence(gathered, batch) for batch in asked])
    missing = missing[missing["level"].isna() & missing["item"].isin(wanted.dropna().index)]
    missing = missing.groupby("item").size() / len(asked)
    worth = (missing * _most_told().reindex(missing.index)).dropna()
    for need in wanted[worth.sort_values(ascending=False, kind="stable").index].unique()[:RECORDS]:
        share = missing[wanted[missing.index] == need].max()
        yield words.record(need, round(share * len(asked)), len(asked))


def _most_told() -> pd.Series:
    """How much an item can say at most: the largest log factor it can have for any cause, summed over causes."""
    from hatchkit.advice.evidence import factor_table

    kinds = reference.load("evidence_items").set_index("item")["kind"]
    links = reference.load("cause_evidence")
    most = np.log(factor_table().max(axis=1))
    links["told"] = [
        most[(kinds[item], profile)] for item, profile in zip(links["item"], links["profile"], strict=True)
    ]
    return links.groupby("item")["told"].sum()


_FINDERS = [_probe, _temperature, _humidity, _storage, _candling, _records]
