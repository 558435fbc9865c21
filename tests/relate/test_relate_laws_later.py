"""Scores of arrangements, windows after an excursion, turns of the log, doses that levels hide; by hand."""

import math

import numpy as np
import pandas as pd
import pytest

from hatchkit.relate import late, permutation, redrawn, relation, turns
from hatchkit.relate.design import design
from hatchkit.relate.exposure import DOSE_COLUMNS, add_doses
from hatchkit.relate.hazard import _arranged
from hatchkit.relate.measures import PARTS, score, together

START = pd.Timestamp("2025-03-01", tz="UTC")


def test_scores_are_sums_of_doses_dealt_times_residuals():
    rng = np.random.default_rng(1)
    residuals, doses = rng.normal(size=(4, 2)), rng.normal(size=(4, 2))
    order = np.array([[0, 1, 2, 3], [3, 0, 1, 2], [1, 0, 3, 2]])
    want = [sum(residuals[b] @ doses[deal[b]] for b in range(4)) for deal in order]
    assert permutation.scores(residuals, doses, order) == pytest.approx(want)
    turned = rng.normal(size=(5, 4, 2))
    assert permutation.turned_scores(residuals, turned) == pytest.approx([(residuals * turn).sum() for turn in turned])


def rows_of(*rows):
    return pd.DataFrame(rows, columns=["batch", "window", "at_risk", "died", "dose"]).assign(days=7.0)


def test_windows_turned_round_are_counted_out():
    """Three turns; the residuals' sum with the doses is 2, 1 and -1: none of the others is as high, so 1 of 3."""
    made = design(rows_of(("a", 1, 20, 3, 1.0), ("b", 1, 20, 1, 0.0), ("c", 1, 20, 1, np.nan)))
    turned = np.array([[1.0, 0, np.nan], [0.0, 1, 0], [0.0, 0, 1]])
    dealt, test = _arranged(made, np.array([[2.0], [1.0], [-1.0]]), turned, 99, 1)
    assert dealt[:, :, 0].tolist() == [[1, 0, 0], [0, 1, 0], [0, 0, 1]]
    assert test["more"] == test["smallest"] == pytest.approx(1 / 3)
    assert (test["arrangements"], test["exact"], test["kind"]) == (3, True, "log turned")


def test_the_window_after_an_excursion_beside_what_others_lose_there(monkeypatch):
    """Hazard of 10 % in every draw: 4 of 40 expected; 9 dead are seldom as many. c was hit again, d not logged."""
    rows = rows_of(
        ("a", 1, 44, 2, 1.0), ("a", 2, 40, 9, 0.0), ("b", 1, 44, 2, 0.0), ("b", 2, 40, 3, 0.0), ("c", 1, 44, 2, 1.0),
        ("c", 2, 40, 3, 1.0), ("d", 1, 44, 2, 1.0), ("d", 2, 40, 3, np.nan), ("e", 1, 44, 2, 2.0), ("e", 2, 20, 2, 0.0),
    )  # fmt: skip
    asked = []

    def hazard(made, seed, leave_out):
        asked.append(leave_out)
        return np.full((4000, len(made.rows)), math.log(-math.log(0.9))), None

    monkeypatch.setattr(late, "unexposed_hazard", hazard)
    made = design(rows)
    found = late.next_windows(made).set_index("batch")
    assert found.index.tolist() == ["a", "e", "all"]
    assert found[["exposed", "name"]].to_numpy().tolist() == [[1, 2], [1, 2], ["", ""]]
    assert found[["at_risk", "died"]].to_numpy().tolist() == [[40, 9], [20, 2], [60, 11]]
    assert found["expected"].tolist() == pytest.approx([4, 2, 6], abs=0.15)
    assert found["chance"].tolist() == pytest.approx([0.0155, 0.608, 0.0337], abs=0.03)
    assert made.rows.loc[asked[0], ["batch", "window"]].to_numpy().tolist() == [["a", 2], ["e", 2]]
    # Without another unexposed batch there nothing is to be compared.
    alone = late.next_windows(design(rows[rows["batch"].isin(["a", "c"])]))
    assert len(alone) == 0 and list(alone) == late.NEXT_COLUMNS


