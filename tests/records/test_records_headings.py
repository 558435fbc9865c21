"""Headings in which the order of the words, or one small word, is the whole meaning."""

from itertools import permutations

import pytest
from sheet_files import said, write_csv

from hatchkit.records.folder import read_folder
from hatchkit.records.headers import recognise

PIPPED = ["Pipped not out", "pipped (not out)", "Pipped, but didn't hatch", "pipped did not hatch",
          "angepickt nicht geschlüpft", "angepickt, nicht raus", "nicht geschlüpft, angepickt", "bêchés non éclos",
          "bêchés pas éclos", "picados no nacidos", "picados sin nacer", "beccati non nati",
          "aangepikt niet uitgekomen", "pipped unhatched", "pipped but unhatched", "pipped dead (DIP)"]  # fmt: skip
IN_SHELL = ["Dead, not pipped", "not pipped (dead)", "not hatched", "Eggs not hatched", "didn't hatch", "unpipped",
            "tot, nicht angepickt", "nicht geschlüpft", "ungeschlüpft", "morts non bêchés", "non éclos",
            "muertos no picados", "no nacidos", "morti non beccati", "non schiusi", "dood niet aangepikt",
            "niet uitgekomen", "not piped"]  # fmt: skip
NEITHER = ["hatched not pipped", "hatched (not pipped)", "geschlüpft nicht angepickt", "éclos non bêchés",
           "nacidos no picados", "nati non beccati", "uitgekomen niet aangepikt", "pipped, not dead",
           "picados, nacidos", "pipped and hatched", "hatched (culls not counted)", "not clear", "not set",
           "dead, no pip", "hatched, no pip", "not all hatched", "clears not opened", "fertil", "befruchtet",
           "fécondés", "dead egg", "Dead in shell (pipped)", "hatched (pipped)", "fail"]  # fmt: skip


@pytest.mark.parametrize("heading, column", [*((text, "pipped_dead") for text in PIPPED),
                                             *((text, "dead_in_shell") for text in IN_SHELL),
                                             *((text, None) for text in NEITHER)])  # fmt: skip
def test_what_is_denied_in_a_heading_decides_what_it_means(heading, column):
    assert recognise(heading, "batches")[0] == column


@pytest.mark.parametrize("heading", ["No. hatched", "no hatched", "hatched no.", "Number of chicks hatched"])
def test_no_in_front_or_at_the_end_is_a_number(heading):
    assert recognise(heading, "batches")[0] == "hatched"


def test_no_order_of_words_around_a_not_is_read_but_those_that_are_listed():
    from hatchkit.records.words import header_words

    listed = {row["words"]: row["column"] for row in header_words() if row["table"] == "batches"}
    for words in permutations(["hatched", "not", "pipped", "dead"], 3):
        text = " ".join(words)
        assert "not" not in words or (recognise(text, "batches")[0] or "") == listed.get(text, ""), text


def test_a_heading_that_says_the_same_twice_is_read():
    assert recognise("Poults/goslings", "batches") == ("hatched", False)
    assert recognise("Clears / hatched", "batches")[0] is None


def test_a_denied_heading_that_is_not_known_is_kept_and_told(tmp_path):
    read = read_folder(write_csv(tmp_path, ["batch,species,set_at,eggs,hatched not pipped,Pipped not out",
                                            "B1,hen,2026-03-01 18:00,30,4,2"]))  # fmt: skip
    batch = read["batches"].iloc[0]
    assert batch["pipped_dead"] == 2 and batch["hatched not pipped"] == "4"
    assert len(said(read, "hatched not pipped")) == 1
