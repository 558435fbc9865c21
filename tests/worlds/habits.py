"""World 'second': a keeper's habits as a channel from true ends to what stands in the book.

Each egg goes through the channel by itself, so counts are multinomial and the oracle can use the very same matrix.
On top of it a few written counts are out by one (not in the oracle's likelihood; it allows for it with a small slip).

Sources
-------
Clears hold infertile eggs and very early deads; only opening tells (S04, S08); on eggs left for 18 days and more even
opening cannot tell them apart (S06). Candling days S03, S67. Not every keeper opens eggs, notes pips, culls, rots
(common practice, no source); the rates are from memory, drawn wide.
"""

from __future__ import annotations

import numpy as np
from scipy import stats

from .codes import DAYS, Bird
from .kernels import CULL, MAL, PIP, ROT, STATES

ENDS = (*STATES, "infertile", "sound")
INFERTILE, SOUND = len(STATES), len(STATES) + 1
SEEN = (
    "open1_inf",
    "open1_dead",
    "clear1",
    "dead1",
    "clear2",
    "dead2",
    "clear3",
    "dead3",
    "rot",
    "b_inf",
    "b_early",
    "b_mid",
    "b_late",
    "b_mal",
    "unopened",
    "pip",
    "cull",
    "sound",
)
AT = {name: i for i, name in enumerate(SEEN)}
ROT_DAYS = range(4, 17)  # days on which eggs that rot died


def draw_habits(draw):
    """Habits of a season's keeper."""
    opening = draw.choice(["all", "some", "none"], p=[0.62, 0.23, 0.15])
    return {
        "look2": bool(draw.random() < 0.7),
        "look3": bool(draw.random() < 0.4),
        "takes_out": bool(draw.random() < 0.9),
        "sight": float(draw.uniform(0.65, 0.98)),
        "ring_day": float(draw.uniform(1.8, 4.2)),  # deaths before it look clear at candling
        "opens1": bool(draw.random() < 0.3),
        "opens": {"all": 1.0, "some": float(draw.uniform(0.3, 0.85)), "none": 0.0}[opening],
        "fnd_read": float(draw.uniform(0.3, 0.9)),  # a first-day death taken for infertile when opened
        "stage_blur": float(draw.uniform(0.5, 2.2)),  # days by which a stage is misjudged
        "early_to": float(draw.choice([7.0, 7.0, 8.0, 6.0])),
        "mid_to": float(draw.choice([14.0, 14.0, 15.0, 17.0])),
        "pips": bool(draw.random() < 0.78),
        "culls": bool(draw.random() < 0.65),
        "rots": bool(draw.random() < 0.7),
        "mal": bool(draw.random() < 0.3),
        "hatch_times": bool(draw.random() < 0.55),
        "stored": bool(draw.random() < 0.8),
        "age": bool(draw.random() < 0.7),
        "posted": bool(draw.random() < 0.6),
        "signs": bool(draw.random() < 0.6),
        "false_sign": float(draw.uniform(0.005, 0.04)),
        "remark_true": float(draw.uniform(0.05, 0.5)),
        "remark_false": float(draw.uniform(0.02, 0.15)),
        "slip": float(draw.uniform(0.0, 0.06)),  # chance that a written count is out by one
        "total_column": bool(draw.random() < 0.4),  # writes dead_in_shell beside the opened ones
        "odd_days": float(draw.uniform(0.3, 1.6)),
    }


def look_days(bird: Bird, habits, draw):
    """Days (of the bird) of the looks of one batch; None where the keeper does not look; transfer always moves."""
    first = bird.look1 + draw.normal(0, habits["odd_days"])
    second = bird.look2 + draw.normal(0, habits["odd_days"]) if habits["look2"] and draw.random() < 0.92 else None
    transfer = bird.transfer + draw.normal(0, 0.35)
    first = float(np.clip(first, 0.18 * bird.days, 0.55 * bird.days))
    if second is not None:
        second = float(np.clip(second, first + 1.5, transfer - 0.5))
    return first, second, float(np.clip(transfer, bird.transfer - 1, bird.transfer + 1))


def _stage(day, habits):
    """Chances of early, mid, late for a dead embryo of a chicken day."""
    early = stats.norm.cdf(habits["early_to"] + 0.0 - day, 0, habits["stage_blur"])
    late = stats.norm.cdf(day - habits["mid_to"], 0, habits["stage_blur"])
    return early, max(0.0, 1 - early - late), late


