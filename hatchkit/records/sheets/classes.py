"""Words of a heading -> the class of eggs that its column counts, if they name one."""

from __future__ import annotations

from dataclasses import replace

from hatchkit.records.sheets.fields import PLAIN, POSSIBLE, USUAL, WEAK, Look, Meaning

#: Words of a look from which eggs were taken out, where none says why.
_OUT = frozenset("out day candle first second third egg".split())


def by_class(roles: frozenset, look: Look) -> list[Meaning]:
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
    if has("shell") or has("dead") and has("stretch"):
        # "Died in the hatcher" is of the days after the move, and no look on its day.
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
    if "left" in roles and roles & {"clear", "dead"} and roles & {"removed", "out"}:
        # "Left (clears out)": the loss is told to say why fewer are left.
        losses = _of_class(roles - {"left", "removed", "out"}, look, within)
        return [Meaning("left", look, PLAIN), *(replace(loss, weight=loss.weight - 1.5) for loss in losses)]
    return _of_class(roles, look, within)


def _of_class(roles, look: Look, within: bool) -> list[Meaning]:
    has = roles.__contains__
    if has("not") and has("fertile"):
        return [Meaning("clear", look, PLAIN)]
    if has("clear") and has("dead"):
        return [Meaning("clear", look, POSSIBLE), Meaning("dead", look, POSSIBLE)]
    if has("clear"):
        return [Meaning("clear", look, PLAIN, within)]
    if "bad" in roles and (look or "candle" in roles):
        return [Meaning("dead", look, PLAIN, within), Meaning("removed", look, POSSIBLE, within)]
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
    if has("out") and look and not look.transfer and roles <= _OUT:
        # "D7 out" was taken out, clear or dead: the sums or the person tell which.
        return [Meaning("dead", look, POSSIBLE), Meaning("clear", look, POSSIBLE)]
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
    found = [Meaning("dead", look, PLAIN, within), Meaning("dis", weight=0.0 if not look else WEAK)]
    # "Addled/cracked" beside the dead of the same look are the eggs that were taken out.
    return found + [Meaning("removed", look, USUAL)] * bool(roles & {"rotten", "cracked", "removed"})


def ends_of_hatch(roles) -> list[Meaning]:
    """When the first or the last chick came."""
    if "first" in roles:
        return [Meaning("first_hatch_at", weight=PLAIN)]
    return [Meaning("last_hatch_at", weight=PLAIN)] if "late" in roles else []


def _hatched(roles) -> list[Meaning]:
    return ends_of_hatch(roles) + _chicks(roles)


def _chicks(roles) -> list[Meaning]:
    has = roles.__contains__
    if roles & {"date", "time", "day"} and not has("number"):
        return [Meaning("hatch_at", weight=PLAIN), Meaning("hatched", weight=POSSIBLE)]
    if has("alive") or has("left"):
        return [Meaning("hatched", weight=USUAL), Meaning("healthy", weight=POSSIBLE)]
    strong = PLAIN if has("hatched") and not has("batch") else USUAL + 0.5
    return [Meaning("hatched", weight=strong), Meaning("hatch_at", weight=POSSIBLE), Meaning("batch", weight=WEAK)]
