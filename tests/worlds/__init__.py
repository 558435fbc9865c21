"""Simulated seasons of small breeders, made to check from outside whether a named cause of a poor hatch is right.

    truth = make_season("second", seed=7, folder=path, cause="turning", severity="moderate")
    oracle(truth)                      # best reachable posterior over the causes, world 'second'

Two worlds of different making: 'second' has hazards by the day with causes as kernels; 'third' has eggs with tolerances
and damage that piles up. textbook, trials and base_rates hold written cases with the answer expected.
"""

from .codes import BIRDS, CAUSES, SEVERITY, SHOWS_IN
from .oracle import oracle
from .seasons import cases, make_season

__all__ = ["BIRDS", "CAUSES", "SEVERITY", "SHOWS_IN", "cases", "make_season", "oracle"]
