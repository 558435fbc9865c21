"""The plan and the sheet of a trial on disk: a folder with trial.toml and trial_sheet.csv, filled in by hand."""

import csv
import json
import tomllib
from pathlib import Path

import pandas as pd

from hatchkit.problems import HatchkitError
from hatchkit.records.safe_csv import safe_cell
from hatchkit.records.writing import whole_file, write_whole
from hatchkit.say import text
from hatchkit.trials.plan import SHEET, Plan, deal

PLAN, BOOK = "trial.toml", "trial_sheet.csv"


def save(plan: Plan, folder) -> list[Path]:
    """Write plan and sheet into a new or empty folder.

    Returns
    -------
    list of Path
    """
    folder = Path(folder).expanduser().resolve()
    if folder.is_file() or folder.is_dir() and any(folder.iterdir()):
        raise HatchkitError("trial_folder", dict(path=str(folder)))
    folder.mkdir(parents=True, exist_ok=True)
    lines = [
        f"# {text('trial_plan_file')}",
        f"arms = {json.dumps(list(plan.arms), ensure_ascii=False)}",
        f'outcome = "{plan.outcome}"',
        f"usual = {plan.usual:.6f}",
        f"difference = {plan.difference}",
        f"eggs = {plan.eggs}",
        f"sets = {plan.sets}",
        f"needed = {plan.needed}",
        f"power = {plan.power}",
        f"seed = {plan.seed}",
        f"blocks = {json.dumps([list(block) for block in plan.blocks], ensure_ascii=False)}",
        "",
    ]
    write_whole(folder / PLAN, "\n".join(lines))
    with whole_file(folder / BOOK) as part, open(part, "w", encoding="utf-8-sig", newline="") as handle:
        writer = csv.writer(handle)
        writer.writerow([name.capitalize() for name in SHEET])
        for row in plan.sheet.itertuples(index=False):
            writer.writerow([safe_cell(cell) if isinstance(cell, str) else cell for cell in row])
    return [folder / PLAN, folder / BOOK]


def load(folder) -> tuple[Plan, pd.DataFrame]:
    """Plan and filled-in sheet of a trial's folder.

    The plan's own dealing is drawn again from its seed, so that a changed arm in the sheet does not change the plan.
    """
    import numpy as np

    folder = Path(folder).expanduser()
    try:
        told = tomllib.loads((folder / PLAN).read_text(encoding="utf-8"))
        blocks = tuple((str(name), int(count)) for name, count in told["blocks"])
        arms = tuple(map(str, told["arms"]))
        sheet = deal(arms, int(told["sets"]), blocks, np.random.default_rng(int(told["seed"])))
        plan = Plan(
            arms,
            str(told["outcome"]),
            float(told["usual"]),
            float(told["difference"]),
            int(told["eggs"]),
            int(told["sets"]),
            int(told["needed"]),
            float(told["power"]),
            blocks,
            sheet,
            int(told["seed"]),
        )
    except FileNotFoundError:
        raise HatchkitError("trial_no_plan", dict(path=str(folder))) from None
    except (KeyError, TypeError, ValueError) as error:
        raise HatchkitError("trial_bad_plan", dict(path=str(folder / PLAN), why=str(error))) from None
    return plan, _filled(folder)


def _filled(folder: Path) -> pd.DataFrame:
    from hatchkit.records.workbook import TEXTS, WORKBOOKS, read_grids

    books = sorted(path for path in folder.iterdir() if path.suffix.lower() in (*WORKBOOKS, *TEXTS))
    for path in books:
        for grid in read_grids(path, file=path.name)[0]:
            head = [str(cell).strip().lower() for cell in grid.cells[0]] if grid.cells else []
            if {"set", "egg", "result"} <= set(head):
                rows = [row for row in grid.cells[1:] if any(str(cell).strip() for cell in row)]
                return pd.DataFrame(
                    [dict(zip(head, row, strict=False)) for row in rows], columns=list(dict.fromkeys(head))
                )
    raise HatchkitError("trial_no_sheet", dict(path=str(folder)))
