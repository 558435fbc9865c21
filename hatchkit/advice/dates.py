"""The calendar of a set: when to collect, set, candle, transfer and look for chicks.

Day 0 is the hour of setting. Every day comes from the species table, moved by the storage delay.
"""

from __future__ import annotations

import pandas as pd

from hatchkit import reference

#: First to last chick of an even batch: 24 h is held to be good (Meijerhof 2006).
WINDOW_HOURS = 24.0

#: The development clock is no surer than this even with perfect temperatures (commercial pulling times
#: of 500 to 526 h for the same bird).
CLOCK_HOURS = 8.0

#: Chicks dry for about this long before they are moved (common practice, no source).
DRYING_HOURS = 12.0

#: Unhatched eggs are given two days more (chicken: to day 23, quoted extension texts).
WAIT_DAYS = 2.0

#: The storage rule of thumb counts from eggs about this old, as the species' length does.
FRESH_DAYS = 3.0

CALENDAR = ["step", "starts", "ends", "day", "facts", "source", "sure"]


def hatch_middle_days(species: pd.Series, stored_days: float) -> float:
    """Expected middle of the hatch in days since setting.

    incubation_days + delay per stored day x (stored days - `FRESH_DAYS`), not below the species' length.
    """
    delay = species["storage_delay_hours_per_day"] / 24
    return float(species["incubation_days"] + delay * max(stored_days - FRESH_DAYS, 0.0))


def clock_earlier_hours(species: pd.Series, stored_days: float) -> float:
    """Hours by which the hatch clock (`climate.clock`) puts the middle of the hatch before `hatch_middle_days`."""
    from hatchkit.climate.clock import due_hours

    return 24 * hatch_middle_days(species, stored_days) - due_hours(species, max(stored_days, FRESH_DAYS))[0]


def calendar(species: pd.Series, set_at: pd.Timestamp, *, stored_days: float = 4.0) -> pd.DataFrame:
    """Every step of one set with its hours.

    Parameters
    ----------
    species : Series
        One row of the species table.
    set_at : Timestamp, tz-aware
        Hour at which the eggs go in.
    stored_days : float
        How long the eggs will have been kept on average.

    Returns
    -------
    DataFrame
        step, starts, ends, day, facts (of its words, ``step_<step>`` and ``why_<step>``), source, sure; by time.
    """
    best, most = (float(species[f"storage_{name}_days"]) for name in ("best", "max"))
    middle = hatch_middle_days(species, stored_days)
    reach = (WINDOW_HOURS / 2 + CLOCK_HOURS) / 24
    # Texts and breeds that print more days than the table takes: the last eggs are given as long.
    last = max(middle + reach, float(species.get("days_high", 0.0)))
    rh = dict(low=species["hatcher_rh_low_pct"], high=species["hatcher_rh_high_pct"])
    first = dict(window_h=WINDOW_HOURS, doubt_h=CLOCK_HOURS, earlier_h=clock_earlier_hours(species, stored_days))
    days = [
        ("collect", -best, dict(best=best, most=most)),
        ("machine_on", -1.0, {}),
        ("warm_up", -0.5, {}),
        ("set", 0.0, {}),
        ("candle1", species["candle1_day"], {}),
        ("candle2", species["candle2_day"], {}),
        ("care_day", species["embryo_care_day"], {}),
        ("transfer", species["transfer_day"], rh),
        ("first_hatch", middle - reach, first),
        ("last_hatch", last, dict(longest=None if last == middle + reach else last)),
        ("take_off", last + DRYING_HOURS / 24, dict(drying_h=DRYING_HOURS)),
        ("open_unhatched", last + WAIT_DAYS, {}),
    ]
    rows = pd.DataFrame(days, columns=["step", "day", "facts"]).astype({"day": float})
    rows = rows.merge(reference.load("calendar_steps"), on="step", validate="one_to_one")
    return _table(pd.concat([rows, *_cooling(species)], ignore_index=True), set_at)


def _cooling(species) -> list[pd.DataFrame]:
    """Cooling and spraying of waterfowl eggs, as far as it was tried (``reference/handling.csv``)."""
    own = reference.load("handling").query("item == 'cooling'")
    own = own[own["species"] == species.name]
    facts = [dict(species=str(species.name), water_c=20.0) for _ in range(len(own))]
    rows = pd.DataFrame({"step": "cooling", "day": own["day_from"].astype(float), "facts": facts, "hours": 1.0})
    return [rows.assign(source=own["source"], sure=own["sure"])] if len(own) else []


def _table(table, set_at) -> pd.DataFrame:
    # Wall clock arithmetic through UTC: a day is 24 h also when the clocks change.
    start = pd.Timestamp(set_at)
    table["starts"] = [
        (start.tz_convert("UTC") + pd.Timedelta(days=float(day))).round("h").tz_convert(start.tz)
        for day in table["day"]
    ]
    table["ends"] = table["starts"] + pd.to_timedelta(table.pop("hours"), unit="h")
    return table.sort_values("day", kind="stable").reset_index(drop=True)[CALENDAR]
