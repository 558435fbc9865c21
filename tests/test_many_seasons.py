"""Any set of seasons is a season: folders, years, keepers, one book of years."""

import datetime as dt
from pathlib import Path

import numpy as np
import openpyxl
import pandas as pd
import pytest

import hatchkit as hk
from hatchkit.records.places import demo_years
from hatchkit.records.season_years import season_years, year_in

HEAD = ["batch", "species", "pen", "incubator", "set_at", "eggs_set", "clear1", "hatched"]


def a_season(folder: Path, year: int, *, rows=3, machine="A", zone="Europe/Rome", toml="", sensors=True) -> Path:
    """A season folder with few batches, called 1, 2, ... as in every year."""
    folder.mkdir(parents=True, exist_ok=True)
    book = openpyxl.Workbook()
    sheet = book.active
    sheet.append(HEAD)
    for number in range(1, rows + 1):
        sheet.append([str(number), "hen", "Top", machine, dt.datetime(year, 2 + number, 5, 18), 30, 3, 22 + number])
    book.save(folder / "batches.xlsx")
    (folder / "season.toml").write_text(f'timezone = "{zone}"\n{toml}', encoding="utf-8")
    if sensors:
        (folder / "sensors").mkdir(exist_ok=True)
        times = pd.date_range(f"{year}-03-05 18:00", periods=24 * 20, freq="h")
        pd.DataFrame({"time": times, "temp_c": 37.5}).to_csv(folder / "sensors" / f"{machine}.csv", index=False)
    return folder


def test_a_folder_of_years_is_one_season_with_a_key_for_each_batch(tmp_path):
    for year in (2023, 2024, 2025):
        a_season(tmp_path / str(year), year)
    season = hk.load_season(tmp_path)
    assert season.years == [2023, 2024, 2025] and len(season.batches) == 9
    assert season.batches["batch"].is_unique and season.batches["name"].tolist() == ["1", "2", "3"] * 3
    assert season.batches["batch"].tolist()[:4] == ["1, 2023", "2, 2023", "3, 2023", "1, 2024"]
    assert set(season.readings["season"]) == {2023, 2024, 2025} and len(season.readings) == 3 * 480
    assert season.batches["file"].iloc[0] == "2023/batches.xlsx"
    summed = season.fates.groupby("batch")["eggs"].sum()
    assert summed.reindex(season.batches["batch"]).tolist() == season.batches["eggs_set"].tolist()


def test_names_stay_the_keepers_own_where_no_year_is_needed(tmp_path):
    first, second = a_season(tmp_path / "2023", 2023), a_season(tmp_path / "2024", 2024, rows=4)
    book = openpyxl.load_workbook(second / "batches.xlsx")
    for row in range(2, 6):
        book.active.cell(row, 1).value = f"B{row}"
    book.save(second / "batches.xlsx")
    season = hk.load_season([first, second])
    assert season.batches["batch"].tolist() == ["1", "2", "3", "B2", "B3", "B4", "B5"]


def test_several_folders_and_one_text_of_several_are_the_same_set(tmp_path):
    import os

    paths = [a_season(tmp_path / name, year) for name, year in (("one", 2023), ("two", 2024))]
    both = hk.load_season(paths)
    assert hk.load_season(os.pathsep.join(map(str, paths))).batches.equals(both.batches)
    assert both.keepers == []  # other years: one keeper's


def test_one_season_folder_is_one_season_and_its_sensors_are_none(tmp_path):
    season = hk.load_season(a_season(tmp_path / "mine", 2024))
    assert season.parts == () and season.years == [2024] and season.batches["batch"].tolist() == ["1", "2", "3"]
    assert season.readings["season"].eq(2024).all()


def test_a_book_with_a_sheet_for_each_year_tells_names_apart_by_year(tmp_path):
    book = openpyxl.Workbook()
    book.remove(book.active)
    for year in (2022, 2023, 2024):
        sheet = book.create_sheet(str(year))
        sheet.append(HEAD)
        for number in (1, 2, 3):
            sheet.append([str(number), "hen", "Top", "A", dt.datetime(year, 2 + number, 5), 30, 3, 20 + number])
    book.save(tmp_path / "all my years.xlsx")
    (tmp_path / "season.toml").write_text('timezone = "Europe/Rome"\n', encoding="utf-8")
    for given in (tmp_path, tmp_path / "all my years.xlsx"):
        season = hk.load_season(given)
        assert season.years == [2022, 2023, 2024]
        assert season.batches["batch"].tolist()[:3] == ["1, 2022", "2, 2022", "3, 2022"]
        assert season.batches["name"].tolist() == ["1", "2", "3"] * 3
        assert hk.breakdown(season, by="season")["season"].unique().tolist() == [2022, 2023, 2024]


