"""Is the sixth world sound? Its own seasons and its own likelihood only; no answer of the kit is asked for."""

import csv
import itertools

import numpy as np
import pytest
from openpyxl import load_workbook

import hatchkit as hk
from worlds import sixth_causes, sixth_eggs, sixth_traces
from worlds.sixth import CAUSES, make_season
from worlds.sixth_book import HEADINGS, WORDS, read_words
from worlds.sixth_log import readings
from worlds.sixth_oracle import poorest, posterior


def hit(season):
    return next(one for one in season["book"]["batches"] if one["name"] == season["batch_hit"])


def cells(folder):
    """All cells of a season's workbook; none where the sheet is a text."""
    path = folder / "batches.xlsx"
    if not path.exists():
        return []
    return [cell for sheet in load_workbook(path) for row in sheet.iter_rows(values_only=True) for cell in row]


@pytest.fixture(scope="module")
def many():
    """Three severe seasons of each cause, none of them written."""
    return [make_season([77, place], code, "severe") for place, code in enumerate(CAUSES * 3)]


def test_a_seed_makes_the_same_files_again(tmp_path):
    seasons = [make_season([5, 2], "too_dry", "mild", tmp_path / name) for name in "ab"]
    assert seasons[0]["batch_hit"] == seasons[1]["batch_hit"]
    assert seasons[0]["severities"] == seasons[1]["severities"]
    assert str(seasons[0]["book"]) == str(seasons[1]["book"])
    texts = [sorted((tmp_path / name).rglob("*.csv")) for name in "ab"]
    assert texts[0] and [one.read_bytes() for one in texts[0]] == [one.read_bytes() for one in texts[1]]
    assert cells(tmp_path / "a") == cells(tmp_path / "b")
    assert make_season([5, 3], "too_dry", "mild")["severities"] != seasons[0]["severities"]


@pytest.mark.parametrize("place", range(4))
def test_folders_load_without_a_lost_row(tmp_path, place):
    language = ("en", "de", "fr", "es")[place]
    seed = next(
        [8, number]
        for number in itertools.count()
        if make_season([8, number])["book"]["keeper"]["language"] == language
        and len(make_season([8, number])["book"]["batches"]) < 6
    )
    truth = make_season(seed, CAUSES[place * 5], "severe", tmp_path / "season")
    season, written = hk.load_season(tmp_path / "season"), truth["book"]["batches"]
    assert not (season.problems["severity"] == "lost").any(), season.problems["found"].tolist()
    assert len(season.batches) == len(written)
    assert season.batches["eggs_set"].tolist() == [one["set"] for one in written]
    alive = [one["counts"]["good"] + one["counts"]["culled"] for one in written]
    assert season.batches["hatched"].fillna(0).tolist() == alive


def test_eggs_add_up_but_for_a_slip_of_one(many):
    batches = [one for season in many for one in season["book"]["batches"]]
    over = np.array([sum(one["counts"].values()) + one["cracked"] - one["set"] for one in batches])
    assert np.abs(over).max() == 1
    assert 0.01 < (over != 0).mean() < 0.08
    careful = [one for season in many if not season["book"]["keeper"]["slips"] for one in season["book"]["batches"]]
    assert all(sum(one["counts"].values()) + one["cracked"] == one["set"] for one in careful)


@pytest.mark.parametrize("severity", sixth_causes.BANDS)
def test_severities_are_what_they_say(severity):
    low, high = sixth_causes.BANDS[severity]
    drawn = [make_season([9, place], code, severity)["severities"][code] for place, code in enumerate(CAUSES)]
    assert low <= min(drawn) < max(drawn) <= high


@pytest.mark.parametrize("name", CAUSES)
def test_a_cause_takes_its_share_of_live_embryos(name):
    """Without ordinary losses, and with all embryos fertile, the share lost is the strength."""
    rng, strength = np.random.default_rng(1), np.full(200, 0.4)
    deaths, _ = sixth_eggs.draw_deaths(rng, name, 200)
    nothing = np.zeros((200, sixth_causes.CULL))
    chances = sixth_eggs.fates(np.ones(200), nothing, [(name, strength, deaths)])
    part = sixth_causes.TABLE[name].clear
    assert np.allclose(chances.sum(1), 1)
    assert np.allclose(chances[:, -1], (1 - 0.4 * part) * (1 - 0.4 * (1 - part)))


def test_every_fate_is_written_somewhere():
    for looks, opens, pipped in itertools.product(([], [7], [7, 14], [6, 15, 18.7]), (True, False), (True, False)):
        seen = sixth_eggs.seen_as(looks, opens, pipped)
        assert np.allclose(seen.sum(1), 1)
        assert seen.shape[1] == len(sixth_eggs.cells_of(looks, opens, pipped))


