"""From the columns of a sensor file to readings: one probe after another, in °C and % RH and UTC."""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit.problems import HatchkitError
from hatchkit.records import clock_order, clock_zone, marks, sensors_values
from hatchkit.records.sensors_columns import zone_offset
from hatchkit.records.sensors_lines import as_text


def channel_readings(raw, head, plan, stamps, keep, wishes, account) -> pd.DataFrame:
    """Readings of all probes of one file, sorted by probe and time, with doubts marked.

    Parameters
    ----------
    raw : DataFrame
        Lines of the file from the first reading on, columns numbered.
    keep : ndarray of bool
        Lines that have a time.
    """
    utc = _utc(stamps, head, plan, wishes, account)
    rows = np.flatnonzero(keep)
    if len(rows) < len(raw):
        raw, utc = raw.iloc[rows], utc[rows]
    lines = head.first + rows + 1
    owners = as_text(raw[plan.probe]) if plan.probe is not None else None
    parts = [_values(raw, head, plan, channel, wishes, account, lines) for channel in plan.channels]
    text = np.zeros(len(raw), dtype=bool)
    for part in parts:
        if part["text"] is not None:
            text |= part["text"]
    for n in plan.text:
        text |= raw[n].notna().to_numpy()
    filled = np.logical_or.reduce([part["has"] for part in parts])
    event = ~filled & text
    account.count("lines of text with a time (events)", "note", event.sum(), "left out of the readings",
                  first=_first(lines, event))
    found = []
    for place, (channel, part) in enumerate(zip(plan.channels, parts, strict=True)):
        # A line with a time and no value at all is kept as a reading of the first probe, marked.
        take = part["has"] | (~filled & ~event) if place == 0 else part["has"]
        empty = int((~part["has"]).sum())
        if place and empty and len(plan.channels) > 1:
            account.say("note", f"{empty} of {len(raw)} lines have no value of {channel.name}",
                        "those lines give no reading of it", column=channel.name)
        for name, mine in _owners(owners, take, channel, plan):
            found.append((name, _one_probe(utc, part, mine, name, lines, account)))
    return _assemble(found, wishes, account)


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


def _utc(stamps, head, plan, wishes, account) -> np.ndarray:
    """Times in UTC, and the note that says which zone was taken."""
    if stamps.offset is not None and np.isfinite(stamps.offset[~np.isnat(stamps.local)]).all():
        return stamps.local - (np.nan_to_num(stamps.offset) * 1e6).astype("timedelta64[us]")
    offset, words = zone_offset(head)
    if offset is not None:
        account.say("note", f"the file says its clock is {words}", "taken as its zone")
        return stamps.local - np.timedelta64(int(offset * 1e6), "us")
    if wishes.timezone is None:
        account.say("note", "the file and season.toml name no time zone", "times are taken as the clock showed them",
                    "write timezone = \"Europe/Rome\" (or yours) in season.toml")
    utc, notes = clock_zone.to_utc(stamps.local, wishes.timezone)
    for severity, found, done, mend in notes:
        account.say(severity, found, done, mend)
    if stamps.offset is not None:
        given = np.isfinite(stamps.offset)
        utc[given] = (stamps.local - (np.nan_to_num(stamps.offset) * 1e6).astype("timedelta64[us]"))[given]
    return utc


def _values(raw, head, plan, channel, wishes, account, lines) -> dict:
    """Temperature and humidity of one channel, line by line."""
    numbers, text = {}, None
    for quantity, n in channel.columns.items():
        numbers[quantity], odd = sensors_values.as_numbers(raw[n])
        if odd is not None:
            text = odd if text is None else text | odd
            _say_odd_cells(account, odd, raw[n], lines, channel.name)
    part = {"text": text, "doubt": {}}
    part["temp"], part["logged"] = _temperature(raw, plan, channel, numbers, wishes, account, part)
    part["rh"] = _humidity(channel, numbers, part, wishes, account)
    part["has"] = np.zeros(len(raw), dtype=bool)
    for values in numbers.values():
        part["has"] |= ~np.isnan(values)
    return part


def _say_odd_cells(account, odd, column, lines, name) -> None:
    rows = np.flatnonzero(odd)
    if len(rows):
        account.say("note" if len(rows) < len(odd) / 10 else "doubtful",
                    f"{len(rows)} cells of {name} hold a text, the first in line {lines[rows[0]]}: "
                    f"\"{str(column.iloc[rows[0]])[:40]}\"",
                    "taken as no value", row=int(lines[rows[0]]), column=name)


