"""The drop-downs of notebook 0, without a browser: choose, see whether the eggs add up, keep."""

from types import SimpleNamespace

import ipywidgets
import pandas as pd
import pytest

from hatchkit.widgets.reading import confirm_reading
from hatchkit.words.sentences import Sentences

FILE, SHEET = "hatches.xlsx", "2025"
KEY = (FILE, SHEET, "Left")
LEFT = dict(
    code="meaning",
    file=FILE,
    sheet=SHEET,
    heading="Left",
    taken="left@look1",
    rows_changed=9,
    facts={},
    choices=[dict(taken="left@look1", adds_up=9, of=9), dict(taken="dis", adds_up=2, of=9)],
)


def column(place, heading, taken, runner_up=""):
    return dict(
        file=FILE,
        sheet=SHEET,
        column=place,
        heading=heading,
        taken=taken,
        example="24",
        how_sure="sure",
        margin=3.0,
        why=[("words", {})],
        runner_up=runner_up,
        changes_numbers=False,
    )


def season(answers=(), questions=(LEFT,)):
    """Adds up unless "Left" is taken for dead in shell."""
    answers = dict(answers)
    rest = 4 if answers.get(KEY) == "dis" else 0
    ledger = [
        dict(
            file=FILE,
            sheet=SHEET,
            row=2,
            name="<b>H1</b>",
            eggs_set=24,
            rest=rest,
            terms=[("Clears", 4, "clear"), ("Out", 20 - rest, "hatched")],
        )
    ]
    reading = [
        column(0, "Set", "eggs_set"),
        column(1, "Left", "left@look1", "dis"),
        column(2, "Out", "hatched", "notes"),
    ]
    return SimpleNamespace(
        folder="folder",
        reading=pd.DataFrame(reading),
        ledger=pd.DataFrame(ledger),
        questions=pd.DataFrame([row for row in questions if KEY not in answers]),
    )


@pytest.fixture
def form():
    kept = {}
    made = confirm_reading(
        season(),
        again=lambda _, answers: season(answers),
        keep=lambda folder, answers, language: kept.update(answers) or "folder/answers.toml",
    )
    made.kept = kept
    return made


def test_each_open_column_has_a_labelled_drop_down_with_its_choices(form):
    box = form.choices[KEY]
    assert box.description == "Left:" and [taken for _, taken in box.options] == ["left@look1", "dis"]
    assert box.options[0][0] == "eggs left, 1st look (the eggs add up in 9 of 9 rows), as taken now"
    assert form.choices[FILE, SHEET, "Out"].description.startswith("Out (hatches.xlsx") and len(form.choices) == 2


def test_a_choice_shows_at_once_whether_the_eggs_add_up(form):
    assert "add up in one of one row" in form.eggs.value or "add up in 1 of one row" in form.eggs.value
    form.choices[KEY].value = "dis"
    assert "add up in 0 of one row" in form.eggs.value and "4 eggs are not told of" in form.eggs.value
    assert 'role="status" aria-live="polite"' in form.eggs.value and "&lt;b&gt;H1" in form.eggs.value


def test_keep_writes_what_was_chosen_and_what_was_seen(form):
    form.choices[FILE, SHEET, "Out"].value = "notes"
    form.keep_button.click()
    assert form.kept == {KEY: "left@look1", (FILE, SHEET, "Out"): "notes"}
    assert "2 answers are kept in folder/answers.toml" in form.message.value
    form.choices[KEY].value = "dis"
    assert form.message.value == ""


def test_nothing_to_choose_is_a_sentence_and_no_form():
    bare = season(questions=[])
    bare.reading = bare.reading.assign(runner_up="")
    shown = confirm_reading(bare)
    assert isinstance(shown, Sentences) and "There is nothing to ask" in repr(shown)
    assert isinstance(confirm_reading(season()), ipywidgets.VBox)
