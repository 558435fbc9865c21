"""The causes of the fifth world: how the struck eggs end, and what else the keeper could notice.

All figures are this world's own judgement, in the order of what breeders' texts say (no source for the numbers); none
was set by looking at an answer of the kit.
"""

from __future__ import annotations

from dataclasses import dataclass, field


@dataclass(frozen=True)
class Cause:
    """One cause.

    `parts`: (share of the struck, kernel, its two constants); `infertile`, `pipped`, `culled`: further shares.
    `rotten`, `wrong`: shares of its dead that rot, and of its late dead that lie wrongly. `shifts`: kind of measure ->
    (shift at no loss, per share lost). `window`: days of 21 in which an event falls. `words`: chance of a sign or
    remark where much is lost and the keeper is a careful one.
    """

    parts: tuple
    infertile: float = 0.0
    pipped: float = 0.0
    culled: float = 0.0
    rotten: float = 0.015
    wrong: float = 0.1
    window: tuple | None = None
    shifts: dict = field(default_factory=dict)
    words: dict = field(default_factory=dict)


def early(share, middle=3.2):
    return (share, "lognormal", middle, 0.5)


def first_hours(share):
    return (share, "weibull", 1.1, 1.0)


def middle(share, at=11.0):
    return (share, "bump", at, 3.0)


def late(share, at=19.5, spread=0.9):
    return (share, "bump", at, spread)


def after(share, shape=0.9, scale=1.3):
    return (share, "after", shape, scale)


