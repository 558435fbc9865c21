"""Sentences become paragraphs and lists, escaped, and wrap between words."""

import pytest

from hatchkit.problems import HatchkitError
from hatchkit.words.sentences import WIDTH, or_say_why, sentences


def test_lines_become_paragraphs_and_points_a_list():
    shown = sentences("Two causes:\n- heat\n- cold <now>", "Look again.")._repr_html_()
    assert shown == "<p>Two causes:</p><ul><li>heat</li><li>cold &lt;now&gt;</li></ul><p>Look again.</p>"


def test_a_list_at_the_end_is_closed():
    assert sentences("- one")._repr_html_() == "<ul><li>one</li></ul>"


def test_several_texts_in_one_list_are_taken_one_by_one():
    assert sentences(["a", "b"], "c").lines == ["a", "b", "c"]


def test_plain_text_wraps_between_words():
    words = "hatch " * 60
    lines = repr(sentences(words)).splitlines()
    assert max(map(len, lines)) <= WIDTH
    assert " ".join(lines).split() == words.split()


def test_a_refusal_of_the_kit_is_said_and_the_notebook_goes_on(capsys):
    with or_say_why():
        raise HatchkitError("No eggs were weighed.")
    assert "No eggs were weighed." in capsys.readouterr().out


def test_a_mistake_of_ours_is_not_hidden():
    with pytest.raises(ZeroDivisionError), or_say_why():
        _ = 1 / 0
