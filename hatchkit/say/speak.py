"""A message and its facts -> words, by Fluent: plurals, cases and lists as each language has them."""

from __future__ import annotations

import os
import re
from functools import cache

from fluent.runtime import FluentBundle, FluentResource
from fluent.runtime.types import FluentNone

from hatchkit.say import values
from hatchkit.say.catalogue import FIRST, source
from hatchkit.say.readings import parts_of

_REFERENCE = re.compile(r"\{\s*(-?[a-z][\w-]*)")


#: A message of one line without a fact, a choice or another message in it.
_PLAIN = re.compile(r"-?[a-zA-Z][\w-]*[ ]*=[ ]*([^\s{}][^\n{}]*?)\s*")


class MissingWords(LookupError):
    """A message that is not there, or a message that needs a fact which was not given: a mistake of ours."""


def message(code: str, facts: dict, language: str, unit: str = "C") -> str:
    """The words of `code`; see `hatchkit.say.text`."""
    words = _as_written(code, language)
    return words if words is not None else _say(code, facts, language, lambda bundle, found: [found.value], unit)[0]


@cache
def _as_written(code: str, language: str) -> str | None:
    """The words of a message that says the same always: most headings are such, and need no working out."""
    text = source(code, language)
    match = _PLAIN.fullmatch(text if text is not None else source(code, FIRST) or "")
    return match[1] if match else None


def attributes(code: str, facts: dict, language: str, needed, allowed, unit: str = "C") -> dict:
    """The attributes of `code` by name; an allowed one that is not there is ""."""

    def patterns(bundle, found):
        return [found.attributes.get(name) for name in needed] + [found.attributes.get(name, "") for name in allowed]

    return dict(zip((*needed, *allowed), _say(code, facts, language, patterns, unit), strict=True))


def _say(code: str, facts: dict, language: str, patterns, unit: str = "C") -> list[str]:
    speaker = _speaker(language if source(code, language) is not None else FIRST, unit)
    given = {name: _value(value, language, unit) for name, value in facts.items()}
    if not speaker.learn(code):
        return _without_words(f"there is no message {code!r}", code, facts)
    texts = []
    for pattern in patterns(speaker.bundle, speaker.bundle.get_message(code)):
        if pattern == "":
            texts.append("")
            continue
        if pattern is None:
            return _without_words(f"the message {code!r} lacks a part", code, facts)
        words, errors = speaker.bundle.format_pattern(pattern, given)
        if errors or isinstance(words, FluentNone):
            return _without_words(f"{code!r}: {errors}", code, facts)
        texts.append(words)
    return texts


def _value(fact, language: str, unit: str):
    """A fact as Fluent takes it; one that is a message itself (a dict of its code, facts and perhaps part) is said."""
    if isinstance(fact, (list, tuple)):
        return values.Several([_value(one, language, unit) for one in fact])
    if not isinstance(fact, dict) or not {"code", "facts"} <= fact.keys():
        return values.value_of(fact)
    if part := fact.get("part"):
        return attributes(fact["code"], fact["facts"] or {}, language, (), (part,), unit)[part]
    return message(fact["code"], fact["facts"], language, unit)


def _without_words(why: str, code: str, facts: dict) -> list[str]:
    """In tests an error; for a person, who would rather have the season than nothing, the bare facts."""
    if os.environ.get("HATCHKIT_STRICT"):
        raise MissingWords(why)
    told = ", ".join(f"{name} {value}" for name, value in facts.items())
    return [f"{code.replace('_', ' ')} ({told})"[:500], "", ""]


class _Speaker:
    """A language's bundle, which learns a message when it is first asked for."""

    def __init__(self, language: str, unit: str = "C"):
        self.language, self.known = language, set()
        locale = values.LOCALES.get(language, language).replace("_", "-")
        functions = values.functions(language, unit)
        functions["WORD"] = lambda key, kind="word": word(str(kind), str(key), language)
        functions["WORDS"] = lambda keys, kind: values.Several(
            [word(str(kind), str(key), language) for key in keys.items]
        )
        functions["READING"] = lambda taken: reading_words(str(taken), language)
        functions["READINGS"] = lambda many: values.Several([reading_words(str(one), language) for one in many.items])
        self.bundle = FluentBundle([locale], functions=functions, use_isolating=False)

    def learn(self, name: str) -> bool:
        """Take in a message with all that it refers to; False if it is not there."""
        if name in self.known:
            return True
        text = source(name, self.language)
        if text is None:
            return False
        self.known.add(name)
        resource = FluentResource(text)
        self.bundle.add_resource(resource)
        if any(type(entry).__name__ == "Junk" for entry in resource.body):
            raise ValueError(f"the message {name} of {self.language} is misspelt: {text}")
        for other in _REFERENCE.findall(text):
            self.learn(other)
        return True


@cache
def _speaker(language: str, unit: str = "C") -> _Speaker:
    return _Speaker(language, unit)


def word(kind: str, key: str, language: str) -> str:
    """The word for one of the kit's keys ("species", "chicken"); a key without a word is shown as it is."""
    code = f"{kind}_{re.sub(r'[^a-zA-Z0-9_-]', '_', key)}"
    if source(code, language) is None and source(code, FIRST) is None:
        return key.replace("_", " ")
    return message(code, {}, language)


def reading_words(taken: str, language: str = "en") -> str:
    """The words for a reading's key; a field that has none is shown as it is."""
    parts = parts_of(taken)
    field = word("field", parts["field"], language)
    when = (
        "day"
        if parts["day"] is not None
        else "transfer"
        if parts["transfer"] == "yes"
        else "order"
        if parts["order"] is not None
        else "none"
    )
    return message(
        "reading_words",
        dict(
            field=field,
            when=when,
            within=parts["within"],
            day=parts["day"] or 0,
            order=parts["order"] or 0,
            transfer=parts["transfer"],
        ),
        language,
    )
