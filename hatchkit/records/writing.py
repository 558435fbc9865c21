"""How a result is written: never over anything that is read, whole or not at all; pages fetch nothing."""

from __future__ import annotations

import os
import shutil
from contextlib import contextmanager
from pathlib import Path

from hatchkit.problems import HatchkitError
from hatchkit.records.places import below, given_paths

#: For the head of each page that is written: it fetches nothing, runs nothing and sends nothing.
SEALED = (
    "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'; "
    "img-src data:; base-uri 'none'; form-action 'none'\">"
)
#: Endings of files that the reader takes from the top of a season folder (records/files.py), and its settings.
READ = (".xlsx", ".xlsm", ".ods", ".xls", ".csv", ".tsv", ".txt", ".log", ".dat", ".toml")
#: The one table in a season folder that hatchkit writes and never reads.
OWN = "problems.csv"


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


def write_whole(path, content, *, encoding: str = "utf-8") -> Path:
    """Write text or bytes to a file, whole or not at all (`whole_file`); text keeps its line ends on every system.

    Parameters
    ----------
    path : path
    content : str or bytes
    encoding : str
        Of text.

    Returns
    -------
    Path
    """
    with whole_file(path) as part:
        part.write_bytes(content if isinstance(content, bytes) else content.encode(encoding))
    return Path(path)


def safe_output(path, *, season=None, inputs=(), suffix) -> Path:
    """`path` in full, if a result may be written there.

    Parameters
    ----------
    path : path
    season : path, optional
        Season folder (or "demo") whose own files must stay as they are.
    inputs : sequence of paths, optional
        Further files that must stay as they are, and folders in which every file is read.
    suffix : str or tuple of str
        Ending that the file must have, such as ".html".

    Returns
    -------
    Path
        Absolute; a file of that name may be there already.

    Raises
    ------
    HatchkitError
        In one sentence, if the ending is another, the place is no file in a folder that exists, it
        can't be written to, or something is read from there.
    """
    out = Path(path).expanduser().resolve()
    endings = (suffix,) if isinstance(suffix, str) else tuple(suffix)
    if out.suffix.lower() not in endings:
        raise HatchkitError("out_suffix", dict(path=str(path), suffix=endings[0]))
    try:
        if out.is_dir() or not out.parent.is_dir():
            raise HatchkitError("out_no_folder", dict(path=str(out)))
        if season is not None:
            for folder in _seasons(season):
                _not_read_by(folder, out)
        for kept in map(Path, inputs):
            _not_among(kept.expanduser().resolve(), out)
        _open_once(out)
    except OSError as error:
        raise HatchkitError("out_unwritable", dict(path=str(out), why=error.strerror)) from None
    return out


def _seasons(given) -> list[Path]:
    """Every folder that is read for a season, or for several."""
    folders = [path.parent if path.is_file() else path for path in given_paths(given)]
    return [*folders, *(place.folder for folder in folders for place in below(folder))]


def _not_read_by(folder: Path, out: Path) -> None:
    if not folder.is_dir():
        return  # the reader says so in its own words
    tops = [path for path in folder.iterdir() if path.suffix.lower() in READ and path.name != OWN]
    logs = [path for path in folder.iterdir() if path.name.lower() == "sensors" and path.is_dir()]
    new = out.parent == folder and out.suffix.lower() in READ and out.name != OWN
    for sensors in logs:
        _not_among(sensors.resolve(), out)
        tops += [path for path in sensors.rglob("*") if path.is_file()]
    if any(_same(path, out) for path in tops):
        raise HatchkitError("out_own_records", dict(path=str(out)))
    if new:
        raise HatchkitError("out_would_be_read", dict(path=str(out), own=OWN))


def _not_among(kept: Path, out: Path) -> None:
    if kept in out.parents or _same(kept, out):
        raise HatchkitError("out_among_read", dict(path=str(out)))


def _same(path: Path, out: Path) -> bool:
    """Whether both are one file, whatever the links and spellings that lead to it."""
    return path.resolve() == out or path.exists() and out.exists() and os.path.samefile(path, out)


def _open_once(out: Path) -> None:
    """Try to write before the work begins; a file that is there keeps every byte."""
    new = not out.exists()
    with open(out, "ab"):
        pass
    if new:
        out.unlink()
