"""Which incubator is a log of? season.toml first, then names of files and probes, then dates; how sure, and asked."""

from __future__ import annotations

import fnmatch
import re
from pathlib import Path

import numpy as np
import pandas as pd

from hatchkit.problems import problem
from hatchkit.records.logs.names import plain, role_of

_ELSEWHERE = {
    "room",
    "store",
    "storage",
    "cellar",
    "fridge",
    "brooder",
    "outside",
    "outdoor",
    "keller",
    "raum",
    "lager",
}
NONE = "none_of_these"
#: Heading of the question on the machine of a whole file; that on one probe of it has the probe's name.
WHOLE = "?log_machine"
_MOST_ASKED = 6
_COPY = re.compile(
    r"\s*(?:\(\d{1,3}\)|\[\d{1,3}\])$|[\s_-]+(?:copy|kopie|kopia|kopi|copie|copia|cópia|másolat|kopija)"
    r"(?:[\s_-]*\(?\d{1,3}\)?)?$|^(?:copy of|kopie von|copie de|copia di|copia de|kopia|kopi av|"
    r"kopi af)\s+",
    re.IGNORECASE,
)
_EXPORT = re.compile(
    r"[\s_-]*(?:export(?:ed)?|download|daten|data)?[\s_-]*(?:(?:19|"
    r"20)\d\d[-_.]?[01]\d(?:[-_.]?[0-3]\d)?)"
    r"(?:[T\s_-]?[0-2]\d[-_:]?[0-5]\d(?:[-_:]?[0-5]\d)?)?$|[\s_-]+(?:export(?:ed)?|download)$",
    re.IGNORECASE,
)


class Owners:
    """The incubators of a season and how their logs are known.

    Parameters
    ----------
    settings : dict
        season.toml.
    batches : DataFrame
        incubator, hatcher, set_at and taken_off_at are used.
    answers : dict, optional
        (file, sheet, heading) -> choice: heading is the probe, or `WHOLE` for the whole file.
    """

    def __init__(self, settings, batches, answers=None):
        said = settings.get("incubators", {})
        self.said = {str(name): entry for name, entry in said.items() if isinstance(entry, dict)}
        named = [
            str(name).strip()
            for column in ("incubator", "hatcher")
            if column in batches
            for name in batches[column].dropna().unique()
            if str(name).strip()
        ]
        self.names = list(dict.fromkeys([*self.said, *named]))
        self.batches, self.answers = batches, answers or {}
        #: (file, incubator) -> how it is known: "answer", "season.toml", "file name" and "probe name" are sure; "only
        #: one" and "dates" are asked; "" where no machine of the season was found.
        self.known_by: dict = {}

    def of_file(self, file: str) -> tuple[str | None, str]:
        """Incubator of a file as a whole and how it is known ("answer", "season.toml", "file name", "")."""
        answer = self._answered(file, WHOLE)
        if answer is not None:
            return answer
        claims = [
            name
            for name, entry in self.said.items()
            if not names(entry, "probes") and any(matches_glob(file, pattern) for pattern in names(entry, "files"))
        ]
        if claims:
            return claims[0], "season.toml"
        found = self._best(family(file)) or self._best(" ".join(Path(file).parts[:-1]))
        return (found, "file name") if found else (None, "")

    def of_probe(self, file: str, probe: str) -> tuple[str | None, str]:
        """Incubator of one probe of a file and how it is known."""
        answer = self._answered(file, probe)
        if answer is not None:
            return answer
        for name, entry in self.said.items():
            files = names(entry, "files")
            if any(same_name(probe, wanted) for wanted in names(entry, "probes")) and (
                not files or any(matches_glob(file, pattern) for pattern in files)
            ):
                return name, "season.toml"
        whole, how = self.of_file(file)
        if how in ("season.toml", "answer"):
            return whole, how
        found = self._best(probe)
        return (found, "probe name") if found else (whole, how)

    def _answered(self, file: str, probe: str):
        choice = self.answers.get((file, "", probe))
        return (choice, "answer") if choice in self.names else (None, "answer") if choice == NONE else None

    def _best(self, text: str) -> str | None:
        """The incubator whose name stands in `text`; the longest, and none if two fit equally."""
        tokens = _tokens(text)
        fits = [(len(_tokens(name)), name) for name in self.names if _holds(tokens, _tokens(name))]
        fits.sort(key=lambda fit: -fit[0])
        if not fits or (len(fits) > 1 and fits[0][0] == fits[1][0]):
            return None
        return fits[0][1]

    def name_all(self, parts) -> tuple[list, list, list]:
        """Fill the column `incubator` of each file's readings.

        Returns
        -------
        parts : list of DataFrame
        problems : list of dict
        questions : list of dict
        """
        rows, named, orphans = [], [], []
        for part in (part for part in parts if len(part)):
            file = part["file"].iloc[0]
            owner = {probe: self.of_probe(file, probe) for probe in part["probe"].unique()}
            for probe, (name, how) in owner.items():
                if how in ("file name", "probe name") and name is not None:
                    rows.append(
                        problem(
                            "note",
                            file=file,
                            column=probe,
                            code="log_machine_named",
                            facts=dict(probe=probe, file=file, machine=name, how=how.replace(" ", "_"), key=_key(name)),
                        )
                    )
            lost = [probe for probe, (name, _) in owner.items() if name is None]
            if any(owner[probe][1] != "answer" for probe in lost):
                orphans.append((len(named), file, lost))
            self.known_by |= {(file, name or Path(file).stem): how for name, how in owner.values()}
            belongs = {probe: name or Path(file).stem for probe, (name, _) in owner.items()}
            one = len(set(belongs.values())) == 1
            machine = next(iter(belongs.values())) if one else part["probe"].map(belongs)
            named.append(part.assign(incubator=pd.Series(machine, part.index, dtype="str")))
        found, asked = self._settle_orphans(named, orphans)
        return named, rows + found, asked

    def _settle_orphans(self, named, orphans) -> tuple[list, list]:
        """Logs that no name claims: as the only one, or by dates, and asked; the rest stay apart."""
        rows, asked = [], []
        served = {name for part in named for name in part["incubator"].unique()} & set(self.names)
        for place, file, probes in orphans:
            part, (name, how) = named[place], self._guess(file, named[place], served, len(orphans))
            asked += self._questions(file, part, probes, name)
            if name is not None:
                self.known_by[file, name] = how
                mine = part["probe"].isin(probes)
                named[place] = part.assign(incubator=part["incubator"].mask(mine, name))
                rows.append(
                    problem(
                        "note" if how == "only one" else "doubtful",
                        file=file,
                        code="log_machine_guessed",
                        facts=dict(file=file, machine=name, how=how.replace(" ", "_"), key=_key(name)),
                    )
                )
                continue
            key = _key(self.names[0] if self.names else "A")
            line = f'[incubators.{key}] files = ["{file}"]' + (f' probes = ["{probes[0]}"]' if len(probes) > 1 else "")
            facts = dict(file=file, probes=probes, taken=Path(file).stem, line=line)
            rows.append(problem("doubtful", file=file, code="log_machine_unknown", facts=facts))
        return rows, asked

    def _questions(self, file, part, probes, name) -> list:
        """Which machine the whole file is of; or each of its probes, where others of them are known."""
        if not self.names:
            return []
        counts = part["probe"].value_counts()
        whole = len(probes) == len(counts)
        about = [(WHOLE, len(part))] if whole else [(probe, int(counts[probe])) for probe in probes[:_MOST_ASKED]]
        return [
            dict(
                code="log_machine",
                file=file,
                sheet="",
                heading=heading,
                taken=name or NONE,
                choices=[*self.names, NONE],
                rows_changed=rows,
                facts={},
            )
            for heading, rows in about
        ]

    def _guess(self, file, part, served, count) -> tuple[str | None, str]:
        if _ELSEWHERE & set(_tokens(Path(file).stem)):
            return None, ""
        if len(self.names) == 1 and count == 1 and not served:
            return self.names[0], "only one"
        found = self._by_dates(part, served)
        return found, "dates" if found else ""

    def _by_dates(self, part, served) -> str | None:
        """The one machine without a log in whose batches' time most of the warm readings fall, none in the others'."""
        warm = part.loc[part["temp_c"].between(35.5, 39.5), "time"]
        if len(warm) < 24:
            return None
        machines = self.batches["incubator"].astype(str).str.strip()
        share = {}
        for name in self.names:
            inside = [warm.between(*span) for span in spans_of(self.batches[machines == name], 30)]
            share[name] = float(np.logical_or.reduce(inside).mean()) if inside else 0.0
        best = max(share, key=share.get, default=None)
        if best is None or best in served or share[best] < 0.5:
            return None
        return best if all(value < 0.1 for name, value in share.items() if name != best) else None