def _temperature(raw, plan, channel, numbers, wishes, account, part):
    count = len(raw)
    if "temp" not in numbers:
        nothing = np.full(count, np.nan)
        return nothing, nothing
    values = numbers["temp"]
    unit = _unit(values, raw, plan, channel, wishes, account)
    codes = np.array([], dtype=int)
    if isinstance(unit, str):
        codes = sensors_values.missing_codes(values, "temp", unit)
        celsius = sensors_values.to_celsius(values, unit)
    else:
        celsius = values.copy()
        for letter in ("F", "K"):
            mine = unit == letter
            celsius[mine] = sensors_values.to_celsius(values[mine], letter)
    logged = celsius
    if len(codes):
        celsius = celsius.copy()
        celsius[codes] = np.nan
        shown = ", ".join(sorted({format(v, "g") for v in np.unique(values[codes])[:5]}))
        account.say("doubtful", f"{len(codes)} readings of {channel.name} show {shown}, a code for no reading",
                    "marked missing code; temp_c is left empty")
    part["doubt"]["missing code"] = np.isnan(celsius)
    return celsius, logged


def _unit(values, raw, plan, channel, wishes, account):
    """Unit letter of the temperatures, or one letter a row where the file has a unit column."""
    if wishes.temp_unit:
        return wishes.temp_unit.strip(" °").upper()[:1]
    if plan.unit is not None:
        letters = sensors_values.row_units(raw[plan.unit])
        known = set(letters) - {"", "%"}
        if known:
            return letters if len(known) > 1 else known.pop()
    said = channel.units.get("temp", "")
    guess, sure = sensors_values.unit_from_range(values)
    if said and (said == guess or not sure):
        return said
    mend = "write temp_unit = \"C\" or \"F\" under [sensors] in season.toml"
    if said:
        account.say("doubtful", f"{channel.name} is headed °{said} but its values can only be "
                    f"{'K' if guess == 'K' else '°' + guess}", f"read as {guess}", mend, column=channel.name)
    elif sure:
        account.say("note", f"{channel.name} has no unit; its middle value is {np.nanmedian(values):.1f}"
                    if np.isfinite(values).any() else f"{channel.name} has no unit",
                    f"read as {'K' if guess == 'K' else '°' + guess}", column=channel.name)
    else:
        account.say("doubtful", f"{channel.name} has no unit and its middle value is {np.nanmedian(values):.1f}",
                    f"read as °{guess}", mend, column=channel.name)
    return guess


def _humidity(channel, numbers, part, wishes, account) -> np.ndarray:
    rh = numbers.get("rh")
    if rh is None:
        return _humidity_from_other(channel, numbers, part, wishes, account)
    wrong = np.union1d(sensors_values.missing_codes(rh, "rh", "%"),
                       np.flatnonzero(marks.humidity_out_of_range(rh)))
    if len(wrong):
        rh = rh.copy()
        shown = ", ".join(format(v, "g") for v in np.unique(rh[wrong])[:5])
        rh[wrong] = np.nan
        account.say("doubtful", f"{len(wrong)} humidities of {channel.name} cannot be: {shown}",
                    "rh_pct is left empty there; the temperature stays")
    finite = rh[np.isfinite(rh)]
    if len(finite) and finite.max() <= 1.0 and finite.max() > 0.05 and len(finite) > 3:
        account.say("note", f"humidity of {channel.name} lies between 0 and 1", "read as a share and shown in %")
        rh = rh * 100
    return rh


def _humidity_from_other(channel, numbers, part, wishes, account) -> np.ndarray:
    """Humidity from the wet bulb or the dew point, where there is no humidity column."""
    nothing = np.full(len(part["temp"]), np.nan)
    other = "wet_bulb" if "wet_bulb" in numbers else "dew_point" if "dew_point" in numbers else None
    if other is None or "temp" not in numbers:
        return nothing
    # The one place where records looks into climate: air.py holds formulas only and imports nothing of it.
    from hatchkit.climate import air

    values = numbers[other]
    said = channel.units.get(other) or channel.units.get("temp") or sensors_values.unit_from_range(values)[0]
    values = sensors_values.to_celsius(values, wishes.temp_unit or said)
    good = np.isfinite(values) & np.isfinite(part["temp"]) & (values > -20) & (values <= part["temp"] + 0.5)
    rh = nothing
    dry, cold = part["temp"][good], np.minimum(values[good], part["temp"][good])
    if other == "wet_bulb":
        rh[good] = air.rh_from_wet_bulb(dry, cold, pressure_kpa=wishes.pressure_kpa)
        account.say("note", f"{channel.name} has a wet bulb and no humidity",
                    "humidity worked out for a ventilated wick (coefficient 6.53e-4 per K) at "
                    f"{wishes.pressure_kpa:.1f} kPa; in still air the true humidity is lower",
                    "give altitude_m of the incubator in season.toml")
    else:
        rh[good] = 100 * air.saturation_pressure(cold) / air.saturation_pressure(dry)
        account.say("note", f"{channel.name} has a dew point and no humidity",
                    "humidity worked out from the dew point")
    return rh


