"""Lines of a diary -> entries: a date in front, a batch by its name, breed or machine, numbers with their class."""

from __future__ import annotations

import re
from collections import Counter
from dataclasses import replace

import numpy as np
import pandas as pd

from hatchkit.records.sheets.amounts import dozens_counted
from hatchkit.records.sheets.birds import species_in
from hatchkit.records.sheets.cells import CLASSES, mentions, text_of
from hatchkit.records.sheets.entries import Entry, add_mention, eggs_set_in, loose_in, moved_in, take_what_lacks
from hatchkit.records.sheets.entrybatches import batches_of
from hatchkit.records.sheets.lexicon import all_roles, cut, tokens
from hatchkit.records.sheets.meanings import look_of
from hatchkit.records.sheets.parts import Context, Part
from hatchkit.records.sheets.when import is_dateish, leading_date, read_dates
from hatchkit.records.words import plain

#: Letters that two words share at their beginning if they are forms of one word.
STEM = 5
#: Numbers that count no eggs: hours, degrees, money, lengths.
_OTHER_NUMBERS = re.compile(
    r"\d+(?:[.,]\d+)?\s*(?:min(?:s|ut\w*)?|h|hrs?|hours?|horas?|heures?|std\.?|stunden?|uur|uren|or[ea]|godz\w*|hodin\w*|"
    r"timmar|timme|timer?|óra|perc|°\s*[CF]?|º\s*[CF]?|grad[ei]?|degrees?|%|mm|cm|km|kg|euros?|€|\$|years?|jahre|ans|años)(?!\w)"
    # Nobody counts tenths of an egg: "dropped to 36.9 overnight".
    r"|(?<![\d.,])\d+[.,]\d(?![\d.,])",
    re.IGNORECASE,
)
#: A capital alone, less "I" and what begins a sentence as an article ("A new day").
_LETTER = re.compile(r"(?<![^\W_])(?!I\b)([A-Z])(?![^\W_'’.])(?! [a-z]+ (?:day|egg|hen|bird|few|lot|bit)\b)")
#: "Hatch day! 6 chicks": the number counts no days.
_DAY_AND_STOP = re.compile(r"\b(?:day|tag|jour|d[ií]a|dag|giorno|dzie[nń]|den|nap)\s*[.;:!]", re.IGNORECASE)
#: Ordinals by their role: "the second lot" is the second batch that the diary set.
_ORDINALS = ("first", "second", "third", "fourth")
_STOPS = re.compile(r"(?<=[^\d\s])[.;]\s+|(?<=\d)[.;]\s+(?=[A-ZÄÖÜÉ])|\n")


def read_diary(block, context: Context) -> Part:
    """The batches of a diary: lines of words with a date in front, numbers with their class, batches named or open."""
    entries = entries_of(block, context)
    told = [entry for entry in entries if entry.counts or not entry.loose]
    part = batches_of(replace(block, skipped=[]), told, [])
    for name, rest in zip(part.batches.get("name", []), part.batches.get("rest", []), strict=True):
        if rest == rest and rest and rest > 0:
            take_what_lacks(int(rest), [entry for entry in entries if entry.batch == name])
    return batches_of(block, [entry for entry in entries if entry.counts or not entry.loose], [])


def without_unclear(item, part: Part) -> tuple[Part | None, list[dict]]:
    """A diary less the batches whose eggs do not add up, and the question about these.

    Sentences can be misread in many ways; where the eggs add up to the last one, they were read right.
    """
    clear = (part.batches["rest"] == 0) & part.batches["hatched"].notna()
    if clear.all():
        return part, []
    if clear.mean() < 0.5:
        # Where most are misread, one that adds up may do so by chance.
        clear[:] = False
    left = part.batches[~clear]
    number = np.where(clear, np.cumsum(clear) - 1, -1)
    looks = part.looks.assign(place=number[part.looks["place"].to_numpy(int)]) if len(part.looks) else part.looks
    asked = dict(
        code="diary",
        file=item.block.file,
        sheet=item.block.sheet,
        taken="left_out",
        rows=[int(row) for row in left["row"]],
        names=[str(name or "") for name in left["name"]],
    )
    kept = replace(part, batches=part.batches[clear].reset_index(drop=True), looks=looks[looks["place"] >= 0])
    return (kept if clear.any() else None), [asked]


