"""The sixth world's causes: at which ages each kills, what it shifts in a keeper's figures, which signs it leaves.

Every number is this world's own choice; what was read stands beside it, everything else is from memory.

Sources
-------
[W] H. R. Wilson, Hatchability Problem Analysis, University of Florida CIR1112: which fault goes with which age and
    sign; fumigation between 12 and 96 h of incubation kills; eggs held badly give early deaths.
[C] R. M. Craig, incubation trouble tables, University of California, Davis (read as a copy): storage, washing, cold.
[P] Penn State 4-H embryology pages: deaths of days 6 to 16 with heat, infection and lack of air.
[F] G. M. Fasenko, Egg storage and the embryo, Poultry Science 86:1020 (2007); I. Reijrink, thesis summary on storage:
    about 1 % fewer a day after the seventh, deaths on days 2 and 3, a later and longer hatch.
[M] from memory: riboflavin lack kills about days 12 to 14 with clubbed down; eggs set small end up turn their heads
    from the air cell; too little turning slows the membranes and kills late; thin air dries eggs and starves pipping.
"""

from __future__ import annotations

from dataclasses import dataclass, field

from .codes import CAUSES

BANDS = {"mild": (0.10, 0.25), "moderate": (0.25, 0.45), "severe": (0.45, 0.80)}  # share of live embryos lost

PIP, CULL = 22, 23  # "days" after day 21: died in the broken shell; hatched, but put down


@dataclass(frozen=True)
class Cause:
    """What one cause does; days are the hen's (1 to 21, then PIP and CULL) and are stretched for other birds.

    ``humps``: (middle, spread, weight) of the deaths. ``clear``: part of its strength that takes fertility instead.
    ``gauges``: {figure: (shift, shift for each unit of strength, spread)}. ``told``: chance that the keeper says it.
    ``spell``: "heat" or "cold" where it strikes at one age. ``any_age``: the middle is drawn over the incubation.
    """

    humps: tuple = ()
    clear: float = 0.0
    rot: tuple[float, float] | None = None
    gauges: dict = field(default_factory=dict)
    signs: dict = field(default_factory=dict)
    told: float = 0.2
    spell: str = ""
    any_age: bool = False
    posted: bool = False
    malpositioned: float | None = None


