"""From a person's counts and looks to fates, windows and stages: small records worked by hand, limits on both sides."""

import math
from types import SimpleNamespace

import numpy as np
import pandas as pd
import pytest

from hatchkit.losses import counts, ledger, schedule, stages, windows
from hatchkit.losses.schedule import Look

NAN, INF = math.nan, math.inf
THREE = [("early", 0.0, 7.0), ("mid", 7.0, 14.0), ("late", 14.0, INF)]
LOOKS = [Look("candle1", 7.0, 5, 2, 1), Look("transfer", 18.0, NAN, 3, NAN), Look("hatch", 21.5)]


def read(**row):
    return counts.read_counts(row, LOOKS)


def test_counts_of_a_record_by_hand():
    """One egg was taken out at a look: of 4 removed in all 3 more; of 6 spoilt 2 are beyond these."""
    found = read(hatched=20, culled=2, removed=4, contaminated=5, cracked=1, pipped_dead=1)
    assert (found.hatched, found.culled, found.removed, found.spoilt, found.finished) == (20, 2, 3, 2, True)
    assert read(hatched=2, culled=3).hatched == 3 and len(read(hatched=2, culled=3).notes) == 1
    assert not read(hatched=3, culled=3).notes
    assert len(counts.read_counts(dict(removed=2), [Look("candle1", 7.0, 0, 0, 3)]).notes) == 1
    assert not counts.read_counts(dict(removed=3), [Look("candle1", 7.0, 0, 0, 3)]).notes
    assert not counts.read_counts(dict(), [Look("candle1", 7.0, 0, 0, 3)]).notes
    assert not read().finished and read(broken_late=0).finished


def test_ways_to_read_the_opened_eggs():
    """10 dead in shell, opened 2 early, 3 mid, 1 late and 2 infertile; 5 clears at the look."""
    found = counts.readings(
        read(dead_in_shell=10, broken_early=2, broken_mid=3, broken_late=1, broken_infertile=2)
    )  # fmt: skip
    assert [way.eggs for way in found] == [12, 10, 14, 18, 10]
    assert [way.unopened for way in found] == [4, 2, 6, 10, 6]
    assert (found[4].clears_infertile, found[4].clears_early, found[4].early) == (2, 2, 0)
    for early, ways in ((3, 5), (4, 4)):  # five clears can be opened, six not
        made = read(dead_in_shell=10, broken_early=early, broken_mid=3, broken_infertile=2)
        assert len(counts.readings(made)) == ways
    assert len(counts.readings(read(dead_in_shell=10))) == 1


def test_the_reading_that_closes_is_taken():
    made = read(hatched=20, dead_in_shell=10, broken_early=2, broken_mid=3, broken_late=1, broken_infertile=2)
    before = counts.seen_before(made)
    assert before == 5 + 2 + 1 + 3 + 20
    for eggs, place in ((12, 0), (10, 1), (14, 2), (18, 3), (13, 0), (11, 1), (9, 0)):
        way, left = counts.choose(made, before + eggs)
        assert way == counts.readings(made)[place] and left == eggs - way.eggs


def test_groups_of_eggs_and_the_days_between_which_they_ended():
    made = read(hatched=20, culled=2, pipped_dead=1, dead_in_shell=4, broken_mid=1, removed=2)
    way, left = counts.choose(made, 45)
    rows = [(row["fate"], row["eggs"], row["after_day"], row["by_day"], row["found_at"])
            for row in counts.groups(made, way, left, THREE, 21.0)]  # fmt: skip
    assert rows[:4] == [("clear", 5, 0, 7, "candle1"), ("dead", 2, 0, 7, "candle1"), ("removed", 1, 0, 7, "candle1"),
                        ("dead", 3, 7, 18, "transfer")]  # fmt: skip
    assert [row[:3] for row in rows[4:6]] == [("hatched", 18, 21.5), ("culled", 2, 21.5)]
    assert rows[6] == ("pipped_dead", 1, 19.5, 21.5, "hatch") and rows[7] == ("dead", 3, 18, 21.5, "hatch")
    assert rows[8] == ("dead", 1, 7, 14, "hatch") and rows[9] == ("removed", 1, 0, 21.5, "")
    assert rows[10][:3] == ("unaccounted", 45 - 5 - 2 - 1 - 3 - 20 - 1 - 4 - 1, 0.0) and len(rows) == 11
    late = counts.groups(counts.read_counts(dict(pipped_dead=1), [Look("candle1", 9.0), Look("hatch", 20.0)]),
                         counts.Reading(0, 0, 0, 0, 0), 5.0, THREE, 21.0)  # fmt: skip
    assert late[0]["after_day"] == 19.0
    open_ = counts.groups(counts.read_counts({}, LOOKS), counts.Reading(0, 0, 0, 0, 0), 5.0, THREE, 21.0)
    assert open_[-1]["fate"] == "unaccounted" and open_[-1]["after_day"] == 18.0


