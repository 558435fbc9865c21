"""The calendar of a set: when to collect, set, candle, transfer and look for chicks.

Day 0 is the hour of setting. Every day comes from the species table, moved by the storage delay.
"""

from __future__ import annotations

import pandas as pd

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

CALENDAR = ["step", "what", "starts", "ends", "day", "why", "source", "sure"]


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


def calendar(species: pd.Series, set_at: pd.Timestamp, *, stored_days: float = 4.0, candle_days=None) -> pd.DataFrame:
    """Every step of one set with its hours.

    Parameters
    ----------
    species : Series
        One row of the species table.
    set_at : Timestamp, tz-aware
        Hour at which the eggs go in.
    stored_days : float
        How long the eggs will have been kept on average.
    candle_days : sequence of float, optional
        Days to candle on; the species' two usual days if left out.

    Returns
    -------
    DataFrame
        step, what, starts, ends, day, why, source, sure; sorted by time.
    """
    days = [species["candle1_day"], species["candle2_day"]] if candle_days is None else candle_days
    middle = hatch_middle_days(species, stored_days)
    earlier = clock_earlier_hours(species, stored_days)
    reach = (WINDOW_HOURS / 2 + CLOCK_HOURS) / 24
    # Texts and breeds that print more days than the table takes: the last eggs are given as long.
    last = max(middle + reach, float(species.get("days_high", 0.0)))
    longer = "" if last == middle + reach else f" By other texts or breeds it takes up to {last:g} days."
    rows = _before(species) + [
        (
            "set",
            "Set the eggs, weigh them, number them",
            0.0,
            1,
            "The hour of setting is hour 0 of everything below. Eggs take 6 to 8 h to warm through: leave the "
            "setting alone for two days.",
            "Penn State temperature page",
            "verified",
        ),
        *_candlings(days),
        *_cooling(species),
        (
            "care_day",
            "From today an embryo is treated as one that may feel",
            species["embryo_care_day"],
            1,
            "Candle before opening any egg; the strictest published day is taken.",
            "Institutional rules at two thirds of incubation; AVMA 2020 says 80 %",
            "derived",
        ),
        (
            "transfer",
            "Weigh, candle, stop turning, move down to hatch",
            species["transfer_day"],
            1,
            f"Raise humidity to {species['hatcher_rh_low_pct']:.0f}-{species['hatcher_rh_high_pct']:.0f} % RH and "
            "leave the lid shut until the hatch is done.",
            "Bird-incubation chart (Cartwright 2000, copy)",
            "second-hand",
        ),
        (
            "first_hatch",
            "First chicks may come from now on",
            middle - reach,
            1,
            f"Half a hatch window of {WINDOW_HOURS:.0f} h and {CLOCK_HOURS:.0f} h of doubt before the middle, which is "
            f"put at the trade's days here. The hatch clock of the review puts it {earlier:.0f} h earlier, as most "
            "chicks come before the trade's day; the doubt covers both.",
            "Meijerhof 2006; storage delay of the species table",
            "derived",
        ),
        (
            "last_hatch",
            "Last chicks should be out by now",
            last,
            1,
            f"Half a hatch window and the same doubt after the middle.{longer}",
            "Meijerhof 2006; storage delay of the species table",
            "derived",
        ),
        (
            "take_off",
            "Take off the hatch once the chicks are dry",
            last + DRYING_HOURS / 24,
            1,
            f"About {DRYING_HOURS:.0f} h to dry; the yolk carries a chick for two days.",
            "common practice",
            "common practice",
        ),
        (
            "open_unhatched",
            "Candle, then open the unhatched eggs that do not smell, froth or leak, and write down what you find",
            last + WAIT_DAYS,
            2,
            "Late chicks have had two more days. See the breakout guide and its cautions.",
            "chicken eggs to day 23 (quoted extension texts); scaled by adding two days",
            "second-hand",
        ),
    ]
    return _table(rows, set_at)


def _before(species) -> list[tuple]:
    best, most = species["storage_best_days"], species["storage_max_days"]
    return [
        (
            "collect",
            "Start to collect eggs for this set",
            -best,
            1,
            f"Best hatch from eggs kept at most {best:.0f} days; beyond {most:.0f} days expect little. "
            "Keep them at 10-18 °C and about 70 % RH, and turn them daily.",
            "MSU extension on storage (and as the species table says)",
            "verified",
        ),
        (
            "machine_on",
            "Run the machine empty, check the thermometer beside a second one",
            -1.0,
            2,
            "A day shows the night's swing; two to three hours are the least.",
            "common practice",
            "common practice",
        ),
        (
            "warm_up",
            "Bring the eggs to room temperature",
            -0.5,
            1,
            "Slowly, so that they do not sweat.",
            "common practice",
            "common practice",
        ),
    ]


def _cooling(species) -> list[tuple]:
    """Cooling and spraying of waterfowl eggs, as far as it was tried (``reference/handling.csv``)."""
    from hatchkit import reference

    own = reference.load("handling").query("item == 'cooling'")
    own = own[own["species"] == species.name]
    why = "Until the transfer; not in the last three days."
    return [("cooling", row.what, float(row.day_from), 1, why, row.source, row.sure) for row in own.itertuples()]


def _candlings(days) -> list[tuple]:
    names = ["first", "second", "third", "fourth", "fifth"]
    return [
        (
            f"candle{i + 1}",
            f"Candle ({names[min(i, 4)]} time), weigh, write down clear and dead",
            float(day),
            2,
            "Take out and open what is clear or dead, and write down how far it had come.",
            "Ernst et al., UC ANR 8134, and common practice",
            "verified" if i == 0 else "common practice",
        )
        for i, day in enumerate(days)
    ]


def _table(rows, set_at) -> pd.DataFrame:
    table = pd.DataFrame(rows, columns=["step", "what", "day", "hours", "why", "source", "sure"])
    # Wall clock arithmetic through UTC: a day is 24 h also when the clocks change.
    start = pd.Timestamp(set_at)
    table["starts"] = [
        (start.tz_convert("UTC") + pd.Timedelta(days=float(day))).round("h").tz_convert(start.tz)
        for day in table["day"]
    ]
    table["ends"] = table["starts"] + pd.to_timedelta(table.pop("hours"), unit="h")
    return table.sort_values("day", kind="stable").reset_index(drop=True)[CALENDAR]
