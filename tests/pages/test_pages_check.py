"""What the check shows: how each sheet was read, the ledger in the keeper's words, the questions, within 40 lines."""

from dataclasses import replace
from types import SimpleNamespace

import pandas as pd
import pytest

from hatchkit import problems
from hatchkit.pages.check_page import check_page
from hatchkit.pages.check_text import MOST_LINES, assumed_line, check_text
from hatchkit.problems import problem
from hatchkit.records import check

FILE, SHEET = "hatches.xlsx", "2025"
BAD = "<script>x()</script>\x1b[2J"


def column(
    place,
    heading,
    taken,
    how_sure="sure",
    *,
    file=FILE,
    sheet=SHEET,
    example="24",
    why=(("words", {}),),
    runner_up="",
    changes=False,
):
    return dict(
        file=file,
        sheet=sheet,
        column=place,
        heading=heading,
        taken=taken,
        example=example,
        how_sure=how_sure,
        margin=3.0,
        why=list(why),
        runner_up=runner_up,
        changes_numbers=changes,
    )


def batch(name, eggs_set, *terms, row=2):
    return dict(
        file=FILE,
        sheet=SHEET,
        row=row,
        name=name,
        eggs_set=eggs_set,
        terms=list(terms),
        rest=eggs_set - sum(eggs for _, eggs, _ in terms),
    )


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
BIRDS = dict(
    code="species",
    file=FILE,
    sheet=SHEET,
    heading="?species",
    taken="chicken",
    rows_changed=4,
    facts={},
    choices=[dict(taken="chicken", adds_up=None, of=None), dict(taken="duck", adds_up=None, of=None)],
)
COLUMNS = [
    column(0, "Hatch", "batch", example="1"),
    column(1, "Date in", "set_at", example="2025-02-08 00:00:00"),
    column(2, "Set", "eggs_set", why=[("words", {}), ("adds_up", {"rows": 1, "of": 2})]),
    column(3, "Clears", "clear@day7"),
    column(4, "Left", "left@look1", "open", runner_up="dis", changes=True),
]
LEDGER = [
    batch("Hatch 1", 24, ("Clears", 3, "clear"), ("Dead d7", 1, "dead"), ("DIS", 0, "dis"), ("Out", 20, "hatched")),
    batch("Hatch 2", 30, ("Out", 32, "hatched")),
    batch("Hatch 3", 20, ("Out", 19, "hatched")),
    batch("Hatch 4", 20),
]


def season(columns=COLUMNS, questions=(), ledger=LEDGER, rows=()):
    empty = pd.DataFrame()
    return SimpleNamespace(
        title="Spring",
        language="en",
        timezone="UTC",
        problems=problems.table(rows),
        batches=empty,
        eggs=empty,
        weights=empty,
        readings=empty,
        reading=pd.DataFrame(columns),
        ledger=pd.DataFrame(ledger),
        questions=pd.DataFrame(questions),
    )


def test_each_column_is_shown_with_what_it_was_taken_for_an_example_how_sure_and_why():
    lines = check_text(season()).splitlines()
    start = lines.index("I read it like this")
    assert lines[start + 1] == "hatches.xlsx, sheet 2025:"
    assert lines[start + 2].split() == "your heading taken as an example how sure why".split()
    assert lines[start + 4].split() == "Date in date set 2025-02-08 sure words".split()
    assert lines[start + 5].split() == "Set eggs set 24 sure words, adds up in 1 of 2 rows".split()
    assert lines[start + 7].split() == "Left eggs left, 1st look 24 open words".split()


def test_the_ledger_is_in_the_keeper_s_own_words():
    text = check_text(season())
    assert "Hatch 1: 24 set = 3 Clears + 1 Dead d7 + 20 Out: adds up." in text
    assert "Hatch 2: 30 set = 32 Out: 2 eggs too many." in text
    assert "Hatch 3: 20 set = 19 Out: one egg is not told of." in text
    assert "Hatch 4" not in text and "Hatch 4: 20 set, nothing more told." in check_text(season(), full=True)
    assert "The eggs add up in 1 of 2 rows." in text


