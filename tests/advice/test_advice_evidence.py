"""Evidence both ways and once, beside the keeper's own good batches; base rates; two causes; the season's account."""

import dataclasses

import numpy as np
import pandas as pd
import pytest

import hatchkit as hk
from hatchkit import reference
from hatchkit.advice import cause_weights, evidence_climate, evidence_records
from hatchkit.advice.account import account
from hatchkit.advice.causes import likely_causes, season_causes
from hatchkit.advice.evidence import _each_fact_once, evidence, gather, links, told
from hatchkit.advice.evidence_machine import beyond_the_good
from hatchkit.advice.what_to_change import changes
from hatchkit.say.causes import verdict
from hatchkit.say.plan import changes as change_words
from hatchkit.simulate.seasons import draw_season

ROWS = (
    "batch,incubator,set_at,eggs_set,stored_days,flock_age_weeks,candle1_at,clear1,dead1,hatched,broken_early,"
    "broken_mid,broken_late,pipped_dead,notes\n"
)
FINE = [
    "30,{s},{w},{c},3,1,25,0,0,1,0,",
    "30,{s},{w},{c},3,1,24,0,0,1,1,",
    "30,{s},{w},{c},2,1,26,0,0,1,0,",
    "30,{s},{w},{c},4,0,24,1,0,1,0,",
    "30,{s},{w},{c},2,2,25,0,0,1,0,",
]
ALL_AGES = "7,5,10,1,2,3,2,"


def keeper(folder, poor, *, stored=5, weeks=44, own=None):
    """Five good batches and a poor one, `poor` from clear1 on; all stored and aged alike, or the poor one as `own`."""
    lines = []
    for place, row in enumerate([*FINE, f"30,{{s}},{{w}},{{c}},{poor}"]):
        set_at = pd.Timestamp("2026-03-01 18:00") + pd.Timedelta(days=26 * place)
        values = dict(s=stored, w=weeks) | ((own or {}) if place == 5 else {})
        lines.append(
            f"P{place + 1},A,{set_at:%Y-%m-%d %H:%M},"
            + row.format(c=f"{set_at + pd.Timedelta(days=7):%Y-%m-%d %H:%M}", **values)
        )
    (folder / "batches.csv").write_text(ROWS + "\n".join(lines) + "\n", encoding="utf-8")
    (folder / "season.toml").write_text('timezone = "UTC"\ndefault_species = "chicken"\n', encoding="utf-8")
    return hk.load_season(folder)


@pytest.fixture(scope="module")
def hot():
    return draw_season(seed=71_000, cause="overheating", batches=8, step_minutes=60)


@pytest.mark.parametrize(("shared", "cause"), [({"weeks": 110}, "old_flock"), ({"stored": 14}, "long_storage")])
def test_what_good_batches_share_explains_nothing(tmp_path, shared, cause):
    told = likely_causes(keeper(tmp_path, ALL_AGES, **shared), "P6")
    assert told.table.set_index("cause").at[cause, "factor_evidence"] < 1.1
    assert told.first_named() != cause and told.verdict != "confident"


@pytest.mark.parametrize(("own", "cause"), [({"w": 110}, "old_flock"), ({"s": 19}, "long_storage")])
def test_what_only_the_poor_batch_has_is_told_first_as_different(tmp_path, own, cause):
    told = likely_causes(keeper(tmp_path, ALL_AGES, own=own), "P6")
    assert told.table.set_index("cause").at[cause, "factor_evidence"] > 3
    assert told.different["item"].iloc[0] in ("flock_age", "storage") and told.different["good_batches"].iloc[0] == 5


def test_the_log_and_a_remark_of_one_power_cut_are_one_fact():
    lines = [
        ["cold", "cold", "known", 20.0],
        ["power_cut", "cold", "power cut", 14.0],
        ["clock", "clock", "known", 3.0],
    ]
    assert [line.factor for line in _each_fact_once(lines)] == [20.0, 1.0, 3.0]
    assert [line.alone for line in _each_fact_once(lines)] == [20.0, 14.0, 3.0]


def test_the_quiet_log_and_a_remark_that_contradicts_it_both_count():
    lines = [["heat", "heat", "known", 0.02], ["overheated", "heat", "cooked", 14.0]]
    assert [line.factor for line in _each_fact_once(lines)] == [0.02, 14.0]