def test_each_window_is_asked_for_itself(monkeypatch):
    asked = []

    def fit(made, rows, seed):
        asked.append(made.rows.loc[rows, "window"].unique().tolist())
        return dict.fromkeys(late.RATIO_COLUMNS, seed)

    monkeypatch.setattr(late, "effect", fit)
    rows = rows_of(("a", 1, 40, 2, 1.0), ("a", 2, 38, 2, 0.0), ("b", 1, 40, 2, 0.0), ("b", 2, 38, 2, 0.0))
    found = late.ratios_by_window(design(rows), 7)
    assert asked == [[1], [2]] and found["name"].tolist() == [1, 2] and found["low"].tolist() == [7, 7]


def test_a_dose_that_levels_of_machines_take_away_is_not_asked_about():
    """All batches of the one machine exposed, none of the other: the machine's level says the same."""
    rows = rows_of(*((f"b{n}", 1, 40, 2 + n % 3, float(n < 4)) for n in range(8)))
    found = redrawn.redrawn(design(rows.assign(incubator=list("mmmmoooo"))), draws=50)
    assert math.isnan(found["more"]) and math.isnan(found["spread"])
    assert (found["draws"], found["apart"]) == (0, False)
    told = redrawn.redrawn(design(rows), draws=50)
    assert (told["draws"], told["apart"]) == (50, True) and 0 < told["more"] < 1


def exposure_of(*rows):
    table = pd.DataFrame(rows, columns=["batch", "incubator", "start", "end"])
    for name in ("start", "end"):
        table[name] = pd.to_datetime([pd.NaT if pd.isna(h) else START + pd.Timedelta(hours=h) for h in table[name]])
    return table


def test_turns_by_two_days_and_windows_without_a_log():
    """Heat of 30 K h in hours 48 to 50, cold of 20 in hour 0: turned by two days the heat lies at hour 0."""
    heat, cold = np.zeros(96), np.zeros(96)
    heat[48:50], cold[0] = 15.0, 20.0
    rate = pd.DataFrame({PARTS[0]: heat, PARTS[1]: cold}, index=pd.date_range(START, periods=96, freq="h"))
    table = exposure_of(("a", "m", 0, 24), ("b", "m", 48, 72), ("c", "o", 0, 24), ("d", "m", None, 24),
                        ("e", "m", 0, None))  # fmt: skip
    warm, chill = score([30.0], PARTS[0])[0], score([20.0], PARTS[1])[0]
    want = together(np.array([[0, warm], [warm, 0]]), np.array([[chill, 0], [0, chill]]))
    found = turns.turned_doses(table, {"m": rate, "q": rate[:0]}, days=2.0)
    assert found[:, :2] == pytest.approx(want) and np.isnan(found[:, 2:]).all()
    assert turns.turned_doses(table, {}).shape == (1, 5)
    assert len(turns.turned_doses(table, {"m": rate})) == 4


def test_factors_of_a_batch_stand_beside_its_windows():
    windows = pd.DataFrame(dict(batch=["1", "1", "2"], day_start=[0.0, 7, 0], day_end=[7.0, 18, 6.5]))
    batches = pd.DataFrame(dict(batch=[1, 2, 2], species=["hen", "duck", "goose"], stored_days=[3.0, 5, 9]))
    found = relation.with_factors(windows, batches)
    assert found["days"].tolist() == [7, 11, 6.5] and found["species"].tolist() == ["hen", "hen", "duck"]
    assert found["stored_days"].tolist() == [3, 3, 5] and found["flock"].isna().all()


def test_doses_keep_the_rows_of_their_windows():
    windows = pd.DataFrame(dict(batch=["1", "2"], start=START, end=START + pd.Timedelta(hours=30)), index=[4, 9])
    table = add_doses(windows, {})
    assert table.index.tolist() == [4, 9] and table["hours"].tolist() == [30, 30]
    assert list(table) == ["batch", "start", "end", *DOSE_COLUMNS]
    assert all(table[name].dtype == float for name in DOSE_COLUMNS if name != "heat_band")


def test_holms_shares_by_hand():
    """0.01 x 3, 0.03 x 2, 0.5; never below the one before, never above 1."""
    assert relation.holm(np.array([0.5, 0.01, 0.03])).tolist() == pytest.approx([0.5, 0.03, 0.06])
    assert relation.holm(np.array([0.6, 0.6])).tolist() == [1.0, 1.0]
    assert relation.holm(np.array([0.02, 0.03, 0.028])).tolist() == pytest.approx([0.06, 0.06, 0.06])
    assert relation.holm(np.array([0.02, np.nan, 0.03])).tolist() == pytest.approx([0.04, np.nan, 0.04], nan_ok=True)
    assert len(relation.holm(np.array([]))) == 0