def _one_probe(utc, part, mine, name, lines, account) -> dict:
    """Sorted readings of one probe: time, temp, rh, logged, doubt (name -> marks)."""
    everything = bool(mine.all())
    take = slice(None) if everything else np.flatnonzero(mine)
    time, temp, rh, logged = utc[take], part["temp"][take], part["rh"][take], part["logged"][take]
    doubt = {key: value[take] for key, value in part["doubt"].items()}
    order, stepped = clock_order.file_order(time, name, lines[take], account)
    if stepped is not None:
        doubt["clock step"] = stepped
    if order is not None:
        time, temp, rh, logged = time[order], temp[order], rh[order], logged[order]
        doubt = {key: value[order] for key, value in doubt.items()}
    same, _ = marks.repeats(time, temp, rh)
    if same.any():
        account.count("lines that repeat a reading" if everything else "readings that repeat another of the same probe",
                      "note", same.sum(), "merged with it", example=name)
        left = ~same
        time, temp, rh, logged = time[left], temp[left], rh[left], logged[left]
        doubt = {key: value[left] for key, value in doubt.items()}
    return {"time": time, "temp_c": temp, "rh_pct": rh, "temp_logged_c": logged, "doubt": doubt}


def _assemble(found, wishes, account) -> pd.DataFrame:
    from hatchkit.records.sensors import empty_readings

    if wishes.channel is not None:
        known = [name for name, _ in found]
        found = [(name, part) for name, part in found if name.lower() == str(wishes.channel).lower()]
        if not found:
            raise HatchkitError(f"{account.file} has no channel {wishes.channel!r}; it has {', '.join(known)}")
    frames = [_frame(name, part, wishes, account) for name, part in sorted(found, key=lambda f: f[0])
              if len(part["time"])]
    if not frames:
        return empty_readings()
    return frames[0] if len(frames) == 1 else pd.concat(frames, ignore_index=True)


def _frame(name, part, wishes, account) -> pd.DataFrame:
    count = len(part["time"])
    named = dict(part["doubt"])
    if wishes.mark:
        named = {**named, **marks.marks_of(part["time"], part["temp_c"], part["rh_pct"])}
    doubt = np.full(count, "", dtype=object)
    for reason in ("stuck", "spike", "out of range", "repeated", "clock step", "missing code"):
        where = np.flatnonzero(named[reason]) if reason in named else ()
        if len(where):
            doubt[where] = reason
            _say_marks(account, reason, name, part, where)
    _say_gaps(account, name, part)
    return pd.DataFrame({
        "incubator": "", "probe": name, "time": pd.DatetimeIndex(part["time"]).tz_localize("UTC"),
        "temp_c": part["temp_c"], "rh_pct": part["rh_pct"], "file": account.file, "doubt": doubt,
        "temp_logged_c": part["temp_logged_c"]}, copy=False)


_WHY = {"stuck": "never change for hours", "spike": "jump faster than the air of an egg box can",
        "out of range": "show what no incubator has", "repeated": "share their time with another of other value",
        "clock step": "lie where the clock went back or lost its date", "missing code": "have no temperature"}


def _say_marks(account, reason, name, part, where) -> None:
    times = part["time"][where]
    account.say("doubtful", f"{len(where)} readings of {name} {_WHY[reason]}, "
                f"the first at {_minute(times.min())} UTC, the last at {_minute(times.max())}",
                f"kept and marked \"{reason}\"", column=name)


def _say_gaps(account, name, part) -> None:
    holes = np.flatnonzero(marks.gaps(part["time"]))
    if len(holes):
        length = (part["time"][holes] - part["time"][holes - 1]).astype(np.int64) / 3.6e9
        longest = int(np.argmax(length))
        account.say("note", f"{len(holes)} holes in {name}; the longest is {length[longest]:.1f} h from "
                    f"{_minute(part['time'][holes[longest] - 1])} UTC", "nothing is filled in", column=name)


def _minute(time) -> str:
    return str(np.datetime64(time, "m")).replace("T", " ")
