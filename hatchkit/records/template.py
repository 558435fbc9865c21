"""The blank workbook to fill in: the keeper's words as headings, choices to pick, what is rarely needed folded away."""

from __future__ import annotations

import io

from hatchkit import reference
from hatchkit.records.own_sheet import COLUMNS, headings
from hatchkit.say import text

WORKBOOK = "batches.xlsx"
#: What is seen of the table of batches at first; all else is grouped beside it and opens with a click.
AT_FIRST_SIGHT = (
    "batch",
    "species",
    "incubator",
    "set_at",
    "eggs_set",
    "candle1_at",
    "clear1",
    "dead1",
    "transfer_at",
    "dead3",
    "taken_off_at",
    "hatched",
    "pipped_dead",
    "dead_in_shell",
    "notes",
)
_LOOK = ("pick_alive", "pick_clear", "pick_dead", "pick_removed")
_END = ("hatched", "culled", "pipped_dead", "dead", "infertile", "removed")
_CHOICES = {
    ("batches", "posted"): ("value_yes", "value_no"),
    ("batches", "broody"): ("value_yes", "value_no"),
    ("eggs", "candle1"): _LOOK,
    ("eggs", "candle2"): _LOOK,
    ("eggs", "transfer"): _LOOK,
    ("eggs", "outcome"): tuple(f"pick_end_{name}" for name in _END),
    ("candlings", "name"): ("pick_candling", "pick_transfer", "pick_hatch"),
}
_LAST_ROW = 1000  # drop-downs and formats reach to here
#: The candlings sheet is read into looks; its columns are described here, as the table of looks has others.
_CANDLINGS = {
    "looked_at": ("", "time"),
    "clear": ("eggs", "count"),
    "dead": ("eggs", "count"),
    "removed": ("eggs", "count"),
    "left": ("eggs", "count"),
}


def columns_of(sheet: str) -> list[tuple[str, str, str]]:
    """(column, unit, kind) of a sheet of the blank workbook."""
    facts = reference.load("columns_records").fillna("")
    known = {row.column: (row.unit, row.kind) for row in facts[facts["table"] == sheet].itertuples()}
    known = _CANDLINGS if sheet == "candlings" else known
    return [(column, *known.get(column, ("", "text"))) for column in COLUMNS[sheet]]


def choices_of(sheet: str, column: str, language: str = "en") -> list[str]:
    """The values of a column that takes one of a few, in words; empty for any other column."""
    codes = _CHOICES.get((sheet, column), ())
    if column == "species":
        codes = [f"species_{name}" for name in reference.species_table().index]
    elif column == "signs":
        signs = reference.load("signs")
        codes = [f"sign_{sign}" for sign in signs.loc[signs["kind"] == "seen", "sign"]]
    return [text(code, {}, language) for code in codes]


def workbook_bytes(language: str = "en") -> bytes:
    """The blank workbook as an .xlsx file.

    Parameters
    ----------
    language : {"en", "de", "fr", "es"}
        Of sheets, headings, choices and explanations; each is read again as it is (`records.own_sheet`).
    """
    import openpyxl

    book = openpyxl.Workbook()
    book.remove(book.active)
    for sheet in COLUMNS:
        _add_sheet(book, sheet, language)
    _add_explanations(book, language)
    out = io.BytesIO()
    book.save(out)
    return out.getvalue()


