"""How the sheets were read, as tables: each column's meaning, the ledger of the rows, and what stays open."""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit.records.sheets.assign import LIKELY, SURE
from hatchkit.records.sheets.cells import is_empty, shown
from hatchkit.records.sheets.fields import COUNTS, key_of

READING = [
    "file",
    "sheet",
    "column",
    "heading",
    "taken",
    "example",
    "how_sure",
    "margin",
    "why",
    "runner_up",
    "changes_numbers",
]
QUESTIONS = ["code", "file", "sheet", "heading", "taken", "choices", "rows_changed", "facts"]
LEDGER = ["file", "sheet", "row", "name", "species", "eggs_set", "terms", "rest"]
#: Rows of each sheet that the ledger shows, and those among which the ones that do not add up are looked for.
LEDGER_ROWS, LEDGER_TRIED = 8, 200
#: Fields on which a number of the analysis depends.
NUMBERS = frozenset(COUNTS) | {"set_at", "look_at", "hatch_at", "fate", "result"}


def reading_table(sheets) -> pd.DataFrame:
    """One row per column of each sheet: what it was taken for, how sure, and why."""
    rows = []
    for item in sheets.understood:
        if not item.kind or item.kind == "lines":
            continue
        for place, (column, meaning) in enumerate(zip(item.columns, item.chosen, strict=True)):
            if not column.filled and not column.heading:
                continue
            rows.append(_reading_row(item, place, column, meaning))
    return pd.DataFrame(rows, columns=READING)


def _reading_row(item, place: int, column, meaning) -> dict:
    reading = item.reading
    margin = reading.margins[place] if reading is not None else SURE
    rival = reading.rivals[place][0] if reading is not None and reading.rivals[place] else None
    example = next((shown(cell) for cell in column.cells if not is_empty(cell)), "")
    why = []
    if meaning.weight > 0:
        why.append(("words", {}))
    if reading is not None and meaning.field in COUNTS and reading.rows:
        why.append(("adds_up", dict(rows=reading.adds_up, of=reading.rows)))
    if not why:
        why.append(("values", {}))
    changes = bool(rival and (NUMBERS & {meaning.field, rival.meaning.field}))
    sure = "sure" if margin >= SURE or not changes else "likely" if margin >= LIKELY else "open"
    return dict(
        file=item.block.file,
        sheet=item.block.sheet,
        column=place,
        heading=column.heading,
        taken=key_of(meaning),
        example=example,
        how_sure=sure,
        margin=round(float(margin), 2),
        why=why,
        runner_up=key_of(rival.meaning) if rival else "",
        changes_numbers=changes,
    )


def ledger_table(sheets) -> pd.DataFrame:
    """Batches of each sheet, those that do not add up before others: eggs set and what became of them."""
    if not len(sheets.batches):
        return pd.DataFrame(columns=LEDGER)
    first = sheets.batches.groupby(["file", "sheet"], sort=False).head(LEDGER_TRIED)
    looks = sheets.looks[sheets.looks["batch"].isin(first["batch"])] if len(sheets.looks) else sheets.looks
    by_batch: dict = {}
    for look in looks.to_dict("records"):
        by_batch.setdefault(look["batch"], []).append(look)
    rows = []
    for row in first.to_dict("records"):
        terms = []
        for look in by_batch.get(row["batch"], []):
            for name in ("clear", "dead", "removed"):
                if look[name] == look[name] and look[name] is not None:
                    terms.append((f"{name}@{look['name']}", int(look[name]), name))
        seen = sum(count for key, count, name in terms if name == "removed")
        for name in ("pipped_dead", *_in_shell(row), "removed", "hatched"):
            value = _counted(row, name) - (seen if name == "removed" else 0)
            if value or name == "hatched" and row.get(name) == row.get(name):
                terms.append((name, value, name))
        eggs = int(row["eggs_set"])
        rest = eggs - sum(count for _, count, _ in terms)
        rows.append(
            dict(
                file=row["file"],
                sheet=row["sheet"],
                row=int(row["row"]),
                name=row["batch"],
                species=row["species"],
                eggs_set=eggs,
                terms=terms,
                rest=rest,
            )
        )
    table = pd.DataFrame(rows, columns=LEDGER)
    closes = [not (row["terms"] and row["rest"]) for row in rows]
    kept = table.assign(closes=closes).sort_values("closes", kind="stable")
    return table.loc[sorted(kept.groupby(["file", "sheet"], sort=False).head(LEDGER_ROWS).index)].reset_index(drop=True)


