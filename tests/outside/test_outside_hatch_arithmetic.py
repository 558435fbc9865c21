"""Hatch arithmetic printed in publications, run through the whole way from counts to shares."""

import sys
from pathlib import Path

import pytest

from hatchkit.losses.breakdown import breakdown
from hatchkit.losses.clears import clears

sys.path.insert(0, str(Path(__file__).parents[1] / "losses"))
from tiny_season import tiny_season


def shares(limits=None, looks=None, **counts):
    """Breakdown of one invented batch with these counts, index stage."""
    season = tiny_season([dict(batch=1, **counts)], looks=looks)
    table = breakdown(season, limits=limits).set_index("stage")
    assert table["eggs"].sum() == pytest.approx(counts["eggs_set"])
    return table


def percent(value, digits):
    return round(100 * value, digits)


def test_the_ledger_of_heavy_breeders_closes_to_100_percent():
    # Butcher & Nilipour, UF/IFAS EDIS VM101, Table 1, in % of eggs set; 400 eggs make every line a whole number.
    # Chicks of second quality (1.0 %) and dead chicks (0.25 %) are the culled.
    looks = [
        dict(batch="1", look=n + 1, name=name, looked_at=None, day=day, clear=0, dead=dead, removed=0)
        for n, (name, day, dead) in enumerate((("candle1", 4, 10), ("candle2", 10, 5), ("transfer", 17, 5)))
    ]
    table = shares(
        "four_bands",
        looks,
        eggs_set=400,
        hatched=345,
        culled=5,
        pipped_dead=5,
        broken_infertile=18,
        dead_in_shell=10,
        contaminated=2,
        removed=2,
    )
    printed = {
        "hatched": 85.0,
        "culled": 1.25,
        "pipped_dead": 1.25,
        "infertile": 4.5,
        "days_1_4": 2.5,
        "days_5_10": 1.25,
        "days_11_17": 1.25,
        "days_18_21": 2.5,
        "removed": 0.5,
    }
    assert {stage: percent(table.loc[stage, "share_of_set"], 2) for stage in printed} == printed
    assert sum(printed.values()) == 100.0
    fertile = table["fertile"].iloc[0]
    assert percent(fertile / 400, 1) == 95.5
    assert percent(table.loc["hatched", "share_of_fertile"], 2) == 89.01
    assert percent((340 + 4) / fertile, 2) == 90.05
    assert percent((340 + 4 + 1) / fertile, 2) == 90.31
    # The same table as % of fertile eggs, derived from it.
    derived = {
        "days_1_4": 2.62,
        "days_5_10": 1.31,
        "days_11_17": 1.31,
        "days_18_21": 2.62,
        "pipped_dead": 1.31,
        "removed": 0.52,
    }
    assert {stage: percent(table.loc[stage, "share_of_fertile"], 2) for stage in derived} == derived


@pytest.mark.parametrize(
    ("eggs_set", "infertile", "chicks", "of_fertile", "of_set", "fertility"),
    [
        (2000, 93, 1728, 90.6, 86.4, 95.3),  # student text: fertility 95.35 %, hatch of fertile 90.6 %
        (200, 0, 180, 90.0, 90.0, 100.0),  # poultry judging text: 90 % hatch of set
        (
            150,
            38,
            96,
            85.7,
            64.0,
            74.7,
        ),  # red-legged partridge, first trial: fertility 74.7 %, hatch of fertile 85.7 %
        (200, 59, 115, 81.6, 57.5, 70.5),  # red-legged partridge, second trial: 70.5 %, 81.6 %
    ],
)
def test_fertility_hatch_of_fertile_and_hatch_of_set(eggs_set, infertile, chicks, of_fertile, of_set, fertility):
    table = shares(
        eggs_set=eggs_set, hatched=chicks, broken_infertile=infertile, dead_in_shell=eggs_set - infertile - chicks
    )
    row = table.loc["hatched"]
    assert percent(row["share_of_fertile"], 1) == of_fertile
    assert percent(row["share_of_set"], 1) == of_set
    assert percent(row["fertile"] / row["set"], 2) == pytest.approx(fertility, abs=0.051)
    # Identity: hatch of set = fertility x hatch of fertile.
    assert row["share_of_set"] == pytest.approx(row["fertile"] / row["set"] * row["share_of_fertile"])


@pytest.mark.parametrize(("infertile", "of_fertile"), [(0, 2.0), (75, 4.0)])
def test_the_same_three_early_dead_are_2_or_4_percent_of_fertile(infertile, of_fertile):
    # Breakout numbers article: 3 early dead on a 150-egg tray; the denominator decides.
    table = shares(eggs_set=150, day1=7, dead1=3, hatched=147 - infertile, broken_infertile=infertile)
    assert percent(table.loc["early", "share_of_set"], 1) == 2.0
    assert percent(table.loc["early", "share_of_fertile"], 1) == of_fertile


