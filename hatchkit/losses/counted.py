"""What of a batch was counted? A blank is not a nought: it takes a number, or records that explain every egg."""

import math
from typing import NamedTuple

from hatchkit.losses.egg_rows import text
from hatchkit.losses.schedule import by_batch, count, number, schedule, species_figures

#: Columns of the sheet that tell of embryos found dead, not pipped, when the hatch was taken off.
DEAD_AT_END = ("dead_in_shell", "broken_early", "broken_mid", "broken_late")

#: Columns that tell of eggs taken out for another reason than being clear or dead.
TAKEN_OUT = ("removed", "contaminated", "cracked")

CHICKS = ("hatched", "culled")
BARREN = ("clear", "infertile")


class Counted(NamedTuple):
    """What the records of one batch hold a number for.

    Attributes
    ----------
    kinds : frozenset of str
        Of hatched, culled, clear, dead, pipped_dead and removed those that were counted to the end.
    looks : frozenset of str
        Looks at which the dead embryos were counted; hatch is the take-off.
    """

    kinds: frozenset
    looks: frozenset

    def stage(self, stage: str) -> bool:
        """Whether a stage of the ledger was counted; eggs nobody can account for always are."""
        kind = "clear" if stage in BARREN else stage
        known = ("hatched", "culled", "clear", "pipped_dead", "removed")
        return stage == "unaccounted" or (kind if kind in known else "dead") in self.kinds


def counted(season) -> dict[str, Counted]:
    """batch -> what was counted, for all batches that have fates."""
    return season.once(("counted",), lambda: _counted(season))


def _counted(season) -> dict[str, Counted]:
    looks, eggs, fates = by_batch(season.looks), by_batch(season.eggs), by_batch(season.fates)
    return {
        str(row["batch"]): batch_counted(
            row,
            schedule(row, looks.get(str(row["batch"]), []), species_figures(row, season.species_table))[0],
            eggs.get(str(row["batch"]), []),
            fates[str(row["batch"])],
        )
        for row in season.batches.to_dict("records")
        if str(row["batch"]) in fates
    }


def batch_counted(row: dict, looks: list, eggs: list[dict], fates: list[dict]) -> Counted:
    """What was counted of one batch.

    Parameters
    ----------
    row : dict
        The batch's record.
    looks : list of Look
        Its looks in order, the take-off last.
    eggs, fates : list of dict
        Its rows of those tables.
    """
    kept = {name for name in (*CHICKS, "pipped_dead", "broken_infertile", *DEAD_AT_END, *TAKEN_OUT)
            if not math.isnan(number(row.get(name)))}  # fmt: skip
    closes = all(fate["fate"] != "unaccounted" for fate in fates)
    each = len(eggs) >= count(row.get("eggs_set")) and any(text(egg.get("outcome")) for egg in eggs)
    found = {(fate["fate"], fate["found_at"]) for fate in fates}
    dead_at = {
        look.name
        for look in looks
        if closes
        or not math.isnan(look.dead)
        or ("dead", look.name) in found
        or (each and any(text(egg.get("outcome" if look.name == "hatch" else look.name)) for egg in eggs))
    }
    if kept & set(DEAD_AT_END):
        dead_at.add("hatch")
    fate_kinds = {fate["fate"] for fate in fates}
    rows = [fate for fate in fates if str(fate["egg"] or "")]
    by_count = any((fate["fate"], fate["found_at"], str(fate["egg"] or "")) == ("dead", "hatch", "") for fate in fates)
    kinds = {
        "hatched": closes or each or "hatched" in kept or any(fate["fate"] in CHICKS for fate in rows),
        "culled": each or "culled" in kept | fate_kinds or (closes and "hatched" not in fate_kinds),
        "clear": each or _clears(kept, looks, rows, closes=closes, unopened=by_count),
        # A transfer at which nobody candled hides no death: the egg is found at the take-off.
        "dead": closes or all(look.name in dead_at for look in looks if look.name != "transfer"),
        # Dead in shell may hold the pipped where these were not counted apart.
        "pipped_dead": each or "pipped_dead" in kept | fate_kinds or (closes and not by_count),
        "removed": each
        or closes
        or "removed" in fate_kinds
        or bool(kept & set(TAKEN_OUT))
        or any(not math.isnan(look.removed) for look in looks),
    }
    return Counted(frozenset(kind for kind, known in kinds.items() if known), frozenset(dead_at))


def _clears(kept: set, looks: list, rows: list[dict], *, closes: bool, unopened: bool) -> bool:
    """Whether the clears were counted: at the first candling, by opening what was left, or egg by egg."""
    first = looks[0]
    if not math.isnan(first.clear) or "broken_infertile" in kept or any(row["fate"] in BARREN for row in rows):
        return True
    candled = any(not math.isnan(eggs) for look in looks for eggs in (look.clear, look.dead, look.removed))
    # Nobody looked into these eggs: what is called dead in shell may have been clear.
    unseen = unopened and not kept & {"broken_early", "broken_mid", "broken_late"}
    return closes and (candled or not unseen)