def _add_sheet(book, sheet: str, language: str) -> None:
    from openpyxl.styles import Alignment, Font
    from openpyxl.utils import get_column_letter
    from openpyxl.worksheet.properties import PageSetupProperties

    page = book.create_sheet(text(f"sheet_{sheet}", {}, language))
    named = headings(sheet, language)
    for place, (column, _, kind) in enumerate(columns_of(sheet), 1):
        head = page.cell(1, place, named[column])
        head.font, head.alignment = Font(bold=True), Alignment(wrap_text=True, vertical="top")
        letter = get_column_letter(place)
        size = page.column_dimensions[letter]
        size.width = 18 if kind == "time" else 14 if kind == "text" else 12
        if sheet == "batches" and column not in AT_FIRST_SIGHT:
            size.outlineLevel, size.hidden = 1, True
        if kind == "time":
            for row in range(2, 202):
                page.cell(row, place).number_format = "yyyy-mm-dd hh:mm"
        _add_choices(page, letter, column, choices_of(sheet, column, language), kind, language)
    page.row_dimensions[1].height = 46
    page.sheet_properties.outlinePr.summaryRight = False  # the sign to open a group stands before it
    page.freeze_panes = "B2"
    page.print_title_rows = "1:1"
    page.page_setup.orientation = "landscape"
    page.page_setup.fitToHeight = 0
    page.sheet_properties.pageSetUpPr = PageSetupProperties(fitToPage=True)


def _add_choices(page, letter: str, column: str, choices: list[str], kind: str, language: str) -> None:
    """A drop-down for one of a few values, a gentle check for counts and measures."""
    from openpyxl.worksheet.datavalidation import DataValidation

    if column == "signs":
        return  # too many for a list in the rule: `_add_signs`
    if choices:
        rule = DataValidation(type="list", formula1='"' + ",".join(choices) + '"', allow_blank=True)
        rule.error = text("fill_choose", {}, language)
    elif kind in ("count", "number"):
        rule = DataValidation(
            type="whole" if kind == "count" else "decimal",
            operator="greaterThanOrEqual",
            formula1="0",
            allow_blank=True,
        )
        rule.error = text("fill_number", {}, language)
    else:
        return
    rule.errorStyle = "warning"  # asks, but lets a person write what they must
    rule.add(f"{letter}2:{letter}{_LAST_ROW}")
    page.add_data_validation(rule)


def _add_explanations(book, language: str) -> None:
    from openpyxl.styles import Alignment, Font

    def say(code, **facts):
        return text(code, facts, language)

    page = book.create_sheet(say("sheet_fill"))
    page.append([say("fill_title")])
    page.append([say("fill_how")])
    page.append([say("fill_folded")])
    page.append([say(f"fill_head_{name}") for name in ("sheet", "column", "what", "unit", "one_of")])
    head = page.max_row
    for sheet in COLUMNS:
        page.append([say(f"sheet_{sheet}"), "", say(f"fill_{sheet}")])
        named = headings(sheet, language)
        for column, unit, kind in columns_of(sheet):
            code = "time" if kind == "time" else unit
            page.append(
                [
                    say(f"sheet_{sheet}"),
                    named[column],
                    say(f"means_{sheet}_{column}"),
                    say(f"unit_{code}") if code else "",
                    ", ".join(choices_of(sheet, column, language)),
                ]
            )
    for cell in (*page[1], *page[head]):
        cell.font = Font(bold=True)
    for letter, width in zip("ABCDE", (12, 24, 80, 26, 50), strict=True):
        page.column_dimensions[letter].width = width
    for row in page.iter_rows(min_row=head):
        for cell in row:
            cell.alignment = Alignment(wrap_text=True, vertical="top")
    page.freeze_panes = page.cell(head + 1, 1)
    book.active = 0
    _add_signs(book, page, language)


def _add_signs(book, page, language: str) -> None:
    """A drop-down of the signs; its list stands beside the explanations, as it is too long for the rule itself.

    The rule only offers: several signs, or a person's own words, may be written into one cell.
    """
    from openpyxl.utils import get_column_letter, quote_sheetname
    from openpyxl.worksheet.datavalidation import DataValidation

    told = choices_of("batches", "signs", language)
    for row, name in enumerate([text("col_batches_signs", {}, language), *told], 4):
        page.cell(row, 7, name)
    letter = get_column_letter(COLUMNS["batches"].index("signs") + 1)
    rule = DataValidation(
        type="list", formula1=f"{quote_sheetname(page.title)}!$G$5:$G${4 + len(told)}", allow_blank=True
    )
    rule.showErrorMessage = False
    rule.add(f"{letter}2:{letter}{_LAST_ROW}")
    book.worksheets[0].add_data_validation(rule)
