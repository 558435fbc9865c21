"""From the columns of a sensor file to readings: one probe after another, in °C and % RH and UTC."""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit.problems import HatchkitError
from hatchkit.records.logs.humidity import humidity
from hatchkit.records.logs.plan import AS_IT_STANDS, CHOICES, UNIT_CHOICES
from hatchkit.records.logs.probe import probe_readings
from hatchkit.records.logs.values import (
    as_numbers,
    missing_codes,
    row_owners,
    row_quantities,
    row_units,
    to_celsius,
    unit_from_range,
)
from hatchkit.records.logs.zone import utc_of

#: An empty stretch of so many lines at either end of a column: the probe was not plugged in.
_NOT_PLUGGED_IN = 10
#: A mark behind more of the values than this says nothing of any one of them.
_MOST_MARKED = 0.9


def channel_readings(raw, head, plan, stamps, keep, wishes, account) -> pd.DataFrame:
    """Readings of all probes of one file, sorted by probe and time, with doubts marked.

    Parameters
    ----------
    raw : DataFrame
        Lines of the file from the first reading on, columns numbered.
    keep : ndarray of bool
        Lines that have a time.
    """
    utc = utc_of(stamps, head, plan, wishes, account)
    lines = range(head.first + 1, head.first + 1 + len(raw))
    if not keep.all():
        rows = np.flatnonzero(keep)
        raw, utc, lines = raw.iloc[rows], utc[rows], head.first + rows + 1
    quantities = row_quantities(raw, plan)
    parts = [_values(raw, plan, channel, quantities, wishes, account, lines) for channel in plan.channels]
    account.facts["channels"] = [
        fact
        for channel, part in zip(plan.channels, parts, strict=True)
        for fact in _known_by(channel, part, plan, wishes)
    ]
    filled = np.logical_or.reduce([part["has"] for part in parts])
    event = ~filled
    event &= np.logical_or.reduce([part["text"] for part in parts] + [raw[n].notna().to_numpy() for n in plan.text])
    other = np.zeros(len(raw), dtype=bool) if quantities is None else ~filled & ~event & (quantities != "temp")
    account.count("events", "note", event.sum(), first=_first(lines, event))
    if not filled.all() or len(parts) > 1:
        _keep_missing(parts, filled, event | other)
    account.count("other_quantities", "note", other.sum(), first=_first(lines, other))
    owners = row_owners(raw, plan, quantities)
    probes = [
        (name, part, mine)
        for channel, part in zip(plan.channels, parts, strict=True)
        for name, mine in _owners(owners, part["has"], channel, plan)
    ]
    if not probes or event.all():
        raise HatchkitError("refuse_no_number", {})
    _say_empty(account, plan, parts)
    probes = _chosen(probes, wishes, account)
    frames, used = [], np.zeros(len(raw), dtype=bool)
    for name, part, mine in sorted(probes, key=lambda probe: probe[0]):
        frame, rows = probe_readings(utc, part, mine, name, lines, account)
        frames.append(frame)
        used[slice(None) if rows is None else rows] = True
    _count_used(account, used, probes, event | other, lines)
    return pd.concat(frames, ignore_index=True) if len(frames) > 1 else frames[0]


def _known_by(channel, part, plan, wishes) -> list:
    """(probe, quantity, unit, how it is known) of a channel, for the overview."""
    out = []
    if part["wanted"] == "temp":
        how = (
            "season_toml"
            if wishes.temp_unit
            else "unit_column"
            if plan.unit is not None
            else "answer"
            if wishes.answers.get(channel.name) in UNIT_CHOICES
            else "values"
            if plan.by_behaviour
            else "heading"
            if channel.units.get("temp")
            else "above"
            if plan.unit_above
            else "values"
        )
        unit = part["unit"] if isinstance(part["unit"], str) else "C_F"
        out.append((channel.name, "temp", unit, how))
    other = next((name for name in ("rh", "wet_bulb", "dew_point") if name in part["quantities"]), None)
    if other is not None:
        out.append((channel.name, other, "", "values" if plan.by_behaviour else "heading"))
    return out


def _keep_missing(parts, filled, event) -> None:
    """Let lines without a value count as readings (without value) of the probes that should have one.

    Where the columns are mostly filled together, a hole in one is a missing reading. Where they are
    filled in turn, the blanks belong to the other loggers. A line with a time and nothing else is a
    missing reading of the first probe.
    """
    together = sum(part["has"].astype(np.int8) for part in parts) > 1
    for part in parts if together.mean() >= 0.5 else ():
        at = np.flatnonzero(part["has"])
        first, last = (at[0], at[-1]) if len(at) else (0, -1)
        first = 0 if first < _NOT_PLUGGED_IN else first
        last = len(filled) - 1 if last >= len(filled) - _NOT_PLUGGED_IN else last
        part["has"] = part["has"].copy()
        part["has"][first : last + 1] |= ~event[first : last + 1]
    parts[0]["has"] = parts[0]["has"] | (~filled & ~event)


