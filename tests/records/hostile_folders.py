"""Season folders as the world spoils them: drawn by a seed, read, worked through, and found unchanged afterwards."""

from __future__ import annotations

import datetime as dt
import hashlib
import io
import os
import random
import signal
import stat
import traceback
from contextlib import contextmanager, redirect_stdout, suppress
from pathlib import Path

HEAD = [
    "batch",
    "species",
    "set_at",
    "eggs_set",
    "stored_days",
    "incubator",
    "candle1_at",
    "clear1",
    "dead1",
    "transfer_at",
    "taken_off_at",
    "hatched",
    "dead_in_shell",
    "notes",
]
ROWS = [
    [
        "A1",
        "chicken",
        "2026-03-01 18:00",
        "42",
        "4",
        "A",
        "2026-03-08",
        "5",
        "1",
        "2026-03-19",
        "2026-03-23",
        "31",
        "5",
        "",
    ],
    [
        "A2",
        "chicken",
        "2026-03-29 18:00",
        "48",
        "6",
        "A",
        "2026-04-05",
        "4",
        "2",
        "2026-04-16",
        "2026-04-20",
        "36",
        "6",
        "lid left open",
    ],
    [
        "D1",
        "duck",
        "2026-04-03 09:30",
        "20",
        "3",
        "B",
        "2026-04-11",
        "2",
        "0",
        "2026-04-28",
        "2026-05-02",
        "14",
        "4",
        "Küken schwach, líhně",
    ],
]
#: Headings in some languages of keepers, for the encodings that they are written in.
WORDS = {
    "cp1250": ("líheň č.", "vajec vloženo", "vylíhlo"),
    "cp1251": ("закладка", "яиц", "вывелось"),
    "koi8_r": ("закладка", "яиц", "вывелось"),
    "shift_jis": ("入卵日", "卵数", "孵化"),
    "cp1253": ("ημερομηνία", "αυγά", "εκκολάφθηκαν"),
    "cp1254": ("tarih", "yumurta", "çıkan"),
    "cp1255": ("תאריך", "ביצים", "בקעו"),
    "cp1256": ("تاريخ", "بيض", "فقس"),
    "cp1257": ("data", "kiaušinių", "išsirito"),
    "cp1252": ("Einlage", "Eier", "geschlüpft"),
}
PAGES = ["utf-16", "utf-16-le", "utf-16-be", "utf-32", "utf-32-le", "utf-8-sig", *WORDS]
NUMBERS = [
    "9" * 5000,
    "9" * 400,
    "1e308",
    "1e400",
    "-1e308",
    "1e-320",
    "999999999999",
    "-3",
    "NaN",
    "inf",
    "-0",
    "0x1F",
    "1/0",
    "٣٤",
    "1,5",
    "1.234.567",
    "12345678901234567890.5",
    "½",
    "%",
    "=1+1",
    "-",
    "12 12 12",
    "1" * 60 + ".5",
    "100001",
    "400.5",
    "2147483648",
]
DATES = [
    "9999-12-31",
    "0001-01-01",
    "1899-12-30",
    "2101-01-01",
    "0000-00-00",
    "31/02/2026",
    "2026-03-01 24:60",
    "2026-13-45",
    "99999-01-01",
    "1e9",
    "-5",
    "1949-12-31",
    "2262-04-12",
    "1677-09-20",
    "9999-12-31 23:59:59",
    "2026-03-01T18:00:00+99:99",
    "29.2.2100",
    "00.00.00",
    "0/0/0",
]
SETTINGS = [
    "timezone = 5",
    'timezone = "Nowhere/Else"',
    'incubators = "A"',
    '[[incubators]]\nfiles = "x"',
    "[incubators.A]\nprobe_offset_c = nan",
    "[incubators.A]\nprobe_offset_c = 1e400",
    "[incubators.A]\nfiles = [1, 2]",
    '[incubators.A]\nprobe_offset_c = {x = "y"}',
    "[incubators.A]\naltitude_m = -1e9",
    "[incubators.A]\nair = 3",
    "[incubators.A]\nset_point_c = 1e300",
    "[incubators.A]\naltitude_m = 99999999",
    "headers = 7",
    "[headers]\neggs_set = 5",
    '[headers]\nx = "no_such"',
    "[species.x]\nbased_on = 5",
    "species = [1]",
    "[species.chicken]\nincubation_days = 1e9",
    "[species.chicken]\nincubation_days = -21",
    "changes = 3",
    "[[changes]]\ndate = 9999-12-31\nwhat = 4",
    '[[changes]]\ndate = "soon"',
    "a = " + "[" * 300,
    'x = "',
    "year = 99999",
    'year = "x"',
    "title = 2026-01-01",
    'title = ""',
    "default_species = 5",
    "[sheets]\nday_first = 3",
    '[sensors]\ntemp_unit = "K"\nday_first = "no"',
    "[sensors]\ntimezone = []",
    "language = 9",
    "[[norms]]\nspecies = 4",
    "[incubators.A]\nprobes = 3",
    '[incubators.A]\nset_point_c = "warm"',
    "[incubators]\nA = 5",
    "\ufeff\ufeff[x",
    "\0",
    'timezone = "Europe/Prague"\ndefault_species = "goose"',
    "x = 99999999999999999999999999",
    "[sheets]\nday_first = true\n[sheets]\nday_first = true",
    '[incubators.A]\nfiles = "../../*"',
    "keeper = [1]",
    "[[answers]]\nfile = 5",
    "diary = {}",
    '[incubators.""]\nfiles = "["',
    "[incubators.A]\nstart = 25:61:00",
]
NAMES = [
    "batches (1).csv",
    "a\nb.csv",
    "-rf.csv",
    "%s%n.csv",
    "x" * 200 + ".csv",
    "batches.csv.csv",
    "CON.csv",
    "<b>.csv",
    "é\u0301.csv",
    "\u202egnp.csv",
    "~lock.csv",
    ".hidden.csv",
    "problems.csv",
    "BATCHES.CSV",
]


