"""The answer sheet of a case as a form: a workbook with lists to choose from, and boxes to tick for the statements.

Column A holds the keys by which `answer_sheets` finds the answers again whatever the language; columns B and C are the
student's.
"""

from io import BytesIO
from pathlib import Path

from hatchkit.records.writing import write_whole
from hatchkit.say import text
from hatchkit.simulate.habits import FIXED, without_times
from hatchkit.teach import case_words

FIELDS = ("stage", "cause", "second_cause", "eggs_lost_low", "eggs_lost_high")
TICK = "x"


def write_form(path, *, case, batch, eggs, statements, language="en") -> Path:
    """Write the blank form of one case.

    Parameters
    ----------
    path : path
        The .xlsx file.
    case, batch : str
    eggs : int
        Eggs set in the batch; the bounds of the two numbers.
    statements : list of (str, dict)
        Code and numbers of each statement, in order; they get the letters A, B, ...
    language : str
        One of `case_words.LANGUAGES`.
    """
    from openpyxl import Workbook
    from openpyxl.styles import Alignment, Border, Font, PatternFill, Side

    book = Workbook()
    sheet, lists = book.active, book.create_sheet("lists")
    sheet.title = "answer"
    lists.sheet_state = "hidden"
    said = {
        name: text(f"teach_form_{name}", {}, language)
        for name in ("title", "intro", "case", "batch", *FIELDS, "facts", "why")
    }
    rows = [
        ("", said["title"], ""),
        ("", said["intro"], ""),
        ("case", said["case"], case),
        ("batch", said["batch"], batch),
        *[(name, said[name], "") for name in FIELDS],
        ("why", said["why"], ""),
        ("", said["facts"], ""),
        *[
            (letter, case_words.statement(code, numbers, language), "")
            for letter, (code, numbers) in zip(case_words.LETTERS, statements, strict=False)
        ],
    ]
    for row in rows:
        sheet.append(row)
    edge = Border(*[Side(style="thin")] * 4)
    for cells in sheet.iter_rows(min_row=1, max_row=len(rows)):
        cells[0].font = Font(color="808080", size=8)
        cells[1].alignment = Alignment(wrap_text=True, vertical="center")
        if cells[0].value and cells[0].value not in ("case", "batch"):
            cells[2].border, cells[2].fill = edge, PatternFill("solid", fgColor="FFF8DC")
            cells[2].alignment = Alignment(wrap_text=True, vertical="center")
    for place in (1, len(FIELDS) + 6):
        sheet.cell(place, 2).font = Font(bold=True, size=12)
    for column, wide in zip("ABC", (14, 78, 40), strict=True):
        sheet.column_dimensions[column].width = wide
    _lists(sheet, lists, eggs=eggs, first=len(FIELDS) + 7, last=len(rows), language=language)
    sheet.page_setup.fitToWidth, sheet.page_setup.fitToHeight = 1, 0
    sheet.sheet_properties.pageSetUpPr.fitToPage = True
    book.properties.creator = book.properties.lastModifiedBy = ""
    book.properties.created = book.properties.modified = FIXED
    buffer = BytesIO()
    book.save(buffer)
    return write_whole(path, without_times(buffer.getvalue()))


def _lists(sheet, lists, *, eggs, first, last, language):
    from openpyxl.worksheet.datavalidation import DataValidation

    stages = [case_words.stage_words(stage, language) for stage in case_words.STAGES]
    causes = [case_words.cause_words(cause, language) for cause in case_words.causes()]
    for column, choices in enumerate((stages, causes), start=1):
        for place, words in enumerate(choices, start=1):
            lists.cell(place, column, words)
    row = {name: place for place, name in enumerate(FIELDS, start=5)}
    for cells, formula in (
        (f"C{row['stage']}", f"lists!$A$1:$A${len(stages)}"),
        (f"C{row['cause']}:C{row['second_cause']}", f"lists!$B$1:$B${len(causes)}"),
        (f"C{first}:C{last}", f'"{TICK}"'),
    ):
        rule = DataValidation(type="list", formula1=formula, allow_blank=True)
        sheet.add_data_validation(rule)
        rule.add(cells)
    numbers = DataValidation(type="decimal", operator="between", formula1="0", formula2=str(eggs), allow_blank=True)
    numbers.error = f"0 - {eggs}"
    sheet.add_data_validation(numbers)
    numbers.add(f"C{row['eggs_lost_low']}:C{row['eggs_lost_high']}")
