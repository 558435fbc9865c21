"""What stands around or beside a row rather than in it: dates, machines, birds of a section line, and remarks."""

from __future__ import annotations

import re
from dataclasses import replace

import numpy as np
import pandas as pd

from hatchkit.records import times
from hatchkit.records.sheets.cells import mentions, text_of
from hatchkit.records.sheets.lexicon import all_roles, tokens
from hatchkit.records.sheets.parts import Part


def count_remarks(part: Part, looks, layout, special, context) -> None:
    """What the words beside a count or in the notes add, where the eggs then add up (or are a part of a count)."""
    frame = part.batches
    ends = {
        "pipped_dead": {"pipped"},
        "removed": {"removed", "rotten", "cracked"},
        "dead_in_shell": {"shell", "unhatched"},
    }
    told: dict[int, list] = {}
    for place, cells in special.items():
        for i, count in cells.items():
            if count.mentions:
                told.setdefault(i, []).extend((place, mention) for mention in count.mentions)
            if count.whole is not None and "eggs_set" in frame and np.isnan(frame.at[i, "eggs_set"]):
                frame.at[i, "eggs_set"] = count.whole
    for i, note in enumerate(frame["notes"]):
        if note:
            told.setdefault(i, []).extend((None, mention) for mention in mentions(note, context.language))
    for i, said in told.items():
        if frame.at[i, "dis_derived"] and sum(m.count for _, m in said) == frame.at[i, "dead_in_shell"]:
            # What a remark tells of are all the eggs that were worked out to be left: "2 dead in shell, 1 pipped".
            said = [(place, replace(mention, within=True)) for place, mention in said]
        for place, mention in said:
            _one_remark(frame, looks, layout, i, place, mention, ends, part)


def _one_remark(frame, looks, layout, i, place, mention, ends, part) -> None:
    rest = frame.at[i, "rest"]
    target = next((name for name, roles in ends.items() if mention.roles & roles), None)
    at_look = next(
        (
            look
            for number, look in enumerate(looks)
            if number < len(layout.looks) and place is not None and place in layout.looks[number].fields.values()
        ),
        None,
    )
    # "21 - 1 drowned at a week" tells of a chick.
    of_chicks = place in layout.fields.get("hatched", ()) and target == "removed" and mention.roles <= {"removed"}
    if target is None or of_chicks or mention.roles & {"fresh", "weak", "set"}:
        return
    known = frame.at[i, target] if target in frame else np.nan
    inside = (
        mention.within
        or place is not None
        and any(place in layout.fields.get(name, ()) for name in ("dis", "unhatched"))
    )
    if target == "pipped_dead" and inside and np.isnan(known) and frame.at[i, "dead_in_shell"] >= mention.count:
        frame.at[i, "pipped_dead"] = mention.count
        frame.at[i, "dead_in_shell"] -= mention.count
    elif target == "removed" and at_look is not None and at_look["derived"][i] and at_look["dead"][i] >= mention.count:
        # The loss that was worked out from the eggs left is the one that the words tell of.
        at_look["dead"][i] -= mention.count
        at_look["removed"][i] = mention.count
        frame.at[i, "removed"] = mention.count + (0.0 if np.isnan(known) else known)
    elif (
        not np.isnan(rest)
        and rest >= mention.count
        and (np.isnan(known) or known == 0)
        and rest == mention.count
        or (at_look is not None and not np.isnan(rest) and rest >= mention.count and np.isnan(known))
    ):
        frame.at[i, target] = mention.count
        frame.at[i, "rest"] = rest - mention.count
        if at_look is not None and target == "removed":
            at_look["removed"][i] = mention.count
    else:
        return
    part.notes.append(("remark_counted", dict(row=frame.at[i, "row"], count=mention.count, field=target)))


def remarks_to_notes(part: Part, columns, special) -> None:
    """The words beside a count are remarks of the batch too: "14 (power cut)", "none - power cut day 9".

    Parameters
    ----------
    part : Part
        Its batches get the words at the end of their notes.
    columns : list of list
        The cells of each column.
    special : dict
        Place of a column -> row -> Count of each odd cell.
    """
    said = [[note] if isinstance(note, str) else [] for note in part.batches["notes"]]
    for place, cells in special.items():
        for i, count in cells.items():
            if words := _beside(columns[place][i], count):
                said[i].append(words)
    part.batches["notes"] = ["; ".join(parts) or None for parts in said]