def test_opened_clears_are_given_to_the_first_looks():
    looks = [Look("candle1", 7.0, 3, 0, 0), Look("candle2", 14.0, 4, 0, 0), Look("hatch", 21.0)]
    way = counts.Reading(0, 0, 0, 0, 0, clears_infertile=2, clears_early=3)
    rows = [(row["fate"], row["eggs"], row["found_at"])
            for row in counts.groups(counts.read_counts(dict(hatched=1), looks), way, 0, THREE, 21.0)]  # fmt: skip
    assert rows[:4] == [("infertile", 2, "candle1"), ("dead", 1, "candle1"), ("dead", 2, "candle2"),
                        ("clear", 2, "candle2")]  # fmt: skip


@pytest.mark.parametrize(("given", "interval"), [
    ((7, 14, 10, 21), (10, 14)), ((7, 14, 14, 21), (7, 14)), ((0, 7, 10, 21), (0, 7)), ((14, INF, 18, 21), (18, 21)),
    ((14, 20, 5, 14), (14, 14)),
])  # fmt: skip
def test_what_an_opened_egg_tells_beside_the_last_look(given, interval):
    assert counts.opened_interval(*given) == interval


def test_usual_days_of_looks_and_the_end_of_the_hatch():
    """Thirds and 18/21 where the species has no days of its own; a third candling at three quarters."""
    figures = dict(incubation_days=28.0)
    row = dict(batch="a", set_at=pd.Timestamp("2025-03-01", tz="UTC"))
    looks = [dict(name=name, clear=1) for name in ("candle1", "candle2", "candle3", "transfer")]
    found, _ = schedule.schedule(row, looks, figures)
    assert [look.day for look in found] == pytest.approx([28 / 3, 56 / 3, 21, 24, 28])
    found, _ = schedule.schedule(row, looks, figures | dict(candle1_day=8.0, transfer_day=25.0))
    assert [look.day for look in found] == pytest.approx([8, 56 / 3, 21, 25, 28])
    for day, end in ((27.4, 28.0), (27.6, 28.1), (30.0, 30.5)):
        found, _ = schedule.schedule(row, [dict(name="transfer", day=day)], figures)
        assert found[-1].day == pytest.approx(end)
    dated = [dict(name="candle1", looked_at=row["set_at"] + pd.Timedelta(hours=180)), dict(name="hatch", day=26.0)]
    found, notes = schedule.schedule(row, dated, figures)
    assert [look.day for look in found] == [7.5, 26.0] and not notes
    for off, told in ((7.5, 1), (7.6, 0)):
        dated[1]["day"] = off
        assert len(schedule.schedule(row, dated, figures)[1]) == told
    for day, told in ((0.0, 1), (0.1, 0)):
        found, notes = schedule.schedule(row, [dict(name="candle1", day=day, clear=2)], figures)
        assert len(notes) == told and found[0].day == pytest.approx(28 / 3 if told else 0.1) and found[0].clear == 2
    assert len(schedule.schedule(row, [dict(name="candle2")], figures)[0]) == 1


ENDS, NAMES = [7.0, 18.0, 21.0], ["candle1", "transfer", "hatch"]
STARTS = [0.0, 7.0, 18.0]


@pytest.mark.parametrize(("fate", "after", "by", "found", "finished", "window"), [
    ("dead", 0, 7, "candle1", True, 0), ("dead", 7, 18, "transfer", True, 1), ("dead", 0, 18, "transfer", True, 1),
    ("dead", 6.9, 7.1, "hatch", True, 2), ("dead", 0, 21, "", True, 2), ("removed", 0, 7, "candle1", True, 0),
    ("removed", 0, 21, "", True, None), ("hatched", 21, INF, "hatch", True, INF),
    ("clear", 0, 7, "candle1", True, None),
    ("unaccounted", 0, NAN, "", True, INF), ("unaccounted", 7, NAN, "", False, 0),
    ("unaccounted", 17.9, NAN, "", False, 0),
    ("unaccounted", 18, NAN, "", False, 1), ("unaccounted", 6.9, NAN, "", False, None),
])  # fmt: skip
def test_up_to_which_window_an_egg_was_at_risk(fate, after, by, found, finished, window):
    row = dict(fate=fate, after_day=after, by_day=by, found_at=found)
    assert windows.window_of(row, STARTS, ENDS, NAMES, finished=finished) == window


