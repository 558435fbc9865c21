"""What is worth telling of a spell, when a batch is over, which eggs are cracked: limits on both sides, by hand."""

from types import SimpleNamespace

import numpy as np
import pandas as pd
import pytest
from climate_seasons import SET_AT, hour, season

from hatchkit import reference
from hatchkit.climate import excursions, machine_air, ranges, timeline, weighings
from hatchkit.climate.dose import DOSE_COLUMNS

#: Readings, and hours between them (exact in binary, so that limits are met exactly).
SIZE, STEP = 200, 0.125


def described(monkeypatch, *, hours, level, looks="outage", on="air", side=1, egg=(38.0, 38.0, 38.0), speaks=STEP):
    """A spell of `hours` from reading 50 on; eggs before it, in it and within two hours after it."""
    clock = STEP * np.arange(SIZE)
    last = 50 + round(hours / STEP) - 1
    inside = (np.arange(SIZE) >= 50) & (np.arange(SIZE) <= last)
    columns = {name: np.full(SIZE, 38.0) for name in DOSE_COLUMNS} | dict(
        clock_h=clock, age_days=clock / 24, hen_days=clock / 24, hours=np.full(SIZE, speaks),
        level=np.where(inside, side * level, 0), stage=np.full(SIZE, "setting"),
        air_c=np.where(inside, 38 + side, 38.0),
        egg_c=np.where(np.arange(SIZE) < 50, egg[0], np.where(inside, egg[1], egg[2])),
    )  # fmt: skip
    columns["egg_low_c"], columns["egg_high_c"] = columns["egg_c"] - 0.5, columns["egg_c"] + 0.7
    monkeypatch.setattr(excursions.shapes, "looks_like", lambda *asked: (looks, dict(seen="x")))
    return excursions._describe(columns, (50, last, side), on, STEP)


@pytest.mark.parametrize(("looks", "hours", "level", "on", "notable"), [
    ("outage", STEP, 2, "air", True), ("outage", 6.0, 1, "air", False), ("outage", 6.125, 1, "air", True),
    ("outage", 3.0, 1, "egg", True), ("opening", 2.0, 3, "air", False), ("opening", 2.125, 3, "air", True),
    ("loading", 12.0, 3, "air", False), ("loading", 12.125, 3, "air", True),
])  # fmt: skip
def test_what_is_worth_telling(monkeypatch, looks, hours, level, on, notable):
    """Not an opening of two hours nor twelve of warming up, nor six hours in the watch zone where the egg was well."""
    found = described(monkeypatch, hours=hours, level=level, looks=looks, on=on)
    assert found["hours"] == pytest.approx(hours)
    assert bool(found["notable"]) == notable and found["looks_like"] == looks


@pytest.mark.parametrize(("side", "kind", "egg", "worst"), [
    (1, "warm", (50.0, 39.0, 38.5), 39.0), (1, "warm", (50.0, 38.5, 39.5), 39.5), (-1, "cold", (9.0, 36.0, 37.0), 36.0),
    (-1, "cold", (9.0, 37.0, 35.0), 35.0),
])  # fmt: skip
def test_a_spell_as_a_row(monkeypatch, side, kind, egg, worst):
    found = described(monkeypatch, hours=1.0, level=2, side=side, egg=egg)
    assert (found["kind"], found["level"], found["extreme_c"]) == (kind, "alarm", 38 + side)
    assert (found["egg_extreme_c"], found["egg_extreme_low_c"]) == (worst, worst - 0.5)
    assert found["egg_extreme_high_c"] == worst + 0.7 and found["gap_share"] == pytest.approx(0)
    assert (found["first"], found["last"], found["stage"]) == (50, 57, "setting")
    assert [found[name] * 24 for name in ("day_start", "day_end", "hen_day")] == pytest.approx([6.25, 7.125, 6.25])
    thin = described(monkeypatch, hours=1.0, level=2, side=side, egg=egg, speaks=STEP / 2)
    assert thin["gap_share"] == pytest.approx(1 - 0.5 / 0.9375)


@pytest.mark.parametrize(("row", "transfer", "end"), [
    ({}, 18 * 24, 23 * 24), (dict(transfer_at=hour(400)), 400, 23 * 24), (dict(last_hatch_at=hour(510)), 18 * 24, 510),
    (dict(last_hatch_at=hour(510), taken_off_at=hour(520)), 18 * 24, 520),
])  # fmt: skip
def test_a_batch_is_over_two_days_after_its_time_where_nothing_is_told(row, transfer, end):
    hen = reference.species_table().loc["chicken"]
    found = ranges.stages(dict(set_at=SET_AT) | row, hen)
    assert found == dict(set_at=SET_AT, transfer_at=hour(transfer), end_at=hour(end))


