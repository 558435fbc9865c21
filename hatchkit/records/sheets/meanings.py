"""A heading -> what it may mean: a field, the look it belongs to, and how much its words speak for it (`fields`)."""

from __future__ import annotations

import re
from dataclasses import replace

from hatchkit.records.sheets.fields import PLAIN, POSSIBLE, USUAL, WEAK, Look, Meaning
from hatchkit.records.sheets.lexicon import Token, all_roles, tokens
from hatchkit.records.sheets.lookwords import look_of
from hatchkit.records.sheets.own_columns import OWN, PLAIN_OWN, own_heading


def meanings(heading: str, group: str, language: str | None) -> list[Meaning]:
    """The readings that a heading's own words allow, the likeliest first; empty where no word is known.

    Parameters
    ----------
    heading, group : str
        The heading and the heading that spans it ("" for none).
    language : str or None
    """
    if (
        not group
        and heading.strip() in OWN
        and ("_" in heading or any(c.isdigit() for c in heading) or heading in PLAIN_OWN)
    ):
        return own_heading(heading.strip())
    if re.search(r"[€$£]|\bz[łl]\b", heading):
        return [Meaning("ignore", weight=PLAIN)]
    own = _clean(tokens(heading, language))
    above = _clean(tokens(group, language)) if group and group != heading else []
    found = _read(own)
    if above:
        look = look_of(above)
        inherited = _read(above + own)
        if not found:
            found = [replace(meaning, weight=meaning.weight - 0.3) for meaning in inherited]
        else:
            from_both = {m.field for m in inherited}
            found = [
                replace(m, look=m.look or look, weight=m.weight + (0.3 if m.field in from_both else 0.0)) for m in found
            ]
            found += [replace(m, weight=m.weight - 0.5) for m in inherited if m.field not in {f.field for f in found}]
    if any(token.guessed for token in own):
        found = [replace(meaning, weight=meaning.weight - 1.0) for meaning in found]
    return sorted(found, key=lambda meaning: -meaning.weight)


def _clean(found: tuple[Token, ...]) -> list[Token]:
    silent = {"zero", "all", "unknown", "yes", "word number"}
    return [Token(t.text, t.roles - silent, t.languages, _number(t), t.guessed) for t in found]


def _number(token: Token) -> int | None:
    """The number of a word; "un", "ein", "en" are mostly none in a heading."""
    if token.text.isdigit():
        return int(token.text) if len(token.text) < 6 else token.number
    return None if token.number == 1 and len(token.text) < 4 else token.number


def _without_negated(found: list[Token]) -> list[Token]:
    """ "Dead not pipped" counts the dead in shell, and no pipped eggs; "pipped not hatched" does."""
    kept = list(found)
    for place, token in enumerate(found[:-1]):
        if (token.text == "no" or "not" in token.roles) and "pipped" in found[place + 1].roles:
            kept = [t for t in found if t not in (token, found[place + 1])] + [Token("shell", frozenset({"shell"}))]
    return kept


def _read(found: list[Token]) -> list[Meaning]:
    found = _without_negated(found)
    roles = all_roles(found)
    unknown = sum(not token.roles and token.number is None for token in found)
    if not roles:
        return []
    look = look_of(found)
    result = _by_class(roles, look) or _by_field(roles, look, found)
    return [replace(meaning, weight=meaning.weight - 0.4 * min(unknown, 3)) for meaning in result]


