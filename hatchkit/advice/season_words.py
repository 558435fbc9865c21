"""Sentences about a whole season: the notes, and the season without its excursions."""

from __future__ import annotations

from hatchkit.advice.cause_words import ASSUMED
from hatchkit.advice.causes import CONFIDENT, MOST_UNACCOUNTED
from hatchkit.stage_names import in_words
from hatchkit.tables import percent

STAGE_SURE = "sure of the count; the cause is not known, and the published level is of hens and itself rough"

STAGE_ASSUMED = ("the stage is partly assumed, as many died between two looks; the cause is not known, and the "
                 "published level is of hens and itself rough")

STAGE_NEXT = {
    "clear": "Open the clears of the next candling: infertile and dead too early to see need different cures.",
    "early": "Look at storage and the first days' warmth, and open the early dead to see how far they came.",
    "mid": "Deaths of the middle days are usually few: look at warmth, germs and the parents' feed.",
    "late": "Weigh the eggs and check the hatching warmth; open the late dead and write down how they lie.",
    "pipped_dead": "Look at humidity and air during the hatch, and keep the lid shut.",
    "culled": "Look at warmth in the last week and at hatching; ask a veterinarian if chicks are deformed.",
    "removed": "Look at the nests, cracks and washing, and take out rotten eggs early.",
}

UNACCOUNTED = "Eggs without a known end"

UNACCOUNTED_SURE = "sure of the count; clear, dead or broken, nobody knows"

UNACCOUNTED_NEXT = ("Write down every egg: clears and dead at each candling, and what was left in the machine after "
                    "the hatch. Until then these batches' shares are only known within a range.")


def stage_title(stage) -> str:
    """Name of a note on a stage."""
    return f"More {in_words(stage)} than is published, without a cause that stands out"


def stage_next(stage) -> str:
    """What to do about a stage."""
    return STAGE_NEXT[stage]


def how_sure(share) -> str:
    """How sure a cause is, from its highest weight in any batch."""
    if share >= CONFIDENT:
        return "fairly sure in at least one batch"
    if share >= 0.5:
        return "probable, not sure"
    return "a guess among others"


def notes(table) -> str:
    """The season notes as sentences, in order."""
    if table.empty:
        return table.attrs.get("nothing") or nothing(1, [])
    told = []
    for row in table.to_dict("records"):
        where = f" in batch{'es' if ',' in row['batches'] else ''} {row['batches']}" if row["batches"] else ""
        told.append(
            f"{row['rank']}. {row['what']}{where}: about {row['eggs_lost']:.0f} eggs "
            f"({row['how_sure']}). {row['do_next']}"
        )
    return "\n".join(told)


def nothing(batches, unusual) -> str:
    """That no cause and no stage stands out, of so many finished batches of which some may be unusual all the same."""
    if not batches:
        return "No batch has its end on record, so nothing can be said of what repays attention."
    text = "No cause and no stage cost enough eggs to be put first."
    if not unusual:
        return f"{text} Nothing here stands out from ordinary luck."
    named = f"batch{'es' if len(unusual) > 1 else ''} {', '.join(unusual)}"
    return (f"{text} But not all is ordinary luck: {named} lost more at some stage than luck often gives; see the "
            "section on bad luck.")


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
        share = (f", {part} of them by the usual course of deaths, as they died between two looks"
                 if facts["assumed"] > ASSUMED * worst["eggs"] else "")
        text += f"; the largest known loss is {worst['name']} ({worst['eggs']:.0f}{share})"
    text += "."
    if facts["left_out"]:
        text += (f" Not among them: {facts['left_out_eggs']:.0f} eggs of batch{'es' if facts['left_out'] > 1 else ''} "
                 f"{facts['left_out_names']}, whose hatch is not over or whose records cannot be read.")
    if facts["probable"]:
        text += f" Of the causes that are probable in some batch, most eggs go to: {facts['probable']}."
    else:
        text += " No cause is probable in any batch."
    if facts["chicks_back"] != facts["chicks_back"]:
        return (f"{text} Whether the season would have given more without its excursions cannot be told from these "
                "records.")
    more = "more" if facts["chicks_back"] >= 0 else "fewer"
    return (
        f"{text} If the surplus of deaths in the windows with excursions came from these, the season would have given "
        f"about {abs(facts['chicks_back']):.0f} {more} chicks without them (95 % range {facts['chicks_low']:.0f} to "
        f"{facts['chicks_high']:.0f}; on harm by excursions: {facts['verdict']})."
    )


def standing(table, batch) -> str:
    """How one batch stands among the season's."""
    if batch not in set(table["batch"]):
        return (f"Batch {batch}: no developing egg whose end is on record (all clear, or the hatch not over), so it "
                "cannot be set beside the others.")
    row = table[table["batch"] == batch].iloc[0]
    chicks, least = row["hatched"], row["developing"]
    lowest, highest = _far(row["away_low"]), _far(row["away_high"])
    if row["unaccounted"]:
        most, far = least + row["unaccounted"], lowest if lowest == highest else f"anywhere from {lowest} to {highest}"
        shares = [percent(row[name]) for name in ("share_high", "share_low")]
        of = (f"{shares[0]} of {least:.0f} developing eggs if none of those held an embryo, {shares[1]} of {most:.0f} "
              "if all did" if shares[0] != shares[1] else f"{shares[0]} of {least:.0f} to {most:.0f} developing eggs")
        have = "has" if round(row["unaccounted"]) == 1 else "have"
        told = (f"Batch {batch}: {row['unaccounted']:.0f} of its eggs {have} no known end. It gave {chicks:.0f} good "
                f"chick{'s' if chicks != 1 else ''}: {of}; that is {far}")
    else:
        told = (f"Batch {batch}: {chicks:.0f} good chicks of {least:.0f} developing eggs (clears and eggs taken out "
                f"left aside), {percent(row['share_hatched'])}, {lowest}")
    if row["away_low"] > -1:
        after = NOT_POOR
    else:
        after = "" if row["clears_counted"] else NO_CLEARS
    return f"{told} {_usual(row)}{_place(table, row)}.{after}"


NO_CLEARS = (" Its clears were never counted, so an unopened egg that is put down as dead, or has no known end, may "
             "have been clear.")

NOT_POOR = " By this measure it was not a poor hatch."


def _far(away) -> str:
    return "far below" if away <= -2 else "below" if away <= -1 else "near" if away < 1 else "above"


def _usual(row) -> str:
    """What the batch is set beside."""
    if row["others"] == 0:
        return f"the {percent(row['usual'])} of a published ledger (no other batch of the species is on record)"
    others = "other batch" if row["others"] == 1 else f"{row['others']} other batches"
    return f"the {percent(row['usual'])} that is usual by your {others} of the species and a published ledger"


def _place(table, row) -> str:
    if len(table) == 1:
        return ""
    place = int((table["away"] < row["away"]).sum()) + 1
    order = "the poorest" if place == 1 else f"number {place} from the poorest"
    many = table["unaccounted"] > MOST_UNACCOUNTED * (table["developing"] + table["unaccounted"])
    guess = ", half of the eggs without a known end taken for embryos" if many.any() else ""
    return f"; {order} of {len(table)} batches, spread between batches allowed for{guess}"
