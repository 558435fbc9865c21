"""Four languages: what one of them says, the others say too, with the same facts and in their own writing."""

import html
import re
from functools import cache

import pytest
from fluent.syntax import FluentParser, ast
from fluent.syntax.visitor import Visitor

from hatchkit.findings.batch import poor_hatch
from hatchkit.findings.season import review
from hatchkit.pages.page import page as write
from hatchkit.say import catalogue, speak

OTHERS = ("de", "fr", "es")
FILES = (
    "batch.ftl",
    "breakout.ftl",
    "causes.ftl",
    "check.ftl",
    "climate.ftl",
    "eggs.ftl",
    "figures.ftl",
    "found.ftl",
    "logs.ftl",
    "page.ftl",
    "reading.ftl",
    "paper.ftl",
    "cautions.ftl",
    "workbook.ftl",
    "reasons.ftl",
    "records.ftl",
    "refused.ftl",
    "relate.ftl",
    "season.ftl",
    "sheets.ftl",
    "plan.ftl",
    "years.ftl",
    "trial.ftl",
    "logs_told.ftl",
    "logs_refused.ftl",
    "files.ftl",
    "settings.ftl",
    "checks.ftl",
    "launcher.ftl",
)


class _Used(Visitor):
    """What a message asks for: its facts, and the messages within it."""

    def __init__(self):
        self.facts, self.parts = set(), set()

    def visit_VariableReference(self, node):
        self.facts.add(node.id.name)

    def visit_Attribute(self, node):
        self.parts.add(node.id.name)
        self.generic_visit(node)


def used(name, language):
    """Facts and attributes of a message."""
    entry = FluentParser().parse_entry(catalogue.source(name, language))
    assert not isinstance(entry, ast.Junk), (language, name)
    visitor = _Used()
    visitor.visit(entry)
    return visitor.facts, visitor.parts


def translated():
    """Messages of English in the files that are to be said in every language.

    Not yet: the course, which is English but for single messages.
    """
    return sorted(name for name, file in catalogue.names("en").items() if file in FILES)


@pytest.mark.parametrize("language", OTHERS)
def test_every_message_is_there_in_every_language_with_the_same_facts(language):
    there, wanted = catalogue.names(language), translated()
    assert [name for name in wanted if name not in there] == []
    assert sorted(set(there) - set(catalogue.names("en"))) == []
    assert [
        (name, used(name, language), used(name, "en")) for name in wanted if used(name, language) != used(name, "en")
    ] == []


@pytest.mark.parametrize("language", OTHERS)
def test_a_message_lies_in_the_file_of_the_same_name_and_can_be_read(language):
    english, speaker = catalogue.names("en"), speak._Speaker(language)
    for name, file in catalogue.names(language).items():
        assert english[name] == file, name
        assert speaker.learn(name), name


ENGLISH = re.compile(r"\b(the|of|and|with|were|is|are|that|from|this|which|eggs|looks|days)\b")
#: The first screen, question by question, and the contents have none.
FIRST = re.compile(r"<header>.*?</nav>", re.S)


def lines_of(page):
    """The texts of a page, pictures' own words included, and what is folded left out."""
    shown = re.sub(r"<style.*?</style>|<details.*?</details>", "", page, flags=re.S)
    texts = (html.unescape(text).strip() for text in re.split(r"<[^>]+>", shown))
    return [text for text in texts if text]


def english_in(page):
    """Lines with words of English that no other of the four languages has."""
    return [line for line in dict.fromkeys(lines_of(page)) if ENGLISH.search(line)]


@pytest.fixture(scope="module")
def said(demo):
    """The page of the demo season and that of its poorest batch in a language, each written once."""
    season = demo.spoken_in("de")
    found = {"season": review(season), "batch": poor_hatch(season)}
    return cache(lambda about, language: write(found[about], language=language))


@pytest.mark.parametrize("about", ["season", "batch"])
@pytest.mark.parametrize("language", OTHERS)
def test_a_page_reads_in_its_language_without_a_placeholder(said, language, about):
    page = said(about, language)
    assert not re.search(r"\{ ?\$|\{\s*\w+\(|\?\?\?", " ".join(lines_of(page)))
    assert english_in(FIRST.search(page)[0]) == []
    assert english_in(page) == []


@pytest.mark.parametrize("about", ["season", "batch"])
def test_no_number_is_lost_between_languages(said, about):
    english, others = said(about, "en"), said(about, "de")

    def numbers(page):
        shown = " ".join(lines_of(FIRST.search(page)[0]))
        return sorted(re.findall(r"\d+", re.sub(r"[.,\u202f\u00a0](?=\d)", "", shown)))

    assert numbers(english) == numbers(others)
