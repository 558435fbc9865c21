"""Seasons with a known answer: for the demo, for lessons, and to prove that the statistics work."""

from hatchkit.simulate.answer import Answer, read_answer
from hatchkit.simulate.causes import cause_names
from hatchkit.simulate.demo import write_demo
from hatchkit.simulate.seasons import draw_season, simulate_season

__all__ = ["Answer", "cause_names", "draw_season", "read_answer", "simulate_season", "write_demo"]
