"""Three invented years of one keeper: one change that helped, one that did nothing, one year that was only bad luck."""

from pathlib import Path

import numpy as np
import pandas as pd

from hatchkit.records.writing import write_whole
from hatchkit.simulate import course, habits
from hatchkit.simulate.biology import parameters
from hatchkit.simulate.course import BatchPlan, SeasonPlan
from hatchkit.simulate.demo import invented
from hatchkit.simulate.folder import own_folder, write_again
from hatchkit.simulate.machine import Fault

SEED = 20230318
ZONE = "Europe/Rome"
YEARS = (2023, 2024, 2025)

#: What the keeper changed. The first took away a real fault; the second did nothing; before the third, the set weeks
#: of Lane in 2024 had been unlucky, and the better year after it owes it nothing.
CHANGES = (("2025-02-10", "B"), ("2024-02-16", "A"), ("2025-02-20", "Lane"))
#: Machine B runs this much too cool all through 2023 and 2024, and is right in 2025.
B_TOO_COOL = -1.9
#: Share of fertile eggs: Orchard and Lane are alike for good; Lane's weeks of 2024 were unlucky.
FERTILE, LANE_2024 = 0.92, (0.66, 0.74, 0.70, 0.68)
#: Hens of the Orchard pen, whose eggs are marked in two batches a year: of hen 4 every second egg is clear.
HENS = ("1", "2", "3", "4", "5", "6")
_CLEAR_OF, _FERTILE_OF = np.array([1, 1, 1, 7, 1, 1]) / 12, np.array([1, 1, 1, 0.55, 1, 1]) / 5.55

# batch, machine, set on (month-day hour), eggs, pen
_PLAN = (
    ("1", "A", "03-10 18:00", 40, "Orchard"),
    ("2", "B", "03-12 18:00", 42, "Lane"),
    ("3", "A", "04-06 18:30", 42, "Lane"),
    ("4", "B", "04-08 18:00", 40, "Orchard"),
    ("5", "A", "05-03 18:00", 42, "Orchard"),
    ("6", "B", "05-05 17:30", 40, "Lane"),
    ("7", "A", "05-30 18:00", 40, "Lane"),
    ("8", "B", "06-01 18:00", 42, "Orchard"),
)
_EGG_ROWS = ("1", "5")


def year_plan(year: int) -> SeasonPlan:
    """The plan of one year."""
    lane, batches = iter(LANE_2024), []
    for batch, machine, day, eggs, pen in _PLAN:
        # Each year begins some days later or earlier.
        set_at = pd.Timestamp(f"{year}-{day}", tz=ZONE) + pd.Timedelta(days=2 * (year - 2024))
        fertile = next(lane) if pen == "Lane" and year == 2024 else FERTILE
        batches.append(
            BatchPlan(
                batch=batch,
                species="chicken",
                incubator=machine,
                set_at=set_at.tz_convert("UTC"),
                eggs_set=eggs,
                flock=pen,
                flock_age_weeks=30 + 4 * int(batch) // 2,
                fertility=fertile,
                stored_days=4,
                egg_rows=batch in _EGG_ROWS,
            )
        )
    whole = dict(start=pd.Timestamp(f"{year}-01-01", tz="UTC"), end=pd.Timestamp(f"{year}-12-31", tz="UTC"))
    power = pd.Timestamp(f"{year}-04-17 22:00", tz="UTC")
    faults = {
        "A": [Fault("power_cut", power, power + pd.Timedelta(hours=9), room_c=12.0)] if year == 2025 else [],
        "B": [Fault("control", size=B_TOO_COOL, **whole)] if year < 2025 else [],
    }
    return SeasonPlan(
        title=f"Hatching {year} (invented)",
        timezone=ZONE,
        batches=tuple(batches),
        faults=faults,
        step_minutes=60,
        p=parameters(tray_share=0),
    )


def _drawn(rng, year):
    tables, truth = course.run(rng, year_plan(year))
    eggs = tables["eggs"]
    if len(eggs):
        fertile = truth.set_index(["batch", truth["egg"].astype(str)])["fertile"]
        own = fertile.loc[list(zip(eggs["batch"], eggs["egg"], strict=True))].to_numpy(bool)
        eggs["hen"] = [str(rng.choice(HENS, p=_FERTILE_OF if good else _CLEAR_OF)) for good in own]
        eggs["cock"] = "red"
    return tables


def write_years(folder, *, seed: int = SEED) -> Path:
    """Write the three years.

    Parameters
    ----------
    folder : path
        New, empty, or earlier demo years, which are replaced file by file.

    Returns
    -------
    Path
    """
    folder = own_folder(folder, invented("title")["years"])
    headings = {**habits.EGG_HEADINGS, "hen": "Hen", "cock": "Cock"}
    habit = habits.Habit("years", headings={**habits.BATCH_HEADINGS, "flock": "Pen"}, egg_headings=headings)
    for year in YEARS:
        tables = _drawn(np.random.default_rng([seed, year]), year)
        home = folder / str(year)
        home.mkdir(exist_ok=True)
        styles = dict.fromkeys("AB", "iso_comma")
        write_again(home, tables, habit=habit, styles=styles, title=f"Hatching {year} (invented)", timezone=ZONE)
    lines = [f'title = "{invented("title")["years"]}"', f'timezone = "{ZONE}"', ""]
    for date, where in CHANGES:
        lines += ["[[changes]]", f"date = {date}", f'what = "{invented("change")[where]}"', f'where = "{where}"', ""]
    write_whole(folder / "season.toml", "\n".join(lines))
    return folder
