"""Sixteen textbook hatches: what a handbook's trouble table says of a pattern, told as a keeper's season. Four more
besides.

Sources (read as far as stored)
-------------------------------
MSU = Mississippi State Univ. Extension, 'Trouble shooting failures with egg incubation' (extension.msstate.edu) and
'Important incubation factors'; UF = H. R. Wilson, Hatchability Problem Analysis, Univ. of Florida CIR1112; PSU = Penn
State Extension 4-H embryology, trouble-shooting pages ('dead from the sixth through the sixteenth days', 'malformed
chicks in poor hatch', 'dry sticks', 'in case of power outage'); ILL = Univ. of Illinois Extension, Incubation
troubleshooting (draggy hatch); CHK = 'Incubation troubleshooting checklist' and CHT = 'Incubation trouble shooting
chart' (copies of extension tables on keepers' sites); UC = Ernst et al., UC ANR 8127 (only the project's summary of
it). The counts and the
keepers are ours, made to show the row's pattern plainly: 30 eggs of which about half are lost beyond the usual.
"""

from __future__ import annotations

from .textbook_air import EGGS_AND_AIR, poor, season
from .written import write_case

TEXTBOOK = (
    *EGGS_AND_AIR,
    season(
        "dry at hatch",
        "CHT, pipped eggs not hatching: insufficient moisture; PSU, dry sticks",
        poor(
            13,
            clear1=3,
            dead1=1,
            broken_late=2,
            pipped_dead=11,
            air={"rh_hatch": 26},
            signs="pipped and then dried in, stuck to the shell",
            notes="forgot the water when I moved them down",
        ),
        "dry_hatch",
    ),
    season(
        "turner stopped",
        "UC and PSU, malpositions with dead in shell: improper turning; Oliveira et al. 2020",
        poor(
            11,
            clear1=3,
            dead1=5,
            broken_early=1,
            broken_mid=1,
            broken_late=8,
            pipped_dead=1,
            malpositioned=4,
            signs="head in the small end",
            notes="the turner had stopped, saw it only on day 12",
        ),
        "turning",
    ),
    season(
        "shut vents",
        "PSU, dead on days 6-16 and MSU, dead without pipping: lack of ventilation",
        poor(
            10,
            clear1=3,
            dead1=1,
            dead2=3,
            broken_mid=2,
            broken_late=9,
            pipped_dead=2,
            signs="weak, gasping chicks",
            notes="vents were shut and a blanket over the machine",
        ),
        "ventilation",
    ),
    season(
        "dirty eggs",
        "UF and trade pages, rots and exploders: dirty or washed eggs",
        poor(
            12,
            clear1=3,
            dead1=1,
            dead2=1,
            removed=8,
            contaminated=8,
            broken_mid=2,
            broken_late=2,
            pipped_dead=1,
            culled=2,
            signs="bad smell; two eggs burst",
            notes="muddy floor eggs, I washed them in cold water",
        ),
        "contamination",
    ),
    season(
        "wrong end up",
        "CHK, malpositioned: eggs set small end up; Bauer, Tullett & Wilson 1990",
        poor(
            13,
            clear1=3,
            dead1=1,
            broken_late=11,
            pipped_dead=2,
            malpositioned=9,
            signs="head in the small end, away from the air cell",
            notes="my boy set the tray, most were small end up",
        ),
        "small_end_up",
    ),
    season(
        "paint",
        "UF, early deaths: fumigated between 12 and 96 h of incubation; CHT, slight blood rings: fumigation",
        poor(
            12,
            clear1=5,
            opened1_infertile=3,
            opened1_dead=2,
            dead1=11,
            broken_early=1,
            broken_late=1,
            signs="blood rings in nearly every egg, all of one size",
            notes="room was painted on the second day, fumes all night",
        ),
        "fumes",
    ),
    season(
        "by post",
        "PSU, malformed chicks in poor hatch: damage in shipment by jarring",
        poor(
            11,
            clear1=9,
            opened1_infertile=3,
            opened1_dead=6,
            dead1=5,
            broken_early=1,
            broken_late=4,
            posted="yes",
            signs="loose air cells",
            notes="parcel was three days on the way and shaken",
        ),
        "posted_eggs",
    ),
)

FURTHER = (
    season(
        "one hot corner",
        "ILL, draggy hatch: hot spots and cold spots",
        poor(
            14,
            clear1=3,
            dead1=2,
            dead2=1,
            broken_mid=1,
            broken_late=6,
            pipped_dead=3,
            hatch=(-34, 46),
            air={"spread": 2.4},
            signs="hatch dragged on for three days",
            notes="eggs in one corner all early, in the other late or dead",
        ),
        "uneven_heat",
    ),
    season(
        "corn only",
        "deficiency trial of Leghorn and Rhode Island Red hens: deaths on days 8-14, clubbed down",
        poor(
            12,
            clear1=3,
            dead1=1,
            dead2=6,
            broken_mid=3,
            broken_late=5,
            culled=3,
            signs="clubbed down; curled toes",
            notes="hens had only corn this winter",
        ),
        "vitamin_lack",
    ),
    season(
        "mushy chicks",
        "omphalitis in the Merck Veterinary Manual (copy on a keepers' site): contaminated eggs or incubator",
        poor(
            24,
            clear1=3,
            dead1=1,
            broken_late=1,
            pipped_dead=1,
            culled=13,
            signs="mushy bellies, wet smelly navels",
            notes="hatching tray had not been cleaned",
        ),
        "navel_infection",
    ),
    season(
        "turned to the end",
        "CHK, malpositioned: excessive turning at late stages",
        poor(
            13,
            clear1=3,
            dead1=1,
            broken_late=10,
            pipped_dead=3,
            malpositioned=7,
            notes="forgot to take them off the turner, it turned till the end",
        ),
        "late_turning",
    ),
)

__all__ = ["FURTHER", "TEXTBOOK", "write_case"]
