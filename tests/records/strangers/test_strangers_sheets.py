"""Keepers' sheets by people who never saw the reader: read as found, each batch against what a careful person reads.

`truth.json` of each archive (all invented) holds the batches. Some were scored once before anybody looked at them, and
are open since. Read right at first contact: `aside_a` and `aside_b` 9 of 26, `aside_c` 14 of 30, `open_f` 31 of 40
(5 wrong), `open_g` 30 of 40 (5 wrong), `open_h` 21 of 30 (5 wrong), `open_i` 17 of 40 (13 wrong), `open_j` 34 of
40 (2 wrong), `open_l` 27 of 40 (6 wrong).
"""

import json
import zipfile
from datetime import date
from pathlib import Path

import pandas as pd
import pytest

import hatchkit as hk
from hatchkit.problems import HatchkitError

HERE = Path(__file__).parent
ARCHIVES = (
    "open_a",
    "open_b",
    "open_d",
    "open_e",
    "open_f",
    "open_g",
    "open_h",
    "open_i",
    "open_j",
    "open_k",
    "open_l",
    "aside_a",
    "aside_b",
    "aside_c",
)
SAME = {"guinea fowl": "guinea", "muscovy duck": "muscovy"}
#: Sheets that are not read right: asked about, or not used; none of them may be read wrong.
NOT_YET = {
    "open_a/x02": "a diary in which one egg is missing: its batch is asked about",
    "open_b/y25": "a diary of two batches a line: all batches asked about",
    "open_k/k14": "a diary of which one batch does not add up",
    "aside_b/y23": "a wall calendar",
}
#: Read otherwise than their keepers did, or less of them; each is a fault to be mended, and told when it is.
DIFFERS = {
    "open_b/y11": "a red-legged partridge, which its truth calls a chukar",
    "open_b/y14": "an egg left over that nobody opened: dead in the shell here, missing in its truth",
    "open_e/e01": "a form on the foot of a page",
    "open_k/k02": "a colour of quails that is a breed of hens, too",
    "open_k/k03": "a column asked about, and its dead left out until it is told",
    "open_k/k34": "one egg taken out, told in a remark",
    "open_k/k39": "cocks sold on one day of a diary of turkeys",
    "open_k/k40": "one dead too many in a Hungarian card",
    "open_l/l22": "two eggs left at the last look that did not hatch: dead in the shell here, missing in its truth",
    "open_e/e30": "birds told apart by the letter of the lot",
}


def sheets():
    found = []
    for archive in ARCHIVES:
        with zipfile.ZipFile(HERE / f"{archive}.zip") as packed:
            truth = json.loads(packed.read("truth.json"))
        for name in sorted(truth):
            fault = DIFFERS.get(f"{archive}/{name.split('/')[0]}")
            marks = [pytest.mark.xfail(strict=True, reason=fault)] if fault else []
            found.append(pytest.param(archive, name, marks=marks, id=f"{archive}-{name.split('/')[0]}"))
    return found


@pytest.fixture(scope="module")
def opened(tmp_path_factory):
    root = tmp_path_factory.mktemp("strangers")
    for archive in ARCHIVES:
        with zipfile.ZipFile(HERE / f"{archive}.zip") as packed:
            packed.extractall(root / archive)
    return root


def found_in(season) -> list[dict]:
    """Each batch as read: what the truth tells of it."""
    rows = []
    for batch in season.batches.to_dict("records"):
        mine = season.fates[season.fates["batch"] == batch["batch"]]
        eggs = mine.groupby("fate")["eggs"].sum()

        def count(*fates, eggs=eggs):
            return int(sum(eggs.get(fate, 0) for fate in fates))

        known = {"clear", "infertile", "hatched", "culled", "pipped_dead", "removed", "unaccounted"}
        rows.append(
            dict(
                species=batch["species"],
                set_date=pd.Timestamp(batch["set_at"]).date(),
                eggs_set=int(batch["eggs_set"]),
                hatched=count("hatched", "culled"),
                clear=count("clear", "infertile"),
                pipped=count("pipped_dead"),
                removed=count("removed"),
                dead=count(*(set(eggs.index) - known)),
            )
        )
    return rows


def as_told(batch: dict) -> dict:
    """A batch of the truth in the same terms."""
    dead = [count for count in (*batch["dead_by_look"], batch["dead_after_transfer"]) if count]
    return dict(
        species=SAME.get(batch["species"], batch["species"]),
        set_date=date.fromisoformat(batch["set_date"]),
        eggs_set=batch["eggs_set"],
        hatched=batch["hatched"] or 0,
        clear=batch["clear"] or 0,
        pipped=batch["pipped_dead"] or 0,
        removed=batch["removed"] or 0,
        dead=sum(dead),
    )


def in_order(batches) -> list:
    return sorted(batches, key=lambda batch: (batch["set_date"], batch["eggs_set"], batch["hatched"], batch["dead"]))


@pytest.mark.parametrize("archive, name", sheets())
def test_a_sheet_is_read_as_a_careful_person_reads_it(archive, name, opened):
    truth = json.loads((opened / archive / "truth.json").read_text(encoding="utf-8"))[name]
    number = name.split("/")[0]
    told = in_order(map(as_told, truth["batches"]))
    try:
        season = hk.load_season(opened / archive / number)
    except HatchkitError:
        assert f"{archive}/{number}" in NOT_YET
        return
    read = in_order(found_in(season))
    if f"{archive}/{number}" in NOT_YET:
        # Nothing is read wrong, and what is left out is asked about or stands among the problems.
        assert all(batch in told for batch in read)
        assert len(season.questions) or (season.problems["severity"] == "lost").any()
    else:
        assert read == told and len(season.questions) <= 1
