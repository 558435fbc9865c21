"""Each public call says what it takes, in which unit and shape, what comes back, and on whose word it calculates."""

import importlib
import inspect
import re
from pathlib import Path

import pytest

import hatchkit

ROOT = Path(__file__).resolve().parent.parent
#: Calls that calculate: a specialist must be able to check them against a paper, or be told that there is none.
CALCULATES = {
    "breakdown", "age_at_death", "find_excursions", "exposure", "relate_losses", "likely_causes", "next_set", "groups",
    "years", "trial", "simulate_season", "draw_season", "egg_temperature", "interval", "pooled",
}  # fmt: skip
UNIT = re.compile(r"degC|degF|%|\bdays?\b|\bhours?\b|0-1|shape|\beggs\b|grams|K h")
SOURCE = re.compile(r"Source|from memory|\b(18|19|20)\d\d\b")


def _public():
    """The face, what rooms export, and what the notebooks import."""
    found = {(home, name) for name, home in hatchkit._HOME.items()}
    for room in ("figures", "simulate"):
        found |= {(f"hatchkit.{room}", name) for name in importlib.import_module(f"hatchkit.{room}").__all__}
    for book in (ROOT / "notebooks").glob("*.ipynb"):
        text = book.read_text(encoding="utf-8")
        for module, names in re.findall(r"from (hatchkit[\w.]*) import ([\w, ]+)", text):
            found |= {(module, name.strip()) for name in names.split(",")}
    calls = {(name, getattr(importlib.import_module(module), name, None)) for module, name in found}
    return sorted(((name, call) for name, call in calls if inspect.isfunction(call)), key=lambda pair: pair[0])


PUBLIC = _public()


def _section(call, name: str) -> str:
    text = re.split(r"^(\w+)\n-+\n", inspect.getdoc(call) or "", flags=re.MULTILINE)
    return dict(zip(text[1::2], text[2::2], strict=True)).get(name, "")


def test_the_public_calls_are_found():
    assert len(PUBLIC) > 35 and CALCULATES <= {name for name, _ in PUBLIC}


@pytest.mark.parametrize(("name", "call"), PUBLIC, ids=[name for name, _ in PUBLIC])
def test_every_parameter_and_what_comes_back_is_said(name, call):
    told = _section(call, "Parameters")
    wanted = [one for one in inspect.signature(call).parameters if one != "ax"]
    heads = [line.split(" : ")[0] for line in told.splitlines() if line[:1].strip()]
    named = {word.strip(" *") for head in heads for word in head.split(",")}
    assert set(wanted) <= named
    nothing = inspect.signature(call).return_annotation in (None, "None")
    assert nothing or _section(call, "Returns")


@pytest.mark.parametrize(("name", "call"), [pair for pair in PUBLIC if pair[0] in CALCULATES])
def test_what_is_calculated_has_units_and_a_source(name, call):
    assert UNIT.search(inspect.getdoc(call)) and SOURCE.search(inspect.getdoc(call))
