"""Every sentence that the advice room says, made here and nowhere else."""

from __future__ import annotations

from hatchkit.tables import percent


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
            f"At least {basis['chicks']} chicks {chance(basis['sure'])} cannot be planned in one set: the "
            "hatch rates seen and published vary too much. Plan two sets, or fewer chicks."
        )
    return (
        f"Set {row['eggs']:.0f} {basis['name']} eggs to have at least {basis['chicks']} good chicks "
        f"{chance(basis['sure'])}; expect about {row['chicks_middle']:.0f} "
        f"({row['chicks_low']:.0f} to {row['chicks_high']:.0f} in 8 sets of 10)."
    )


def plan_basis(basis) -> str:
    """What the number of eggs rests on."""
    own = (
        "no own batch of this species"
        if basis["batches"] == 0
        else f"{basis['batches']} own batch{'es' if basis['batches'] > 1 else ''} "
        f"({basis['hatched']} good chicks of {basis['eggs_set']} eggs)"
    )
    drawn = " With so few batches the published level weighs much." if basis["batches"] < 6 else ""
    return (
        f"This rests on {own} and on a published level of {percent(basis['level'])} of eggs set. Together they "
        f"put the usual hatch at {percent(basis['share_mean'])} ({percent(basis['share_low'])} to "
        f"{percent(basis['share_high'])}), and let batches differ as much as yours did.{drawn}"
    )


def plan(plan) -> str:
    """The whole plan in a few sentences."""
    dates = plan.calendar.set_index("step")["starts"]
    when = (
        f"Eggs in on {dates['set']:%d %B %Y at %H:%M}, to hatch from {dates['first_hatch']:%d %B} to "
        f"{dates['last_hatch']:%d %B}."
    )
    count = len(plan.changes)
    change = (
        "Nothing in this season's records calls for another setting."
        if count == 0
        else f"First change: {plan.changes.iloc[0]['what']}."
        if count == 1
        else f"{count} things to change; the first: {plan.changes.iloc[0]['what']}."
    )
    return " ".join([eggs_to_set(plan), plan_basis(plan.basis), when, change])
