"""Every page stands in one frame: sealed, readable on a telephone, in its language, with one main part."""

from importlib import resources

import pytest

from hatchkit.pages.frame import template

TEMPLATES = [
    (room, file.name.removesuffix(".html.j2"))
    for room in ("hatchkit.pages", "hatchkit.teach")
    for file in resources.files(room).iterdir()
    if file.name.endswith(".html.j2") and file.name != "frame.html.j2"
]


@pytest.mark.parametrize("room, name", TEMPLATES)
def test_every_template_extends_the_frame_and_brings_no_head_of_its_own(room, name):
    source = (resources.files(room) / f"{name}.html.j2").read_text(encoding="utf-8")
    assert source.startswith('{% extends "frame" %}') and "<head>" not in source and "<main" not in source


def test_the_frame_is_sealed_and_escapes_title_and_language():
    html = template("give_back", "hatchkit.teach").render(title="<b>\x1b", lead="", sections=[])
    assert "default-src 'none'" in html and 'name="viewport"' in html and html.count("<main>") == 1
    assert "&lt;b&gt; " in html and "\x1b" not in html and '<html lang="en">' in html
