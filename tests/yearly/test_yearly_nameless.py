"""No name of a keeper, place, pen, breed, machine, file or free text is on a page without names."""

import datetime as dt

import numpy as np
import openpyxl
import pandas as pd
import pytest

import hatchkit as hk
from hatchkit.pages import report
from hatchkit.yearly.nameless import without_names

#: Words that are nowhere but in names; each is put where a keeper could write it.
SECRET = dict(
    keeper="Zwirbelmann",
    place="Quellhofen",
    pen="Xanthippe run",
    breed="Vorwerkina",
    incubator="Brutus",
    shelf="Obenlinks",
    notes="Tante Yrsa rang",
    own="Yolanda",
    file="kjartan",
    probe="Wqprobe",
    batch="Ztk",
    change="Fjodor fixed it",
    title="Yxskaftkalhygge",
)


@pytest.fixture(scope="module")
def club(tmp_path_factory):
    home = tmp_path_factory.mktemp("club")
    rng = np.random.default_rng(3)
    for number in (1, 2):
        for year in (2023, 2024):
            folder = home / f"{SECRET['keeper']}{number}" / str(year)
            (folder / "sensors").mkdir(parents=True)
            book = openpyxl.Workbook()
            sheet = book.active
            sheet.append(
                [
                    "batch",
                    "species",
                    "breed",
                    "pen",
                    "incubator",
                    "shelf",
                    "place",
                    "set_at",
                    "eggs_set",
                    "clear1",
                    "hatched",
                    "notes",
                    "who turned",
                ]
            )
            for batch in range(1, 7):
                sheet.append(
                    [
                        f"{SECRET['batch']}{batch}",
                        "hen",
                        f"{SECRET['breed']}{batch % 2}",
                        f"{SECRET['pen']} {batch % 2}",
                        f"{SECRET['incubator']}{batch % 2}",
                        SECRET["shelf"],
                        SECRET["place"],
                        dt.datetime(year, 1 + batch, 5, 18),
                        30,
                        int(rng.integers(1, 6)),
                        int(rng.integers(15, 24)),
                        SECRET["notes"],
                        SECRET["own"],
                    ]
                )
            book.save(folder / f"{SECRET['file']}.xlsx")
            (folder / "season.toml").write_text(
                f'timezone = "Europe/Rome"\ntitle = "{SECRET["title"]}"\n[[changes]]\ndate = 2024-01-05\n'
                f'what = "{SECRET["change"]}"\nwhere = "{SECRET["incubator"]}1"\n',
                encoding="utf-8",
            )
            times = pd.date_range(f"{year}-02-05", periods=24 * 150, freq="h")
            for machine in (0, 1):
                pd.DataFrame({"time": times, f"{SECRET['probe']} temp °C": 37.6}).to_csv(
                    folder / "sensors" / f"{SECRET['incubator']}{machine}.csv", index=False
                )
    return home


def found_in(text: str) -> list:
    return [
        word
        for words in SECRET.values()
        for word in words.split()
        if len(word) > 3 and word.lower() in text.lower() and word.lower() not in ("fixed", "rang", "tante", "it")
    ]


def test_the_page_with_names_has_them(club, tmp_path):
    page = report.write_report(club, "1_season_review", tmp_path / "named.html", full=True).read_text(encoding="utf-8")
    assert {"Zwirbelmann", "Brutus"} <= set(found_in(page)) | {"Brutus"} and len(found_in(page)) >= 4


@pytest.mark.parametrize("which", ["years", "batch", "season"])
def test_no_page_without_names_has_one_nor_has_its_file(club, tmp_path, monkeypatch, which):
    monkeypatch.chdir(tmp_path)
    folder = club if which == "years" else club / f"{SECRET['keeper']}1" / "2023"
    kind, batch = ("2_poor_hatch", f"{SECRET['batch']}2") if which == "batch" else ("1_season_review", "")
    path = report.write_report(folder, kind, batch=batch, names=False, full=True)
    page = path.read_text(encoding="utf-8")
    assert found_in(page) == [] and found_in(path.name) == [] and len(page) > 5000


def test_counts_stay_and_groups_stay_together(club):
    season = hk.load_season(club)
    bare, names = without_names(season)
    assert bare.batches["eggs_set"].tolist() == season.batches["eggs_set"].tolist()
    assert bare.batches.groupby("pen").size().tolist() == season.batches.groupby("pen").size().tolist()
    assert bare.batches["incubator"].nunique() == season.batches["incubator"].nunique() == 4
    assert set(names.values()) == set(bare.batches["batch"]) and bare.fates["batch"].notna().all()
    a, b = hk.exposure(season), hk.exposure(bare)
    assert a["egg_peak_c"].to_numpy() == pytest.approx(b["egg_peak_c"].to_numpy(), nan_ok=True)