def _beside(cell, count) -> str:
    """What stands in brackets or behind a dash, comma or colon; "" where that is no words ("36 eggs", "4?")."""
    if count.value is None or count.code not in ("remark", "words", "about", "unsure"):
        return ""
    parts = re.split(r"\(|[,;:]\s| [-\u2013] ", text_of(cell), maxsplit=1)
    words = parts[1].strip(" .)") if len(parts) > 1 else ""
    return words if re.search(r"[^\W\d_]{3}", words) else ""


def fill_from_around(batches: pd.DataFrame, block, context) -> None:
    """Give batches what their section line says ("Hatch 2, in on 7 April, big machine"), where the row is silent.

    Parameters
    ----------
    batches : DataFrame
        section; changed in place.
    block : Block
    context : Context
    """
    title = block.titles[-1] if block.titles else ""
    texts = [section or title for section in batches["section"]]
    read = {text: _said(text, context) for text in dict.fromkeys(texts)}
    if "set_at" not in batches or batches["set_at"].isna().all():
        batches["set_at"] = pd.Series([read[text]["set_at"] for text in texts], dtype="datetime64[us]")
        batches["set_at_hour"] = False
    counted = _counted(batches["section"])
    if counted and not ("name" in batches and batches["name"].notna().any()):
        batches["name"] = counted
    for name in ("incubator", "name"):
        if name in batches and batches[name].notna().any():
            continue
        found = [
            read[text][name] if section or name == "incubator" or read[text]["set_at"] is not pd.NaT else None
            for text, section in zip(texts, batches["section"], strict=True)
        ]
        if any(found):
            batches[name] = found


def _counted(sections) -> list[str] | None:
    """Sections that one word and a running number name ("Card 21", "Card 22"), or None."""
    found = [re.fullmatch(r"\W*([^\W\d][^\d]{1,23}?)\W*(\d{1,4})\W*", str(section)) for section in sections]
    if len(found) < 2 or not all(found) or len({match[1].lower() for match in found}) > 1:
        return None
    return [match[0].strip() for match in found] if len({match[2] for match in found}) == len(found) else None


def _day_of_setting(text: str, hits, context):
    """The date behind a word for setting, else the first not expected ("Hatch 2, due 3 May, set 12 April")."""
    dated, end = [], 0
    for hit in hits:
        if hit.kind == "date" and not np.isnat(np.datetime64(hit.moment)):
            dated.append((all_roles(tokens(text[end : hit.start], context.language)), pd.Timestamp(hit.moment)))
            end = hit.end
    plain = [moment for roles, moment in dated if roles & {"set"}]
    plain += [moment for roles, moment in dated if not roles & {"expected"}]
    return plain[0] if plain else pd.NaT


def _said(text: str, context) -> dict:
    """set_at, incubator and name that a section line or title tells."""
    found = dict(set_at=pd.NaT, incubator=None, name=None)
    if not text:
        return found
    year = context.year if isinstance(context.year, int) else None
    # "Hatch 1 - 03/03/2025": the number in front is no part of the date.
    whole = re.search(r"(?<!\d)\d{1,2}[./-]\d{1,2}[./-]\d{4}(?!\d)|(?<!\d)\d{4}-\d{2}-\d{2}(?!\d)", text)
    text_of_date = text[whole.start() :] if whole else text
    found["set_at"] = _day_of_setting(text_of_date, times.find(text_of_date, context.day_first, year), context)
    words = tokens(text, context.language)
    for part in re.split(r"[,;:(]| - | – ", text):
        roles = all_roles(tokens(part, context.language))
        if roles & {"incubator", "hatcher"} and not roles & {"hatched"} and found["incubator"] is None:
            label, colon, rest = text.partition(":")
            found["incubator"] = (
                rest.strip() if colon and part.strip() == label.strip() and rest.strip() else part.strip()
            )
    for place, token in enumerate(words[:4]):
        if token.roles & {"batch", "hatch", "set"}:
            near = [
                other
                for other in words[max(place - 1, 0) : place + 3]
                if other.number is not None and other.number < 400
            ]
            if near:
                match = re.match(r"\W*([^\W\d_]+\.?\s+(?:n[r.o°º]*\s*)?\d+|\d+\.?(?:\s+[^\W\d_]+)?)", text)
                found["name"] = match[1].strip() if match else str(near[0].number)
                break
    return found
