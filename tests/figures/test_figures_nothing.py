"""A season without batches still gets a picture that says so."""

import matplotlib

matplotlib.use("Agg")

from hatchkit.figures import losses, style


def test_an_empty_ledger_says_that_there_is_no_batch():
    import pandas as pd

    ax = losses.egg_ledger(pd.DataFrame(columns=["season", "stage", "eggs", "set"]))
    assert [text.get_text() for text in ax.texts] == ["No batch to show"]


def test_nothing_to_draw_is_written_on_bare_axes():
    ax = style.nothing(style.axes(size=(2, 1)), "No log")
    assert not ax.axison and ax.texts[0].get_text() == "No log"
