"""The next set: how many eggs, which days and hours, and what to change first."""

from __future__ import annotations

from dataclasses import dataclass

import pandas as pd

from hatchkit import reference
from hatchkit.advice import dates
from hatchkit.advice.set_time import set_time_noted
from hatchkit.problems import HatchkitError
from hatchkit.say import plan as words
from hatchkit.usual import beta_binomial

#: A batch that hatched less than this part of what the others did, and without which the number of eggs falls to this
#: part or less, is named as driving it.
DRIVER_BELOW, DRIVER_CHANGES = 0.6, 0.8


@dataclass(frozen=True)
class Plan:
    """A plan for one set; every table can be shown or written out as it stands.

    Attributes
    ----------
    eggs : DataFrame
        One row per wanted sureness: sure, chicks, eggs, chance, chicks_low, chicks_middle, chicks_high.
    basis : dict
        species, name, batches, eggs_set, hatched, left_out (own batches whose records cannot be used), driver (the
        one poor batch that most of the number rests on: batch, eggs_set, hatched, eggs without it; or None), level,
        level_source, share_mean, share_low, share_high, rho, set_at, set_at_notes, stored_days, sure, chicks,
        most_eggs (beyond which no set is planned).
    calendar : DataFrame
        See `hatchkit.advice.dates.calendar`.
    changes : DataFrame
        change (code), facts; `say.plan.changes` has the words.
    language : str
        Of words, calendar and sheet.
    unit : {"C", "F"}
    """

    eggs: pd.DataFrame
    basis: dict
    calendar: pd.DataFrame
    changes: pd.DataFrame
    language: str = "en"
    unit: str = "C"

    def words(self) -> str:
        """The plan in a few sentences."""
        return words.plan(self, self.language)

    def ics(self, *, stamp=None) -> str:
        """The calendar as text of an .ics file (RFC 5545); `stamp` is the time of writing, now if left out."""
        from hatchkit.advice.ics import calendar_text

        stamp = pd.Timestamp.now(tz="UTC") if stamp is None else pd.Timestamp(stamp)
        rows = self.calendar.to_dict("records")
        told = self.calendar.assign(
            what=[words.step(row, self.language) for row in rows], why=[words.why(row, self.language) for row in rows]
        )
        return calendar_text(told, title=words.title(self, self.language), stamp=stamp)


def next_set(
    season, species=None, chicks=None, *, sure=0.9, set_at=None, stored_days=4.0, today=None, batch=None, unit="C"
) -> Plan:
    """Plan the next set from the season's own batches and published levels.

    Parameters
    ----------
    season : Season
    species : str, optional
        Kind of bird; the one with most batches this season if left out.
    chicks : int, optional
        Good chicks wanted; as many as the season's middle batch gave if left out.
    sure : float
        Wanted probability of at least that many, between 0 and 1.
    set_at : str or Timestamp, optional
        Hour of setting on the person's clock; if left out, 18:00 of the first day for which eggs can be collected
        from today and on which no batch is in the machine.
    stored_days : float
        How long the eggs will have been kept on average.
    today : str or Timestamp, optional
        The day of planning; the clock's if left out.
    batch : str, optional
        The batch whose likely causes the changes act against; the whole season's if left out.
    unit : {"C", "F"}
        Of the temperatures in the changes.

    Returns
    -------
    Plan
        ``.eggs``: eggs to set for each sureness (0-1); ``.calendar``: what to do when, on the person's clock;
        ``.changes``.

    Raises
    ------
    HatchkitError
        For an unknown species, a wish that is no whole number of chicks, a sureness outside 0-1, or a time of setting
        that is none.

    Notes
    -----
    The prediction is beta-binomial, averaged over mean and spread as far as the own batches leave them
    open. The prior mean is the published level (``reference/hatch_levels.csv``), so few own batches are
    drawn towards it and many are not.

    Source: beta-binomial Skellam 1948 J. R. Stat. Soc. B 10:257; levels with their sources in ``hatch_levels.csv``;
    days of storage, transfer and hatch in ``species.csv``.
    """
    from hatchkit.advice.what_to_change import changes

    species = _species(season, species)
    own = own_hatch(season, species)
    chicks = _wish(chicks, own, sure)
    level = published_level(species)
    weight = beta_binomial.learn(own["hatched"], own["eggs_set"], level["share_of_set"], level["sd"])
    figures = season.species_table.loc[species]
    when, notes = set_time_noted(season, set_at, species=figures, today=today)
    eggs = _eggs(weight, chicks, sure)
    mean, low, high, rho = beta_binomial.summary(weight)
    basis = dict(
        species=species,
        name=str(figures["name"]),
        batches=len(own),
        eggs_set=int(own["eggs_set"].sum()),
        hatched=int(own["hatched"].sum()),
        left_out=unusable(season, species),
        driver=_driver(own, level, eggs, chicks, sure),
        level=level["share_of_set"],
        level_source=level["source"],
        share_mean=mean,
        share_low=low,
        share_high=high,
        rho=rho,
        set_at=when,
        set_at_notes=notes,
        stored_days=float(stored_days),
        sure=float(sure),
        chicks=chicks,
        most_eggs=beta_binomial.MOST_EGGS,
    )
    return Plan(
        eggs=eggs,
        basis=basis,
        calendar=dates.calendar(figures, when, stored_days=stored_days),
        changes=changes(season, species, batch=batch),
        language=season.language,
        unit=unit,
    )


