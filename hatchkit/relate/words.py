"""The sentences about losses and temperature, made in this one place."""

from __future__ import annotations


def counts_in_words(found) -> str:
    """The verdict and its reasons."""
    return found.verdict[0].upper() + found.verdict[1:] + "."


def relation_in_words(found) -> str:
    """The same for a season."""
    return counts_in_words(found.counts)
