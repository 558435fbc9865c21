"""Every picture of the kit drawn from the demo season, with its alt text: for tests, and to look at.

``python tests/figures/demo_pictures.py FOLDER [NAME ...]`` writes them as SVG in bare pages.
"""

from __future__ import annotations

from functools import cache

import numpy as np
import pandas as pd

import hatchkit as hk
from hatchkit import say
from hatchkit.advice import egg_chances, evidence_ladder, glance, poor_hatch
from hatchkit.advice import pictured as advised
from hatchkit.advice.breakout import breakout_guide
from hatchkit.advice.poor_hatch import one_batch
from hatchkit.climate import clock, probes, timeline, water_loss
from hatchkit.climate import pictured as met
from hatchkit.climate.machine_air import incubator_of
from hatchkit.figures import advice as advice_pictures
from hatchkit.figures import climate as climate_pictures
from hatchkit.figures import course as course_pictures
from hatchkit.figures import glance as glance_pictures
from hatchkit.figures import losses as loss_pictures
from hatchkit.figures import next_set as next_set_pictures
from hatchkit.figures import relate as relate_pictures
from hatchkit.figures.course import case_picture
from hatchkit.losses import pictured as lost
from hatchkit.losses import tray
from hatchkit.losses.season_chart import season_chart as make_season_chart
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
    return (
        relate_pictures.losses_against_dose(table),
        say.text("picture_losses_against_dose", related.losses_against_dose(table)),
    )


@picture
def death_age():
    ages = hk.age_at_death(season(), draws=100)
    return (
        loss_pictures.death_age(ages, species="chicken"),
        say.text("picture_death_age", lost.death_age(ages, species="chicken")),
    )


BATCH = "H2"


@cache
def causes():
    return hk.likely_causes(season(), BATCH)


@picture
def what_if():
    from hatchkit.advice.what_if import what_if as make

    result = make(season(), relation=relation())
    return advice_pictures.what_if(result.table), say.text("picture_what_if", advised.what_if(result))


@picture
def ranked_causes():
    return advice_pictures.ranked_causes(causes().table), say.text(
        "picture_ranked_causes", advised.ranked_causes(causes())
    )


@picture
def ladder():
    table = evidence_ladder.ladder(causes())
    return advice_pictures.ladder(table), say.text("picture_ladder", advised.ladder(causes(), table))


@picture
def differences():
    table = causes().different
    return advice_pictures.differences(table), say.text("picture_differences", advised.differences(BATCH, table))


@picture
def age_against_season():
    mine, kin = (
        hk.age_at_death(part(season(), BATCH), draws=50).curve for part in (poor_hatch.one_batch, poor_hatch.kin)
    )
    return (
        advice_pictures.age_against_season(mine, kin, name=BATCH, other="all hens"),
        say.text("picture_age_against_season", advised.age_against_season(BATCH, mine, kin)),
    )


@picture
def breakout_drawings():
    guide = breakout_guide(season().species(BATCH))
    return advice_pictures.breakout_drawings(guide), say.text("picture_drawings", advised.drawings(guide))


def of_batch():
    table = hk.breakdown(season(), by="batch")
    return table[table["batch"] == BATCH]


@picture
def egg_ledger():
    return loss_pictures.egg_ledger(of_batch()), say.text("picture_egg_ledger", lost.egg_ledger(of_batch()))


@picture
def losses_by_batch():
    table = hk.breakdown(season(), by="batch")
    return loss_pictures.losses_by_group(table), say.text("picture_losses_by_group", lost.losses_by_group(table))


@picture
def losses_by_flock():
    table = hk.breakdown(season(), by="flock")
    return loss_pictures.losses_by_group(table), say.text("picture_losses_by_group", lost.losses_by_group(table))


@picture
def season_chart():
    table = make_season_chart(season(), stage="late")
    return loss_pictures.season_chart(table), say.text("picture_season_chart", lost.season_chart(table))


@picture
def tray_map():
    table = tray.tray_map(season(), "H4")
    return (
        loss_pictures.tray_map(table),
        say.text("picture_tray_map", lost.tray_map("H4", table, tray.clustering(season(), "H4"))),
    )


@picture
def tray_season():
    table = tray.tray_season(season())
    return (
        loss_pictures.tray_season(table),
        say.text("picture_tray_season", lost.tray_season(table, tray.clustering(season()))),
    )


@picture
def hazard_by_window():
    table = relation().windows
    return (
        relate_pictures.hazard_by_window(table),
        say.text("picture_hazard_by_window", related.hazard_by_window(table)),
    )


@cache
def excursions():
    return hk.find_excursions(season())


@picture
def incubator_timeline():
    table = timeline.incubator_timeline(season(), "A", found=excursions())
    return climate_pictures.incubator_timeline(table), say.text(
        "picture_incubator_timeline", met.incubator_timeline(table)
    )


@picture
def incubator_timeline_in_fahrenheit():
    table = timeline.incubator_timeline(season(), "C", found=excursions())
    return climate_pictures.incubator_timeline(table, unit="F"), say.text(
        "picture_incubator_timeline", met.incubator_timeline(table, unit="F")
    )


