"""The sentences about one batch that met an excursion."""

from __future__ import annotations

from hatchkit.relate.words import in_ten, look_words
from hatchkit.words.spelling import many

#: With fewer other batches the comparison rests on the prior, not on this person's own losses.
FEW_OTHERS = 5


def one_batch_in_words(found) -> str:
    """Short verdict on one batch, its sureness, and what else was different.

    Parameters
    ----------
    found : OneBatch
    """
    from hatchkit.relate.one_batch import later_and_high

    parts = [f"Batch {found.batch}: {found.verdict}."]
    hit = found.windows[found.windows["part"] == "with excursion"]
    if len(hit):
        parts.append(
            f"In the {many(len(hit), 'window', 'windows')} with the excursion {hit['died'].sum():.0f} of "
            f"{hit['at_risk'].iloc[0]:.0f} embryos died; {many(found.others, 'other batch', 'other batches')} "
            f"would lead one to expect {hit['expected'].sum():.1f}. So many or more come by luck in "
            f"{in_ten(found.chance)} such batches."
        )
        high = later_and_high(found.windows)
        if high:
            before = " and ".join(map(look_words, high))
            parts.append(f"A later window also held more than usual (before {before}).")
        if found.others < FEW_OTHERS:
            others = many(found.others, "batch", "batches")
            parts.append(f"With only {others} to compare with, this leans on the losses of other people's flocks.")
    counts = dict(zip(found.ages["when"], found.ages["dead"], strict=True))
    if sum(counts.values()):
        parts.append(
            f"Of its dead, {counts['on or after']:.0f} died on or after the day of the excursion, "
            f"{counts['before']:.0f} before it, and for {counts['may be either']:.0f} the records leave it open."
        )
    parts += found.besides
    return " ".join(parts)
