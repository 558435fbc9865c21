"""The fourth world is sound: folders load, eggs add up, seeds reproduce, and its oracle knows more than chance."""

import numpy as np
import pytest

import hatchkit as hk
from hatchkit.reference import load
from worlds.fourth import CAUSES, make_season
from worlds.fourth_air import HARMLESS, MOST, log_dose, make_spell
from worlds.fourth_causes import BINS, SEVERITY, shares
from worlds.fourth_causes import CAUSES as SPECS
from worlds.fourth_cells import NAMES, batch_levels, chances, counting, season_levels
from worlds.fourth_oracle import posterior

HABITS = {"opens": True, "opens_clears": True, "counts_wrong": True}


def test_every_planted_cause_is_on_the_list_and_none_is_missing():
    listed = set(load("causes").reset_index()["cause"]) - {"bad_luck", "unlisted"}
    assert set(CAUSES) == listed


@pytest.mark.parametrize("seed", range(6))
def test_a_season_loads_and_its_eggs_add_up(tmp_path, seed):
    truth = make_season(seed, CAUSES[5 * seed % len(CAUSES)], "severe", tmp_path / "season")
    season = hk.load_season(tmp_path / "season")
    book = {batch["batch"]: batch for batch in truth["book"]["batches"]}
    assert set(season.batches["batch"].astype(str)) == set(book)
    assert not (season.problems["severity"] == "lost").any()
    eggs = season.fates.groupby("batch")["eggs"].sum().to_dict()
    assert eggs == season.batches.set_index("batch")["eggs_set"].to_dict()
    for name, batch in book.items():
        assert sum(batch["counts"].values()) == batch["eggs_set"]
        assert season.batch(name)["hatched"] == batch["counts"]["sound"] + batch["counts"]["culled"]
    assert season.readings.empty != any(batch["logged"] for batch in book.values())
    if not season.readings.empty:
        assert 36.5 < season.readings["temp_c"].median() < 39.0
    assert season.weights.empty != truth["book"]["keeper"]["habits"]["weighs"]


def test_one_seed_writes_the_same_bytes_and_another_does_not(tmp_path):
    for name, seed in (("one", 3), ("two", 3), ("three", 4)):
        make_season(seed, "cold_spell", "mild", tmp_path / name)
    one, two, three = (
        {
            p.relative_to(tmp_path / name): p.read_bytes()
            for p in (tmp_path / name).rglob("*")
            if p.is_file() and p.suffix != ".xlsx"
        }
        for name in ("one", "two", "three")
    )
    assert one == two
    assert one != three


def test_nothing_of_the_truth_is_in_the_folder(tmp_path):
    make_season(11, "fumes", "severe", tmp_path / "season")
    telling = set(CAUSES) - {"infertile", "altitude"}  # parts of the names of columns and settings
    for path in (tmp_path / "season").rglob("*"):
        if path.is_file() and path.suffix != ".xlsx":
            assert not any(cause in path.read_text(encoding="utf-8") for cause in telling)


def _lost(cause, severity, draw, n=4000):
    """Mean share of the eggs that do not become sound chicks."""
    levels = batch_levels(draw, *season_levels(draw, n, 40, 5))
    planted = []
    if cause:
        k, day = draw.uniform(*SEVERITY[severity], n), draw.uniform(*(SPECS[cause].window or (1, 19)), n)
        planted = [(SPECS[cause], k, shares(SPECS[cause], k, day, draw))]
    chance = chances(levels, planted, counting(HABITS, {1: 7.0, 2: 14.0, 3: 18.0}), HABITS)
    assert chance.sum(1) == pytest.approx(1.0)
    return 1 - chance[:, NAMES.index("sound")].mean()


@pytest.mark.parametrize("cause", CAUSES)
def test_a_severity_costs_about_what_it_promises(cause):
    draw = np.random.default_rng(5)
    without = _lost(None, "mild", draw)
    more = {severity: _lost(cause, severity, draw) - without for severity in SEVERITY}
    assert 0.05 < more["mild"] < 0.14
    assert 0.15 < more["moderate"] < 0.30
    assert 0.38 < more["severe"] < 0.70


def test_an_event_kills_nobody_before_its_day():
    draw = np.random.default_rng(1)
    for cause in ("heat_spell", "cold_spell", "fumes"):
        ages = shares(SPECS[cause], np.full(50, 0.5), np.full(50, 9.0), draw)["ages"]
        assert ages[:, BINS < 8.5].sum(1).max() < 0.01


@pytest.mark.parametrize("species", ["chicken", "duck", "quail"])
@pytest.mark.parametrize("kind", ["heat", "cold"])
def test_a_spell_is_made_to_its_dose(kind, species):
    draw = np.random.default_rng(2)
    for dose in (HARMLESS[kind][1], MOST, 0.5):
        spell = make_spell(kind, 9.0, dose, species, draw)
        assert log_dose(kind, 37.6 + spell["off"], 9.0, species) == pytest.approx(dose, abs=0.1)


def test_the_oracle_beats_chance_and_its_weights_add_up():
    right = []
    for seed, cause in enumerate(CAUSES[::3]):
        truth = make_season([77, seed], cause, "severe")
        found = posterior(truth["book"], truth["batch_hit"], draws=300, pair_draws=40)
        assert 0.999 < sum(found.values()) < 2.001
        right.append(next(name for name in found if name != "bad_luck") == cause)
    # by chance one of 24, so that 4 of 8 come in one of 5,000 runs
    assert sum(right) >= 4


def test_the_oracle_reads_nothing_but_the_book():
    truth = make_season(21, "turning", "severe")
    blank = {"book": truth["book"], "batch_hit": truth["batch_hit"]}
    first = posterior(blank["book"], blank["batch_hit"], draws=200, pair_draws=20)
    assert first == posterior(blank["book"], blank["batch_hit"], draws=200, pair_draws=20)
    assert not any("event_days" in batch for batch in truth["book"]["batches"])