TABLE = {
    "infertile": Cause(clear=1.0, told=0.25),
    "long_storage": Cause(
        ((2.5, 1.2, 0.7), (19, 2, 0.2), (CULL, 0.5, 0.1)),
        gauges={"stored": (8, 12, 3), "first": (5, 10, 4), "width": (4, 12, 5)},
        signs={"late_hatch": 0.25, "drawn_out": 0.2, "blood_ring": 0.2},
        told=0.25,
    ),  # [F]
    "bad_storage": Cause(
        ((2, 1.1, 0.85), (6, 3, 0.1), (19, 2, 0.05)), signs={"blood_ring": 0.3, "loose_cell": 0.1}, told=0.35
    ),  # [W] [C]
    "old_flock": Cause(
        ((2.5, 1.5, 0.6), (18, 3, 0.4)),
        clear=0.4,
        gauges={"age": (22, 18, 7)},
        signs={"thin_shell": 0.35, "blood_ring": 0.1},
        told=0.2,
    ),  # [W]
    "flock_health": Cause(
        ((4, 2.5, 0.35), (12, 4, 0.25), (19, 2, 0.25), (CULL, 0.5, 0.15)),
        clear=0.15,
        signs={"thin_shell": 0.25, "weak": 0.3, "bent_limbs": 0.08},
        told=0.35,
    ),
    "heat_spell": Cause(
        gauges={"first": (-4, -6, 4)}, signs={"bleeding": 0.35, "brain_bare": 0.1}, told=0.4, spell="heat"
    ),  # [P]
    "cold_spell": Cause(
        gauges={"first": (5, 14, 6), "width": (2, 6, 4)},
        signs={"late_hatch": 0.35, "weak": 0.2},
        told=0.5,
        spell="cold",
    ),
    "warm_throughout": Cause(
        ((3.5, 1.8, 0.3), (12, 3, 0.1), (19, 1.6, 0.35), (PIP, 0.5, 0.1), (CULL, 0.5, 0.15)),
        gauges={"temp": (0.4, 1.2, 0.2), "first": (-10, -22, 6), "loss": (0.003, 0.012, 0.005)},
        signs={"early_hatch": 0.5, "open_navel": 0.3, "bent_limbs": 0.2, "red_hocks": 0.15, "brain_bare": 0.1},
        told=0.08,
    ),  # [W]
    "cool_throughout": Cause(
        ((4, 2, 0.1), (13, 3, 0.08), (19.5, 1.5, 0.5), (PIP, 0.5, 0.17), (CULL, 0.5, 0.15)),
        gauges={"temp": (-0.5, -1.3, 0.25), "first": (12, 30, 8), "width": (4, 10, 5)},
        signs={"late_hatch": 0.55, "big_soft": 0.3, "open_navel": 0.15, "drawn_out": 0.2, "sticky": 0.12},
        told=0.08,
    ),  # [W]
    "too_humid": Cause(
        ((13, 3, 0.05), (19.8, 1.3, 0.6), (PIP, 0.5, 0.25), (CULL, 0.5, 0.1)),
        gauges={"rh": (9, 17, 4), "loss": (-0.02, -0.06, 0.008), "first": (2, 4, 3)},
        signs={"small_cell": 0.45, "wet": 0.35, "big_soft": 0.3, "sticky": 0.15},
        told=0.1,
    ),
    "too_dry": Cause(
        ((4, 2, 0.08), (12, 4, 0.12), (19, 2, 0.5), (PIP, 0.5, 0.2), (CULL, 0.5, 0.1)),
        gauges={"rh": (-9, -16, 4), "loss": (0.02, 0.06, 0.01), "first": (-2, -3, 3)},
        signs={"large_cell": 0.45, "dry_stuck": 0.3, "small_chicks": 0.25},
        told=0.1,
    ),
    "dry_hatch": Cause(
        ((20.3, 0.8, 0.3), (PIP, 0.5, 0.6), (CULL, 0.5, 0.1)),
        gauges={"rh_hatch": (-13, -18, 5), "width": (1, 5, 4)},
        signs={"dry_stuck": 0.6, "small_chicks": 0.05},
        told=0.3,
    ),
    "turning": Cause(
        ((4, 2, 0.15), (11, 3, 0.25), (18.5, 2, 0.5), (PIP, 0.5, 0.1)),
        signs={"stuck_shell": 0.3, "white_left": 0.35, "wrong_way": 0.3, "small_chicks": 0.05},
        told=0.35,
        malpositioned=0.4,
    ),  # [M]
    "ventilation": Cause(
        ((12, 3, 0.1), (18.8, 1.6, 0.55), (PIP, 0.5, 0.25), (CULL, 0.5, 0.1)),
        gauges={"rh": (1, 4, 3), "rh_hatch": (3, 8, 4), "first": (1, 4, 4)},
        signs={"weak": 0.25, "bleeding": 0.15, "wrong_way": 0.15, "small_pips": 0.2},
        told=0.3,
        malpositioned=0.3,
    ),  # [W] [P]
    "contamination": Cause(
        ((5, 3, 0.25), (12, 4, 0.4), (18, 3, 0.25), (CULL, 0.5, 0.1)),
        rot=(0.15, 0.5),
        signs={"smell": 0.55, "open_navel": 0.15},
        told=0.35,
    ),  # [P]
    "uneven_heat": Cause(
        ((3.5, 2, 0.3), (12, 4, 0.1), (19, 2, 0.4), (CULL, 0.5, 0.2)),
        gauges={"uneven": (0.4, 1.1, 0.25), "width": (12, 22, 8)},
        signs={"drawn_out": 0.5, "one_side": 0.3, "weak": 0.1},
        told=0.12,
    ),  # [W]
    "altitude": Cause(
        ((4, 3, 0.2), (13, 4, 0.15), (19, 1.8, 0.45), (PIP, 0.5, 0.2)),
        gauges={"loss": (0.012, 0.03, 0.01), "first": (2, 6, 5)},
        signs={"large_cell": 0.3, "weak": 0.2, "small_chicks": 0.1},
        told=0.65,
    ),  # [M]
    "small_end_up": Cause(
        ((12, 4, 0.07), (19, 1.5, 0.73), (PIP, 0.5, 0.2)),
        signs={"head_small_end": 0.55, "wrong_way": 0.3, "small_pips": 0.25},
        told=0.3,
        malpositioned=0.65,
    ),  # [M]
    "fumes": Cause(
        ((0, 1.6, 0.85), (19, 1.5, 0.15)), signs={"cherry": 0.2, "blood_ring": 0.15}, told=0.45, any_age=True
    ),  # [W], and a burner's carbon monoxide
    "transfer_jolt": Cause(
        ((18.8, 0.8, 0.7), (PIP, 0.5, 0.2), (CULL, 0.5, 0.1)), signs={"bleeding": 0.3, "loose_cell": 0.15}, told=0.4
    ),
    "navel_infection": Cause(
        ((20, 1, 0.15), (PIP, 0.5, 0.1), (CULL, 0.5, 0.75)),
        rot=(0.03, 0.15),
        signs={"open_navel": 0.55, "swollen_belly": 0.5, "smell": 0.2},
        told=0.12,
    ),
    "vitamin_lack": Cause(
        ((4, 2, 0.12), (12.5, 2.2, 0.5), (19, 2, 0.25), (CULL, 0.5, 0.13)),
        signs={"clubbed": 0.4, "bent_limbs": 0.35, "beak": 0.2, "wet": 0.1},
        told=0.2,
    ),  # [M]
    "posted_eggs": Cause(
        ((2.5, 1.5, 0.5), (12, 4, 0.12), (19, 2, 0.38)),
        clear=0.05,
        signs={"loose_cell": 0.5, "blood_ring": 0.15, "wrong_way": 0.1},
        told=0.3,
        posted=True,
    ),
    "late_turning": Cause(
        ((19.5, 1.2, 0.55), (PIP, 0.5, 0.4), (CULL, 0.5, 0.05)),
        signs={"wrong_way": 0.4, "small_pips": 0.2, "bleeding": 0.1},
        told=0.4,
        malpositioned=0.45,
    ),  # read here as: turned on into the days of the hatch, after transfer
}

assert tuple(TABLE) == CAUSES
