"""Figures of losses beside temperature: they draw what the table says and choose nothing."""

import matplotlib

matplotlib.use("Agg")

import matplotlib.pyplot as plt
import numpy as np
import pandas as pd
import pytest

from hatchkit.figures import relate


@pytest.fixture(autouse=True)
def closed():
    yield
    plt.close("all")


def windows():
    return pd.DataFrame(
        {
            "name": ["candle1", "candle2", "hatch"],
            "hazard_ratio": [1.4, 30.0, np.nan],
            "low": [0.6, 4.0, np.nan],
            "high": [3.0, 300.0, np.nan],
            "exposed": [3, 1, 0],
            "deaths": [12.0, 9.0, 20.0],
        }
    )


def test_each_window_has_its_mark_its_interval_and_its_counts():
    ax = relate.hazard_by_window(windows())
    names = [text.get_text() for text in ax.texts]
    assert "first candling (3 batches exposed, 12 dead)" in names
    assert "second candling (1 batch exposed, 9 dead)" in names
    assert "nothing to compare" in names
    spans = [line.get_xdata() for line in ax.lines if len(line.get_xdata()) == 2]
    assert [0.6, 3.0] in [list(span) for span in spans]
    assert any(line.get_marker() == ">" for line in ax.lines)  # the interval goes on beyond the picture


def test_the_callers_axes_are_used_and_returned():
    _, own = plt.subplots()
    assert relate.hazard_by_window(windows(), ax=own) is own


def test_each_batch_is_drawn_and_exposed_ones_are_named_and_shaped_apart():
    table = pd.DataFrame(
        {
            "batch": list("abc"),
            "exposed": [False, False, True],
            "dose": [0.0, 0.0, 2.0],
            "share_died": [0.1, 0.05, 0.4],
            "share_expected_low": 0.0,
            "share_expected_high": 0.2,
        }
    )
    ax = relate.losses_against_dose(table)
    assert {"a", "b", "c"} & {text.get_text() for text in ax.texts} == {"c"}
    assert {line.get_marker() for line in ax.lines if len(line.get_xdata())} >= {"o", "D"}
    free = next(line for line in ax.lines if line.get_marker() == "o")
    assert len(set(free.get_xdata())) == 2  # side by side
    border = next(line for line in ax.lines if len(set(line.get_xdata())) == 1 and line.get_linestyle() == "-")
    hit = next(line for line in ax.lines if line.get_marker() == "D")
    assert max(free.get_xdata()) < border.get_xdata()[0] < min(hit.get_xdata())
    assert not any(label.get_text().startswith(("-", "\N{MINUS SIGN}")) for label in ax.get_xticklabels())
