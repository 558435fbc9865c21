"""Fifty spoilt season folders: no traceback, no endless wait, nothing changed in them (more: fuzz_seasons.py)."""

import os
import warnings

import pytest
from hostile_folders import _state, faults_of, spoilt_season

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