CAUSES = {
    "infertile": Cause((early(0.07),), infertile=0.93, words={"cock": 0.55}),
    "long_storage": Cause(
        (first_hours(0.15), early(0.45, 2.6), middle(0.07), late(0.2)),
        pipped=0.07,
        culled=0.06,
        shifts={"first": (2, 18), "spread": (2, 12)},
        words={"kept_long": 0.5, "late": 0.3, "dragged": 0.3, "rings": 0.35, "weak": 0.15},
    ),
    "bad_storage": Cause(
        (first_hours(0.5), early(0.3, 2.8), late(0.12)),
        pipped=0.03,
        culled=0.05,
        words={"store": 0.5, "rings": 0.3, "loose_cell": 0.12, "cracks": 0.08},
    ),
    "old_flock": Cause(
        (first_hours(0.06), early(0.24), middle(0.05), late(0.22)),
        infertile=0.33,
        pipped=0.05,
        culled=0.05,
        wrong=0.2,
        words={"old_hens": 0.5, "big_soft": 0.12, "weak": 0.15},
    ),
    "flock_health": Cause(
        (early(0.27), middle(0.22), late(0.2)),
        infertile=0.13,
        pipped=0.06,
        culled=0.12,
        words={"hens_ill": 0.5, "weak": 0.35, "small_chicks": 0.15},
    ),
    "vitamin_lack": Cause(
        (early(0.12, 4.0), (0.45, "bump", 12.0, 2.2), late(0.25)),
        pipped=0.07,
        culled=0.11,
        wrong=0.2,
        words={"feed": 0.4, "toes": 0.45, "clubbed": 0.4, "weak": 0.25, "crooked": 0.2},
    ),
    "heat_spell": Cause(
        (after(0.72, 0.8, 0.9), late(0.1)),
        pipped=0.07,
        culled=0.11,
        wrong=0.15,
        window=(1.5, 20.5),
        shifts={"first": (-1, -8), "spread": (1, 8)},
        words={"hot": 0.6, "early": 0.15, "yolk_out": 0.12, "crooked": 0.15, "wiry": 0.15, "rough_navel": 0.15},
    ),
    "cold_spell": Cause(
        (after(0.58, 0.9, 1.6), late(0.25, 20.0)),
        pipped=0.11,
        culled=0.06,
        window=(1.5, 20.5),
        shifts={"first": (6, 24), "spread": (2, 14)},
        words={"power": 0.65, "late": 0.4, "weak": 0.2, "dragged": 0.25},
    ),
    "warm_throughout": Cause(
        (early(0.22), middle(0.12), late(0.36)),
        pipped=0.14,
        culled=0.16,
        wrong=0.17,
        shifts={"first": (-5, -28), "spread": (1, 8), "temp": (0.3, 1.3)},
        words={"warm": 0.35, "early": 0.5, "rough_navel": 0.3, "small_chicks": 0.25, "yolk_out": 0.2, "crooked": 0.15},
    ),
    "cool_throughout": Cause(
        (early(0.12), middle(0.06), late(0.48, 19.8)),
        pipped=0.2,
        culled=0.14,
        shifts={"first": (6, 32), "spread": (3, 18), "temp": (-0.3, -1.4)},
        words={"cool": 0.35, "late": 0.55, "big_soft": 0.25, "dragged": 0.35, "weak": 0.2},
    ),
    "too_humid": Cause(
        (middle(0.04), late(0.55)),
        pipped=0.3,
        culled=0.11,
        shifts={"first": (0, 5), "rh": (7, 24), "water": (-0.5, -2.5)},
        words={"wet": 0.4, "swollen": 0.5, "small_cell": 0.45, "big_soft": 0.3, "sticky": 0.3},
    ),
    "too_dry": Cause(
        (middle(0.12), late(0.58)),
        pipped=0.2,
        culled=0.1,
        wrong=0.14,
        shifts={"first": (0, -5), "rh": (-7, -20), "water": (0.5, 3)},
        words={"dry": 0.4, "big_cell": 0.5, "stuck_dry": 0.35, "small_chicks": 0.3, "membrane": 0.2},
    ),
    "dry_hatch": Cause(
        (late(0.27, 20.4, 0.4),),
        pipped=0.58,
        culled=0.15,
        shifts={"hatch_rh": (-8, -28), "spread": (1, 8)},
        words={"no_hatch_water": 0.35, "lid": 0.4, "membrane": 0.5, "stuck_dry": 0.4},
    ),
    "turning": Cause(
        (early(0.38, 4.5), middle(0.1), late(0.38)),
        pipped=0.09,
        culled=0.05,
        wrong=0.45,
        shifts={"first": (0, 5)},
        words={"turner": 0.55, "lying_wrong": 0.3, "sticky": 0.3},
    ),
    "ventilation": Cause(
        (middle(0.14, 13.0), late(0.54)),
        pipped=0.22,
        culled=0.1,
        wrong=0.18,
        shifts={"first": (0, 8), "spread": (1, 10), "hatch_rh": (2, 10)},
        words={"vents": 0.55, "weak": 0.3, "dragged": 0.15, "small_end": 0.1},
    ),
    "contamination": Cause(
        ((0.9, "weibull", 1.7, 12.0),),
        culled=0.1,
        rotten=0.5,
        words={"dirty": 0.5, "rotten": 0.6, "smelly_navel": 0.3, "cracks": 0.08},
    ),
    "uneven_heat": Cause(
        (early(0.2), middle(0.14), late(0.36)),
        pipped=0.15,
        culled=0.15,
        shifts={"spread": (7, 32), "gap": (0.5, 2.2)},
        words={"corner": 0.45, "dragged": 0.55, "early": 0.12, "late": 0.15, "rough_navel": 0.12},
    ),
    "posted_eggs": Cause(
        (first_hours(0.28), early(0.3), late(0.28)),
        pipped=0.09,
        culled=0.05,
        wrong=0.3,
        words={"post": 0.5, "loose_cell": 0.5, "cracks": 0.25},
    ),
    "altitude": Cause(
        (early(0.24), middle(0.16), late(0.4)),
        pipped=0.15,
        culled=0.05,
        shifts={"water": (0.7, 4), "first": (0, 8)},
        words={"valley": 0.5, "weak": 0.2, "big_cell": 0.2},
    ),
    "small_end_up": Cause(
        (early(0.05), middle(0.04), late(0.62)),
        pipped=0.21,
        culled=0.08,
        wrong=0.75,
        words={"point_up": 0.4, "small_end": 0.5, "lying_wrong": 0.3},
    ),
    "fumes": Cause(
        (after(0.82, 1.0, 1.0), late(0.12)), culled=0.06, window=(0.5, 6.0), words={"fumes": 0.55, "rings": 0.3}
    ),
    "transfer_jolt": Cause(
        (after(0.62, 0.8, 0.8),),
        pipped=0.2,
        culled=0.18,
        window=(17.6, 18.4),
        words={"jolt": 0.5, "burst_yolk": 0.35, "weak": 0.15},
    ),
    "navel_infection": Cause(
        (late(0.16, 20.2, 0.6),),
        pipped=0.1,
        culled=0.74,
        rotten=0.06,
        words={"hatcher": 0.45, "smelly_navel": 0.6, "weak": 0.25},
    ),
    "late_turning": Cause(
        (late(0.46, 20.1, 0.6),),
        pipped=0.34,
        culled=0.2,
        wrong=0.6,
        words={"turned_late": 0.5, "lying_wrong": 0.35, "dragged": 0.12},
    ),
}
