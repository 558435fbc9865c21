"""Names of birds and breeds in a text -> the species, with how much each speaks for it (``reference/breeds.csv``)."""

from __future__ import annotations

from functools import cache

import numpy as np

from hatchkit.records.sheets.lexicon import bare, cut, eggs_of_bird, phrases
from hatchkit.records.words import csv_rows, letters_apart, nearest_words

#: A plain word for a bird ("duck", "Enten") outweighs the name of a breed.
_KIND_WEIGHT = {"bird": 3.0, "breed": 1.0, "variety": 0.7, "abbreviation": 0.7}


#: Names that are also plain words of other languages: they count only where nothing else is written.
_ALONE = frozenset(
    "and due house tom nun king kur paw peas pav do bo br ba oe ee rp ib sa wh kc pr her in la le mi no".split()
)


#: Words for hens that end the name of another bird too.
_FOWL = frozenset({"fowl", "fowls"})


@cache
def _names() -> dict[tuple[str, ...], list[tuple[str, float]]]:
    """Words of a name -> (species, weight)."""
    names: dict[tuple[str, ...], list[tuple[str, float]]] = {}
    for row in csv_rows("breeds"):
        share = float(row.get("share") or 1.0)
        name = bare(row["name"])
        key = (name,) if name.isalpha() else tuple(cut(row["name"]))
        if key:
            names.setdefault(key, []).append((row["species"], share * _KIND_WEIGHT.get(row["kind"], 1.0)))
    for row in csv_rows("species_names"):
        key = tuple(cut(row["name"]))
        if key not in names and key:
            names[key] = [(row["species"], _KIND_WEIGHT["bird"])]
    return names


@cache
def _longest() -> int:
    return max(map(len, _names()))


@cache
def _single() -> tuple[str, ...]:
    return tuple(key[0] for key in _names() if len(key) == 1 and len(key[0]) >= 6)


def _find(words: tuple[str, ...]) -> list[tuple[str, float]] | None:
    names = _names()
    if words in names:
        return names[words]
    if len(words) == 1:
        word = words[0]
        for ending in (
            "s",
            "es",
            "e",
            "n",
            "en",
            "er",
            "r",
            "i",
            "a",
            "y",
            "ar",
            "or",
            "ow",
            "k",
            "kat",
            "ek",
            "et",
            "erne",
        ):
            if word.endswith(ending) and len(word) - len(ending) >= 3 and (word[: -len(ending)],) in names:
                return names[word[: -len(ending)],]
            if len(word) >= 4 and (word + ending,) in names:
                return names[word + ending,]
        part = _in_compound(word)
        if part:
            return part
        parted = eggs_of_bird(word)
        if parted and (parted[0],) in names:
            return names[parted[0],]
        if len(word) >= 7 and word not in phrases():
            near = nearest_words(word, _single())
            if len(near) == 1 and near[0][0] == word[0] and letters_apart(near[0], word, 2) == 1:
                return names[near[0],]
    elif words[-1].endswith("s") and (*words[:-1], words[-1][:-1]) in names:
        return names[*words[:-1], words[-1][:-1]]
    return None


@cache
def misspelt(text: str) -> str | None:
    """The bird whose plain name lies one letter (or two swapped) from the one word of a text; None if not just one."""
    words = cut(text)
    if len(words) != 1 or len(words[0]) < 4:
        return None
    near = {
        max(_names()[name,], key=lambda hit: hit[1])[0]
        for name in _plain_birds()
        if name[0] == words[0][0] and letters_apart(name, words[0], 1) == 1
    }
    return near.pop() if len(near) == 1 else None


@cache
def _plain_birds() -> tuple[str, ...]:
    """Plain words for birds, longest first, that compounds are made with ("Laufenten", "landgans")."""
    return tuple(
        sorted(
            (
                key[0]
                for key, hits in _names().items()
                if len(key) == 1 and len(key[0]) >= 4 and max(weight for _, weight in hits) >= _KIND_WEIGHT["bird"]
            ),
            key=len,
            reverse=True,
        )
    )


def _in_compound(word: str) -> list[tuple[str, float]] | None:
    for name in _plain_birds():
        if len(word) >= len(name) + 3 and (word.endswith(name) or word.startswith(name) and len(name) >= 5):
            return [(species, weight * 0.8) for species, weight in _names()[name,]]
    return None


@cache
def species_in(text) -> dict[str, float]:
    """Species that a text names, with weights; empty where no bird is named.

    Parameters
    ----------
    text : str
        A cell, a title, a file's name.
    """
    words, found, place, after = tuple(cut(text))[:40], {}, 0, -1
    while place < len(words):
        for length in range(min(_longest(), len(words) - place), 0, -1):
            hits = None if length == 1 < len(words) and words[place] in _ALONE else _find(words[place : place + length])
            if hits:
                if found and place == after and words[place] in _FOWL:
                    hits = []  # "lavender guinea fowl": the word is part of the name
                for species, weight in hits:
                    found[species] = found.get(species, 0.0) + weight
                place += length
                after = place
                break
        else:
            place += 1
    return _of_one_name(found)


#: Birds that name a colour of hens ("Wyandotte rebhuhnfarbig", "Vlaška koroptví"); common practice, no source.
_COLOURS = frozenset({"chukar", "partridge", "quail", "pheasant"})


def _of_one_name(found: dict[str, float]) -> dict[str, float]:
    """One bird where its name holds another's: a muscovy is called a duck, hens are coloured like partridges."""
    if found.get("muscovy", 0.0) >= found.get("duck", np.inf):
        found = {name: weight for name, weight in found.items() if name != "duck"}
    if "chicken" in found and found.keys() & _COLOURS and found["chicken"] <= _KIND_WEIGHT["breed"]:
        found = {name: weight for name, weight in found.items() if name not in _COLOURS}
    return found


def likeliest(weights: dict[str, float]) -> tuple[str | None, float]:
    """(species, share of the weight) of the likeliest; (None, 0) where none is named."""
    if not weights:
        return None, 0.0
    best = max(weights, key=weights.get)
    return best, weights[best] / sum(weights.values())
