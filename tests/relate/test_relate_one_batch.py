"""One batch beside the others: unusual, or what it would have taken."""

import numpy as np
import pandas as pd
import pytest

from hatchkit.relate.one_batch import OneBatch, compare, later_and_high

DAILY, DAYS = (0.005, 0.002, 0.002, 0.008), (7.0, 7.0, 4.0, 3.0)


def exposure(random, *, others, eggs, ratio):
    """An exposure table; batch b0 met heat before the second candling, at `ratio` times the usual hazard."""
    rows = []
    for batch in range(others + 1):
        left, day, spread = eggs, 0.0, np.exp(0.4 * random.standard_normal())
        for place, (daily, days) in enumerate(zip(DAILY, DAYS, strict=True)):
            hit = batch == 0 and place == 1
            died = random.binomial(left, -np.expm1(-daily * days * spread * (ratio if hit else 1)))
            rows.append(
                dict(
                    batch=f"b{batch}",
                    name=["candle1", "candle2", "transfer", "hatch"][place],
                    day_start=day,
                    day_end=day + days,
                    days=days,
                    at_risk=float(left),
                    died=float(died),
                    share_logged=1.0,
                    egg_degree_hours_warm=60.0 * hit,
                    egg_degree_hours_cold=0.0,
                    species="chicken",
                    incubator="A",
                )
            )
            left, day = left - died, day + days
    return pd.DataFrame(rows)


def with_deaths(table, died):
    return table.assign(died=table["died"].mask((table["batch"] == "b0") & (table["name"] == "candle2"), died))


def test_an_excursion_that_few_eggs_could_not_show_is_not_called_harmless():
    """At four times the hazard, 24 eggs beside 10 batches of 24 look like luck in 8 seasons of 10."""
    random, verdicts = np.random.default_rng(8), []
    for _ in range(12):
        verdicts.append(compare(exposure(random, others=10, eggs=24, ratio=4), "b0")["verdict"])
    quiet = [said for said in verdicts if not said.startswith("more deaths than usual")]
    assert len(quiet) > 6
    assert all(said.startswith("cannot tell: so many can come by luck alone, and ") for said in quiet)
    assert not any("not more deaths" in said for said in verdicts)


@pytest.mark.parametrize("eggs", [24, 48])
def test_the_number_that_would_have_stood_out_is_the_first_that_does(eggs):
    table = exposure(np.random.default_rng(2), others=8, eggs=eggs, ratio=1)
    needed = int(compare(table, "b0")["needed"])
    below, at = (compare(with_deaths(table, float(died)), "b0") for died in (needed - 1, needed))
    assert below["verdict"].startswith("cannot tell") and f"and {needed} or more would" in below["verdict"]
    assert at["verdict"].startswith("more deaths than usual") and at["chance"] <= 0.05 < below["chance"]
    assert 2 <= needed < eggs / 4


def test_where_even_the_loss_of_all_would_be_luck_that_is_said():
    table = exposure(np.random.default_rng(2), others=8, eggs=24, ratio=1)
    own = table["batch"] == "b0"
    table = table.assign(at_risk=table["at_risk"].mask(own, 1.0), died=table["died"].mask(own, 0.0))
    table.loc[~own & (table["name"] == "candle2"), "died"] = 6.0
    found = compare(table, "b0")
    assert np.isnan(found["needed"]) and "not even the loss of all" in found["verdict"]
    said = OneBatch(batch="b0", ages=pd.DataFrame({"when": [], "dead": []}), besides=[], **found).words()
    assert said.startswith("Batch b0: cannot tell: so few embryos")


def test_two_later_windows_share_the_limit_of_one():
    windows = pd.DataFrame(
        {
            "name": ["candle1", "candle2", "transfer", "hatch"],
            "part": ["before", "with excursion", "after", "after"],
            "chance": [0.01, 0.3, 0.04, 0.5],
        }
    )
    assert later_and_high(windows) == []
    assert later_and_high(windows.iloc[:3]) == ["transfer"]
    assert later_and_high(windows.assign(chance=0.02)) == ["transfer", "hatch"]
    assert later_and_high(windows.iloc[:2]) == []
