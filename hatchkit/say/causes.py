"""One batch's causes in words: what was different, the verdict with its reasons, and how a weight comes about."""

from __future__ import annotations

from hatchkit.say import text
from hatchkit.say.speak import word
from hatchkit.say.values import Joined

#: So many tied causes and so many differences are named in a sentence; the tables have them all.
TIES, DIFFERENCES = 3, 4

#: Items told with their sign.
SIGNED = ("log_level", "clock", "clock_machine", "water_loss", "rh_set", "rh_hatch")

#: Units as a message can ask for them.
UNITS = {"°C": "degrees", "%RH": "humidity", "": "flag"}


def reason(piece, language: str = "en", unit: str = "C") -> str:
    """What fits, speaks against or is lacking, or what bounds a verdict: a code with its facts."""
    code, facts = piece
    if code == "item":
        return item(facts, language, unit)
    facts = {name: count(value) if isinstance(value, float) else value for name, value in facts.items()}
    if "stages" in facts:
        facts["stages"] = text(
            "reason_stages", {"stages": [word("loss", one, language) for one in facts["stages"]]}, language
        )
    return text(f"reason_{code}", facts, language, unit)


def reasons(pieces, language: str = "en", unit: str = "C") -> str:
    """Several reasons in one line, none of them twice; "" if there is none."""
    return "; ".join(dict.fromkeys(reason(piece, language, unit) for piece in pieces))


def count(number: float) -> float:
    """A count, with one decimal only where eggs were shared out between stages or expected."""
    return round(number) if abs(number - round(number)) < 0.05 or number >= 10 else round(number, 1)


def item(facts, language: str = "en", unit: str = "C") -> str:
    """One evidence item with its value, and with what is usual where `usual` is given."""
    value, usual = (_value(facts, facts[name], language, unit) for name in ("value", "usual"))
    return text("reason_item", dict(item=facts["item"], value=value, usual=usual), language)


def _value(facts, value, language, unit) -> str | None:
    if value is None:
        return None
    kind = "tray" if facts["item"] == "tray" else UNITS.get(facts["unit"], facts["unit"])
    given = dict(
        unit=kind,
        value=round(float(value), facts["digits"]),
        times=2.0 ** float(value) if kind == "doublings" else 1.0,
        one_in=round(10 ** float(value)) if kind == "tray" else 1,
        more="yes" if facts["item"] in SIGNED and round(float(value), facts["digits"]) > 0 else "no",
    )
    return text("reason_value", given, language, unit)


def different(causes, language: str = "en", unit: str = "C") -> str:
    """The sentence that opens the reasons: what was different this time, most first.

    Parameters
    ----------
    causes : object
        With the attributes of `hatchkit.advice.causes.Causes`.
    """
    good = int(causes.evidence["good_batches"].max())
    told = []
    for row in causes.different.head(DIFFERENCES).to_dict("records"):
        if isinstance(row["value"], str):
            told.append(text("different_name", row, language))
        else:
            told.append(item(row | dict(usual=row["usual"] if row["good_batches"] else None), language, unit))
    told = [one if place else capital(one) for place, one in enumerate(told)]
    return text("different_told", dict(good=good, count=len(told), told=Joined(told)), language)


def capital(words: str) -> str:
    """With a large first letter."""
    return words[:1].upper() + words[1:]


def verdict(causes, language: str = "en", unit: str = "C") -> str:
    """What was different, and the verdict of `causes`, in a few sentences.

    Eggs without a known end come first where they are many.
    """

    def say(code, **facts):
        return text(f"verdict_{code}", dict(batch=causes.batch, set=causes.eggs_set, **facts), language)

    many = bool(causes.unaccounted) and not causes.table["firm"].any()
    parts = [say("many_unaccounted", eggs=causes.unaccounted)] if many else []
    parts += [different(causes, language, unit)]
    parts += [_clears(causes, say)] if causes.mostly_clears else []
    parts += _judgement(causes, say, language, unit)
    if len(causes.signs):
        read = [text("verdict_sign", row, language) for row in causes.signs[["sign", "said"]].to_dict("records")]
        parts.append(say("signs", read=Joined(read)))
    parts += [say("unaccounted", eggs=causes.unaccounted)] if causes.unaccounted and not many else []
    parts += [reason(piece, language, unit) for piece in causes.limits]
    parts += [say("remark", remark=causes.remark)] if causes.remark else []
    return " ".join(parts)


