"""What every command of the kit shares: letters that a terminal lacks, and numbers that a person types."""

from __future__ import annotations

import argparse
import re
import sys


def speak_everywhere() -> None:
    """Let a terminal or file that lacks a letter of a name show ``?`` for it instead of stopping the work."""
    for stream in (sys.stdout, sys.stderr):
        if hasattr(stream, "reconfigure"):
            stream.reconfigure(errors="replace")


def whole(least: int):
    """A kind of option for argparse: a whole number, `least` or more."""
    def read(text: str) -> int:
        if not re.fullmatch(r"\s*[+-]?\d+\s*", text) or int(text) < least:
            raise argparse.ArgumentTypeError(f"{text!r} is not a whole number from {least} up")
        return int(text)
    return read