def test_words_that_are_not_in_the_table_count_one(tmp_path):
    (tmp_path / "a").mkdir()
    (tmp_path / "b").mkdir()
    plain = likely_causes(keeper(tmp_path / "a", ALL_AGES), "P6").table.set_index("cause")["share"]
    talk = likely_causes(keeper(tmp_path / "b", ALL_AGES + "lovely weather and visitors"), "P6").table
    pd.testing.assert_series_equal(plain, talk.set_index("cause")["share"])


def test_a_complete_quiet_log_all_but_rules_out_heat_and_half_a_log_does_not():
    season, answer = draw_season(seed=71_300, cause="none", batches=4, step_minutes=60)
    whole, batch = gather(season), answer.batch

    def factor(gathered):
        lines = told(gathered, batch, evidence(gathered, batch))["heat_spell"]
        return next(line.factor for line in lines if line.part == "heat")

    assert whole.doses[batch].logged > 0.9 and factor(whole) < 0.15
    half = dataclasses.replace(whole, doses={**whole.doses, batch: whole.doses[batch]._replace(logged=0.5)})
    assert 0.4 < factor(half) < 0.7


def test_a_dose_that_halves_the_hatch_is_not_outranked_by_a_cause_without_evidence(hot):
    season, answer = hot
    table = likely_causes(season, answer.batch).table
    assert gather(season).values.at[answer.batch, "heat"] > 0.7
    assert table["cause"].iloc[0] == "heat_spell" and table["firm"].iloc[0]


def test_the_ages_of_the_dead_can_exclude_a_dose(hot):
    season, answer = hot
    fates = season.fates.copy()
    lost = (fates["batch"] == answer.batch) & fates["fate"].isin(["dead", "pipped_dead"])
    fates.loc[lost, "fate"] = "dead"
    fates.loc[lost, ["after_day", "by_day"]] = [3.0, 5.0]  # all before the heat
    assert int(np.argmax(gather(season).doses[answer.batch].heat)) > 5
    moved = likely_causes(dataclasses.replace(season, fates=fates), answer.batch)
    assert moved.table.set_index("cause").at["heat_spell", "share"] < 0.5


def test_drowned_and_dried_in_do_not_get_the_same_answer(tmp_path):
    late = "3,1,13,0,0,9,4,"
    (tmp_path / "wet").mkdir()
    (tmp_path / "dry").mkdir()
    wet = likely_causes(keeper(tmp_path / "wet", late + "drowned and wet; small air cells"), "P6")
    dry = likely_causes(keeper(tmp_path / "dry", late + "dry and stuck; large air cells"), "P6")
    assert wet.first_named() == "too_humid" and dry.first_named() == "too_dry"
    assert set(wet.signs["sign"]) == {"drowned", "small_air_cells"}


def test_opened_clears_tell_infertile_from_dead_early(tmp_path):
    season = keeper(tmp_path, "18,1,8,0,0,2,1,")

    def with_opened(infertile, dead):
        batches = season.batches.assign(opened1_infertile=np.nan, opened1_dead=np.nan)
        batches.loc[batches["batch"] == "P6", ["opened1_infertile", "opened1_dead"]] = [infertile, dead]
        return likely_causes(dataclasses.replace(season, batches=batches), "P6").table.set_index("cause")["share"]

    barren, died = with_opened(18, 0), with_opened(0, 18)
    assert barren["infertile"] > 0.75 > died["infertile"] + 0.6


def test_mostly_clears_is_told_firmly_with_what_to_do_next(tmp_path):
    told = likely_causes(keeper(tmp_path, "21,1,6,0,0,1,1,"), "P6")
    assert told.mostly_clears
    row = told.pattern.set_index("stage").loc["clear"]
    assert (row["eggs"], told.eggs_set) == (21, 30) and "Most of the loss is clears: 21 of 30 eggs" in verdict(told)


def test_two_harms_are_weighed_together(tmp_path):
    told = likely_causes(keeper(tmp_path, "14,1,6,0,0,7,2,drowned and wet; small air cells"), "P6")
    assert {"infertile", "too_humid"} == {told.pairs["first"].iloc[0], told.pairs["second"].iloc[0]}
    assert {"infertile", "too_humid"} <= set(told.table["cause"].head(3))


