"""What each section of a lesson is for, how long it takes, and how far a student has come (``lesson_outline.csv``)."""

from hatchkit import reference
from hatchkit.problems import one_of
from hatchkit.say import text


def sections(lesson: str):
    """The rows of a lesson's outline in order: lesson, section, title, aim, minutes, exercises (a tuple)."""
    table = reference.load("lesson_outline")
    mine = table[table["lesson"] == lesson]
    one_of("lesson", lesson, dict.fromkeys(table["lesson"]))
    return mine.assign(exercises=[tuple(names.split()) for names in mine["exercises"].fillna("")])


def section(name: str):
    """The row of one section, whichever lesson it is in."""
    table = reference.load("lesson_outline").set_index("section")
    one_of("section", name, table.index)
    return table.loc[name]


def aim_words(name: str) -> str:
    """Aim and minutes of a section in a line."""
    row = section(name)
    return text("teach_aim", dict(aim=row["aim"], minutes=int(row["minutes"])))


def progress_words(lesson: str, states: dict) -> str:
    """How many exercises of each section are right, a line for each.

    Parameters
    ----------
    lesson : str
    states : dict
        Exercise -> whether it was right when it was last checked.
    """
    rows = sections(lesson)
    wide = max(map(len, rows["title"]))
    lines, done, all_of = [], 0, 0
    for row in rows.itertuples():
        right = sum(states.get(name, False) for name in row.exercises)
        done, all_of = done + right, all_of + len(row.exercises)
        boxes = "#" * right + "." * (len(row.exercises) - right)
        lines.append(
            f"{row.title.ljust(wide)}  [{boxes}] "
            + text("teach_progress", dict(right=right, of=len(row.exercises), minutes=int(row.minutes)))
        )
    return "\n".join([*lines, text("teach_progress_all", dict(right=done, of=all_of))])