def test_the_short_list_shows_rows_that_do_not_add_up_first_and_counts_the_others():
    def full(name):
        return batch(name, 20, ("Out", 20, "hatched"))

    ledger = [*map(full, "ABCD"), batch("E", 20, ("Out", 19, "hatched")), full("F")]
    read = [column(2, "Set", "eggs_set", why=[("adds_up", {"rows": 5, "of": 6})])]
    lines = [line.strip() for line in check_text(season(columns=read, ledger=ledger)).splitlines()]
    start = lines.index("Do the eggs add up?")
    assert [line.partition(":")[0] for line in lines[start + 1 : start + 4]] == ["E", "A", "B"]
    assert lines[start + 4 : start + 6] == ["and 3 more", "The eggs add up in 5 of 6 rows."]
    assert "and 3 more" not in check_text(season(columns=read, ledger=ledger), full=True)


def test_the_rows_of_all_tables_of_a_sheet_are_counted():
    told = [[("adds_up", {"rows": rows, "of": of})] for rows, of in ((3, 3), (1, 2), (2, 2))]
    read = [
        column(place, heading, field, why=why)
        for why in told
        for place, heading, field in ((1, "Eggs", "eggs_set"), (2, "Out", "hatched"))
    ]
    assert "The eggs add up in 6 of 7 rows." in check_text(season(columns=read))


def test_a_ledger_in_the_kit_s_keys_is_put_in_words():
    text = check_text(season(ledger=[batch("A", 9, ("dead@candle2", 4, "dead"), ("hatched", 5, "hatched"))]))
    assert "A: 9 set = 4 dead, 2nd look + 5 hatched: adds up." in text


def test_a_question_says_what_each_choice_does():
    text = " ".join(check_text(season(questions=[LEFT, BIRDS])).split())
    assert "2 questions, the most consequential first 1. What is the column “Left”?" in text
    assert "9 rows depend on it." in text
    assert "If “Left” is eggs left, 1st look, the eggs add up in 9 of 9 rows; if it is dead in shell, in 2." in text
    assert "Which birds are these?" in text and "taken for now: hens" in text and "It may be: hens or ducks." in text


def test_questions_of_logs_have_plain_choices():
    asked = dict(code="log_machine", file="a.csv", sheet="", heading="", taken="", choices=["A", "B"], rows_changed=5)
    assert "Which machine does the log a.csv belong to?" in check_text(season(questions=[asked]))


@pytest.mark.parametrize("code", ["year", "day_first", "mixed_birds", "machine", "log_unit", "something_new"])
def test_every_kind_of_question_has_words(code):
    asked = dict(BIRDS, code=code, heading=f"?{code}", taken="", choices=[dict(taken="2025", adds_up=None, of=None)])
    assert "2025" in check_text(season(questions=[asked]))


def test_many_columns_many_sheets_and_many_remarks_stay_within_forty_lines():
    wide = [
        column(n, f"A rather long heading number {n}", "clear@day7", sheet=f"Y{s}", example="x" * 90)
        for s in range(12)
        for n in range(25 + s)
    ]
    rows = [
        problem("lost", file="a.csv", row=n, column=f"c{n}", found=f"{n} is odd", done="d" * 150, fix="m" * 150)
        for n in range(60)
    ]
    ledger = [batch("H" * 40, 99, *((f"Heading {n}", 1, "clear") for n in range(60)))] * 9
    lines = check_text(season(wide, (), ledger, rows)).splitlines()
    assert len(lines) <= MOST_LINES and max(map(len, lines)) <= 100
    assert any("more sheets were read" in line for line in lines) and "more kinds of remarks" in lines[-1]
    full = check_text(season(wide, (), ledger, rows), full=True)
    assert full.count("is odd") == 60 and "more sheets" not in full


