"""The cautions that every surface shows, in the same words: tasks in ``reference/cautions.csv``, words in `say`."""

from __future__ import annotations

import html

from hatchkit import reference
from hatchkit.say import text


def cautions(*tasks: str, language: str = "en") -> list[str]:
    """The sentences of caution for one or more tasks.

    Parameters
    ----------
    *tasks : str
        machine, opening_eggs, killing, disease, hatch, storage or cleaning.
    language : str

    Raises
    ------
    KeyError
        For a task that the table does not have: a caution must never be missing in silence.
    """
    table = reference.load("cautions")
    unknown = set(tasks) - set(table["task"])
    if unknown:
        raise KeyError(f"no cautions for {sorted(unknown)}; there are {sorted(set(table['task']))}")
    return [
        text(f"caution_{task}_{order}", {}, language)
        for task in tasks
        for order in sorted(table.loc[table["task"] == task, "order"])
    ]


class CautionBox:
    """Cautions as a framed list in a notebook or report, and as plain lines elsewhere."""

    def __init__(self, *tasks: str):
        self.sentences = cautions(*tasks)

    def _repr_html_(self) -> str:
        items = "".join(f"<li>{html.escape(sentence)}</li>" for sentence in self.sentences)
        return f'<aside class="caution"><strong>Take care</strong><ul>{items}</ul></aside>'

    def __repr__(self) -> str:
        return "\n".join(f"Take care: {sentence}" for sentence in self.sentences)
