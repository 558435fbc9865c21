"""What a person confirmed of a folder's sheets: ``answers.toml``, the kit's own file.

An answer is bound to file, sheet and heading, so that a changed sheet is asked only for what changed. The sheet and
season.toml, which the person wrote, are never touched; deleting the file asks anew.
"""

from __future__ import annotations

import hashlib
import os
import re
import tomllib
from pathlib import Path

from hatchkit import say
from hatchkit.problems import HatchkitError, problem
from hatchkit.records.places import demo_folder

FILE = "answers.toml"
_MOST_BYTES = 1_000_000


def load_answers(folder) -> dict:
    """What was confirmed of a folder's sheets.

    Parameters
    ----------
    folder : path

    Returns
    -------
    dict
        (file, sheet, heading) -> what it was taken for. A question that is about no column has a heading that
        begins with "?", such as "?species".
    """
    return read_answers(folder)[0]


def read_answers(folder) -> tuple[dict, list[dict]]:
    """As `load_answers`, with problem rows: a file that can't be read, and answers that lie in another folder."""
    answers, found = {}, []
    for path in _places(Path(folder)):
        if not path.is_file():
            continue
        try:
            with open(path, "rb") as handle:
                rows = tomllib.loads(handle.read(_MOST_BYTES).decode("utf-8")).get("answer", [])
        except (OSError, ValueError, RecursionError):
            found.append(problem("doubtful", code="answers_unreadable", facts=dict(path=str(path)), file=path.name))
            continue
        rows = rows if isinstance(rows, list) else []
        mine = {key: row["taken"] for row in rows if (key := _key_of(row)) is not None}
        if mine and path.name != FILE:
            found.append(
                problem("note", code="answers_elsewhere", facts=dict(path=str(path), count=len(mine)), file=path.name)
            )
        answers.update(mine)
    return answers, found


def keep_answers(folder, answers: dict, language: str = "en") -> Path:
    """Add answers to those that were kept before.

    Parameters
    ----------
    folder : path
        Season folder. If it can't be written to, or is the demo season, the file goes to the working folder, else
        to the home folder, and is read from there again.
    answers : dict
        As `load_answers` returns.
    language : str
        Of the remark at the head of the file.

    Returns
    -------
    Path
        The file written.

    Raises
    ------
    HatchkitError
        If it can be written nowhere.
    """
    places = _places(Path(folder))
    text = (
        say.text("answers_head", {}, language)
        + "\n"
        + "".join(_block(key, taken) for key, taken in sorted({**load_answers(folder), **answers}.items()))
    )
    for path in [*places[:1], *reversed(places[1:])] if places[0].name == FILE else list(reversed(places)):
        try:
            _replace(path, text)
        except OSError:
            continue
        return path
    raise HatchkitError("answers_nowhere", dict(folder=str(folder)))


def _places(folder: Path) -> list[Path]:
    """Where answers may lie, a later one wins: the folder itself, the home folder, the working folder."""
    folder = folder.resolve()
    mark = hashlib.sha256(str(folder).encode("utf-8", "surrogatepass")).hexdigest()[:8]
    name = f"answers-{re.sub(r'[^A-Za-z0-9]+', '_', folder.name)[:40]}-{mark}.toml"
    try:
        homes = [Path.home(), Path.cwd()]
    except (RuntimeError, OSError):
        homes = [Path(".")]
    own = [] if _is_demo(folder) else [folder / FILE]
    return own + [home / name for home in homes]


def _is_demo(folder: Path) -> bool:
    try:
        return folder == demo_folder().resolve()
    except HatchkitError:
        return False


def _key_of(row):
    """The key of one entry of the file; None if it is not one of ours."""
    if not isinstance(row, dict) or not isinstance(row.get("taken"), str):
        return None
    key = tuple(row.get(name, "") for name in ("file", "sheet", "heading"))
    return key if all(isinstance(part, str) for part in key) else None


def _block(key, taken) -> str:
    file, sheet, heading = key
    code = heading[1:] if heading.startswith("?") else "meaning"
    told = dict(file=file, sheet=sheet, heading=heading, code=code, taken=taken)
    return "\n[[answer]]\n" + "".join(f"{name} = {_quoted(value)}\n" for name, value in told.items())


def _quoted(text) -> str:
    """A text as TOML writes it."""
    escaped = []
    for char in str(text or ""):
        if char in '"\\':
            escaped.append("\\" + char)
        elif ord(char) < 32 or ord(char) == 127:
            escaped.append(f"\\u{ord(char):04x}")
        else:
            escaped.append("\ufffd" if 0xD800 <= ord(char) <= 0xDFFF else char)
    return f'"{"".join(escaped)}"'


def _replace(path: Path, text: str) -> None:
    """Write a file whole or not at all."""
    part = path.with_name(path.name + ".part")
    try:
        part.write_text(text, encoding="utf-8", newline="\n")
        os.replace(part, path)
    except OSError:
        part.unlink(missing_ok=True)
        raise
