"""The reading of a sheet to confirm with the mouse: a drop-down per column, the eggs tried at once, and Keep."""

import html

import ipywidgets

from hatchkit.records.answers import keep_answers
from hatchkit.records.check import ledger_of, questions_of, sheets_read
from hatchkit.say import text
from hatchkit.say.sheets import choice_line, heading_words, ledger_words, question_words, sheet_words
from hatchkit.say.speak import reading_words
from hatchkit.widgets.asking import retry
from hatchkit.words.sentences import sentences

#: Rows of the ledger shown under the drop-downs.
MOST_ROWS = 3


class ReadingForm(ipywidgets.VBox):
    """Drop-downs for what is open, the ledger under them, and a button that keeps the choices.

    Attributes
    ----------
    choices : dict
        (file, sheet, heading) -> Dropdown.
    keep_button : Button
    eggs, message : HTML
        Whether the eggs add up with the choices, and what was kept where.
    answers : dict
        What was chosen so far.
    """

    def __init__(self, season, *, again=retry, keep=keep_answers, language: str = "en"):
        self.season, self.again, self.keep, self.language = season, again, keep, language
        self.answers: dict = {}
        self.choices: dict = {}
        asked = [self._question(question) for question in questions_of(season) if question["choices"]]
        others = [
            box
            for sheet in sheets_read(season)
            for column in sheet.columns
            if column["runner_up"] and (box := self._column(sheet, column)) is not None
        ]
        self.eggs, self.message = ipywidgets.HTML(), ipywidgets.HTML()
        self.keep_button = ipywidgets.Button(
            description=text("form_keep", {}, language),
            button_style="primary",
            tooltip=text("form_keep_why", {}, language),
        )
        self.keep_button.on_click(lambda _: self.keep_all())
        folded = []
        if others:
            folded = [ipywidgets.Accordion([ipywidgets.VBox(others)], titles=(text("form_others", {}, language),))]
        super().__init__([*asked, *folded, self.eggs, self.keep_button, self.message])
        self._show(season)

    def _question(self, question: dict):
        words = question_words(question, self.language)
        key = (question["file"], question["sheet"], question["heading"])
        options = [
            (choice_line(question["code"], choice, question["taken"], self.language), choice["taken"])
            for choice in question["choices"]
        ]
        label = ipywidgets.HTML(f"<p>{html.escape(words['ask'])} {html.escape(words['rows'])}</p>")
        box = self._dropdown(key, self._label(question), options, question["taken"])
        # What is shown now is kept as well: who presses Keep has seen it.
        if question["taken"]:
            self.answers[key] = question["taken"]
        return ipywidgets.VBox([label, box])

    def _label(self, question: dict) -> str:
        heading = question["heading"]
        if heading and not heading.startswith("?"):
            return heading
        return text("form_whole", dict(code=question["code"]), self.language)

    def _column(self, sheet, column: dict):
        key = (sheet.file, sheet.sheets[0], column["heading"])
        if key in self.choices or not column["heading"]:
            return None
        keys = dict.fromkeys([column["taken"], column["runner_up"], "ignore"])
        options = [(reading_words(taken, self.language), taken) for taken in keys]
        name = f"{heading_words(column, self.language)} ({sheet_words(sheet.file, sheet.sheets, self.language)})"
        return self._dropdown(key, name, options, column["taken"], also=sheet.sheets[1:])

    def _dropdown(self, key, label: str, options, value, also=()):
        """A drop-down whose description is its label, for keyboard and screen reader."""
        box = ipywidgets.Dropdown(
            options=options,
            value=value if value in [taken for _, taken in options] else None,
            description=f"{label}:",
            style={"description_width": "initial"},
            layout={"width": "auto", "max_width": "100%"},
        )
        box.observe(lambda change: self._chosen(key, change["new"], also), names="value")
        self.choices[key] = box
        return box

    def _chosen(self, key, taken, also=()) -> None:
        if taken is None:
            return
        for sheet in (key[1], *also):
            self.answers[key[0], sheet, key[2]] = taken
        self.message.value = ""
        self._show(self.again(self.season, self.answers))

    def _show(self, season) -> None:
        ledger = ledger_of(season)
        lines = [text("ledger_total", dict(rows=ledger.adds_up, of=ledger.of), self.language)] if ledger.of else []
        lines += [ledger_words(row, self.language) for row in ledger.rows[:MOST_ROWS]]
        self.eggs.value = _spoken(lines)

    def keep_all(self) -> None:
        """Keep the choices; the next run asks no more."""
        if not self.answers:
            self.message.value = _spoken([text("form_nothing_chosen", {}, self.language)])
            return
        path = self.keep(self.season.folder, self.answers, self.language)
        told = [
            text("ask_kept", dict(answers=len(self.answers), path=str(path)), self.language),
            text("form_again", {}, self.language),
        ]
        self.message.value = _spoken(told)


def _spoken(lines) -> str:
    """Lines that a screen reader says when they change."""
    return f'<div role="status" aria-live="polite">{"<br>".join(html.escape(line) for line in lines)}</div>'


def confirm_reading(season, *, again=retry, keep=keep_answers, language: str = "en"):
    """What stays open in the reading of the season's sheets, to be confirmed or changed.

    Parameters
    ----------
    season : Season
    again : callable
        (season, answers) -> season read with them.
    keep : callable
        (folder, answers) -> path.
    language : str

    Returns
    -------
    ReadingForm or Sentences
        A sentence where there is nothing to choose.
    """
    open_columns = any(column["runner_up"] for sheet in sheets_read(season) for column in sheet.columns)
    if not questions_of(season) and not open_columns:
        return sentences(text("ask_nothing", {}, language))
    return ReadingForm(season, again=again, keep=keep, language=language)