def test_eggs_at_risk_and_dead_in_every_window():
    """30 set: 4 clear, 2 dead by day 7, 3 by day 18, 1 removed then, 5 in the shell, 13 chicks, 2 nobody knows of."""
    rows = [("clear", 4, 0, 7, "candle1"), ("dead", 2, 0, 7, "candle1"), ("dead", 3, 7, 18, "transfer"),
            ("removed", 1, 7, 18, "transfer"), ("dead", 5, 18, 21, "hatch"), ("hatched", 13, 21, NAN, "hatch"),
            ("unaccounted", 2, 0, NAN, "")]  # fmt: skip
    fates = [dict(zip(("fate", "eggs", "after_day", "by_day", "found_at"), row, strict=True)) for row in rows]
    looks = [Look("candle1", 7.0), Look("transfer", 18.0), Look("hatch", 21.0)]
    kept = SimpleNamespace(kinds={"clear"}, looks={"candle1", "hatch"})
    start = pd.Timestamp("2025-03-01", tz="UTC")
    made = windows._batch_windows(dict(batch="a", set_at=start), looks, fates, kept, finished=True)
    assert [row[1:5] for row in made] == [[1, "candle1", 0, 7], [2, "transfer", 7, 18], [3, "hatch", 18, 21]]
    assert [row[7] for row in made] == [26, 24, 20] and [made[0][8], made[2][8]] == [2, 5] and math.isnan(made[1][8])
    assert [row[9] for row in made] == [4, 0, 0]
    assert made[1][5:7] == [start + pd.Timedelta(days=7), start + pd.Timedelta(days=18)]
    unknown = SimpleNamespace(kinds=set(), looks=set())
    made = windows._batch_windows(dict(batch="a"), looks, fates, unknown, finished=False)
    assert len(made) == 2 and all(math.isnan(row[7]) for row in made) and math.isnan(made[1][9]) and made[0][9] == 4
    made = windows._batch_windows(dict(batch="a"), looks, fates[:-1], unknown, finished=True)
    assert [row[7] for row in made] == [24, 22, 18]


def test_stages_hold_whole_intervals_only():
    assert stages.stage_of(0, 7, THREE) == "early" and stages.stage_of(7, 14, THREE) == "mid"
    assert stages.stage_of(6.9, 14, THREE) is None and stages.stage_of(7, 14.1, THREE) is None
    assert stages.stage_of(14, INF, THREE) == "late"
    own = stages.limits_for("chicken", 21.0, dict(first=(0, 3), rest=(3, 20)))
    assert own == [("first", 0, 3), ("rest", 3, INF)]
    for wrong in ({}, dict(a=(1, 3)), dict(a=(0, 3), b=(4, 5)), dict(a=(0, 3), b=(3, 3)), dict(a=(0, 0))):
        with pytest.raises(Exception):  # noqa: B017
            stages._own_limits(wrong)
    thirds = stages.limits_for("duck", 27.0)
    assert [edge for limits in thirds for edge in limits[1:]] == pytest.approx([0, 9, 9, 18, 18, INF])


def test_the_age_of_an_embryo_by_its_look():
    """Between two days of the table half a day either way; other birds by the allowance of three days."""
    table = stages._looks()
    day = 8.25
    assert day not in table and stages.age_from_look(day, "chicken", 21.0) == (7.75, 8.75)
    assert stages.age_from_look(0.25, "chicken", 21.0)[0] == 0.0
    first = min(table)
    assert stages.age_from_look(first, "chicken", 21.0)[0] == max(0.0, table[first][0])
    assert stages.age_from_look(10.0, "duck", 28.0) == (7.0, 13.0) and stages.age_from_look(2.0, "duck", 28.0)[0] == 0
    assert stages.age_from_look(24.9, "duck", 28.0)[1] == pytest.approx(27.9)
    assert stages.age_from_look(25.0, "duck", 28.0)[1] == INF


def test_eggs_that_a_ledger_takes_off_its_denominators():
    rows = [dict(fate=fate, eggs=eggs, found_at=at) for fate, eggs, at in (
        ("clear", 4, "candle1"), ("infertile", 1, "hatch"), ("dead", 2, "candle1"), ("removed", 1, ""),
        ("removed", 2, "hatch"), ("unaccounted", 3, ""), ("hatched", 20, "hatch"))]  # fmt: skip
    assert ledger._denominators(33, rows, True, True) == [33, 28, 26, 0]
    assert ledger._denominators(32, rows, True, True) == [32, 27, 25, 1]
    assert np.isnan(ledger._denominators(33, rows, False, False)[1:3]).all()
    found = ledger._by_look(rows + [dict(fate="dead", eggs=5, found_at="hatch")], {"candle1", "transfer"}, {"transfer"})
    assert math.isnan(found["candle1"][0])
    assert found["transfer"] == (0, 0, 0) and math.isnan(found["hatch"][0])
    found = ledger._by_look(rows + [dict(fate="dead", eggs=5, found_at="hatch")], {"candle1"}, {"candle1", "hatch"})
    assert found["candle1"] == (2, 0, 0) and found["hatch"] == (5, 0, 5)
