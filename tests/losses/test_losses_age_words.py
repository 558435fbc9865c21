"""What is said of ages at death: a highest risk is named only where its band stands clear of the others'."""

from types import SimpleNamespace

import pandas as pd
import pytest

from hatchkit.losses.age_words import age_words

FIT = dict(species="chicken", group="all", eggs=100.0, deaths=20.0, batches=3, removed=0.0, unaccounted=0.0)


def said(*bands):
    """Words on three stretches of a week, each with daily risk, band low, band high."""
    same = dict(species="chicken", group="all")
    hazard = pd.DataFrame(
        [
            dict(
                same,
                after_day=7.0 * at,
                by_day=7.0 * at + 7,
                daily_low=risk,
                daily_high=risk,
                band_low=low,
                band_high=high,
            )
            for at, (risk, low, high) in enumerate(bands)
        ]
    )
    curve = pd.DataFrame([dict(same, at_least=0.2, band_low=0.1, band_high=0.3)])
    table = pd.DataFrame([dict(same, share=0.1, after_day=7.0, by_day=8.0)])
    return age_words(SimpleNamespace(fits=pd.DataFrame([FIT]), hazard=hazard, curve=curve, table=table))


def test_a_risk_that_stands_clear_is_named():
    text = said((0.001, 0.0005, 0.003), (0.02, 0.01, 0.04), (0.002, 0.001, 0.006))
    assert "The daily risk is highest between day 7 and day 14: about 2.0 % a day (95 % band 1.0 to 4.0 %)." in text


@pytest.mark.parametrize("other", [(0.012, 0.006, 0.02), (0.019, 0.01, 0.03)])
def test_a_risk_that_others_may_reach_is_no_winner(other):
    text = said((0.001, 0.0005, 0.003), (0.02, 0.01, 0.04), other)
    assert (
        "The highest daily risk seen was about 2.0 % a day (95 % band 1.0 to 4.0 %), between day 7 and day 14; "
        "other stretches may be as high." in text
    )
    assert "risk is highest" not in text
