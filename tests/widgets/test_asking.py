"""The open questions, one by one on the terminal."""

from types import SimpleNamespace

import pandas as pd
import pytest

from hatchkit.widgets.asking import ask

LEFT = dict(
    code="meaning",
    file="h.xlsx",
    sheet="2025",
    heading="Left",
    taken="left@look1",
    rows_changed=9,
    facts={},
    choices=[dict(taken="left@look1", adds_up=9, of=9), dict(taken="dis", adds_up=2, of=9)],
)
BIRDS = dict(
    code="species",
    file="h.xlsx",
    sheet="",
    heading="?species",
    taken="chicken",
    rows_changed=4,
    facts={},
    choices=[dict(taken="chicken", adds_up=None, of=None), dict(taken="duck", adds_up=None, of=None)],
)


class Desk:
    """A person at a terminal, and a season that asks no more what was answered."""

    def __init__(self, *typed, questions=(LEFT, BIRDS)):
        self.typed, self.questions, self.shown, self.kept = list(typed), list(questions), [], {}

    def season(self, answers=()):
        left = [row for row in self.questions if (row["file"], row["sheet"], row["heading"]) not in answers]
        return SimpleNamespace(folder="folder", questions=pd.DataFrame(left))

    def read(self, prompt):
        self.shown.append(prompt)
        if not self.typed:
            raise EOFError
        return self.typed.pop(0)

    def keep(self, folder, answers, language):
        self.kept = dict(answers)
        return f"{folder}/answers.toml"

    def ask(self):
        path = ask(
            self.season(),
            again=lambda _, answers: self.season(answers),
            keep=self.keep,
            read=self.read,
            show=self.shown.append,
        )
        return path, "\n".join(self.shown)


def test_a_number_chooses_and_enter_keeps_what_is_taken():
    desk = Desk("2", "")
    path, shown = desk.ask()
    assert desk.kept == {("h.xlsx", "2025", "Left"): "dis", ("h.xlsx", "", "?species"): "chicken"}
    assert path == "folder/answers.toml" and "2 answers are kept in folder/answers.toml" in shown
    assert "1  eggs left, 1st look (the eggs add up in 9 of 9 rows), as taken now" in shown
    assert "Nothing is left to ask." in shown


@pytest.mark.parametrize("typed, kept", [(["2", "q"], 1), (["2"], 1), (["q"], 0), ([], 0)])
def test_q_or_the_end_of_the_input_ends_and_keeps_what_was_answered(typed, kept):
    desk = Desk(*typed)
    path, shown = desk.ask()
    assert len(desk.kept) == kept and (path is None) == (kept == 0)
    assert f"{2 - kept} questions are left" in shown or "One question is left" in shown


@pytest.mark.parametrize("typed", ["3", "0", "-1", "two", "²", "1.5", "9" * 400])
def test_what_is_no_choice_is_asked_again(typed):
    desk = Desk(typed, "1", questions=[LEFT])
    assert "Type a number from 1 to 2" in desk.ask()[1] and list(desk.kept.values()) == ["left@look1"]


def test_where_nothing_is_taken_enter_is_no_answer():
    desk = Desk("", "1", questions=[dict(BIRDS, code="mixed_birds", heading="?mixed_birds", taken="")])
    desk.ask()
    assert list(desk.kept.values()) == ["chicken"]


def test_nothing_to_ask_is_said_and_a_question_without_choices_is_passed_over():
    assert "There is nothing to ask" in Desk(questions=[]).ask()[1]
    path, shown = Desk(questions=[dict(BIRDS, choices=[])]).ask()
    assert path is None and "One question is left." in shown


def test_hostile_text_does_not_reach_the_terminal():
    desk = Desk("1", questions=[dict(LEFT, heading="\x1b[2JLeft", file="\x07")])
    assert "\x1b" not in desk.ask()[1] and "\x07" not in desk.ask()[1]
