"""What machine, weights and clock say of one batch: the climate page of the poor-hatch report."""

from __future__ import annotations

from dataclasses import dataclass

import pandas as pd

from hatchkit.advice.poor_hatch import one_batch
from hatchkit.problems import HatchkitError


@dataclass(frozen=True)
class ClimatePage:
    """Tables behind one batch's climate page; what was not kept is None or empty.

    Attributes
    ----------
    batch, timezone : str
    timeline : Timeline or None
        Air and egg of the batch's machine while the batch was in.
    excursions, clock, water : DataFrame
        The batch's rows of ``find_excursions``, ``hatch_clock`` and ``batch_water_loss``.
    has_tray : bool
        Whether eggs have a place on a tray.
    tray : DataFrame
        ``losses.tray.clustering`` of the batch.
    """

    batch: str
    timezone: str
    timeline: object
    excursions: pd.DataFrame
    clock: pd.DataFrame
    water: pd.DataFrame
    has_tray: bool
    tray: pd.DataFrame

    def words(self, *, unit="C") -> str:
        """Excursions worth telling, hatch clock, water loss and tray, a line each."""
        from hatchkit.climate import words as climate_words
        from hatchkit.losses.words import tray_words

        lines = ["No temperature was logged for this batch, so nothing is known of heat or cold."]
        if self.timeline is not None:
            told = self.excursions[self.excursions["notable"].astype(bool)]
            lines = [climate_words.excursions_words(self.excursions, unit=unit)]
            lines += [
                climate_words.excursion_words(row, timezone=self.timezone, unit=unit)
                for row in told.head(2).to_dict("records")
            ]
        lines += [
            climate_words.clock_words(row, timezone=self.timezone, unit=unit) for row in self.clock.to_dict("records")
        ]
        lines += [climate_words.water_words(row) for row in self.water.to_dict("records")]
        lines.append(
            tray_words(self.tray)
            if self.has_tray and len(self.tray)
            else "Where on the tray the eggs lay was not kept."
            if not self.has_tray
            else "Too few eggs died on the tray for a pattern to be asked about."
        )
        return "\n".join(lines)


def climate_page(season, batch) -> ClimatePage:
    """Tables of the climate page of one batch (see `ClimatePage`)."""
    from hatchkit.climate.clock import hatch_clock
    from hatchkit.climate.excursions import find_excursions
    from hatchkit.climate.water_loss import batch_water_loss
    from hatchkit.losses.tray import clustering, tray_map

    alone = one_batch(season, batch)
    has_tray = len(tray_map(season, batch)) > 0
    found = find_excursions(alone)
    return ClimatePage(
        batch=batch,
        timezone=season.timezone,
        timeline=_timeline(alone, batch, found),
        excursions=found,
        clock=hatch_clock(alone),
        water=batch_water_loss(alone),
        has_tray=has_tray,
        tray=clustering(season, batch) if has_tray else pd.DataFrame(),
    )


def _timeline(alone, batch, found):
    from hatchkit.climate.machine_air import incubator_of
    from hatchkit.climate.timeline import incubator_timeline
    from hatchkit.climate.track import batch_track

    try:
        if batch_track(alone, batch).empty:
            return None
        return incubator_timeline(alone, incubator_of(alone, alone.batches.iloc[0]), found=found)
    except HatchkitError:
        return None