def spoilt_season(folder: Path, seed: int) -> list[str]:
    """Write one season and spoil it in one to three ways; returns what was done."""
    rng = random.Random(seed)
    kind = rng.choice(["csv", "csv", "csv", "xlsx", "diary", "eggs"])
    _write(folder, kind, rng)
    ways = rng.sample(WAYS, rng.choice([1, 1, 2, 3]))
    for way in ways:
        # An earlier way may have left nothing to spoil like this.
        with suppress(IndexError, AttributeError, OSError, ValueError):
            way(folder, rng)
    return [kind, *(way.__name__.strip("_") for way in ways)]


def faults_of(folder: Path, *, work: bool, seconds: int = 60) -> list[str]:
    """What went wrong in reading a folder (and with `work`, in the review's cells), and what changed in it."""
    from hatchkit.problems import HatchkitError

    before, faults = _state(folder), []
    try:
        with _limited(seconds), redirect_stdout(io.StringIO()):
            _used(folder, work)
    except HatchkitError as error:
        if not str(error) or "None" in str(error) or "Error(" in str(error):
            faults.append(f"words: {error}")
    except _TooLong:
        faults.append(f"no end after {seconds} s\n" + traceback.format_exc(limit=-6))
    except Exception as error:
        faults.append(f"{type(error).__name__}: {str(error)[:200]}\n" + traceback.format_exc(limit=-5))
    after = _state(folder)
    faults += [f"changed: {name}" for name in before.keys() | after.keys() if before.get(name) != after.get(name)]
    return faults


def _used(folder, work):
    from hatchkit import load_season
    from hatchkit.pages.check_page import check_page
    from hatchkit.pages.check_text import check_text

    season = load_season(folder)
    check_text(season, full=True)
    check_page(season)
    broken = season.problems["code"].isin(["sheet_broken", "file_broken"])
    if broken.any():
        BROKEN.append((str(folder), season.problems[broken][["file", "facts"]].to_dict("records")))
    if work:
        for name in ("1_season_review", "2_poor_hatch"):
            _cells(folder, name)


#: Sheets and files that only the last guard caught: no fault for the person, but work for whoever keeps the kit.
BROKEN: list = []


