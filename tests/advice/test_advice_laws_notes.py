"""What most repays attention, and the ladder of evidence: by hand, on both sides of each limit."""

import math
from types import SimpleNamespace

import numpy as np
import pandas as pd
import pytest
from scipy import stats

from hatchkit import reference
from hatchkit.advice import evidence_ladder, season_notes
from hatchkit.advice.published import STAGES
from hatchkit.losses.proportions import pooled


@pytest.mark.parametrize(("factor", "strength"), [
    (150.0, "for_very_strong"), (149.0, "for_strong"), (20.0, "for_strong"), (19.9, "for_some"), (3.0, "for_some"),
    (2.99, "for_hardly"), (1.05, "for_hardly"), (1.049, "none"), (1.0, "none"), (1 / 1.049, "none"),
    (1 / 1.051, "against_hardly"), (1 / 3.001, "against_some"), (1 / 20.01, "against_strong"),
    (1 / 150.1, "against_very_strong"), (0.0, "against_very_strong"), (math.nan, "unknown"),
])  # fmt: skip
def test_how_strong_a_factor_is(factor, strength):
    """3, 20 and 150 on the scale of Bayes factors: Kass & Raftery 1995."""
    assert evidence_ladder._strength(factor) == strength


def batch(**eggs):
    counts = [float(eggs.get(stage, 0)) for stage in STAGES]
    return SimpleNamespace(pattern=pd.DataFrame(dict(stage=STAGES, eggs=counts, assumed=0.0)),
                           eggs_set=sum(counts), unaccounted=float(eggs.get("gone", 0)))  # fmt: skip


def test_a_stage_above_the_published_one_by_more_than_chance():
    """One chance in 20 for seven stages together: for one batch Wilson's end at 1 - 0.1 / 7."""
    ledger = reference.load("ordinary_ledger").set_index("stage")["share_of_set"]
    share, z = float(ledger["late"] / ledger.sum()), stats.norm.ppf(1 - 0.05 / 7)
    # Wilson's lower end lies at `share` where (found - share) is z standard errors of `share` itself.
    edge = share + z * math.sqrt(share * (1 - share) / 200)
    for late, told in ((200 * edge + 0.01, ["late"]), (200 * edge - 0.01, [])):
        assert season_notes._above(dict(a=batch(late=late, hatched=200 - late))) == told
    two = dict(a=batch(late=60, hatched=140), b=batch(late=10, hatched=190))
    low = pooled(np.array([60.0, 10]), np.array([200.0, 200]), level=1 - 0.1 / 7).low
    assert season_notes._above(two) == (["late"] if low > share else [])


def test_eggs_of_a_stage_that_no_cause_accounts_for(monkeypatch):
    """Late dead beyond the published ones less those put down to causes; told as assumed above a fifth."""
    one = batch(late=60, hatched=140)
    one.pattern.loc[STAGES.index("late"), "assumed"] = 12.01
    told = pd.DataFrame(dict(cause="turning", stage=["late", "early"], eggs=[7.0, 1.0]))
    monkeypatch.setattr(season_notes, "told_losses", lambda causes: told)
    ledger = reference.load("ordinary_ledger").set_index("stage")["share_of_set"]
    rows = season_notes._from_stages(dict(a=one))
    assert [(row["key"], row["sure"]) for row in rows] == [("late", "assumed")]
    assert rows[0]["eggs_lost"] == pytest.approx(60 - 200 * ledger["late"] / ledger.sum() - 7)
    one.pattern.loc[STAGES.index("late"), "assumed"] = 12.0
    assert season_notes._from_stages(dict(a=one))[0]["sure"] == "counted" and season_notes._from_stages({}) == []


def test_notes_are_of_three_eggs_or_more_and_most_first(monkeypatch):
    found = pd.DataFrame(dict(key=["a", "b", "c", "d"], eggs=[3.0, 2.9, 9.0, 8.0], kind="cause",
                              firmest=[0.8, 0.9, 0.5, 0.499], batches=[["x"], ["x"], ["x", "y"], []]))  # fmt: skip
    monkeypatch.setattr(season_notes, "account", lambda causes: found)
    monkeypatch.setattr(season_notes, "_from_stages", lambda causes: [])
    causes = dict(x=batch(gone=4), y=batch(gone=0), z=batch(gone=2))
    table = season_notes.season_notes(None, causes=causes)
    assert table["key"].tolist() == ["c", "unaccounted", "a"] and table["eggs_lost"].tolist() == [9, 6, 3]
    assert table["sure"].tolist() == ["probable", "counted", "firm"] and table["rank"].tolist() == [1, 2, 3]
    assert table["batches"].tolist() == ["x, y", "x, z", "x"]
    assert len(season_notes.season_notes(None, causes=causes, most=1)) == 1
    monkeypatch.setattr(season_notes, "account", lambda causes: found.assign(firmest=[0.799, 0.9, 0.499, 0.9]))
    assert season_notes.season_notes(None, causes=causes)["sure"].tolist() == ["guess", "counted", "probable"]
