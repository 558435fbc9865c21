"""The plan for the next set as codes and facts, and as its sentences; words are in ``say/messages/*/plan.ftl``."""

from __future__ import annotations

from hatchkit.say import text
from hatchkit.say.speak import word
from hatchkit.usual.beta_binomial import MOST_EGGS


def bird_of(basis, language: str) -> str:
    """What the birds are called beside a number of eggs."""
    return basis["name"] if language == "en" else word("species", basis["species"], language)


def chance(share, language: str = "en") -> str:
    """A probability as a person says it: "9 times in 10"."""
    if share >= 0.995:
        facts = dict(times=None, of=100)
    elif abs(share * 10 - round(share * 10)) < 0.005:
        facts = dict(times=round(share * 10), of=10)
    else:
        facts = dict(times=round(share * 100), of=100)
    return text("plan_chance", facts, language)


def eggs_to_set(plan, language: str = "en") -> str:
    """How many eggs, from what, how sure."""
    basis = plan.basis
    row = plan.eggs[plan.eggs["sure"] == round(basis["sure"], 4)].iloc[0]
    facts = dict(chicks=basis["chicks"], chance=chance(basis["sure"], language))
    if row.isna()["eggs"]:
        return text("plan_too_many", dict(facts, most=MOST_EGGS), language)
    return text(
        "plan_eggs",
        dict(
            facts,
            name=bird_of(basis, language),
            eggs=row["eggs"],
            low=row["chicks_low"],
            middle=row["chicks_middle"],
            high=row["chicks_high"],
        ),
        language,
    )


def plan_basis(basis, language: str = "en") -> str:
    """What the number of eggs rests on."""
    facts = dict(level=basis["level"], mean=basis["share_mean"], low=basis["share_low"], high=basis["share_high"])
    count, left, driver = basis["batches"], basis["left_out"], basis["driver"]
    told = [
        text("plan_rests", dict(facts, batches=count, hatched=basis["hatched"], set=basis["eggs_set"]), language)
        if count
        else text("plan_rests_none", facts, language)
    ]
    if driver is not None:
        told.append(
            text(
                "plan_driver",
                dict(
                    batch=driver["batch"], hatched=driver["hatched"], set=driver["eggs_set"], without=driver["without"]
                ),
                language,
            )
        )
    told += [text("plan_few", {}, language)] if 0 < count < 6 else []
    told += [text("plan_left_out", dict(left=left), language)] if left else []
    return " ".join(told)


def when(plan, language: str = "en") -> str:
    """Day and hour of setting and the days of the hatch."""
    steps = plan.calendar.set_index("step")["starts"]
    notes = [text(f"plan_note_{code}", facts, language) for code, facts in plan.basis["set_at_notes"]]
    return text(
        "plan_when",
        dict(
            set=steps["set"], year=steps["set"].year, notes=notes, first=steps["first_hatch"], last=steps["last_hatch"]
        ),
        language,
    )


def what_changes(plan, language: str = "en") -> str:
    """How many things to change, and the first."""
    told = changes_in(plan.changes, language)
    if not told:
        return text("plan_changes_none", dict(batches=plan.basis["batches"]), language)
    return text("plan_changes", dict(count=len(told), first=told[0]["what"]), language)


def changes_in(changes, language: str = "en", unit: str = "C") -> list[dict]:
    """Each change with ``what``, ``to`` and ``why`` in a language; in English as the table has them."""
    rows = changes.to_dict("records")
    if language == "en":
        return [{name: row[name] for name in ("what", "to", "why")} for row in rows]
    from hatchkit.say.speak import attributes

    return [
        attributes(f"changed_{code}", facts, language, ("what", "to", "why"), (), unit)
        for code, facts in changes.attrs["said"]
    ]


def plan(plan, language: str = "en") -> str:
    """The whole plan in a few sentences."""
    return " ".join(
        [
            eggs_to_set(plan, language),
            plan_basis(plan.basis, language),
            when(plan, language),
            what_changes(plan, language),
        ]
    )
