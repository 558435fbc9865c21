"""Write a season of the fourth world as its keeper would have kept it; nothing of the truth goes in.

Columns are those of the kit's blank workbook, a column that the keeper does not keep is left out. Times are local.
"""

from __future__ import annotations

import numpy as np
import pandas as pd

from .fourth_air import batch_log
from .fourth_words import remark, sign

ZONES = {"en": "Europe/London", "de": "Europe/Berlin", "fr": "Europe/Paris", "es": "Europe/Madrid", "it": "Europe/Rome"}


def write_folder(folder, book, draw):
    """Write batches (.csv or .xlsx), weights.csv, sensors/*.csv and season.toml of `book` into a new `folder`."""
    keeper = book["keeper"]
    zone, style = ZONES[keeper["language"]], keeper["style"]
    (folder / "sensors").mkdir(parents=True)
    table = pd.DataFrame([_row(batch, keeper, zone) for batch in book["batches"]]).dropna(axis=1, how="all")
    if style == 1:
        table.to_excel(folder / "batches.xlsx", index=False)
    else:
        table.to_csv(folder / "batches.csv", index=False, date_format="%Y-%m-%d %H:%M")
    if keeper["habits"]["weighs"]:
        weights = pd.concat([_weights(batch, keeper, zone, draw) for batch in book["batches"]])
        weights.to_csv(folder / "weights.csv", index=False)
    for batch in book["batches"]:
        if batch["logged"]:
            log = batch_log(batch, book["machines"][batch["incubator"]], keeper["step_min"], draw)
            _write_log(log, folder / "sensors" / f"{batch['incubator']}_{batch['batch']:0>2}.csv", zone, style)
    (folder / "season.toml").write_text(_settings(book, zone), encoding="utf-8")


def _local(times, zone):
    """Wall-clock times of `zone` for naive UTC times."""
    return pd.DatetimeIndex(times).tz_localize("UTC").tz_convert(zone).tz_localize(None)


def _row(batch, keeper, zone):
    """The batch as one row of the sheet."""
    habits, counts, looks = keeper["habits"], batch["counts"], batch["looks"]

    def at(age=None, hours=None):
        hours = age * batch["days"] / 21 * 24 if hours is None else hours
        return _local([batch["set_at"] + pd.Timedelta(minutes=round(hours * 60))], zone)[0].floor("min")

    row = {
        "batch": batch["batch"],
        "species": batch["species"],
        "incubator": batch["incubator"],
        "set_at": at(0.0),
        "eggs_set": batch["eggs_set"],
        "transfer_at": at(batch["transfer_age"]),
        "taken_off_at": at(batch["taken_off_age"]),
        "hatched": counts["sound"] + counts["culled"],
        "culled": counts["culled"],
        "pipped_dead": counts["pipped_dead"],
        "removed": counts["contaminated"],
        "contaminated": counts["contaminated"],
    }
    if habits["keeps_stored"]:
        row["stored_days"] = round(batch["stored_days"], 1)
    if habits["keeps_flock"]:
        row["flock_age_weeks"] = round(batch["flock_age_weeks"])
    if habits["keeps_pen"]:
        row["pen"] = f"pen {batch['batch']}" if batch["own_pen"] else "house"
    if habits["keeps_posted"]:
        row["posted"] = "yes" if batch["posted"] else "no"
    for look in looks:
        clear = counts[f"clear{look}"]
        if look < 3:
            row[f"candle{look}_at"] = at(looks[look])
        if look == 1 and habits["opens_clears"]:
            row |= {name: counts[name] for name in ("opened1_infertile", "opened1_dead")}
            clear = counts["opened1_infertile"] + counts["opened1_dead"]
        row |= {f"clear{look}": clear, f"dead{look}": counts[f"dead{look}"]}
    if habits["opens"]:
        row |= {f"broken_{kind}": counts[f"broken_{kind}"] for kind in ("infertile", "early", "mid")}
        row["broken_late"] = counts["broken_late"] + counts["malpositioned"]
        if habits["counts_wrong"]:
            row["malpositioned"] = counts["malpositioned"]
    else:
        row["dead_in_shell"] = counts["dead_in_shell"]
    if habits["times_hatch"] and counts["sound"] + counts["culled"]:
        row |= {
            "first_hatch_at": at(hours=batch["first_h"]),
            "last_hatch_at": at(hours=batch["first_h"] + batch["wide_h"]),
        }
    return row | _words(batch, keeper)


def _words(batch, keeper):
    """What the keeper wrote under signs and notes."""
    language, told = keeper["language"], dict([batch["told_day"]]) if batch["told_day"] else {}
    signs, notes = [], []
    for topic in batch["topics"]:
        if topic[:2] not in ("r_", "h_"):
            signs.append(sign(topic, language, keeper["habits"]["ticks"]))
        else:
            day = told.get(topic)
            notes.append(remark(topic, language, None if day is None else day * batch["days"] / 21))
    return {"signs": "; ".join(signs) or None, "notes": ", ".join(notes) or None}


def _weights(batch, keeper, zone, draw):
    """Eight eggs on the scale at setting and near the transfer; their mean loss is the batch's."""
    count = min(8, batch["eggs_set"])
    first = keeper["egg_g"] * (1 + 0.06 * draw.standard_normal(count))
    off = 1.2 * draw.standard_normal(count)
    age = min(batch["transfer_age"], 18.0)
    loss = np.maximum(batch["water_pct"] + off - off.mean(), 0.5) / 100
    later = _local([batch["set_at"], batch["set_at"] + pd.Timedelta(hours=round(age * batch["days"] / 21 * 24))], zone)
    grains = 2 if keeper["egg_g"] < 20 else 1
    return pd.concat(
        [
            pd.DataFrame(
                {
                    "batch": batch["batch"],
                    "egg": range(1, count + 1),
                    "weighed_at": when.strftime("%Y-%m-%d %H:%M"),
                    "grams": np.round(grams, grains),
                }
            )
            for when, grams in zip(later, (first, first * (1 - loss)), strict=True)
        ]
    )


def _write_log(log, path, zone, style):
    """One logger's file: plain, with semicolons and decimal commas, or in Fahrenheit."""
    stamps = _local(log["time"], zone)
    if style == 1:
        out = pd.DataFrame(
            {"Datum": stamps.strftime("%d.%m.%Y %H:%M"), "Temperatur [°C]": log["temp_c"], "Feuchte [%]": log["rh_pct"]}
        )
        out.to_csv(path, sep=";", decimal=",", index=False)
    elif style == 2:
        out = pd.DataFrame(
            {
                "time": stamps.strftime("%Y-%m-%d %H:%M"),
                "temperature (°F)": np.round(log["temp_c"] * 1.8 + 32, 1),
                "humidity (%RH)": log["rh_pct"],
            }
        )
        out.to_csv(path, index=False)
    else:
        log.assign(time=stamps.strftime("%Y-%m-%d %H:%M")).to_csv(path, index=False)


def _settings(book, zone):
    """season.toml: zone, and for each machine its files, setting and height."""
    lines = [f'timezone = "{zone}"', ""]
    for name, machine in book["machines"].items():
        logged = any(batch["incubator"] == name and batch["logged"] for batch in book["batches"])
        lines += [
            f"[incubators.{name}]",
            f'files = ["sensors/{name}_*.csv"]' if logged else "files = []",
            f"set_point_c = {machine['set_c']}",
            'air = "fan"',
            f"altitude_m = {machine['altitude_m']:.0f}",
            "",
        ]
    return "\n".join(lines)