def own_hatch(season, species) -> pd.DataFrame:
    """Eggs set and good chicks of each finished batch of one species: batch, eggs_set, hatched.

    Batches that are left out of rates (`losses.windows.left_out`) are left out here too.
    """
    rows = season.batches[season.batches["species"] == species]
    rows = rows[~rows["batch"].astype(str).isin(_left_out(season))]
    good = rows["hatched"].astype("Float64") - rows["culled"].astype("Float64").fillna(0)
    table = pd.DataFrame({"batch": rows["batch"], "eggs_set": rows["eggs_set"].astype("Float64"), "hatched": good})
    table = table.dropna()
    table = table[(table["eggs_set"] > 0) & table["hatched"].ge(0)]
    # A slip of counting may tell of a chick more than there were eggs.
    table["hatched"] = table[["hatched", "eggs_set"]].min(axis=1)
    return table.astype({"eggs_set": int, "hatched": int}).reset_index(drop=True)


def unusable(season, species) -> list[str]:
    """Batches of one species that hatched but are left out of rates, because their records contradict themselves."""
    rows = season.batches[(season.batches["species"] == species) & season.batches["hatched"].notna()]
    return [str(batch) for batch in rows["batch"] if str(batch) in _left_out(season)]


def _left_out(season) -> set:
    from hatchkit.losses.windows import left_out

    return season.once(("left out",), lambda: set(left_out(season)["batch"].astype(str)))


def _driver(own, level, eggs, chicks, sure):
    """The poorest own batch, if the number of eggs rests mostly on it; None otherwise."""
    wanted = eggs.loc[eggs["sure"] == round(float(sure), 4), "eggs"].iloc[0]
    if len(own) < 3 or pd.isna(wanted):
        return None
    shares = own["hatched"] / own["eggs_set"]
    worst, rest = own.loc[shares.idxmin()], own.drop(index=shares.idxmin())
    if shares.min() > DRIVER_BELOW * rest["hatched"].sum() / rest["eggs_set"].sum():
        return None
    weight = beta_binomial.learn(rest["hatched"], rest["eggs_set"], level["share_of_set"], level["sd"])
    without = beta_binomial.eggs_learned(weight, chicks, sure=sure)
    if without is None or without > DRIVER_CHANGES * wanted:
        return None
    return dict(
        batch=str(worst["batch"]), eggs_set=int(worst["eggs_set"]), hatched=int(worst["hatched"]), without=int(without)
    )


def published_level(species) -> dict:
    """Published hatch of eggs set for a species: share_of_set, sd (from the range given), source."""
    table = reference.load("hatch_levels").set_index("species")
    row = table.loc[species if species in table.index else "any"]
    # The range is read as the middle 80 % of places, 2.56 standard deviations.
    return dict(
        share_of_set=float(row["share_of_set"]),
        sd=float((row["high"] - row["low"]) / 2.56),
        source=str(row["source"]),
    )


def _eggs(weight, chicks, sure) -> pd.DataFrame:
    rows = []
    for wanted in sorted({0.5, 0.8, round(float(sure), 4), 0.95}):
        eggs = beta_binomial.eggs_learned(weight, chicks, sure=wanted)
        low, middle, high = beta_binomial.range_of_chicks(weight, eggs) if eggs else (None,) * 3
        chance = beta_binomial.chance_learned(weight, chicks, eggs) if eggs else float("nan")
        rows.append(
            dict(
                sure=wanted,
                chicks=chicks,
                eggs=eggs,
                chance=chance,
                chicks_low=low,
                chicks_middle=middle,
                chicks_high=high,
            )
        )
    counts = ["chicks", "eggs", "chicks_low", "chicks_middle", "chicks_high"]
    return pd.DataFrame(rows).astype({name: "Int64" for name in counts})


def _species(season, species) -> str:
    if species is None:
        if season.batches.empty:
            raise HatchkitError("plan_no_species", {})
        return str(season.batches["species"].mode().iloc[0])
    key = species if species in season.species_table.index else reference.species_key(species)
    if key not in season.species_table.index:
        raise HatchkitError(
            "not_one_of", dict(name="species", given=str(species), known=list(season.species_table.index))
        )
    return key


def _wish(chicks, own, sure) -> int:
    if not 0 < sure < 1:
        raise HatchkitError("plan_sure", dict(given=str(sure)))
    if chicks is None:
        return max(int(own["hatched"].median()), 1) if len(own) else 12
    if isinstance(chicks, bool) or chicks < 1 or int(chicks) != chicks:
        raise HatchkitError("whole_number", dict(name="chicks", least=1, given=str(chicks)))
    return int(chicks)