@picture
def incubator_timeline_of_a_batch():
    alone = one_batch(season(), BATCH)
    table = timeline.incubator_timeline(alone, incubator_of(alone, alone.batches.iloc[0]))
    return climate_pictures.incubator_timeline(table), say.text(
        "picture_incubator_timeline", met.incubator_timeline(table)
    )


def close_up(event):
    row = excursions().query("event == @event").iloc[0]
    return (
        climate_pictures.excursion_close_up(timeline.close_up(season(), row), row, timezone=season().timezone),
        say.text("picture_excursion_close_up", met.excursion_close_up(row, timezone=season().timezone)),
    )


@picture
def close_up_of_cold():
    return close_up(8)


@picture
def close_up_of_heat():
    return close_up(15)


def weighed(batch):
    row = water_loss.batch_water_loss(season()).query("batch == @batch").iloc[0]
    return (
        climate_pictures.weight_loss_track(water_loss.loss_points(season(), batch), row),
        say.text("picture_weight_loss_track", met.weight_loss_track(row)),
    )


@picture
def weight_loss_track():
    return weighed("H1")


@picture
def weight_loss_track_unweighed():
    return weighed("Q1")


@picture
def water_against_target():
    table = water_loss.batch_water_loss(season())
    return (
        climate_pictures.water_against_target(table),
        say.text("picture_water_against_target", met.water_against_target(table)),
    )


@picture
def hatch_clock():
    table = clock.hatch_clock(season())
    return climate_pictures.hatch_clock(table), say.text("picture_hatch_clock", met.hatch_clock(table))


@picture
def probe_truth():
    table = probes.probe_truth(season())
    return climate_pictures.probe_truth(table), say.text("picture_probe_truth", met.probe_truth(table))


@picture
def season_at_a_glance():
    table = glance.glance(season(), found=excursions())
    return (
        glance_pictures.season_at_a_glance(table),
        say.text("picture_season_at_a_glance", advised.season_at_a_glance(table)),
    )


@picture
def eggs_to_set():
    plan = hk.next_set(season(), "chicken", today="2026-09-01")
    return (
        next_set_pictures.eggs_to_set(egg_chances.egg_chances(season(), plan), plan.eggs),
        say.text("picture_eggs_to_set", advised.eggs_to_set(plan)),
    )


@picture
def course_tray():
    tray = pd.DataFrame({"look 1": list("cahaaadaaaaa"), "look 2": list(".h.hhh.phhhh")})
    return course_pictures.tray_map(tray), "The tray of the course, twelve eggs, with what became of each of them."


@picture
def course_luck():
    hatches = np.random.default_rng(24).binomial(24, 0.75, size=1000)
    return course_pictures.luck(hatches, each=24, mark=15), course_pictures.luck_alt(hatches, each=24)


@picture
def course_intervals():
    low = np.linspace(0.4, 0.7, 20)
    return course_pictures.interval_lines(low, low + 0.2, truth=0.7), "Twenty intervals, of which some miss the truth."


@picture
def course_case():
    stages = {"infertile": (3, 9), "early": (4, 6), "mid": (9, 3), "late": (2, 5), "pipped": (1, 2), "removed": (0, 1)}
    log = {"day": list(np.linspace(0, 21, 200)), "temp_c": list(37.5 - 10 * (np.arange(200) == 90))}
    return (
        case_picture(dict(stages=stages, eggs=(40, 120), log=log)),
        "A case: mid deaths are many beside the other batches, and the log shows a short fall of the air on day 9.",
    )


@picture
def course_looks():
    table = pd.DataFrame({"egg": [1, 2, 3], "after_day": [0, 10, 18], "by_day": [7, 14, 21]})
    return course_pictures.between_looks(table, looks=[7, 14, 18, 21]), "Three eggs and between which looks they died."


@picture
def course_finds():
    return (
        course_pictures.deaths_and_finds(np.array([1, 2, 2, 18, 19]), np.array([7, 7, 7, 21, 21])),
        "Deaths by the day on which embryos died, and by the day on which they were found.",
    )


@picture
def course_air():
    eggs = {"one": [25.0, 33.0, 36.0], "two": [25.0, 30.0, 34.0]}
    return (
        course_pictures.air_and_eggs([0, 60, 120], [37.5, 37.5, 37.5], eggs),
        "The air jumps, two eggs follow it, the larger one more slowly.",
    )


@picture
def course_shapes():
    table = pd.DataFrame(
        {
            "hour": np.arange(6),
            "power cut": [37, 36, 35, 34, 33, 32.5],
            "lid": [37, 30, 36, 37, 37, 37],
            "sensor": [37, 37, 12, 37, 37, 37],
        }
    )
    return (
        course_pictures.shapes(table, names=["power cut", "lid", "sensor"]),
        "Three logs: a power cut falls slowly, an open lid fast, a faulty sensor jumps.",
    )


@picture
def course_arrangements():
    differences = np.random.default_rng(3).normal(0, 0.05, 500)
    return (
        course_pictures.arrangements(differences, seen=0.08),
        course_pictures.arrangements_alt(differences, seen=0.08),
    )


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
