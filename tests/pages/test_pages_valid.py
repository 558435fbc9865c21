"""The pages are well formed: every element is closed, every name is there once, every link has its end."""

from html.parser import HTMLParser

import pytest

import hatchkit as hk
from hatchkit.pages.page import page

VOID = {"meta", "br", "img", "link", "input", "hr", "source"}


class Checker(HTMLParser):
    """Collects what is wrong."""

    def __init__(self):
        super().__init__()
        self.open, self.ids, self.links, self.faults = [], [], [], []

    def handle_starttag(self, tag, attrs):
        if tag not in VOID:
            self.open.append(tag)
        names = [name for name, _ in attrs]
        self.faults += [f"{tag} has {name} twice" for name in set(names) if names.count(name) > 1]
        self.ids += [value for name, value in attrs if name == "id"]
        self.links += [value[1:] for name, value in attrs if name == "href" and value.startswith("#")]

    def handle_startendtag(self, tag, attrs):
        self.handle_starttag(tag, attrs)
        if tag not in VOID:
            self.open.pop()

    def handle_endtag(self, tag):
        if not self.open or self.open.pop() != tag:
            self.faults.append(f"</{tag}> closes what is not open")


def check(html):
    checker = Checker()
    checker.feed(html)
    return (
        checker.faults,
        checker.open,
        [name for name in set(checker.ids) if checker.ids.count(name) > 1],
        [link for link in checker.links if link not in checker.ids],
    )


@pytest.fixture(scope="module")
def season(demo):
    return demo


def test_the_season_s_page_is_well_formed(demo_review):
    assert check(page(demo_review, full=True)) == ([], [], [], [])


@pytest.mark.parametrize("batch", ["H2", "Q4"])
def test_a_batch_s_page_is_well_formed(season, batch):
    assert check(page(hk.poor_hatch(season, batch))) == ([], [], [], [])


def test_the_checker_sees_faults():
    faults = check("<p id='a'><a href='#b'>x</p><p id='a'></p>")
    assert all(faults[place] for place in (0, 2, 3))
