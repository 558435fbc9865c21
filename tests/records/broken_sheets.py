"""Sheets built from a known truth and then kept as badly as people keep them; and what reading must give back.

`pick(options)` chooses one of a list: hypothesis in the tests, a random number in the nightly script.
"""

import datetime as dt
import io

import openpyxl
import pandas as pd
from sheet_files import write_ods

#: Headings as keepers write them, by language; "time" heads the hour where it has a column of its own.
HEADINGS = {
    "kit": {name: [name] for name in ("batch", "species", "set_at", "eggs_set", "clear1", "dead1", "hatched")}
    | {"time": ["set time"]},
    "en": {
        "batch": ["batch", "batch no", "hatch no"],
        "species": ["species", "kind of bird", "bird"],
        "set_at": ["set on", "date set", "set date"],
        "eggs_set": ["eggs set", "eggs in", "no of eggs"],
        "clear1": ["clears", "clears 1st candling", "first candling clear"],
        "dead1": ["dead at 1st candling", "first candling dead", "quitters"],
        "hatched": ["hatched", "chicks hatched", "no hatched"],
        "time": ["time set", "set time"],
    },
    "de": {
        "batch": ["Brut", "Brut Nr"],
        "species": ["Art", "Tierart"],
        "set_at": ["eingelegt am", "Einlegedatum"],
        "eggs_set": ["Eier eingelegt", "Eierzahl"],
        "clear1": ["unbefruchtet", "klar"],
        "dead1": ["abgestorben", "tot beim Schieren"],
        "hatched": ["geschlüpft", "Küken geschlüpft"],
        "time": ["Uhrzeit"],
    },
    "fr": {
        "batch": ["couvée", "lot"],
        "species": ["espèce"],
        "set_at": ["mis en incubation le", "date de mise"],
        "eggs_set": ["œufs mis en incubation", "nombre d'œufs"],
        "clear1": ["clairs", "œufs clairs"],
        "dead1": ["morts au mirage", "embryons morts"],
        "hatched": ["éclos", "poussins éclos"],
        "time": ["heure"],
    },
    "es": {
        "batch": ["lote"],
        "species": ["especie"],
        "set_at": ["fecha de carga"],
        "eggs_set": ["huevos puestos"],
        "clear1": ["claros", "infértiles"],
        "dead1": ["muertos"],
        "hatched": ["nacidos", "pollos nacidos"],
        "time": ["hora"],
    },
    "it": {
        "batch": ["lotto", "covata"],
        "species": ["specie"],
        "set_at": ["data di incubazione"],
        "eggs_set": ["uova messe", "uova incubate"],
        "clear1": ["chiare", "non fecondate"],
        "dead1": ["morti"],
        "hatched": ["nati", "pulcini nati"],
        "time": ["ora"],
    },
    "nl": {
        "batch": ["broedsel", "broed nr"],
        "species": ["soort"],
        "set_at": ["ingelegd op", "inlegdatum"],
        "eggs_set": ["eieren ingelegd", "aantal eieren"],
        "clear1": ["onbevrucht"],
        "dead1": ["afgestorven", "dood bij schouwen"],
        "hatched": ["uitgekomen", "kuikens uitgekomen"],
        "time": ["tijd"],
    },
}
COUNTS = ["eggs_set", "clear1", "dead1", "hatched"]
SPECIES = {"hen": "chicken", "Ducks": "duck", "Wachtel": "quail", "GOOSE": "goose", "turkeys": "turkey"}
DATES = {
    "iso": "%Y-%m-%d",
    "dots": "%d.%m.%Y",
    "short": "%d/%m/%y",
    "month first": "%m/%d/%Y",
    "words": "%d %B %Y",
    "name": "%d-%b-%Y",
}


def draw_truth(pick):
    """A few batches: name, species word, time of setting, counts that add up."""
    truth = []
    for number in range(pick([1, 2, 3, 5])):
        eggs = pick([12, 30, 48, 144])
        truth.append(
            dict(
                batch=f"B{number + 1}",
                species=pick(sorted(SPECIES)),
                eggs_set=eggs,
                clear1=pick([0, 1, 4]),
                dead1=pick([0, 1, 3]),
                hatched=eggs - pick([8, 10, 12]),
                set_at=dt.datetime(2026, pick([3, 4, 11]), pick([1, 2, 12, 13, 28]), pick([7, 18]), 30),
            )
        )
    return truth


