"""How fast is the climate? Ratios of processor time within one run; nothing here is a test.

python tests/benchmarks/climate_speed.py            lag filter against a plain loop; 1.6 million readings
python tests/benchmarks/climate_speed.py --large    also ten times as many, for the growth of the cost
"""

from __future__ import annotations

import resource
import sys
import tempfile
import time
from pathlib import Path

import numpy as np
import pandas as pd

from hatchkit import problems, reference
from hatchkit.climate import dose, egg_heat, egg_temperature, excursions
from hatchkit.climate.track import batch_track
from hatchkit.records.logs.read import read_readings
from hatchkit.season import Season

START = pd.Timestamp("2025-01-06 08:00", tz="UTC")
MINUTES = 26 * 7 * 24 * 60


def plain_loop(hours, air_c, heat, evaporation, conductance, tau):
    """The same model as ``egg_temperature``, one reading after the other."""
    egg = np.empty(len(air_c))
    lagged = warming = 0.0
    for i in range(len(air_c)):
        usual = (heat[i] - evaporation) / conductance
        step = hours[i] - hours[i - 1] if i else np.inf
        keep = np.exp(-step / tau) if step <= 3 * tau else 0.0
        if keep > 0:
            before = lagged
            lagged = keep * lagged + (1 - keep) * (air_c[i] + air_c[i - 1]) / 2
        else:
            before = lagged = air_c[i]
        felt = min(max(before + usual, 15.0), 41.5)
        offset = (heat[i] * 2 ** ((felt - 37.5) / 10) - evaporation) / conductance
        warming = keep * warming + (1 - keep) * offset
        egg[i] = lagged + warming
    return egg


def filtered(hours, air, eggs, tau):
    """The estimate alone, without its band."""
    return sum(egg_temperature.respond(hours, air, eggs, tau, 3 * tau))


def seconds(work, repeats=3):
    """Shortest of some runs, and the result."""
    best, result = np.inf, None
    for _ in range(repeats):
        began = time.process_time()
        result = work()
        best = min(best, time.process_time() - began)
    return best, result


def filter_against_loop(count=200_000):
    rng = np.random.default_rng(1)
    hours = np.cumsum(rng.choice([1, 1, 1, 2, 5, 200], count, p=[0.4, 0.3, 0.2, 0.05, 0.04, 0.01])) / 60
    air = 37.5 + rng.normal(0, 0.2, count) - 6 * (rng.random(count) < 0.01)
    age = np.linspace(0, 21, count)
    heat, evaporation = egg_heat.embryo_heat(age, 60), egg_heat.evaporation_heat(60)
    conductance, tau = egg_heat.conductance(60, "fan"), egg_heat.time_constant(60, "fan")
    eggs = egg_temperature._Egg(age, 60, "fan", 21.0)
    fast, both = seconds(lambda: filtered(hours, air, eggs, tau))
    band, _ = seconds(lambda: egg_temperature.egg_temperature(hours, air, age_days=age, egg_mass_g=60))
    slow, loop = seconds(lambda: plain_loop(hours, air, heat, evaporation, conductance, tau), repeats=2)
    print(
        f"lag filter, {count} readings at uneven steps: {1e9 * fast / count:.0f} ns a reading; plain loop "
        f"{1e9 * slow / count:.0f} ns; {slow / fast:.0f} times faster; largest difference "
        f"{np.abs(both - loop).max():.1e} K"
    )
    print(
        f"with its band (the worth of 200 draws): {1e9 * band / count:.0f} ns a reading, "
        f"{band / fast:.1f} times the filter alone, {200 * fast / band:.0f} times less than 200 filters"
    )


