"""Textbook hatches, published trials and base rates (tests/worlds): the answer that the handbook or the trial gives.

Textbook hatches and trials were seen while the score was set; what stands against that is tests/benchmarks.
"""

import sys
from pathlib import Path

import pytest

import hatchkit as hk
from hatchkit.advice.causes import likely_causes

sys.path.insert(0, str(Path(__file__).resolve().parents[1]))
from worlds.base_rates import BASE_RATES
from worlds.textbook import TEXTBOOK
from worlds.trials import TRIALS
from worlds.written import write_case

#: Trials that the kit does not answer, with what is in the way. Strict: one that comes right has to leave the list.
MISSED = {
    "golden pheasant, stored 4 to 10 days": "second, after infertile: nothing was opened, eight days are no fault",
}


def asked(case, folder):
    told = write_case(case, folder / "season")
    return likely_causes(hk.load_season(told["folder"]), told["batch"])


def right(case, causes):
    """The expected cause first among the named; where none is expected, none confident and none that must not be."""
    if case.expected:
        return causes.first_named() in case.expected
    return causes.verdict != "confident" and causes.table["cause"].iloc[0] not in case.never


@pytest.mark.parametrize("case", TEXTBOOK[:16], ids=lambda case: case.name)
def test_a_textbook_hatch_is_told_as_the_handbook_does(case, tmp_path):
    assert right(case, asked(case, tmp_path))


@pytest.mark.parametrize(
    "case",
    [
        pytest.param(
            case,
            id=case.name,
            marks=[pytest.mark.xfail(reason=MISSED[case.name], strict=True)] if case.name in MISSED else [],
        )
        for case in TRIALS
    ],
)
def test_a_published_trial_is_told_by_what_was_tried(case, tmp_path):
    assert right(case, asked(case, tmp_path))


@pytest.mark.parametrize("case", BASE_RATES, ids=lambda case: case.name)
def test_what_all_batches_share_is_never_first(case, tmp_path):
    causes = asked(case, tmp_path)
    assert causes.first_named() not in case.never and right(case, causes)
