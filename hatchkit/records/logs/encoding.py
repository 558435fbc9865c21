"""Which encoding is a text in? UTF-8 where it can be; else the code page in which its headings and units make sense."""

from __future__ import annotations

import codecs
import re

from hatchkit.problems import HatchkitError
from hatchkit.records.code_pages import wide
from hatchkit.records.logs.names import role_of, spelt_words, unit_of

#: Code pages of the languages of the headings, the likeliest first.
_PAGES = (
    "cp1252",
    "cp1250",
    "cp1257",
    "cp1254",
    "cp1253",
    "cp1251",
    "cp1255",
    "cp1256",
    "iso8859_2",
    "cp850",
    "cp852",
    "cp437",
    "mac_roman",
    "gb18030",
    "big5",
    "shift_jis",
    "euc_kr",
    "koi8_r",
)
_LOOK = 65_536
_PIECE = 262_144


def as_utf8(data: bytes, page: str | None = None) -> tuple[bytes, str, list]:
    """The same text as UTF-8 without a byte order mark; `page` is the person's word where it is no UTF-8.

    Returns
    -------
    data : bytes
    encoding : str
    doubts : list of (encoding, line number from 1, as read, as the other encoding has it)
        Other code pages in which a heading or a unit would read otherwise and as well.

    Raises
    ------
    HatchkitError
        Where the bytes are no text.
    """
    start = data[:_LOOK]
    if start.startswith(b"%PDF"):
        raise HatchkitError("refuse_pdf", {})
    if start.startswith(b"\xef\xbb\xbf"):
        data, start = data[3:], start[3:]
    elif (name := wide(start)) is not None:
        text = data.decode(name, "replace").lstrip("\ufeff")
        return text.encode(), name, []
    binary = sum(start.count(bytes([code])) for code in range(32) if code not in (0, 9, 10, 12, 13, 26, 27))
    if binary > len(start) // 100:
        raise HatchkitError("refuse_bytes", {})
    if data.isascii():
        return data, "ascii", []
    try:
        _check_utf8(data)
        return data, "utf-8", []
    except UnicodeDecodeError:
        good = len(re.findall(rb"[\xc2-\xf4][\x80-\xbf]+", data[:_LOOK]))
        bad = data[:_LOOK].decode("utf-8", "replace").count("\ufffd")
        cut = data[-4:].decode("utf-8", "ignore") != data[-4:].decode("utf-8", "replace") and bad <= 1 <= good
        if good >= max(2, bad) or cut:
            # A few broken characters in a text that is UTF-8 otherwise.
            return data.decode("utf-8", "replace").encode(), "utf-8", []
    page, doubts = (page, []) if page in _PAGES else _code_page(data)
    return data.decode(page, "replace").encode(), page, doubts


def _check_utf8(data: bytes) -> None:
    """UnicodeDecodeError where the bytes are not UTF-8; pieces in plain ASCII, which most are, cost next to nothing."""
    decoder = codecs.getincrementaldecoder("utf-8")()
    # Pieces of this size: 6 to 7 ms for 62 MB, 8 with pieces of 1 MB.
    for start in range(0, len(data), _PIECE):
        piece = data[start : start + _PIECE]
        if not piece.isascii() or decoder.getstate()[0]:
            decoder.decode(piece)
    decoder.decode(b"", True)


def _code_page(data: bytes) -> tuple[str, list]:
    """The code page whose headings and units make the most sense, and those that are as good but read otherwise."""
    lines = [(number, line) for number, line in enumerate(data.split(b"\n", 400)[:400], 1) if not line.isascii()]
    lines = (
        lines[:60] or [(number, line) for number, line in enumerate(data.split(b"\n"), 1) if not line.isascii()][:60]
    )
    texts = {}
    for page in _PAGES:
        try:
            texts[page] = [line.decode(page).strip() for _, line in lines]
        except UnicodeDecodeError:
            continue
    scores = {page: sum(map(_sense, found)) for page, found in texts.items()}
    best = [page for page in scores if scores[page] == max(scores.values())]
    likely = _likeliest(b"\n".join(line for _, line in lines), best) if len(best) > 1 else best[0]
    doubts = []
    for page in best:
        read = zip(lines, texts[likely], texts[page], strict=True)
        doubts += [(page, line, one, two) for (line, _), one, two in read if _meaning(one) != _meaning(two)][:1]
    return likely, doubts


def _likeliest(sample: bytes, pages: list) -> str:
    """Of equally good pages the first of the list, unless the letters themselves speak for another."""
    if pages[0] == "cp1252":
        return pages[0]
    from charset_normalizer import from_bytes

    found = from_bytes(sample, cp_isolation=list(pages)).best()
    return found.encoding if found is not None and found.encoding in pages else pages[0]


def _cells(text: str) -> list:
    return [cell.strip(' "') for cell in re.split(r"[;,\t|]", text)]


def _meaning(text: str) -> list:
    return [(role_of(cell), unit_of(cell), re.sub(r"[^\d.,+-]", "", cell)) for cell in _cells(text) if len(cell) < 80]


def _sense(text: str) -> int:
    """Points for degree signs before a unit and words that are known; none for marks that no heading holds."""
    points = 3 * len(re.findall(r"°\s?[CFK](?![a-z])", text)) - 2 * len(
        re.findall(r"[^\W\d_]°|[¦¨©«®±»¿×¡¢¤¥¬¯¸ˇ˘˛˝]", text)
    )
    points -= 2 * len(re.findall(r"[\u2500-\u259f\x80-\x9f]|[a-z][A-ZÀ-Þ]|[^\x00-\x7f][A-Z][a-z]", text))
    for cell in _cells(text):
        bare = re.sub(r"\s*[\[(].*", "", cell).lower()
        points += not cell.isascii() and any(
            word in spelt_words() for word in (bare, *bare.split()) if not word.isascii()
        )
        if not cell.isascii() and role_of(cell):
            points += 2 + 2 * bool(re.fullmatch(r"[\w.\s]+(?:[\[(].*)?", cell)) * (
                role_of(re.sub(r"[\[(].*", "", cell)) != ""
            )
    return points
