"""Write a season of the fifth world as its keeper would have kept it; nothing of the truth goes in.

Columns are those of the kit's blank workbook, one that the keeper does not keep is left out. Times are local.
"""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pandas as pd

from worlds.fifth_air import LENGTH, batch_log
from worlds.fifth_traces import SPECIES_WATER
from worlds.fifth_words import REMARKS, SIGNS, sentence

MACHINES = "ABC"
GRAMS = {"quail": 12.0, "chicken": 60.0, "duck": 78.0, "turkey": 85.0, "goose": 150.0}
POWER_UP_C, POWER_UPS = 85.0, 0.1


def write_folder(folder: Path, keeper, batches, draw) -> None:
    """Write batches (.csv or .xlsx), weights.csv, sensors/*.csv and season.toml into a new `folder`."""
    folder.mkdir(parents=True)
    rows = pd.DataFrame([_row(batch, keeper) for batch in batches]).dropna(axis="columns", how="all")
    if keeper["workbook"]:
        rows.to_excel(folder / "batches.xlsx", sheet_name="batches", index=False)
    else:
        for column in rows.columns[rows.columns.str.endswith("_at")]:
            rows[column] = rows[column].dt.strftime("%Y-%m-%d %H:%M")
        whole = rows.select_dtypes("number").columns
        rows[whole] = rows[whole].astype("Int64")
        rows.to_csv(folder / "batches.csv", index=False)
    if keeper["weighs"]:
        pd.concat([_weighings(batch, keeper, draw) for batch in batches]).to_csv(folder / "weights.csv", index=False)
    if keeper["habits"]["logs"]:
        (folder / "sensors").mkdir()
        for batch in batches:
            log = batch_log(batch, draw, keeper["log_minutes"])
            if len(log):
                if draw.random() < POWER_UPS:
                    log.loc[draw.choice(log.index), "temp_c"] = POWER_UP_C
                name = f"{MACHINES[batch['machine']]}_{batch['set_at']:%m%d}.csv"
                _write_log(log, folder / "sensors" / name, keeper)
    (folder / "season.toml").write_text(_settings(keeper, batches), encoding="utf-8")


def _local(times, zone):
    """Wall-clock times of `zone` for naive UTC times."""
    if isinstance(times, pd.Series):
        return times.dt.tz_localize("UTC").dt.tz_convert(zone).dt.tz_localize(None)
    return times.tz_localize("UTC").tz_convert(zone).tz_localize(None).floor("min")


def _at(batch, age, zone):
    """Local time at which the eggs are so many days of 21 old."""
    return _local(batch["set_at"] + pd.Timedelta(days=age / 21 * LENGTH[batch["species"]]), zone)


def _row(batch, keeper):
    """The batch as one row of the sheet; None where nothing was written."""
    zone, habits, count, origin = keeper["zone"], batch["habits"], batch["counts"], batch["origin"]
    pen = origin.get("elsewhere")
    row = {
        "batch": batch["name"],
        "species": batch["species"],
        "pen": None if pen is None else "from elsewhere" if pen else f"own {batch['species']}",
        "flock_age_weeks": origin.get("age"),
        "posted": None if "posted" not in origin else "yes" if origin["posted"] else "no",
        "incubator": MACHINES[batch["machine"]],
        "set_at": _local(batch["set_at"], zone),
        "eggs_set": batch["eggs"],
        "stored_days": origin.get("stored"),
    }
    for look, name in ((1, "candle1_at"), (2, "candle2_at"), (3, "transfer_at")):
        if look in batch["looks"]:
            row[name] = _at(batch, batch["looks"][look], zone)
            told = habits["untold"] != look
            clears = count[f"clear{look}"] + (count["opened1_dead"] if look == 1 else 0)
            row |= {f"clear{look}": clears if told else None, f"dead{look}": count[f"dead{look}"] if told else None}
    if habits["opens_clears"] and 1 in batch["looks"]:
        row |= {"opened1_infertile": count["clear1"], "opened1_dead": count["opened1_dead"]}
    row |= {
        "removed": count["rotten"] + count["cracked"],
        "contaminated": count["rotten"],
        "cracked": count["cracked"],
        "hatched": count["good"] + count["culled"],
        "culled": count["culled"] if habits["tells_culled"] else None,
        "pipped_dead": count["pipped"] if habits["tells_pipped"] else None,
        "dead_in_shell": count["unopened"] if habits["opens"] < 1 else None,
    }
    if habits["opens"]:
        row |= {f"broken_{part}": count[f"open_{part}"] for part in ("infertile", "early", "mid")}
        row["broken_late"] = count["open_late"] + count["open_wrong"]
        row["malpositioned"] = count["open_wrong"] if habits["tells_wrong"] else None
    hatch = batch["set_at"] + pd.Timedelta(days=LENGTH[batch["species"]])
    first, spread = batch["measures"].get("first"), batch["measures"].get("spread")
    end = max(30.0, 0 if first is None else first + spread + 10)
    row["taken_off_at"] = _local(hatch + pd.Timedelta(hours=end), zone)
    if first is not None and row["hatched"] > 1:
        row["first_hatch_at"] = _local(hatch + pd.Timedelta(hours=first), zone)
        row["last_hatch_at"] = _local(hatch + pd.Timedelta(hours=first + spread), zone)
    length = LENGTH[batch["species"]]
    for column, topics in (("signs", SIGNS), ("notes", REMARKS)):
        names = [name for name in topics if name in batch["words"]]
        row[column] = sentence(names, batch["words"], keeper["language"], length) or None
    return row


