"""One cell as a keeper fills it -> a count with what was odd about it, and what the words beside it add."""

from __future__ import annotations

import math
import re
from dataclasses import dataclass, field, replace
from functools import cache

from hatchkit.records.sheets.amounts import ABOUT, dozens_counted, excepted
from hatchkit.records.sheets.lexicon import Token, all_roles, cell_words, tokens
from hatchkit.records.words import plain

#: A count of eggs above this is no count of a keeper's batch.
MOST_EGGS = 100_000

#: Roles that say what became of an egg.
CLASSES = frozenset(
    {
        "clear",
        "dead",
        "shell",
        "unhatched",
        "pipped",
        "hatched",
        "chicks",
        "culled",
        "weak",
        "rotten",
        "cracked",
        "removed",
        "left",
        "alive",
        "fertile",
        "set",
        "malpos",
        "fresh",
        "out",
    }
)

#: Eggs that are no part of the number they are added to.
_APART = frozenset({"rotten", "cracked", "removed", "dead", "clear", "pipped", "shell", "unhatched"})

#: Words that open a cell of what is still to come.
_AHEAD = frozenset({"expected"})
_SUM = re.compile(r"\d+(?:\s*\+\s*\d+)+")
_THOUSANDS = re.compile(r"\d{1,3}(?:[., '\u00a0]\d{3})+")
_OF = re.compile(r"(\d+)\s*(?:/|of|out of|von|sur|van|de|su|di|z|av|af|-bol|-b[oó]l)\s*(\d+)\b.*")
#: "15 of 24": fifteen.
_PART_OF = re.compile(r"(?<![\d.,/])(\d+)\s+(?:out of|of|von|sur|van|de|su|di|z|av|af)\s+(\d+)(?![\d.,/])")
_AND = dict(
    en="and", de="und", fr="et", nl="en", es="y|e", it="e|ed", pt="e", pl="i|oraz", cs="a|i", sv="och", da="og", hu="es"
)  # fmt: skip


@dataclass(frozen=True)
class Mention:
    """A number of eggs that a text names: ``count`` eggs of the kinds in ``roles`` (words of the lexicon)."""

    count: int
    roles: frozenset
    within: bool = False


@dataclass(frozen=True)
class Count:
    """A cell read as a number of eggs.

    Attributes
    ----------
    value : int or None
    code : str
        Empty if the cell is a plain number; else zero, unknown, all, sum, remark, unsure, about, percent, share,
        fraction, negative, of, date, huge, bad.
    mentions : tuple of Mention
        What the words beside the number say.
    whole : int or None
        The 24 of "15 of 24".
    short : int
        The 2 of "all but 2".
    """

    value: int | None
    code: str = ""
    mentions: tuple = field(default=())
    whole: int | None = None
    short: int = 0

    @property
    def all_but(self) -> float:
        """How many are no part of "all"; NaN where the cell does not say so."""
        return float(self.short) if self.code == "all" else math.nan


def is_empty(cell) -> bool:
    """Nothing, blanks only, or not a number."""
    if isinstance(cell, str):
        return not cell or cell.isspace()
    return cell is None or cell != cell


def is_number(cell) -> bool:
    """A plain number, also as text with a dot or comma."""
    if isinstance(cell, str):
        return bool(re.fullmatch(r"[+-]?\d+(?:[.,]\d+)?", cell.strip()))
    return isinstance(cell, (int, float)) and not isinstance(cell, bool)


def text_of(cell) -> str | None:
    """A cell as text: 12.0 -> "12"; empty -> None."""
    if is_empty(cell):
        return None
    if isinstance(cell, float) and cell.is_integer():
        return str(int(cell))
    return " ".join(str(cell).split())


def shown(cell) -> str:
    """A cell as a message shows it: short, on one line."""
    text = text_of(cell) or ""
    return text[:60] + ("..." if len(text) > 60 else "")


def count_of(cell, language: str | None = None) -> Count:
    """A cell as a number of eggs; what can't be one has no value and a code that says why."""
    if isinstance(cell, bool):
        return Count(None, "bad")
    if isinstance(cell, (int, float)):
        return _plain_number(cell)
    if not isinstance(cell, str):
        return Count(None, "date")
    return _count_text(cell, language)


