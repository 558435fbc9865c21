"""Seasons with a known answer: for the demo, for lessons, and to prove that the statistics work."""

from hatchkit.simulate.answer import Answer, read_answer
from hatchkit.simulate.demo import write_demo

__all__ = ["Answer", "read_answer", "write_demo"]
