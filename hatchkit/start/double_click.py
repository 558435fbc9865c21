"""A file to double-click in a season folder: it writes the season's review and opens it, without a terminal's words."""

from __future__ import annotations

import os
import shlex
import sys
from pathlib import Path

from hatchkit.bootstrap import checkout
from hatchkit.records.writing import whole_file

#: The page that the file writes, beside itself.
PAGE = "season-review.html"

_LINUX = """[Desktop Entry]
Type=Application
Name=Review this season
Comment=Writes {page} with hatchkit and opens it
Terminal=true
Exec=sh -c {command}
"""
_SHELL = """cd {folder} && {python} -m hatchkit review . --out {page} && {show} {page} || {{
echo; printf 'Press Enter to close this window. '; read -r line; }}"""
_MACOS = """#!/bin/sh
# Untried: double-click writes {page} beside this file and opens it.
{command}
"""
_WINDOWS = """@echo off
rem Untried: double-click writes {page} beside this file and opens it.
chcp 65001 >nul
cd /d "%~dp0"
{path}"{python}" -m hatchkit review . --out {page} && start "" {page} || pause
"""


def write_double_click(folder, *, system: str = sys.platform) -> list[Path]:
    """Lay the file for a system into a season folder; one that is there is left as it is.

    Parameters
    ----------
    folder : path
    system : str
        As ``sys.platform``: "win32", "darwin", or any other for Linux and its kin. Those for Windows and macOS were
        never tried.

    Returns
    -------
    list of Path
        The file written, if any.
    """
    folder = Path(folder).resolve()
    name, text = double_click(folder, system)
    out = folder / name
    if out.exists():
        return []
    with whole_file(out, new=True) as part:
        part.write_text(text, encoding="utf-8", newline="\r\n" if system == "win32" else "\n")
        if os.name != "nt":
            part.chmod(0o755)
    return [out]


def double_click(folder: Path, system: str) -> tuple[str, str]:
    """Name and text of the file for one system."""
    root = checkout()
    if system == "win32":
        path = f'set "PYTHONPATH={root}"\n' if root else ""
        return "Review this season.bat", _WINDOWS.format(page=PAGE, path=path, python=sys.executable)
    python = " ".join(([f"PYTHONPATH={shlex.quote(root)}"] if root else []) + [shlex.quote(sys.executable)])
    if system == "darwin":
        command = _SHELL.format(folder='"$(dirname "$0")"', python=python, page=PAGE, show="open")
        return "Review this season.command", _MACOS.format(page=PAGE, command=command)
    command = _SHELL.format(folder=shlex.quote(str(folder)), python=python, page=PAGE, show="xdg-open")
    return "Review this season.desktop", _LINUX.format(page=PAGE, command=_quoted(command.replace("\n", " ")))


def _quoted(command: str) -> str:
    """One argument of an Exec line (Desktop Entry Specification 1.5, "The Exec key"): quoted, % and escapes doubled."""
    escaped = "".join(f"\\{letter}" if letter in '"`$\\' else letter for letter in command)
    return '"' + escaped.replace("\\", "\\\\").replace("%", "%%") + '"'
