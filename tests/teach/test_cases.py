"""What the records can show, the statements of a case, and that both follow from the records."""

import json

import pytest

from hatchkit.say import text
from hatchkit.teach.case_facts import BEARS, FREE, NOT
from hatchkit.teach.case_words import LANGUAGES, statement
from hatchkit.teach.cases import make_case

SMALL = dict(batches=4, eggs=40, step_minutes=60)


@pytest.fixture(scope="module")
def cases():
    return {
        cause: make_case(31, level="second", cause=cause, severity="severe", **SMALL)
        for cause in ("none", "power_cut", "low_fertility", "turning_fault")
    }


def test_a_plain_cause_is_shown_and_nothing_is_not(cases):
    assert cases["power_cut"].reading.shown["power_cut"] > 0.9
    assert cases["none"].reading.shown == {} and cases["none"].reading.sure == 0
    assert cases["none"].told() == [] and cases["power_cut"].told() == ["power_cut"]


def test_what_took_nothing_to_speak_of_cannot_be_told():
    """A mild turning fault leaves no trace but a few deaths: a careful reader is not sure."""
    sure = [
        make_case(seed, level="second", cause="turning_fault", severity="mild", **SMALL).reading.sure
        for seed in range(60, 66)
    ]
    assert min(sure) < 0.6


def test_every_case_has_statements_that_bear_and_that_do_not(cases):
    for case in cases.values():
        kinds = [fact.kind for fact in case.facts]
        assert set(kinds) <= {BEARS, NOT, FREE}
        assert kinds.count(BEARS) >= 1 and kinds.count(NOT) >= 4 and 10 <= len(kinds) <= 20


def test_true_statements_repeat_what_the_book_says(cases):
    for case in cases.values():
        book = case.lived.tables["batches"].set_index("batch")
        for fact in case.facts:
            if fact.code in ("same_hens", "same_days", "same_machine", "nothing_shared", "other_hatch"):
                true = int(book.loc[fact.numbers["other"], "hatched"]) == fact.numbers["eggs"]
                assert true == (fact.why != "not_so")
            if fact.code == "same_hens":
                assert book.loc[fact.numbers["other"], "flock"] == book.loc[fact.numbers["batch"], "flock"]


def test_a_planted_spell_is_quoted_from_the_log(cases):
    case = cases["power_cut"]
    spell = next(fact for fact in case.facts if fact.code == "spell" and fact.kind == BEARS)
    log = case.lived.tables["readings"]
    machine = case.lived.tables["batches"].set_index("batch").loc[case.lived.answer.batch, "incubator"]
    assert spell.numbers["extreme"] in log.loc[log["incubator"] == machine, "temp_c"].tolist()


@pytest.mark.parametrize("language", LANGUAGES)
def test_statements_and_reasons_have_words(cases, language):
    for case in cases.values():
        for fact in case.facts:
            said = statement(fact.code, fact.numbers, language)
            assert said.endswith(".") and "{" not in said
            assert text(f"teach_why_{fact.why}")


def test_what_is_shown_again_can_be_read_back(cases):
    shown = json.loads(cases["power_cut"].shown_again())
    assert [fact["letter"] for fact in shown["statements"]][:3] == ["A", "B", "C"]
    assert len(shown["log"]["day"]) == len(shown["log"]["temp_c"]) > 100
