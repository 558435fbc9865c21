"""The answer form in a notebook: lists to choose from, two numbers, boxes to tick, and Keep."""

from __future__ import annotations

import html
from pathlib import Path

import ipywidgets
import pandas as pd

from hatchkit.say import text
from hatchkit.teach import case_words
from hatchkit.teach.answer_sheets import SHEET_COLUMNS


class AnswerForm(ipywidgets.VBox):
    """The form of one case.

    Parameters
    ----------
    case, batch : str
    eggs : int
        Eggs set in the batch.
    statements : list of (str, dict)
        Code and numbers of each statement.
    path : path
        CSV file that Keep writes; an answer that lies there is not written over but numbered on.
    language : str

    Attributes
    ----------
    fields : dict
        stage, cause, second_cause (Dropdown), eggs_lost (FloatRangeSlider), why (Textarea).
    boxes : dict
        Letter -> Checkbox of a statement.
    keep_button : Button
    """

    def __init__(self, case, batch, eggs, statements, path="answer.csv", language="en"):
        self.case, self.batch, self.path, self.language = str(case), str(batch), Path(path), language

        def said(name):
            return text(f"teach_form_{name}", {}, language)

        wide = ipywidgets.Layout(width="44em")
        stages = [("", "")] + [(case_words.stage_words(stage, language), stage) for stage in case_words.STAGES]
        causes = [("", "")] + [(case_words.cause_words(cause, language), cause) for cause in case_words.causes()]
        self.fields = {
            name: ipywidgets.Dropdown(
                options=options, description=said(name), layout=wide, style={"description_width": "22em"}
            )
            for name, options in (("stage", stages), ("cause", causes), ("second_cause", causes))
        }
        self.fields["eggs_lost"] = ipywidgets.IntRangeSlider(
            value=(0, 0),
            min=0,
            max=int(eggs),
            description=said("eggs_lost_low").split(":")[0],
            layout=wide,
            style={"description_width": "22em"},
        )
        self.boxes = {
            letter: ipywidgets.Checkbox(
                description=case_words.statement(code, numbers, language),
                indent=False,
                layout=ipywidgets.Layout(width="auto"),
            )
            for letter, (code, numbers) in zip(case_words.LETTERS, statements, strict=False)
        }
        self.fields["why"] = ipywidgets.Textarea(
            description=said("why"), layout=wide, style={"description_width": "22em"}
        )
        self.keep_button = ipywidgets.Button(description=said("keep"), button_style="primary")
        self.keep_button.on_click(lambda _: self.keep())
        self.message = ipywidgets.HTML()
        head = ipywidgets.HTML(f"<b>{html.escape(said('facts'))}</b>")
        super().__init__(
            [
                *(self.fields[name] for name in ("stage", "cause", "second_cause", "eggs_lost")),
                head,
                *self.boxes.values(),
                self.fields["why"],
                self.keep_button,
                self.message,
            ]
        )

    def answer(self) -> dict:
        """The answer as a row of an answer sheet."""
        low, high = self.fields["eggs_lost"].value
        ticked = " ".join(letter for letter, box in self.boxes.items() if box.value)
        row = {"case": self.case, "batch": self.batch, "eggs_lost_low": low, "eggs_lost_high": high, "facts": ticked}
        return row | {name: self.fields[name].value for name in ("stage", "cause", "second_cause", "why")}

    def keep(self) -> Path:
        """Write the answer to a new file beside earlier ones; returns it."""
        path, number = self.path, 2
        while path.exists():
            path, number = self.path.with_stem(f"{self.path.stem}_{number}"), number + 1
        pd.DataFrame([self.answer()], columns=list(SHEET_COLUMNS)).to_csv(path, index=False)
        self.message.value = html.escape(text("teach_form_kept", {"file": path.name}, self.language))
        return path
