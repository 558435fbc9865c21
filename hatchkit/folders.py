"""Where things lie: a season as given, and the demo and the notebooks that ship with the kit."""

from __future__ import annotations

import os
from pathlib import Path

from hatchkit.problems import HatchkitError


def demo_folder() -> Path:
    """The invented demo season that ships with the kit, found from any working folder."""
    return _shipped("data_demo", "The demo season is not installed with this copy of hatchkit.")


def demo_years() -> Path:
    """The three invented years beside the demo season."""
    return demo_folder() / "years"


def notebooks_folder() -> Path:
    """Where the kit keeps its own notebooks."""
    return _shipped("notebooks", "The notebooks are not installed with this copy of hatchkit.")


def _shipped(name: str, missing: str) -> Path:
    """A folder beside the package (source checkout) or inside it (installed copy)."""
    here = Path(__file__).resolve().parent
    for home in (here.parent / name, here / name):
        if home.is_dir():
            return home
    raise HatchkitError(missing)


def environment(**settings) -> dict:
    """The environment for a Python that is started from this one: it finds this very hatchkit, installed or not."""
    home = str(Path(__file__).resolve().parent.parent)
    paths = os.pathsep.join(filter(None, [home, os.environ.get("PYTHONPATH", "")]))
    return {**os.environ, "PYTHONPATH": paths, **settings}


def season_folder(folder) -> Path:
    """`folder` as a path; "demo" and "demo-years" mean those that ship with the kit unless such a folder is there."""
    path = Path(folder).expanduser()
    shipped = {"demo": demo_folder, "demo-years": demo_years}.get(str(folder))
    return shipped() if shipped and not path.is_dir() else path.resolve()