def test_bad_luck_does_not_contradict_itself():
    season, _ = draw_season(seed=71_320, cause="none", batches=6, step_minutes=60)
    said = [verdict(one) for one in season_causes(season).values() if one.verdict == "bad luck"]
    assert said and not any("As good as tied" in text for text in said)


def test_the_account_adds_up_to_the_eggs_that_gave_no_chick(hot):
    season, answer = hot
    causes = season_causes(season)
    table = account(causes)
    lost = sum(one.eggs_set - one.pattern["eggs"].iloc[0] for one in causes.values())
    assert table["eggs"].sum() == pytest.approx(lost)
    assert set(table["key"].tail(3)) == {"usual", "not_explained", "unaccounted"}
    assert answer.batch in table.set_index("key").at["heat_spell", "batches"]


def test_the_first_change_acts_against_the_first_cause_in_the_readers_degrees(hot):
    season, answer = hot
    table = changes(season, "chicken", batch=answer.batch)
    assert table["change"].iloc[0] == "cause" and table["facts"].iloc[0]["cause"] == "heat_spell"
    assert "°F" in change_words(table, unit="F")[0]["to"]
    records = table["change"].isin(["record", "probe_unchecked", "no_log", "candling"]).to_numpy()
    assert 1 <= records.sum() <= 2 and records[-records.sum() :].all()


def test_a_change_says_what_the_records_show(hot):
    season, answer = hot
    table = changes(season, "chicken", batch=answer.batch)
    assert table["facts"].iloc[0]["shown"][1]["item"] == "heat"


def test_cold_and_heat_do_not_get_the_same_advice(hot):
    cold, answer = draw_season(seed=71_000, cause="drift_cool", batches=6, step_minutes=60)
    first = [
        change_words(changes(season, "chicken", batch=batch))[0]["to"]
        for season, batch in ((hot[0], hot[1].batch), (cold, answer.batch))
    ]
    assert first[0] != first[1]


def test_every_item_and_pattern_names_a_cause_that_is_listed():
    causes = set(reference.load("causes")["cause"])
    items = set(reference.load("evidence_items")["item"])
    assert set(links()) <= causes and {item for rows in links().values() for item, *_ in rows} <= items
    assert set(reference.load("cause_patterns")["cause"]) == causes - {"bad_luck", "unlisted"}
    for rows in links().values():
        for item, _, at, logs, why in rows:
            assert (np.diff(at) > 0).all() and len(at) == len(logs) and why, item


def test_priors_add_up_and_bad_luck_has_its_stated_share():
    shares = cause_weights.priors()
    assert sum(shares.values()) == pytest.approx(1)
    assert shares["bad_luck"] == cause_weights.PRIOR_BAD_LUCK and shares["unlisted"] == cause_weights.PRIOR_UNLISTED


def test_large_patterns_are_held_down_and_small_ones_are_not():
    assert cause_weights.trusted(3.0) == 3.0 and cause_weights.trusted(-3.0) == -3.0
    beyond = cause_weights.PATTERN_WHOLE + 10
    assert cause_weights.trusted(beyond) == pytest.approx(
        cause_weights.PATTERN_WHOLE + 10 * cause_weights.PATTERN_BEYOND
    )


def dry_or_damp(folder, *, losses, humidity, poor="1,1,14,0,1,9,4,"):
    """`keeper` with eggs weighed (share lost by day 18) and humidity logged; the last of each is the poor batch's."""
    keeper(folder, poor)
    weights, air = ["batch,egg,weighed_at,grams"], ["time,temp_c,rh_pct"]
    for place, (lost, rh) in enumerate(zip(losses, humidity, strict=True)):
        set_at = pd.Timestamp("2026-03-01 18:00") + pd.Timedelta(days=26 * place)
        for day, part in ((0, 0.0), (18, lost)):
            weights += [
                f"P{place + 1},{egg},{set_at + pd.Timedelta(days=day):%Y-%m-%d %H:%M},{grams * (1 - part):.2f}"
                for egg, grams in enumerate((56, 58, 60, 62, 57, 59), 1)
            ]
        air += [f"{set_at + pd.Timedelta(hours=hour):%Y-%m-%d %H:%M},37.6,{rh}" for hour in range(21 * 24)]
    (folder / "weights.csv").write_text("\n".join(weights) + "\n", encoding="utf-8")
    (folder / "sensors").mkdir()
    (folder / "sensors" / "a.csv").write_text("\n".join(air) + "\n", encoding="utf-8")
    (folder / "season.toml").write_text(
        'timezone = "UTC"\ndefault_species = "chicken"\n[incubators.A]\nfiles = ["sensors/a.csv"]\n', encoding="utf-8"
    )
    return hk.load_season(folder)


