"""Sentences about a whole season: the notes, and the season without its excursions."""

from __future__ import annotations

from hatchkit.stage_names import in_words

STAGE_SURE = "sure of the count; the cause is not known, and the published level is itself rough"

STAGE_NEXT = {
    "clear": "Open the clears of the next candling: infertile and dead too early to see need different cures.",
    "early": "Look at storage and the first days' warmth, and open the early dead to see how far they came.",
    "mid": "Deaths of the middle days are usually few: look at warmth, germs and the parents' feed.",
    "late": "Weigh the eggs and check the hatching warmth; open the late dead and write down how they lie.",
    "pipped_dead": "Look at humidity and air during the hatch, and keep the lid shut.",
    "culled": "Look at warmth in the last week and at hatching; ask a veterinarian if chicks are deformed.",
    "removed": "Look at the nests, cracks and washing, and take out rotten eggs early.",
}


def stage_title(stage) -> str:
    """Name of a note on a stage."""
    return f"More {in_words(stage)} than is published, without a cause that stands out"


def stage_next(stage) -> str:
    """What to do about a stage."""
    return STAGE_NEXT[stage]


def how_sure(share) -> str:
    """How sure a cause is, from its highest weight in any batch."""
    if share >= 0.8:
        return "fairly sure in at least one batch"
    if share >= 0.5:
        return "probable, not sure"
    return "a guess among others"


def notes(table) -> str:
    """The season notes as sentences, in order."""
    if table.empty:
        return "Nothing in this season cost enough eggs to stand out from ordinary luck."
    told = []
    for row in table.to_dict("records"):
        where = f" in batch{'es' if ',' in row['batches'] else ''} {row['batches']}" if row["batches"] else ""
        told.append(
            f"{row['rank']}. {row['what']}{where}: about {row['eggs_lost']:.0f} eggs "
            f"({row['how_sure']}). {row['do_next']}"
        )
    return "\n".join(told)


def what_if(result) -> str:
    """What the season lost, and what it would have given without the excursions."""
    facts, table = result.facts, result.table
    worst = table[table["block"] == "stage"].sort_values("eggs", ascending=False).iloc[0]
    text = (
        f"Of {facts['eggs_set']:.0f} eggs {facts['hatched']:.0f} gave good chicks; most were lost as "
        f"{worst['name']} "
        f"({worst['eggs']:.0f})."
    )
    causes = table[table["block"] == "cause"]
    if len(causes):
        first = causes.iloc[0]
        text += f" The cause with most eggs to it is: {first['name'].lower()}, about {first['eggs']:.0f}."
    if facts["chicks_back"] != facts["chicks_back"]:
        return text + " What a season without excursions would have given cannot be told from these records."
    more = "more" if facts["chicks_back"] >= 0 else "fewer"
    return (
        f"{text} Without the excursions the season would plausibly have given "
        f"{abs(facts['chicks_back']):.0f} {more} "
        f"chicks (95 % range {facts['chicks_low']:.0f} to {facts['chicks_high']:.0f}; on harm by excursions: "
        f"{facts['verdict']})."
    )


def standing(table, batch) -> str:
    """How one batch stands among the season's."""
    if batch not in set(table["batch"]):
        return (f"Batch {batch}: no developing egg whose end is on record (all clear, or the hatch not over), so it "
                "cannot be set beside the others.")
    row = table[table["batch"] == batch].iloc[0]
    place = int((table["away"] < row["away"]).sum()) + 1
    order = "the poorest" if place == 1 else f"number {place} from the poorest"
    far = (
        "far below"
        if row["away"] <= -2
        else "below"
        if row["away"] <= -1
        else "near"
        if row["away"] < 1
        else "above"
    )
    return (
        f"Batch {batch}: {row['hatched']:.0f} good chicks of {row['developing']:.0f} developing eggs "
        f"({100 * row['share_hatched']:.0f} %), {far} the {100 * row['usual']:.0f} % that is usual for this "
        "person's "
        f"other batches of the species; {order} of {len(table)} batches, spread between batches allowed for."
    )
