"""The pages as a person opens them: what the first screen holds, words, sheets of paper, text in pictures, faults."""

import base64
import json
import os
import re
import subprocess
from pathlib import Path

import pytest
from lab_session import addresses_asked

from hatchkit.findings.batch import poor_hatch
from hatchkit.findings.season import review
from hatchkit.pages.page import write_page
from hatchkit.say import LANGUAGES, catalogue, text

#: Widths of a desk and of a telephone, and the height of a first screen, CSS pixels.
WIDTHS, SCREEN = (1280, 390), 800
#: (words unfolded, sheets of paper) at most.
SEASON, BATCH = (900, 4), (900, 2)
AXE, VNU = os.environ.get("HATCHKIT_AXE"), os.environ.get("HATCHKIT_VNU")


@pytest.fixture(scope="module")
def season(demo, tmp_path_factory):
    """The folder of the pages; the browser keeps its profile beside it."""
    folder = tmp_path_factory.mktemp("pages") / "pages"
    folder.mkdir()
    for language in LANGUAGES:
        spoken = demo.spoken_in(language)
        write_page(review(spoken), folder / f"season{language}.html")
        write_page(poor_hatch(spoken, "H2"), folder / f"H2{language}.html")
    for batch in ("Q4", "H1"):
        write_page(poor_hatch(demo, batch), folder / f"{batch}.html")
    return folder


@pytest.fixture(params=[*(f"{page}{language}" for language in LANGUAGES for page in ("season", "H2")), "Q4", "H1"])
def html(request, season):
    return season / f"{request.param}.html"


@pytest.fixture(params=WIDTHS)
def opened(request, page, html):
    show(page, html, request.param)
    return page


def show(page, html, width):
    size = dict(width=width, height=SCREEN, deviceScaleFactor=1, mobile=width < 500)
    page.execute_cdp_cmd("Emulation.setDeviceMetricsOverride", size)
    page.get(html.as_uri())


def test_the_first_screen_holds_the_answer_and_its_picture(opened):
    low = opened.execute_script("""return ['.counts', '.first .most', '.first p:last-of-type', '.first figure'].map(
        name => document.querySelector(name).getBoundingClientRect().bottom)""")
    assert all(0 < bottom <= SCREEN for bottom in low), low


def test_the_answer_how_sure_and_what_to_do_have_three_lines_at_most(opened):
    lines = opened.execute_script("""return [...document.querySelectorAll('.first p')].map(part =>
        part.getBoundingClientRect().height / parseFloat(getComputedStyle(part).lineHeight))""")
    assert len(lines) == 3 and max(lines) < 3.2, lines


@pytest.mark.parametrize("language", LANGUAGES)
def test_whatever_is_to_be_done_fits_three_lines_of_a_telephone(page, season, language):
    """Every line that may stand under "what to do", not only those of the demo's pages."""
    show(page, season / f"season{language}.html", 390)
    codes = [code for code, file in catalogue.names("en").items() if code.startswith("do_") and file == "causes.ftl"]
    lines = page.execute_script(
        """const place = document.querySelector('.first p:last-of-type');
        return arguments[0].map(words => { place.textContent = words;
            const high = place.getBoundingClientRect().height;
            return [words, high / parseFloat(getComputedStyle(place).lineHeight)]; })""",
        [text(code, {}, language) for code in codes],
    )
    assert len(lines) > 30 and [words for words, high in lines if high > 3.2] == []


def test_nothing_reaches_beyond_the_side_and_nothing_is_asked_from_outside(opened):
    assert opened.execute_script("return document.documentElement.scrollWidth <= window.innerWidth")
    own = ("file:", "data:", "chrome:", "chrome-untrusted:", "about:")
    assert {address for address in addresses_asked(opened) if not address.startswith(own)} == set()


def test_no_number_of_the_contents_lies_on_a_neighbours_words(page, html):
    show(page, html, 1280)
    met = page.execute_script("""const lines = [...document.querySelectorAll('nav li')];
        const words = lines.flatMap(line => [...line.querySelector('a').getClientRects()].map(box => [line, box]));
        return lines.filter(line => { const own = line.getBoundingClientRect(); return words.some(([other, box]) =>
            other !== line && box.bottom > own.top + 2 && box.top < own.bottom - 2 &&
            box.right > own.left - 26 && box.left < own.left); }).map(line => line.innerText)""")
    assert met == []


def test_text_in_pictures_is_ten_pixels_high_on_a_telephone(page, html):
    show(page, html, 390)
    heights = page.execute_script("""document.querySelectorAll('details').forEach(part => part.open = true);
        const scale = picture => picture.getBoundingClientRect().width / picture.viewBox.baseVal.width;
        return [...document.querySelectorAll('svg text')].map(text =>
            parseFloat(getComputedStyle(text).fontSize) * scale(text.ownerSVGElement))""")
    assert heights and min(heights) >= 9.95, sorted(heights)[:3]


def test_words_unfolded_and_sheets_of_paper(page, html):
    words_most, sheets_most = SEASON if html.stem.startswith("season") else BATCH
    show(page, html, 1280)
    pdf = base64.b64decode(page.execute_cdp_cmd("Page.printToPDF", dict(preferCSSPageSize=True))["data"])
    assert len(re.findall(rb"/Type\s*/Page\b", pdf)) <= sheets_most
    words = page.execute_script("""document.querySelectorAll('svg').forEach(picture => picture.remove());
        return document.body.innerText.match(/\\S*[\\p{L}\\p{N}]\\S*/gu)""")  # a sign that stands apart is no word
    assert 200 < len(words) <= words_most


def test_a_reader_finds_the_six_answers_unfolded(page, season):
    show(page, season / "seasonen.html", 1280)
    seen = page.find_element("tag name", "main").text
    for words in (
        "505 good chicks",
        "66 % of the eggs set",
        "80 % of those not clear",
        "How sure is that?",
        "Two causes cost about 27 of the 259 eggs lost each",
        "What to do now",
        "Is it more than bad luck?\nYes: H2",
        "What is not known",
    ):
        assert words in seen, words


@pytest.mark.skipif(not AXE, reason="axe-core is not there: HATCHKIT_AXE names no file")
def test_axe_finds_no_fault(opened):
    opened.execute_cdp_cmd("Page.setBypassCSP", dict(enabled=True))
    opened.refresh()
    opened.execute_script(Path(AXE).read_text(encoding="utf-8"))
    found = opened.execute_async_script("axe.run().then(found => arguments[0](JSON.stringify(found.violations)))")
    opened.execute_cdp_cmd("Page.setBypassCSP", dict(enabled=False))
    faults = [(fault["id"], [node["html"][:120] for node in fault["nodes"][:3]]) for fault in json.loads(found)]
    assert faults == []


@pytest.mark.skipif(not VNU, reason="the checker of HTML is not there: HATCHKIT_VNU names no file")
def test_the_html_is_valid(html):
    checked = subprocess.run(
        ["java", "-jar", VNU, "--errors-only", "--format", "gnu", str(html)], capture_output=True, text=True
    )
    assert checked.returncode == 0, checked.stderr[:2000]
