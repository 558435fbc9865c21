"""The folder of a season of the sixth world: sheet of batches, weights, loggers' files, season.toml. No truth in it."""

from __future__ import annotations

import csv
from datetime import timedelta
from pathlib import Path

from openpyxl import Workbook

from .codes import BIRDS as BODIES
from .sixth_log import write_logs

WORDS = Path(__file__).with_name("sixth_words.csv")
HEADINGS = Path(__file__).with_name("sixth_headings.csv")
PLAIN_REMARK = 0.15
LOOK_COLUMNS = {"first": "1", "second": "2", "transfer": "3"}


def read_words(language, path=WORDS):
    """{(kind, key): words} of a language."""
    with path.open(encoding="utf-8", newline="") as file:
        return {(row["kind"], row["key"]): row[language] for row in csv.DictReader(file)}


def write(rng, folder, book, airs):
    """Write the season; `airs` is the air as it was, of which the log shows the covered days."""
    folder.mkdir(parents=True, exist_ok=True)
    habits = book["keeper"]
    headings = read_words(habits["language"], HEADINGS)
    rows = [_row(rng, habits, batch) for batch in book["batches"]]
    used = [key for kind, key in headings if kind == "column" and any(row.get(key) is not None for row in rows)]
    names = [headings["column", key] for key in used]
    table = [names] + [[_bird(row, key, headings) for key in used] for row in rows]
    weighed = _weighed(rng, book, headings) if habits["weighs"] else None
    if habits["workbook"]:
        _workbook(folder / "batches.xlsx", headings, table, weighed)
    else:
        _sheet(folder / "batches.csv", habits["language"], table)
    machines = sorted({batch["machine"] for batch in book["batches"]})
    logged = write_logs(rng, folder, book, airs)
    _settings(folder / "season.toml", habits, machines, logged)


def _bird(row, key, headings):
    """A cell of the sheet, the kind of bird in the keeper's language."""
    return headings["bird", row[key]] if key == "bird" else row.get(key)


def _row(rng, habits, batch):
    """One batch as {column key: value}; what is not kept is left out."""
    counts, set_at, gauges = batch["counts"], batch["set_at"], batch["gauges"]
    row = {
        "batch": batch["name"],
        "bird": batch["bird"],
        "machine": batch["machine"],
        "set_at": set_at,
        "set": batch["set"],
        "stored": _whole(gauges.get("stored")),
        "age": _whole(gauges.get("age")),
        "hatched": counts["good"] + counts["culled"],
        "culled": counts["culled"],
        "transfer_at": set_at + timedelta(days=batch["transfer"]),
        "cracked": batch["cracked"],
        "rotten": counts["rotten"],
        "removed": batch["cracked"] + counts["rotten"],  # rotten ones go out, at the latest at the end
        "malpositioned": batch["malpositioned"],
    }
    for place, (column, day) in enumerate(batch["looks"]):
        number = LOOK_COLUMNS[column]
        if column != "transfer":
            row[f"look{number}"] = set_at + timedelta(days=day)
        row |= {f"clear{number}": counts[f"clear@{place}"], f"dead{number}": counts[f"dead@{place}"]}
    row |= {name: counts[name] for name in ("infertile", "early", "mid", "late", "shell", "pipped") if name in counts}
    row |= _hours(rng, batch)
    if batch["posted"] is not None:
        row["posted"] = read_words(habits["language"], HEADINGS)["word", "yes" if batch["posted"] else "no"]
    return row | _said(rng, habits, batch)


def _whole(value):
    return None if value is None else int(value)


def _hours(rng, batch):
    """First and last chick, and the hour at which the hatch was taken off."""
    gauges, full = batch["gauges"], batch["set_at"] + timedelta(days=batch["term"])
    off = full + timedelta(hours=float(rng.integers(26, 44)))
    out = {}
    if "first" in gauges:
        out["first"] = full + timedelta(hours=gauges["first"])
        if "width" in gauges:
            out["last"] = out["first"] + timedelta(hours=gauges["width"])
            off = max(off, out["last"] + timedelta(hours=4))
    return out | {"off": off}


def _said(rng, habits, batch):
    """Signs and remarks in the keeper's own language."""
    words, parts = read_words(habits["language"]), []
    for code in batch["remarks"] or []:
        parts.append(words["told", code])
    if habits["log"] == "notes" and "temp" in batch["gauges"]:
        parts.append(f"{habits['set_c'] + batch['gauges']['temp']:.1f} °C")
    if habits["log"] == "notes" and "rh" in batch["gauges"]:
        parts.append(f"{batch['gauges']['rh']:.0f} %")
    if batch["remarks"] is not None and rng.random() < PLAIN_REMARK:
        plain = [key for kind, key in words if kind == "plain"]
        parts.append(words["plain", str(rng.choice(plain))])
    seen = [words["sign", sign] for sign in batch["signs"] or []]
    return {"signs": ", ".join(seen) or None, "notes": "; ".join(parts) or None}


def _weighed(rng, book, headings):
    """Sheet of tray weights: at setting, and at transfer those left."""
    rows = [[headings["weights", key] for key in ("batch", "at", "grams", "eggs")]]
    for batch in book["batches"]:
        if "loss" not in batch["gauges"]:
            continue
        egg = BODIES[batch["bird"]].egg_g * rng.normal(1, 0.05)
        out = [batch["counts"][f"{what}@{place}"] for place in range(len(batch["looks"])) for what in ("clear", "dead")]
        left = batch["set"] - sum(out) - batch["cracked"] - batch["rotten_before"]
        rows.append([batch["name"], batch["set_at"], round(egg * batch["set"]), batch["set"]])
        if left > 0:
            at = batch["set_at"] + timedelta(days=batch["transfer"])
            rows.append([batch["name"], at, round(egg * left * (1 - batch["gauges"]["loss"])), left])
    return rows


def _workbook(path, headings, table, weighed):
    book = Workbook()
    sheet = book.active
    sheet.title = headings["sheet", "batches"]
    for row in table:
        sheet.append(row)
    if weighed:
        sheet = book.create_sheet(headings["sheet", "weights"])
        for row in weighed:
            sheet.append(row)
    book.save(path)


def _sheet(path, language, table):
    """The same as text: commas in English, semicolons and day first elsewhere."""
    pattern = "%Y-%m-%d %H:%M" if language == "en" else "%d.%m.%Y %H:%M"
    with path.open("w", encoding="utf-8", newline="") as file:
        writer = csv.writer(file, delimiter="," if language == "en" else ";")
        for row in table:
            writer.writerow([cell.strftime(pattern) if hasattr(cell, "strftime") else cell for cell in row])


def _settings(path, habits, machines, logged):
    """season.toml: language, zone, machines and their files."""
    lines = ['title = "An invented season"', 'timezone = "Europe/Rome"', f'language = "{habits["language"]}"']
    for machine in machines:
        lines += ["", f"[incubators.{machine}]"]
        if machine in logged:
            lines.append(f'files = ["sensors/{machine}*.csv"]')
        lines += ['air = "fan"', f"set_point_c = {habits['set_c']}"]
    path.write_text("\n".join(lines) + "\n", encoding="utf-8")
