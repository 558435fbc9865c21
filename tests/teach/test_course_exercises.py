"""The checker knows a right answer from a wrong one, says which mistake it was, and never gives the answer away."""

import math
import re

import numpy as np
import pandas as pd
import pytest

from hatchkit import reference
from hatchkit.problems import HatchkitError
from hatchkit.teach.breakout_lab import DateTheEgg
from hatchkit.teach.course_finding import Writing
from hatchkit.teach.exercises import EXERCISES, check, judge
from hatchkit.teach.judging import NOT_YET, OPEN, RIGHT, HiddenCause

RNG = np.random.default_rng(7)
TRAY = pd.DataFrame({"day7": list("aacaadaaca"), "day18": list("aa.ad.aa.a"), "day21": list("hp.h..hd.h")})
HATCHES, OTHERS = RNG.binomial(24, 0.7, size=(2, 400))
LOW, HIGH = HATCHES / 24 - 0.15, HATCHES / 24 + 0.15
LOG = pd.DataFrame({"air_c": [37.5, 37.8, 38.2, 38.4, 37.9, 37.5]})
LOG.attrs["step_hours"] = 0.25
LID = {"egg_c": 37.5, "room_c": 25.0, "minutes": 10, "tau_minutes": 32}
SPREAD = np.array([20, 12, 18, 21, 9, 17, 19, 22, 14, 16, 21, 11])
FIRST, SECOND = {"died": 9, "at_risk": 120, "days": 7}, {"died": 8, "at_risk": 111, "days": 11}
TABLE = pd.DataFrame(
    {
        "warm": ["yes", "yes", "no", "no"],
        "stored": ["long", "short", "long", "short"],
        "eggs": [50, 20, 30, 60],
        "died": [11, 2, 6, 4],
    }
)
SHARES, WARM = [0.2, 0.05, 0.11, 0.02, 0.15, 0.08, 0.03], [True, False, True, False, False, False, False]

#: Exercise: (data, the right answer worked out by hand or in another way).
CASES = {
    "hatch_of_set": ((TRAY,), 4 / 10),
    "hatch_of_fertile": ((TRAY,), 4 / 8),
    "hatch_of_transferred": ((TRAY,), 4 / 6),
    "not_accounted": (({"set": 20, "clear": 3, "hatched": 12, "dead": 2},), 3),
    "early_of_fertile": (({"set": 150, "early_dead": 3, "fertility": 0.5},), 3 / 75),
    "fertility_bounds": ((TRAY,), (0.8, 1)),
    "true_fertility": (({"set": 120, "clear": 30, "opened": 12, "early_dead": 4},), 100 / 120),
    "few_chicks": ((HATCHES, 15), sum(count <= 15 for count in HATCHES) / 400),
    "neighbours": ((HATCHES, OTHERS, 5), sum(abs(a - b) >= 5 for a, b in zip(HATCHES, OTHERS, strict=True)) / 400),
    "covers": ((LOW, HIGH, 0.7), sum(a <= 0.7 <= b for a, b in zip(LOW, HIGH, strict=True)) / 400),
    "eggs_for_none": ((0.10,), math.ceil(1.959964**2 / 0.10 - 1.959964**2)),
    "independent": ((), "b"),
    "chance_spread": ((np.array([18, 12, 21]), 24), math.sqrt(51 / 72 * 21 / 72 / 24)),
    "death_interval": (({"last_alive": 10, "found_dead": 17},), (10, 17)),
    "narrowed": (({"last_alive": 10, "found_dead": 17, "stage_from": 8, "stage_to": 14},), (10, 14)),
    "candling_pile": ((), "c"),
    "daily_risk": (({"died": 6, "at_risk": 60, "days": 5}, {"died": 4, "at_risk": 50, "days": 10}), (0.02, 0.008)),
    "egg_after_lid": (({"egg_c": 38.0, "room_c": 20.0, "minutes": 32 * math.log(2), "tau_minutes": 32},), 29.0),
    "which_egg": ((), "b"),
    "hours_warm": ((LOG, 37.8), 0.75),
    "share_logged": ((LOG, 2), 0.75),
    "degree_hours": (({"air_c": 40.6, "hours": 24}, {"air_c": 48.9, "hours": 1}, 37.8), (67.2, 11.1)),
    "shape": ((), "a"),
    "crude": ((TABLE,), 13 / 70 - 10 / 90),
    "within": ((TABLE,), (2 / 20 - 4 / 60, 11 / 50 - 6 / 30)),
    "confounder": ((), "c"),
    "arrangements": ((7, 2), 21),
    # Sums of the two chosen as large as the 0.31 that was seen: with 0.20 only 0.15 and 0.11 make it.
    "permutation": ((SHARES, WARM), 2 / 21),
    "smallest": ((7, 2), 1 / 21),
}
GOOD = pd.DataFrame({"eggs": [20, 30], "hatched": [15, 27]})
COUNTS = {"poor": 5, "poor_with": 4, "good": 20, "good_with": 6}
YEAR_ONE, YEAR_TWO = np.array([10, 4, 8, 6, 12]), np.array([9, 8, 7, 6, 10])
BLOCKS = pd.DataFrame({"eggs_a": [10, 20], "hatched_a": [8, 10], "eggs_b": [10, 10], "hatched_b": [7, 4]})
WEIGHTS = {"gross_first": 2300, "gross_later": 2100, "tray": 300}
DUCK = {"incubation_days": 28, "transfer_day": 25, "embryo_care_day": 18.5}

