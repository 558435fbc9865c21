"""What was not counted is not taken for nothing: unknown ends, clears never looked for, deaths between two stages."""

import numpy as np
import pandas as pd
import pytest

import hatchkit as hk
from hatchkit.advice import poor_hatch
from hatchkit.advice.causes import MOST_UNACCOUNTED, likely_causes, season_causes
from hatchkit.advice.causes import _verdict as verdict_of
from hatchkit.advice.published import STAGES, published_shares
from hatchkit.advice.reasons import Counted
from hatchkit.advice.season_notes import season_notes
from hatchkit.advice.tally import Between, tally
from hatchkit.advice.what_if import what_if
from hatchkit.findings.season import review
from hatchkit.problems import HatchkitError
from hatchkit.say.causes import arithmetic, reasons, verdict

QUAIL = """Batch;Date set;Eggs;Candled;Clear;Dead;Hatched;Dead in shell;Comment
Q1;01.03.2026;40;08.03.2026;5;1;29;5;
Q2;22.03.2026;48;29.03.2026;6;2;35;5;
Q3;12.04.2026;60;19.04.2026;9;2;3;44;thermostat!!! all cooked? about day 12
Q4;03.05.2026;36;10.05.2026;4;0;27;5;
Q5;24.05.2026;30;;;;21;;not candled
Q6;14.06.2026;54;21.06.2026;7;3;38;6;
"""

TOML = """title = "Quail of an invented keeper"
default_species = "quail"
timezone = "Europe/London"
[headers]
"Candled" = "candle1_at"
"Clear" = "clear1"
"Dead" = "dead1"
"""


def written(folder, rows=QUAIL, toml=TOML):
    (folder / "quail.csv").write_text(rows, encoding="utf-8")
    (folder / "season.toml").write_text(toml, encoding="utf-8")
    return hk.load_season(folder)


@pytest.fixture(scope="module")
def quail(tmp_path_factory):
    return written(tmp_path_factory.mktemp("quail"))


def test_eggs_without_a_known_end_give_a_range_not_a_hundred_percent(quail):
    row = poor_hatch.standing(quail).set_index("batch").loc["Q5"]
    assert row["unaccounted"] == 9 and np.isnan(row["share_hatched"])
    assert (row["share_low"], row["share_high"]) == (pytest.approx(21 / 30), 1.0)
    assert row["poor"] == "no" and row["away_low"] > poor_hatch.POOR


def test_a_batch_that_counts_every_egg_keeps_its_one_share(quail):
    row = poor_hatch.standing(quail).set_index("batch").loc["Q1"]
    assert (row["hatched"], row["developing"]) == (29, 35) and row["share_hatched"] == pytest.approx(29 / 35)
    assert row["poor"] == "no"


def test_other_batches_lose_their_unknown_eggs_in_what_is_usual(quail):
    eggs = tally(quail)
    assert not eggs.clears_counted["Q5"] and eggs.clears_counted["Q1"]
    filled = eggs.filled()
    assert filled.loc["Q5"].sum() == 30 and filled.loc["Q5", "hatched"] == 21
    assert filled.loc["Q3", "clear"] == 9  # clears were counted: an egg without an end is none


def test_many_unknown_eggs_come_first_in_the_words_and_cap_the_verdict(quail):
    told = likely_causes(quail, "Q5")
    assert told.verdict == "cannot tell"
    assert verdict(told).startswith("9 of the 30 eggs set in batch Q5 have no known end, so no cause can be named")
    assert verdict(told, "de").startswith("Von 9 der 30 eingelegten Eier der Brut Q5 ist der Verbleib unbekannt")
    assert not told.table["firm"].any() and told.eggs_set == 30


def test_the_verdict_is_capped_where_a_sixth_of_the_eggs_is_unknown():
    table = pd.DataFrame({"cause": ["infertile"], "share": [0.95], "firm": [False]})
    luck = table.assign(cause="bad_luck")
    many, few = (Counted(np.array([20.0] + [0.0] * 7), (), gone) for gone in (4.0, 2.0))
    assert many.mostly_unknown(MOST_UNACCOUNTED) and not few.mostly_unknown(MOST_UNACCOUNTED)
    alone = pd.DataFrame(columns=["first", "second", "share"])
    assert verdict_of(table, alone, many) == "probable"
    assert verdict_of(table.assign(firm=True), alone, few) == "confident"
    assert verdict_of(luck, alone, many) == "cannot tell" and verdict_of(luck, alone, few) == "bad luck"


def test_heat_without_any_log_is_never_very_likely(quail):
    told = likely_causes(quail, "Q3")
    assert not told.table.set_index("cause").loc[["heat_spell", "cold_spell", "warm_throughout"], "firm"].any()
    assert told.verdict in ("probable", "cannot tell")
    notes = season_notes(quail)
    assert "firm" not in set(notes["sure"])


def test_a_remark_on_heat_is_matched_and_shown(quail):
    told = likely_causes(quail, "Q3")
    assert told.signs["sign"].tolist() == ["overheated"] and told.signs["said"].tolist() == ["cooked"]
    assert told.table["cause"].iloc[0] == "heat_spell"
    assert told.remark == "thermostat!!! all cooked? about day 12" and told.remark in verdict(told)