def test_one_broken_year_does_not_stop_the_others(tmp_path):
    a_season(tmp_path / "2023", 2023)
    (tmp_path / "2024").mkdir()
    (tmp_path / "2024" / "batches.xlsx").write_bytes(b"no workbook")
    a_season(tmp_path / "2025", 2025)
    season = hk.load_season(tmp_path)
    assert season.years == [2023, 2025]
    lost = season.problems[season.problems["code"] == "season_unreadable"]
    assert lost["file"].tolist() == ["2024"] and "2024" in lost["found"].iloc[0]


def test_where_no_year_can_be_read_it_is_one_sentence(tmp_path):
    for year in ("2023", "2024"):
        (tmp_path / year).mkdir()
        (tmp_path / year / "batches.xlsx").write_bytes(b"no workbook")
    with pytest.raises(hk.HatchkitError, match="None of the seasons"):
        hk.load_season(tmp_path)


def test_folders_of_keepers_are_kept_apart(tmp_path):
    for keeper in ("Anna", "Ben"):
        for year in (2023, 2024):
            a_season(tmp_path / keeper / str(year), year)
    season = hk.load_season(tmp_path)
    assert season.keepers == ["Anna", "Ben"] and season.years == [2023, 2024]
    assert season.batches["incubator"].unique().tolist() == ["A, Anna", "A, Ben"]
    assert season.batches["batch"].iloc[0] == "1, 2023, Anna" and season.batches["batch"].is_unique
    assert season.readings.groupby("incubator", observed=True).size().to_dict() == {"A, Anna": 960, "A, Ben": 960}
    assert set(season.readings["keeper"]) == {"Anna", "Ben"}


def test_keepers_of_one_year_without_a_year_in_their_names(tmp_path):
    for keeper in ("Anna", "Ben"):
        a_season(tmp_path / keeper, 2024)
    assert hk.load_season(tmp_path).keepers == ["Anna", "Ben"]


def test_season_toml_says_whose_it_is(tmp_path):
    for year in (2023, 2024):
        a_season(tmp_path / f"hatching {year}", year, toml='keeper = "Anna"\nplace = "Barn"\n')
    season = hk.load_season(tmp_path)
    assert season.keepers == ["Anna"] and season.batches["place"].eq("Barn").all()


def test_the_years_folder_may_hold_a_list_of_changes(tmp_path):
    for year in (2023, 2024):
        a_season(tmp_path / str(year), year)
    (tmp_path / "changes.csv").write_text("Date,What,Where\n2024-02-01,new fan,A\n,no day,\n", encoding="utf-8")
    season = hk.load_season(tmp_path)
    assert season.years == [2023, 2024]
    assert season.changes["what"].tolist() == ["new fan"] and season.changes["where"].tolist() == ["A"]
    assert season.changes["date"].iloc[0] == pd.Timestamp("2024-02-01", tz="Europe/Rome")
    assert "change_unread" in set(season.problems["code"])


def test_changes_may_be_a_sheet_of_a_seasons_book_or_stand_in_its_settings(tmp_path):
    folder = a_season(tmp_path / "2024", 2024, toml='[[changes]]\ndate = 2024-03-01\nwhat = "new hens"\n')
    book = openpyxl.load_workbook(folder / "batches.xlsx")
    sheet = book.create_sheet("Changes")
    sheet.append(["Date", "What"])
    sheet.append([dt.datetime(2024, 4, 1), "turned by hand"])
    book.save(folder / "batches.xlsx")
    season = hk.load_season(folder)
    assert season.changes["what"].tolist() == ["new hens", "turned by hand"]
    assert len(season.batches) == 3 and "sheet_not_used" not in set(season.problems["code"])


def test_a_machine_with_a_new_name_is_asked_about_and_the_answer_joins_the_two(tmp_path):
    a_season(tmp_path / "2023", 2023, machine="Old box")
    a_season(tmp_path / "2024", 2024, machine="Kitchen")
    season = hk.load_season(tmp_path)
    asked = season.questions[season.questions["code"] == "machine_renamed"]
    assert asked["heading"].tolist() == ["Kitchen"] and asked["taken"].tolist() == ["another_machine"]
    assert set(season.batches["incubator"]) == {"Old box", "Kitchen"}
    again = hk.load_season(tmp_path, answers={("2024", "", "Kitchen"): "Old box"})
    assert set(again.batches["incubator"]) == {"Old box"} and set(again.readings["incubator"]) == {"Old box"}
    assert not (again.questions["code"] == "machine_renamed").any()


