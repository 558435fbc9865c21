"""Deaths beyond the expected, and chances allowed for their number: by hand and by a library."""

import math

import numpy as np
import pandas as pd
import pytest
from statsmodels.stats.multitest import multipletests

from hatchkit.relate import excess, late, relation
from hatchkit.relate.design import design


def made(died=3, exposed=(1.0, 1.0)):
    """Six batches with two windows of 7 and 11 days; the first two met a dose in the second one."""
    rows = [dict(batch=f"b{b}", window=w, days=7.0 if w == 0 else 11.0, at_risk=40.0 - died * w, died=float(died),
                 dose=exposed[b] if w and b < 2 else 0.0, day_start=7.0 * w)
            for b in range(6) for w in range(2)]  # fmt: skip
    return pd.DataFrame(rows)


@pytest.mark.parametrize("shares", [[0.01, 0.04, 0.03, 0.2], [0.5, 0.9, 0.6], [0.02], [0.03, 0.03, 0.03]])
def test_shares_of_chance_allowed_for_their_number_as_the_library_does(shares):
    assert relation.holm(np.array(shares)) == pytest.approx(multipletests(shares, method="holm")[1])
    assert len(relation.holm(np.array([]))) == 0


def test_a_line_of_the_excess_by_hand():
    """1,000 draws of 0 to 9 deaths expected of 12 seen; ends of counts are taken outwards to whole eggs."""
    would = np.arange(1000) % 10.0
    line = excess._line("a", 40, 12, would, 12 - would, (12 - would) / 2)
    assert (line["expected"], line["excess"], line["chicks_lost"]) == pytest.approx((4.5, 7.5, 3.75))
    assert (line["excess_low"], line["excess_high"]) == (3, 12)
    assert (line["chicks_low"], line["chicks_high"]) == pytest.approx((1.5, 6.0))
    fine = excess._line("a", 40, 0, would, np.arange(1, 991.0), np.arange(0, 1001.0))
    assert (fine["excess_low"], fine["excess_high"]) == (25, 966)
    assert (fine["chicks_low"], fine["chicks_high"]) == pytest.approx((25, 975))


def test_where_nothing_teaches_the_draw_is_the_prior():
    """All windows of one kind exposed: hazard 0.005 a day, known to 1.5 on the log, with a batch's own spread."""
    table = made()
    table.loc[table["window"] == 1, "dose"] = 1.0
    coded = design(table)
    log_hazard, taught = excess.unexposed_hazard(coded)
    assert log_hazard.shape == (4000, 12) and taught.tolist() == [True, False] * 6
    middle = log_hazard[:, 1].mean()
    assert middle == pytest.approx(math.log(0.005 * 11), abs=0.12)
    assert 1.45 < log_hazard[:, 1].std() < 1.9
    # Taught by 3 dead of 40 in each of six batches.
    assert np.median(-np.expm1(-np.exp(log_hazard[:, 0]))) == pytest.approx(3 / 40, abs=0.02)
    both = np.corrcoef(log_hazard[:, 0] - log_hazard[:, 2], log_hazard[:, 1] - log_hazard[:, 3])[0, 1]
    assert both > 0.99  # windows of a batch share its effect


def test_rows_in_question_do_not_teach():
    coded = design(made())
    leave = np.zeros(12, bool)
    leave[::2] = True
    assert excess.unexposed_hazard(coded, leave_out=leave)[1].tolist() == [False, True] * 6


def test_a_batch_is_walked_through_its_windows(monkeypatch):
    """Nobody would have died in the exposed window: all 3 were lost, and in a later one half of these anyway."""
    table = made()
    later = table[table["window"] == 1].assign(window=2, dose=0.0, at_risk=20.0)
    coded = design(pd.concat([table, later], ignore_index=True))
    log_hazard = np.full((50, len(coded.rows)), -60.0)
    log_hazard[:, coded.window == 2] = math.log(math.log(2))
    found = excess.excess(coded, log_hazard=log_hazard).set_index("batch")
    assert found.index.tolist() == ["b0", "b1", "all"]
    assert found.loc["b0", ["eggs", "observed", "expected", "excess", "chicks_lost"]].tolist() == [37, 3, 0, 3, 1.5]
    assert found.loc["all", ["eggs", "observed", "excess", "chicks_lost"]].tolist() == [74, 6, 6, 3]
    assert len(excess.excess(design(made(exposed=(0.0, 0.0))))) == 0


def test_deaths_of_a_batch_beside_what_unexposed_ones_lose():
    coded = design(made())
    found = relation._by_batch(coded, 1).set_index("batch")
    row = found.loc["b0"]
    assert (row["exposed"], row["dose"], row["at_risk"], row["died"]) == (True, 1.0, 40, 6)
    assert row["share_died"] == 6 / 40 and not found.loc["b5", "exposed"]
    log_hazard, _ = excess.unexposed_hazard(coded)
    share = -np.expm1(-np.exp(log_hazard[:, :2]).sum(axis=1))
    drawn = np.random.default_rng(8).binomial(40, share) / 40
    ends = np.percentile(drawn, [2.5, 50, 97.5])
    names = ["share_expected_low", "share_expected", "share_expected_high"]
    assert row[names].tolist() == pytest.approx(ends, abs=0.026)


def test_losses_from_a_window_to_the_end(monkeypatch):
    seen = []
    monkeypatch.setattr(late, "ratios_by_window", lambda coded, seed: seen.append(coded))
    table = made()
    table.loc[3, "died"] = np.nan
    late.later_losses(table, 1)
    rows = seen[0].rows.set_index(["batch", "window"])
    assert rows.loc[("b0", 0), ["died", "days", "at_risk"]].tolist() == [6, 18, 40]
    assert rows.loc[("b0", 1), ["died", "days"]].tolist() == [3, 11]
    assert rows.loc[("b1", 0), ["died", "days"]].tolist() == [3, 7] and ("b1", 1) not in rows.index
