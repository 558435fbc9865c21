"""Each stage has one short name and one name within a sentence."""

from hatchkit.advice.published import STAGES
from hatchkit.figures import style
from hatchkit.words.stage_names import label


def test_short_names():
    assert label("pipped_dead") == "pipped, died"
    assert label("clear") == "clear, not opened"


def test_a_later_candling_and_an_unknown_key_still_read_as_words():
    assert label("candle4") == "candling 4"
    assert label("days_1_4") == "days 1 4"


def test_no_stage_or_fill_is_shown_by_its_key():
    for key in (*STAGES, *style.FILLS):
        assert "_" not in label(key)


#: What `climate.shapes.looks_like` may return, and what `steady` is.
WORDS = ("opening", "drift", "outage", "overheating", "sensor", "loading", "unclear", "steady")


def test_every_word_for_a_disturbance_has_a_name():
    """The words of the climate room are no names themselves: "opening" is a lid or door opened."""
    assert {word for word in WORDS if label(word) == word} == {"overheating"}