def _say_empty(account, plan, parts) -> None:
    for channel, part in zip(plan.channels, parts, strict=True):
        empty = int((~part["has"]).sum())
        if empty and len(plan.channels) > 1:
            facts = dict(count=empty, of=len(part["has"]), name=channel.name)
            account.say("note", "log_empty_lines", column=channel.name, **facts)


def _chosen(probes, wishes, account) -> list:
    """The probe the person asked for, or all."""
    if wishes.channel is None:
        return probes
    wanted = [probe for probe in probes if probe[0].lower() == str(wishes.channel).lower()]
    if not wanted:
        there = list(dict.fromkeys(probe[0] for probe in probes))
        raise HatchkitError("refuse_channel", dict(file=account.file, channel=str(wishes.channel), there=there))
    return wanted


def _count_used(account, used, probes, event, lines) -> None:
    """Account for the lines with readings, and for those whose readings were all merged into others."""
    account.lines["readings"] = int(used.sum())
    wanted = np.logical_or.reduce([mine for _, _, mine in probes])
    merged = wanted & ~used
    account.count("merged", "note", merged.sum(), first=_first(lines, merged))
    other = ~wanted & ~event
    account.count("other_channels", "note", other.sum(), first=_first(lines, other))


def _first(lines, mask):
    return int(lines[np.argmax(mask)]) if mask.any() else None


def _owners(owners, take, channel, plan):
    """Name of each probe and the lines that are its own."""
    if owners is None:
        return [(channel.name, take)]
    codes, names = pd.factorize(owners)
    tail = f" {channel.name}" if len(plan.channels) > 1 else ""
    found = [(f"{name}".strip() + tail, take & (codes == code)) for code, name in enumerate(names)]
    if (codes < 0).any():
        found.append((channel.name, take & (codes < 0)))
    return [(name, mine) for name, mine in found if mine.any()]


def _values(raw, plan, channel, quantities, wishes, account, lines) -> dict:
    """Temperature and humidity of one channel, line by line."""
    numbers, text, marked = {}, np.zeros(len(raw), dtype=bool), np.zeros(len(raw), dtype=bool)
    for quantity, n in channel.columns.items():
        numbers[quantity], odd, noted = as_numbers(raw[n])
        if channel.scales.get(quantity, 1.0) != 1.0:
            numbers[quantity] = np.round(numbers[quantity] * channel.scales[quantity], 6)
        text |= odd
        _say_odd_cells(account, odd, raw[n], lines, channel.name)
        if noted.any():
            row = int(np.argmax(noted))
            doubted = bool(noted.mean() <= _MOST_MARKED)
            account.say(
                "doubtful",
                "log_marked",
                row=int(lines[row]),
                count=int(noted.sum()),
                quantity="temp" if quantity == "temp" else "rh",
                name=channel.name,
                line=int(lines[row]),
                example=str(raw[n].iloc[row])[:40],
                doubted=doubted,
            )
            marked |= noted & doubted
    if quantities is not None:
        values = numbers["temp"]
        numbers = {
            quantity: np.where(quantities == quantity, values, np.nan)
            for quantity in ("temp", "rh", "wet_bulb", "dew_point")
            if (quantities == quantity).any()
        }
        numbers = numbers or {"temp": np.full(len(values), np.nan)}
    part = {
        "text": text,
        "marked": marked,
        "in_turn": quantities is not None,
        "wanted": "temp" if "temp" in numbers else "rh",
        "quantities": list(numbers),
    }
    for quantity in ("temp", "rh"):
        if quantity in numbers:
            numbers[quantity] = _in_range(numbers[quantity], quantity, channel, wishes, account)
    part["temp_c"], part["temp_logged_c"], part["unit"] = _temperature(raw, plan, channel, numbers, wishes, account)
    part["rh_pct"] = humidity(channel, numbers, part["temp_c"], wishes, account)
    _doubt_exchanged(channel, part, wishes, account)
    part["has"] = np.logical_or.reduce([~np.isnan(values) for values in numbers.values()])
    return part