def test_a_machine_written_in_another_case_is_the_same_machine(tmp_path):
    a_season(tmp_path / "2023", 2023, machine="Big B")
    a_season(tmp_path / "2024", 2024, machine="big b")
    season = hk.load_season(tmp_path)
    assert set(season.batches["incubator"]) == {"Big B"}


def test_a_probe_replaced_and_a_changed_correction_are_noted(tmp_path):
    first = a_season(tmp_path / "2023", 2023, toml="[incubators.A]\nprobe_offset_c = 0.2\n")
    second = a_season(tmp_path / "2024", 2024, toml="[incubators.A]\nprobe_offset_c = -0.3\n")
    log = pd.read_csv(second / "sensors" / "A.csv").rename(columns={"temp_c": "Probe 7 temp"})
    log.to_csv(second / "sensors" / "A.csv", index=False)
    season = hk.load_season([first, second])
    assert {"probe_replaced", "offset_changed"} <= set(season.problems["code"])
    by_year = season.readings.groupby("season")["temp_c"].mean()
    assert by_year[2023] == pytest.approx(37.7) and by_year[2024] == pytest.approx(37.2)


def test_tracks_take_each_years_own_log_and_settings(tmp_path):
    from hatchkit.climate.track import batch_track

    one = hk.load_season(a_season(tmp_path / "2023", 2023, toml='[incubators.A]\nair = "still"\n'))
    alone = batch_track(one, "1")
    a_season(tmp_path / "2024", 2024, toml='[incubators.A]\nair = "fan"\n')
    season = hk.load_season(tmp_path)
    joined = batch_track(season, "1, 2023")
    assert len(joined) == len(alone) > 400
    assert joined["low_c"].tolist() == alone["low_c"].tolist()  # the range of still air, not of the fan's
    assert joined["low_c"].iloc[0] != batch_track(season, "1, 2024")["low_c"].iloc[0]
    assert joined["egg_low_c"].to_numpy() == pytest.approx(alone["egg_low_c"].to_numpy(), nan_ok=True)
    assert "air_changed" in set(season.problems["code"])


def test_zones_that_differ_are_noted_and_each_season_read_by_its_own(tmp_path):
    a_season(tmp_path / "2023", 2023), a_season(tmp_path / "2024", 2024, zone="Europe/London")
    season = hk.load_season(tmp_path)
    assert "zones_differ" in set(season.problems["code"])
    hours = season.batches.groupby("season")["set_at"].first().dt.hour
    assert hours[2023] == 17 and hours[2024] == 18  # 18:00 of the wall clock


def test_a_season_across_new_year_is_one_season():
    when = pd.to_datetime(
        pd.Series(
            [
                "2023-10-20",
                "2023-11-20",
                "2023-12-28",
                "2024-01-20",
                "2024-02-10",
                "2024-11-05",
                "2025-01-15",
                "2025-02-02",
            ]
        ),
        utc=True,
    )
    assert season_years(when).tolist() == [2023] * 5 + [2025] * 3


def test_years_of_spring_hatching_are_calendar_years():
    when = pd.to_datetime(pd.Series(["2022-03-20", "2022-05-20", "2023-02-28", "2023-06-20", None]), utc=True)
    years = season_years(when)
    assert years[:4].tolist() == [2022, 2022, 2023, 2023] and np.isnan(years[4])


@pytest.mark.parametrize(
    "name, year", [("2024", 2024), ("hatching 2023", 2023), ("2024-25", 2024), ("A12024", None), ("spring", None)]
)
def test_a_year_in_a_folders_name(name, year):
    assert year_in(name) == year


def test_the_demo_years_are_found_and_hold_three_years():
    season = hk.load_season("demo-years")
    assert season.folder == demo_years() and season.years == [2023, 2024, 2025]
    assert len(season.changes) == 3 and "invented" in season.title
    assert season.batches["pen"].nunique() == 2 and season.eggs["hen"].nunique() == 6
    assert not (season.problems["severity"] == "lost").any()


def test_the_demo_years_are_made_again_byte_for_byte(tmp_path):
    from hatchkit.simulate.demo_years import write_years

    made = write_years(tmp_path / "years")
    shipped = sorted(path.relative_to(demo_years()) for path in demo_years().rglob("*") if path.is_file())
    assert shipped == sorted(path.relative_to(made) for path in made.rglob("*") if path.is_file())
    assert [name for name in shipped if (made / name).read_bytes() != (demo_years() / name).read_bytes()] == []
