"""All sensor files of a season in one table: which log belongs to which incubator, corrected and merged."""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from pathlib import Path

import pandas as pd

from hatchkit import problems as _problems
from hatchkit.problems import HatchkitError, problem
from hatchkit.records.guard import guarded
from hatchkit.records.logs import owner
from hatchkit.records.logs.join import FILES, files_table, join_files
from hatchkit.records.logs.read import Wishes, is_log, read_parts
from hatchkit.reference import contract

#: Endings of files that are no logs and no mistake either.
_NO_LOGS = {".md", ".pdf", ".png", ".jpg", ".jpeg", ".heic", ".html", ".htm", ".docx", ".toml", ".ini", ".py", ".exe"}
#: As the questions of the sheets; a code of the logs begins with "log_".
QUESTIONS = contract.columns("questions")


@dataclass(frozen=True)
class Logs:
    """All logs of a season.

    Attributes
    ----------
    readings, problems : DataFrame
        As the tables of these names.
    questions : DataFrame
        As the table of this name: code ("log_machine", "log_column", "log_unit", "log_scale", "log_date_order",
        "log_zone", "log_clock", "log_encoding"), file (or the part of one), sheet (""), heading, taken, choices,
        rows_changed, facts; the most consequential first, and none that `answers` answer.
    files : DataFrame
        One row a file; see `join.files_table`.
    """

    readings: pd.DataFrame
    problems: pd.DataFrame
    questions: pd.DataFrame = field(default_factory=lambda: pd.DataFrame(columns=QUESTIONS))
    files: pd.DataFrame = field(default_factory=lambda: pd.DataFrame(columns=FILES))


def read_all(folder, settings, batches, timezone, *, loose=(), answers=None) -> Logs:
    """Read every sensor file of a season folder.

    Parameters
    ----------
    folder : path
        The season folder; logs lie in its folder ``sensors``.
    settings : dict
        season.toml. Used here: ``[incubators.NAME]`` files, probes, probe_offset_c (added to what
        the probe shows; a number, or one per probe), temp_unit, timezone, altitude_m; ``[sensors]``
        temp_unit, day_first, timezone.
    batches : DataFrame
        incubator, hatcher, set_at and taken_off_at are used: names to match, and times in which readings are expected.
    timezone : str or None
        Zone of the season.
    loose : sequence of str
        Names of texts at the top of the season folder; those that are plainly logs are read too.
    answers : dict, optional
        (file, sheet, heading) -> choice, answers to earlier questions.
    """
    folder, rows, parts, asked, facts = Path(folder), [], [], [], {}
    owners = owner.Owners(settings, batches, answers)
    spans = [tuple(at.tz_convert(None).to_datetime64() for at in span) for span in owner.spans_of(batches, 60)]
    base = dict(spans=tuple(spans), settings=settings, owners=owners, timezone=timezone, answers=answers or {})
    paths = log_files(folder)
    for name in loose:
        with guarded(name, "", rows, "file_broken"):
            paths += [folder / name] if is_told_log(folder / name, settings) else []
    orders: dict = {}
    for path in paths:
        name = path.relative_to(folder).as_posix()
        if path.parent == folder:
            rows.append(problem("note", file=name, code="log_beside_batches", facts=dict(name=name)))
        if path.suffix.lower() in _NO_LOGS:
            rows.append(problem("note", file=name, code="log_not_a_log", facts=dict(name=name)))
            continue
        wishes = _wishes(name, others=tuple(orders.get(_kind(name), [])), **base)
        found, account = [], None
        with guarded(name, "", rows, "file_broken"):
            try:
                found, account = read_parts(path, wishes, name=name)
            except HatchkitError as error:
                rows.append(problem("lost", file=name, code="log_lost", facts=dict(why=error.reason())))
        if account is None:
            facts[name] = {}
            continue
        if "order" in account.facts:
            orders.setdefault(_kind(name), []).append(account.facts["order"])
        rows.extend(account.rows)
        asked.extend(account.questions)
        facts[name] = account.facts
        parts.extend(found)
    parts, found, questions = owners.name_all(parts)
    rows.extend(found)
    asked.extend(questions)
    readings, found = join_files(parts)
    rows.extend(found)
    readings = _with_offset(readings, settings)
    questions = _open(asked, answers or {})
    return Logs(readings, _problems.table(rows), questions, files_table(parts, facts, questions, owners.known_by))


