"""The plan of a set as a printed page (dates to keep, boxes to tick, figures to write down), and its files."""

from __future__ import annotations

from pathlib import Path

from hatchkit.pages.frame import template
from hatchkit.records.writing import safe_output, whole_file
from hatchkit.say import has, text
from hatchkit.say import plan as words
from hatchkit.words.cautions import cautions

#: So many changes have room on one sheet; the review has them all.
MOST_CHANGES = 4


def next_set_sheet(plan) -> str:
    """The sheet as a self-contained HTML page without scripts, on one side of A4 or Letter.

    Parameters
    ----------
    plan : Plan
        From `next_set`.
    """
    language = plan.language

    def say(code, **facts):
        return text(code, facts, language)

    changes = [
        (row["what"], f"{row['to'].rstrip('.')}. {row['why']}")
        for row in words.changes(plan.changes, language, plan.unit)[:MOST_CHANGES]
    ]
    return template("next_set").render(
        language=language,
        title=words.title(plan, language),
        lead=f"{words.eggs_to_set(plan, language)} {words.when(plan, language)}",
        heads=["✓", *(say(f"paper_{name}") for name in ("when", "day", "step", "write"))],
        rows=[_row(row, language) for row in plan.calendar.to_dict("records")],
        change=say("paper_change"),
        changes=changes,
        no_change=words.what_changes(plan, language),
        care=say("take_care"),
        cautions=cautions("machine", "opening_eggs", language=language),
    )


def _row(row, language: str) -> dict:
    note = f"write_{row['step']}"
    return dict(
        when=text("paper_moment", dict(time=row["starts"]), language),
        day=text("shown_number", dict(number=row["day"]), language),
        step=words.step(row, language),
        note=text(note, {}, language) if has(note) else "",
    )


def save_next_set(plan, folder) -> list[Path]:
    """Write next_set.ics and next_set.html into `folder`; returns the two paths."""
    folder = Path(folder)
    folder.mkdir(parents=True, exist_ok=True)
    paths = [safe_output(folder / name, suffix=Path(name).suffix) for name in ("next_set.ics", "next_set.html")]
    for path, content in zip(paths, (plan.ics(), next_set_sheet(plan)), strict=True):
        with whole_file(path) as part:
            part.write_bytes(content.encode("utf-8"))  # bytes: the calendar's CRLF must survive on every system
    return paths
