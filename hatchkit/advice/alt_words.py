"""What the pictures of the advice room show, for readers who cannot see them."""

from __future__ import annotations

from hatchkit.words.stage_names import in_words
from hatchkit.words.tables import percent


def ranked_causes(causes) -> str:
    """Bars of the weight of each candidate cause."""
    first = causes.table.head(3)
    told = "; ".join(f"{name} {percent(share)}" for name, share in zip(first["name"], first["share"], strict=True))
    return f"Weights of the candidate causes of batch {causes.batch} as bars. The first three: {told}."


def what_if(result) -> str:
    """Bars of eggs lost by stage and cause."""
    table = result.table
    stages = "; ".join(f"{row.name} {row.eggs:.0f}" for row in table[table["block"] == "stage"].itertuples(index=False))
    return (
        f"Eggs of the season lost by stage as bars ({stages}), with the usual loss as a diamond; then eggs "
        "put down to "
        "causes; then the chicks that a season without excursions would have given more or fewer, with its "
        "range."
    )


def drawings(guide) -> str:
    """The drawings of the breakout guide."""
    looks = "; ".join(guide.loc[guide["drawing"] != "none", "look"])
    return f"Simple drawings of opened eggs, blunt end with the air cell on top, in this order: {looks}."


def ledger(table) -> str:
    """The ledger of one batch as a falling bar chart."""
    rows = table.set_index("stage")["eggs"]
    lost = ", ".join(f"{eggs:.0f} {in_words(stage)}" for stage, eggs in rows.items() if stage != "hatched" and eggs > 0)
    return f"From {table['set'].iloc[0]:.0f} eggs set to {rows['hatched']:.0f} good chicks: {lost or 'nothing lost'}."


def ages(batch) -> str:
    """Loss by age of one batch against its species."""
    return (
        f"Share of embryos dead by age as boxes between the looks at the eggs: batch {batch} striped, all "
        "batches of its "
        "species outlined with their 95 % band in grey."
    )


def tray(batch, table) -> str:
    """The map of a tray."""
    fates = ", ".join(f"{count} {fate.replace('_', ' ')}" for fate, count in table["fate"].value_counts().items())
    return f"Where on the tray each egg of batch {batch} lay and what became of it: {fates}."