def _by_class(roles: frozenset, look: Look) -> list[Meaning]:
    """Readings by what is counted."""
    has = roles.__contains__
    within = has("ofwhich")
    if has("percent") and not has("number"):
        return [Meaning("percent", weight=PLAIN)]
    if has("mean") and not has("weight"):
        return [Meaning("ignore", weight=USUAL)]
    if has("legring") or has("colour") and not roles & {"breed", "species"}:
        return [Meaning("ignore", weight=PLAIN)]
    if has("expected"):
        return [Meaning("due", weight=PLAIN), Meaning("ignore", weight=USUAL)]
    if has("sold") or has("sex") and not roles & {"hen", "cock"}:
        return [Meaning("ignore", weight=USUAL)]
    if has("stage"):
        return [Meaning("stage_day", weight=PLAIN)]
    if has("weight") or has("scale"):
        return _weighed(roles, look)
    if has("takeoff") and not roles & {"clear", "dead", "removed", "rotten", "cracked", "left", "alive"}:
        return [Meaning("hatch_at", weight=PLAIN), Meaning("hatched", weight=POSSIBLE)]
    if roles & {"temperature", "humidity"} and not roles & {"dead", "clear", "hatched", "shell"}:
        return [Meaning("ignore", weight=USUAL)]
    if has("laid") and not has("storage"):
        return [Meaning("laid_at", weight=USUAL)]
    if has("storage") and not roles & {"clear", "dead", "hatched"}:
        return [Meaning("stored_days", weight=PLAIN)]
    if has("opened"):
        return _opened(roles)
    if not has("pipped") and (has("unhatched") or has("not") and roles & {"hatched", "hatch", "out"}):
        field = "broken_infertile" if has("clear") else "unhatched"
        return [Meaning(field, look, PLAIN, within)]
    if has("pipped"):
        if has("hatched") and not roles & {"not", "dead", "out"}:
            return [Meaning("pipped", weight=WEAK)]
        return [Meaning("pipped", Look(), PLAIN, within)]
    if has("shell"):
        return [Meaning("dis", Look(), PLAIN, within), Meaning("dead", look, WEAK)]
    if has("malpos"):
        return [Meaning("malpos", weight=PLAIN, within=True)]
    if has("culled"):
        both = [Meaning("removed", look, USUAL), Meaning("culled", weight=USUAL - 0.5, within=within)]
        return both if has("removed") and not has("chicks") else [Meaning("culled", weight=PLAIN, within=within)]
    if has("weak") and not has("date"):
        return [Meaning("weak", weight=PLAIN, within=within)]
    return _losses(roles, look, within)


def _weighed(roles, look: Look) -> list[Meaning]:
    """A weight, when it was taken, or how many eggs lay on the scale."""
    if roles & {"date", "time"} and "egg" not in roles:
        return [Meaning("date", weight=PLAIN)]
    if "scale" in roles or "number" in roles:
        return [Meaning("eggs_weighed", weight=PLAIN)]
    found = [Meaning("weight", look, PLAIN)]
    return [*found, Meaning("eggs_weighed", weight=POSSIBLE)] if "egg" in roles else found


def _opened(roles) -> list[Meaning]:
    for role, field in (
        ("clear", "broken_infertile"),
        ("early", "broken_early"),
        ("mid", "broken_mid"),
        ("late", "broken_late"),
    ):
        if role in roles:
            return [Meaning(field, weight=PLAIN)]
    if "unhatched" in roles:
        return [Meaning("unhatched", weight=USUAL), Meaning("ignore", weight=POSSIBLE)]
    return [Meaning("ignore", weight=POSSIBLE)]


def _losses(roles, look: Look, within: bool) -> list[Meaning]:
    has = roles.__contains__
    if has("not") and has("fertile"):
        return [Meaning("clear", look, PLAIN)]
    if has("clear") and has("dead"):
        return [Meaning("clear", look, POSSIBLE), Meaning("dead", look, POSSIBLE)]
    if has("clear"):
        return [Meaning("clear", look, PLAIN, within)]
    if roles & {"rotten", "cracked", "removed"} and not roles & {"dead", "hatched"}:
        several = len(roles & {"rotten", "cracked", "removed"}) > 1
        field = "removed" if several or has("removed") else "rotten" if has("rotten") else "cracked"
        found = [Meaning(field, look, PLAIN if not has("removed") or several else USUAL, within)]
        part = {"rotten": "contaminated", "cracked": "cracked_of"}.get(field)
        # Beside opened eggs, rotten and cracked ones are mostly counted among these.
        return found + ([Meaning(part, weight=USUAL, within=True)] if part and not look else [])
    if has("dead"):
        return _dead(roles, look, within)
    if has("fertile"):
        return [Meaning("fertile", look, PLAIN), Meaning("left", look, POSSIBLE if look else WEAK)]
    if roles & {"left", "alive"} and not roles & {"hatched", "chicks", "hatch"}:
        weight = PLAIN if look or has("left") else USUAL
        found = [Meaning("left", look, weight)]
        if has("out") and has("alive"):
            found = [Meaning("hatched", weight=PLAIN), Meaning("left", look, POSSIBLE)]
        if "alive" in roles and not look:
            found.append(Meaning("healthy", weight=WEAK))
        if "egg" in roles and not look:
            found.append(Meaning("eggs_set", weight=USUAL))
        if not look:
            found.append(Meaning("unhatched", weight=POSSIBLE))
        return found
    if roles == {"out"}:
        return [Meaning("hatched", weight=USUAL), Meaning("hatch_at", weight=POSSIBLE)]
    if roles & {"hatched", "chicks"} or has("hatch") and has("number") and not has("batch"):
        return _hatched(roles)
    return []


