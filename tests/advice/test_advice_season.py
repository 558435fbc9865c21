"""Season notes, what-if, breakout guide and the column list of the advice room."""

import re
from types import SimpleNamespace

import numpy as np
import pandas as pd
import pytest

from hatchkit import reference, say
from hatchkit.advice.account import account
from hatchkit.advice.breakout import breakout_guide
from hatchkit.advice.causes import season_causes
from hatchkit.advice.poor_hatch import standing
from hatchkit.advice.published import STAGES
from hatchkit.advice.season_notes import LEAST_EGGS, _from_stages, season_notes
from hatchkit.advice.what_if import what_if
from hatchkit.figures import egg_drawings
from hatchkit.simulate.seasons import draw_season


@pytest.fixture(scope="module")
def told():
    season, answer = draw_season(seed=71_700, cause="overheating", batches=6, step_minutes=60)
    causes = season_causes(season)
    return season, answer, causes, what_if(season, causes=causes)


def test_the_notes_put_the_planted_cause_first_with_its_batch(told):
    season, answer, causes, _ = told
    notes = season_notes(season, causes=causes)
    assert notes["key"].iloc[0] == "heat_spell"
    assert answer.batch in notes["batches"].iloc[0].split(", ")
    assert notes["eggs_lost"].is_monotonic_decreasing and len(notes) <= 3
    assert notes["rank"].tolist() == list(range(1, len(notes) + 1)) and notes["sure"].iloc[0] == "firm"


def test_stages_of_what_if_hold_every_lost_egg(told):
    _, _, causes, result = told
    stages = result.table[result.table["block"] == "stage"]
    lost = sum(c.pattern["eggs"].iloc[1:].sum() for c in causes.values())
    assert stages["eggs"].sum() == pytest.approx(lost)
    assert result.facts["hatched"] + lost == pytest.approx(result.facts["eggs_set"])


def test_eggs_put_down_to_causes_never_exceed_the_eggs_lost(told):
    _, _, causes, _ = told
    for one in causes.values():
        by_stage = one.losses.groupby("stage")["eggs"].sum()
        assert (by_stage <= one.pattern.set_index("stage")["eggs"].reindex(by_stage.index) + 1e-9).all()


def test_what_if_counts_chicks_back_only_where_the_relation_shows_a_sign(told, demo):
    result = told[3]
    assert "cannot tell" in result.facts["verdict"] and "excursions" not in set(result.table["block"])
    assert np.isnan(result.facts["chicks_back"])
    result = what_if(demo)
    row = result.table[result.table["block"] == "excursions"]
    assert len(row) == 1 and row["low"].iloc[0] <= row["eggs"].iloc[0] <= row["high"].iloc[0]
    assert result.facts["chicks_low"] <= result.facts["chicks_back"] <= result.facts["chicks_high"]


def season_of(rng, batches=12, eggs=48, sd=0.3, **times):
    """Causes of a made season at the published ledger's shares, some stages so many times as frequent."""
    ledger = reference.load("ordinary_ledger").set_index("stage")["share_of_set"].reindex(STAGES)
    share = (ledger * pd.Series(times, dtype=float).reindex(STAGES).fillna(1.0)).to_numpy(copy=True)
    share[0] = ledger.sum() - share[1:].sum()
    made = {}
    for batch in range(batches):
        own = share * np.exp(np.r_[0.0, sd * rng.normal(size=len(share) - 1)])
        count = rng.multinomial(eggs, own / own.sum()).astype(float)
        made[str(batch)] = SimpleNamespace(
            pattern=pd.DataFrame({"stage": STAGES, "eggs": count, "assumed": 0.0}),
            eggs_set=float(eggs),
            table=pd.DataFrame({"cause": [], "share": []}),
            losses=pd.DataFrame({"cause": "none", "stage": STAGES[1:], "eggs": 0.0}),
        )
    return made


