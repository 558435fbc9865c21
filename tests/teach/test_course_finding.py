"""The reader of findings knows usual wordings, right figures and plain claims, and leaves the last word to a person."""

from pathlib import Path

import pandas as pd
import pytest

from hatchkit.teach.course_finding import claimed
from hatchkit.teach.exercises import judge
from hatchkit.teach.judging import FOUND, NOT_YET

FINDING = {"batch": "B07", "lost": 9, "eggs": 34, "days": (7, 18), "facts": ("power", "stored")}
FINDING = {"batch": "B07", "lost": 9, "eggs": 34, "days": (7, 18), "facts": ("power", "stored")}
#: finding, and a part of the hint that it should get; none if it is sound.
TABLE = pd.read_csv(Path(__file__).with_name("findings.csv"), keep_default_na=False)
SOUND = list(TABLE.loc[TABLE["hint"] == "", "finding"])
BAD = list(TABLE.loc[TABLE["hint"] != ""].itertuples(index=False, name=None))


def test_there_are_enough_of_both():
    assert len(SOUND) >= 25
    assert len(BAD) >= 25


@pytest.mark.parametrize("text", SOUND)
def test_sound_findings_in_usual_wordings_are_accepted(text):
    assert judge("finding", text, FINDING).state == FOUND, judge("finding", text, FINDING).words


@pytest.mark.parametrize(("text", "hint"), BAD)
def test_findings_that_lack_or_claim_something_get_the_hint(text, hint):
    verdict = judge("finding", text, FINDING)
    assert verdict.state == NOT_YET
    assert hint in verdict.words


def test_the_last_word_is_a_readers():
    found = judge("finding", SOUND[0], FINDING).words
    assert found.startswith("All parts found. The checker looked for")
    assert "Right" not in found
    assert "somebody who was not there" in found
    assert "a reader has the last word" in judge("finding", BAD[0][0], FINDING).words


def test_only_a_sentence_is_read():
    assert "quotation marks" in judge("finding", 42, FINDING).words


def test_another_case_can_be_given():
    case = {"batch": "K3", "lost": 6, "eggs": 21, "days": (7, 14), "facts": ("cold", "old")}
    text = (
        "In batch K3, 6 of 21 embryos died between day 7 and day 14 (29 %, 14 to 50 %); it was cold then, but the "
        "hens were also old."
    )
    assert judge("finding", text, case).state == FOUND
    assert "Leave room" in judge("finding", text.replace(", but the hens were also old", ""), case).words


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("the outage is responsible", "responsible"),
        ("it is not clear whether the outage is responsible", None),
        ("the storage could have killed them", None),
        ("the storage killed them", "killed"),
        ("the outage made 9 embryos die", "made 9 embryos die"),
        ("a comparison was made", None),
        ("there is no proof that cold caused it", None),
        ("cold caused it", "caused"),
        ("they were lost to the cold", "lost to the cold"),
        ("the interval is wide because of the few eggs", None),
    ],
)
def test_claims_are_told_from_careful_words(text, said):
    assert claimed(text) == said
