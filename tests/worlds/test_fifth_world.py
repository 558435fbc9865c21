"""The fifth world is sound: folders load, eggs add up, seeds reproduce, and its oracle knows more than chance."""

import json

import numpy as np
import pytest

import hatchkit as hk
from worlds.fifth import make_season
from worlds.fifth_air import log_dose, make_spell, struck_to_dose
from worlds.fifth_causes import CAUSES
from worlds.fifth_eggs import batch_levels, chances, counting, fates, flock_levels
from worlds.fifth_kernels import BANDS, EDGES, event_days, harm, strengths
from worlds.fifth_oracle import posterior
from worlds.fifth_words import BASE, LANGUAGES, NAMES, TOPICS, words_ratio

HABITS = {
    "acuity": 0.93,
    "opens": 1.0,
    "blur": 1.2,
    "opens_clears": True,
    "tells_pipped": True,
    "tells_culled": True,
    "tells_wrong": True,
    "untold": 0,
}


def flock(draw, n=500):
    return batch_levels(draw, flock_levels(draw, n, "chicken", 40, 6), 4)


def test_the_causes_are_those_of_the_other_worlds():
    from worlds.fourth import CAUSES as OTHERS

    assert set(CAUSES) == set(OTHERS)


@pytest.mark.parametrize("seed", [1, 2, 3, 4, 5, 6])
def test_a_season_loads_without_a_loss_and_its_eggs_add_up(tmp_path, seed):
    cause = [None, "long_storage", "heat_spell", "uneven_heat", ("altitude", "dry_hatch"), "navel_infection"][seed - 1]
    truth = make_season(seed, cause, "moderate", tmp_path / "season")
    season = hk.load_season(truth["folder"])
    assert 5 <= len(season.batches) <= 9
    assert set(season.batches["batch"]) == {batch["name"] for batch in truth["book"]["batches"]}
    assert not (season.problems["severity"] == "lost").any()
    assert (season.ledger["rest"].dropna() >= 0).all()
    for batch in truth["book"]["batches"]:
        assert sum(batch["counts"].values()) == batch["eggs"]


def test_one_seed_writes_the_same_book_and_another_does_not():
    one, again, other = (make_season(seed, "turning")["book"] for seed in (4, 4, 5))
    assert json.dumps(one) == json.dumps(again) != json.dumps(other)


def test_nothing_of_the_truth_is_in_the_folder(tmp_path):
    truth = make_season(11, "ventilation", folder=tmp_path / "season")
    texts = [path.read_bytes() for path in truth["folder"].rglob("*") if path.is_file()]
    assert texts and not any(b"ventilation" in text or b"severe" in text for text in texts)


@pytest.mark.parametrize("cause", CAUSES)
def test_a_severity_is_the_share_of_live_embryos_lost(cause):
    draw = np.random.default_rng(3)
    for severity, (low, high) in BANDS.items():
        k = strengths(draw, 500, severity)
        levels = flock(draw)
        planted = harm(CAUSES[cause], k, event_days(CAUSES[cause], draw, 500), draw)
        lost = 1 - fates(levels, [planted])["good"] / fates(levels, [])["good"]
        assert low - 0.02 < lost.mean() < high + 0.02
        assert lost.mean() == pytest.approx((low + high) / 2, abs=0.03)


def test_an_event_kills_nobody_before_its_day():
    draw = np.random.default_rng(5)
    day = np.full(50, 12.0)
    early = harm(CAUSES["fumes"], np.full(50, 0.5), np.full(50, 4.0), draw)["cdf"][:, EDGES <= 4]
    assert early.max() == pytest.approx(0, abs=1e-6)
    late = harm(CAUSES["heat_spell"], np.full(50, 0.5), day, draw)["cdf"]
    assert late[:, EDGES < 12].max() < 0.01 < late[:, EDGES > 13].min()


def test_every_egg_is_counted_once_under_two_causes_too():
    draw = np.random.default_rng(6)
    levels, k = flock(draw, 200), np.full(200, 0.4)
    two = [harm(CAUSES[name], k, np.full(200, 9.0), draw) for name in ("cold_spell", "infertile")]
    for change in ({}, {"opens": 0.5, "tells_pipped": False}, {"untold": 2, "tells_culled": False}):
        count = counting(HABITS | change, {1: 7.0, 3: 18.0})
        assert chances(levels, two, count).sum(axis=1) == pytest.approx(1, abs=1e-6)


@pytest.mark.parametrize("species", ["quail", "chicken", "goose"])
@pytest.mark.parametrize("kind", ["heat", "cold"])
def test_a_spell_is_made_to_its_dose(kind, species):
    spell = make_spell(kind, 9.0, float(struck_to_dose(0.4)), species, np.random.default_rng(7))
    assert log_dose(kind, spell["off"], 9.0, species) == pytest.approx(spell["dose"], abs=0.05)


def test_words_are_there_in_every_language_and_speak_for_their_cause():
    assert all(row[language] for row in TOPICS.values() for language in LANGUAGES)
    assert {topic for cause in CAUSES.values() for topic in cause.words} <= set(NAMES)
    assert (BASE > 0).all() and (BASE < 0.1).all()
    habits, k = {"signs": 0.8, "notes": 0.8}, [np.array([0.5])]
    assert words_ratio({"turner": None}, [CAUSES["turning"]], k, habits)[0] > 1
    assert words_ratio({"turner": None}, [CAUSES["fumes"]], k, habits)[0] < 0.1


def test_the_oracle_beats_chance_and_its_weights_are_probabilities():
    names = ["heat_spell", "too_humid", "contamination", "small_end_up", "dry_hatch"]
    right = 0
    for seed, name in enumerate(names):
        truth = make_season([seed, 17], name, "severe")
        told = posterior(truth["book"], truth["batch_hit"], draws=120, pair_draws=30)
        assert 1 <= sum(told.values()) <= 2 + 1e-9 and max(told.values()) <= 1 + 1e-9
        right += next(iter(told)) == name
    assert right >= 3


def test_the_oracle_reads_nothing_but_the_book():
    truth = make_season(23, "too_dry", "severe")
    book = json.loads(json.dumps(truth["book"]))
    for batch in book["batches"]:
        batch["looks"] = {int(look): at for look, at in batch["looks"].items()}
    one, again = (posterior(one, truth["batch_hit"], draws=60, pair_draws=10) for one in (truth["book"], book))
    assert one == again
