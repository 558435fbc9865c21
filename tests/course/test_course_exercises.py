"""The checker knows a right answer from a wrong one, says which mistake it was, and never gives the answer away."""

import math
import re

import numpy as np
import pandas as pd
import pytest

from hatchkit import reference
from hatchkit.course_exercises import EXERCISES
from hatchkit.exercises import NOT_YET, OPEN, RIGHT, HiddenCause, Writing, check, judge
from hatchkit.problems import HatchkitError

RNG = np.random.default_rng(7)
TRAY = pd.DataFrame({"day7": list("aacaadaaca"), "day18": list("aa.ad.aa.a"), "day21": list("hp.h..hd.h")})
HATCHES, OTHERS = RNG.binomial(24, 0.7, size=(2, 400))
LOW, HIGH = HATCHES / 24 - 0.15, HATCHES / 24 + 0.15
LOG = pd.DataFrame({"air_c": [37.5, 37.8, 38.2, 38.4, 37.9, 37.5]})
LOG.attrs["step_hours"] = 0.25
TABLE = pd.DataFrame({"warm": ["yes", "yes", "no", "no"], "stored": ["long", "short", "long", "short"],
                      "eggs": [50, 20, 30, 60], "died": [11, 2, 6, 4]})
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
FINDING = {"batch": "K3", "lost": 6, "eggs": 21, "when": "day"}
GOOD = ("In batch K3, 6 of 21 embryos died by day 14 (29 %, 14 to 50 %); it was cold then, but the hens were "
        "also old.")


def test_every_exercise_is_tried_here():
    assert set(CASES) | {"finding", "case"} == set(EXERCISES)


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


def test_letters_may_be_written_in_any_case():
    assert judge("independent", " B ").state == RIGHT
    assert judge("independent", "a").state == NOT_YET


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


def test_a_whole_finding_is_right():
    assert judge("finding", GOOD, FINDING).state == RIGHT


@pytest.mark.parametrize(("text", "hint"), [
    (GOOD.replace("K3", "the third"), "which batch"),
    (GOOD.replace("6 of 21 embryos", "many embryos"), "counts themselves"),
    (GOOD.replace("6 of 21", "6 of 24"), "not those of the table"),
    (GOOD.replace(", 14 to 50 %", ""), "interval"),
    (GOOD.replace("by day 14", "early"), "when"),
    (GOOD.replace("it was cold then", "the cold caused it"), "says more"),
    (GOOD.replace("it was cold then", "that proves the cold did it"), "says more"),
    (GOOD.replace(", but the hens were also old", ""), "other explanation"),
    (42, "quotation marks")])
def test_what_a_finding_lacks_is_the_hint(text, hint):
    verdict = judge("finding", text, FINDING)
    assert verdict.state == NOT_YET
    assert hint in verdict.words


class Sealed:
    cause = "lid_ajar"

    def words(self):
        return "The lid stood ajar."


def test_the_hidden_cause_of_a_case_is_told_only_to_those_who_found_it():
    assert judge("case", "lid_ajar", Sealed()) == (RIGHT, "Right. The lid stood ajar.")
    for guess, hint in (("power_cut", "the same kind"), ("overheating", "at the same age"),
                        ("old_flock", "Ask of each")):
        wrong = judge("case", guess, Sealed())
        assert wrong.state == NOT_YET
        assert hint in wrong.words
        assert "ajar" not in wrong.words
    assert "power_cut" in judge("case", "witchcraft", Sealed()).words


def test_every_hint_has_its_words_and_no_words_are_left_over():
    table = reference.load("exercise_words")
    spoken = {Writing: ["right"], HiddenCause: ["other", "kin", "stage"]}
    wanted = {(name, answer) for name, exercise in EXERCISES.items()
              for answer in spoken.get(type(exercise)) or ["right", "other", *exercise.mistakes]}
    assert set(zip(table["exercise"], table["answer"], strict=True)) == wanted
