"""Which column is which: a person's own headings read as the columns that hatchkit knows."""

from __future__ import annotations

import re
from functools import cache
from itertools import islice, product

from hatchkit import reference
from hatchkit.records.negation import in_order, is_negated, opposite
from hatchkit.records.words import header_words, nearest_words, plain, split_words, tokens

#: Kinds of sheet that are recognised.
KINDS = ("batches", "eggs", "weights", "candlings")


#: Words that a heading may hold beside those that count: "clear eggs at transfer".
_FILLERS = {"egg", "embryo", "chick", "taken", "out", "found", "total", "all", "day", "our"}


_BRACKETS = r"[\(\[].*?[\)\]]"


@cache
def _counts() -> frozenset[str]:
    """Columns that hold numbers of eggs: "Dead in shell (pipped)" must not be taken for either of the two."""
    facts = reference.load("columns_records")
    return frozenset(facts.loc[(facts["kind"] == "count") & (facts["table"] == "batches"), "column"])


@cache
def known_columns(kind: str) -> tuple[str, ...]:
    """Canonical columns of a kind of sheet (``name.time`` is a clock time kept in its own column)."""
    listed = [row["column"] for row in header_words() if row["table"] == kind]
    if kind != "candlings":
        facts = reference.load("columns_records")
        own = facts.loc[facts["table"] == kind, "column"].tolist()
        listed = [name for name in own if name not in ("file", "sheet", "sheet_row")] + listed
        if kind == "batches":
            listed = [name for name in listed if name != "row"]
    return tuple(dict.fromkeys(name for name in listed if name))


@cache
def _lookups(kind: str):
    """(text as written, words in order, set of words, letters run together, words of phrases with a "not") ->
    column; and all single words.

    A column of "" marks headings that are known to be no column of ours ("breed"). In a phrase with a "not"
    the order of the words is the meaning, so none is among the sets of words.
    """
    written, exact, loose, joined, negated = {}, {}, {}, {}, {}
    for name in known_columns(kind):
        exact[split_words(name.replace("_", " ").replace(".", " "))] = name
    rows = [row for row in header_words() if row["table"] == kind]
    for row in rows:
        written.setdefault(plain(row["words"]), row["column"])
        exact.setdefault(split_words(row["words"]), row["column"])
        if is_negated(row["words"]):
            negated.setdefault(_bare_order(row["words"]), row["column"])
        else:
            loose.setdefault(tokens(row["words"]), row["column"])
    for words, name in exact.items():
        joined.setdefault("".join(words), name)
        if not is_negated(" ".join(words)):
            loose.setdefault(tokens(" ".join(words)), name)
    vocabulary = frozenset(word for key in (*loose, *negated) for word in key)
    return written, exact, loose, joined, negated, vocabulary


def _bare_order(text: str) -> tuple[str, ...]:
    """The words of a phrase with a "not", in order, without fillers; what follows the "not" always stays."""
    words = in_order(text)
    return tuple(word for place, word in enumerate(words)
                 if word not in _FILLERS or (place and words[place - 1] == "not"))


@cache
def recognise(text: str, kind: str) -> tuple[str | None, bool]:
    """The canonical column that a heading means, and whether that took a guess at a misspelling.

    Parameters
    ----------
    text : str
        The heading as written.
    kind : {"batches", "eggs", "weights", "candlings"}

    Returns
    -------
    (str or None, bool)
    """
    found = _recognise(text, kind)
    bare = re.sub(_BRACKETS, " ", text)
    if found[0] or bare == text or not bare.strip() or is_negated(text):
        return found  # "Hatched (not pipped)" says something else than "Hatched", so what is in brackets counts there
    found = _recognise(bare, kind)
    inside = {_recognise(part.strip("()[]"), kind)[0] for part in re.findall(_BRACKETS, text)} - {None, found[0]}
    return (None, False) if found[0] in _counts() and inside & _counts() else found


