"""The seal: from everything but the data nobody can guess what was planted."""

import os
import zipfile

import numpy as np
import pytest
from openpyxl import load_workbook
from scipy import stats

from hatchkit.simulate import cause_names, simulate_season
from hatchkit.simulate.causes import KILLS

#: Faults that change what is seen in the log and the counts in very different ways.
PLANTED = ("none", "power_cut", "overheating", "probe_high", "low_fertility")
SEEDS = range(7)


def _surface(folder):
    """What a nosy student sees without opening the data: names, order, sizes, times, metadata."""
    paths = sorted(path for path in folder.rglob("*"))
    order = [entry.name for entry in os.scandir(folder / "sensors")]
    with zipfile.ZipFile(folder / "batches.xlsx") as book:
        parts = [(part.filename, part.date_time, part.comment, part.extra) for part in book.infolist()]
        core = book.read("docProps/core.xml")
    sheets = load_workbook(folder / "batches.xlsx").sheetnames
    return dict(
        names=[path.relative_to(folder).as_posix() for path in paths],
        order=sorted(order),
        sizes=[path.stat().st_size for path in paths if path.is_file()],
        times=[path.stat().st_mtime_ns for path in paths],
        parts=parts,
        core=core,
        sheets=sheets,
        toml=(folder / "season.toml").read_bytes(),
        heads=[path.read_bytes()[:60].split(b"\n")[0] for path in paths if path.suffix == ".csv"],
    )


@pytest.fixture(scope="module")
def folders(tmp_path_factory):
    """Seven seeds with five causes each."""
    home, made = tmp_path_factory.mktemp("seal"), {}
    for seed in SEEDS:
        for cause in PLANTED:
            folder = home / f"{seed}_{cause}"
            simulate_season(folder, seed=seed, cause=cause, batches=1, incubators=1, eggs=30, step_minutes=60)
            made[seed, cause] = _surface(folder)
    return made


def test_with_one_seed_the_surface_is_the_same_whatever_was_planted(folders):
    for seed in SEEDS:
        plain = folders[seed, "none"]
        for cause in PLANTED[1:]:
            other = folders[seed, cause]
            assert [key for key in plain if key != "sizes" and plain[key] != other[key]] == []
            # log files to the byte; the workbook in steps of 16 kB
            assert plain["sizes"][1:] == other["sizes"][1:]


def test_an_honest_guesser_does_no_better_than_chance(folders):
    """Nearest other seed by sizes, number of files and times; each folder guessed from the other seeds."""
    keys = list(folders)
    rows = [
        [
            len(folders[key]["names"]),
            sum(folders[key]["sizes"]),
            max(folders[key]["sizes"]),
            folders[key]["sizes"][0],
            len(folders[key]["parts"]),
            folders[key]["times"][0] % 10**12,
        ]
        for key in keys
    ]
    table = np.array(rows, dtype=float)
    table = (table - table.mean(axis=0)) / np.where(table.std(axis=0) > 0, table.std(axis=0), 1)
    right = 0
    for place, (seed, cause) in enumerate(keys):
        others = [i for i, key in enumerate(keys) if key[0] != seed]
        distance = ((table[others] - table[place]) ** 2).sum(axis=1)
        nearest = [keys[others[i]][1] for i in np.flatnonzero(distance <= distance.min() + 1e-9)]
        right += nearest.count(cause) / len(nearest)
    chance = stats.binom(len(keys), 1 / len(PLANTED))
    assert right <= chance.ppf(0.99)


def test_no_word_of_the_answer_is_in_any_file(tmp_path):
    for cause in ("contaminated", "turning_fault", "drift_cool"):
        folder = tmp_path / cause
        simulate_season(folder, seed=21, cause=cause, batches=2, step_minutes=60)
        cells = [
            str(cell.value).lower()
            for sheet in load_workbook(folder / "batches.xlsx")
            for row in sheet.iter_rows()
            for cell in row
            if isinstance(cell.value, str)
        ]
        text = " ".join(cells) + (folder / "season.toml").read_text(encoding="utf-8").lower()
        hidden = set(cause_names()) - {"none", "contaminated"} | {k for kills in KILLS.values() for k in kills}
        assert not [word for word in hidden - {"rotten", "late", "heat", "cold", "wet", "dry"} if word in text]
        assert "seed" not in text and "hatchkit" not in text
