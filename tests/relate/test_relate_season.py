"""From a season to its relation: the whole chain on seasons with a known cause, in memory."""

from dataclasses import replace

import numpy as np
import pandas as pd
import pytest

import hatchkit as hk
from hatchkit import reference
from hatchkit.findings import more_relate
from hatchkit.pages.parts import said as say_it
from hatchkit.relate.design import design
from hatchkit.relate.exposure import add_doses, batch_tracks, exposure
from hatchkit.relate.late import next_windows
from hatchkit.relate.measures import known_dose
from hatchkit.relate.relation import holm, relate_exposure, relate_losses

UNTOLD = ("cannot tell", "not apart")


def told(found):
    """What is told of a relation: code -> facts."""
    return {one.code: one.facts for one in more_relate.relation(found)}


@pytest.fixture(scope="module")
def warm():
    """A season in which one batch met a severe warm spell, with its relation and the planted answer."""
    from hatchkit.simulate import draw_season

    season, answer = draw_season(seed=4, cause="drift_warm", severity="severe")
    return season, answer, relate_losses(season)


def made_exposure(batches=16, exposed=4, *, ratio=8.0, seed=2, machines=2):
    """An exposure table with three windows a batch; every fourth batch met heat in its second window."""
    rng = np.random.default_rng(seed)
    start = pd.Timestamp("2024-03-01 09:00", tz="UTC")
    rows = []
    for batch in range(batches):
        left, begin = 50, start + pd.Timedelta(days=30 * batch)
        for number, (name, day, end, base) in enumerate(
            [("candle1", 0.0, 7.0, 0.03), ("candle2", 7.0, 14.0, 0.02), ("hatch", 14.0, 21.5, 0.05)]
        ):
            hit = number == 1 and batch % 4 == 1 and batch // 4 < exposed
            died = rng.binomial(left, min(base * (ratio if hit else 1), 0.9))
            rows.append(
                dict(
                    batch=f"b{batch}",
                    window=number + 1,
                    name=name,
                    day_start=day,
                    day_end=end,
                    days=end - day,
                    start=begin + pd.Timedelta(days=day),
                    end=begin + pd.Timedelta(days=end),
                    at_risk=float(left),
                    died=float(died),
                    share_logged=1.0,
                    species="chicken",
                    incubator="AB"[batch // 2 % machines],
                    flock="x",
                    egg_degree_hours_warm=30.0 * hit,
                    egg_degree_hours_cold=4.0 * (number == 0),
                    heat_dose_h=2.0 * hit,
                    hours_warm=9.0 * hit,
                    hours_cold=3.0,
                    lost_hours=0.3,
                )
            )
            left -= died
    return pd.DataFrame(rows)


@pytest.fixture(scope="module")
def found():
    """Four of sixteen batches hit in their second window, with an eightfold hazard."""
    return relate_exposure(made_exposure())


def test_exposure_has_the_documented_columns_and_knows_what_was_not_logged(warm):
    season, _, _ = warm
    table = exposure(season)
    listed = reference.load("columns_relate")
    assert list(table.columns) == listed.loc[listed["table"] == "exposure", "column"].tolist()
    cut = replace(
        season,
        readings=season.readings[season.readings["time"] < season.readings["time"].min() + pd.Timedelta(days=40)],
    )
    short = exposure(cut)
    dark = short["share_logged"] == 0
    assert dark.any() and not dark.all()
    assert short.loc[dark, ["egg_degree_hours_warm", "hours_warm", "egg_peak_c"]].isna().all(axis=None)


def test_a_season_without_any_log_says_so(warm):
    season, _, _ = warm
    found = relate_losses(replace(season, readings=season.readings.iloc[:0]))
    assert (found.verdict, found.because) == ("cannot tell", dict(why="not_logged"))
    assert set(told(found)) == {"relate_why_not_logged"}


def exposed_batches(relation):
    table = relation.exposure
    return list(dict.fromkeys(table.loc[table["dose"] > 0, "batch"]))


def test_one_exposed_batch_is_never_called_a_clear_sign_by_the_season(warm):
    season, answer, found = warm
    assert found.exposure.loc[found.exposure["dose"] > 0, "batch"].nunique() == 1
    assert found.verdict in UNTOLD and "relate_one_exposed" in told(found)


def test_tracks_come_once_for_each_batch_and_none_where_there_is_no_log(warm):
    season, _, _ = warm
    tracks = batch_tracks(season, season.batches["batch"])
    assert set(tracks) == set(season.batches["batch"])
    assert all(track is not None for track in tracks.values())
    empty = batch_tracks(replace(season, readings=season.readings.iloc[:0]), season.batches["batch"])
    assert set(empty.values()) == {None}


def test_four_hit_batches_of_sixteen_are_found_in_the_right_window(found):
    assert found.verdict == "clear sign"
    windows = found.windows.set_index("name")
    assert windows.index.tolist() == ["candle1", "candle2", "hatch"]
    assert windows.loc["candle2", "low"] > 1 and windows.loc["candle2", "exposed"] == 4
    assert windows.loc[["candle1", "hatch"], "hazard_ratio"].isna().all()


def test_tables_have_the_documented_columns(found):
    listed = reference.load("columns_relate").groupby("table")["column"].agg(list)
    for name, table in (
        ("windows", found.windows),
        ("windows", found.later),
        ("next", found.next_window),
        ("batches", found.batches),
        ("excess", found.excess),
        ("confounding", found.confounding),
    ):
        assert list(table.columns) == listed[f"relate_{name}"]


def test_deaths_that_come_late_show_in_the_table_of_later_windows():
    table = found_late(dead=(18, 18, 18, 18))
    # The heat now lies two looks before the deaths, so the window right after it is an ordinary one.
    hit = table["batch"].isin(table.loc[table["egg_degree_hours_warm"] > 0, "batch"])
    table["egg_degree_hours_warm"] = 30.0 * (hit & (table["name"] == "candle1"))
    found = relate_exposure(table)
    assert found.verdict != "clear sign"
    later = found.later.set_index("name")
    assert later.loc["candle1", "low"] > 1
    assert told(found)["relate_later"]["looks"] == ["candle1"]


def found_late(seed=5, lag="hatch", dead=(12, 9, 11, 8)):
    """No more deaths in the hit windows themselves, but many at the look after them."""
    table = made_exposure(ratio=1.0, seed=seed)
    hit = table.loc[table["egg_degree_hours_warm"] > 0, "batch"]
    for batch, count in zip(hit, dead, strict=True):
        table.loc[(table["batch"] == batch) & (table["name"] == lag), "died"] = float(count)
    return table


def test_deaths_found_at_the_look_after_are_told_beside_the_question():
    relation = relate_exposure(found_late())
    after = relation.next_window.set_index("batch")
    assert after.index.tolist() == ["b1", "b5", "b9", "b13", "all"]
    assert (after["exposed"].iloc[:-1] == "candle2").all() and (after["name"].iloc[:-1] == "hatch").all()
    assert after.loc["all", "died"] == 40 == after["died"].iloc[:-1].sum()
    # Unexposed batches lose 5 % of some 48 eggs there.
    assert 4 < after.loc["all", "expected"] < 18 and after.loc["all", "high"] < 40
    assert after.loc["all", "chance"] < 0.01
    said = told(relation)["relate_after"]
    assert said["died"] == 40 and said["others"] == 1
    assert ("b1", 12) in [(one.facts["batch"], one.facts["died"]) for one in said["where"]]
    assert relation.verdict not in ("clear sign", "some sign")


def test_the_window_after_is_not_mentioned_where_it_holds_no_more_than_usual(found):
    assert found.next_window.iloc[-1]["died"] <= found.next_window.iloc[-1]["high"]
    assert "relate_after" not in told(found)


def test_a_window_after_that_met_an_excursion_itself_or_has_no_log_is_left_out():
    table = found_late()
    hatch = table["name"] == "hatch"
    table.loc[hatch & (table["batch"] == "b1"), "egg_degree_hours_warm"] = 50.0
    table.loc[hatch & (table["batch"] == "b5"), "share_logged"] = 0.0
    columns = ["egg_degree_hours_warm", "egg_degree_hours_cold"]
    table.loc[hatch & (table["batch"] == "b5"), columns] = np.nan
    assert relate_exposure(table).next_window["batch"].tolist() == ["b9", "b13", "all"]


def test_windows_after_do_not_teach_what_is_expected_there():
    few = relate_exposure(found_late()).next_window.iloc[-1]
    many = relate_exposure(found_late(dead=(30, 30, 30, 30))).next_window.iloc[-1]
    assert many["expected"] == pytest.approx(few["expected"])


def test_the_window_after_seldom_speaks_when_nothing_acts():
    spoke = [more_relate._right_after(next_windows(design(windowed(seed)))) for seed in range(16)]
    assert sum(map(bool, spoke)) <= 2


def windowed(seed):
    """The windows of a season without effect, as the model takes them."""
    table = made_exposure(ratio=1.0, seed=seed)
    return table.assign(dose=known_dose(table), window=table["name"])


def test_shares_are_adjusted_for_their_number_as_the_library_does():
    from statsmodels.stats.multitest import multipletests

    for shares in ([], [0.2], [0.04, 0.01, 0.03, 0.5, 0.01], [0.9, 0.6, 0.7]):
        shares = np.array(shares)
        wanted = multipletests(shares, method="holm")[1] if len(shares) else shares
        assert holm(shares) == pytest.approx(wanted)


def test_a_window_logged_in_part_counts_only_if_its_log_holds_an_excursion():
    table = made_exposure()
    hit = table["egg_degree_hours_warm"] > 0
    table["share_logged"] = np.where(hit | (table["window"] == 1), 0.4, 1.0)
    found = relate_exposure(table)
    assert (found.exposure.loc[hit, "dose"] > 0).all()
    assert found.exposure.loc[table["window"] == 1, "dose"].isna().all()
    assert told(found)["relate_unlogged"] == dict(unknown=16, windows=len(table))


@pytest.mark.parametrize("language", ["en", "de", "fr", "es"])
def test_never_is_a_bare_p_value_shown_and_always_the_question(found, language):
    for relation in (found, relate_exposure(made_exposure(batches=5, exposed=1))):
        said = " ".join(say_it(one, language, "C") for one in more_relate.relation(relation))
        assert not {"nan", "none", "inf", "p"} & set(said.replace(".", " ").split())
        assert "relate_asked" in told(relation)


def test_the_public_face_reaches_the_room():
    assert hk.exposure is exposure and hk.relate_losses is relate_losses


def test_windows_without_a_clock_have_no_dose():
    table = pd.DataFrame({"batch": ["a"], "start": [pd.NaT], "end": [pd.NaT]})
    assert add_doses(table, {})["share_logged"].tolist() == [0.0]


def poor_seasons():
    table = made_exposure()
    return {
        "no windows": table.iloc[:0],
        "one batch": table[table["batch"] == "b1"],
        "nothing counted": table.assign(died=np.nan),
        "no incubator named": table.assign(incubator=None),
        "all in one machine at once": table.assign(incubator="A", start=table["start"].min(), end=table["end"].max()),
        "no deaths": table.assign(died=0.0),
        "looks on the same day": table.assign(days=0.0),
        "every batch hit alike": table.assign(egg_degree_hours_warm=30.0),
    }


@pytest.mark.parametrize("name", list(poor_seasons()))
def test_poor_seasons_give_a_verdict_in_words_and_no_exception(name):
    relation = relate_exposure(poor_seasons()[name])
    said = " ".join(say_it(one, "en", "C") for one in more_relate.relation(relation))
    assert said.endswith((".", "?")) and not {"nan", "none", "inf"} & set(said.split())
    if name not in ("no incubator named", "all in one machine at once"):
        assert relation.verdict in UNTOLD, relation.verdict


def unseen_hit(**more):
    """The dead of the one window that met heat were not counted; so it is with two windows that met nothing."""
    table = made_exposure(exposed=1, **more)
    hit = table["egg_degree_hours_warm"] > 0
    return table.assign(died=table["died"].mask(hit | ((table["window"] == 1) & table["batch"].isin(["b0", "b2"]))))


def test_an_excursion_whose_dead_were_not_counted_is_not_called_none():
    found = relate_exposure(unseen_hit())
    assert found.because == dict(why="uncounted", windows=1, batches=["b1"], not_counted=True)
    assert told(found)["relate_left_out"] == dict(why="not_counted", windows=3)


def test_different_reasons_for_leaving_windows_out_are_told_apart():
    table = made_exposure()
    table.loc[0, "died"], table.loc[4, "at_risk"] = 99.0, np.nan
    left = [one.facts for one in more_relate.relation(relate_exposure(table)) if one.code == "relate_left_out"]
    assert {one["why"]: one["windows"] for one in left} == dict(too_many_dead=1, not_counted=1)


def test_without_any_log_the_verdict_is_all_that_is_said():
    table = made_exposure().assign(share_logged=0.0, egg_degree_hours_warm=np.nan, egg_degree_hours_cold=np.nan)
    assert [one.code for one in more_relate.relation(relate_exposure(table))] == ["relate_why_not_logged"]
