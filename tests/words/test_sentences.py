"""Sentences become paragraphs and lists, escaped, and wrap between words."""

from hatchkit.words.sentences import WIDTH, sentences


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
