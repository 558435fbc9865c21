"""Thirty exports that another person made after public descriptions, with the truth: exact, asked or refused."""

import json
import zipfile
from pathlib import Path

import pytest
from score_exports import score

ARCHIVE = Path(__file__).with_name("exports.zip")
with zipfile.ZipFile(ARCHIVE) as _archive:
    TRUTH = json.loads(_archive.read("truth.json"))


@pytest.mark.parametrize("name", sorted(TRUTH))
def test_an_export_is_read_exactly_or_asked_or_refused_as_it_should_be(tmp_path, name):
    with zipfile.ZipFile(ARCHIVE) as archive:
        path = Path(archive.extract(name, tmp_path))
    kind, why = score(path, TRUTH[name])
    assert kind == "RIGHT", why
