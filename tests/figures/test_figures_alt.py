"""What each picture tells, from facts: also where there is nothing to tell."""

import re

import numpy as np
import pandas as pd

from hatchkit import say
from hatchkit.advice import pictured as advised
from hatchkit.climate import pictured as met
from hatchkit.losses import pictured as lost
from hatchkit.relate import pictured as related

DOSE = pd.DataFrame(
    {
        "batch": list("abc"),
        "exposed": [False, False, True],
        "dose": [0.0, 0, 2],
        "share_died": [0.1, 0.3, 0.4],
        "share_expected_low": 0.0,
        "share_expected_high": 0.2,
    }
)


def told(name, facts):
    """The sentence, with every placeholder filled."""
    words = say.text(f"picture_{name}", facts)
    assert "{" not in words and not re.search(r"\bnan\b|\bNone\b(?! of)", words)
    return words


def test_losses_against_the_dose_count_those_above_what_is_usual():
    words = told("losses_against_dose", related.losses_against_dose(DOSE))
    assert words.startswith("1 of 1 batch") and "c lost most, 40 %" in words
    assert "2 batches without such a spell, 1 lost" in words
    assert "none lost more" in told("losses_against_dose", related.losses_against_dose(DOSE.assign(share_died=0.1)))
    assert "nothing to compare" in told("losses_against_dose", related.losses_against_dose(DOSE[:2]))


def test_ratios_say_whether_chance_is_ruled_out():
    row = dict(name="candle1", hazard_ratio=4.0, low=1.5, high=9.0)
    table = pd.DataFrame([row, row | dict(name="candle2", hazard_ratio=1.0, low=0.5, high=2.0)])
    assert "more than chance in the stretch up to the first candling, 4 times" in told(
        "hazard_by_window", related.hazard_by_window(table)
    )
    unsure = related.hazard_by_window(table.assign(low=0.5))
    assert "chance is not ruled out" in told("hazard_by_window", unsure)
    assert "No stretch can be compared" in told(
        "hazard_by_window", related.hazard_by_window(table.assign(hazard_ratio=np.nan))
    )


def test_a_ledger_without_a_loss_and_one_with_one():
    table = pd.DataFrame({"stage": ["hatched", "late"], "eggs": [20.0, 0.0], "set": 20})
    assert told("egg_ledger", lost.egg_ledger(table)).endswith("Nothing was lost.")
    assert "2 late dead, then nothing else" in told("egg_ledger", lost.egg_ledger(table.assign(eggs=[18.0, 2.0])))


def test_a_tray_says_yes_no_or_too_few():
    places = pd.DataFrame(
        {
            "tray": "1",
            "row": [1, 1, 2, 2],
            "col": [1, 2, 1, 2],
            "fate": ["dead", "hatched"] * 2,
            "died": [True, False] * 2,
            "at_risk": True,
        }
    )
    rows = pd.DataFrame(
        {
            "question": ["neighbours", "edge", "together"],
            "seen": [5.0, 0.5, np.nan],
            "expected": [2.0, 0.4, np.nan],
            "chance": [0.01, 0.5, 0.02],
            "smallest": [0.001] * 3,
        }
    )
    words = [
        told("tray_map", lost.tray_map("a", places, table))
        for table in (rows, rows.assign(chance=0.5), rows.assign(smallest=0.3), rows[:0])
    ]
    assert "together more than chance" in words[0] and "as chance would put them" in words[1]
    assert "Too few" in words[2] and "Too few" in words[3] and "2 embryos died, 2 of these at the edge" in words[0]
    season = pd.DataFrame({"batches": [2], "at_risk": [9], "died": [3]})
    assert "5 touching pairs, where 2" in told("tray_season", lost.tray_season(season, rows))
    edge = rows.assign(chance=[0.5, 0.01, 0.02])
    assert "50 % at the edge, where 40 %" in told("tray_season", lost.tray_season(season, edge))


def test_water_tells_verdicts_and_guesses():
    row = dict(
        batch="1",
        weighed="eggs",
        projected_share=0.12,
        projected_low=0.11,
        projected_high=0.13,
        target_low=0.11,
        target_high=0.13,
        verdict="on target",
    )
    assert told("weight_loss_track", met.weight_loss_track(row)).endswith("on target.")
    assert "too much was lost" in told("weight_loss_track", met.weight_loss_track(row | dict(verdict="too much")))
    guess = row | dict(weighed="no", verdict="no weighings", projected_share=np.nan)
    assert "nothing is known" in told("weight_loss_track", met.weight_loss_track(guess))
    table = pd.DataFrame([row, row | dict(batch="2", verdict="too little")])
    assert "1 (2) lost too little" in told("water_against_target", met.water_against_target(table))
    assert "None of 2" in told("water_against_target", met.water_against_target(table.assign(weighed="no")))


def test_probes_that_nobody_checked_and_one_that_the_hatch_contradicts():
    row = dict(incubator="A", probe="p", checked=False, verdict="reads low", clock_bias_c=-0.5)
    words = told("probe_truth", met.probe_truth(pd.DataFrame([row])))
    assert "never checked" in words and "machine A reads 0.5 °C too low" in words
    assert "0.9 °F" in told("probe_truth", met.probe_truth(pd.DataFrame([row]), unit="F"))
    calm = pd.DataFrame([row | dict(verdict="probes disagree", checked=True)])
    assert "Probes disagree in machine A" in told("probe_truth", met.probe_truth(calm))


def test_a_hatch_that_nobody_saw():
    table = pd.DataFrame({"batch": ["1"], "verdict": ["not seen"], "difference_h": [np.nan]})
    assert "Of no batch" in told("hatch_clock", met.hatch_clock(table))
    late = told("hatch_clock", met.hatch_clock(table.assign(verdict="late", difference_h=20.0)))
    assert "1 later (1)" in late and "20 h later" in late


def test_nothing_different_is_told_and_so_is_the_furthest():
    row = dict(item="storage", name="storage", value=14.0, usual=4.0, unit="days", digits=0, away=9.0)
    assert "14 days (usual 4 days)" in told("differences", advised.differences("1", pd.DataFrame([row])))
    assert told("differences", advised.differences("1", pd.DataFrame([row])[:0])).startswith("Nothing")