def _doubt_exchanged(channel, part, wishes, account) -> None:
    """Ask where in part of the lines humidity and temperature seem to have changed places."""
    rh = part["rh_pct"][part["temp_c"] > 45]
    count = int(((rh > 36) & (rh < 39)).sum())
    if 10 <= count < 0.95 * len(part["temp_c"]) and channel.name not in wishes.answers:
        account.ask(channel.name, "temp_C", CHOICES, count, "log_column")
        account.say("doubtful", "log_exchanged", count=count, name=channel.name)


def _in_range(values, quantity, channel, wishes, account) -> np.ndarray:
    """Values without their decimal mark (3756 for 37.56), put right with a doubt and a question."""
    some = values[:: max(1, len(values) // 20_000)]
    some = some[np.isfinite(some)]
    middle = float(np.median(some)) if len(some) else 0.0
    kelvin = 250 <= middle <= 345 and quantity == "temp" and channel.units.get("temp") in ("K", "")
    if middle <= (150 if quantity == "temp" else 105) or kelvin:
        return values
    for factor in (10.0, 100.0, 1000.0):
        if (
            quantity == "rh"
            and 15 <= middle / factor <= 100
            or quantity == "temp"
            and (30 <= middle / factor <= 42 or 86 <= middle / factor <= 108)
        ):
            # The heading bears the factor, so that its answer is not taken for one to "which unit?".
            heading, divided = f"{channel.name} (÷ {factor:.0f})", f"divided_by_{factor:.0f}"
            if wishes.answers.get(heading) == AS_IT_STANDS:
                return values
            account.ask(heading, divided, [divided, AS_IT_STANDS], len(values), "log_scale")
            account.say("doubtful", "log_without_decimals", name=channel.name, middle=middle, factor=factor)
            return np.round(values / factor, 6)
    return values


def _say_odd_cells(account, odd, column, lines, name) -> None:
    rows = np.flatnonzero(odd)
    if len(rows):
        line = int(lines[rows[0]])
        facts = dict(count=len(rows), name=name, line=line, example=str(column.iloc[rows[0]])[:40])
        severity = "note" if len(rows) < len(odd) / 10 else "doubtful"
        account.say(severity, "log_odd_cells", row=line, column=name, **facts)


def _temperature(raw, plan, channel, numbers, wishes, account):
    count = len(raw)
    if "temp" not in numbers:
        nothing = np.full(count, np.nan)
        return nothing, nothing, ""
    values = numbers["temp"]
    unit = _unit(values, raw, plan, channel, wishes, account)
    codes = np.array([], dtype=int)
    if isinstance(unit, str):
        codes = np.union1d(missing_codes(values, "temp", unit), _same_fault(numbers))
    logged = celsius = to_celsius(values, unit)
    if len(codes):
        celsius = celsius.copy()
        celsius[codes] = np.nan
        facts = dict(count=len(codes), name=channel.name, values=np.unique(values[codes])[:5].tolist())
        account.say("doubtful", "log_missing_codes", **facts)
    return celsius, logged, unit


def _same_fault(numbers) -> np.ndarray:
    """Rows whose temperature and humidity are one number that no humidity can be: a sensor that did not answer."""
    temp, rh = numbers["temp"], numbers.get("rh")
    if rh is None:
        return np.array([], dtype=int)
    rows = np.flatnonzero(temp == rh)
    return rows[(rh[rows] <= 0) | (rh[rows] > 100)]


def _unit(values, raw, plan, channel, wishes, account):
    """Unit letter of the temperatures, or one letter a row where the file has a unit column."""
    if wishes.temp_unit:
        unit = str(wishes.temp_unit).strip(" °").upper()[:1]
        if unit not in ("C", "F", "K"):
            raise HatchkitError("refuse_temp_unit", dict(unit=str(wishes.temp_unit)))
        return unit
    if plan.unit is not None:
        letters = row_units(raw[plan.unit])
        known = set(letters) - {"", "%"}
        if known:
            return letters if len(known) > 1 else known.pop()
    answer = wishes.answers.get(channel.name)
    if answer in UNIT_CHOICES:
        return answer[-1]
    said = channel.units.get("temp", "") or plan.unit_above
    guess, sure = unit_from_range(values)
    if said and (said == guess or not sure):
        return said
    facts = dict(column=channel.name, name=channel.name, unit=guess)
    if said:
        account.say("doubtful", "log_unit_against", said=said, **facts)
    else:
        middle = round(float(np.nanmedian(values)), 1) if np.isfinite(values).any() else None
        severity, code = ("note", "log_unit_guessed") if sure else ("doubtful", "log_unit_open")
        account.say(severity, code, middle=middle, **facts)
    if said or not sure:
        account.ask(channel.name, f"temp_{guess}", UNIT_CHOICES, np.isfinite(values).sum(), "log_unit")
    return guess
