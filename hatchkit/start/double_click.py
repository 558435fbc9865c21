"""A file to double-click in a season folder: it writes the season's review and opens it, without a terminal's words."""

from __future__ import annotations

import os
import shlex
import sys
from pathlib import Path

from hatchkit import say
from hatchkit.bootstrap import checkout
from hatchkit.records.writing import whole_file

#: The page that the file writes, beside itself.
PAGE = "season-review.html"

_LINUX = """[Desktop Entry]
Type=Application
Name={name}
Comment={comment}
Terminal=true
Exec=sh -c {command}
"""
_SHELL = """cd {folder} && {python} -m hatchkit review . --out {page} && {show} {page} || {{
echo; printf '%s ' {enter}; read -r line; }}"""
_MACOS = """#!/bin/sh
# {untried}
{command}
"""
_WINDOWS = """@echo off
rem {untried}
chcp 65001 >nul
cd /d "%~dp0"
{path}"{python}" -m hatchkit review . --out {page} && start "" {page} || pause
"""


def write_double_click(folder, *, system: str = sys.platform, language: str = "en") -> list[Path]:
    """Lay the file for a system into a season folder; one that is there is left as it is.

    Parameters
    ----------
    folder : path
    system : str
        As ``sys.platform``: "win32", "darwin", or any other for Linux and its kin. Those for Windows and macOS were
        never tried.
    language : str
        Of what the file says.

    Returns
    -------
    list of Path
        The file written, if any.
    """
    folder = Path(folder).resolve()
    name, text = double_click(folder, system, language)
    out = folder / name
    if out.exists():
        return []
    with whole_file(out, new=True) as part:
        part.write_text(text, encoding="utf-8", newline="\r\n" if system == "win32" else "\n")
        if os.name != "nt":
            part.chmod(0o755)
    return [out]


def double_click(folder: Path, system: str, language: str = "en") -> tuple[str, str]:
    """Name and text of the file for one system."""
    root = checkout()
    said = {name: say.text(f"click_{name}", dict(page=PAGE), language) for name in ("name", "comment", "untried")}
    enter = shlex.quote(say.text("click_enter", {}, language))
    if system == "win32":
        path = f'set "PYTHONPATH={root}"\n' if root else ""
        return "Review this season.bat", _WINDOWS.format(page=PAGE, path=path, python=sys.executable, **said)
    python = " ".join(([f"PYTHONPATH={shlex.quote(root)}"] if root else []) + [shlex.quote(sys.executable)])
    if system == "darwin":
        command = _SHELL.format(folder='"$(dirname "$0")"', python=python, page=PAGE, show="open", enter=enter)
        return "Review this season.command", _MACOS.format(command=command, **said)
    command = _SHELL.format(folder=shlex.quote(str(folder)), python=python, page=PAGE, show="xdg-open", enter=enter)
    return "Review this season.desktop", _LINUX.format(command=_quoted(command.replace("\n", " ")), **said)


def _quoted(command: str) -> str:
    """One argument of an Exec line (Desktop Entry Specification 1.5, "The Exec key"): quoted, % and escapes doubled."""
    escaped = "".join(f"\\{letter}" if letter in '"`$\\' else letter for letter in command)
    return '"' + escaped.replace("\\", "\\\\").replace("%", "%%") + '"'
