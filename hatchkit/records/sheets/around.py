"""What stands around a row rather than in it: the date, machine, batch and bird in a section line or a title."""

from __future__ import annotations

import re

import numpy as np
import pandas as pd

from hatchkit.records import times
from hatchkit.records.sheets.lexicon import all_roles, tokens


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
    of_rows = "name" in batches and batches["name"].notna().any()
    for name in ("incubator", "name"):
        if name in batches and batches[name].notna().any():
            continue
        found = [
            read[text][name] if section or name == "incubator" or read[text]["set_at"] is not pd.NaT else None
            for text, section in zip(texts, batches["section"], strict=True)
        ]
        if any(found):
            batches[name] = found
    if of_rows and "pen" in batches and any(read[text]["name"] for text in texts):
        _names_of_hatch(batches, texts, read)


def _counted(sections) -> list[str] | None:
    """Sections that one word and a running number name ("Card 21", "Card 22"), or None."""
    found = [re.fullmatch(r"\W*([^\W\d][^\d]{1,23}?)\W*(\d{1,4})\W*", str(section)) for section in sections]
    if len(found) < 2 or not all(found) or len({match[1].lower() for match in found}) > 1:
        return None
    return [match[0].strip() for match in found] if len({match[2] for match in found}) == len(found) else None


def _names_of_hatch(batches: pd.DataFrame, texts, read) -> None:
    """Rows of pens below a hatch's own line: hatch and pen together are the name, where the pen alone comes twice."""
    if batches["name"].duplicated().any():
        batches["name"] = [
            f"{read[text]['name']}, {name}" if read[text]["name"] and name else name
            for text, name in zip(texts, batches["name"], strict=True)
        ]


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