def test_a_forum_ledger_of_26_eggs_closes():
    # 26 set: 19 chicks, 2 infertile, 1 early, 2 pipped, 2 dead in shell; fertility printed as 92 %.
    table = shares(eggs_set=26, day1=7, dead1=1, hatched=19, broken_infertile=2, pipped_dead=2, dead_in_shell=2)
    assert percent(table["fertile"].iloc[0] / 26, 1) == 92.3
    assert percent(table.loc["hatched", "share_of_fertile"], 1) == 79.2
    assert percent(table.loc["hatched", "share_of_set"], 1) == 73.1


@pytest.mark.parametrize(
    ("counts", "of_set", "of_candled"),
    [
        (dict(eggs_set=42, clear1=5, dead1=0, hatched=29, dead_in_shell=8), 69.05, 78.38),
        (dict(eggs_set=12, clear1=6, dead1=0, hatched=5, dead_in_shell=1), 41.67, 83.33),
    ],
)
def test_hobby_counts_of_set_and_of_developing(counts, of_set, of_candled):
    table = shares(day1=7, **counts)
    assert percent(table.loc["hatched", "share_of_set"], 2) == of_set
    assert percent(table.loc["hatched", "share_of_fertile"], 2) == of_candled


def test_candled_fertility_is_not_fertility():
    # 30 set, 2 clear and 2 early dead out at 7-10 days, 23 chicks: printed 87 % "hatchable", of these 88 %. The
    # early dead were fertile, so fertility is not 87 %; with the clears unopened it lies between 28 and 30 of 30.
    season = tiny_season([dict(batch=1, eggs_set=30, day1=8, clear1=2, dead1=2, hatched=23, dead_in_shell=3)])
    row = clears(season).iloc[0]
    assert (round(30 * row["fertile_least"], 9), round(30 * row["fertile_most"], 9)) == (28, 30)
    assert percent(26 / 30, 1) == 86.7 and percent(23 / 26, 1) == 88.5
    assert row["candled_fertile"] > 26 / 30
    chicks = breakdown(season).set_index("stage").loc["hatched"]
    assert percent(chicks["share_of_set"], 1) == 76.7


@pytest.mark.parametrize(
    ("fertile", "infertile", "lines", "of_set"),
    [
        # Barnett et al. 2004 J. Appl. Poult. Res. 13:65-70: % of fertile, read in a secondary page.
        (1000, 88, dict(hatched=809, culled=53, early=79, mid=0, late=46, removed=13), 74.37),  # intact eggs
        (
            1000,
            116,
            dict(hatched=564, culled=62, early=139, mid=29, late=155, removed=51),
            50.52,
        ),  # hairline cracks
    ],
)
def test_cracked_and_intact_eggs_close_to_the_fertile(fertile, infertile, lines, of_set):
    table = shares(
        eggs_set=fertile + infertile,
        hatched=lines["hatched"] + lines["culled"],
        culled=lines["culled"],
        broken_infertile=infertile,
        broken_early=lines["early"],
        broken_mid=lines["mid"],
        broken_late=lines["late"],
        removed=lines["removed"],
    )
    for stage, eggs in lines.items():
        assert table.loc[stage, "share_of_fertile"] == pytest.approx(eggs / 1000)
    assert 100 * table.loc["hatched", "share_of_set"] == pytest.approx(of_set, abs=0.06)


def test_ten_pheasant_eggs():
    # Note on pheasants hatched at Christmas: 10 eggs, fertility 50 %, hatch 30 %; 1 full-term dead, 1 broken.
    table = shares(
        eggs_set=10, species="pheasant", taken_off_day=26, hatched=3, dead_in_shell=1, removed=1, broken_infertile=5
    )
    row = table.loc["hatched"]
    assert row["fertile"] / row["set"] == 0.5
    assert (row["share_of_set"], row["share_of_fertile"]) == (0.3, pytest.approx(0.6))
    low, high = row["share_of_fertile_low"], row["share_of_fertile_high"]
    assert low < 0.25 and high > 0.85


def test_hatch_of_transferred_leaves_out_what_candling_took_away():
    # Definition in "Analysing embryo mortality" 2022: chicks over eggs moved to the hatcher.
    table = shares(eggs_set=100, day3=18, clear3=6, dead3=4, hatched=86, dead_in_shell=4)
    assert table["transferred"].iloc[0] == 90
    assert table.loc["hatched", "share_of_transferred"] == pytest.approx(86 / 90)
