"""What a student's words mean: a stage, a cause, a number of eggs. What is not understood is named, never guessed.

The form has lists to choose from, in four languages; beside their words only obvious synonyms are known
(``reference/lesson_words.csv``).
"""

import re
from functools import cache

from hatchkit import reference
from hatchkit.records.words import nearest, plain, split_words
from hatchkit.reference import small_words
from hatchkit.say import text as say
from hatchkit.teach import case_words
from hatchkit.teach.case_words import STAGES
from hatchkit.teach.course_finding import TENS, UNITS

_BESIDE = set(small_words("beside"))
_BESIDE_NUMBER = re.compile(
    r"\b(?:about|approximately|approx\.?|ca\.?|circa|around|roughly|nearly|almost|some|say|maybe|perhaps|between|"
    r"from|eggs?|chicks?|embryos?|pcs|lost|dead|or so)(?!\w)|[~≈=?]"
)
_NUMBER = r"(\d+(?:[.,]\d+)?)"
_UNITS = ["no", *UNITS[1:]]
_TENS = list(TENS)


@cache
def _known(kind) -> dict[str, str]:
    """Words run together -> key: those of the form in every language, keys and names, synonyms."""
    table = reference.load("lesson_words")
    rows = table[table["kind"] == kind]
    known = {_joined(words): means for words, means in zip(rows["words"], rows["means"], strict=True)}
    keys, words = (STAGES, case_words.stage_words) if kind == "stage" else (case_words.causes(), case_words.cause_words)
    for key in keys:
        known[_joined(key)] = key
        for language in case_words.LANGUAGES:
            label = words(key, language)
            known[_joined(label)] = known[_joined(label.split(" (")[0])] = key
    return known


def _joined(text) -> str:
    """Letters run together, without plurals and words that say nothing: "The power cuts" and "power_cut" are one."""
    words = [word for word in split_words(text) if word not in _BESIDE and not word.isdigit()]
    return "".join(words or split_words(text))


def _meant(text, kind):
    if not text.strip():
        return "", ""
    known = _known(kind)
    bare = re.sub(r"[(\[{].*?[)\]}]", " ", text)
    for reading in (text, bare, *re.findall(r"[(\[{](.*?)[)\]}]", text)):
        if reading.strip() and (meant := known.get(_joined(reading))):
            return meant, ""
    several = list(dict.fromkeys(known[word] for word in split_words(bare) if word in known))
    if kind == "stage" and len(several) > 1:
        return "", say("remark_several", dict(given=text, several=several))
    denied = {"no", "not", "never", "without", "or", "and", "oder", "ou", "o"} & set(split_words(text))
    if not denied and len(_joined(bare)) > 3 and (near := nearest(_joined(bare), known)):
        return known[near], say("remark_near", dict(kind=kind, given=text, taken=known[near]))
    return "", say(f"remark_no_{kind}", dict(given=text, known=list(STAGES)))


def stage_meant(text):
    """(stage or "", remark) of what stands under stage.

    Parameters
    ----------
    text : str

    Returns
    -------
    (str, str)
        One of `STAGES` and why it is not as written; "" with the reason if it is not understood; two
        empty texts where nothing is written.
    """
    return _meant(text, "stage")


def cause_meant(text):
    """(cause or "", remark) of what stands under cause; see `stage_meant`."""
    return _meant(text, "cause")


def number_meant(text, eggs=None):
    """(number, low, high, understood) of a number of eggs as people write it.

    "about 8", "8 eggs" and "twenty-seven" are numbers; "10-20" and "8 ± 3" are intervals with their middle;
    "8 (5-11)" is both. "22 %" and a decimal below one ("0,625") are shares of the `eggs` set. Parts that
    are not there are None. Less than nothing is not understood.
    """
    text = plain(text).replace("–", "-").replace("—", "-").replace("−", "-").replace("+/-", "±")
    if not text:
        return None, None, None, True
    inside = re.findall(r"[(\[](.*?)[)\]]", text)
    bare = re.sub(r"[(\[].*?[)\]]", " ", text)
    value, low, high = _plain_number(bare, eggs)
    if value is not None and low is None and inside:
        _, low, high = _plain_number(inside[0], eggs)
    return value, low, high, value is not None


def _plain_number(text, eggs):
    text = " ".join(_BESIDE_NUMBER.sub(" ", text).split()).rstrip(".! ")
    if (spelt := _spelt(text)) is not None:
        return spelt, None, None
    percent = text.endswith("%")
    if percent and eggs is None:
        return None, None, None
    text = text.replace("%", "").strip()
    if match := re.fullmatch(_NUMBER + r"\s*(?:/|of|out of)(?: the)?\s*\d+", text):
        return _float(match[1]), None, None

    def scaled(number):
        share = number / 100 if percent else number if 0 < number < 1 and eggs is not None else None
        return number if share is None else share * eggs

    if match := re.fullmatch(_NUMBER, text):
        return scaled(_float(match[1])), None, None
    if match := re.fullmatch(_NUMBER + r"\s*(?:-|to|and|\.\.+|…)\s*" + _NUMBER, text):
        low, high = sorted(scaled(_float(end)) for end in match.groups())
        return (low + high) / 2, low, high
    if match := re.fullmatch(_NUMBER + r"\s*±\s*" + _NUMBER, text):
        value, side = (scaled(_float(end)) for end in match.groups())
        return value, value - side, value + side
    return None, None, None


def _spelt(text):
    """A number in English words, up to ninety-nine."""
    words = [word for word in re.split(r"[\s-]+", text) if word]
    if len(words) == 1 and words[0] in _UNITS:
        return float(_UNITS.index(words[0]))
    if words and words[0] in _TENS and (len(words) == 1 or len(words) == 2 and words[1] in _UNITS[1:10]):
        return float(20 + 10 * _TENS.index(words[0]) + (_UNITS.index(words[1]) if words[1:] else 0))
    return None


def _float(text):
    return float(text.replace(",", "."))
