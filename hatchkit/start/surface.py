"""The notebooks as a person meets them: copied into a season folder and opened in JupyterLab."""

from __future__ import annotations

import os
import sys
from pathlib import Path

from hatchkit.records.places import environment, notebooks_folder
from hatchkit.records.writing import whole_file

_HERE = Path(__file__).resolve().parent


def copy_notebooks(folder) -> list[Path]:
    """Copy the kit's notebooks to ``folder/notebooks``; a file that is there is never touched.

    The copies carry no results and start on the folder that they lie in instead of the demo season.

    Returns
    -------
    list of Path
        The files written.
    """
    import nbformat

    target = Path(folder) / "notebooks"
    if target.resolve() == notebooks_folder().resolve():
        return []
    target.mkdir(parents=True, exist_ok=True)
    written = []
    for source in sorted(notebooks_folder().glob("*.ipynb")):
        copy = target / source.name
        if copy.exists():
            continue
        page = nbformat.read(source, as_version=4)
        page.metadata["kernelspec"] = {"display_name": "Python 3", "language": "python", "name": "python3"}
        for cell in page.cells:
            if cell.cell_type == "code":
                cell.outputs, cell.execution_count = [], None
                if "parameters" in cell.metadata.get("tags", []):
                    cell.source = cell.source.replace('"HATCHKIT_FOLDER", "demo"', '"HATCHKIT_FOLDER", ".."')
        with whole_file(copy, new=True) as part:
            nbformat.write(page, part)
        written.append(copy)
    return written


def lab_command(folder, *, port: int, browser: bool) -> list[str]:
    """The command that starts JupyterLab on a folder, quiet and calling nobody.

    The settings folder answers JupyterLab's question about news before it is asked; with the server
    options alone the pop-up still comes (seen with JupyterLab 4.6.6).
    """
    command = [
        sys.executable,
        "-m",
        "jupyterlab",
        f"--ServerApp.root_dir={Path(folder).resolve()}",
        f"--port={port}",
        "--KernelManager.transport_encryption=auto",
        f"--LabApp.app_settings_dir={_HERE / 'lab_settings'}",
        "--LabApp.news_url=None",
        "--LabApp.extension_manager=readonly",
        "--LabApp.check_for_updates_class=jupyterlab.NeverCheckForUpdate",
    ]
    first = Path(folder) / "notebooks" / "1_season_review.ipynb"
    if first.exists():
        command.append(f"--LabApp.default_url=/lab/tree/notebooks/{first.name}")
    if not browser:
        command.append("--no-browser")
    if hasattr(os, "geteuid") and os.geteuid() == 0:  # class-room containers run as root
        command.append("--allow-root")
    return command


def lab_environment(folder) -> dict:
    """The environment for JupyterLab: its notebooks start on `folder`."""
    return environment(HATCHKIT_FOLDER=str(Path(folder).resolve()))