def test_levels_grow_outwards():
    """A range of 37 to 38, watch to 36 and 39, alarm to 35 and 40; the edges belong inside."""
    steps = np.array([[37.0, 38.0], [36.0, 39.0], [35.0, 40.0]])
    at = [37.0, 38.0, 38.1, 39.0, 39.1, 40.0, 40.1, 36.9, 36.0, 35.9, 35.0, 34.9, np.nan]
    assert ranges.level_of(at, steps).tolist() == [0, 0, 1, 1, 2, 2, 3, -1, -1, -2, -2, -3, 0]


def lines(*slopes, **more):
    index = [str(n) for n in range(len(slopes))]
    return pd.DataFrame(dict(name=index, namesakes=False, slope_g_day=slopes) | more, index=index)


def test_an_egg_that_loses_more_than_twice_the_middle_is_cracked_where_five_were_weighed():
    none = pd.DataFrame()
    for slopes, cracked in (((0.4, 0.4, 0.4, 0.4, 0.81), ["4"]), ((0.4, 0.4, 0.4, 0.4, 0.8), []),
                            ((0.4, 0.4, 0.4, 0.9), [])):  # fmt: skip
        found = weighings.left_out(lines(*slopes), none, batch="1", alive_until=18.0)
        assert found.index[found == "cracked"].tolist() == cracked and set(found) <= {"", "cracked"}


def test_eggs_that_did_not_live_and_namesakes_of_them_are_left_out():
    """Egg 1 on two trays: one of them was infertile, so both are left out; eggs of other batches do not matter."""
    fates = pd.DataFrame(dict(batch=["1", "1", "1", "1", "2", "1"], egg=["1", "2", "3", "4", "5", ""],
                              by_day=[0, 0, 9.0, 19.0, 9.0, 9.0],
                              fate=["infertile", "removed", "dead", "dead", "dead", "dead"]))  # fmt: skip
    table = lines(0.4, 0.4, 0.4, 0.4, 0.4, 0.4).set_axis(["tray a: 1", "1", "2", "3", "4", "5"])
    table["name"] = ["1", "1", "2", "3", "4", "5"]
    table["namesakes"] = [False] * 5 + [True]
    found = weighings.left_out(table, fates, batch="1", alive_until=18.0)
    assert found.tolist() == ["infertile or its namesake", "infertile", "removed", "dead", "", "namesakes"]


def test_the_picture_of_a_machine_has_a_step_for_each_point_of_its_width():
    lines = timeline.incubator_timeline(season(), "A")
    whole = lines.batches["end_at"].iloc[0] - lines.batches["set_at"].iloc[0]
    assert lines.air["time"].diff().iloc[1:].eq(whole / 360).all()
    assert lines.incubator == "A" and lines.gaps.empty and lines.batches["lane"].tolist() == [0]


def test_events_of_several_seasons_keep_numbers_of_their_own(monkeypatch):
    tables = dict(a=[1, 1, 2], b=[], c=[1, 2, 3], d=[1])
    monkeypatch.setattr(excursions, "find_excursions", lambda part: pd.DataFrame(dict(event=tables[part], on=part)))
    found = excursions._all_excursions(SimpleNamespace(parts=list("abcd")))
    assert found["event"].tolist() == [1, 1, 2, 3, 4, 5, 6] and found["on"].tolist() == list("aaacccd")
    assert excursions._of_parts(SimpleNamespace(parts=["b"])).empty


def test_no_reading_speaks_for_nothing():
    speaks, gap = machine_air.coverage([], [], 0.1)
    assert (speaks.shape, gap.shape, gap.dtype) == ((0,), (0,), bool)


def test_the_transfer_is_as_told_or_of_the_kind():
    figures = dict(transfer_day=18, incubation_days=21)
    for told, day in ((dict(transfer_at=hour(402)), 16.75), (dict(transfer_at=pd.NaT), 18.0), ({}, 18.0)):
        when = ranges.stages(dict(set_at=SET_AT, **told), figures)
        assert when["transfer_at"] - when["set_at"] == pd.Timedelta(days=day)
