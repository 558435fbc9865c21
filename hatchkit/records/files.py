"""The files of a season folder: which are read as tables, which may be logs, and which can't be read at all."""

from __future__ import annotations

import os
import re
from itertools import zip_longest
from pathlib import Path

from hatchkit.problems import HatchkitError, problem
from hatchkit.records.guard import guarded
from hatchkit.records.places import OWN_FILES, may_be_table
from hatchkit.records.sheets.cells import is_empty
from hatchkit.records.workbook import PLAIN, TEXTS, WORKBOOKS, read_grids

#: Files of a folder that are looked at.
MOST_FILES = 500
#: Files of one kind that can't be read which are told by name.
MOST_NAMED = 3
#: Endings of texts that are no table of batches, but may be a log or a diary.
LOG_TEXTS = (".txt", ".log", ".dat")
#: What holds records for people and none for a program, with how to get them out.
_NOT_READ = {
    ".numbers": "numbers",
    ".pdf": "pdf",
    ".jpg": "photo",
    ".jpeg": "photo",
    ".png": "photo",
    ".heic": "photo",
    ".docx": "document",
    ".doc": "document",
    ".pages": "document",
    ".gsheet": "link",
    ".odt": "document",
}


def names_in(folder: Path) -> list[str]:
    """Names of what lies in a folder, hidden and lock files left out; a clear error where it can't be read."""
    if not folder.exists():
        raise HatchkitError("no_folder", dict(folder=str(folder)))
    if not folder.is_dir():
        raise HatchkitError("folder_is_file", dict(folder=str(folder)))
    try:
        names = sorted(entry.name for entry in os.scandir(folder))
    except OSError as error:
        raise HatchkitError("folder_unreadable", dict(folder=str(folder), why=error.strerror)) from error
    return [name for name in names if not name.startswith((".", "~"))]


def plain_texts(folder: Path, names: list[str], settings: dict) -> list[str]:
    """Texts that are read as tables, since a folder holds no workbook and no table of text; logs are none.

    Parameters
    ----------
    folder : Path
    names : list of str
        What lies in it.
    settings : dict
        season.toml, which may name a text as a log.
    """
    mine = [Path(name) for name in names[:MOST_FILES] if (folder / name).is_file()]
    if any(may_be_table(path) for path in mine):
        return []
    return [path.name for path in mine if path.suffix.lower() == PLAIN and not _is_log(folder / path, settings)]


def _is_log(path: Path, settings: dict) -> bool:
    """Whether a text is a log; one that breaks the reader of logs is left to it, which tells."""
    from hatchkit.records.logs.season import is_told_log

    log = True
    with guarded(path.name, "", [], "file_broken"):
        log = is_told_log(path, settings)
    return log


def read_files(folder: Path, names: list[str], found: list, plain=()):
    """The cells of every sheet in the folder's own files, and the files that could not be read as tables.

    `plain` names the texts that are read as tables, too (`plain_texts`).
    """
    grids, unread, not_read = [], [], {}
    names, copies = _without_copies(folder, names[:MOST_FILES])
    for name, kept in copies:
        found.append(_copy_told(folder, name, kept))
    for name in names:
        suffix = Path(name).suffix.lower()
        if (folder / name).is_dir() or name in OWN_FILES:
            continue
        if suffix in _NOT_READ:
            not_read.setdefault(_NOT_READ[suffix], []).append(name)
            continue
        if suffix not in WORKBOOKS + TEXTS and name not in plain:
            continue
        mine, told = [], []
        with guarded(name, "", told, "file_broken"):
            mine, told = read_grids(folder / name, file=name)
        if suffix not in WORKBOOKS and not mine:
            unread.append((name, suffix, told))
            continue
        found += told
        # Not the sheet of explanations that `hatchkit start` writes beside the tables.
        grids += [grid for grid in mine if not any("(hatchkit)" in str(cell) for cell in next(iter(grid.cells), []))]
    for kind, mine in not_read.items():
        # More than a note, since a note does not say what the person can do: records may lie in them.
        told = ", ".join(mine[:MOST_NAMED]) + (" ..." if len(mine) > MOST_NAMED else "")
        found.append(problem("doubtful", code=f"file_{kind}", facts=dict(name=told), file=mine[0]))
    return grids, unread


def _without_copies(folder: Path, names: list[str]):
    """Files less a browser's copies of one of them ("batches (1).xlsx"): the newer one counts."""
    plain: dict = {}
    for name in names:
        bare = re.sub(
            r"( ?\(\d+\)| - (?:copy|kopie|copie|copia|kopia)(?: ?\(\d+\))?|_copy)(?=\.[^.]+$)", "", name, flags=re.I
        )
        plain.setdefault(bare.lower(), []).append(name)
    kept, copies = [], []
    for group in plain.values():
        if len(group) == 1:
            kept += group
            continue
        newest = max(group, key=lambda name: ((folder / name).stat().st_mtime, -len(name)))
        kept.append(newest)
        copies += [(name, newest) for name in group if name != newest]
    return sorted(kept), copies


def _copy_told(folder: Path, name: str, kept: str) -> dict:
    """The problem row of a copy: the same throughout, or other in so many cells."""
    cells = _cells_that_differ(folder / name, folder / kept)
    if not cells:
        return problem("note", code="copy_of", facts=dict(name=name, kept=kept), file=name)
    return problem("doubtful", code="copy_differs", facts=dict(name=name, kept=kept, cells=cells), file=name)


def _cells_that_differ(one: Path, other: Path) -> int:
    """Cells in which two tables differ; 0 where they are the same, or one of them can't be read as a table."""
    if one.suffix.lower() not in WORKBOOKS + TEXTS or one.is_dir() or other.is_dir():
        return 0
    sheets, told = [], []
    for path in (one, other):
        mine = []
        with guarded(path.name, "", told, "file_broken"):
            mine, _ = read_grids(path, file="")
        if not mine:
            return 0
        sheets.append({grid.sheet: grid.cells for grid in mine})
    return sum(
        left != right and not (is_empty(left) and is_empty(right))
        for sheet in sheets[0].keys() | sheets[1].keys()
        for mine, others in zip_longest(sheets[0].get(sheet, []), sheets[1].get(sheet, []), fillvalue=())
        for left, right in zip_longest(mine, others, fillvalue="")
    )
