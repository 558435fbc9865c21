"""A new season folder: a workbook to fill in, season.toml with comments, a candling sheet to print."""

from __future__ import annotations

from html import escape
from pathlib import Path

from hatchkit import reference
from hatchkit.cautions import cautions
from hatchkit.outputs import SEALED, whole_file
from hatchkit.problems import HatchkitError

WORKBOOK, SETTINGS, CANDLING = "batches.xlsx", "season.toml", "candling-sheet.html"
_SHEETS = {"batches": "One row per batch: what went in, what each look found, what came out.",
           "eggs": "One row per egg, if you number your eggs. Optional.",
           "weights": "One row per weighing, of one egg or of a whole tray. Optional.",
           "candlings": "One row per look, if you candle more often than twice. Optional."}
_CANDLINGS = [("batch", "", "text", "Batch that was looked at"),
              ("looked_at", "", "time", "When, in your own wall clock"),
              ("name", "", "text", "candling, transfer or hatch; may stay blank"),
              ("clear", "eggs", "count", "Clears taken out at this look"),
              ("dead", "eggs", "count", "Dead embryos taken out at this look"),
              ("removed", "eggs", "count", "Eggs taken out for another reason at this look"),
              ("left", "eggs", "count", "Eggs that went back in; a check on the others"),
              ("notes", "", "text", "Anything else")]
_LAST_ROW = 1000  # drop-downs and formats reach to here


def start_folder(folder) -> list[Path]:
    """Write a blank workbook, season.toml and a candling sheet into a folder; nothing is ever overwritten.

    Parameters
    ----------
    folder : path
        Made if it is not there.

    Returns
    -------
    list of Path
        The files written; those that were there already are left as they are.

    Raises
    ------
    HatchkitError
        If the folder can't be made or written to.
    """
    folder, written = Path(folder), []
    try:
        (folder / "sensors").mkdir(parents=True, exist_ok=True)
        for name, make in ((WORKBOOK, _workbook_bytes), (SETTINGS, _settings_bytes), (CANDLING, _candling_bytes)):
            if not (folder / name).exists():
                with whole_file(folder / name, new=True) as part:
                    part.write_bytes(make())
                written.append(folder / name)
    except FileExistsError as error:
        raise HatchkitError(f"{error.filename} is in the way; hatchkit does not write over it.") from error
    except OSError as error:
        raise HatchkitError(f"{folder} can't be written to ({error.strerror}); choose another folder.") from error
    return written


def columns_of(sheet: str) -> list[tuple[str, str, str, str]]:
    """(column, unit, kind, meaning) of a sheet of the blank workbook."""
    if sheet == "candlings":
        return _CANDLINGS
    facts = reference.load("columns_records").fillna("")
    facts = facts[(facts["table"] == sheet) & ~facts["column"].isin(["file", "sheet", "sheet_row"])]
    rows = list(facts[["column", "unit", "kind", "meaning"]].itertuples(index=False, name=None))
    # The hatching year is worked out from the day of setting; the row is where the line stands.
    return [row for row in rows if not (sheet == "batches" and row[0] in ("row", "season"))]


def choices_of(sheet: str, column: str) -> list[str]:
    """The values of a column that takes one of a few; empty for any other column."""
    look = ["alive", "clear", "dead", "removed"]
    if column == "species":
        return list(reference.species_table().index)
    if sheet == "eggs" and column in ("candle1", "candle2", "transfer"):
        return look
    if sheet == "eggs" and column == "outcome":
        return ["hatched", "culled", "pipped_dead", "dead", "infertile", "removed"]
    if sheet == "candlings" and column == "name":
        return ["candling", "transfer", "hatch"]
    if column == "signs":
        signs = reference.load("signs")
        return list(signs.loc[signs["kind"] == "seen", "name"])
    return []


def _workbook_bytes() -> bytes:
    import io

    import openpyxl
    from openpyxl.styles import Alignment, Font
    from openpyxl.utils import get_column_letter

    book = openpyxl.Workbook()
    book.remove(book.active)
    for sheet in _SHEETS:
        page = book.create_sheet(sheet)
        for place, (column, _, kind, _) in enumerate(columns_of(sheet), 1):
            head = page.cell(1, place, column)
            head.font, head.alignment = Font(bold=True), Alignment(wrap_text=True, vertical="top")
            letter = get_column_letter(place)
            page.column_dimensions[letter].width = 18 if kind == "time" else 14 if kind == "text" else 11
            if kind == "time":
                for row in range(2, 202):
                    page.cell(row, place).number_format = "yyyy-mm-dd hh:mm"
            _add_choices(page, letter, column, choices_of(sheet, column), kind)
        page.freeze_panes = "B2"
        page.print_title_rows = "1:1"
        page.page_setup.orientation = "landscape"
        page.page_setup.fitToHeight = 0
        page.sheet_properties.pageSetUpPr = openpyxl.worksheet.properties.PageSetupProperties(fitToPage=True)
    _add_explanations(book)
    _add_signs(book)
    out = io.BytesIO()
    book.save(out)
    return out.getvalue()


def _add_choices(page, letter: str, column: str, choices: list[str], kind: str) -> None:
    """A drop-down for one of a few values, a gentle check for counts and measures."""
    from openpyxl.worksheet.datavalidation import DataValidation

    if column == "signs":
        return  # too many for a list in the rule: `_add_signs`
    if choices:
        rule = DataValidation(type="list", formula1='"' + ",".join(choices) + '"', allow_blank=True)
        rule.error = "Please choose one of the list."
    elif kind in ("count", "number"):
        rule = DataValidation(type="whole" if kind == "count" else "decimal", operator="greaterThanOrEqual",
                              formula1="0", allow_blank=True)
        rule.error = "A number from 0 up, or blank if it was not counted."
    else:
        return
    rule.errorStyle = "warning"  # asks, but lets a person write what they must
    rule.add(f"{letter}2:{letter}{_LAST_ROW}")
    page.add_data_validation(rule)


