"""The commands that begin: `hatchkit start` makes a season folder, `hatchkit open` opens JupyterLab on one."""

from __future__ import annotations

from pathlib import Path

from hatchkit.bootstrap import run_and_wait
from hatchkit.problems import HatchkitError
from hatchkit.terminal import asked_language, tell, whole


def open_options(sub) -> None:
    """Folder, browser and port of JupyterLab, on a parser of argparse."""
    sub.add_argument("folder")
    sub.add_argument("--no-browser", action="store_true", help="do not open a browser window")
    sub.add_argument("--port", type=whole(1), default=8888)


def start(options) -> None:
    """Write what a new season folder needs and say what was written."""
    from hatchkit.start.blank_season import start_folder
    from hatchkit.start.double_click import write_double_click
    from hatchkit.start.surface import copy_notebooks

    folder = Path(options.folder).expanduser()
    language = asked_language(options)
    written = [*start_folder(folder, language), *copy_notebooks(folder), *write_double_click(folder, language=language)]
    if not written:
        tell("start_nothing", language, folder=folder.resolve())
    for path in written:
        tell("wrote", language, path=path)


def open_lab(options) -> int:
    """Copy the notebooks beside the season and wait for JupyterLab; returns its exit status."""
    from hatchkit.records.places import season_folder
    from hatchkit.start.surface import copy_notebooks, lab_command, lab_environment

    folder = season_folder(options.folder)
    if not folder.is_dir():
        raise HatchkitError("no_folder_yet", dict(folder=str(folder), given=options.folder))
    home = Path.cwd() if options.folder == "demo" else folder
    for path in copy_notebooks(home):
        tell("wrote", asked_language(options), path=path)
    command = lab_command(home, port=options.port, browser=not options.no_browser)
    return run_and_wait(command, env=lab_environment(folder))