def _weighings(batch, keeper, draw):
    """Eight eggs on the scale at setting and at the transfer; their mean loss is the batch's."""
    lost = SPECIES_WATER[batch["species"]] + batch["measures"]["water"]
    before = GRAMS[batch["species"]] * np.exp(draw.normal(0, 0.06, 8))
    own = draw.normal(0, 1.2, 8)
    after = before * (1 - np.clip(lost + own - own.mean(), 1, 35) / 100)
    times = [_at(batch, age, keeper["zone"]) for age in (0.0, batch["looks"][3])]
    return pd.DataFrame(
        {
            "batch": batch["name"],
            "egg": [*range(1, 9)] * 2,
            "weighed_at": np.repeat([f"{at:%Y-%m-%d %H:%M}" for at in times], 8),
            "grams": np.round([*before, *after], 2 if batch["species"] == "quail" else 1),
        }
    )


def _write_log(log, path, keeper):
    """One log: times with their offset, semicolons and decimal commas, or Fahrenheit."""
    log, zone = log.copy(), keeper["zone"]
    two = "temp2_c" in log
    if keeper["log_style"] == 0:
        local = log["time"].dt.tz_localize("UTC").dt.tz_convert(zone)
        log["time"] = [at.isoformat() for at in local]
        log.columns = ["timestamp", "temp_c", "rh", *(["temp2_c"] if two else [])]
        log.to_csv(path, index=False)
        return
    log["time"] = _local(log["time"], zone).dt.strftime(
        "%d.%m.%Y %H:%M" if keeper["log_style"] == 1 else "%Y-%m-%d %H:%M"
    )
    if keeper["log_style"] == 1:
        log.columns = ["Date/Time", "Temperature [°C]", "Humidity [%]", *(["Temperature 2 [°C]"] if two else [])]
        log.to_csv(path, index=False, sep=";", decimal=",")
        return
    for column in log.columns[log.columns.str.startswith("temp")]:
        log[column] = (log[column] * 9 / 5 + 32).round(1)
    log.columns = ["Time", "Temp (°F)", "RH (%)", *(["Temp 2 (°F)"] if two else [])]
    log.to_csv(path, index=False)


def _settings(keeper, batches):
    """season.toml: zone, and for each machine its files, setting and height."""
    lines = ['title = "An invented season"', f'timezone = "{keeper["zone"]}"', f'language = "{keeper["language"]}"']
    for machine in sorted({batch["machine"] for batch in batches}):
        lines += ["", f"[incubators.{MACHINES[machine]}]", 'air = "fan"', "set_point_c = 37.6"]
        if keeper["habits"]["logs"]:
            lines.append(f'files = ["sensors/{MACHINES[machine]}_*.csv"]')
        if keeper["tells_altitude"]:
            lines.append(f"altitude_m = {keeper['altitude_m']}")
    return "\n".join(lines) + "\n"
