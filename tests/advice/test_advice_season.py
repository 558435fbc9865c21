"""Season notes, what-if, breakout guide and the column list of the advice room."""

import numpy as np
import pandas as pd
import pytest

from hatchkit import reference
from hatchkit.advice import season_words
from hatchkit.advice.breakout import breakout_guide, guide_in_words
from hatchkit.advice.causes import season_causes
from hatchkit.advice.poor_hatch import standing
from hatchkit.advice.season_notes import season_notes
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
    assert "1. A spell of heat" in season_words.notes(notes)


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


def test_what_if_says_what_a_season_without_excursions_would_have_given(told):
    result = told[3]
    row = result.table[result.table["block"] == "excursions"]
    assert len(row) == 1 and row["low"].iloc[0] <= row["eggs"].iloc[0] <= row["high"].iloc[0]
    assert "Without the excursions" in result.words()


def test_nothing_to_note_is_said():
    assert "Nothing here stands out" in season_words.notes(pd.DataFrame(columns=["rank"]))


def test_the_guide_scales_days_and_marks_care():
    hen, duck = breakout_guide(), breakout_guide(reference.species("duck"))
    eye = hen["look"] == "Black eye"
    assert hen.loc[eye, ["day_low", "day_high"]].iloc[0].tolist() == [4, 7]
    assert duck.loc[eye, ["day_low", "day_high"]].iloc[0].tolist() == [5, 10]
    assert hen.loc[hen["part"] == "position", "care"].all()
    assert not hen.loc[eye, "care"].iloc[0]
    assert list(guide_in_words(part="sign").columns) == [
        "Look",
        "Day",
        "What you see",
        "What it means",
        "Points to",
    ]


@pytest.mark.parametrize("species", ["chicken", "duck", "turkey", "quail", "goose", "pigeon", "emu"])
def test_every_day_has_its_look(species):
    guide = breakout_guide(reference.species(species), part="age")
    seen = {day for low, high in guide[["day_low", "day_high"]].to_numpy(int) for day in range(low, high + 1)}
    assert seen == set(range(int(reference.species(species)["incubation_days"]) + 1))
    assert (guide["day_low"] <= guide["day_high"]).all()


def test_day_seven_of_a_hen_is_early_with_a_black_eye():
    from hatchkit.losses.stages import limits_for, stage_of

    eye = breakout_guide().set_index("look").loc["Black eye"]
    assert eye["write_down"] == "broken_early"
    assert stage_of(6.5, eye["day_high"], limits_for("chicken", 21.0)) == "early"


def test_looks_that_warmth_makes_alike_are_said_to_be_alike():
    means = breakout_guide().set_index("look")["means"]
    assert all("After weeks of warmth" in means[look] or "after weeks of warmth" in means[look]
               for look in ("Nothing grew", "Ring without blood"))
    assert "do not open it" in means["Foul smell"]


def test_meanings_name_no_days_of_a_hen():
    # The days are scaled to the bird; a day within the text would not be.
    assert not breakout_guide()["means"].str.contains(r"day \d").any()


def test_every_drawing_that_the_guide_names_exists():
    assert set(breakout_guide()["drawing"]) - {"none"} <= set(egg_drawings.KINDS)


def test_the_column_list_names_what_the_advice_room_returns(told):
    season, answer, causes, result = told
    listed = reference.load("columns_advice")
    one = causes[answer.batch]
    tables = {
        "causes": one.table,
        "cause_sums": one.sums,
        "cause_evidence_found": one.evidence,
        "cause_losses": one.losses,
        "cause_pattern": one.pattern,
        "what_if": result.table,
        "season_notes": season_notes(season, causes=causes),
        "standing": standing(season),
        "breakout": breakout_guide(),
    }
    for name, table in tables.items():
        assert list(table.columns) == list(listed.loc[listed["table"] == name, "column"]), name
    assert np.isin(listed["kind"], ["text", "number", "count", "time", "yes/no"]).all()


def test_a_batch_without_developing_eggs_is_said_to_have_no_place():
    from hatchkit.advice import season_words

    empty = pd.DataFrame(columns=["batch", "away", "hatched", "developing", "share_hatched", "usual"])
    assert "no developing egg" in season_words.standing(empty, "A")
