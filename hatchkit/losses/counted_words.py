"""What was not counted, in sentences for breeders: what they cannot be told, and why."""

from __future__ import annotations

from hatchkit.words.spelling import eggs_words, listed, named_batches
from hatchkit.words.stage_names import in_words


def not_counted_words(left: dict, number: int) -> list[str]:
    """What the batches of a breakdown hold no count of (`number`: batches in all): clears first, then the rest."""
    lines, others = [], {}
    for stage, batches in left.items():
        if stage == "clear":
            lines.append(
                f"Clears were not counted in {_with_eggs(batches)}: how many of these eggs held an embryo is not "
                "known, and shares of eggs not clear or infertile leave them out."
            )
        elif stage != "infertile":
            others.setdefault(tuple(batches), []).append("eggs removed" if stage == "removed" else in_words(stage))
    if others:
        said = "; ".join(
            f"{listed(stages)} in {f'all {number} batches' if len(batches) == number > 1 else named_batches(batches)}"
            for batches, stages in others.items()
        )
        lines.append(f"Not counted to the end: {said}. Of these at least so many were lost, and no interval is given.")
    return lines


def _with_eggs(batches: dict) -> str:
    """Batches with their eggs set: "batches G2 and G3 (24 eggs)"."""
    return f"{named_batches(list(batches))} ({eggs_words(sum(batches.values()))} eggs)"


def not_compared_words(left: dict, compared: set) -> list[str]:
    """Which stages of which batches were not compared for want of a count."""
    said: dict[tuple, list] = {}
    for stage, batches in left.items():
        # A sheet without a column of culls, say, is no news; one that has it only here and there is.
        if stage not in ("infertile", "unaccounted", "culled", "pipped_dead", "removed") or stage in compared:
            said.setdefault(tuple(batches), []).append(in_words(stage))
    if not said:
        return []
    told = "; ".join(f"{listed(stages)} of {named_batches(batches)}" for batches, stages in said.items())
    return [f"Not compared, nor expected from, because these (or the clears) were not counted: {told}."]
