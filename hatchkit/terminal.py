"""What every command of the kit shares: letters that a terminal lacks, numbers that a person types, last words."""

from __future__ import annotations

import argparse
import re
import sys
from pathlib import Path

from hatchkit import __version__, say


def speak_everywhere() -> None:
    """Let a terminal or file that lacks a letter of a name show ``?`` for it instead of stopping the work."""
    for stream in (sys.stdout, sys.stderr):
        if hasattr(stream, "reconfigure"):
            stream.reconfigure(errors="replace")


def asked_language(options) -> str:
    """The language that was asked for on the command line, else English."""
    return getattr(options, "language", None) or say.LANGUAGES[0]


def tell(codes: str, language: str, **facts) -> None:
    """Print messages, parted by blanks: each on a line of its own, "new_line" as an empty one."""
    plain = {name: str(fact) if isinstance(fact, Path) else fact for name, fact in facts.items()}
    for code in codes.split():
        print("" if code == "new_line" else say.text(code, plain, language))


def whole(least: int):
    """A kind of option for argparse: a whole number, `least` or more."""

    def read(text: str) -> int:
        if not re.fullmatch(r"\s*[+-]?\d+\s*", text) or int(text) < least:
            raise argparse.ArgumentTypeError(say.text("not_whole_from", dict(given=text, least=least)))
        return int(text)

    return read


def unforeseen(error: BaseException, options=None, language: str = "en") -> str:
    """One sentence on an error that nobody foresaw: what it was at, and the file in which its details lie."""
    import tempfile
    import traceback

    at = getattr(options, "folder", "") or ""
    for frame, _ in traceback.walk_tb(error.__traceback__):
        for name in ("path", "file"):
            value = frame.f_locals.get(name)
            if isinstance(value, (str, Path)) and str(value) and not str(value).endswith(".py"):
                at = str(value)
    details = None
    try:
        with tempfile.NamedTemporaryFile(
            "w", prefix="hatchkit-", suffix=".txt", delete=False, encoding="utf-8", errors="replace"
        ) as file:
            file.write(f"hatchkit {__version__}, Python {sys.version}\n{' '.join(sys.argv)}\n\n")
            traceback.print_exception(error, file=file)
        details = file.name
    except OSError:
        pass  # the sentence then names no file
    return say.text("unforeseen", dict(error=type(error).__name__, at=str(at), details=details), language)
