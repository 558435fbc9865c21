"""How a result is written: whole or not at all, and pages that fetch nothing."""

from __future__ import annotations

import os
import shutil
from contextlib import contextmanager
from pathlib import Path

from hatchkit.problems import HatchkitError

#: For the head of each page that is written: it fetches nothing, runs nothing and sends nothing.
SEALED = (
    "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'; "
    "img-src data:; base-uri 'none'; form-action 'none'\">"
)


@contextmanager
def whole_file(path, *, new: bool = False):
    """A hidden file beside `path` to write to; when the block ends it is moved over `path`, whole.

    A full disk, an error or a kill on the way leaves what was there before as it was.

    Parameters
    ----------
    path : path
    new : bool
        Never over a file that is there.

    Yields
    ------
    Path
        The file to write.

    Raises
    ------
    HatchkitError
        Naming `path`, where it can't be written.
    FileExistsError
        With `new`, if the file is there.
    """
    path = Path(path)
    part = path.with_name(f".{path.name[:100]}.{os.getpid()}.part")
    try:
        yield part
        with open(part, "rb+") as handle:
            os.fsync(handle.fileno())
        if new and path.exists():
            raise FileExistsError(17, "File exists", str(path))
        if path.exists():
            shutil.copymode(path, part)
        os.replace(part, path)
    except FileExistsError:
        raise
    except OSError as error:
        raise HatchkitError("not_written", dict(path=str(path), why=error.strerror or type(error).__name__)) from None
    finally:
        part.unlink(missing_ok=True)
