"""A person opens a fresh season folder in JupyterLab and runs a notebook: no pop-up, no failed cell, figures."""

import shutil
import time
from contextlib import suppress
from pathlib import Path

import nbformat
import pytest
from lab_session import ROOT, addresses_asked, kernels_idle, menu, pop_ups, wait_for
from nbformat.reader import NotJSONError
from selenium.webdriver.common.by import By
from selenium.webdriver.common.keys import Keys

#: Pages that the browser itself makes, such as its first empty tab.
BROWSER_PAGES = ("chrome:", "chrome-untrusted:", "about:")
NOTEBOOKS = ["1_season_review.ipynb", "3_course.ipynb"]


@pytest.fixture(scope="module")
def season(tmp_path_factory):
    """The demo season as a person would have it: a folder of their own, not opened before."""
    folder = tmp_path_factory.mktemp("lab") / "my season"
    shutil.copytree(ROOT / "data_demo", folder)
    return folder


@pytest.mark.parametrize("name", NOTEBOOKS)
def test_a_notebook_opens_runs_and_shows_its_figures(lab, page, season, name):
    addresses_asked(page)
    page.get(lab.address(f"notebooks/{name}"))
    wait_for(lambda: page.find_elements(By.CSS_SELECTOR, ".jp-Notebook .jp-Cell"), 60)
    wait_for(lambda: kernels_idle(lab), 60)
    assert not pop_ups(page)

    menu(page, "Run", "Run All Cells")
    path = season / "notebooks" / name
    cells = wait_for(lambda: _finished(lab, page, path), 400, lambda: _state(lab, path))
    failed = [output["evalue"] for cell in cells for output in cell.outputs if output.output_type == "error"]
    screenshot = _screenshot(page, name)
    assert not failed, f"{failed[0]} (screenshot: {screenshot})"
    assert [cell.execution_count for cell in cells] == list(range(1, len(cells) + 1))

    pictures = sum(_html(cell).count("<img ") for cell in cells)
    assert pictures, "the notebook draws no figure"
    assert _pictures_seen(page) == pictures
    own = (f"http://127.0.0.1:{lab.port}/", "data:", "blob:", *BROWSER_PAGES)
    strangers = {url for url in addresses_asked(page) if not url.startswith(own)}
    assert not strangers, "JupyterLab called out"
    assert not pop_ups(page)


def test_an_error_cell_is_not_overlooked(lab, page, season):
    broken = nbformat.read(season / "notebooks" / NOTEBOOKS[0], as_version=4)
    broken.cells = [nbformat.v4.new_code_cell("1 / 0"), nbformat.v4.new_code_cell("1")]
    path = season / "notebooks" / "broken.ipynb"
    nbformat.write(broken, path)
    cells = None
    for _ in range(3):  # on a busy machine a click or a save can be lost
        page.get(lab.address("notebooks/broken.ipynb"))
        wait_for(lambda: page.find_elements(By.CSS_SELECTOR, ".jp-Notebook .jp-Cell"), 60)
        wait_for(lambda: kernels_idle(lab), 60)
        menu(page, "Run", "Run All Cells")
        with suppress(AssertionError):
            cells = wait_for(lambda: _finished(lab, page, path), 60)
            break
    assert cells, "the broken notebook did not run to its error"
    assert [output.ename for output in cells[0].outputs] == ["ZeroDivisionError"]


def _finished(lab, page, path):
    """Code cells of the saved notebook once every one has run or one has failed; else None."""
    if not kernels_idle(lab):
        return None
    page.find_element(By.TAG_NAME, "body").send_keys(Keys.CONTROL, "s")
    time.sleep(1)
    cells = _saved(path)
    failed = any(output.output_type == "error" for cell in cells for output in cell.outputs)
    return cells if failed or cells and all(cell.execution_count for cell in cells) else None


def _saved(path):
    try:
        return [cell for cell in nbformat.read(path, as_version=4).cells if cell.cell_type == "code"]
    except NotJSONError:  # caught in the middle of being written
        return []


def _html(cell):
    return "".join(output.get("data", {}).get("text/html", "") for output in cell.outputs)


def _pictures_seen(page):
    """Scroll through the notebook and count the pictures that are drawn and have alt text."""
    seen = set()
    for cell in page.find_elements(By.CSS_SELECTOR, ".jp-Notebook .jp-Cell"):
        page.execute_script("arguments[0].scrollIntoView()", cell)
        for picture in cell.find_elements(By.CSS_SELECTOR, ".jp-OutputArea-output img"):
            if picture.get_attribute("alt") and page.execute_script("return arguments[0].naturalWidth", picture):
                seen.add(picture.id)
    return len(seen)


def _screenshot(page, name) -> Path:
    """Kept beside the tests, where a person looks after a failure; not under version control."""
    picture = ROOT / "tests" / "browser" / "screenshots" / f"{Path(name).stem}.png"
    picture.parent.mkdir(exist_ok=True)
    for figure in page.find_elements(By.CSS_SELECTOR, ".jp-OutputArea-output img")[:1]:
        page.execute_script("arguments[0].scrollIntoView({block: 'center'})", figure)
    page.save_screenshot(str(picture))
    return picture


def _state(lab, path):
    return f"{lab.ask('kernels')} {[cell.execution_count for cell in _saved(path)]}"
