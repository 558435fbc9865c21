"""The first nine of the textbook hatches, and what all of them are built from. Sources in textbook.py."""

from __future__ import annotations

from .written import Case, batch


def fine(number, **values):
    """A good sister batch: 30 eggs, 24 to 26 chicks."""
    told = [
        {"hatched": 25, "clear1": 3, "dead1": 1, "broken_late": 1},
        {"hatched": 24, "clear1": 3, "dead1": 1, "broken_late": 1, "pipped_dead": 1},
        {"hatched": 26, "clear1": 2, "dead1": 1, "broken_late": 1},
        {"hatched": 24, "clear1": 4, "dead1": 0, "broken_early": 1, "broken_late": 1},
    ][number % 4] | values
    return batch(30, told.pop("hatched"), **{"stored_days": 5, "flock_age_weeks": 44} | told)


def season(name, source, poor, code, place=2, **values):
    """A season of four good batches with a poor one at `place`, and the code expected for it."""
    batches = [fine(i) for i in range(4)]
    batches.insert(place, poor)
    return Case(name, source, batches, place, (code,), **values)


def poor(hatched, **values):
    """A poor batch of 30 eggs, of the same hens and storage as its sisters unless told otherwise."""
    return batch(30, hatched, **{"stored_days": 5, "flock_age_weeks": 44} | values)


EGGS_AND_AIR = (
    season(
        "idle cock",
        "MSU, clear eggs with no embryonic development: old, underfed, too few males",
        poor(
            11,
            clear1=16,
            opened1_infertile=16,
            opened1_dead=0,
            dead1=1,
            broken_late=1,
            pipped_dead=1,
            notes="nearly all clear, opened them: no sign of a germ; cock has been limping",
        ),
        "infertile",
    ),
    season(
        "kept three weeks",
        "UF, early deaths: eggs stored too long; MSU, clears: eggs stored too long",
        poor(
            11,
            clear1=9,
            opened1_infertile=3,
            opened1_dead=6,
            dead1=6,
            broken_early=1,
            broken_late=3,
            stored_days=22,
            hatch=(4, 44),
            signs="many blood rings; hatch dragged on",
            notes="saved up eggs for three weeks",
        ),
        "long_storage",
    ),
    season(
        "sunny sill",
        "UF, early deaths: eggs held under poor conditions, temperature too high or swinging",
        poor(
            13,
            clear1=7,
            opened1_infertile=3,
            opened1_dead=4,
            dead1=7,
            broken_early=1,
            broken_late=2,
            signs="blood rings",
            notes="eggs stood on the sunny window sill in the hot week",
        ),
        "bad_storage",
    ),
    season(
        "stuck thermostat",
        "PSU, dead on days 6-16: incubator temperature too high; Ande & Wilson 1981",
        poor(
            8,
            clear1=3,
            dead1=2,
            dead2=13,
            broken_mid=2,
            broken_late=2,
            culled=2,
            air={"hot": (8.0, 43.3, 6.0)},
            signs="short wiry down; cannot stand",
            notes="thermostat stuck one evening, very hot when I came home",
        ),
        "heat_spell",
    ),
    season(
        "power cut",
        "PSU, in case of power outage: hatch late, down to 40-50 %",
        poor(
            13,
            clear1=3,
            dead1=1,
            dead2=0,
            broken_mid=1,
            broken_late=9,
            pipped_dead=3,
            hatch=(26, 66),
            air={"cold": (16.0, 9.0, 20.0)},
            signs="hatched late; weak chicks",
            notes="power out from evening to the next afternoon",
        ),
        "cold_spell",
    ),
    season(
        "runs warm",
        "MSU and CHK, premature hatching, bloody navels: temperature too high",
        poor(
            13,
            clear1=3,
            dead1=4,
            dead2=2,
            broken_mid=1,
            broken_late=5,
            pipped_dead=2,
            culled=4,
            hatch=(-44, -14),
            air={"offset": 1.2},
            signs="hatched early; bloody navels; small chicks",
            notes="second thermometer read over a degree higher all the time",
        ),
        "warm_throughout",
    ),
    season(
        "runs cool",
        "MSU and CHK, chicks hatch late: incubator temperature too low",
        poor(
            12,
            clear1=3,
            dead1=2,
            broken_mid=1,
            broken_late=8,
            pipped_dead=4,
            culled=2,
            hatch=(22, 70),
            air={"offset": -1.2},
            signs="hatched late; big soft bellies; sticky chicks",
        ),
        "cool_throughout",
    ),
    season(
        "too damp",
        "CHK, sticky chicks smeared with albumen: high incubation humidity; duck keepers' drowned chicks",
        poor(
            12,
            clear1=3,
            dead1=1,
            broken_late=10,
            pipped_dead=4,
            culled=1,
            hatch=(-8, 26),
            air={"rh_set": 80, "rh_hatch": 85},
            signs="wet, sticky chicks; small air cells; big soft bellies",
            notes="both water trays full all through",
        ),
        "too_humid",
    ),
    season(
        "too dry",
        "MSU, fully formed, dead without pipping: low average humidity",
        poor(
            12,
            clear1=3,
            dead1=1,
            broken_mid=1,
            broken_late=10,
            pipped_dead=3,
            hatch=(-20, 12),
            air={"rh_set": 18},
            signs="very large air cells; small dry chicks",
            notes="water tray was dry for most of the time",
        ),
        "too_dry",
    ),
)
