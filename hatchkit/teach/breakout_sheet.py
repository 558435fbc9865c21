"""The picture key as a sheet to print: every drawing with a box for the tally."""

import base64
import io

import matplotlib.pyplot as plt

from hatchkit import reference
from hatchkit.figures import egg_drawings
from hatchkit.figures.egg_candled import candled
from hatchkit.figures.egg_lying import LYING
from hatchkit.figures.egg_opened import opened
from hatchkit.figures.style import subplots
from hatchkit.pages.frame import template
from hatchkit.say import text
from hatchkit.teach import picture_key
from hatchkit.words.cautions import cautions


def breakout_sheet() -> str:
    """The sheet as one HTML page with vector drawings inside."""
    parts = [
        _part("candled", [(candled, view, picture_key.view_title(view)) for view in picture_key.VIEWS]),
        _part("opened", [(opened, day, picture_key.day_title(day)) for day in picture_key.DAYS]),
        _part("lying", [(egg_drawings.egg, kind, picture_key.position_title(kind)) for kind in LYING]),
        _part("signs", [(egg_drawings.egg, kind, picture_key.sign_title(kind)) for kind in picture_key.SIGNS]),
    ]
    return template("breakout_sheet", __package__).render(
        title=text("teach_sheet_title"),
        lead=text("teach_sheet_lead"),
        batch=text("teach_sheet_batch"),
        parts=parts,
        tally=text("teach_sheet_tally"),
        cautions=cautions("opening_eggs", "killing"),
        others=_others(),
        sources=dict(head=text("teach_sheet_sources"), lines=_sources()),
    )


def _part(name, eggs):
    return dict(
        head=text(f"teach_sheet_{name}"),
        eggs=[
            dict(name=title, alt=text("teach_sheet_alt", dict(what=title)), src=_drawn(draw, what))
            for draw, what, title in eggs
        ],
    )


def _drawn(draw, what) -> str:
    """One drawing as an SVG in an address."""
    figure, ax = subplots(size=(1.5, 1.95))
    draw(ax, what, "")
    buffer = io.BytesIO()
    with plt.rc_context({"svg.fonttype": "none", "svg.hashsalt": "hatchkit"}):
        figure.savefig(buffer, format="svg", metadata={"Date": None})
    plt.close(figure)
    return "data:image/svg+xml;base64," + base64.b64encode(buffer.getvalue()).decode("ascii")


def _others():
    table = reference.load("embryo_stages_other")
    rows = [
        dict(
            bird=row.species,
            look=row.look,
            source=row.source,
            day=f"{row.day_low:g}" if row.day_low == row.day_high else f"{row.day_low:g}-{row.day_high:g}",
        )
        for row in table.itertuples()
    ]
    return dict(head=text("teach_sheet_others"), note=text("teach_sheet_others_note"), rows=rows)


def _sources():
    table = reference.load("embryo_proportions").drop_duplicates(["item", "source"])
    return [
        f"{row.item.removesuffix('_mm').replace('_', ' ')}: {row.source} ({row.sure})" for row in table.itertuples()
    ]
