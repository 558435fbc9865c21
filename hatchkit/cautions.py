"""The cautions that every surface shows, in the same words (``reference/cautions.csv``)."""

from __future__ import annotations

import html

from hatchkit import reference


def cautions(*tasks: str) -> list[str]:
    """The sentences of caution for one or more tasks.

    Parameters
    ----------
    *tasks : str
        machine, opening_eggs, killing, disease, hatch, storage or cleaning.

    Raises
    ------
    KeyError
        For a task that the table does not have: a caution must never be missing in silence.
    """
    table = reference.load("cautions")
    unknown = set(tasks) - set(table["task"])
    if unknown:
        raise KeyError(f"no cautions for {sorted(unknown)}; there are {sorted(set(table['task']))}")
    return [sentence for task in tasks
            for sentence in table.loc[table["task"] == task].sort_values("order")["caution"]]


class CautionBox:
    """Cautions as a framed list in a notebook or report, and as plain lines elsewhere."""

    def __init__(self, *tasks: str):
        self.sentences = cautions(*tasks)

    def _repr_html_(self) -> str:
        items = "".join(f"<li>{html.escape(sentence)}</li>" for sentence in self.sentences)
        return f'<aside class="caution"><strong>Take care</strong><ul>{items}</ul></aside>'

    def __repr__(self) -> str:
        return "\n".join(f"Take care: {sentence}" for sentence in self.sentences)
