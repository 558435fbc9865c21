"""Run the shipped notebooks on the demo season and store their results in them.

Use after a change that alters what a notebook shows, from the top of the checkout::

    python tests/refresh_notebooks.py [name ...]

The stored results are what readers see on the web page and what nbval compares the tagged cells with.
"""

import os
import sys
from pathlib import Path

import nbformat
from ipykernel.kernelspec import get_kernel_dict
from jupyter_client.kernelspec import KernelSpec, KernelSpecManager
from jupyter_client.manager import AsyncKernelManager
from nbclient import NotebookClient
from traitlets.config import Config

ROOT = Path(__file__).resolve().parent.parent


class ThisPython(KernelSpecManager):
    """Whatever is installed under the name python3, the kernel is the Python that runs now."""

    def get_kernel_spec(self, kernel_name):
        return KernelSpec(**get_kernel_dict())


def run(page, directory: Path) -> None:
    """Execute a notebook in place, in `directory`, with this hatchkit; stops with the words of an error."""
    paths = os.pathsep.join(filter(None, [str(ROOT), os.environ.get("PYTHONPATH", "")]))
    os.environ.update(PYTHONPATH=paths, PYTHONWARNINGS="ignore")
    kernel = AsyncKernelManager(
        kernel_spec_manager=ThisPython(), config=Config({"KernelManager": {"transport_encryption": "auto"}})
    )
    NotebookClient(
        page, km=kernel, timeout=900, record_timing=False, resources={"metadata": {"path": str(directory)}}
    ).execute()


def refresh(path: Path) -> None:
    """Execute one notebook in place, with cell ids that do not change from run to run."""
    page = nbformat.read(path, as_version=4)
    for number, cell in enumerate(page.cells):
        cell["id"] = f"cell-{number:02d}"
        cell.metadata.pop("execution", None)
    run(page, path.parent)
    for cell in page.cells:
        cell.metadata.pop("execution", None)
    page.metadata = {
        "kernelspec": {"display_name": "Python 3", "language": "python", "name": "python3"},
        "language_info": {"name": "python"},
    }
    nbformat.write(page, path)
    print(f"{path.relative_to(ROOT)}: {path.stat().st_size / 1000:.0f} kB")


if __name__ == "__main__":
    wanted = sys.argv[1:]
    for path in sorted((ROOT / "notebooks").rglob("*.ipynb")):
        if ".ipynb_checkpoints" not in path.parts and (not wanted or any(name in path.name for name in wanted)):
            refresh(path)
