"""How many logger exports are read exactly? ``python tests/records/logs/score_exports.py FOLDER [--show]``.

The folder holds exports and a ``truth.json``: file -> expect ("read", "ask" or "refuse") and the channels that the
file holds, each with quantity, n, first_time, last_time, first and last value, min, max and mean. Times without a zone
are UTC, or what the wall clock showed where the file's truth has a `utc_offset`. A file is RIGHT where every channel is
read with the same n and times and, to the precision in which the truth is written, the same values, and no other
channel is read; or where it should be refused or asked about, and is. ASKED: a question is put, and what is read
meanwhile differs. REFUSED: said to be no log, with the reason. WRONG: a number differs without a question, or a file is
read that should be refused. CRASH: a traceback.
"""

from __future__ import annotations

import json
import sys
import traceback
from pathlib import Path

import numpy as np
import pandas as pd

from hatchkit.problems import HatchkitError
from hatchkit.records.logs.read import Wishes, read_accounted


def score(path: Path, truth: dict) -> tuple[str, str]:
    """One of RIGHT, ASKED, REFUSED, WRONG, CRASH for a file, and why."""
    expect = truth.get("expect", "read")
    try:
        readings, account = read_accounted(path, Wishes(timezone=truth.get("timezone")))
    except HatchkitError as error:
        return ("RIGHT" if expect in ("refuse", "ask") else "REFUSED"), str(error)
    except Exception:
        return "CRASH", traceback.format_exc(limit=-3)
    codes = sorted({question["code"] for question in account.questions})
    if expect == "ask":
        return ("RIGHT" if codes else "WRONG"), ", ".join(codes) or "not asked"
    if expect == "refuse":
        return "WRONG", f"read: {len(readings)} readings"
    differs = differences(readings, truth)
    if not differs:
        return "RIGHT", ", ".join(codes)
    return ("ASKED" if codes else "WRONG"), "; ".join(differs) + (f" [{', '.join(codes)}]" if codes else "")


def channels_of(truth: dict) -> list:
    """The channels of a file's truth as a list of dicts with quantity, n, first, last, min, max, mean."""
    found = truth.get("channels", truth)
    if isinstance(found, dict):
        found = [dict(channel, name=name) for name, channel in found.items() if isinstance(channel, dict)]
    return found


def differences(readings: pd.DataFrame, truth: dict) -> list:
    """What differs from the truth, in words; empty where nothing does."""
    wanted, out, offset = channels_of(truth), [], truth.get("utc_offset") or ""
    had = {"temp": series(readings, "temp_c"), "rh": series(readings, "rh_pct")}
    for quantity, found in had.items():
        mine = [channel for channel in wanted if _quantity(channel) == quantity]
        left = dict(found)
        for channel in mine:
            fits = [name for name, table in left.items() if not _against(table, channel, offset)]
            if fits:
                del left[fits[0]]
                continue
            near = min(left, key=lambda name: len(_against(left[name], channel, offset)), default=None)
            out.append(
                f"{channel.get('name', quantity)}: "
                + (", ".join(_against(left[near], channel, offset)) if near is not None else "not read")
            )
        if left and len(left) > 0 and len(found) > len(mine):
            out.append(f"{quantity} too many: {', '.join(left)}")
    return out


def series(readings, column) -> dict:
    """Values of each probe that has any, by time."""
    tables = {name: table.loc[table[column].notna(), ["time", column]] for name, table in readings.groupby("probe")}
    return {name: table for name, table in tables.items() if len(table)}


def _quantity(channel: dict) -> str:
    said = str(channel.get("quantity", channel.get("name", ""))).lower()
    return "rh" if "rh" in said or "hum" in said else "temp"


def _against(table, channel, offset) -> list:
    table = table.sort_values("time", kind="stable")
    values, out = table.iloc[:, 1].to_numpy(), []
    if "n" in channel and len(values) != channel["n"]:
        out.append(f"n {len(values)} not {channel['n']}")
    for key, time in (("first_time", table["time"].iloc[0]), ("last_time", table["time"].iloc[-1])):
        if channel.get(key):
            said = pd.Timestamp(channel[key])
            said = pd.Timestamp(f"{channel[key]}{offset}") if said.tzinfo is None else said
            said = said.tz_localize("UTC") if said.tzinfo is None else said.tz_convert("UTC")
            if abs((said - time).total_seconds()) >= 0.01:
                out.append(f"{key} {time} not {said}")
    for key, value in (
        ("first_value_c_or_pct", values[0]),
        ("last_value_c_or_pct", values[-1]),
        ("min", values.min()),
        ("max", values.max()),
        ("mean", values.mean()),
    ):
        if channel.get(key) is not None:
            digits = len(repr(channel[key]).partition(".")[2])
            if not np.isclose(value, channel[key], atol=0.51 * 10.0**-digits, rtol=0):
                out.append(f"{key} {value:.4f} not {channel[key]}")
    return out


def main(folder: Path, show: bool) -> dict:
    """Score every file of a folder and print a line for each that is not right (all with --show)."""
    truth = json.loads((folder / "truth.json").read_text(encoding="utf-8"))
    truth = truth.get("files", truth)
    if isinstance(truth, list):
        truth = {one["file"]: one for one in truth}
    counts: dict = {}
    for name, said in sorted(truth.items()):
        kind, why = score(folder / name, said)
        counts[kind] = counts.get(kind, 0) + 1
        if show or kind != "RIGHT":
            print(f"{kind:8} {name}: {why}")
    print(", ".join(f"{count} {kind}" for kind, count in sorted(counts.items())), f"of {sum(counts.values())}")
    return counts


if __name__ == "__main__":
    main(Path(sys.argv[1]), "--show" in sys.argv)
