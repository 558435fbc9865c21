"""How each cause of the fourth world acts: ages of death, kinds of loss, and what it leaves in log, scale and words.

All figures are this world's own judgement (common practice, no source): they make a test world, they are not facts.
Ages are in days of a 21-day bird; ``k`` is the share of the fertile eggs that the cause strikes.
"""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np

BINS = np.arange(0.25, 21.0, 0.5)
SEVERITY = {"mild": (0.08, 0.13), "moderate": (0.21, 0.30), "severe": (0.45, 0.75)}


@dataclass(frozen=True)
class Cause:
    """One cause. `parts`: (share, mean day, sd days) of the deaths; after an event the day of the event is added.

    `infertile`, `pipped`, `culled`: shares of the struck that end so; `rotten`, `wrong`: shares of its dead that rot,
    that lie wrongly. `hours`, `spread`, `water`, `hatch_rh`, `level`: shift (at k = 0, per k) of hatch time in hours,
    of its spread, of the loss of water in points, of humidity at hatch and of the air in kelvin.
    `traces`: probability of each sign or remark at k of 0.4 and more, where the keeper looks or writes.
    """

    parts: tuple
    infertile: float = 0.0
    pipped: float = 0.05
    culled: float = 0.04
    rotten: float = 0.04
    wrong: float = 0.25
    spell: str = ""
    window: tuple = ()
    hours: tuple = (0.0, 0.0)
    spread: tuple = (0.0, 0.0)
    water: tuple = (0.0, 0.0)
    hatch_rh: tuple = (0.0, 0.0)
    level: tuple = (0.0, 0.0)
    hidden: float = 0.0
    flock: bool = False
    traces: dict = field(default_factory=dict)


CAUSES = {
    "infertile": Cause(((1, 2, 1),), infertile=0.93, flock=True, traces={"r_cock": 0.35}),
    "long_storage": Cause(
        ((0.66, 2.4, 1.3), (0.12, 9, 4), (0.22, 19.3, 1.2)),
        culled=0.08,
        hours=(5, 12),
        spread=(3, 10),
        traces={"weak": 0.2, "r_kept": 0.25, "blood_ring": 0.25, "late": 0.15},
    ),
    "bad_storage": Cause(
        ((0.85, 2.0, 1.2), (0.15, 18.5, 2)), traces={"wobbly": 0.2, "r_store": 0.4, "blood_ring": 0.25}
    ),
    "old_flock": Cause(
        ((0.55, 3.0, 1.8), (0.45, 19.0, 1.4)),
        infertile=0.42,
        flock=True,
        rotten=0.08,
        traces={"cracked_shell": 0.15, "big_soft": 0.1},
    ),
    "flock_health": Cause(
        ((0.25, 4, 2), (0.55, 11, 3), (0.2, 19, 1.4)),
        culled=0.16,
        flock=True,
        traces={"weak": 0.35, "small_chicks": 0.15, "r_ill": 0.3},
    ),
    "vitamin_lack": Cause(
        ((0.15, 4, 1.5), (0.5, 13, 2.2), (0.35, 19.3, 1)),
        culled=0.18,
        flock=True,
        traces={"curled": 0.4, "clubbed": 0.35, "r_feed": 0.3, "weak": 0.15},
    ),
    "heat_spell": Cause(
        ((0.72, 1.0, 0.9), (0.28, 5.0, 3.5)),
        culled=0.06,
        spell="heat",
        window=(1.0, 19.5),
        hours=(-2, 0),
        spread=(2, 4),
        traces={"r_heat": 0.5, "open_navel": 0.15},
    ),
    "cold_spell": Cause(
        ((0.55, 1.6, 1.3), (0.45, 6.5, 4.0)),
        culled=0.06,
        spell="cold",
        window=(1.0, 19.5),
        spread=(4, 6),
        traces={"r_power": 0.5, "late": 0.3, "weak": 0.1},
    ),
    "warm_throughout": Cause(
        ((0.3, 3.5, 1.8), (0.2, 11, 4), (0.5, 19, 1.1)),
        pipped=0.12,
        culled=0.12,
        hours=(-11, -22),
        level=(0.45, 1.1),
        hidden=0.4,
        wrong=0.35,
        traces={"open_navel": 0.3, "small_chicks": 0.2, "sticky": 0.15, "early": 0.4, "splay": 0.1},
    ),
    "cool_throughout": Cause(
        ((0.2, 4, 2), (0.15, 12, 4), (0.65, 20.0, 0.8)),
        pipped=0.16,
        culled=0.12,
        hours=(13, 26),
        spread=(4, 12),
        level=(-0.5, -1.2),
        hidden=0.4,
        traces={"yolk": 0.2, "big_soft": 0.3, "late": 0.5, "sticky": 0.1},
    ),
    "too_humid": Cause(
        ((0.1, 10, 5), (0.9, 20.0, 0.8)),
        pipped=0.25,
        culled=0.06,
        water=(-2.4, -5.0),
        traces={"drowned": 0.45, "small_cells": 0.4, "big_soft": 0.25, "sticky": 0.15},
    ),
    "too_dry": Cause(
        ((0.2, 9, 5), (0.8, 19.7, 1.0)),
        pipped=0.2,
        culled=0.08,
        water=(2.6, 5.5),
        traces={"dry_stuck": 0.35, "big_cells": 0.45, "small_chicks": 0.25},
    ),
    "dry_hatch": Cause(
        ((1, 20.4, 0.5),),
        pipped=0.52,
        culled=0.06,
        hatch_rh=(-13, -18),
        traces={"membrane": 0.4, "dry_stuck": 0.35, "r_lid": 0.4},
    ),
    "turning": Cause(
        ((0.4, 5.0, 2.5), (0.15, 12, 3), (0.45, 19.0, 1.2)),
        wrong=0.4,
        traces={"r_turner": 0.4, "lying_wrong": 0.25, "membrane": 0.08, "yolk": 0.08},
    ),
    "ventilation": Cause(
        ((0.35, 12, 3), (0.65, 19.6, 1.1)),
        pipped=0.18,
        wrong=0.4,
        traces={"r_vent": 0.4, "weak": 0.15, "lying_wrong": 0.15},
    ),
    "contamination": Cause(
        ((0.3, 5, 3), (0.45, 11, 4), (0.25, 18, 2)),
        culled=0.08,
        rotten=0.55,
        traces={"rotten": 0.5, "wet_navel": 0.15, "r_dirty": 0.3},
    ),
    "uneven_heat": Cause(
        ((0.4, 4, 3), (0.2, 12, 4), (0.4, 19.5, 1.3)),
        spread=(14, 24),
        pipped=0.08,
        culled=0.07,
        traces={"dragged": 0.45, "r_corner": 0.2},
    ),
    "posted_eggs": Cause(
        ((0.8, 2.6, 1.8), (0.2, 18.5, 2)), infertile=0.15, traces={"wobbly": 0.5, "cracked_shell": 0.15, "r_post": 0.35}
    ),
    "altitude": Cause(
        ((0.35, 3.5, 2), (0.25, 12, 4), (0.4, 19.6, 1)),
        pipped=0.1,
        hours=(6, 12),
        water=(0.8, 1.0),
        traces={"weak": 0.15, "late": 0.2},
    ),
    "small_end_up": Cause(
        ((0.1, 8, 5), (0.9, 19.6, 0.9)),
        pipped=0.12,
        wrong=0.8,
        traces={"small_end": 0.5, "lying_wrong": 0.3, "r_point": 0.25},
    ),
    "fumes": Cause(((0.75, 1.2, 1.0), (0.25, 6, 4)), window=(0.5, 16.0), traces={"r_fumes": 0.45}),
    "transfer_jolt": Cause(
        ((1, 1.1, 0.7),),
        window=(17.8, 18.3),
        pipped=0.14,
        culled=0.08,
        hours=(2, 5),
        traces={"r_jolt": 0.45, "lying_wrong": 0.1, "yolk": 0.08},
    ),
    "navel_infection": Cause(
        ((1, 20.0, 0.8),),
        pipped=0.05,
        culled=0.6,
        rotten=0.15,
        traces={"wet_navel": 0.55, "open_navel": 0.2, "rotten": 0.15, "r_dirty": 0.12},
    ),
    "late_turning": Cause(((1, 20.0, 0.7),), pipped=0.3, wrong=0.65, traces={"lying_wrong": 0.35, "r_late_turn": 0.4}),
}


