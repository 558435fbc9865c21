"""A file or sheet that can't be read for a reason that nobody foresaw costs only itself, and is told."""

from __future__ import annotations

import os
from contextlib import contextmanager

from hatchkit.problems import HatchkitError, problem


@contextmanager
def guarded(file: str, sheet: str, found: list, code: str = "sheet_broken"):
    """Run what reads one file or sheet; an unforeseen error in it becomes one lost row of `found`.

    Parameters
    ----------
    file, sheet : str
        As messages name them; sheet is "" for a text.
    found : list of dict
        Problem rows, to which it is added.
    code : {"sheet_broken", "file_broken"}

    Raises
    ------
    Exception
        With HATCHKIT_STRICT, as in the tests, the error itself is shown.
    """
    try:
        yield
    except Exception as error:  # whatever it is, the other files are not to blame
        if os.environ.get("HATCHKIT_STRICT"):
            raise
        reason = error.reason() if isinstance(error, HatchkitError) else f"{type(error).__name__}: {error}"[:120]
        found.append(problem("lost", code=code, facts=dict(reason=reason), file=file, sheet=sheet, row=1))