#: Further lessons.
CASES |= {
    "good_share": ((GOOD,), 42 / 50),
    "expected_chicks": ((GOOD, 25), 21),
    "missing_chicks": ((GOOD, 25, 15), 6),
    "shared_by_all": ((), "c"),
    "had_it": ((COUNTS,), (0.8, 0.3)),
    "poor_given": ((COUNTS,), (4 / 10, 1 / 15)),
    "out_of_line": ((12, [2, 4, 6]), 4.0),
    "what_differs": ((), "b"),
    "worst_again": ((YEAR_ONE, YEAR_TWO, 12, 2), (8 + 6) / 24),
    "got_better": ((YEAR_ONE, YEAR_TWO, 3), 1 / 3),
    "the_tonic": ((), "b"),
    "shrunk": (({"hatched": 6, "eggs": 12, "usual": 0.8, "weight": 20},), 22 / 32),
    "any_of": ((0.1, 3), 0.271),
    "seasons_with": (([[0.5, 0.01], [0.2, 0.3], [0.6, 0.06]], 0.05), 1 / 3),
    "level_each": ((0.05, 8), 0.00625),
    "chosen_after": ((), "a"),
    "water_loss": ((WEIGHTS,), 0.1),
    "tare_error": ((WEIGHTS,), 0.1 - 200 / 2300),
    "projection": ((0.04, 8, 18), 0.09),
    "rate_left": ((0.12, 0.04, 8, 18), 0.008),
    "humidity_next": ((45, 14, 12), 52.857),  # the worked example of the fact sheet: 52.9 %
    "conductance": (({"grams_a_day": 0.3, "inside_kpa": 6.0, "outside_kpa": 3.0},), 100),
    "eggs_gone": ((), "c"),
    "which_way": ((), "b"),
    "turning_cost": (({24: 91.84, 6: 76.33},), 15.51),
    "fair_lots": ((), "b"),
    "block_mean": ((BLOCKS,), 0.1),
    "same_way": ((6,), 1 / 32),
    "eggs_needed": ((0.5, 0.1), 392),
    "half_width": (({"hatched": 50, "eggs": 100}, {"hatched": 50, "eggs": 100}), 1.96 * math.sqrt(0.005)),
    "stop_early": ((), "c"),
    "who_counts": ((), "a"),
    "last_days": ((DUCK,), 3),
    "scaled_day": ((4, 28), 16 / 3),
    "scale_error": ((6, 4, 28), 2 / 3),
    "thirds": ((27,), (9, 18)),
    "stored_duck": ((14,), 28.3002),  # 28.30 d, as printed for 14 days (Bagliacca et al. 2005)
    "still_air": ((), "b"),
    "first_look": ((), "c"),
    "cooling": ((), "a"),
    "wash_water": ((), "c"),
    "rotten_high": ((0, 24), 1.959964**2 / (24 + 1.959964**2)),  # Wilson's end for none of n
    "dilution": ((5, 200), 25),
    "order_of_work": ((), "a"),
    "one_stage": ((), "b"),
    "care_day": ((DUCK,), 18.5),
    "sudden_deaths": ((), "b"),
    "no_formaldehyde": ((), "c"),
    "died_when": (({"last_alive": 9, "found": 18, "from": 7, "to": 11},), (9, 11)),
    "which_wing": ((), "b"),
    "wet_or_dry": ((), "a"),
}


