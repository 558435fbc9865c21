"""Every sentence that the advice room says, made here and nowhere else."""

from __future__ import annotations

from hatchkit.tables import percent
from hatchkit.usual.beta_binomial import MOST_EGGS


def chance(share) -> str:
    """A probability as a person says it: "9 times in 10"."""
    if share >= 0.995:
        return "more than 99 times in 100"
    if abs(share * 10 - round(share * 10)) < 0.005:
        return f"{round(share * 10)} times in 10"
    return f"{round(share * 100)} times in 100"


def eggs_to_set(plan) -> str:
    """How many eggs, from what, how sure."""
    basis = plan.basis
    row = plan.eggs[plan.eggs["sure"] == round(basis["sure"], 4)].iloc[0]
    if row.isna()["eggs"]:
        return (
            f"At least {basis['chicks']:,} chicks {chance(basis['sure'])} cannot be planned in one set: at the hatch "
            f"rates seen and published it would take more than {MOST_EGGS:,} eggs, or rates that vary less. Plan "
            "several sets, or fewer chicks."
        )
    return (
        f"Set {row['eggs']:.0f} {basis['name']} eggs to have at least {basis['chicks']} good chick"
        f"{'s' if basis['chicks'] > 1 else ''} {chance(basis['sure'])}; expect about {row['chicks_middle']:.0f} "
        f"({row['chicks_low']:.0f} to {row['chicks_high']:.0f} in 8 sets of 10)."
    )


def plan_basis(basis) -> str:
    """What the number of eggs rests on."""
    level, usual = percent(basis["level"]), (f"{percent(basis['share_mean'])} ({percent(basis['share_low'])} to "
                                             f"{percent(basis['share_high'])})")
    count, drawn = basis["batches"], ""
    if count == 0:
        text = (f"This rests on no own batch of this species, only on a published level of {level} of eggs set: the "
                f"usual hatch is put at {usual}, and batches are let differ as much as is thought usual.")
    else:
        as_seen = ("as much as yours did" if count > 1 else
                   "as much as is thought usual, since one batch shows no spread")
        text = (f"This rests on {count} own batch{'es' if count > 1 else ''} ({basis['hatched']} good chicks of "
                f"{basis['eggs_set']} eggs) and on a published level of {level} of eggs set. Together they put the "
                f"usual hatch at {usual}, and let batches differ {as_seen}.")
        drawn = " With so few batches the published level weighs much." if count < 6 else ""
    left = basis["left_out"]
    if left:
        drawn += (f" Batch{'es' if len(left) > 1 else ''} {', '.join(left)} {'are' if len(left) > 1 else 'is'} left "
                  "out: the records contradict themselves.")
    return text + _driver(basis["driver"]) + drawn


def _driver(one) -> str:
    """One poor batch that the number rests on, by name."""
    if one is None:
        return ""
    return (f" One batch drives this number: without {one['batch']} ({one['hatched']} good chicks of "
            f"{one['eggs_set']} eggs) it would be {one['without']} eggs. If you know that its cause is mended, plan "
            "between the two.")


def when(plan) -> str:
    """Day and hour of setting and the days of the hatch."""
    steps, note = plan.calendar.set_index("step")["starts"], plan.basis["set_at_note"]
    return (
        f"Eggs in on {_day(steps['set'])} {steps['set']:%Y at %H:%M}{f' ({note})' if note else ''}, to hatch from "
        f"{_day(steps['first_hatch'])} to {_day(steps['last_hatch'])}."
    )


def _day(time) -> str:
    return f"{time.day} {time:%B}"


def what_changes(plan) -> str:
    """How many things to change, and the first."""
    count = len(plan.changes)
    if count == 0:
        return ("No batch of this species is on record, so nothing can be said of your settings."
                if plan.basis["batches"] == 0 else "Nothing in this season's records calls for another setting.")
    first = plan.changes.iloc[0]["what"]
    return f"First change: {first}." if count == 1 else f"{count} things to change; the first: {first}."


def plan(plan) -> str:
    """The whole plan in a few sentences."""
    return " ".join([eggs_to_set(plan), plan_basis(plan.basis), when(plan), what_changes(plan)])
