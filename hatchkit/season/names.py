"""Who is who in several seasons: keepers, keys of batches, machines that changed their names, probes."""

import re
from dataclasses import replace

import pandas as pd

from hatchkit.problems import problem
from hatchkit.records.season_years import year_in


def keepers(parts, found):
    """Whose each season is: as season.toml says, else by folders of keepers."""
    told = [str(part.season.settings.get("keeper") or "") for part in parts]
    groups = [_group(part.said) for part in parts]
    if any(told) or len(set(groups)) < 2:
        return [replace(part, keeper=own) for part, own in zip(parts, told, strict=True)]
    deep = any(part.said.count("/") for part in parts)
    if not deep and not _overlap(parts, groups):
        return parts
    found.append(problem("note", code="keepers_by_folder", facts=dict(keepers=sorted(set(groups)))))
    return [replace(part, keeper=group) for part, group in zip(parts, groups, strict=True)]


def _group(said: str) -> str:
    """The name of a season's folder or of the one above that tells no year; "" if there is none."""
    return next((name for name in said.split("/") if year_in(name) is None), "")


def _overlap(parts, groups) -> bool:
    """Whether two folders without a year in their names hold batches of one year."""
    seen: dict = {}
    for part, group in zip(parts, groups, strict=True):
        for year in part.season.batches["set_at"].dt.year.dropna().unique():
            seen.setdefault(year, set()).add(group)
    return any(len(names) > 1 for names in seen.values())


def batch_keys(parts) -> list[dict]:
    """For each part: its batch -> a key that no other part has; by year, keeper or folder only where needed."""
    rows = [
        (at, str(row["batch"]), row["season"], part.keeper or row["keeper"], part.said)
        for at, part in enumerate(parts)
        for row in part.season.batches.to_dict("records")
    ]
    names = [batch for _, batch, *_ in rows]
    for place in (2, 3, 4):
        told: dict = {}
        for name, row in zip(names, rows, strict=True):
            told.setdefault(name, []).append("" if pd.isna(row[place]) else str(row[place]))
        # What all of the same name share tells none of them apart.
        apart = {name for name, words in told.items() if len(set(words)) > 1}
        names = [
            f"{name}, {row[place]}" if name in apart and not pd.isna(row[place]) and row[place] != "" else name
            for name, row in zip(names, rows, strict=True)
        ]
    used: set = set()
    out: list[dict] = [{} for _ in parts]
    for (at, batch, *_), name in zip(rows, names, strict=True):
        key, number = name, 2
        while key in used:
            key, number = f"{name}, {number}", number + 1
        used.add(key)
        out[at][batch] = key
    return out


def machine_names(parts, answers, found):
    """For each part: its machine -> its name among all; and what is asked of machines that changed their names."""
    club = len({part.keeper for part in parts}) > 1
    names = [{machine: machine for machine in _machines(part)} for part in parts]
    asked = []
    for keeper in dict.fromkeys(part.keeper for part in parts):
        own = sorted((at for at, part in enumerate(parts) if part.keeper == keeper), key=lambda at: _year(parts[at]))
        _follow(parts, own, names, answers, asked)
    if club:
        names = [
            {old: f"{new}, {part.keeper}" if part.keeper else new for old, new in own.items()}
            for part, own in zip(parts, names, strict=True)
        ]
    columns = ["code", "file", "sheet", "heading", "taken", "choices", "rows_changed", "facts"]
    return names, pd.DataFrame(asked, columns=columns)


def _follow(parts, own, names, answers, asked) -> None:
    """One keeper's machines from year to year: one gone and one new may be one machine with a new name."""
    before: dict = {}
    for at in own:
        there = _machines(parts[at])
        plainly = {_plain(name): name for name in before}
        for machine in there:  # "Big B" and "big b" are one
            if machine not in before and _plain(machine) in plainly:
                names[at][machine] = before[plainly[_plain(machine)]]
        new = [machine for machine in there if machine not in before and _plain(machine) not in plainly]
        gone = [machine for machine in before if machine not in there and _plain(machine) not in map(_plain, there)]
        if before and len(new) == 1 and len(gone) == 1:
            key = (parts[at].said, "", new[0])
            answer = answers.get(key)
            if answer == gone[0]:
                names[at][new[0]] = before[gone[0]]
            elif answer is None:
                rows = int((parts[at].season.batches["incubator"] == new[0]).sum())
                asked.append(
                    [
                        "machine_renamed",
                        parts[at].said,
                        "",
                        new[0],
                        "another_machine",
                        [dict(taken=choice, adds_up=None, of=None) for choice in (gone[0], "another_machine")],
                        rows,
                        {},
                    ]
                )
        before = {**{name: known for name, known in before.items() if name not in gone}, **names[at]}


def _plain(name: str) -> str:
    return re.sub(r"[^a-z0-9]+", "", str(name).lower())


def _machines(part) -> list[str]:
    batches, readings = part.season.batches, part.season.readings
    columns = [batches["incubator"], batches["hatcher"], readings["incubator"]]
    return sorted({str(name) for column in columns for name in column.dropna().unique() if str(name)})


def _year(part) -> int:
    years = part.season.batches["season"].dropna()
    return int(years.min()) if len(years) else 0


def note_probes(parts, machines, found) -> None:
    """A machine with another probe, offset or kind of air than the year before is told of."""
    last: dict = {}
    for part, names in sorted(zip(parts, machines, strict=True), key=lambda pair: _year(pair[0])):
        readings = part.season.readings
        for old, new in names.items():
            own = readings.loc[readings["incubator"] == old, "probe"]
            probes = sorted(str(probe) for probe in own.unique() if str(probe))
            setting = part.season.settings.get("incubators", {}).get(old, {})
            now = dict(probes=probes, offset=str(setting.get("probe_offset_c", "")), air=str(setting.get("air", "")))
            was = last.get(new)
            if was and len(own) and was["said"] != part.said:
                for code, name in (("probe_replaced", "probes"), ("offset_changed", "offset"), ("air_changed", "air")):
                    if was[name] and now[name] and was[name] != now[name]:
                        found.append(
                            problem(
                                "note",
                                code=code,
                                facts=dict(
                                    machine=new,
                                    before=was[name],
                                    now=now[name],
                                    earlier=was["said"] or "the first season",
                                    later=part.said or "the last",
                                ),
                                file=part.said,
                            )
                        )
            if len(own):
                last[new] = dict(now, said=part.said)
