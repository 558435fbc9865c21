"""Which encoding is a table of text in? Its mark, else UTF-8, else the code page whose words and letters make sense."""

from __future__ import annotations

import re
from functools import cache

from hatchkit import reference

#: Of pages with many-byte letters: what their languages are written in.
_WIDE_LETTERS = {
    "shift_jis": r"[\u3040-\u30ff\u4e00-\u9fff\u3005々ー]",
    "euc_kr": r"[\uac00-\ud7a3]",
    "gb18030": r"[\u4e00-\u9fff]",
    "big5": r"[\u4e00-\u9fff]",
}
#: Signs that any language may have between its words.
_SIGNS = frozenset("°ºª½¼¾–—’‘“”„…•†€£§²³×±µ«»·´¡¿、。（）・：，\u00a0")
#: Pages whose letters never stand in one word with those of ASCII.
_OWN_SCRIPT = ("cp1251", "koi8_r", "cp1253", "cp1255", "cp1256")
_LOOK = 65_536


def decode(raw: bytes) -> str | None:
    """Bytes as text; None if they are no text.

    A mark of UTF-8, UTF-16 or UTF-32 decides, then zeros between the letters (UTF-16 or 32 without a mark), then
    whether the whole is UTF-8; else the code page by `code_page`.
    """
    if raw[:3] == b"\xef\xbb\xbf":
        return raw.decode("utf-8-sig", "replace")
    name = wide(raw[:_LOOK])
    if name is not None:
        return raw.decode(name, "replace").lstrip("\ufeff")
    if b"\x00" in raw[:4096]:
        return None
    try:
        return raw.decode("utf-8")
    except UnicodeDecodeError:
        head = raw[:_LOOK]
        odd = sum(byte < 32 and byte not in (9, 10, 13) for byte in head)
        return None if odd > len(head) / 100 else raw.decode(code_page(raw), "replace")


def wide(start: bytes) -> str | None:
    """UTF-16 or UTF-32, with or without a mark, by the first bytes of a text."""
    for mark, name in (
        (b"\xff\xfe\0\0", "utf-32"),
        (b"\0\0\xfe\xff", "utf-32"),
        (b"\xff\xfe", "utf-16"),
        (b"\xfe\xff", "utf-16"),
    ):
        if start.startswith(mark):
            return name
    nuls = start.count(0)
    if nuls <= len(start) // 4:
        return None
    order = [start[place::4].count(0) for place in range(4)]
    quarter = len(start) // 5
    if nuls > len(start) * 0.6:
        name = "utf-32-le" if order[3] > quarter and order[0] < quarter else "utf-32-be"
    else:
        name = "utf-16-le" if start[1::2].count(0) > nuls // 2 else "utf-16-be"
    text = start[: len(start) // 4 * 4].decode(name, "replace")[:2000]
    return name if sum(c.isprintable() or c.isspace() for c in text) > 0.9 * len(text) else None


def code_page(raw: bytes) -> str:
    """The code page of a text that is neither UTF-8 nor marked.

    Most words known to the kit, then most letters that one language of the page explains, then the language of whose
    letters the larger share is used; where pages are still alike, the Western one if it is among them, else the one
    that charset-normalizer finds.
    """
    from hatchkit.records.sheets.understand import known_words

    # Whole lines only: a cut must not part a letter of two bytes.
    lines = [line for line in raw[: 4 * _LOOK].split(b"\n")[:2000] if not line.isascii()][:200]
    sample, found = b"\n".join(lines), {}
    for page in dict.fromkeys([*_alphabets(), *_WIDE_LETTERS]):
        try:
            text = sample.decode(page)
        except UnicodeDecodeError:
            continue
        explained, used = _explained(text, page)
        found[page] = (known_words(text) if explained >= 0.9 else 0, round(explained, 2), used)
    if not found:
        return "cp1252"
    best = [page for page, points in found.items() if points == max(found.values())]
    if "cp1252" in best or len(best) == 1:
        return best[0]
    from charset_normalizer import from_bytes

    likely = from_bytes(sample, cp_isolation=best).best()
    return likely.encoding if likely is not None and likely.encoding in best else best[0]


def _explained(text: str, page: str) -> tuple[float, float]:
    """Share of the letters beyond ASCII that the page's best language has, and share of its letters that are there.

    Capitals within a word count against a page.
    """
    foreign = [letter for letter in text if letter > "\x7f" and letter not in _SIGNS]
    if not foreign:
        return 1.0, 0.0
    odd = len(re.findall(r"(?<=[^\W\d_])[À-ÞΑ-ΫА-ЯЁŠŽĄĆĘŁŃŚŹŻČĎĚŇŘŤŮŐŰ](?=[a-zà-ÿα-ώа-яё])", text))
    if page in _WIDE_LETTERS:
        return (len(re.findall(_WIDE_LETTERS[page], "".join(foreign))) - odd) / len(foreign), 0.0
    small = [letter.lower() for letter in foreign]
    most, used = max(
        (sum(letter in letters for letter in small), len(letters & set(small)) / len(letters))
        for letters in _alphabets()[page]
    )
    if page in _OWN_SCRIPT:
        odd += len(re.findall(r"(?<=[A-Za-z0-9])[^\W\d_a-zA-Z]|[^\W\d_a-zA-Z](?=[A-Za-z0-9])", text))
    # Headings are mostly small: in the wrong page Cyrillic turns to capitals (Greek ones too), vowels to consonants.
    odd += sum(letter.isupper() for letter in foreign) / 10
    if page in ("cp1251", "koi8_r") and sum(map("аеиоуыэюяёєії".count, small)) < len(small) / 5:
        odd += len(foreign) / 2
    return (most - odd) / len(foreign), round(used, 2) if page in ("cp1252", "cp1250") else 0.0


@cache
def _alphabets() -> dict:
    """Code page -> letters of each of its languages."""
    pages: dict = {}
    table = reference.load("alphabets")
    for page, letters in zip(table["page"], table["letters"], strict=True):
        pages.setdefault(page, []).append(frozenset(letters))
    return pages