def test_deaths_between_stages_are_told_by_their_days(quail):
    fits = likely_causes(quail, "Q3").table.set_index("cause").at["heat_spell", "fits"]
    facts = dict(fits)["days_more"]
    assert (facts["eggs"], facts["after_day"], facts["by_day"], facts["stages"]) == (44, 7, 18.5, ["mid", "late"])
    assert "44 dead between day 7 and 18.5 (mid dead or late dead" in reasons(fits)
    assert not {"mid", "late"} & {facts["stage"] for code, facts in fits if code.startswith("stage")}


def test_deaths_known_egg_by_egg_to_a_few_days_are_told_together():
    from hatchkit.advice.reasons import _of_days

    places = STAGES.index("mid"), STAGES.index("late")
    between = tuple(Between(places, (0.5, 0.5), (0.1, 0.2), 1.0, 9.0 + day, np.inf) for day in range(8))
    seen, none = Counted(np.array([20.0, 0, 2, 0, 2, 4, 0, 0]), between, 0.0), np.zeros(len(STAGES))
    fits, against = _of_days(seen, 28 * published_shares(), none + 1, 0.05)
    ((code, facts),) = fits
    assert code == "days_more" and (facts["eggs"], facts["after_day"], facts["by_day"]) == (8, 9, None)
    assert facts["stages"] == ["mid", "late"] and facts["usual"] == pytest.approx(2.4, abs=0.05)
    assert not against and _of_days(seen, 28 * published_shares(), none, 0.05)[1][0][0] == "days_not_explained"


def test_unknown_eggs_repay_attention_and_the_closing_line_counts_all_eggs(quail):
    causes = season_causes(quail)
    notes = season_notes(quail, causes=causes).set_index("key")
    assert notes.at["unaccounted", "eggs_lost"] == 11 and notes.at["unaccounted", "batches"] == "Q3, Q5"
    result = what_if(quail, causes=causes)
    assert (result.facts["eggs_set"], result.facts["hatched"], result.facts["unaccounted"]) == (268, 153, 11)
    assert round(result.facts["assumed"]) == 53
    assert result.table.loc[result.table["block"] == "stage", "eggs"].sum() == pytest.approx(268 - 153)


def test_batches_that_cannot_be_read_are_said_not_to_be_counted(tmp_path):
    rows = QUAIL.replace("Q6;14.06.2026;54;21.06.2026;7;3;38;6;", "Q6;14.06.2026;54;21.06.2026;47;3;38;6;")
    facts = what_if(written(tmp_path, rows)).facts
    assert (facts["eggs_set"], facts["left_out_eggs"], facts["left_out"]) == (214, 54, ["Q6"])


def test_no_batches_are_not_called_ordinary_luck(quail):
    bare = quail.with_batches(quail.batches.iloc[:0])
    notes = season_notes(bare, causes={})
    assert notes.empty and notes.attrs["unusual"] == []
    assert review(bare).first.answer == "most_none_finished"


def test_a_season_without_a_batch_is_not_asked_to_name_one(quail):
    with pytest.raises(HatchkitError, match="no batch in this season yet"):
        poor_hatch.poorest_batch(quail.with_batches(quail.batches.iloc[:0]))


def test_a_lone_unusual_batch_is_said_beside_empty_notes(tmp_path):
    # One batch whose causes share the loss among them: nothing comes first, yet the published level finds it unusual.
    rows = QUAIL.splitlines()[0] + "\nQ1;01.03.2026;24;08.03.2026;5;2;9;7;first hatch ever\n"
    season = written(tmp_path, rows, TOML.replace('"quail"', '"chicken"'))
    notes = season_notes(season, most=0)
    assert notes.empty and notes.attrs["unusual"] == ["Q1"]


def test_clears_never_counted_say_nothing_of_a_flock(tmp_path):
    from hatchkit.advice.evidence import gather

    rows = "\n".join(
        line + (";Flock" if line.startswith("Batch") else ";east" if line[1] in "15" else ";west")
        for line in QUAIL.splitlines()
    )
    season = written(tmp_path, rows)
    # The only other batch of the flock was never candled: its clears are not known, not none.
    clears = gather(season).values["flock_clears"]
    assert np.isnan(clears["Q1"]) and np.isfinite(clears["Q5"])


def test_unopened_dead_of_a_batch_that_nobody_candled_may_have_been_clear(tmp_path):
    rows = QUAIL.replace("Q5;24.05.2026;30;;;;21;;not candled", "Q5;24.05.2026;30;;;;12;18;not candled")
    table = poor_hatch.standing(written(tmp_path, rows))
    assert not table.set_index("batch").at["Q5", "clears_counted"]
    assert table.set_index("batch").at["Q3", "clears_counted"]


def test_what_is_not_there_is_not_called_not_known(quail):
    told = likely_causes(quail, "Q1")
    assert told.table.set_index("cause").at["unlisted", "against"] == (("any_pattern", {}),)
    assert "you noted: it got too hot" in arithmetic((likely_causes(quail, "Q3"), "heat_spell"))
