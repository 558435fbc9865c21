"""The sentences about losses and temperature, made in this one place."""

from __future__ import annotations

import numpy as np


def counts_in_words(found) -> str:
    """The verdict and its reasons."""
    return found.verdict[0].upper() + found.verdict[1:] + "."
