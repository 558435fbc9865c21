"""The batch to look at, chosen with the mouse: everything shown of it follows the choice."""

import ipywidgets

from hatchkit.findings.batch import poor_hatch
from hatchkit.findings.finding import Findings
from hatchkit.say import text
from hatchkit.widgets.shown import Shown, answer, show


class _Live(ipywidgets.HTML):
    """HTML that is redrawn when another batch is chosen; a stored notebook keeps what was shown last."""

    def __init__(self, make):
        super().__init__()
        self._make = make
        self.redraw()

    def redraw(self) -> None:
        """Make the HTML anew."""
        self.shown: Shown = self._make()
        self.value = self.shown._repr_html_()

    def _repr_mimebundle_(self, **kwargs):
        return _stored(super()._repr_mimebundle_(**kwargs), self.shown)


def _stored(bundle, shown: Shown):
    """A widget's bundle with the words and the picture, for where no widget can be drawn."""
    data = bundle[0] if isinstance(bundle, tuple) else bundle
    data |= {"text/plain": repr(shown), "text/html": shown._repr_html_()}
    return bundle


class BatchChoice(ipywidgets.VBox):
    """A drop-down of the season's batches, the answer on the chosen one beneath.

    Attributes
    ----------
    season : Season
    found : Findings
        On the batch that is chosen.
    choice : Dropdown
    """

    def __init__(self, season, batch: str = "", *, unit: str = "C"):
        self.season, self.unit = season, unit
        self.found: Findings = poor_hatch(season, batch, unit=unit)
        self._answer = _Live(lambda: answer(self.found))
        self._live: list[_Live] = [self._answer]
        names = season.batches["batch"].astype(str).drop_duplicates().tolist()
        self.choice = ipywidgets.Dropdown(
            options=[(self._name(name), name) for name in names],
            value=str(self.found.facts["batch"]),
            description=text("form_batch", {}, self.found.language),
            style={"description_width": "initial"},
            layout={"width": "auto", "max_width": "100%"},
        )
        self.choice.observe(lambda change: self._chosen(change["new"]), names="value")
        super().__init__([self.choice, self._answer])

    def _name(self, batch: str) -> str:
        from hatchkit.advice.poor_hatch import standing

        table = self.season.once(("advice", "standing"), lambda: standing(self.season))
        row = table[table["batch"].astype(str) == batch]
        if row.empty:
            return batch
        return text("form_batch_hatched", dict(row.iloc[0].to_dict(), batch=batch), self.found.language)

    def _chosen(self, batch: str) -> None:
        self.found = poor_hatch(self.season, batch, unit=self.unit)
        for live in self._live:
            live.redraw()

    def answer(self) -> _Live:
        """The answer in words alone."""
        self._live.append(_Live(lambda: answer(self.found, picture=False)))
        return self._live[-1]

    def show(self, question: str, *, more: bool = False) -> _Live:
        """The finding of one question on the chosen batch; where the records do not ask it, a sentence."""
        live = _Live(lambda: show(self.found[question], self.found, more=more))
        self._live.append(live)
        return live

    def _repr_mimebundle_(self, **kwargs):
        return _stored(super()._repr_mimebundle_(**kwargs), self._answer.shown)
