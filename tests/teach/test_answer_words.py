"""Words of students: the obvious ones are understood, the rest is named."""

import pytest

from hatchkit.simulate import cause_names
from hatchkit.teach.answer_words import cause_meant, number_meant, stage_meant
from hatchkit.teach.case_words import LANGUAGES, STAGES, cause_words, stage_words


@pytest.mark.parametrize(
    ("written", "stage"),
    [
        ("late", "late"),
        ("Late dead", "late"),
        ("mids", "mid"),
        ("mid-dead", "mid"),
        ("late (day 15-21)", "late"),
        ("pipped, died", "pipped"),
        ("clear", "infertile"),
        ("Clears", "infertile"),
        ("no cause", "none"),
        ("", ""),
        ("removed (rotten)", "removed"),
        ("infertile eggs", "infertile"),
        ("Early embryonic death", ""),
        ("dead in shell", ""),
        ("not late", ""),
    ],
)
def test_stages(written, stage):
    meant, remark = stage_meant(written)
    assert meant == stage
    assert bool(remark) == bool(written and not stage)


@pytest.mark.parametrize(
    ("written", "cause"),
    [
        ("over heating", "overheating"),
        ("Power Cuts", "power_cut"),
        ("power-cut", "power_cut"),
        ("no cause", "none"),
        ("probe: high", "probe_high"),
        ("high probe", "probe_high"),
        ("contaminated (rot)", "contaminated"),
        ("AIR TOO DRY", "humidity_low"),
        ("power went out", "power_cut"),
        ("infertile eggs", "low_fertility"),
        ("power cut or lid ajar", ""),
        ("no power cut", ""),
        ("humidity", ""),
        ("", ""),
    ],
)
def test_causes(written, cause):
    meant, remark = cause_meant(written)
    assert meant == cause
    assert bool(remark) == bool(written and not cause)


def test_every_cause_is_known_by_its_key():
    assert [cause_meant(name) for name in cause_names()] == [(name, "") for name in cause_names()]


def test_what_is_read_over_a_slip_of_spelling_is_said():
    assert stage_meant("piped") == ("pipped", "under stage, 'piped' is read as pipped")
    assert cause_meant("overheatng")[0] == "overheating" and "read as" in cause_meant("overheatng")[1]
    assert "more than one (early and mid)" in stage_meant("early and mid")[1]


@pytest.mark.parametrize(
    ("written", "meant"),
    [
        ("8", (8, None, None)),
        ("8 eggs", (8, None, None)),
        ("about 8", (8, None, None)),
        ("~8", (8, None, None)),
        ("eight", (8, None, None)),
        ("13,5", (13.5, None, None)),
        ("8 of 48", (8, None, None)),
        ("twenty-seven", (27, None, None)),
        ("about 27", (27, None, None)),
        ("10-20", (15, 10, 20)),
        ("between 10 and 20", (15, 10, 20)),
        ("10 – 20", (15, 10, 20)),
        ("8 (5-11)", (8, 5, 11)),
        ("8 ± 3", (8, 5, 11)),
        ("no eggs", (0, None, None)),
    ],
)
def test_numbers(written, meant):
    assert number_meant(written) == (*meant, True)


@pytest.mark.parametrize("written", ["17 %", "-3", "nan", "inf", "1e5", "many", "<5", "2026-10-20 00:00:00"])
def test_numbers_that_are_none(written):
    assert number_meant(written) == (None, None, None, False)


@pytest.mark.parametrize(("written", "eggs"), [("22 %", 10.56), ("0,625", 30), ("0.25", 12), ("50%", 24)])
def test_shares_are_taken_of_the_eggs_set(written, eggs):
    assert number_meant(written, 48)[0] == pytest.approx(eggs)


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_words_of_the_form_are_understood_in_every_language(language):
    assert [stage_meant(stage_words(stage, language)) for stage in STAGES] == [(stage, "") for stage in STAGES]
    assert [cause_meant(cause_words(cause, language)) for cause in cause_names()] == [
        (name, "") for name in cause_names()
    ]