def _dead(roles, look: Look, within: bool) -> list[Meaning]:
    has = roles.__contains__
    if has("total"):
        return [Meaning("total_dead", weight=PLAIN), Meaning("dead", look, WEAK)]
    if has("hatched") or has("chicks"):
        return [Meaning("ignore", weight=USUAL), Meaning("culled", weight=WEAK)]
    if has("hatch") or has("late") and not look:
        return [Meaning("dis", weight=USUAL, within=within), Meaning("dead", look, POSSIBLE)]
    if has("early") and not look:
        return [Meaning("dead", Look(order=1), PLAIN, within), Meaning("broken_early", weight=WEAK)]
    if has("mid") and not look:
        return [Meaning("dead", Look(order=2), PLAIN, within), Meaning("broken_mid", weight=WEAK)]
    return [Meaning("dead", look, PLAIN, within), Meaning("dis", weight=0.0 if not look else WEAK)]


def _ends_of_hatch(roles) -> list[Meaning]:
    """When the first or the last chick came."""
    if "first" in roles:
        return [Meaning("first_hatch_at", weight=PLAIN)]
    return [Meaning("last_hatch_at", weight=PLAIN)] if "late" in roles else []


def _hatched(roles) -> list[Meaning]:
    return _ends_of_hatch(roles) + _chicks(roles)


def _chicks(roles) -> list[Meaning]:
    has = roles.__contains__
    if roles & {"date", "time", "day"} and not has("number"):
        return [Meaning("hatch_at", weight=PLAIN), Meaning("hatched", weight=POSSIBLE)]
    if has("alive") or has("left"):
        return [Meaning("hatched", weight=USUAL), Meaning("healthy", weight=POSSIBLE)]
    strong = PLAIN if has("hatched") and not has("batch") else USUAL + 0.5
    return [Meaning("hatched", weight=strong), Meaning("hatch_at", weight=POSSIBLE), Meaning("batch", weight=WEAK)]


def _by_field(roles: frozenset, look: Look, found: list[Token]) -> list[Meaning]:
    """Readings by what is told of the eggs, where no class of eggs is named."""
    has = roles.__contains__
    several = []
    if roles & {"batch", "hatch", "set", "egg", "number"}:
        several = _ambiguous(roles)
    if look and has("date") and not look.transfer:
        return [Meaning("look_at", look, PLAIN)]
    if has("hatcher") and not look and not has("candle"):
        moved = Look(transfer=True)
        return [Meaning("hatcher", weight=PLAIN), Meaning("left", moved, POSSIBLE), Meaning("look_at", moved, POSSIBLE)]
    if look.transfer:
        if has("date"):
            return [Meaning("look_at", look, PLAIN)]
        if roles & {"number", "egg", "set", "in"}:
            return [Meaning("left", look, PLAIN), Meaning("look_at", look, POSSIBLE)]
        return [Meaning("look_at", look, USUAL), Meaning("left", look, USUAL), Meaning("fate", look, USUAL)]
    if has("candle") or look.day is not None and not several:
        if has("date"):
            return [Meaning("look_at", look, PLAIN)]
        return [
            Meaning("look_at", look, USUAL),
            Meaning("fate", look, USUAL),
            Meaning("look_day", look, POSSIBLE),
            Meaning("left", look, 0.0),
            Meaning("dead", look, WEAK),
        ]
    for role, field, weight in (
        ("incubator", "incubator", PLAIN),
        ("tray", "tray", PLAIN),
        ("row", "tray_row", USUAL),
        ("column", "tray_col", USUAL),
        ("notes", "notes", PLAIN),
        ("signs", "signs", PLAIN),
        ("breed", "breed", PLAIN),
        ("result", "result", USUAL),
        ("posted", "posted", USUAL),
        ("broody", "broody", USUAL),
        ("keeper", "keeper", USUAL),
    ):
        if has(role) and not (role == "keeper" and has("pen")):
            second = {
                "breed": [Meaning("species", weight=POSSIBLE)],
                "result": [Meaning("notes", weight=POSSIBLE), Meaning("hatched", weight=WEAK)],
                "keeper": [Meaning("pen", weight=POSSIBLE)],
                "incubator": [Meaning("set_at", weight=USUAL if roles & {"set", "in", "date"} else POSSIBLE)],
            }.get(role, [])
            return [Meaning(field, look, weight), *second]
    if has("age"):
        return [Meaning("flock_age_weeks", weight=USUAL), Meaning("ignore", weight=POSSIBLE)]
    if has("species"):
        return [Meaning("species", weight=PLAIN), Meaning("breed", weight=POSSIBLE), Meaning("what", weight=WEAK)]
    if has("hen") or has("cock"):
        return [Meaning("hen" if has("hen") else "cock", weight=USUAL), Meaning("pen", weight=POSSIBLE)]
    if has("pen"):
        return [Meaning("pen", weight=USUAL + 0.5), Meaning("breed", weight=WEAK)]
    if several:
        return several
    if has("what"):
        return [Meaning("what", weight=USUAL), Meaning("notes", weight=POSSIBLE)]
    if has("date"):
        return [Meaning("date", weight=USUAL), Meaning("set_at", weight=USUAL if has("in") else POSSIBLE)]
    if has("year"):
        return [Meaning("year", weight=USUAL)]
    if has("place"):
        return [Meaning("place", weight=USUAL)]
    if has("day"):
        return [Meaning("look_day", weight=POSSIBLE), Meaning("date", weight=POSSIBLE)]
    if has("total"):
        return [Meaning("eggs_set", weight=POSSIBLE), Meaning("ignore", weight=POSSIBLE)]
    return []


