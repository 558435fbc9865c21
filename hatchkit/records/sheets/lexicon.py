"""Words of keepers -> the roles they may play: which look, which class of egg, which field.

``reference/sheet_words.csv`` holds one row per role and language; a heading, a cell or a line of a diary is cut into
the longest known phrases. What a phrase means is settled later, by its neighbours, the values and the arithmetic.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import cache

from hatchkit.records.words import csv_rows, letters_apart, nearest_words, plain

LANGUAGES = ("en", "de", "fr", "nl", "es", "it", "pt", "pl", "cs", "sv", "da", "hu")

#: Endings that the same word may carry (plural, case, gender), longest first.
_ENDINGS = tuple("ych ami ene ede nes en er es em et an ow ek ok ak ot ja at s e n y i a o t k r u".split())
_NOTHING = frozenset(
    "the of at a and or for with from by von der die das dem den des und im bei am zu le la les de du des "
    "a au aux et en van het een bij na el los las del y con por il lo gli di e al alla dello o os as do "
    "da dos das w z na do u i v ve s se och med vid pa efter til og ved az es utan after before nach "
    "apres despues dopo depois po til qui que trouve only just my our mon tue wed thu fri sat sun".split()
)


#: "an egg" counts one.
_ARTICLES = dict(en="an", de="ein")


@dataclass(frozen=True)
class Token:
    """A phrase of known words, a number, or a word that is not known.

    Attributes
    ----------
    text : str
        As compared: lower case, without accents.
    roles : frozenset of str
        What it may say; empty for a number and for an unknown word.
    languages : frozenset of str
        Languages in which it says so.
    number : int or None
    guessed : bool
        Read as a misspelling or as cut short.
    """

    text: str
    roles: frozenset = frozenset()
    languages: frozenset = frozenset()
    number: int | None = None
    guessed: bool = False


def all_roles(found) -> frozenset:
    """What the words of a text may say, taken together."""
    return frozenset().union(*(token.roles for token in found))


def roles_in(text, language: str | None = None) -> frozenset:
    """What the words of a text may say."""
    return all_roles(tokens(text, language))


def without_negated(found: list[Token]) -> list[Token]:
    """ "Dead not pipped" counts the dead in shell, and no pipped eggs; "pipped not hatched" does."""
    kept = list(found)
    for place, token in enumerate(found[:-1]):
        if (token.text == "no" or "not" in token.roles) and "pipped" in found[place + 1].roles:
            kept = [t for t in found if t not in (token, found[place + 1])] + [Token("shell", frozenset({"shell"}))]
    return kept


@cache
def phrases() -> dict[str, dict[str, frozenset]]:
    """Phrase -> role -> languages that use it so."""
    found: dict[str, dict[str, set]] = {}
    for row in csv_rows("sheet_words"):
        # The whole row is made plain at once, and a single word needs no cutting: there are six thousand phrases.
        for words in bare(row["words"]).split(" / "):
            key = words if words.isalpha() else " ".join(cut(words)) or plain(words)
            found.setdefault(key, {}).setdefault(row["role"], set()).add(row["language"])
    return {key: {role: frozenset(names) for role, names in roles.items()} for key, roles in found.items()}


@cache
def cell_words(role: str) -> frozenset:
    """The whole contents of cells that mean `role` (unknown, zero, all, yes), as `plain` gives them."""
    return frozenset(
        plain(words) for row in csv_rows("sheet_words") if row["role"] == role for words in row["words"].split(" / ")
    )


@cache
def _longest() -> int:
    return max(key.count(" ") + 1 for key in phrases())


@cache
def _by_length() -> dict:
    """Single words by first letter, for endings and short forms."""
    words: dict[str, list] = {}
    for key in phrases():
        if " " not in key and len(key) >= 4:
            words.setdefault(key[0], []).append(key)
    return words


def cut(text) -> list[str]:
    """Lower-case words and numbers without accents: "Dead (D7)" -> dead, d, 7; "1st" stays whole."""
    text = str(text)
    if text.isascii() and (text.islower() or text.istitle()) and text.replace(" ", "").isalpha():
        return text.lower().split()  # plain words, as most texts are
    text = re.sub(r"(?<=[a-zà-ÿ])(?=[A-ZÀ-Ý][a-zà-ÿ])", " ", text)
    text = bare(text).replace("%", " percent ").replace("#", " number ").replace("\u2116", " number ")
    text = re.sub(r"(?<=[a-z])\.(?=[a-z]\.)", "", text)
    text = re.sub(r"\bd['’](?=[a-z])", "", text)  # "24 d'oeufs" names no day
    return re.findall(r"\d+(?:st|nd|rd|th|er|re|ere|eme|ste|ra|da|do|ro)\b|[a-z]+|\d+", text)


@cache
def bare(text: str) -> str:
    """A text without accents, small, with letters of the north written out."""
    if text.isascii():
        return plain(text)
    for old, new in (("æ", "ae"), ("Æ", "ae"), ("ø", "o"), ("Ø", "o"), ("ł", "l"), ("Ł", "l"), ("đ", "d")):
        text = text.replace(old, new)
    return plain(text)


def tokens(text, language: str | None = None) -> tuple[Token, ...]:
    """The known phrases, numbers and unknown words of a text, in order.

    Parameters
    ----------
    text : str
    language : str, optional
        The sheet's language; a word that has a role in it (or in English, where it has none) plays no other.
    """
    return _tokens(str(text)[:400], language)


@cache
def _tokens(text: str, language: str | None) -> tuple[Token, ...]:
    words, found, place = _spelt_as_phrases(cut(text), language), [], 0
    while place < len(words):
        token, used = _token_at(words, place, language)
        if token is not None:
            found.append(token)
        place += used
    return tuple(found)


def _spelt_as_phrases(words: list[str], language) -> list[str]:
    """Misspelt words put right where a longer phrase of the sheet's language then stands there ("dead in shel")."""
    known, longest = phrases(), _in_phrases(language)
    for place, word in enumerate(words):
        if len(word) < 4 or not word.isalpha() or word in longest or word in known:
            continue
        for near in nearest_words(word, longest):
            right = [*words[:place], near, *words[place + 1 :]]
            starts, ends = range(max(place - 3, 0), place + 1), range(place + 1, min(place + 4, len(words) + 1))
            if any(" ".join(right[a:b]) in known for a in starts for b in ends if b - a > 1):
                words = right
                break
    return words


