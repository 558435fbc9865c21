"""Run a notebook on a season folder and write one self-contained HTML page."""

from __future__ import annotations

import os
import sys
import threading
import time
from contextlib import contextmanager
from functools import cache
from pathlib import Path

from hatchkit.folders import environment, notebooks_folder
from hatchkit.outputs import safe_output
from hatchkit.places import given_paths
from hatchkit.problems import HatchkitError

_HERE = Path(__file__).resolve().parent
#: What a kernel fetches before its first cell: what the notebooks ask for anyway, soonest needed first. It binds no
#: name, so a notebook must still import what it uses. Freezing spares the garbage collector a search through all of it,
#: which cost a tenth of the cells' time.
_FETCH = ("[__import__(name) for name in ('pandas', 'matplotlib.pyplot', 'scipy.linalg', 'scipy.special', "
          "'scipy.optimize', 'statsmodels.genmod.generalized_linear_model')] and __import__('gc').freeze()")


def notebook_path(name) -> Path:
    """The file of a notebook: a path as given, or one of the kit's own by name (``1_season_review``)."""
    path = Path(name)
    if path.is_file():
        return path.resolve()
    for candidate in sorted(notebooks_folder().glob(f"{path.stem}*.ipynb")):
        return candidate
    raise HatchkitError(f"There is no notebook {str(name)!r}.")


def write_report(folder, notebook, out, *, unit: str = "C", batch: str = "", progress=None) -> Path:
    """Execute `notebook` on the season in `folder` and write it to `out` without its code.

    Parameters
    ----------
    folder : path
        The season folder (or "demo"). Neither it nor the notebook file is written to.
    notebook : path or str
        A notebook file, or one of the kit's own by name.
    out : path
        The HTML file to write; pictures are inside, nothing is fetched when it is opened.
    unit : {"C", "F"}
        Unit in which temperatures are shown.
    batch : str, optional
        Batch that the notebook is about, for notebooks on one batch.
    progress : callable, optional
        Called with (cells done, cells in all).

    Returns
    -------
    Path
        Absolute path of the file written.

    Raises
    ------
    HatchkitError
        If `out` can't be written or is one of the season's own files; if the notebook stops with an
        error, in the words of that error.
    """
    from hatchkit.units import check_unit

    folder = os.pathsep.join(map(str, given_paths(folder)))
    out = safe_output(out, season=folder, suffix=(".html", ".htm"))
    source = notebook_path(notebook)
    settings = {"HATCHKIT_FOLDER": str(folder), "HATCHKIT_UNIT": check_unit(unit), "HATCHKIT_BATCH": str(batch),
                "HATCHKIT_REPORT": "1"}
    with _kernel(settings) as kernel:
        import nbformat

        page = nbformat.read(source, as_version=4)
        # The exporter and its templates take seconds to load: they are fetched while the kernel works.
        threading.Thread(target=_exporter, daemon=True).start()
        _execute(page, kernel, progress)
    html = _as_html(page, title=_title(page))
    try:
        out.write_text(html, encoding="utf-8")
    except OSError as error:
        raise HatchkitError(f"The report cannot be written to {out}: {error.strerror}.") from None
    return out


def run_notebook(page, *, settings, progress=None, directory=None):
    """Execute a notebook (nbformat node) in place in a fresh kernel of this Python.

    `settings` are environment variables that its first cell reads. Raises HatchkitError with the
    words of the error if a cell fails.
    """
    with _kernel(settings, directory) as kernel:
        return _execute(page, kernel, progress)


@contextmanager
def _kernel(settings, directory=None):
    """A kernel that starts, and fetches the heavy libraries, while this process still loads its own."""
    from ipykernel.kernelspec import get_kernel_dict
    from jupyter_client.kernelspec import KernelSpec, KernelSpecManager
    from jupyter_client.manager import AsyncKernelManager
    from jupyter_core.utils import run_sync
    from traitlets.config import Config

    class ThisPython(KernelSpecManager):
        """Whatever is installed under the name python3, the kernel is the Python that runs now."""

        def get_kernel_spec(self, kernel_name):
            return KernelSpec(**get_kernel_dict())

    manager = AsyncKernelManager(kernel_spec_manager=ThisPython(),
                                 config=Config({"KernelManager": {"transport_encryption": "auto"}}))
    # Warnings are for the people who build the kit; a reader gets sentences.
    try:
        run_sync(manager.start_kernel)(
            env=environment(PYTHONWARNINGS="ignore", **settings), cwd=str(directory or Path.cwd()),
            extra_arguments=["--HistoryManager.hist_file=:memory:", f"--IPKernelApp.exec_lines={_FETCH}"])
        yield manager
    finally:
        if manager.has_kernel:
            run_sync(manager.shutdown_kernel)(now=True)


def _execute(page, kernel, progress):
    import atexit
    from asyncio import CancelledError

    from nbclient import NotebookClient
    from nbclient.exceptions import CellExecutionError, DeadKernelError

    cells = sum(cell.cell_type == "code" for cell in page.cells)
    done = []

    def count(cell, cell_index, **_):
        if cell.cell_type == "code" and progress:
            done.append(cell_index)
            progress(len(done), cells)

    client = NotebookClient(page, km=kernel, timeout=900, record_timing=False, shutdown_kernel="immediate",
                            on_cell_executed=count)
    try:
        client.execute(cleanup_kc=True)
    except CellExecutionError as error:
        raise HatchkitError(_plain(error)) from None
    except (DeadKernelError, CancelledError):  # a dead kernel, Ctrl-C
        raise HatchkitError("The report was stopped before it was done: the Python that works it out has ended "
                            "(Ctrl-C, or the machine ran out of memory).") from None
    except RuntimeError:  # it never answered
        atexit.unregister(client._cleanup_kernel)  # nbclient leaves it behind, with nothing to clean
        raise HatchkitError("The report was not begun: the Python that works it out ended at its start (Ctrl-C, no "
                            f"memory left, or {sys.executable} -m ipykernel_launcher does not run).") from None
    return page


def _plain(error) -> str:
    if error.ename == "HatchkitError":
        return error.evalue
    return f"The notebook stopped with an error that hatchkit did not expect ({error.ename}: {error.evalue})."


def _title(page) -> str:
    for cell in page.cells:
        if cell.cell_type == "markdown" and cell.source.startswith("# "):
            return cell.source.splitlines()[0].removeprefix("# ")
    return "hatchkit report"


@cache
def _exporter():
    from nbconvert import HTMLExporter
    from nbformat.v4 import new_markdown_cell, new_notebook

    exporter = HTMLExporter(template_name="report_template", extra_template_basedirs=[str(_HERE)],
                            exclude_input=True, exclude_output_prompt=True, exclude_input_prompt=True)
    # A first page compiles the templates, which costs more than the page itself.
    exporter.from_notebook_node(new_notebook(cells=[new_markdown_cell("# warm")]))
    return exporter


def _as_html(page, *, title: str) -> str:
    body, _ = _exporter().from_notebook_node(page, resources={"report_title": title})
    return body


class StderrProgress:
    """A line on the terminal that counts cells, shown once work has lasted two seconds."""

    def __init__(self, what: str):
        self.what, self.started = what, time.monotonic()

    def __call__(self, done: int, total: int) -> None:
        if time.monotonic() - self.started < 2 or not sys.stderr.isatty() and done < total:
            return
        end = "\n" if done == total else ""
        print(f"\r{self.what}: {done} of {total} steps", end=end, file=sys.stderr, flush=True)