def _cells(folder, name):
    """The cells of a notebook of the kit, run here."""
    import nbformat
    from matplotlib import pyplot

    from hatchkit.problems import HatchkitError
    from hatchkit.records.places import notebooks_folder

    page = nbformat.read(next(notebooks_folder().glob(f"{name}*.ipynb")), as_version=4)
    known = {"display": lambda *shown: None}
    os.environ["HATCHKIT_FOLDER"] = str(folder)
    try:
        for cell in page.cells:
            if cell.cell_type == "code":
                exec(compile(cell.source.replace("from IPython.display import display", ""), name, "exec"), known)
    except HatchkitError:
        pass  # said in a sentence; the report ends there
    finally:
        del os.environ["HATCHKIT_FOLDER"]
        pyplot.close("all")


class _TooLong(BaseException):
    pass


@contextmanager
def _limited(seconds):
    def stop(*_):
        raise _TooLong

    if not hasattr(signal, "setitimer"):
        yield
        return
    # Processor time, so that a busy machine is no fault; and the clock, for what waits without working.
    clocks = ((signal.SIGPROF, signal.ITIMER_PROF, seconds), (signal.SIGALRM, signal.ITIMER_REAL, 10 * seconds))
    earlier = [signal.signal(number, stop) for number, _, _ in clocks]
    for _, clock, most in clocks:
        signal.setitimer(clock, most)
    try:
        yield
    finally:
        for (number, clock, _), before in zip(clocks, earlier, strict=True):
            signal.setitimer(clock, 0)
            signal.signal(number, before)


def _state(folder: Path) -> dict:
    """Content, mode and time of everything in a folder, links not followed."""
    found = {}
    for place, folders, files in os.walk(folder):
        for name in folders + files:
            path = os.path.join(place, name)
            facts = os.lstat(path)
            text = b""
            if stat.S_ISREG(facts.st_mode):
                with open(path, "rb") as handle:
                    text = handle.read()
            found[path] = (facts.st_mode, facts.st_mtime_ns, facts.st_size, hashlib.md5(text).hexdigest())
    return found


# The season before it is spoilt.


def _write(folder: Path, kind: str, rng):
    (folder / "season.toml").write_text('timezone = "Europe/Prague"\n[incubators.A]\nfiles = "setter*"\n', "utf-8")
    (folder / "sensors").mkdir()
    _log(folder / "sensors" / "setter.csv", rng)
    rows = [list(row) for row in ROWS]
    if kind == "xlsx":
        import openpyxl

        book = openpyxl.Workbook()
        sheet = book.active
        sheet.append(HEAD)
        for row in rows:
            sheet.append([_typed(cell) for cell in row])
        book.save(folder / "batches.xlsx")
    elif kind == "diary":
        (folder / "batches.txt").write_text(
            "1 March 2026 set 42 chicken eggs in A\n8.3. candled, 5 clear, 1 dead\n22/3 31 hatched, 5 dead in shell\n"
            "\n29 March set 48 eggs\n5 April candled: 4 clear\n19 April 36 chicks\n",
            "utf-8",
        )
    else:
        (folder / "batches.csv").write_text(_csv([HEAD, *rows]), "utf-8")
    if kind == "eggs":
        fates = ["hatched", "clear", "dead", "pipped", "", "dis", "day 14", "blood ring", "31"]
        lines = [["batch", "egg", "weight_g", "candle1", "outcome", "stage_day"]] + [
            ["A1", str(egg), f"{55 + egg % 9}.5", rng.choice(["ok", "clear", ""]), rng.choice(fates), ""]
            for egg in range(1, 43)
        ]
        (folder / "eggs.csv").write_text(_csv(lines), "utf-8")