def _open(asked: list, answers: dict) -> pd.DataFrame:
    """The questions that are not answered, each once; an answer that is none of the choices is none."""
    rows = {(row["file"], row["sheet"], row["heading"]): row for row in reversed(asked)}
    left = [
        dict(row, choices=[dict(taken=choice, adds_up=None, of=None) for choice in row["choices"]])
        for key, row in rows.items()
        if answers.get(key) not in row["choices"]
    ]
    return pd.DataFrame(sorted(reversed(left), key=lambda row: -row["rows_changed"]), columns=QUESTIONS)


def _kind(name: str) -> str:
    """Files of one logger: the same folder and the same name but for figures, copies and dates."""
    return re.sub(r"[\d\W_]+", "", f"{Path(name).parent} {owner.family(name)}".lower())


def log_files(folder: Path) -> list[Path]:
    """All files in the folder ``sensors`` (and folders in it), by name; none is passed over."""
    base = next(
        (entry for entry in sorted(folder.iterdir()) if entry.is_dir() and entry.name.lower() == "sensors"), None
    )
    if base is None:
        return []
    return sorted(
        path
        for path in base.rglob("*")
        if (not path.is_dir() or path.suffix.lower() in (".csv", ".txt", ".log"))
        and not any(part.startswith((".", "~", "__MACOSX")) for part in path.relative_to(base).parts)
        and path.name.lower() not in ("thumbs.db", "desktop.ini")
    )


def is_told_log(path: Path, settings) -> bool:
    """Whether a text at the top of the folder is plainly a log, or season.toml says that it is one."""
    said = [entry for entry in settings.get("incubators", {}).values() if isinstance(entry, dict)]
    if any(owner.matches_glob(path.name, pattern) for entry in said for pattern in owner.names(entry, "files")):
        return True
    return is_log(path)


def _wishes(name, *, settings, owners, timezone, spans, answers, others) -> Wishes:
    sensors = settings.get("sensors", {})
    incubator = settings.get("incubators", {}).get(owners.of_file(name)[0] or "", {})
    said = {**sensors, **incubator}
    pressure = 101.325
    if incubator.get("altitude_m"):
        from hatchkit.climate import air  # formulas only; see humidity

        pressure = float(air.standard_pressure(incubator["altitude_m"]))
    mine = {
        (file, heading): choice
        for (file, _, heading), choice in answers.items()
        if file == name or file.startswith(f"{name}/")
    }
    return Wishes(
        said.get("timezone", timezone),
        said.get("temp_unit"),
        said.get("day_first"),
        pressure_kpa=pressure,
        still_air=said.get("air") == "still",
        spans=spans,
        shown_in=timezone,
        answers=mine,
        others=others,
    )


def _with_offset(readings, settings) -> pd.DataFrame:
    """probe_offset_c of season.toml added to temp_c; temp_logged_c keeps what the probe showed."""
    for incubator, said in settings.get("incubators", {}).items():
        offset = said.get("probe_offset_c") if isinstance(said, dict) else None
        if not offset:
            continue
        mine = readings["incubator"] == str(incubator)
        offsets = offset if isinstance(offset, dict) else {None: offset}
        for probe, degrees in offsets.items():
            same = [name for name in readings["probe"].unique() if owner.same_name(name, probe or "")]
            rows = mine if probe is None else mine & readings["probe"].isin(same)
            readings.loc[rows, "temp_c"] += float(degrees)
    return readings