def _plain_number(cell) -> Count:
    if not math.isfinite(cell):
        return Count(None, "bad")
    if cell < 0:
        return Count(None, "negative")
    if cell != int(cell):
        return Count(None, "share" if cell < 1 else "fraction")
    return Count(int(cell)) if cell <= MOST_EGGS else Count(None, "huge")


@cache
def _count_text(cell: str, language) -> Count:
    text = plain(cell.replace("½", " 1/2"))[:300]
    if text in cell_words("unknown") and text != "x":
        return Count(None, "unknown")
    if text in cell_words("zero") or text in ("0", "-0"):
        return Count(0, "" if text == "0" else "zero")
    if text in cell_words("all"):
        return Count(None, "all")
    if text.endswith("%") or "percent" in text:
        return Count(None, "percent")
    if all_roles(tokens(text, language)[:1]) & _AHEAD:
        return Count(None, "unknown")  # "due 5 Dec" counts nothing that has come
    about = bool(ABOUT.match(text))
    text = dozens_counted(ABOUT.sub("", text), language)
    if re.fullmatch(r"[+-]?\d{1,9}(?:[.,]0*)?", text):
        number = int(float(text.replace(",", ".")))
        return _in_bounds(number, "about" if about else "")
    if re.fullmatch(r"[+-]?\d+", text):
        return Count(None, "huge")
    if _SUM.fullmatch(text):
        return _in_bounds(sum(int(part) for part in re.findall(r"\d{1,7}", text)), "sum")
    if _THOUSANDS.fullmatch(text):
        return _in_bounds(int(re.sub(r"\D", "", text)), "")
    if re.fullmatch(r"[+-]?\d*[.,]\d+", text):
        number = float(text.replace(",", "."))
        return Count(None, "negative" if number < 0 else "share" if number < 1 else "fraction")
    return _with_words(text, about, language)


def _in_bounds(number: int, code: str) -> Count:
    if number < 0:
        return Count(None, "negative")
    return Count(number, code) if number <= MOST_EGGS else Count(None, "huge")


def _with_words(text: str, about: bool, language) -> Count:
    """A number with a mark or words: "4?", "18 (2 weak)", "19 - 1 died next day", "15 of 24", "none today"."""
    if match := re.fullmatch(r"\(?\s*(\d{1,6})\s*\)?\s*\?+|\?+\s*(\d{1,6})", text):
        return _in_bounds(int(match[1] or match[2]), "unsure")
    if match := re.search(r"=\s*(\d{1,5})\s*$", text):
        return _in_bounds(int(match[1]), "remark")
    if re.match(r"\d{1,4}\s*[-./]\s*\d{1,2}\s*[-./]\s*\d{1,4}", text) or re.match(r"\d{1,2}:\d{2}", text):
        return Count(None, "date")
    if (match := _OF.fullmatch(text)) and int(match[1]) <= int(match[2]) and len(match[2]) < 6:
        return Count(int(match[1]), "of", whole=int(match[2]))
    if match := re.match(r"(\d{1,3}(?:[.,']\d{3})|\d{1,6})(?:\s*\+\s*(\d{1,5}))?(?![\d./]|,\d)", text):
        rest = text[match.end() :].strip()
        if re.match(r"[-–]\s*\d+$", rest):
            return Count(None, "range")
        number = int(re.sub(r"\D", "", match[1])) + int(match[2] or 0)
        found = mentions(rest, language)
        if match[2] and (apart := mentions(f"{match[2]} {rest}", language)) and apart[0].roles <= _APART:
            # "5 + 1 cracked" counts five of its own kind and one of another.
            number, found = number - int(match[2]), apart
        return Count(
            _in_bounds(number, "").value,
            "unsure" if rest.startswith("?") else "about" if about else "remark" if re.search(r"[a-z]", rest) else "",
            tuple(found),
        )
    word = number_in_words(text, language)
    if word is not None:
        return word
    head, _, rest = re.sub(r"[(,;:]| [-–] ", "\0", text, count=1).partition("\0")
    if head.strip() in cell_words("zero") and rest.strip(" )"):
        # "none - power cut day 9"; but "none - 3 hatched" says two things.
        told = mentions(rest, language)
        if not any(mention.count and mention.roles & {"hatched", "chicks", "alive"} for mention in told):
            return Count(0, "remark", told)
    first = text.split(" ")[0].strip("(),.;:-")
    if first in cell_words("zero") and len(text.split()) <= 4:
        return Count(0, "remark", tuple(mentions(text, language)))
    if first in cell_words("all"):
        return Count(None, "all", tuple(mentions(text, language)), short=excepted(text, language))
    found = mentions(text, language)
    if len(found) == 1 and len(text.split()) <= 4 and found[0].count <= MOST_EGGS:
        return Count(found[0].count, "remark")
    return Count(None, "bad")


