"""Every picture of the kit drawn from the demo season, with its alt text: for tests, and to look at.

``python tests/figures/demo_pictures.py FOLDER [NAME ...]`` writes them as SVG in bare pages.
"""

from __future__ import annotations

from functools import cache

import hatchkit as hk
from hatchkit import say
from hatchkit.figures import losses as loss_pictures
from hatchkit.figures import relate as relate_pictures
from hatchkit.losses import pictured as lost
from hatchkit.relate import pictured as related

PICTURES = {}


def picture(draw):
    """Keep a function that returns axes and alt text under its name."""
    PICTURES[draw.__name__] = draw
    return draw


@cache
def season():
    return hk.load_season("demo")


@cache
def relation():
    return hk.relate_losses(season())


@picture
def losses_against_dose():
    table = relation().batches
    return (relate_pictures.losses_against_dose(table),
            say.text("picture_losses_against_dose", related.losses_against_dose(table)))


@picture
def death_age():
    ages = hk.age_at_death(season(), draws=100)
    return (loss_pictures.death_age(ages, species="chicken"),
            say.text("picture_death_age", lost.death_age(ages, species="chicken")))


def main(folder, *names):
    """Write the pictures as pages."""
    import re
    from pathlib import Path

    from hatchkit import figures

    for name in names or PICTURES:
        ax, alt = PICTURES[name]()
        text = figures.svg(ax, alt=alt)
        (Path(folder) / f"{name}.svg.html").write_text(text, encoding="utf-8")
        least = min(map(float, re.findall(r"font-size: ([\d.]+)px", text)))
        print(f"{name}: {least} of {re.search('viewBox=.0 0 ([^ ]+)', text)[1]}, {len(text) // 1000} kB: {alt}")


if __name__ == "__main__":
    import sys

    main(*sys.argv[1:])