def _counted(row: dict, name: str) -> int:
    value = row.get(name)
    return 0 if value is None or value != value else int(value)


def _in_shell(row: dict) -> tuple:
    """The unhatched as the row tells of them: opened ones by stage, or the dead in shell, whichever explain more."""
    opened = ("broken_infertile", "broken_early", "broken_mid", "broken_late")
    if sum(_counted(row, name) for name in opened) >= _counted(row, "dead_in_shell"):
        return opened
    return ("dead_in_shell",)


def question_table(sheets, answers: dict) -> pd.DataFrame:
    """What the person is to be asked, the most consequential first; empty when no number depends on it."""
    rows, support = [], _support(sheets)
    for item in sheets.understood:
        if item.reading is not None:
            rows += _column_questions(item, support)
    rows = list({(row["file"], row["heading"], row["taken"]): row for row in reversed(rows)}.values())[::-1]
    rows += [_season_question(asked) for asked in _merged(sheets.open)]
    rows = [row for row in rows if (row["file"], row["sheet"], row["heading"]) not in answers]
    rows.sort(key=lambda row: -row["rows_changed"])
    return pd.DataFrame(rows, columns=QUESTIONS)


def _support(sheets) -> dict:
    """(file, group, heading, reading) -> sum of margins: forms and yearly sheets of one person back each other."""
    total: dict = {}
    for item in sheets.understood:
        if item.reading is not None:
            for column, meaning, margin in zip(item.columns, item.reading.chosen, item.reading.margins, strict=True):
                key = (item.block.file, column.group, column.heading, key_of(meaning))
                total[key] = total.get(key, 0.0) + margin
    return total


def _column_questions(item, support: dict) -> list[dict]:
    reading, found = item.reading, []
    for place, (column, meaning) in enumerate(zip(item.columns, reading.chosen, strict=True)):
        rivals = [
            rival
            for rival in reading.rivals[place]
            if rival.behind < LIKELY and not rival.alike and NUMBERS & {meaning.field, rival.meaning.field}
        ]
        backed = support[item.block.file, column.group, column.heading, key_of(meaning)]
        if not rivals or backed >= LIKELY or not column.filled:
            continue
        choices = [dict(taken=key_of(meaning), adds_up=reading.adds_up, of=reading.rows)]
        choices += [dict(taken=key_of(rival.meaning), adds_up=rival.adds_up, of=rival.rows) for rival in rivals]
        if not any(choice["taken"] == "ignore" for choice in choices):
            choices.append(dict(taken="ignore", adds_up=None, of=None))
        found.append(
            dict(
                code="meaning",
                file=item.block.file,
                sheet=item.block.sheet,
                heading=column.heading,
                taken=key_of(meaning),
                choices=choices,
                rows_changed=int(np.sum(~np.isnan(column.values))),
                facts=dict(margin=round(float(reading.margins[place]), 2)),
            )
        )
    # One wrong column drags others along: ask about the one with most at stake, the others follow.
    return sorted(found, key=lambda row: row["facts"]["margin"])[:1]


def _merged(asked: list[dict]) -> list[dict]:
    """One question of a kind for the season, not one per sheet."""
    merged: dict = {}
    for question in asked:
        key = (question["code"], question.get("how"))
        if key in merged:
            merged[key]["rows"] = merged[key]["rows"] + question["rows"]
        else:
            merged[key] = dict(question)
    return list(merged.values())


def _season_question(asked: dict) -> dict:
    options = {
        "species": ("chicken", "duck", "goose", "turkey", "quail", "muscovy", "guinea", "pheasant"),
        "mixed_birds": (),
        "day_first": ("True", "False"),
        "diary": ("left_out", "used"),
        "sums": ("left_out", "used"),
    }.get(asked["code"], ())
    options = (
        [asked["taken"], *[option for option in options if option != asked["taken"]]]
        if asked["taken"]
        else list(options)
    )
    return dict(
        code=asked["code"],
        file=asked["file"],
        sheet=asked["sheet"],
        heading=f"?{asked['code']}",
        taken=asked["taken"],
        choices=[dict(taken=option, adds_up=None, of=None) for option in options],
        rows_changed=len(asked["rows"]),
        facts={key: asked[key] for key in ("how", "names", "written") if key in asked},
    )