def _log(path: Path, rng, days: int = 24, step: int = 120):
    start, lines = dt.datetime(2026, 3, 1, 17), ["time,temperature,humidity"]
    for number in range(days * 24 * 60 // step):
        warm = 37.6 + rng.gauss(0, 0.1) + (1.5 if 100 < number < 110 else 0)
        lines.append(f"{start + dt.timedelta(minutes=step * number)},{warm:.2f},{52 + rng.gauss(0, 2):.1f}")
    path.write_text("\n".join(lines) + "\n", "utf-8")


def _csv(rows, mark=","):
    return "\n".join(mark.join(row) for row in rows) + "\n"


def _typed(cell):
    if cell.isdigit():
        return int(cell)
    try:
        return dt.datetime.fromisoformat(cell)
    except ValueError:
        return cell


# Ways to spoil it.


def _any_file(folder, rng, endings=(".csv", ".txt", ".xlsx", ".toml")) -> Path | None:
    files = sorted(
        path for path in folder.rglob("*") if path.suffix in endings and path.is_file() and not path.is_symlink()
    )
    return rng.choice(files) if files else None


def _text_file(folder, rng):
    return _any_file(folder, rng, (".csv", ".txt"))


def _cells_of(path):
    lines = path.read_bytes().decode("utf-8", "replace").split("\n")
    return [line.split(",") for line in lines if line]


def _flips(folder, rng):
    path = _any_file(folder, rng)
    raw = bytearray(path.read_bytes())
    for _ in range(rng.choice([1, 5, 60])):
        if raw:
            raw[rng.randrange(len(raw))] = rng.randrange(256)
    path.write_bytes(bytes(raw))


def _cut(folder, rng):
    path = _any_file(folder, rng)
    raw = path.read_bytes()
    path.write_bytes(raw[: rng.randrange(len(raw) + 1)] if rng.random() < 0.5 else raw[rng.randrange(len(raw) + 1) :])


def _encoding(folder, rng):
    path, page = _any_file(folder, rng, (".csv", ".txt", ".toml")), rng.choice(PAGES)
    text = path.read_bytes().decode("utf-8", "replace")
    for name, word in zip(("batch", "eggs_set", "hatched"), WORDS.get(page, ()), strict=False):
        text = text.replace(name, word, 1)
    path.write_bytes(text.encode(page, "replace"))


def _number(folder, rng):
    path = _text_file(folder, rng)
    rows = _cells_of(path)
    for _ in range(rng.choice([1, 3, 30])):
        row = rng.choice(rows)
        row[rng.randrange(len(row))] = rng.choice(NUMBERS)
    path.write_text(_csv(rows), "utf-8")


def _date(folder, rng):
    path = _text_file(folder, rng)
    rows = _cells_of(path)
    for _ in range(rng.choice([1, 1, 4])):
        row = rng.choice(rows)
        dated = [place for place, cell in enumerate(row) if "-" in cell] or range(len(row))
        row[rng.choice(dated)] = rng.choice(DATES)
    path.write_text(_csv(rows), "utf-8")


def _all_words(folder, rng):
    path = _text_file(folder, rng)
    rows = _cells_of(path)
    place = rng.randrange(max(map(len, rows)))
    for row in rows[1:]:
        if place < len(row):
            row[place] = rng.choice(["many", "ok", "?", "see book", "n/a", "some 5", "x" * 3000, "𝟙𝟚", "\u200b"])
    path.write_text(_csv(rows), "utf-8")


def _columns(folder, rng):
    path = _text_file(folder, rng)
    rows = _cells_of(path)[:60]
    count = rng.choice([190, 500, 500, 3000])
    kind = rng.choice(["", "c", "eggs_set", "temperature"])
    for number, row in enumerate(rows):
        row += [f"{kind}{place if kind == 'c' else ''}" if not number else str(place % 50) for place in range(count)]
    path.write_text(_csv(rows), "utf-8")


def _rows_moved(folder, rng):
    path = _text_file(folder, rng)
    rows = _cells_of(path)
    what = rng.randrange(6)
    if what == 0:
        rng.shuffle(rows)
    elif what == 1:
        rows += rows
    elif what == 2:
        rows = [row[::-1] for row in rows]
    elif what == 3:
        rows = [[cell for place, cell in enumerate(row) if place != 2] for row in rows]
    elif what == 4:
        rows = rows[1:]
    else:
        rows = [list(column) for column in zip(*rows, strict=False)][:190]
    path.write_text(_csv(rows, rng.choice([",", ";", "\t", "|"])), "utf-8")


def _marks(folder, rng):
    path = _text_file(folder, rng)
    text = path.read_bytes().decode("utf-8", "replace")
    at = rng.randrange(len(text) + 1)
    mark = rng.choice(
        [
            '"',
            "\0",
            "\r",
            "\x1a",
            "\u2028",
            '"""\n',
            "\x0c",
            "\ufffe",
            "\ud7ff",
            "," * 300,
            "\n" * 2000,
            "x" * 100_000,
            "\x85",
            "'",
            ";" * 50,
        ]
    )
    path.write_bytes((text[:at] + mark + text[at:]).encode())


def _empty(folder, rng):
    nothing = [b"", b"\n", b"\xff\xfe", b"\xef\xbb\xbf", b" ", b"PK\x03\x04", b"\0" * 900]
    _any_file(folder, rng).write_bytes(rng.choice(nothing))


def _links(folder, rng):
    place = rng.choice([folder, folder / "sensors"])
    target = rng.choice(
        [
            "..",
            ".",
            "loop.csv",
            "nothing.csv",
            "/dev/null",
            "/dev/zero",
            "/dev/full",
            "../batches.csv",
            "/proc/self/mem",
            "setter.csv",
        ]
    )
    os.symlink(target, place / rng.choice(["loop.csv", "batches.csv.lnk.csv", "sensors2", "more.xlsx", "a.txt"]))


def _specials(folder, rng):
    place = rng.choice([folder, folder / "sensors"])
    name = rng.choice(["pipe.csv", "batches.xlsx.xlsx", "x.txt", "more.toml", "answers.toml", "pipe.zip"])
    if (place / name).exists():
        return
    if rng.random() < 0.6:
        os.mkfifo(place / name)
    else:
        (place / name).mkdir()


def _pipe_for_settings(folder, rng):
    (folder / "season.toml").unlink()
    rng.choice([os.mkfifo, os.mkdir])(folder / rng.choice(["season.toml", "answers.toml"]))


def _settings(folder, rng):
    name = rng.choice(["season.toml"] * 4 + ["answers.toml"])
    if (folder / name).exists() and not (folder / name).is_file():
        return  # to write into a pipe would be to wait for its reader
    (folder / name).write_text(rng.choice(SETTINGS) + "\n", "utf-8")


def _name(folder, rng):
    path = _text_file(folder, rng)
    name = rng.choice([*NAMES, b"b\xff\xfe.csv"])
    if isinstance(name, bytes):
        name = os.fsdecode(name)
    path.rename(path.with_name(name))


def _many_files(folder, rng):
    count = rng.choice([30, 30, 30, 900]) if rng.random() < 0.2 else 8
    for number in range(count):
        day = f"2026-03-{1 + number % 28:02d}"
        (folder / "sensors" / f"log{number}.csv").write_text(
            f"time,temp\n{day} 10:00,37.{number % 10}\n{day} 11:00,37.5\n"
        )


def _modes(folder, rng):
    _any_file(folder, rng).chmod(rng.choice([0, 0o444, 0o200, 0o777]))


def _workbook(folder, rng):
    import openpyxl

    book = openpyxl.Workbook()
    sheet = book.active
    sheet.title = rng.choice(["batches", "x" * 31, "'=1", "Sheet 1"])
    sheet.append(HEAD)
    odd = [
        True,
        dt.time(3, 4),
        dt.timedelta(days=4000),
        dt.datetime(9999, 12, 31),
        dt.date(1900, 1, 1),
        "#REF!",
        "=1/0",
        1e300,
        -1e300,
        0.1,
        "9" * 5000,
        "?",
        None,
        "",
        "2026-03-01",
        46082,
        1e15,
        dt.datetime(1900, 1, 1),
        99999999,
        "x" * 30000,
    ]
    for row in ROWS:
        cells = [_typed(cell) for cell in row]
        for _ in range(rng.choice([1, 2, 6])):
            cells[rng.randrange(len(cells))] = rng.choice(odd)
        sheet.append(cells)
    if rng.random() < 0.3:
        sheet.merge_cells("A1:C4")
    if rng.random() < 0.2:
        sheet["XFD1048576"] = 1
    book.save(folder / rng.choice(["batches.xlsx", "sensors/setter.xlsx"]))


WAYS = [
    _flips,
    _cut,
    _encoding,
    _encoding,
    _number,
    _number,
    _number,
    _date,
    _date,
    _all_words,
    _columns,
    _rows_moved,
    _marks,
    _empty,
    _links,
    _specials,
    _pipe_for_settings,
    _settings,
    _settings,
    _name,
    _many_files,
    _modes,
    _workbook,
    _workbook,
]