def test_every_exercise_is_tried_here():
    assert set(CASES) | {"finding", "case", "candled_day", "opened_day", "another_day"} == set(EXERCISES)


@pytest.mark.parametrize("name", CASES)
def test_the_right_answer_is_recognised(name):
    data, answer = CASES[name]
    assert judge(name, answer, *data).state == RIGHT


@pytest.mark.parametrize("name", CASES)
def test_dots_mean_not_answered_yet(name):
    assert judge(name, ..., *CASES[name][0]).state == OPEN


@pytest.mark.parametrize("name", [name for name in CASES if not isinstance(CASES[name][1], str)])
def test_usual_mistakes_get_a_hint_of_their_own(name):
    data, right = CASES[name]
    words = reference.load("exercise_words").query("exercise == @name").set_index("answer")["words"]
    for mistake, answer in ((key, wrong(*data)) for key, wrong in EXERCISES[name].mistakes.items()):
        verdict = judge(name, answer, *data)
        assert verdict.state == NOT_YET, mistake
        assert verdict.words.removeprefix("Not yet. ") in set(words), mistake


@pytest.mark.parametrize("name", [name for name in CASES if not isinstance(CASES[name][1], str)])
def test_no_hint_gives_the_answer_away(name):
    data, right = CASES[name]
    parts = right if isinstance(right, tuple) else (right,)
    tries = [wrong(*data) for wrong in EXERCISES[name].mistakes.values()]
    for value in (0, 1, -1, 0.123, 50, 1e6, *(100 * part for part in parts)):
        tries.append((value,) * len(parts) if isinstance(right, tuple) else value)
    hidden = {round(scale * part, digits) for part in parts for scale in (1, 100) for digits in (0, 2, 4)} - {0, 1}
    for answer in [*tries, "a word", [1, 2, 3]]:
        verdict = judge(name, answer, *data)
        if verdict.state != RIGHT:
            assert not hidden & {float(text) for text in re.findall(r"\d+\.?\d*", verdict.words)}, verdict.words


def test_percent_instead_of_a_share_is_told():
    assert "not percent" in judge("hatch_of_set", 40, TRAY).words
    assert "not percent" in judge("fertility_bounds", (80, 100), TRAY).words


@pytest.mark.parametrize("answer", ["0.4", True, None.__class__, [], {"a": 1}, float("nan"), np.array([1, 2])])
def test_an_answer_of_the_wrong_kind_is_no_crash(answer):
    assert judge("hatch_of_set", answer, TRAY).state == NOT_YET


def test_numpy_numbers_count_as_numbers():
    assert judge("hatch_of_set", np.float64(0.4), TRAY).state == RIGHT
    assert judge("hatch_of_set", np.array([0.4]), TRAY).state == RIGHT


@pytest.mark.parametrize("answer", [" B ", "b)", "(b)", "b.", "B"])
def test_letters_may_be_written_in_any_usual_way(answer):
    assert judge("independent", answer).state == RIGHT


@pytest.mark.parametrize("answer", ["a", "(c)", "ab", "", 2, "b or c"])
def test_another_letter_or_none_is_not_right(answer):
    assert judge("independent", answer).state != RIGHT


#: What a person reads off the screen and rounds.
ROUNDED = [
    ("smallest", (6, 1), 0.17),
    ("permutation", (SHARES, WARM), 0.095),
    ("hatch_of_transferred", (TRAY,), 0.67),
    ("daily_risk", CASES["daily_risk"][0], (0.02, 0.008)),
    ("egg_after_lid", (LID,), 34),
    ("degree_hours", CASES["degree_hours"][0], (67, 11)),
    ("chance_spread", (SPREAD, 24), 0.094),
]
COARSE = [
    ("permutation", (SHARES, WARM), 0.1),
    ("hatch_of_transferred", (TRAY,), 0.7),
    ("chance_spread", (SPREAD, 24), 0.09),
    ("daily_risk", (FIRST, SECOND), (0.011, 0.007)),
]


@pytest.mark.parametrize(("name", "data", "answer"), ROUNDED)
def test_an_answer_that_is_right_as_far_as_its_figures_go_is_right(name, data, answer):
    assert judge(name, answer, *data).state == RIGHT