@cache
def _in_phrases(language: str | None) -> frozenset:
    """The words of four letters and more in phrases of a language or of English."""
    spoken = (
        key
        for key, roles in phrases().items()
        if " " in key and (language is None or any(names & {language, "en"} for names in roles.values()))
    )
    return frozenset(word for key in spoken for word in key.split() if len(word) > 3)


def _token_at(words: list[str], place: int, language):
    if words[place].isdigit():
        return Token(words[place], number=int(words[place]) if len(words[place]) < 6 else None), 1
    for length in range(min(_longest(), len(words) - place), 0, -1):
        phrase = " ".join(words[place : place + length])
        if phrase in phrases():
            if length == 1 and phrase in _NOTHING and not _says(phrase, language):
                return None, 1
            return _known(phrase, phrases()[phrase], language), length
    word = words[place]
    ordinal = re.fullmatch(r"(\d+)[a-z]+", word)
    if ordinal:
        names = {1: "first", 2: "second", 3: "third", 4: "fourth"}
        number = int(ordinal[1])
        return Token(word, frozenset({names[number]}) if number in names else frozenset(), number=number), 1
    if word == _ARTICLES.get(language) and _is_egg(words[place + 1 : place + 2], language):
        return Token(word, frozenset({"word number"}), number=1), 1
    if word in _NOTHING:
        return None, 1
    return _unknown(word, language), 1


def _is_egg(words: list[str], language) -> bool:
    return any("egg" in token.roles for token in tokens(words[0], language)) if words else False


def _says(word: str, language) -> bool:
    """Whether a small word plays a part in the sheet's own language ("i", "in", "do", "de" mostly do not)."""
    return language is not None and any(language in names for names in phrases()[word].values())


def _known(text: str, roles: dict, language, guessed: bool = False) -> Token:
    spelt = [role for role, names in roles.items() if role[0] == "=" and (language is None or names & {language, "en"})]
    others = [role for role, names in roles.items() if role[0] != "=" and (language is None or language in names)]
    if spelt and not others and (language is None or language in roles[spelt[0]] or len(roles) == 1):
        return Token(text, frozenset({"word number"}), roles[spelt[0]], number=int(spelt[0][1:]))
    roles = {role: names for role, names in roles.items() if role[0] != "="}
    for wanted in (language, "en"):
        mine = {role: names for role, names in roles.items() if wanted in names}
        if wanted is not None and mine:
            roles = mine
            break
    else:
        # A short word of another language is mostly a word of this one that is not known.
        if language is not None and len(text) <= 4:
            return Token(text)
    return Token(text, frozenset(roles), frozenset().union(*roles.values()), guessed=guessed)


