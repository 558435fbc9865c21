"""Four languages: what one of them says, the others say too, with the same facts and in their own writing."""

import re

import pytest
from fluent.syntax import FluentParser, ast
from fluent.syntax.visitor import Visitor

from hatchkit.say import catalogue, speak

OTHERS = ("de", "fr", "es")
FILES = ("batch.ftl", "causes.ftl", "check.ftl", "figures.ftl", "found.ftl", "logs.ftl", "page.ftl", "reading.ftl",
         "paper.ftl", "cautions.ftl", "workbook.ftl", "records.ftl", "season.ftl", "sheets.ftl", "years.ftl")


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
    """Messages of English in the files that are to be said in every language."""
    return sorted(name for name, file in catalogue.names("en").items() if file in FILES)


@pytest.mark.parametrize("language", OTHERS)
def test_every_message_is_there_in_every_language_with_the_same_facts(language):
    there, wanted = catalogue.names(language), translated()
    assert [name for name in wanted if name not in there] == []
    assert sorted(set(there) - set(catalogue.names("en"))) == []
    assert [(name, used(name, language), used(name, "en")) for name in wanted
            if used(name, language) != used(name, "en")] == []


@pytest.mark.parametrize("language", OTHERS)
def test_a_message_lies_in_the_file_of_the_same_name_and_can_be_read(language):
    english, speaker = catalogue.names("en"), speak._Speaker(language)
    for name, file in catalogue.names(language).items():
        assert english[name] == file, name
        assert speaker.learn(name), name


def words_of(name, language):
    """The plain words of a message, without what is in braces."""
    source = catalogue.source(name, language).split("=", 1)[1]
    return re.sub(r"\{[^{}]*\}|\[\w+\]", " ", re.sub(r"\{[^{}]*\}", " ", source))