@pytest.mark.parametrize(("name", "data", "answer"), COARSE)
def test_an_answer_rounded_to_one_figure_is_nearly_right(name, data, answer):
    verdict = judge(name, answer, *data)
    assert verdict.state == NOT_YET
    assert "more decimals" in verdict.words


@pytest.mark.parametrize("answer", [0.3, 0.2, 1, 0, 0.18, 33])
def test_a_wrong_answer_is_not_nearly_right(answer):
    words = judge("smallest", answer, 6, 1).words
    assert "Right" not in words
    assert ("more decimals" in words) == (answer == 0.2)


@pytest.mark.parametrize("answer", [9.4, 9, 9.40])
def test_percent_is_told_also_where_the_answer_is_a_spread(answer):
    assert "not percent" in judge("chance_spread", answer, SPREAD, 24).words


def test_windows_in_the_wrong_order_are_told():
    assert "other way round" in judge("daily_risk", (8 / 111 / 11, 9 / 120 / 7), FIRST, SECOND).words


@pytest.mark.parametrize("kind", [list, np.array, pd.Series])
def test_arrays_and_columns_count_like_brackets(kind):
    assert judge("fertility_bounds", kind([0.8, 1.0]), TRAY).state == RIGHT
    assert judge("daily_risk", kind([9 / 120 / 7, 8 / 111 / 11]), FIRST, SECOND).state == RIGHT
    assert judge("fertility_bounds", kind([0.8, 0.9, 1.0]), TRAY).state == NOT_YET


def test_the_opened_egg_and_the_candling_each_narrow_one_end():
    egg = {"last_alive": 10, "found_dead": 18, "stage_from": 7, "stage_to": 14}
    assert judge("narrowed", (10, 14), egg).state == RIGHT
    assert "candling says more" in judge("narrowed", (7, 14), egg).words
    assert "narrows it further" in judge("narrowed", (10, 18), egg).words


def test_answers_follow_the_data_and_are_not_stored():
    larger = pd.concat([TRAY, TRAY.assign(day21="h", day18="a", day7="a")])
    assert judge("hatch_of_set", 0.4, larger).state == NOT_YET
    assert judge("hatch_of_set", 14 / 20, larger).state == RIGHT


def test_an_unknown_exercise_is_named():
    with pytest.raises(HatchkitError, match="no exercise 'hatsch'"):
        judge("hatsch", 1)


def test_check_prints_the_verdict_in_lines_that_fit_the_screen(capsys):
    check("hatch_of_fertile", 4 / 8, TRAY)
    said = capsys.readouterr().out
    assert " ".join(said.split()) == judge("hatch_of_fertile", 4 / 8, TRAY).words
    assert max(map(len, said.splitlines())) <= 100


class Sealed:
    cause, batch = "lid_ajar", "2"

    def __init__(self, *touched):
        self.causes = pd.DataFrame({"batch": ["2", *touched]})

    def words(self):
        return "The lid stood ajar."


def test_the_hidden_cause_of_a_case_is_told_only_to_those_who_found_it():
    assert judge("case", "lid_ajar", Sealed()) == (RIGHT, "Right. The lid stood ajar.")
    for guess, hint in (
        ("power_cut", "the same kind"),
        ("overheating", "of the same stage"),
        ("old_flock", "Ask of each"),
    ):
        wrong = judge("case", guess, Sealed())
        assert wrong.state == NOT_YET
        assert hint in wrong.words
        assert "ajar" not in wrong.words
    assert "power_cut" in judge("case", "witchcraft", Sealed()).words


@pytest.mark.parametrize(
    ("others", "said"),
    [
        ((), "ajar."),
        (("4",), "ajar. The fault touched batch 4 as well."),
        (("4", "6", "8"), "ajar. The fault touched batches 4, 6 and 8 as well."),
    ],
)
def test_the_right_cause_comes_with_the_other_batches_that_it_touched(others, said):
    assert judge("case", "lid_ajar", Sealed(*others)).words.endswith(said)


def test_every_hint_has_its_words_and_no_words_are_left_over():
    table = reference.load("exercise_words")
    spoken = {Writing: ["found"], HiddenCause: ["other", "kin", "stage"], DateTheEgg: []}
    wanted = {
        (name, answer)
        for name, exercise in EXERCISES.items()
        for answer in (spoken[type(exercise)] if type(exercise) in spoken else ["right", "other", *exercise.mistakes])
    }
    assert set(zip(table["exercise"], table["answer"], strict=True)) == wanted