def entries_of(block, context) -> list[Entry]:
    """Entries of the lines of a block, each with the batch it belongs to.

    Parameters
    ----------
    block : Block
        Of shape lines: each record is the list of filled cells of one row.
    context : Context
    """
    found, at, opened, label = [], None, [], None
    letters = _letters(block.columns[0])
    dated = any(is_dateish(cells[0]) for cells in block.columns[0] if cells)
    for row, cells, name in zip(block.rows, block.columns[0], block.names or [None] * len(block.rows), strict=True):
        day, text = _dated(cells, context)
        if day is not None and at is not None and day.year == at.year and (at - day).days > 200:
            day = day.replace(year=day.year + 1)
        at = day if day is not None else at
        heading = _heading(text, day, context)
        label = name or label
        if heading:
            label = heading
            continue
        before, mine = None, name or next((m for m in re.findall(_LETTER, text) if m in letters), None)
        for sentence in _parts(text, opened, letters):
            first = (name or label) not in {None, *(batch["name"] for batch in opened)}
            birds = species_in(sentence).keys()
            unknown = bool(birds) and not any(birds & batch["birds"] for batch in opened)
            entry = _entry(row, at, sentence, context, first, unknown) if at is not None or not dated else None
            if entry is None:
                continue
            own = name or next((m for m in re.findall(_LETTER, sentence) if m in letters), None)
            own = own or (mine if before is None else None)
            _give_batch(
                entry,
                sentence,
                opened,
                label,
                before,
                own,
                column=name is not None and not first,
                language=context.language,
            )
            before = entry.batch
            found.append(entry)
    return found


def _letters(lines) -> frozenset:
    """Letters that name batches: they stand alone in three lines or more ("Call them A", "Candled A again")."""
    alone = Counter(
        letter for cells in lines for letter in {m for cell in cells for m in re.findall(_LETTER, text_of(cell) or "")}
    )
    return frozenset(letter for letter, lines in alone.items() if lines >= 3)


def _parts(text: str, opened: list, letters: frozenset) -> list[str]:
    """The line, cut only where another batch is named or other birds are spoken of."""
    parts: list[str] = []
    for sentence in _STOPS.split(re.sub(r"!+", ".", text)):
        named = _name_in(sentence, opened) or set(re.findall(_LETTER, sentence)) & letters
        if parts and not named and not (species_in(sentence) and species_in(parts[-1])):
            parts[-1] += "; " + sentence
        else:
            parts.append(sentence)
    return parts


def _dated(cells: list, context):
    """(date or None, the rest of the line)."""
    parts, day = [], None
    for cell in cells:
        if day is None and not isinstance(cell, (int, float)) and (not isinstance(cell, str) or is_dateish(cell)):
            found = read_dates([cell], context.day_first, context.year)
            if not np.isnat(found.moments[0]):
                day = pd.Timestamp(found.moments[0])
                continue
        parts.append(text_of(cell) or "")
    text = " ".join(filter(None, parts))
    if day is None and not (cells and is_dateish(cells[0])):
        when, rest = leading_date(text, context.day_first, context.year)
        if when is not None:
            return pd.Timestamp(when), rest
    return day, text


def _heading(text: str, day, context) -> str | None:
    """A short line without a count that names a batch: "Batch 2", "Hatch 1 - Marans"."""
    if day is not None or len(text) > 40:
        return None
    found = tokens(text, context.language)
    roles = all_roles(found)
    return (
        text
        if roles & {"batch", "hatch", "set"}
        and len(found) <= 4
        and not roles & (CLASSES - {"hatched", "set"})
        and any(token.number is not None and token.number < 1900 for token in found)
        else None
    )


def _entry(row: int, at, sentence: str, context, first=False, unknown=False) -> Entry | None:
    """What a sentence tells; the `first` of a named batch is of its setting, and so are eggs of an `unknown` bird."""
    sentence = _OTHER_NUMBERS.sub(" ", sentence)
    named = re.search(r"\b[^\W\d_]{3,}\s+([A-Z])\b(?!\d)", sentence)
    bare = (
        sentence.replace(named[0], named[0][:-1])
        if named and tokens(named[0][:-1].strip()) and tokens(named[0][:-1].strip())[0].roles & {"batch", "hatch"}
        else sentence
    )
    bare = _DAY_AND_STOP.sub(" ", bare)
    head = re.match(r"\s*([^\W\d_]+)\.?\s*(?:n[rºo°]?\.?\s*)?\d+\s*[:–-]\s", bare)
    if head and any(token.roles & {"batch", "hatch", "set"} for token in tokens(head[1], context.language)):
        bare = bare[head.end() :]  # "Batch 1: ..." counts no egg
    bare = re.sub(r"^\s*[A-Z]\s*(?=:)|^\s*[A-Z]\s+(?=d\s?\d)", "", bare)  # the batch's letter is no word
    bare = dozens_counted(plain(bare), context.language)
    nth = _nth(bare, context.language)
    bare = bare.replace(nth[1], "batch") if nth else bare  # the second lot is not the second look
    # In running text a word that only looks like a known one is another word.
    found = [token for token in tokens(bare, context.language) if not token.guessed]
    roles = all_roles(found)
    entry = Entry(row, at, roles=roles, text=sentence.strip()[:300])
    look = look_of(found)
    entry.look = replace(look, order=None) if look.day is None and not roles & {"candle", "transfer"} else look
    for mention in mentions(bare, context.language):
        if not (mention.roles & {"chicks"} and roles & {"culled", "sold"} and "hatched" not in roles):
            add_mention(entry, mention, remark=False)
    lost = entry.counts.keys() & {"clear", "dead", "hatched", "pipped", "dis"}
    starts = (
        (first or "set" in roles)
        and not lost
        or bool(found)
        and "set" in found[0].roles
        or not lost
        and bool(species_in(sentence))
        and (
            bool(roles & {"batch"})
            or unknown
            and "egg" in roles
            and not roles & {"candle", "transfer"}
            or bool(roles & {"incubator", "in", "broody", "set"})
            and not roles & {"candle", "transfer"}
        )
    )
    if starts:
        eggs = eggs_set_in(found)
        if eggs is not None:
            entry.counts = {"eggs_set": eggs}
            entry.roles |= {"set"}
    hatching = roles & {"hatch", "hatched"} and not roles & {"candle", "transfer", "expected"}
    if hatching and "hatched" not in entry.counts:
        first = re.search(r"(?<![\d.,])(\d{1,3})(?:\s*\+\s*(\d{1,3}))?(?![\d.,])", bare)
        count = int(first[1]) + int(first[2] or 0) if first else None
        if count is not None and look.day != count and count not in entry.counts.values():
            entry.counts["hatched"] = count
    if "transfer" in roles and "left" not in entry.counts and not entry.counts.keys() & {"hatched", "eggs_set"}:
        moved = moved_in(found, entry.counts)
        if moved is not None:
            entry.counts["left"] = moved
    entry.loose = loose_in(entry, found)
    if not entry.counts and not roles & {"candle", "transfer", "hatch", "hatched"} and not entry.loose:
        return None
    return entry