def _ambiguous(roles: frozenset) -> list[Meaning]:
    """Words that name a count, a date or a batch alike: set, hatch, egg, number."""
    has = roles.__contains__
    if has("set"):
        if has("date") or has("time"):
            return [Meaning("set_at", weight=PLAIN)]
        if has("day") and not roles & {"egg", "number"}:
            return [Meaning("look_day", weight=USUAL), Meaning("set_at", weight=USUAL)]
        if has("batch") and not has("egg"):
            return [Meaning("batch", weight=USUAL), Meaning("set_at", weight=WEAK), Meaning("eggs_set", weight=WEAK)]
        if roles & {"egg", "number"}:
            return [
                Meaning("eggs_set", weight=PLAIN),
                Meaning("set_at", weight=POSSIBLE),
                Meaning("batch", weight=WEAK),
            ]
        return [Meaning("set_at", weight=USUAL), Meaning("eggs_set", weight=USUAL), Meaning("batch", weight=WEAK)]
    if has("hatch"):
        if has("date"):
            return [Meaning("hatch_at", weight=PLAIN), Meaning("due", weight=WEAK)]
        if has("batch"):
            return [Meaning("batch", weight=PLAIN), Meaning("hatched", weight=WEAK)]
        if has("egg"):
            return [Meaning("hatched", weight=POSSIBLE), Meaning("eggs_set", weight=WEAK)]
        return [
            *_ends_of_hatch(roles),
            Meaning("hatched", weight=USUAL),
            Meaning("hatch_at", weight=USUAL),
            Meaning("batch", weight=USUAL),
        ]
    if has("egg"):
        if has("in"):
            return [Meaning("eggs_set", weight=PLAIN)]
        if roles & {"batch"} or has("number"):
            return [Meaning("eggs_set", weight=USUAL + (0.5 if has("number") else 0.0)), Meaning("egg", weight=USUAL)]
        return [Meaning("eggs_set", weight=USUAL + 0.5), Meaning("egg", weight=POSSIBLE + 0.5)]
    if has("batch"):
        return [Meaning("batch", weight=USUAL + 0.5), Meaning("egg", weight=0.0)]
    if has("date"):
        return []
    if has("count"):
        return [Meaning("eggs_set", weight=USUAL), Meaning("egg", weight=WEAK)]
    return [Meaning("batch", weight=POSSIBLE), Meaning("egg", weight=POSSIBLE), Meaning("eggs_set", weight=POSSIBLE)]
