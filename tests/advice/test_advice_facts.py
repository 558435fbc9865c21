"""What a record says as a fact: answers in words, shares of few, machines apart, facts shown in one of two ways."""

import types

import numpy as np
import pandas as pd
import pytest

import hatchkit as hk
from hatchkit.advice import course, evidence, evidence_climate, evidence_records
from hatchkit.advice.evidence import gather, links


@pytest.mark.parametrize(
    ("said", "came"),
    [
        ("no", 0),
        ("No ", 0),
        ("nein", 0),
        ("não", 0),
        ("nem", 0),
        (0, 0),
        (False, 0),
        ("yes", 1),
        ("ja", 1),
        ("si", 1),
        ("by post from Longfield", 1),
        (True, 1),
        (1, 1),
    ],
)
def test_a_no_in_any_language_is_no_post(said, came):
    """Every word, "no" among them, once counted as a yes."""
    assert evidence_records._yes(said) == came


@pytest.mark.parametrize("said", [None, np.nan, "", "  ", pd.NA])
def test_post_that_is_not_on_record_is_not_known(said):
    assert np.isnan(evidence_records._yes(said))


def test_two_of_three_embryos_lying_wrongly_say_less_than_their_share():
    """(2 + 5 x 0.12) / (3 + 5) = 0.325, not 0.67; of thirty with twenty (20 + 0.6) / 35 = 0.589."""
    assert evidence_records._malpositions({"broken_late": 3, "malpositioned": 2}) == pytest.approx(0.325)
    assert evidence_records._malpositions({"broken_late": 30, "malpositioned": 20}) == pytest.approx(20.6 / 35)
    assert np.isnan(evidence_records._malpositions({"broken_late": 2, "malpositioned": 2}))


def test_days_within_the_best_count_half():
    assert [evidence_records._beyond(days) for days in (4.0, 0.0, -4.0)] == [4.0, 0.0, -2.0]


@pytest.mark.parametrize(
    ("days", "first", "last", "late"),
    [
        (21.0, 21 * 24 - 17.0, None, 0.0),  # the middle 4 h before 21 days, the first chick half of 26 h before it
        (21.0, 21 * 24 - 37.0, 21 * 24.0, -20.0),  # the first chick tells, whatever the last one does
        (21.0, None, 21 * 24 + 29.0, 20.0),  # only the last one noted: 26 h behind the first
        (28.0, 28 * 24 - 17.0 * 28 / 21, None, 0.0),
        (21.0, None, None, np.nan),
    ],
)
def test_hours_of_the_first_chick_by_hand(days, first, last, late):
    at = pd.Timestamp("2026-03-01 18:00", tz="UTC")
    row = {"set_at": at}
    for name, hours in (("first_hatch_at", first), ("last_hatch_at", last)):
        row[name] = pd.NaT if hours is None else at + pd.Timedelta(hours=hours)
    assert evidence_climate._late(row, {"incubation_days": days}) == pytest.approx(late, nan_ok=True)


@pytest.mark.parametrize(("cause", "early"), [("warm_throughout", True), ("cool_throughout", False)])
def test_what_the_log_shows_and_what_the_chicks_show_are_two_facts(cause, early):
    """A probe may lie and a clock may be wrong, but not for the same reason: each counts whole."""
    facts = {item: (fact, np.exp(logs)) for item, fact, _, logs, _ in links()[cause]}
    assert facts["log_level"][0] != facts["clock"][0]
    first, last = facts["clock"][1][[0, -1]]
    assert (first > 10 and last < 0.1) if early else (first < 0.1 and last > 10)


def _level(machines, levels):
    """Log level of batch A1 beside good others: (usual, good batches of the same machine)."""
    names = [f"A{place}" for place in range(1, len(levels) + 1)]
    values = pd.DataFrame(np.nan, index=names, columns=list(evidence._items()))
    values["log_level"] = levels
    rows = {name: {"species": "chicken", "incubator": machine} for name, machine in zip(names, machines, strict=True)}
    gathered = types.SimpleNamespace(values=values, rows=rows, good=pd.Series(1.0, index=names))
    item = evidence.evidence(gathered, "A1").set_index("item").loc["log_level"]
    return item["usual"], item["good_batches"]