@pytest.mark.parametrize(
    ("losses", "humidity", "verdict", "never"),
    [
        ([0.055] * 5 + [0.092], [68] * 5 + [38], "too little", "too_dry"),
        ([0.200] * 5 + [0.155], [25] * 5 + [66], "too much", "too_humid"),
    ],
)
def test_too_little_lost_and_too_dry_never_stand_on_one_page(tmp_path, losses, humidity, verdict, never):
    from hatchkit.climate.water_loss import batch_water_loss

    season = dry_or_damp(tmp_path, losses=losses, humidity=humidity)
    assert batch_water_loss(season).set_index("batch").at["P6", "verdict"] == verdict
    told = likely_causes(season, "P6")
    assert told.table.set_index("cause").at[never, "share"] < 0.02
    assert never not in told.pairs.head(1)[["first", "second"]].to_numpy()


def test_the_scale_leaves_a_cause_of_its_own_side_alone(tmp_path):
    season = dry_or_damp(tmp_path, losses=[0.115] * 5 + [0.19], humidity=[52] * 5 + [20])
    assert likely_causes(season, "P6").first_named() == "too_dry"


@pytest.mark.parametrize(("low_m", "power"), [(300, 2.0), (1700, 1.0), (None, 1.0)])
def test_height_speaks_louder_where_every_lower_batch_did_well(tmp_path, low_m, power):
    keeper(tmp_path, ALL_AGES)
    book = (tmp_path / "batches.csv").read_text(encoding="utf-8")
    (tmp_path / "batches.csv").write_text(book.replace("P6,A,", "P6,H,"), encoding="utf-8")
    low = "" if low_m is None else f"altitude_m = {low_m}\n"
    (tmp_path / "season.toml").write_text(
        f'timezone = "UTC"\ndefault_species = "chicken"\n[incubators.A]\nfiles = []\n{low}'
        "[incubators.H]\nfiles = []\naltitude_m = 2000\n",
        encoding="utf-8",
    )
    gathered = gather(hk.load_season(tmp_path))
    line = next(line for line in told(gathered, "P6", evidence(gathered, "P6"))["altitude"] if line.part == "altitude")
    assert line.factor == pytest.approx(6.0**power)  # 2000 m in the table of evidence: 6


def test_a_short_spell_of_cold_does_not_speak_for_cold_and_a_half_lethal_one_does():
    _, _, hours, logs, _ = next(link for link in links()["cold_spell"] if link[0] == "cold")
    short, halving = np.exp(np.interp([4.0, 24.0], hours, logs))
    assert short < 1 < 30 < halving


def test_another_flock_than_the_good_batches_is_told_and_a_shared_one_too():
    rows = {name: dict(species="chicken", flock=flock) for name, flock in zip("abcd", "xxyz", strict=True)}
    good = pd.Series({"a": 1.0, "b": 1.0, "c": 0.0, "d": 0.0})
    assert evidence_records.other_flock(rows, good) == {"a": 0.0, "b": 0.0, "c": 1.0, "d": 1.0}
    assert evidence_records.other_flock(rows, good * 0) == {}  # no good batch tells anything


def test_cold_that_good_batches_of_the_machine_met_too_is_no_dose():
    """A probe reads low: 10 h of cold in good batches. 14 h are 4 h beyond it, in another machine 14."""
    found = pd.Series({"a": 10.0, "b": 9.0, "c": 12.0, "poor": 14.0, "other": 14.0})
    rows = {name: dict(incubator="B" if name == "other" else "A") for name in found.index}
    good = pd.Series({"a": 1.0, "b": 1.0, "c": 1.0, "poor": 0.0, "other": 0.0})
    met = evidence_climate.Doses(np.zeros(21), np.full(21, 14 / 21), 1.0)
    left = beyond_the_good(found, "cold", {name: met for name in found.index}, good, rows)
    assert left["poor"].cold.sum() == pytest.approx(4) and left["other"].cold.sum() == pytest.approx(14)
