"""The season chart: limits, batches outside them, and a slow slide."""

import numpy as np
import pytest
from tiny_season import tiny_season

from hatchkit.findings import more_losses
from hatchkit.losses.season_chart import season_chart, slide_test
from hatchkit.problems import HatchkitError


def season(late):
    return tiny_season(
        [
            dict(batch=n, eggs_set=48, day2=14, dead2=0, day3=18, dead3=dead, hatched=48 - dead)
            for n, dead in enumerate(late)
        ]
    )


def test_one_bad_batch_lies_outside():
    table = season_chart(season([2, 1, 3, 2, 2, 24, 2, 1, 3, 2, 2, 1]))
    assert table.loc[table["outside"], "batch"].tolist() == ["5"]
    assert table.attrs["provisional"] and table.attrs["species"] == "chicken"
    assert more_losses.course(table)[0].facts["limits"] == "outside"


def test_usual_spread_between_batches_is_inside():
    table = season_chart(season([0, 8, 1, 9, 2, 7, 0, 10, 1, 8]))
    assert not table["outside"].any()
    assert table.attrs["spread"] > 1


def test_a_slow_slide_shows_and_its_order_matters():
    rising = season_chart(season(range(12)))
    assert rising.attrs["slide"] == pytest.approx(1) and rising.attrs["slide_chance"] < 0.01
    steady = season_chart(season([2, 3, 2, 3, 3, 2, 3, 2]))
    assert steady.attrs["slide_chance"] > 0.05


def test_batches_come_in_the_order_of_setting():
    season_ = season([1, 2, 3, 4])
    season_.batches["set_at"] = season_.batches["set_at"].to_numpy()[::-1]
    assert season_chart(season_)["batch"].tolist() == ["3", "2", "1", "0"]


def test_no_loss_at_all_has_no_limits_and_no_slide():
    table = season_chart(season([0, 0, 0]))
    assert table["low"].isna().all() and not table["outside"].any()
    assert np.isnan(table.attrs["slide_chance"])


def test_slides_by_chance_are_rare():
    random = np.random.default_rng(4)
    chances = [slide_test(random.binomial(48, 0.06, 12), np.full(12, 48), draws=199)[1] for _ in range(200)]
    assert np.mean(np.array(chances) <= 0.05) <= 0.09


def test_what_cannot_be_charted_is_refused_in_words():
    with pytest.raises(HatchkitError, match="no stage"):
        season_chart(season([1, 2]), "teenage")
    with pytest.raises(HatchkitError, match="No finished batch"):
        season_chart(tiny_season([dict(batch=1, eggs_set=12, day1=7, dead1=0, taken_off_day=None)]))