def _row_of_death(day, looks, habits):
    """What becomes of an egg that died on a chicken day (middle of its bin) in the book."""
    row = np.zeros(len(SEEN))
    left = 1.0
    looks_clear = float(stats.logistic.cdf(habits["ring_day"] - day, 0, 0.6))
    for number, at in enumerate(looks, start=1):
        if at is None or not habits["takes_out"] or day > at - 0.3:
            continue
        found = left * habits["sight"] * (0.5 if day > at - 1.2 else 1.0)
        clear, ring = found * looks_clear, found * (1 - looks_clear)
        if number == 1 and habits["opens1"]:
            taken = habits["fnd_read"] * np.exp(-max(0.0, day - 0.5) / 1.0)
            row[AT["open1_inf"]] += clear * taken
            row[AT["open1_dead"]] += clear * (1 - taken)
        else:
            row[AT[f"clear{number}"]] += clear
        row[AT[f"dead{number}"]] += ring
        left -= found
    opened = left * habits["opens"]
    row[AT["unopened"]] += left - opened
    taken = habits["fnd_read"] * np.exp(-max(0.0, day - 0.5) / 1.6)  # mush after three weeks: worse than at a look
    row[AT["b_inf"]] += opened * taken
    for name, share in zip(("b_early", "b_mid", "b_late"), _stage(day, habits), strict=True):
        row[AT[name]] += opened * (1 - taken) * share
    return row


def _row_of_infertile(looks, habits):
    row = np.zeros(len(SEEN))
    left = 1.0
    for number, at in enumerate(looks, start=1):
        if at is None or not habits["takes_out"]:
            continue
        found = left * min(0.99, habits["sight"] + 0.05)
        row[AT["open1_inf" if number == 1 and habits["opens1"] else f"clear{number}"]] += found
        left -= found
    row[AT["unopened"]] += left * (1 - habits["opens"])
    row[AT["b_inf"]] += left * habits["opens"] * 0.96
    row[AT["b_early"]] += left * habits["opens"] * 0.04
    return row


def channel(bird: Bird, looks, habits):
    """Chances of what is written for each true end, shape (27 ends, 18 seen); rows sum to 1.

    Parameters
    ----------
    looks : days of the bird of first look, second look or None, transfer
    """
    first, second, transfer = looks
    chicken = [None if at is None else at * DAYS / bird.days for at in (first, second, transfer)]
    if not habits["look3"]:
        chicken[2] = None
    table = np.zeros((len(ENDS), len(SEEN)))
    for day in range(1, DAYS + 1):
        table[day - 1] = _row_of_death(day - 0.5, chicken, habits)
    table[MAL] = _row_of_death(19.5, chicken, habits)
    if habits["mal"]:
        late = table[MAL, AT["b_late"]]
        table[MAL, AT["b_mal"]], table[MAL, AT["b_late"]] = 0.85 * late, 0.15 * late
    table[ROT] = np.mean([table[d - 1] for d in ROT_DAYS], axis=0)
    if habits["rots"]:
        table[ROT] *= 0.15
        table[ROT, AT["rot"]] += 0.85
    table[PIP, AT["pip"] if habits["pips"] else AT["unopened"]] = 1.0
    if not habits["pips"] and habits["opens"]:
        table[PIP, AT["b_late"]] = habits["opens"]
        table[PIP, AT["unopened"]] = 1 - habits["opens"]
    table[CULL, AT["cull" if habits["culls"] else "sound"]] = 1.0
    table[INFERTILE] = _row_of_infertile(chicken, habits)
    table[SOUND, AT["sound"]] = 1.0
    return table


def written(seen, habits, looks, draw):
    """Columns of the batch table from counts by SEEN; absent ones are None.

    Parameters
    ----------
    seen : int array over SEEN
    """
    n = {name: int(seen[i]) for name, i in AT.items()}
    open1 = n["open1_inf"] + n["open1_dead"]
    row = {"hatched": n["sound"] + n["cull"], "removed": n["rot"] or None}
    if habits["takes_out"]:
        row |= {"clear1": n["clear1"] + open1, "dead1": n["dead1"]}
        if looks[1] is not None:
            row |= {"clear2": n["clear2"], "dead2": n["dead2"]}
        if habits["look3"]:
            row |= {"clear3": n["clear3"], "dead3": n["dead3"]}
        if habits["opens1"]:
            row |= {"opened1_infertile": n["open1_inf"], "opened1_dead": n["open1_dead"]}
    if habits["rots"]:
        row["contaminated"] = n["rot"]
    if habits["pips"]:
        row["pipped_dead"] = n["pip"]
    if habits["culls"]:
        row["culled"] = n["cull"]
    late = n["b_late"] + n["b_mal"]
    opened = n["b_inf"] + n["b_early"] + n["b_mid"] + late
    if habits["opens"]:
        row |= {
            "broken_infertile": n["b_inf"],
            "broken_early": n["b_early"],
            "broken_mid": n["b_mid"],
            "broken_late": late,
        }
        if habits["mal"]:
            row["malpositioned"] = n["b_mal"]
    if habits["opens"] < 1 or habits["total_column"]:
        row["dead_in_shell"] = opened + n["unopened"]
    if "dead_in_shell" in row and habits["opens"]:
        return row  # who writes both the whole and its parts has reckoned that they close
    for name in ("clear1", "dead1", "broken_early", "broken_mid", "broken_late", "hatched"):
        if row.get(name) and draw.random() < habits["slip"]:
            row[name] = max(0, row[name] + int(draw.choice([-1, 1])))
    return row