def test_a_doubt_is_shown_before_what_is_sure():
    wide = [column(n, f"h{n}", "notes") for n in range(40)] + [column(40, "Left", "left@look1", "likely", changes=True)]
    text = check_text(season(wide))
    assert "likely" in text and "more, sure:" in text


def test_sheets_that_were_read_alike_are_one_table():
    both = [column(n, head, "notes", sheet=sheet) for sheet in ("2024", "2025") for n, head in enumerate("ab")]
    assert "hatches.xlsx: sheets 2024 and 2025 alike:" in check_text(season(both))
    assert len(check.sheets_read(season(both))) == 1


def test_hostile_text_in_any_place_is_harmless():
    hostile = season(
        [column(0, BAD, BAD, example=BAD, sheet=BAD, file=BAD)],
        [dict(LEFT, heading=BAD, file=BAD, sheet=BAD)],
        [batch(BAD, 3, (BAD, 3, "clear"))],
        [problem("lost", file=BAD, sheet=BAD, row=1, column=BAD, found=BAD, done=BAD, fix=BAD)],
    )
    hostile.title = BAD
    text, page = check_text(hostile, full=True), check_page(hostile)
    assert text.replace("\n", "").isprintable() and "\x1b" not in page
    assert "<script>" not in page and page.count("&lt;script&gt;") >= 10


def test_the_page_shows_the_same_and_has_a_viewport_and_a_main():
    page = check_page(season(questions=[LEFT], rows=[problem("note", found="f", done="d")]))
    assert '<meta name="viewport"' in page and page.count("<main>") == 1 and '<html lang="en">' in page
    for words in (
        "I read it like this",
        "your heading",
        "clear, day 7",
        "3 Clears + 1 Dead d7",
        "One question",
        "dead in shell (the eggs add up in 2 of 9 rows)",
        "as taken now",
        "To know",
    ):
        assert words in page, words


@pytest.mark.parametrize(
    "made, words",
    [
        (
            season(questions=[LEFT]),
            ["still open: “Left” is eggs left, 1st look", "9 rows hang on it: eggs left and dead"],
        ),
        (season(questions=[BIRDS]), ["the birds are hens", "4 rows hang on it: all of their numbers"]),
        (season([*COLUMNS[:4], dict(COLUMNS[4], how_sure="likely")]), ["(likely): “Left” is eggs left, 1st look."]),
        (season(COLUMNS[:4]), ["As read: hatches.xlsx, 4 columns, every one sure; the eggs add up in 1 of 2 rows."]),
    ],
)
def test_one_line_says_what_was_assumed_and_how_sure_it_is(made, words):
    line = assumed_line(made)
    assert "\n" not in line and all(word in line for word in words), line


def test_a_season_without_sheets_has_no_such_line_and_no_table():
    bare = SimpleNamespace(**{**vars(season()), "reading": pd.DataFrame(), "ledger": pd.DataFrame()})
    assert assumed_line(bare) == "" and "I read it" not in check_text(bare)
    for name in ("reading", "ledger", "questions"):
        delattr(bare, name)
    assert "Nothing to fix." in check_text(bare)


def test_which_columns_are_left_out_is_a_matter_of_doubt_and_numbers():
    sheet = check.SheetRead(FILE, (SHEET,), tuple(COLUMNS))
    shown, others = check.columns_shown(sheet, 2)
    assert [column["heading"] for column in shown] == ["Set", "Left"] and len(others) == 3
    sure = replace(sheet, columns=tuple(COLUMNS[:4]))
    assert sure.doubts == 0 and check.columns_shown(sure, 99)[1] == []


def test_the_page_speaks_the_season_s_language_where_none_is_asked_for():
    spoken = season(rows=[problem("note", found="f", done="d")])
    spoken.language = "de"
    assert '<html lang="de">' in check_page(spoken) and '<html lang="fr">' in check_page(spoken, language="fr")
