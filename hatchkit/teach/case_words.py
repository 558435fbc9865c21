"""The words of a case in the student's language: the lists to choose from and the statements to tick."""

from functools import cache

from hatchkit import reference
from hatchkit.say import text
from hatchkit.units import c_to_f

LANGUAGES = ("en", "de", "fr", "es")
STAGES = ("infertile", "early", "mid", "late", "pipped", "removed", "none")
LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"


def stage_words(stage, language="en") -> str:
    """A stage as the form shows it."""
    return text(f"teach_stage_{stage}", {}, language)


def cause_words(cause, language="en") -> str:
    """A cause as the form shows it; "none" is that none can be told."""
    return text(f"teach_cause_{cause}", {}, language)


@cache
def causes() -> tuple:
    """Keys of the causes to choose from, "none" first."""
    return tuple(reference.load("simulate_causes")["cause"])


def statement(code, numbers, language="en") -> str:
    """The sentence of a statement (`case_facts.Fact`) in the student's language."""
    facts = dict(numbers)
    if "stage" in facts:
        facts["stage"] = stage_words(facts["stage"], language).split(" (")[0]
    if "extreme" in facts:
        facts["extreme_f"] = round(c_to_f(facts["extreme"]), 1)
    return text(f"teach_fact_{code}", facts, language)
