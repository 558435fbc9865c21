"""The browser tests need Chromium and its driver; without them they are not collected, and a line says so."""

import shutil

import pytest

BROWSER = shutil.which("chromium") or shutil.which("chromium-browser") or shutil.which("google-chrome")
DRIVER = shutil.which("chromedriver")

collect_ignore = [] if BROWSER and DRIVER else ["test_browser_lab.py"]


@pytest.fixture(scope="session")
def chromium():
    return {"binary": BROWSER, "driver": DRIVER}


def pytest_terminal_summary(terminalreporter):
    if collect_ignore:
        missing = "chromedriver" if BROWSER else "Chromium"
        terminalreporter.write_line(f"Not run: opening the notebooks in JupyterLab (no {missing} on this machine).")