def _recognise(text: str, kind: str) -> tuple[str | None, bool]:
    written, exact, loose, joined, negated, vocabulary = _lookups(kind)
    words = split_words(text)
    if not words or len(words) > 8 or len(text) > 60:
        return None, False
    for table, key in ((written, plain(text)), (exact, words)):
        if key in table:
            return table[key] or None, False
    if is_negated(text):
        return _recognise_negated(_bare_order(text), negated, vocabulary)
    for table, key in ((loose, tokens(text)), (joined, "".join(words))):
        if key in table:
            return table[key] or None, False
    short = tuple(word for word in tokens(text) if word not in _FILLERS)
    if short in loose and len(short) > 1:
        return loose[short] or None, False
    one = {loose.get((word,)) for word in tokens(text)}
    if len(one) == 1 and None not in one:  # "Poults/goslings", "Clear/infertile": the same said twice
        return one.pop() or None, False
    near = {loose.get(tuple(sorted(set(choice)))) for choice in _spellings(tokens(text), vocabulary)} - {None}
    run = "".join(words)
    if not near and len(run) >= 7 and not all(word in vocabulary or len(word) < 4 for word in tokens(text)):
        near = {joined[other] for other in nearest_words(run, joined) if not opposite(run, other)}
    return (next(iter(near)) or None, True) if len(near) == 1 else (None, False)


def _recognise_negated(words: tuple[str, ...], negated: dict, vocabulary) -> tuple[str | None, bool]:
    """A heading with a "not" is a known phrase in the same order, a letter or two aside, or it is nothing."""
    if words in negated:
        return negated[words] or None, False
    near = {negated.get(choice) for choice in _spellings(words, vocabulary)} - {None}
    return (near.pop() or None, True) if len(near) == 1 else (None, False)


def _spellings(words, vocabulary):
    """What a heading may be if some of its words are misspelt; never a word's opposite ("unhatched")."""
    options = [[word] if word in vocabulary or len(word) < 4 else
               [other for other in nearest_words(word, vocabulary) if not opposite(word, other)][:4] or [word]
               for word in words]
    return islice(product(*options), 64)


@cache
def column_phrases(kind: str) -> dict[str, tuple[tuple[str, ...], ...]]:
    """The known phrases of each column, as sets of words; what no column is called is under ""."""
    phrases = {}
    for words, name in _lookups(kind)[2].items():
        phrases.setdefault(name, []).append(words)
    return {name: tuple(kept) for name, kept in phrases.items()}


def is_no_column(text: str, kind: str) -> bool:
    """Whether a heading is known to be none of the kit's columns ("breed", "hatch %")."""
    written, exact, loose, joined, *_ = _lookups(kind)
    kept = (written.get(plain(text)), exact.get(split_words(text)), loose.get(tokens(text)),
            joined.get("".join(split_words(text))))
    return next((name == "" for name in kept if name is not None), False)


def own_headings(settings: dict) -> dict[str, str]:
    """The [headers] of season.toml: heading in plain letters -> canonical column."""
    given = settings.get("headers") or {}
    return {plain(heading): str(column) for heading, column in given.items()}


def name_columns(headings, kind: str, own: dict[str, str]):
    """Canonical names for one header row.

    Parameters
    ----------
    headings : list of str
        As written; empty where the column has none.
    kind : str
    own : dict
        From `own_headings`; it wins over everything.

    Returns
    -------
    names : list of (str or None)
        Canonical name per column; None where it is not known (or was taken by an earlier heading).
    guessed : list of int
        Places of names that took a guess at a misspelling.
    doubled : list of int
        Places of headings that mean a column already found.
    """
    known = set(known_columns(kind))
    found = []
    for place, heading in enumerate(headings):
        if not heading:
            continue
        if plain(heading) in own:
            name, strength = own[plain(heading)], 0
            name = name if name in known else None
        else:
            name, guess = recognise(heading, kind)
            exact = name is not None and split_words(heading) == split_words(name.replace("_", " "))
            strength = 1 if exact else 3 if guess else 2
        if name:
            found.append((strength, place, name))
    names, guessed, doubled, taken = [None] * len(headings), [], [], set()
    for strength, place, name in sorted(found):
        if name in taken:
            doubled.append(place)
            continue
        taken.add(name)
        names[place] = name
        if strength == 3:
            guessed.append(place)
    return names, guessed, doubled