def test_the_hit_batch_does_worse_and_its_neighbours_do_not(many):
    def share(batch):
        return batch["counts"]["good"] / batch["set"]

    struck = [share(hit(season)) for season in many]
    others = [share(one) for season in many for one in season["book"]["batches"] if one is not hit(season)]
    spared = [share(one) for place in range(60) for one in make_season([78, place])["book"]["batches"]]
    assert np.mean(struck) < 0.4
    assert abs(np.mean(others) - np.mean(spared)) < 0.04
    assert 0.5 < np.mean(spared) < 0.8


def test_nothing_of_the_truth_is_in_the_folder(tmp_path):
    """No code of a cause and no strength is written, nor kept in the book."""
    for place, code in enumerate(("small_end_up", "vitamin_lack", "warm_throughout")):
        folder = tmp_path / code
        season = make_season([4, place], code, "severe", folder)
        assert set(season["book"]) == {"keeper", "batches"}
        for file in folder.rglob("*"):
            assert not any(word in file.name for word in (*CAUSES, "truth", "answer"))
            if file.suffix in (".csv", ".toml"):
                assert not any(other in file.read_text(encoding="utf-8") for other in CAUSES if "_" in other)
        words = [str(cell) for cell in cells(folder)]
        assert not any(other in word for word in words for other in CAUSES if "_" in other)
        assert not {"severity", "severities", "causes", "strength"} & set(hit(season))


def test_words_are_whole_in_four_languages():
    codes = {"sign": set(sixth_traces.SIGNS), "told": set(CAUSES)}
    for path in (WORDS, HEADINGS):
        with path.open(encoding="utf-8", newline="") as file:
            rows = list(csv.DictReader(file))
        assert all(all(row[language] for language in ("en", "de", "fr", "es")) for row in rows)
        assert all(None not in row for row in rows)
    for kind, wanted in codes.items():
        assert {key for of, key in read_words("en") if of == kind} == wanted


def test_the_log_shows_the_figures_and_spells_of_the_book():
    rng = np.random.default_rng(3)
    season = next(
        one
        for one in (make_season([12, place], "heat_spell", "severe") for place in itertools.count())
        if any(spell[1] == "heat" and spell[3] > 3 for spell in hit(one)["spells"])
    )
    batch, habits = hit(season), season["book"]["keeper"]
    spell = max(batch["spells"], key=lambda one: one[3] if one[1] == "heat" else 0)
    air = {"gauges": {"temp": 0.1, "rh": 50.0, "rh_hatch": 68.0, "uneven": 0.2}, "spells": [spell]}
    batch["cover"][:] = True
    rows = readings(rng, habits, batch, air)
    off = np.array([np.mean(probes) for _, probes, _ in rows]) - habits["set_c"]
    hours = np.array([(at - batch["set_at"]).total_seconds() / 3600 for at, _, _ in rows])
    assert abs(np.median(off[hours < 24 * batch["transfer"]]) - 0.1) < 0.06
    assert abs(off.max() - spell[3]) < 0.6
    assert abs(hours[off.argmax()] - spell[0] * batch["term"] / 21 * 24) < spell[2] + 2
    assert abs((off > spell[3] / 2).sum() * 0.5 - spell[2]) < 0.25 * spell[2] + 1.5


def test_harmless_departures_are_there():
    seasons = [make_season([15, place]) for place in range(120)]
    batches = [one for season in seasons for one in season["book"]["batches"]]
    assert any(spell[1] == "cold" and spell[3] > 3 for one in batches for spell in one["spells"])
    assert any(min(one["gauges"].get("stored", 0) for one in s["book"]["batches"]) > 9 for s in seasons)
    assert any(min(one["gauges"].get("age", 0) for one in s["book"]["batches"]) > 62 for s in seasons)
    assert any(one["posted"] for one in batches)
    assert any(one["remarks"] for one in batches)


def test_two_causes_strike_the_same_batch():
    season = make_season([16, 1], ("turning", "too_dry"), "moderate")
    assert set(season["severities"]) == {"turning", "too_dry"}
    assert season["batch_hit"] in {one["name"] for one in season["book"]["batches"]}
    with pytest.raises(ValueError):
        make_season(1, "no_such_cause")


def test_the_oracle_beats_chance_and_adds_up(many):
    asked = many[::9]
    told = [posterior(season["book"], season["batch_hit"]) for season in asked]
    assert all(abs(sum(weights.values()) - 1) < 1e-9 for weights in told)
    assert all(set(weights) == {*CAUSES, "bad_luck"} for weights in told)
    right = [weights[season["causes"][0]] for weights, season in zip(told, asked, strict=True)]
    assert np.mean(right) > 0.3  # by chance 1 in 25
    assert told[0] == posterior(asked[0]["book"], asked[0]["batch_hit"])


def test_the_poorest_batch_is_the_poorest():
    book = make_season([17, 1])["book"]
    shares = {one["name"]: one["counts"]["good"] / one["set"] for one in book["batches"]}
    assert shares[poorest(book)] == min(shares.values())
