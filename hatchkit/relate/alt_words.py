"""What the pictures of losses beside temperature show, in a sentence each."""

from __future__ import annotations

from hatchkit.relate.words import look_words, times
from hatchkit.words.spelling import many

#: What the figure without statistics says under it.
SHOWS_NOT_PROVES = (
    "This picture lays losses beside temperatures. It shows, and proves nothing: whether the two go "
    "together more than chance would have it, the verdict says."
)


def hazard_alt(found) -> str:
    """Alt text of the figure of hazard ratios by window."""
    rows = found.windows[found.windows["hazard_ratio"].notna()]
    if rows.empty:
        return "Rate of death in exposed windows compared with the others: no window can be compared."
    said = [
        f"{look_words(row.name_)}: {times(row.hazard_ratio)} ({times(row.low)} to {times(row.high)})"
        for row in rows.rename(columns={"name": "name_"}).itertuples()
    ]
    return (
        "Rate of death in exposed windows as a multiple of the rate in others, with 95 % intervals, by the look "
        "that "
        f"closes the window. {'; '.join(said)}."
    )


def dose_alt(found) -> str:
    """Alt text of the figure of each batch's losses against its dose."""
    table = found.batches
    hit = table[table["exposed"].astype(bool)] if len(table) else table
    above = int((hit["share_died"] > hit["share_expected_high"]).sum()) if len(hit) else 0
    return (
        f"Share of embryos lost in {many(len(table), 'batch', 'batches')} against the dose of heat and cold: "
        f"{len(hit)} exposed, of which {above} lost more than unexposed batches plausibly would."
    )


def exposure_alt(exposure) -> str:
    """Alt text of the plain figure of losses beside exposure."""
    dark = int((~(exposure["share_logged"] > 0)).sum())
    return (
        f"Deaths in {many(len(exposure), 'window', 'windows')} of "
        f"{many(exposure['batch'].nunique(), 'batch', 'batches')} beside the degree-hours that the eggs were too warm "
        f"or too cold; {many(dark, 'window has', 'windows have')} no log."
    )