def spans_of(batches, days: int) -> list[tuple]:
    """Time (UTC) from setting to take-off of each batch; so many days where the end was not kept."""
    ends = batches["taken_off_at"].fillna(batches["set_at"] + pd.Timedelta(days=days))
    return [(start, end) for start, end in zip(batches["set_at"], ends, strict=True) if not pd.isna(start)]


def family(file: str) -> str:
    """The name of a file without its ending, marks of a copy and the date of the export: "log (1).csv" is "log"."""
    stem = Path(file).stem
    for _ in range(4):
        shorter = _EXPORT.sub("", _COPY.sub("", stem)).strip(" _-")
        if not shorter or shorter == stem:
            break
        stem = shorter
    return stem


def same_name(one, two) -> bool:
    """Whether two probe names mean the same: case, blanks, marks and the unit do not count."""
    one, two = plain(one), plain(two)
    return one == two or _bare(one) == _bare(two) != ""


def matches_glob(name: str, pattern: str) -> bool:
    """Whether a file (as seen from the season folder), or its original, is meant by a pattern of season.toml."""
    pattern = str(pattern).lower().replace("\\", "/").removeprefix("./")
    path = Path(name)
    whole = {name.lower(), path.name.lower()}
    for one in (*path.parents, path):
        # A log in an archive or on a sheet of a workbook goes with the file.
        if one.suffix.lower() in (".zip", ".xlsx", ".xls", ".ods", ".xlsm"):
            whole |= {one.as_posix().lower(), one.name.lower()}
    base = path.with_name(family(name) + path.suffix)
    whole |= {base.as_posix().lower(), base.name.lower()}
    return any(fnmatch.fnmatchcase(one, pattern) for one in whole)


def _bare(text: str) -> str:
    return " ".join(token for token in text.split() if role_of(token) not in ("temp", "rh"))


def names(entry: dict, key: str) -> list:
    """A list of names in season.toml, which may also be written as a single name."""
    value = entry.get(key)
    return [] if value is None else [value] if isinstance(value, str) else list(value)


def _tokens(text: str) -> list[str]:
    tokens = plain(text).split()
    bare = [token for token in tokens if role_of(token) != "machine"]
    return bare or tokens


def _holds(tokens: list, wanted: list) -> bool:
    if not wanted:
        return False
    # "bigone" is "Big One" without its blank; a single letter must stand alone.
    return any(tokens[i : i + len(wanted)] == wanted for i in range(len(tokens))) or (
        len("".join(wanted)) > 2 and "".join(wanted) in tokens
    )


def _key(name: str) -> str:
    return name if name.replace("_", "").replace("-", "").isalnum() and name.isascii() else f'"{name}"'