def test_an_ordinary_season_seldom_has_a_stage_that_repays_attention():
    """It was 87 of 100 when the worst stage of a season was always told."""
    rng = np.random.default_rng(5)
    noted = [any(row["eggs_lost"] >= LEAST_EGGS for row in _from_stages(season_of(rng))) for _ in range(100)]
    assert sum(noted) <= 15


def test_a_stage_at_thrice_the_published_share_is_told():
    rng = np.random.default_rng(6)
    told = [
        {row["key"] for row in _from_stages(season_of(rng, late=3.0)) if row["eggs_lost"] >= LEAST_EGGS}
        for _ in range(20)
    ]
    assert sum("late" in keys for keys in told) >= 18


def test_the_guide_scales_days_and_marks_care():
    hen, duck = breakout_guide(), breakout_guide(reference.species("duck"))
    eye = hen["look"] == "embryo_eye"
    assert hen.loc[eye, ["day_low", "day_high"]].iloc[0].tolist() == [4, 7]
    assert duck.loc[eye, ["day_low", "day_high"]].iloc[0].tolist() == [5, 10]
    assert hen.loc[hen["part"] == "position", "care"].all()
    assert not hen.loc[eye, "care"].iloc[0]


@pytest.mark.parametrize("species", ["chicken", "duck", "turkey", "quail", "goose", "pigeon", "emu"])
def test_every_day_has_its_look(species):
    guide = breakout_guide(reference.species(species), part="age")
    seen = {day for low, high in guide[["day_low", "day_high"]].to_numpy(int) for day in range(low, high + 1)}
    assert seen == set(range(int(reference.species(species)["incubation_days"]) + 1))
    assert (guide["day_low"] <= guide["day_high"]).all()


def test_day_seven_of_a_hen_is_early_with_a_black_eye():
    from hatchkit.losses.stages import limits_for, stage_of

    eye = breakout_guide().set_index("look").loc["embryo_eye"]
    assert eye["write_down"] == "broken_early"
    assert stage_of(6.5, eye["day_high"], limits_for("chicken", 21.0)) == "early"


def test_looks_that_warmth_makes_alike_are_said_to_be_alike():
    assert "After weeks of warmth" in say.text("breakout_means_egg_clear")
    assert "after weeks of warmth" in say.text("breakout_means_egg_ring")
    assert "do not open it" in say.text("breakout_means_sign_rotten")


@pytest.mark.parametrize("language", say.LANGUAGES)
def test_meanings_name_no_days_of_a_hen(language):
    # The days are scaled to the bird; a day within the text would not be.
    means = [say.text(f"breakout_means_{look}", {}, language) for look in breakout_guide()["look"]]
    assert not [words for words in means if re.search(r"\b(day|Tag|jour|día)e?s? \d", words)]


def test_every_drawing_that_the_guide_names_exists():
    assert set(breakout_guide()["look"]) <= set(egg_drawings.KINDS)


def test_the_column_list_names_what_the_advice_room_returns(told):
    season, answer, causes, result = told
    listed = reference.load("columns_advice")
    one = causes[answer.batch]
    tables = {
        "causes": one.table,
        "cause_sums": one.sums,
        "cause_evidence_found": one.evidence,
        "cause_losses": one.losses,
        "cause_pairs": one.pairs,
        "cause_different": one.different,
        "cause_signs": one.signs,
        "account": account(causes),
        "cause_pattern": one.pattern,
        "what_if": result.table,
        "season_notes": season_notes(season, causes=causes),
        "standing": standing(season),
        "breakout": breakout_guide(),
    }
    for name, table in tables.items():
        assert list(table.columns) == list(listed.loc[listed["table"] == name, "column"]), name
    assert np.isin(listed["kind"], ["text", "number", "count", "time", "yes/no"]).all()


def test_of_a_cause_s_ages_the_likeliest_is_named(told):
    several = 0
    for one in told[2].values():
        for row in one.table.to_dict("records"):
            ways = one.arithmetic(row["cause"]).query("part == 'pattern'").set_index("variant")
            several += len(ways) > 1
            assert row["variant"] == (ways["chance"] * ways["factor"]).idxmax(), (row["cause"], ways)
    assert several > 6
