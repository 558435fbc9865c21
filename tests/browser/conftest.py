"""The browser tests need Chromium and its driver; without them they are not collected, and a line says so."""

import shutil
from importlib.util import find_spec

import pytest

BROWSER = shutil.which("chromium") or shutil.which("chromium-browser") or shutil.which("google-chrome")
DRIVER = shutil.which("chromedriver")
MISSING = [name for name, there in (("Chromium", BROWSER), ("chromedriver", DRIVER),
                                    ("the library selenium", find_spec("selenium"))) if not there]

collect_ignore = ["test_browser_lab.py", "test_browser_reading.py"] if MISSING else []


@pytest.fixture(scope="session")
def chromium():
    return {"binary": BROWSER, "driver": DRIVER}


def pytest_terminal_summary(terminalreporter):
    if MISSING:
        terminalreporter.write_line("Not run: opening the notebooks in JupyterLab in a browser "
                                    f"(this machine has no {' and no '.join(MISSING)}).")
