"""Sentences about a whole season: what it lost, and the season without its excursions."""

from __future__ import annotations

from hatchkit.advice.cause_words import ASSUMED


def what_if(result) -> str:
    """What the season lost, and what it would have given without the excursions."""
    facts, table = result.facts, result.table
    stages = table[(table["block"] == "stage") & (table["key"] != "unaccounted")]
    worst, gone = stages.sort_values("eggs", ascending=False).iloc[0], facts["unaccounted"]
    text = f"Of {facts['eggs_set']:.0f} eggs set {facts['hatched']:.0f} gave good chicks"
    if gone:
        text += f" and {gone:.0f} {'has' if round(gone) == 1 else 'have'} no known end"
    if worst["eggs"]:
        part = "all" if round(facts["assumed"]) == round(worst["eggs"]) else f"{facts['assumed']:.0f}"
        share = (
            f", {part} of them by the usual course of deaths, as they died between two looks"
            if facts["assumed"] > ASSUMED * worst["eggs"]
            else ""
        )
        text += f"; the largest known loss is {worst['name']} ({worst['eggs']:.0f}{share})"
    text += "."
    if facts["left_out"]:
        text += (
            f" Not among them: {facts['left_out_eggs']:.0f} eggs of batch{'es' if facts['left_out'] > 1 else ''} "
            f"{facts['left_out_names']}, whose hatch is not over or whose records cannot be read."
        )
    if facts["probable"]:
        text += f" Of the causes that are probable in some batch, most eggs go to: {facts['probable']}."
    else:
        text += " No cause is probable in any batch."
    if facts["chicks_back"] != facts["chicks_back"]:
        return (
            f"{text} Whether the season would have given more without its excursions cannot be told from these records."
        )
    more = "more" if facts["chicks_back"] >= 0 else "fewer"
    return (
        f"{text} If the surplus of deaths in the windows with excursions came from these, the season would have given "
        f"about {abs(facts['chicks_back']):.0f} {more} chicks without them (95 % range {facts['chicks_low']:.0f} to "
        f"{facts['chicks_high']:.0f}; on harm by excursions: {facts['verdict']})."
    )