def number_in_words(text: str, language) -> Count | None:
    """A number written as a word, alone or with what is told of it: "two", "twelve (1 weak)"."""
    head, _, rest = re.sub(r"[(,;:]| - ", "\0", text, count=1).partition("\0")
    found = tokens(head, language)
    if not found or not all(token.number is not None and "word number" in token.roles for token in found):
        return None
    return Count(_added(found), "words", tuple(mentions(rest, language)))


def _added(found) -> int:
    """ "twenty two", "quarante et un" -> their sum."""
    return sum(token.number for token in found)


@cache
def whole_of(text: str) -> int | None:
    """The 24 of "15 of 24 hatched", where a text tells of one such share."""
    found = {int(of[2][:6]) for of in _PART_OF.finditer(plain(str(text))[:600]) if int(of[1][:6]) <= int(of[2][:6])}
    return found.pop() if len(found) == 1 else None


def mentions(text: str, language: str | None = None) -> tuple[Mention, ...]:
    """Counts with their class in a text: "3 clear, 1 blood ring"; "clears: 3"; "10+2 hatched"; "dont 1 bêché".

    Parameters
    ----------
    text : str
    language : str, optional

    Returns
    -------
    tuple of Mention
        In order; ``within`` is set where the text says that they are part of what stands before ("of which").
    """
    found = []
    spelt = dozens_counted(plain(str(text))[:600], language)
    # A sum counts eggs: "10+2 next day" names no day.
    spelt = re.sub(r"(\d+)\s*\+\s*(\d+)", lambda sums: f"{int(sums[1][:6]) + int(sums[2][:6])} eggs", spelt)
    spelt = _PART_OF.sub(lambda of: of[1] if int(of[1][:6]) <= int(of[2][:6]) else of[0], spelt)
    within, before = False, frozenset()
    words = "|".join(word for name, word in _AND.items() if language is None or name in (language, "en"))
    for clause in re.split(rf"(?:([;,()]|\.(?=\s|$))|\b(?:{words})\b)", spelt):
        if clause is None or clause in (";", ",", "(", ")", "."):
            before = before if clause is None else frozenset()
            continue
        parts = [
            token
            for token in tokens(clause, language)
            if token.number is not None or token.roles & (CLASSES | {"ofwhich", "day", "egg", "not", "zero"})
        ]
        if before and parts and parts[0].number is None:
            parts[0] = replace(parts[0], roles=parts[0].roles | before)  # "pipped and dead 1" counts one egg
        before = all_roles(parts) & CLASSES if all(token.number is None for token in parts) else frozenset()
        within = within or any("ofwhich" in token.roles for token in parts)
        found += _pairs(parts, within)
    return tuple(found)


def _pairs(parts: list[Token], within: bool) -> list[Mention]:
    """Number and class side by side: the class follows the number, or stands before it with a colon."""
    found, place = [], 0
    while place < len(parts):
        token = parts[place]
        none = token.number is None and "zero" in token.roles and token.roles <= {"zero", "not"}
        count = 0 if none else token.number
        if count is None or token.roles - {"word number", "zero", "not"}:
            place += 1
            continue
        near = parts[place - 1] if place else None
        counted = place > 1 and parts[place - 2].number is not None  # "7th day: 4 clear"
        after = parts[place + 1].roles if place + 1 < len(parts) else frozenset()
        if (
            after & {"day"}
            and not after & CLASSES
            or near is not None
            and near.roles & {"day"}
            and not near.roles & CLASSES
            and not counted
        ):
            place += 1
            continue
        roles, ahead = set(), place + 1
        while ahead < len(parts) and (parts[ahead].number is None or parts[ahead].roles - {"word number", "zero"}):
            roles |= parts[ahead].roles
            ahead += 1
        mine = roles & CLASSES
        if not mine and place and parts[place - 1].roles & CLASSES:
            mine = parts[place - 1].roles & CLASSES
        if mine and count <= MOST_EGGS:
            found.append(Mention(count, frozenset(mine | (roles & {"not"})), within))
        place = ahead
    return found