def _unknown(word: str, language) -> Token:
    """A word with an ending, cut short, compounded or misspelt; else unknown."""
    for key in _stems(word):
        known = _known(word, phrases()[key], language)
        # "Summer" is no "Summe" on an English sheet.
        if language is None or not known.roles or known.languages & {language, "en"}:
            return known
    parted = eggs_of_bird(word)
    if parted:
        return _known(word, phrases()[parted[1]], language)
    if word in _bird_names():
        return Token(word)
    if len(word) >= 3:
        longer = [key for key in _spoken(word[0], language) if key.startswith(word) and len(key) > len(word) + 1]
        merged = _merge(longer)
        if merged and len(_roles_in(merged, language)) == 1:
            return _known(word, _roles_in(merged, language), language, guessed=True)
    parts = _compound(word)
    if parts:
        roles = [_known(part, phrases()[part], language) for part in parts]
        return Token(
            word,
            all_roles(roles),
            frozenset.intersection(*(t.languages for t in roles)) or roles[0].languages,
            guessed=False,
        )
    if len(word) >= 5:
        near = [
            key
            for key in nearest_words(word, _spoken("", language))
            if key[0] == word[0] or letters_apart(key, word, 1) == 1
        ]
        merged = _roles_in(_merge(near), language)
        if near and (len(merged) == 1 or len(near) == 1):
            return _known(word, merged, language, guessed=True)
    return Token(word)


@cache
def _bird_names() -> frozenset:
    """Names of birds and breeds that are one word: no misspelling of another ("Livorno")."""
    return frozenset(bare(row["name"]) for row in csv_rows("breeds"))


@cache
def eggs_of_bird(word: str) -> tuple[str, str] | None:
    """Bird, and eggs or chicks, of a word made of both ("Laufenteneier", "pulykatojás", "ankägg"), or None."""
    for size in range(len(word) - 2, 2, -1):
        head, tail = word[:size], word[size:]
        if phrases().get(tail, {}).keys() & {"egg", "chicks"} and size + len(tail[:3]) > 5:
            forms = (head, head[:-1], head[:-2], f"{head}a", f"{head}e")
            bird = next((form for form in forms if form in _bird_names()), None)
            if bird:
                return bird, tail
    return None


@cache
def _spoken(letter: str, language: str | None) -> tuple[str, ...]:
    """Single words with a first letter ("": of five letters and more) that the sheet's language or English knows."""
    words = _by_length().get(letter, ())
    if not letter:
        words = [word for same in _by_length().values() for word in same if len(word) > 4]
    known = phrases()
    return tuple(w for w in words if language is None or any(names & {language, "en"} for names in known[w].values()))


def _roles_in(roles: dict, language) -> dict:
    roles = {role: names for role, names in roles.items() if role[0] != "="}
    mine = {role: names for role, names in roles.items() if language in names}
    return mine or roles


def _merge(keys) -> dict:
    merged: dict[str, frozenset] = {}
    for key in keys:
        for role, names in phrases()[key].items():
            merged[role] = merged.get(role, frozenset()) | names
    return merged


def _stems(word: str):
    known = phrases()
    for ending in _ENDINGS:
        stem = word[: -len(ending)] if word.endswith(ending) else None
        if stem and len(stem) >= 4 and stem in known:
            yield stem
    for ending in ("s", "e", "en", "er", "n", "a", "t"):
        if len(word) >= 4 and word + ending in known:
            yield word + ending


@cache
def _compound(word: str) -> tuple[str, ...]:
    """Two or three known words written as one ("Eieranzahl", "Schlupfdatum", "kläckmaskin"), or nothing."""
    known = phrases()

    def rest(text: str, depth: int):
        if text in known and len(text) >= 3:
            return (text,)
        if depth == 0:
            return None
        for size in range(len(text) - 3, 2, -1):
            head = text[:size]
            if head not in known or len(head) < 3:
                continue
            for link in ("", "s", "n", "e", "en"):
                if text[size:].startswith(link):
                    tail = rest(text[size + len(link) :], depth - 1)
                    if tail:
                        return (head, *tail)
        return None

    return rest(word, 2) or () if len(word) >= 6 else ()