def _judgement(causes, say, language, unit) -> list[str]:
    first, code = causes.table.iloc[0], causes.verdict.replace(" ", "_")
    if code == "two_causes":
        pair = causes.pairs.iloc[0]
        names = ("first", "second", "eggs_first", "eggs_second")
        return [
            say("two_causes", **{name: pair[name] for name in names}),
            *_reasons(first, say, language, unit),
            word("do", first["cause"], language),
        ]
    told = [say(code, cause=first["cause"], share=first["share"], clears=causes.mostly_clears)]
    if code in ("confident", "probable"):
        told += [
            *_reasons(first, say, language, unit),
            *_tied(causes, say, language),
            word("do", first["cause"], language),
        ]
    elif code == "cannot_tell":
        if first["cause"] == "bad_luck" and first["share"] >= 0.5:
            told.append(say("luck_or_unknown"))
        elif causes.table["tied"].sum() == 1:
            told.append(say("too_little", cause=first["cause"], share=first["share"]))
        told += _tied(causes, say, language)
    return told


def _reasons(first, say, language, unit) -> list[str]:
    return [
        say(key, told=Joined(dict.fromkeys(reason(piece, language, unit) for piece in first[key])))
        for key in ("fits", "against", "unknown")
        if len(first[key])
    ]


def _tied(causes, say, language) -> list[str]:
    tied = [word("cause", key, language) for key in causes.table.loc[causes.table["tied"], "cause"]]
    if len(tied) < 2:
        return []
    more = len(tied) - TIES if len(tied) > TIES + 1 else 0
    return [say("tied", told=Joined(tied[:TIES] if more else tied), more=more)]


def _clears(causes, say) -> str:
    """That the loss is one of clears: sure of the count, and what tells infertile from dead early."""
    row = causes.pattern.set_index("stage").loc["clear"]
    opened = causes.evidence.set_index("item").at["clears_opened", "value"]
    return say("clears", eggs=count(row["eggs"]), usual=count(row["usual"]), opened=opened)


def arithmetic(given, language: str = "en", unit: str = "C") -> str:
    """How the weight of one cause comes about, factor by factor, so that it can be followed by hand.

    Parameters
    ----------
    given : (object, str)
        `Causes` and the key of the cause.
    """
    causes, cause = given
    row = causes.table.set_index("cause").loc[cause]
    every = causes.arithmetic(cause)
    rows = every[every["variant"] == row["variant"]]
    items = {one["item"]: one for one in causes.evidence.to_dict("records")}
    lines = [text("weight_of", dict(cause=cause), language)]
    for part in rows.to_dict("records"):
        if part["part"] == "second" and part["factor"] < 1.005:
            continue
        what = _part(part, items, language, unit)
        if part["once"]:
            what = text("weight_once", dict(what=what), language)
        lines.append(_line(part["factor"], what, language))
    facts = dict(ways=every["variant"].nunique(), prior=row["prior"], share=row["share"])
    return "\n".join([*lines, _line(rows["factor"].prod(), text("weight_together", facts, language), language)])


def _part(part, items, language, unit) -> str:
    if part["part"] in ("pattern", "second"):
        return text(f"weight_{part['part']}", {}, language)
    if part["found"] == "not known":
        return text("weight_not_known", dict(item=part["part"]), language)
    if part["found"] == "known":
        one = items[part["part"]]
        own = one["kind"] == "gauge" and one["good_batches"]
        return item(one | dict(digits=int(one["digits"]), usual=one["usual"] if own else None), language, unit)
    return text("reason_noted", dict(sign=part["part"], said=part["found"]), language)


def _line(factor, what, language) -> str:
    size = "beyond" if factor >= 1e5 else "large" if factor >= 10 else "small"
    shown = 0 if size == "beyond" else round(factor) if size == "large" else float(f"{factor:.2g}")
    return text("weight_line", dict(size=size, factor=shown, what=what), language)
