"""Where a season lies: a folder as given, or the demo that ships with the kit."""

from __future__ import annotations

from pathlib import Path

from hatchkit.problems import HatchkitError


def demo_folder() -> Path:
    """The invented demo season that ships with the kit, found from any working folder."""
    here = Path(__file__).resolve().parent
    for home in (here.parent / "data_demo", here / "data_demo"):
        if home.is_dir():
            return home
    raise HatchkitError("The demo season is not installed with this copy of hatchkit.")


def season_folder(folder) -> Path:
    """`folder` as a path; the word "demo" means the demo season unless a folder of that name is there."""
    path = Path(folder).expanduser()
    return demo_folder() if str(folder) == "demo" and not path.is_dir() else path.resolve()
