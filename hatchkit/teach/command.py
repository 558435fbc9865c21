"""The commands of a class, `hatchkit lesson`, `mark` and `breakout-sheet`: options for argparse, and what runs."""

from __future__ import annotations

from pathlib import Path

from hatchkit.terminal import asked_language, tell, whole


def lesson_options(sub) -> None:
    """Folder, students, level, language and seed of a lesson."""
    sub.add_argument("folder")
    sub.add_argument("--students", type=whole(1), required=True)
    sub.add_argument(
        "--level",
        choices=("first", "second", "exam"),
        default="first",
        help="how much else happens in the seasons (default first)",
    )
    sub.add_argument("--language", choices=("en", "de", "fr", "es"), default="en", help="of the answer forms")
    sub.add_argument("--seed", type=whole(0), help="make an earlier lesson again (default: drawn, too large to guess)")


def mark_options(sub) -> None:
    """Answers, lesson folder, and what is written beside the marks on the screen."""
    sub.add_argument("answers", help="folder or file of filled-in answer forms (.xlsx, .ods, .csv)")
    sub.add_argument("folder", help="the lesson folder, which holds the answer book")
    sub.add_argument("--csv", metavar="FILE", help="also write the marks as a CSV file")
    sub.add_argument(
        "--give-back",
        metavar="DIR",
        help="write a page for each student, one for the class and the marks into a new folder",
    )


def breakout_sheet_options(sub) -> None:
    """Where the picture key goes."""
    sub.add_argument("-o", "--out", metavar="FILE", default="breakout-sheet.html", help="HTML file to write")


def lesson(options) -> None:
    """Write the cases, the forms and the teacher's answer book."""
    from hatchkit.teach.lesson import GUESSED, write_lesson

    written = write_lesson(
        Path(options.folder),
        students=options.students,
        seed=options.seed,
        level=options.level,
        language=options.language,
    )
    tell(
        "lesson_written",
        options.language,
        count=options.students,
        folder=Path(options.folder).resolve(),
        path=written,
    )
    if options.seed is not None and options.seed < GUESSED:
        tell("seed_short", options.language)


def mark(options) -> None:
    """Compare the forms with the answer book and say the marks."""
    from hatchkit.teach.marking import mark_answers, target, write_marks

    if options.csv:  # before the work, not after it
        target(options.csv)
    marking = mark_answers(Path(options.answers), Path(options.folder))
    print(marking.words())
    if options.csv:
        tell("new_line marks_written", asked_language(options), path=write_marks(marking.marks, options.csv).resolve())
    if options.give_back:
        from hatchkit.teach.give_back import give_back

        tell(
            "new_line pages_written",
            asked_language(options),
            path=give_back(marking, Path(options.folder), Path(options.give_back)).resolve(),
        )


def breakout_page(options) -> None:
    """Write the picture key."""
    from hatchkit.records.writing import safe_output, write_whole
    from hatchkit.teach.breakout_sheet import breakout_sheet

    path = safe_output(options.out, suffix=(".html", ".htm"))
    write_whole(path, breakout_sheet())
    tell("sheet_written open_in_browser", asked_language(options), path=path)
