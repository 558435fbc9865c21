"""Counts and days as they are spelt in a sentence."""

from hatchkit.words.spelling import day_words, many


def test_counts_and_days():
    assert many(1, "reading") == "1 reading" and many(3, "batch", "batches") == "3 batches"
    assert day_words(3.0) == "3" and day_words(2.46) == "2.5"
