"""Noughts at looks that never find anything: an unopened dead egg may then be of any day. Keepers are invented."""

import pandas as pd
import pytest

import hatchkit as hk
from hatchkit.advice.habits import believed_fates
from hatchkit.advice.tally import tally


def keeper(folder, *, dead=6, batches=3, eggs=40, **more):
    """Batches in which noughts were written at the candling and all losses are unopened eggs at the end."""
    rows = []
    for place in range(batches):
        set_at = pd.Timestamp("2026-03-01 18:00") + pd.Timedelta(days=26 * place)
        rows.append(
            dict(
                batch=f"P{place + 1}",
                set_at=set_at,
                eggs_set=eggs,
                candle1_at=set_at + pd.Timedelta(days=8),
                clear1=0,
                dead1=0,
                hatched=eggs - dead,
                dead_in_shell=dead,
            )
            | more
        )
    pd.DataFrame(rows).to_csv(folder / "batches.csv", index=False)
    (folder / "season.toml").write_text('timezone = "UTC"\ndefault_species = "chicken"\n', encoding="utf-8")
    return hk.load_season(folder)


def after(season):
    fates = believed_fates(season)
    return fates.loc[fates["fate"] == "dead", "after_day"]


def test_noughts_in_every_batch_are_not_believed(tmp_path):
    """120 eggs: 16 % of the published ledger, 19 eggs, were due as clears and early dead; none was ever found."""
    season = keeper(tmp_path)
    assert (after(season) == 0).all() and tally(season).counts["early"].gt(0).all()
    told = season.fates.loc[season.fates["fate"] == "dead", "after_day"]
    assert (told > 7).all()  # the records themselves are left as they were


def test_noughts_of_one_small_batch_are(tmp_path):
    """20 eggs: 3 were due, none found, 1 in 25: that may be so."""
    assert (after(keeper(tmp_path, batches=1, eggs=20)) > 7).all()


def test_one_clear_found_shows_that_there_was_a_look(tmp_path):
    assert (after(keeper(tmp_path, clear1=1, dead=5, hatched=34)) > 7).all()


def test_an_opened_egg_tells_its_own_age(tmp_path):
    season = keeper(tmp_path, dead_in_shell=None, broken_early=0, broken_mid=1, broken_late=5)
    pd.testing.assert_frame_equal(believed_fates(season), season.fates)


@pytest.mark.parametrize("column", ["after_day", "by_day", "eggs"])
def test_an_empty_season_has_nothing_to_believe(tmp_path, column):
    season = keeper(tmp_path, hatched=None, dead_in_shell=None, clear1=None, dead1=None)
    assert column in believed_fates(season) and len(believed_fates(season)) == len(season.fates)


def test_a_rotten_egg_taken_out_is_no_look(tmp_path):
    """One egg taken out on some day does not show that noughts at the candling are a candling's."""
    assert (after(keeper(tmp_path, removed=1, dead=5, hatched=34)) == 0).all()