def test_a_probe_is_compared_with_its_own_machines_good_batches():
    """Probe A always reads -0.5, probe B 0: (0.25 x 0 + 3 x -0.5 + 0.3 x 0) / (0.25 + 3 + 0.3) = -0.42."""
    usual, good = _level("AAAABBB", [-0.5] * 4 + [0.0] * 3)
    assert usual == pytest.approx(-1.5 / 3.55) and good == 3
    usual, good = _level("ABBB", [-0.5] + [0.0] * 3)
    assert usual == 0 and good == 0


def test_a_band_is_as_loose_as_the_causes_own_share_in_it():
    """Three quarters of the harm in one band: sd 1 / sqrt(4 x 0.75) = 0.577; a quarter: 1; the part is added / all."""
    base, added = np.full(course.HAZARDS, 0.1), np.zeros((1, course.HAZARDS))
    added[0, course.PIPPED], added[0, course.CULLED] = 0.3, 0.1
    part, loose = course.loosened(base, added)
    assert part[0, -2:] == pytest.approx([0.75, 0.5], rel=1e-6) and (part[0, :-2] == 0).all()
    assert loose[0, -2:] == pytest.approx([1 / np.sqrt(course.SHAPE_EGGS * 0.75), 1 / np.sqrt(course.SHAPE_EGGS / 4)])
    assert loose[0, 0] == course.LOOSEST


def test_a_band_that_is_all_the_causes_own_has_nothing_of_ordinary_spread():
    part, loose = np.zeros((1, course.BANDS)), np.full((1, course.BANDS), 0.6)
    part[0, -1] = 1.0
    cover = np.linalg.inv(course.precision(np.full(7, 0.5), part, loose))[0]
    assert cover[-1, -1] == pytest.approx(0.6**2 + course.BETWEEN_SIZES**2 + 1e-3)
    assert cover[0, 0] == pytest.approx(0.25 + 1e-3) and cover[0, -1] == pytest.approx(0)


def _folder(folder, rows, toml="", logs=()):
    pd.DataFrame(rows).to_csv(folder / "batches.csv", index=False)
    (folder / "season.toml").write_text('timezone = "UTC"\ndefault_species = "chicken"\n' + toml, encoding="utf-8")
    for name, log in logs:
        log.to_csv(folder / name, index=False)
    return hk.load_season(folder)


def test_noughts_of_looks_that_never_find_anything_are_no_count_of_clears(tmp_path):
    rows = [
        dict(
            batch=f"P{place}",
            set_at=f"2026-0{place}-01 18:00",
            eggs_set=40,
            candle1_at=f"2026-0{place}-09 18:00",
            clear1=0,
            dead1=0,
            hatched=32,
            dead_in_shell=8,
        )
        for place in (2, 3, 4)
    ]
    assert all("clear" not in kinds for kinds in gather(_folder(tmp_path, rows)).kinds.values())


def test_two_probes_that_differ_are_on_record(tmp_path):
    rows = [dict(batch="P1", set_at="2026-03-01 18:00", eggs_set=30, incubator="A", hatched=20, dead_in_shell=10)]
    time = pd.date_range("2026-03-01 18:00", periods=22 * 24, freq="h").strftime("%Y-%m-%d %H:%M")
    rng = np.random.default_rng(1)
    logs = [
        (f"{name}.csv", pd.DataFrame({"time": time, "temperature": (level + rng.normal(0, 0.05, 528)).round(2)}))
        for name, level in (("front", 36.9), ("back", 38.3))
    ]
    season = _folder(tmp_path, rows, '[incubators.A]\nfiles = ["front.csv", "back.csv"]\nair = "fan"\n', logs)
    assert gather(season).values.at["P1", "probe_gap"] == pytest.approx(1.4, abs=0.05)
