"""A person confirms in JupyterLab how the sheet is read: choose, keep, run again, and nothing is asked any more."""

import time
import tomllib

import nbformat
import pytest
from lab_session import kernels_idle, menu, pop_ups, wait_for
from selenium.webdriver.common.action_chains import ActionChains
from selenium.webdriver.common.by import By
from selenium.webdriver.common.keys import Keys
from selenium.webdriver.support.ui import Select

#: "Rest" may be dead in shell or clear: both add up.
SHEET = (
    "Hatch,Breed,Date in,Eggs,Rest,Dead,Chicks\n1,Leghorn,2025-03-01,24,3,4,17\n2,Leghorn,2025-04-01,30,4,6,20\n"
    "3,Leghorn,2025-05-01,20,2,3,15\n"
)
FORM = ".jp-OutputArea-output .widget-dropdown"


@pytest.fixture(scope="module")
def season(tmp_path_factory):
    folder = tmp_path_factory.mktemp("confirm") / "my season"
    folder.mkdir()
    (folder / "hatches.csv").write_text(SHEET, encoding="utf-8")
    return folder


def _top_of_notebook(season):
    """The cells of notebook 0 down to the form, so that the test does not draw every picture."""
    path = season / "notebooks" / "0_your_records.ipynb"
    whole = nbformat.read(path, as_version=4)
    last = next(n for n, cell in enumerate(whole.cells) if "confirm_reading(season)" in cell.source)
    whole.cells = whole.cells[: last + 1]
    nbformat.write(whole, path)


def _run(lab, page):
    page.get(lab.address("notebooks/0_your_records.ipynb"))
    wait_for(lambda: page.find_elements(By.CSS_SELECTOR, ".jp-Notebook .jp-Cell"), 60)
    wait_for(lambda: kernels_idle(lab), 60)
    menu(page, "Run", "Run All Cells")


def _text(page):
    parts = page.find_elements(By.CSS_SELECTOR, ".jp-OutputArea-output")
    return " ".join(" ".join(part.text for part in parts).split())


def test_choose_keep_run_again_and_nothing_is_asked(lab, page, season):
    before = (season / "hatches.csv").read_bytes()
    _top_of_notebook(season)
    _run(lab, page)
    box = wait_for(lambda: page.find_elements(By.CSS_SELECTOR, FORM), 90, lambda: _text(page))[0]
    select, label = box.find_element(By.TAG_NAME, "select"), box.find_element(By.TAG_NAME, "label")
    assert label.text == "Rest:" and label.get_attribute("for") == select.get_attribute("id")
    assert "“Rest”" in _text(page) and Select(select).first_selected_option.text.startswith("not used")

    # By keyboard alone: space opens the list (a bare arrow moves JupyterLab's cells), an arrow and Enter choose,
    # Tab leads on to Keep.
    page.execute_script("arguments[0].scrollIntoView({block: 'center'}); arguments[0].focus()", select)
    for key in (Keys.SPACE, Keys.ARROW_DOWN, Keys.ARROW_DOWN, Keys.ENTER):
        ActionChains(page).send_keys(key).perform()
        time.sleep(0.3)
    assert Select(select).first_selected_option.text.startswith("clear")
    wait_for(lambda: "3 Rest" in _text(page) or "3 clear" in _text(page), 30, lambda: _text(page))
    for _ in range(8):
        ActionChains(page).send_keys(Keys.TAB).perform()
        if page.switch_to.active_element.text == "Keep":
            break
    assert page.switch_to.active_element.text == "Keep"
    ActionChains(page).send_keys(Keys.ENTER).perform()
    wait_for(lambda: "answers.toml" in _text(page) and (season / "answers.toml").exists(), 30, lambda: _text(page))
    kept = tomllib.loads((season / "answers.toml").read_text(encoding="utf-8"))["answer"]
    assert [(row["heading"], row["taken"].partition("@")[0]) for row in kept] == [("Rest", "clear")]

    page.refresh()
    _run(lab, page)
    wait_for(lambda: "every one sure" in _text(page), 90, lambda: _text(page))
    assert "What is the column" not in _text(page) and "still open" not in _text(page)
    assert not pop_ups(page) and (season / "hatches.csv").read_bytes() == before


def test_deleting_the_answers_asks_anew(season):
    import hatchkit as hk

    assert (season / "answers.toml").exists() and hk.load_season(season).questions.empty
    (season / "answers.toml").unlink()
    assert hk.load_season(season).questions["heading"].tolist() == ["Rest"]
