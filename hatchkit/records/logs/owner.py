"""Which incubator a log belongs to: season.toml first, then the names of probes and files."""

from __future__ import annotations

import fnmatch
from pathlib import Path

from hatchkit.problems import problem
from hatchkit.records.logs.names import plain, role_of

_ELSEWHERE = {"room", "store", "storage", "cellar", "fridge", "brooder", "outside", "outdoor", "keller", "raum",
              "lager"}


class Owners:
    """The incubators of a season and how their logs are known.

    Parameters
    ----------
    settings : dict
        season.toml.
    batches : DataFrame
    """

    def __init__(self, settings, batches):
        said = settings.get("incubators", {})
        self.said = {str(name): entry for name, entry in said.items() if isinstance(entry, dict)}
        named = [] if batches is None or "incubator" not in batches else [
            str(name).strip() for name in batches["incubator"].dropna().unique() if str(name).strip()]
        self.names = list(dict.fromkeys([*self.said, *named]))

    def of_file(self, file: str) -> tuple[str | None, str]:
        """Incubator of a file as a whole and how it is known ("season.toml", "file name", "")."""
        claims = [name for name, entry in self.said.items() if not names(entry, "probes")
                  and any(matches_glob(file, pattern) for pattern in names(entry, "files"))]
        if claims:
            return claims[0], "season.toml"
        found = self._best(Path(file).stem)
        return (found, "file name") if found else (None, "")

    def of_probe(self, file: str, probe: str) -> tuple[str | None, str]:
        """Incubator of one probe of a file and how it is known."""
        for name, entry in self.said.items():
            files = names(entry, "files")
            if any(same_name(probe, wanted) for wanted in names(entry, "probes")) and (
                    not files or any(matches_glob(file, pattern) for pattern in files)):
                return name, "season.toml"
        whole, how = self.of_file(file)
        if how == "season.toml":
            return whole, how
        found = self._best(probe)
        return (found, "probe name") if found else (whole, how)

    def _best(self, text: str) -> str | None:
        """The incubator whose name stands in `text`; the longest, and none if two fit equally."""
        tokens = _tokens(text)
        fits = [(len(_tokens(name)), name) for name in self.names if _holds(tokens, _tokens(name))]
        fits.sort(key=lambda fit: -fit[0])
        if not fits or (len(fits) > 1 and fits[0][0] == fits[1][0]):
            return None
        return fits[0][1]

    def name_all(self, parts) -> tuple[list, list]:
        """Fill the column `incubator` of each file's readings; problem rows say what was assumed."""
        rows, named, orphans = [], [], []
        for part in parts:
            if not len(part):
                continue
            file = part["file"].iloc[0]
            owner = {probe: self.of_probe(file, probe) for probe in part["probe"].unique()}
            for probe, (name, how) in owner.items():
                if how in ("file name", "probe name"):
                    rows.append(problem("note", file=file, column=probe, found=f"probe {probe} in {file}",
                                        done=f"taken for incubator {name} by its {how}",
                                        mend=f"if not: [incubators.{_key(name)}] files = [\"...\"]"))
            lost = [probe for probe, (name, _) in owner.items() if name is None]
            if lost:
                orphans.append((len(named), file, lost))
            belongs = {probe: name or Path(file).stem for probe, (name, _) in owner.items()}
            named.append(part.assign(incubator=part["probe"].map(belongs).astype("str")))
        rows.extend(self._settle_orphans(named, orphans))
        return named, rows

    def _settle_orphans(self, named, orphans) -> list:
        """Logs that no name claims: the only log of the only incubator is its own, others keep their file name."""
        served = {name for part in named for name in part["incubator"].unique()} & set(self.names)
        if len(self.names) == 1 and len(orphans) == 1 and not served:
            place, file, _ = orphans[0]
            if not _ELSEWHERE & set(_tokens(Path(file).stem)):
                named[place] = named[place].assign(incubator=self.names[0])
                return [problem("note", file=file, found=f"{file} names no incubator",
                                done=f"taken for {self.names[0]}, the only one of the season",
                                mend=f"[incubators.{_key(self.names[0])}] files = [\"{file}\"]")]
        rows = []
        for _, file, probes in orphans:
            name = self.names[0] if self.names else "A"
            line = f"[incubators.{_key(name)}] files = [\"{file}\"]"
            if len(probes) > 1:
                line += f" probes = [\"{probes[0]}\"]"
            rows.append(problem("doubtful", file=file,
                                found=f"{file} (probe {', '.join(probes)}) names no incubator of the season",
                                done=f"kept as incubator \"{Path(file).stem}\"",
                                mend=f"write in season.toml, with the right name: {line}"))
        return rows


def same_name(one, two) -> bool:
    """Whether two probe names mean the same: case, blanks, marks and the unit do not count."""
    one, two = plain(one), plain(two)
    return one == two or _bare(one) == _bare(two) != ""


def matches_glob(name: str, pattern: str) -> bool:
    """Whether a file (as seen from the season folder) is meant by a pattern of season.toml."""
    name, pattern = name.lower(), str(pattern).lower().replace("\\", "/").removeprefix("./")
    return fnmatch.fnmatchcase(name, pattern) or fnmatch.fnmatchcase(name.rpartition("/")[2], pattern)


def _bare(text: str) -> str:
    tokens = [token for token in text.split() if role_of(token) not in ("temp", "rh")]
    return " ".join(tokens)


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
    return any(tokens[i: i + len(wanted)] == wanted for i in range(len(tokens))) or (
        len("".join(wanted)) > 2 and "".join(wanted) in tokens)


def _key(name: str) -> str:
    return name if name.replace("_", "").replace("-", "").isalnum() and name.isascii() else f"\"{name}\""