def shares(cause: Cause, k, day, draw):
    """Ages at which the struck die, as drawn for each of ``len(k)`` worlds.

    Parameters
    ----------
    k, day : arrays of n; `day` of the event, read only where the cause has a window

    Returns
    -------
    dict : ``ages`` n x 42 (rows add up to 1), ``pipped``, ``culled``, ``infertile`` arrays of n
    """
    n = len(k)
    ages = np.zeros((n, len(BINS)))
    shift = draw.normal(0, 0.35, n)
    for part, mean, sd in cause.parts:
        middle = mean + shift * (0.4 if cause.window else 1.0)
        width = sd * np.exp(draw.normal(0, 0.2, n))
        share = part * np.exp(draw.normal(0, 0.35, n))
        since = BINS[None, :] - (day[:, None] if cause.window else 0.0)
        shape = np.exp(-0.5 * ((since - middle[:, None]) / width[:, None]) ** 2)
        if cause.window:
            shape = shape * (since > -0.25)
        ages += share[:, None] * shape / np.maximum(shape.sum(1), 1e-9)[:, None]
    ages += 1e-4
    ages /= ages.sum(1)[:, None]
    late = np.clip((21.0 - day) / 3.0, 0, 1) if cause.window else 1.0
    factor = np.exp(draw.normal(0, 0.3, (2, n)))
    return {
        "ages": ages,
        "pipped": np.clip(cause.pipped * factor[0] * (2 - late), 0, 0.6),
        "culled": np.clip(cause.culled * factor[1] * (2 - late), 0, 0.39),
        "infertile": np.full(n, cause.infertile),
    }


def strikes(draw, n, severity=None):
    """Struck share k of n worlds: of one severity, or of all three alike."""
    if severity is not None:
        return draw.uniform(*SEVERITY[severity], n)
    low, high = np.array(list(SEVERITY.values()))[draw.integers(0, 3, n)].T
    return draw.uniform(low, high)
