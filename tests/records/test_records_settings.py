"""season.toml: whatever a person writes there, the season is read, and what cannot be used is told by its place."""

import re

import pytest
from sheet_files import said, tidy_season

import hatchkit as hk
from hatchkit.records.folder import read_folder

INCUBATOR = "[incubators.A]\n"


def settings(folder, text):
    (folder / "season.toml").write_text(text, encoding="utf-8")
    return read_folder(tidy_season(folder))


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("[incubators]\nA = 5", ["incubators.A", "no section"]),
        (INCUBATOR + "files = 5", ["incubators.A.files", "no list of names"]),
        (INCUBATOR + "probes = 3", ["incubators.A.probes", "no list of names"]),
        (INCUBATOR + 'probe_offset_c = "minus"', ["probe_offset_c", "no number"]),
        (INCUBATOR + "probe_offset_c = [1, 2]", ["probe_offset_c", "no number"]),
        (INCUBATOR + 'probe_offset_c = {temp = "b"}', ["probe_offset_c", "no number"]),
        (INCUBATOR + "probe_offset_c = nan", ["probe_offset_c", "no number"]),
        (INCUBATOR + 'altitude_m = "x"', ["altitude_m", "no number"]),
        (INCUBATOR + "altitude_m = -1e9", ["altitude_m", "outside"]),
        (INCUBATOR + 'set_point_c = "about 37"', ["set_point_c", "no number"]),
        (INCUBATOR + "set_point_c = 99.5", ["set_point_c", "outside 30 to 42"]),
        (INCUBATOR + 'air = "weird"', ["incubators.A.air", "none of fan"]),
        (INCUBATOR + "set_pont_c = 37.5", ["incubators.A.set_pont_c", "not a setting"]),
        ('[sensors]\nday_first = "yes"', ["sensors.day_first", "neither true nor false"]),
        ('[sensors]\ntemp_unit = "R"', ["sensors.temp_unit", "none of C"]),
        ("[sheets]\nday_frist = true", ["sheets.day_frist", "not a setting"]),
        ('[headers]\n"Foo" = "eggs_sett"', ["headers.Foo", "eggs_sett"]),
        ("[species.chicken]\nincubation_days = 0", ["species.chicken", "far from that of any bird"]),
        ("[species.chicken]\nincubation_days = nan", ["species.chicken", "far from that of any bird"]),
        ("[species.chicken]\ntransfer_day = 40", ["species.chicken", "do not follow each other"]),
        ('[[norms]]\nspecies = "chicken"\nstage = "early"', ["norms 1", "needs species, stage and share"]),
        ('[[norms]]\nspecies = "chicken"\nstage = "early"\nshare = 7', ["norms 1.share", "outside 0 to 1"]),
        ("x = " + "[" * 3000 + "]" * 3000, ["can't be read|brackets"]),
    ],
)
def test_an_entry_that_cannot_be_used_is_told_and_the_season_is_read(tmp_path, text, words):
    read = settings(tmp_path, text + "\n")
    where = read["problems"]["found"] + " " + read["problems"]["column"].astype(str)
    rows = read["problems"][read["problems"]["file"] == "season.toml"]
    rows = rows[~rows["found"].str.contains("no time zone")]
    for word in words:
        assert where[rows.index].str.contains(word).any(), where[rows.index].tolist()
    assert len(read["batches"]) == 1
    hk.load_season(tmp_path)


def test_the_fix_names_the_nearest_setting_and_an_example(tmp_path):
    read = settings(tmp_path, INCUBATOR + 'set_pont_c = 37.5\naltitude_m = "200 m"\n')
    assert said(read, "set_pont_c")["fix"].tolist() == ["Did you mean set_point_c?"]
    assert said(read, "altitude_m")["fix"].tolist() == ["Write it like altitude_m = 200"]


def test_levels_of_one_s_own_reach_the_comparison(tmp_path):
    settings(tmp_path, '[[norms]]\nspecies = "chicken"\nstage = "clear"\nshare = 0.02\n')
    season = hk.load_season(tmp_path)
    assert season.settings["norms"] == [{"species": "chicken", "stage": "clear", "share": 0.02}]
    assert not (season.problems["file"].eq("season.toml") & season.problems["found"].str.contains("norms")).any()


def test_all_that_the_template_offers_is_understood(tmp_path):
    from hatchkit.start.blank_season import start_folder

    start_folder(tmp_path)
    path = tmp_path / "season.toml"
    offered = re.sub(r'^# (?=\[|\w+ = |"[^"]+" = )', "", path.read_text(encoding="utf-8"), flags=re.MULTILINE)
    assert offered.count("\n[") == 5
    path.write_text(offered, encoding="utf-8")
    problems = hk.load_season(tmp_path).problems
    assert problems[problems["file"] == "season.toml"].empty