def break_it(truth, pick):
    """The truth as a grid of cells as someone may have kept it.

    Returns
    -------
    grid : list of list
    place : dict
        Number of the row (first row 1) of each batch.
    headings : dict
        Heading under which each column went.
    form : str
        csv, xlsx or ods.
    """
    form = pick(["csv", "csv", "xlsx", "ods"])
    language = pick(sorted(HEADINGS))
    words = HEADINGS[language]
    headings = {name: _heading(words[name], pick) for name in ["batch", "species", "set_at", *COUNTS]}
    order = list(headings)
    if pick([False, True]):
        order = order[3:] + order[:3]
    clock = pick([False, True])
    # Only who writes English writes the month first.
    dates = [name for name in sorted(DATES) if name != "month first" or language in ("kit", "en")]
    date = pick(dates + (["cell"] if form == "xlsx" else []))
    style = {name: pick(["plain", "plain", "text", "eggs", "sum"]) for name in COUNTS}
    head = [headings[name] for name in order] + ([pick(words["time"])] if clock else []) + pick([[], ["Ring colour"]])
    grid = pick([[], [["Our hatches (invented)"]], [["Our hatches (invented)"], [], ["", "spring and summer"]]])
    grid = [list(row) for row in grid] + [head]
    place = {}
    for number, batch in enumerate(truth):
        if number and pick([False, False, True]):
            grid.append([])
        if number == 2 and pick([False, True]):
            grid.append(list(head))
        row = [_cell(batch, name, style.get(name), date, clock) for name in order]
        row += ([batch["set_at"].strftime("%H:%M")] if clock else []) + (["red"] if head[-1] == "Ring colour" else [])
        grid.append(row)
        place[batch["batch"]] = len(grid)
    if pick([False, True]):
        total = [
            "Total" if name == "batch" else sum(batch[name] for batch in truth) if name in COUNTS else ""
            for name in order
        ]
        grid.append(total)
    if pick([False, True]):
        grid += [[], ["Remember: new thermometer next year"]]
    if pick([False, False, True]):
        grid = [["", *row] for row in grid]
    return grid, place, headings, form


def _heading(words, pick):
    text = pick(words)
    text = pick([text, text.upper(), text.title(), text.replace(" ", "_"), f" {text} "])
    if pick([False] * 7 + [True]) and len(text.strip()) >= 8 and text.isascii():
        middle = len(text) // 2
        text = text[:middle] + text[middle + 1] + text[middle] + text[middle + 2 :]  # two letters swapped
    return text


def _cell(batch, name, style, date, clock):
    value = batch[name]
    if name == "set_at":
        if date == "cell":
            return value if not clock else value.replace(hour=0, minute=0)
        return value.strftime(DATES[date] + ("" if clock else " %H:%M"))
    if name in COUNTS:
        return {
            "plain": value,
            "text": str(value),
            "eggs": f"{value} eggs",
            "sum": f"{value - 1}+1" if value else "0",
        }[style]
    return value


def write_sheet(folder, grid, form, pick):
    """The grid as a file of the form, in one of the ways in which such files are written."""
    width = max(map(len, grid))
    rows = [list(row) + [""] * (width - len(row)) for row in grid]
    if form == "xlsx":
        book = openpyxl.Workbook()
        for row in rows:
            book.active.append([None if cell == "" else cell for cell in row])
        book.save(folder / "batches.xlsx")
    elif form == "ods":
        write_ods(folder / "batches.ods", rows)
    else:
        import csv

        text = io.StringIO()
        csv.writer(text, delimiter=pick([",", ";", "\t", "|"])).writerows(rows)
        (folder / "batches.csv").write_bytes(
            text.getvalue().encode(pick(["utf-8", "utf-8-sig", "utf-16", "cp1252"]), "replace")
        )


def faults(read, truth, place, headings):
    """What is wrong with the reading: a value that is neither the truth nor told or asked, a row that went missing."""
    wrong, problems = [], read["problems"]
    text = problems[["column", "found", "fix"]].astype(str).agg(" ".join, axis=1)
    told_rows = set(problems.loc[problems["severity"] != "note", "row"].dropna().astype(int))
    asked = set(read["questions"]["heading"])
    by_row = {
        int(row): batch for row, batch in zip(read["batches"]["row"], read["batches"].to_dict("records"), strict=True)
    }
    lost = problems.loc[problems["severity"] == "lost", "row"].dropna().astype(int).tolist()
    if sorted([*by_row, *lost]) != sorted(place.values()):
        wrong.append(f"rows {sorted(place.values())} became {sorted(by_row)} and lost {sorted(lost)}")
    for batch in truth:
        row = place[batch["batch"]]
        got = by_row.get(row)
        if got is None:
            continue
        want = batch | {"species": SPECIES[batch["species"]], "set_at": pd.Timestamp(batch["set_at"], tz="UTC")}
        for name, value in want.items():
            # A key is the keeper's name with what tells two of one name apart.
            have = got["name"] if name == "batch" else got[name]
            if have is value or have == value:
                continue
            heading = headings[name].strip()
            season_wide = {"set_at": "?day_first", "species": "?species"}.get(name)
            told = (
                row in told_rows
                or text.str.contains(heading, regex=False).any()
                or heading in asked
                or season_wide in asked
            )
            if not told:
                wrong.append(f"row {row}: {name} ({heading}) should be {value!r}, is {have!r}")
    return wrong
