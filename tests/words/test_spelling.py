"""Counts as they are spelt in a sentence."""

from hatchkit.words.spelling import many


def test_counts():
    assert many(1, "reading") == "1 reading" and many(3, "batch", "batches") == "3 batches"