def air_of(seed):
    """Half a year of one machine: noise, three openings a day, an outage now and then."""
    rng = np.random.default_rng(seed)
    hours = np.arange(MINUTES) / 60
    air = 37.5 + rng.normal(0, 0.06, MINUTES)
    for begin in np.arange(3, hours[-1], 8.0) + rng.uniform(-1, 1, len(np.arange(3, hours[-1], 8.0))):
        since = hours[int(begin * 60) : int(begin * 60) + 120] - begin
        air[int(begin * 60) : int(begin * 60) + 120] -= 5 * np.exp(-since / 0.3)
    for begin in rng.uniform(100, hours[-1] - 100, 3):
        inside = slice(int(begin * 60), int(begin * 60) + 480)
        air[inside] = 20 + 17.5 * np.exp(-(hours[inside] - begin) / 1.5)
    return air.round(2), (55 + rng.normal(0, 1, MINUTES)).round(1)


def write_logs(folder, incubators):
    stamps = pd.date_range(START, periods=MINUTES, freq="min").strftime("%Y-%m-%dT%H:%M:%S+00:00")
    for number in range(incubators):
        air, rh = air_of(number)
        table = pd.DataFrame({"time": stamps, "temperature_c": air, "humidity": rh})
        table.to_csv(folder / f"{number}.csv", index=False)


def read_logs(folder, incubators):
    parts = []
    for number in range(incubators):
        rows, _ = read_readings(folder / f"{number}.csv")
        parts.append(rows.assign(incubator=str(number)))
    return pd.concat(parts, ignore_index=True)


def season_of(readings):
    """Batches one after the other in every incubator, hen and duck, and a second one that overlaps."""
    rows = []
    for incubator in readings["incubator"].unique():
        for number in range(8):
            for shift, species in ((0, "chicken"), (7, "quail")):
                rows.append(
                    {
                        "batch": f"{incubator}-{number}-{species}",
                        "species": species,
                        "incubator": incubator,
                        "set_at": START + pd.Timedelta(days=22 * number + shift),
                        "eggs_set": 40,
                        "stored_days": 4.0,
                    }
                )
    batches = pd.DataFrame(rows)
    empty = pd.DataFrame()
    return Season(
        Path("invented"),
        "Invented",
        "UTC",
        batches,
        empty,
        empty,
        empty,
        readings,
        empty,
        problems.table([]),
        reference.species_table(),
        {},
    )


def climate_of(season):
    """Excursions with their doses, and the doses of every week of every batch."""
    found = excursions.find_excursions(season)
    weeks = 0
    for _, batches in excursions.by_incubator(season):
        for _, row in batches.iterrows():
            met = batch_track(season, row["batch"])
            for week in range(3):
                start = row["set_at"] + pd.Timedelta(days=7 * week)
                dose.window_dose(met, start, start + pd.Timedelta(days=7))
                weeks += 1
    return found, weeks


def one_season(incubators, reading=True):
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        if reading:
            write_logs(folder, incubators)
            began = time.process_time()
            readings = read_logs(folder, incubators)
            read = time.process_time() - began
        else:
            read, readings = np.nan, in_memory(incubators)
    season = season_of(readings)
    began = time.process_time()
    found, weeks = climate_of(season)
    took = time.process_time() - began
    peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024**2
    print(
        f"{incubators} incubators, {len(readings) / 1e6:.1f} million readings, {len(season.batches)} batches: "
        f"{found['event'].nunique()} disturbances ({len(found)} rows), {weeks} weekly doses; reading "
        f"{read:.1f} s, climate {took:.1f} s ({took / read:.2f} times reading), "
        f"{1e6 * took / len(readings):.2f} us a reading, peak memory {peak:.2f} GB"
    )
    return took / len(readings)


def in_memory(incubators):
    parts = []
    for number in range(incubators):
        air, rh = air_of(number)
        parts.append(
            pd.DataFrame(
                {
                    "incubator": str(number),
                    "probe": "1",
                    "time": pd.date_range(START, periods=MINUTES, freq="min").as_unit("us"),
                    "temp_c": air,
                    "rh_pct": rh,
                    "file": "x.csv",
                    "doubt": "",
                }
            )
        )
    return pd.concat(parts, ignore_index=True)


if __name__ == "__main__":
    filter_against_loop()
    small = one_season(6)
    if "--large" in sys.argv[1:]:
        large = one_season(61, reading=False)
        print(f"cost of a reading at ten times the size: {large / small:.2f} times that of the small season")
