"""The browser tests need Chromium and its driver; without them they are not collected, and a line says so."""

import os
import shutil
from importlib.util import find_spec

import pytest

BROWSER = shutil.which("chromium") or shutil.which("chromium-browser") or shutil.which("google-chrome")
DRIVER = shutil.which("chromedriver")
MISSING = [
    name
    for name, there in (
        ("Chromium", BROWSER),
        ("chromedriver", DRIVER),
        ("the library selenium", find_spec("selenium")),
    )
    if not there
]

collect_ignore = ["test_browser_lab.py", "test_browser_pages.py", "test_browser_reading.py"] if MISSING else []


@pytest.fixture(scope="session")
def chromium():
    return {"binary": BROWSER, "driver": DRIVER}


@pytest.fixture(scope="module")
def lab(season):
    """JupyterLab on the season that the module of the test makes."""
    from lab_session import Lab  # needs selenium, which may be missing

    lab = Lab(season, season.parent)
    yield lab
    lab.close()


@pytest.fixture(scope="module")
def page(season, chromium):
    """A page of a browser of its own."""
    from lab_session import browser

    page = browser(**chromium, scratch=season.parent)
    yield page
    page.quit()


def pytest_terminal_summary(terminalreporter):
    if MISSING:
        terminalreporter.write_line(
            "Not run: opening pages, and the notebooks in JupyterLab, in a browser "
            f"(this machine has no {' and no '.join(MISSING)})."
        )
    for what, setting in (("axe-core on the pages", "HATCHKIT_AXE"), ("the checker of HTML", "HATCHKIT_VNU")):
        if not os.environ.get(setting):
            terminalreporter.write_line(f"Not run: {what} ({setting} names no file; see .ci/run).")
