"""Published trials told as batch tables, each with the cause that the trial set.

Whole-number counts come from printed shares and printed numbers of eggs; where a source prints only a share, the number
of eggs is ours and the note says so. Sister batches are the trial's own control, split into replicates that add up.
"""

from __future__ import annotations

from .written import Case, batch, write_case


def _side_by_side(name, source, control, poor, expected, **values):
    return Case(name, source, [*control, poor], len(control), expected, machine_each=True, **values)


TRIALS = (
    # 960 fertile eggs, 240 a group, 6 replicates of 40: hatch of fertile 91.84 % turned 24 times, 72.14 % turned 3
    # times
    # a day (19.70 points less); early 2.84 -> 14.31 %, late 3.57 -> 8.05 %; the rest (1.75 -> 5.5 %) put with mid.
    _side_by_side(
        "turned three times a day",
        "Oliveira et al. 2020 Poult. Sci. 99:4417 (PMC7598115)",
        [
            batch(80, 73, broken_early=2, broken_mid=2, broken_late=3),
            batch(80, 74, broken_early=3, broken_mid=1, broken_late=2),
            batch(80, 73, broken_early=2, broken_mid=1, broken_late=4),
        ],
        batch(240, 173, broken_early=34, broken_mid=14, broken_late=19, notes="turned three times a day"),
        ("turning",),
        note="stage of the rest is ours",
    ),
    # 43.3 degC for 4 h on day 7: hatch of fertile about half of the control's.
    _side_by_side(
        "four hours at 43.3 on day 7",
        "Ande & Wilson 1981 Poult. Sci. 60:1561 (abstract)",
        [batch(50, 43, dead1=2, broken_late=5), batch(50, 44, dead1=2, broken_mid=1, broken_late=3)],
        batch(
            50,
            22,
            dead1=2,
            dead2=15,
            broken_mid=3,
            broken_late=8,
            air={"hot": (7.0, 43.3, 4.0)},
            signs="wiry down; weak; unable to stand",
        ),
        ("heat_spell",),
        note="shares only: the numbers of eggs and the stages are ours",
    ),
    # 19 d: 'more than 50 % reduction' after 5 h.
    _side_by_side(
        "five hours at 43.3 on day 19",
        "Ande & Wilson 1981 Poult. Sci. 60:1561 (abstract)",
        [batch(50, 43, dead1=2, broken_late=5), batch(50, 44, dead1=2, broken_mid=1, broken_late=3)],
        batch(50, 20, dead1=2, broken_mid=1, broken_late=20, pipped_dead=7, air={"hot": (19.0, 43.3, 5.0)}),
        ("heat_spell",),
        note="shares only: the numbers of eggs and the stages are ours",
    ),
    # 112 eggs in 4 groups: dead by day 17 3.5 / 0 / 25 / 50 % at 37.6 / 40.6 / 41.7 / 42.8 degC in the second half.
    _side_by_side(
        "second half at 42.8",
        "Aust. J. Agric. Res. 28:551 (1977), abstract",
        [batch(28, 27, broken_mid=1), batch(28, 28)],
        batch(28, 14, broken_mid=10, broken_late=4, air={"hot": (10.5, 42.8, 154.0)}),
        ("heat_spell", "warm_throughout"),
        note="the trial ended on day 17; living embryos are told as hatched, the split of stages is ours",
    ),
    # 40.6 degC for 24 h on day 16: no major harm.
    _side_by_side(
        "a day at 40.6 on day 16",
        "Poult. Sci. 55:892 (1976), abstract",
        [batch(50, 43, dead1=2, broken_late=5), batch(50, 44, dead1=2, broken_mid=1, broken_late=3)],
        batch(50, 42, dead1=2, broken_mid=1, broken_late=5, air={"hot": (16.0, 40.6, 24.0)}),
        (),
        never=("heat_spell",),
        note="no harm found: shares and numbers are ours",
    ),
    # 21.2 degC up to 24 h on day 17: no significant loss.
    _side_by_side(
        "a day at 21 on day 17",
        "cold stress of 17-day embryos, Can. J. Anim. Sci. (abstract)",
        [batch(50, 43, dead1=2, broken_late=5), batch(50, 44, dead1=2, broken_mid=1, broken_late=3)],
        batch(50, 41, dead1=2, broken_mid=1, broken_late=6, hatch=(8, 36), air={"cold": (17.0, 21.2, 24.0)}),
        (),
        never=("cold_spell",),
        note="no harm found: shares and numbers are ours",
    ),
    # Eggs kept 24 h at 30 degC and 7 d at 18: hatch of fertile 66.5 %, against 87.2 % cooled at once and unstored.
    _side_by_side(
        "a day at 30 degC before the store",
        "Br. Poult. Sci. 34:459 (1993), abstract",
        [batch(86, 75, dead_in_shell=11, stored_days=1), batch(86, 75, dead_in_shell=11, stored_days=1)],
        batch(200, 133, dead_in_shell=67, stored_days=8, notes="eggs lay a day in the 30 degree shed first"),
        ("bad_storage", "long_storage"),
        note="shares only: the numbers of eggs are ours; 75/86 = 87.2 %",
    ),
    # 76 eggs: 86 % at 1-3 d, 38 % at 4-10 d.
    _side_by_side(
        "golden pheasant, stored 4 to 10 days",
        "Trela et al., golden pheasant storage (abstract)",
        [batch(18, 16, dead_in_shell=2, stored_days=2), batch(18, 15, dead_in_shell=3, stored_days=2)],
        batch(40, 15, dead_in_shell=25, stored_days=8),
        ("long_storage", "bad_storage"),
        species="pheasant",
        note="the split of the 76 eggs between the groups is ours",
    ),
    # Floor eggs 78.3, clean nest eggs 90.2 % in experiment 2 (washed floor eggs 81.7).
    _side_by_side(
        "floor eggs",
        "van den Brand et al. 2016 Poult. Sci. 95:1025 (abstract)",
        [batch(132, 119, dead_in_shell=13), batch(132, 119, dead_in_shell=13)],
        batch(120, 94, dead_in_shell=26, notes="floor eggs, dirty"),
        ("contamination",),
        note="shares only (copy cut short: taken as hatch of fertile, floor eggs first); numbers of eggs are ours",
    ),
    # Mallard 37.5 degC: misted 71 %, not misted 32 % of fertile.
    _side_by_side(
        "mallard not misted",
        "Stubblefield & Toll 1993 Environ. Toxicol. Chem. 12:411 (abstract)",
        [batch(50, 35, dead_in_shell=15), batch(50, 36, dead_in_shell=14)],
        batch(50, 16, dead_in_shell=34, air={"rh_set": 34}, notes="eggs not misted"),
        ("too_dry", "dry_hatch"),
        species="duck",
        note="numbers of eggs and the humidity are ours",
    ),
    # Small end up: 16 to 27.3 points lower than large end up.
    _side_by_side(
        "small end up",
        "Bauer, Tullett & Wilson 1990, as told by thepoultrysite.com 2012",
        [batch(60, 53, broken_early=2, broken_late=5), batch(60, 52, broken_early=3, broken_late=5)],
        batch(60, 37, broken_early=2, broken_late=21, malpositioned=15, notes="all set small end up"),
        ("small_end_up",),
        note="the fall of 26 points is printed; the control and stages are ours",
    ),
    # Young 29 weeks against old 58 weeks, all stored 14 d: 81.60/79.24, early 10.16/7.90, mid 1.27/2.10, late
    # 5.43/6.68,
    # culls 1.30/2.39, contaminated 0.23/1.68 % of fertile.
    _side_by_side(
        "old flock, fourteen days stored",
        "PMC7921000, table 2 (2021), Poult. Sci. 100:101026",
        [
            batch(
                1000,
                829,
                broken_early=102,
                broken_mid=13,
                broken_late=54,
                removed=2,
                contaminated=2,
                culled=13,
                stored_days=14,
                flock_age_weeks=29,
            )
        ],
        batch(
            1000,
            816,
            broken_early=79,
            broken_mid=21,
            broken_late=67,
            removed=17,
            contaminated=17,
            culled=24,
            stored_days=14,
            flock_age_weeks=58,
        ),
        (),
        never=("long_storage", "heat_spell", "turning"),
        note="per 1000 fertile eggs; culls and the remainder to 100 % are counted as hatched",
    ),
)

__all__ = ["TRIALS", "write_case"]