def _words(sentence: str) -> frozenset:
    return frozenset(word for word in cut(sentence) if len(word) > 3 and not word.isdigit())


def _alike(one: str, other: str) -> bool:
    """Whether two words are one but for what ends them ("Sundheimern", "Laufenteneier")."""
    short = min(len(one), len(other))
    return one == other or short >= STEM and one[: max(STEM, short - 2)] == other[: max(STEM, short - 2)]


def _name_in(sentence: str, opened: list) -> str | None:
    """The short name that a sentence gives a batch: "batch A", "B d7: ...", "2: ..."."""
    words = re.findall(r"[^\W_]+", sentence)
    names = {batch["name"] for batch in opened if not batch["counted"]}
    if words and words[0] in names:
        return words[0]
    for place, word in enumerate(words[:-1]):
        token = tokens(word)
        if (
            token
            and token[0].roles & {"batch", "hatch"}
            and (
                len(words[place + 1]) <= 3
                and (words[place + 1].isdigit() or words[place + 1].isupper() or words[place + 1] in names)
            )
        ):
            return words[place + 1]
    first = re.match(r"\s*(?:n[ro°º]?\.?\s*|#)?(\d+[a-z]?|[A-Z])\s*[:)]\s", sentence)
    return first[1] if first else None


def _nth(sentence: str, language) -> tuple[int, str] | None:
    """The number and words of "the second lot": an ordinal right before a word for a batch."""
    found = tokens(sentence, language)
    for one, other in zip(found, found[1:], strict=False):
        number = next((place for place, role in enumerate(_ORDINALS, start=1) if role in one.roles), None)
        if number and "batch" in other.roles and not other.roles & {"egg", "candle"}:
            return number, f"{one.text} {other.text}"
    return None


def _give_batch(
    entry: Entry, sentence: str, opened: list, label: str | None, before, own=None, column=False, language=None
) -> None:
    """Name the batch: the line's own label, else the open batch that shares most words or the kind of bird.

    `before` is the batch of which the same line spoke last, `own` what a column or a letter in the line names.
    """
    named = own or _name_in(sentence, opened)
    nth = _nth(sentence, language)
    if nth and own is None and entry.counts.keys() != {"eggs_set"} and nth[0] <= len(opened):
        named = opened[nth[0] - 1]["name"]
    if own is not None and (column or own in {batch["name"] for batch in opened}):
        entry.batch = own
        return
    birds = frozenset(species_in(sentence))
    if entry.counts.keys() == {"eggs_set"}:
        name = own or label or named or f"{len(opened) + 1}"
        # A number that only counts the batches is no name that the keeper uses.
        counted = not (own or label or named)
        opened.append(dict(name=name, words=_words(sentence), birds=birds, counted=counted))
        entry.batch = name
        entry.fields["species_text"] = sentence.strip()[:200]
        return
    if not opened:
        return
    words = _words(sentence)

    def likeness(place):
        batch = opened[place]
        score = sum(any(_alike(word, other) for other in batch["words"]) for word in words) + 2.0 * bool(
            birds & batch["birds"]
        )
        score -= 1.5 * bool(birds and batch["birds"] and not birds & batch["birds"])
        ended = batch.get("ended")
        score -= 3.0 * (ended is not None and entry.at is not None and (entry.at - ended).days > 4)
        score += 2.5 * (before is not None and before == batch["name"])
        score += 9.0 * (named == batch["name"]) + 3.0 * (label == batch["name"])
        return score, place

    best = opened[max(range(len(opened)), key=likeness)]
    entry.batch = best["name"]
    if "hatched" in entry.counts:
        best["ended"] = entry.at