def _add_explanations(book) -> None:
    from openpyxl.styles import Alignment, Font

    page = book.create_sheet("how to fill in")
    page.append(["How to fill in this workbook (hatchkit)"])
    page.append(["Leave a cell blank if it was not counted; write 0 if it was counted and there was none. "
                 "Write the hour with each date if you know it: 2026-03-05 18:30."])
    page.append([])
    page.append(["Sheet", "Column", "What goes in", "Unit", "One of"])
    head = page.max_row
    for sheet, purpose in _SHEETS.items():
        page.append([sheet, "", purpose])
        for column, unit, kind, meaning in columns_of(sheet):
            unit = {"UTC": "date and hour, your own clock", "degC": "°C"}.get(unit, unit)
            unit = "date and hour, your own clock" if kind == "time" else unit
            page.append([sheet, column, meaning + ".", unit, ", ".join(choices_of(sheet, column))])
    for cell in (*page[1], *page[head]):
        cell.font = Font(bold=True)
    for letter, width in zip("ABCDE", (12, 18, 80, 26, 50), strict=True):
        page.column_dimensions[letter].width = width
    for row in page.iter_rows(min_row=head):
        for cell in row:
            cell.alignment = Alignment(wrap_text=True, vertical="top")
    page.freeze_panes = page.cell(head + 1, 1)
    book.active = 0


def _add_signs(book) -> None:
    """A drop-down of the signs; its list stands beside the explanations, as it is too long for the rule itself.

    The rule only offers: several signs, or a person's own words, may be written into one cell.
    """
    from openpyxl.utils import get_column_letter
    from openpyxl.worksheet.datavalidation import DataValidation

    page, told = book["how to fill in"], choices_of("batches", "signs")
    for row, name in enumerate(["Signs", *told], 4):
        page.cell(row, 7, name)
    letter = get_column_letter([column for column, *_ in columns_of("batches")].index("signs") + 1)
    rule = DataValidation(type="list", formula1=f"'how to fill in'!$G$5:$G${4 + len(told)}", allow_blank=True)
    rule.showErrorMessage = False
    rule.add(f"{letter}2:{letter}{_LAST_ROW}")
    book["batches"].add_data_validation(rule)


def _settings_bytes() -> bytes:
    species = ", ".join(reference.species_table().index)
    return _SETTINGS_TEXT.replace("{species}", species).encode("utf-8")


_SETTINGS_TEXT = '''# What hatchkit can't guess about this season. Take away the # in front of a line to use it.

title = "My season"

# The zone of your wall clock; readings and dates are turned into one time by it.
# timezone = "Europe/Rome"

# If all eggs are of one kind, or all in one incubator, the columns may stay blank.
# Species are: {species}.
# default_species = "chicken"
# default_incubator = "A"

# One section per incubator. Put its logs into the folder sensors.
# [incubators.A]
# files = ["sensors/a*.csv"]      # which logs belong to it
# air = "fan"                     # "fan" (moved by a fan) or "still"
# set_point_c = 37.5              # what the thermostat is set to, in °C
# probe_offset_c = -0.3           # added to the readings: what the probe shows too high, with a minus
# altitude_m = 200                # height above the sea, for humidity

# Logs: say it only if hatchkit asks.
# [sensors]
# temp_unit = "F"                 # "C", "F" or "K"
# day_first = true                # 04/05/2026 is 4 May

# Sheets: the same for dates that were typed as text.
# [sheets]
# day_first = true

# Your own headings, if they are not recognised: "your heading" = "column".
# [headers]
# "Eggs in" = "eggs_set"

# Your own figures for a kind of bird, based on a known one.
# [species.my_bantam]
# based_on = "chicken"
# incubation_days = 20
'''


def _candling_bytes() -> bytes:
    heads = ["Batch", "Date and hour", "Day", "Clear", "Dead", "Cracked, rotten or other", "Left in", "Notes"]
    widths = (12, 18, 7, 9, 9, 14, 9, 22)
    head = "".join(f'<th scope="col" style="width:{width}%">{escape(text)}</th>'
                   for text, width in zip(heads, widths, strict=True))
    rows = "\n".join("<tr>" + "<td></td>" * len(heads) + "</tr>" for _ in range(22))
    notes = "\n".join(f"<li>{escape(text)}</li>" for text in cautions("opening_eggs")[1:] + cautions("hatch")[:1])
    return _CANDLING_PAGE.format(sealed=SEALED, head=head, rows=rows, cautions=notes).encode("utf-8")


_CANDLING_PAGE = """<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
{sealed}
<title>Candling sheet</title>
<style>
@page {{ size: A4 landscape; margin: 12mm; }}
body {{ font: 14px/1.35 sans-serif; color: #000; background: #fff; margin: 1em; }}
table {{ border-collapse: collapse; width: 100%; table-layout: fixed; }}
th, td {{ border: 1px solid #000; padding: 3px 5px; text-align: left; }}
td {{ height: 22px; }}
</style>
</head>
<body>
<h1>Candling sheet</h1>
<p>Season: ____________________ &nbsp; Incubator: ____________________</p>
<table>
<thead><tr>{head}</tr></thead>
<tbody>
{rows}
</tbody>
</table>
<p>Clear: no sign of a germ. Dead: a blood ring, a dark mass that does not move, vessels gone pale.
Write 0 where you looked and found none; leave blank what you did not look for.
Copy the rows into the sheet "candlings" of batches.xlsx.</p>
<ul>
{cautions}
</ul>
</body>
</html>
"""
