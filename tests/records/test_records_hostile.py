"""Fifty spoilt season folders: no traceback, no endless wait, nothing changed in them (more: fuzz_seasons.py)."""

import os
import warnings

import pandas as pd
import pytest
from hostile_folders import _state, faults_of, spoilt_season

from hatchkit.records.places import below
from hatchkit.season.joined import _one_log

pytestmark = pytest.mark.skipif(os.name == "nt", reason="pipes, links and odd names are those of Unix")


@pytest.mark.parametrize("first", range(0, 50, 10))
def test_ten_spoilt_seasons_are_read_or_refused_in_words(tmp_path, first):
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        for seed in range(first, first + 10):
            folder = tmp_path / str(seed)
            folder.mkdir()
            ways = spoilt_season(folder, seed)
            assert faults_of(folder, work=False) == [], (seed, ways)


def test_the_watch_over_the_folder_sees_content_mode_and_time(tmp_path):
    file = tmp_path / "a.csv"
    file.write_text("a")
    states = [_state(tmp_path)]
    for change in (
        lambda: file.write_text("b"),
        lambda: file.chmod(0o600),
        lambda: os.utime(file, (1, 1)),
        lambda: (tmp_path / "new").mkdir(),
    ):
        change()
        states.append(_state(tmp_path))
    assert all(one != other for one, other in zip(states, states[1:], strict=False))


def test_a_link_that_leads_back_up_is_not_followed(tmp_path):
    season = tmp_path / "years" / "2024"
    season.mkdir(parents=True)
    (season / "batches.csv").write_text("batch,eggs,hatched\nA1,24,15\n")
    (tmp_path / "years" / "up").symlink_to("..")
    (tmp_path / "years" / "again").symlink_to("2024")
    assert [place.said for place in below(tmp_path / "years")] == ["2024", "again"]


def test_logs_whose_words_are_of_two_kinds_are_joined():
    text = pd.DataFrame({"probe": pd.Categorical(["air", None]), "temp_c": [37.5, 37.6]})
    none = pd.DataFrame({"probe": pd.Categorical([None, None]), "temp_c": [37.0, 37.1]})
    joined, slices = _one_log([text, none])
    assert joined["probe"].isna().tolist() == [False, True, True, True]
    assert [len(joined[part]) for part in slices] == [2, 2]
