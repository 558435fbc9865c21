"""Columns of a reading -> the looks that they tell of, in order, and the fields that belong to no look."""

from __future__ import annotations

from dataclasses import dataclass, field

from hatchkit.records.sheets.fields import Look

#: Usual day of transfer as a share of the incubation (common practice, no source: day 18 of 21, 25 of 28).
TRANSFER_SHARE = 0.87
#: Days of incubation by which looks without a day are put in order: a hen's.
HENS_DAYS = 21.0


@dataclass
class LookColumns:
    """One look with the places of its columns by field."""

    look: Look
    fields: dict = field(default_factory=dict)
    named: bool = True

    def sort_key(self, length: float) -> float:
        """About which day the look is, for the order of looks."""
        if self.look.day is not None:
            return self.look.day
        if self.look.transfer:
            return TRANSFER_SHARE * length
        return length * (self.look.order or 1) / 3.0 - 0.01


@dataclass
class Layout:
    """Which column holds what: looks in order, and the fields that belong to no look.

    Attributes
    ----------
    looks : list of LookColumns
    fields : dict
        Field -> list of places.
    pipped_within, culled_apart : bool
        Pipped are counted among the dead in shell; culled and weak chicks are not counted among the hatched.
    """

    looks: list
    fields: dict
    pipped_within: bool = False
    culled_apart: bool = False


def layout_of(chosen, columns) -> Layout | None:
    """Looks and other fields of an assignment, or None if two columns would be the same thing.

    Parameters
    ----------
    chosen : list of Meaning or None
        One per column, in order.
    columns : list of Column
    """
    looks: list[LookColumns] = []
    fields: dict = {}
    current: LookColumns | None = None
    for column, meaning in zip(columns, chosen, strict=True):
        name = meaning.field
        if name in ("ignore", "percent"):
            continue
        mine = _look_for(name, meaning.look, looks, current)
        current = mine or current
        if mine is not None and name not in mine.fields:
            mine.fields[name] = column.place
        elif mine is None or name in ("rotten", "cracked", "removed"):
            fields.setdefault(name, []).append(column.place)
        else:
            return None
    looks = _by_day_and_order(looks)
    latest = max((look.look.day for look in looks if look.look.day is not None), default=0)
    # A longer incubation than a hen's: the transfer is not before the last candling.
    length = latest / TRANSFER_SHARE if latest > HENS_DAYS else HENS_DAYS
    looks.sort(key=lambda look: look.sort_key(length))
    return Layout(_merged(looks, length), fields)


def _look_for(name: str, wanted: Look, looks: list, current: LookColumns | None) -> LookColumns | None:
    """The look that a column is of: that which its heading names, else the one of the columns before it, or a new one.

    None for what belongs to no look.
    """
    if name in ("look_at", "look_day", "fate"):
        return _look(looks, wanted or Look(order=_next_order(looks, name)))
    if wanted and name in ("clear", "dead", "left", "removed", "rotten", "cracked", "weight"):
        return _look_of_neighbour(looks, current, name, wanted) or _look(looks, wanted)
    if name not in ("clear", "dead", "left"):
        return None
    if current is not None and name not in current.fields:
        closed = name == "clear" and {"left", "dead"} <= current.fields.keys()
        if not closed:
            return current
    new = _look(looks, Look(order=_next_order(looks, name)))
    new.named = bool(new.fields)
    return new


def _by_day_and_order(looks: list[LookColumns]) -> list[LookColumns]:
    """A look told by its number and one told by its day are one, where no other can be ("Clear d7, Left 1st")."""
    for other in [look for look in looks if look.look.order and look.look.day is None and not look.look.transfer]:
        order = other.look.order
        days = [
            0,
            *(look.look.day for look in looks if look.look.day is not None and (look.look.order or order) < order),
        ]
        later = [look.look.day for look in looks if look.look.day is not None and (look.look.order or 0) > order]
        fits = [
            look
            for look in looks
            if look.look.day is not None
            and look.look.order is None
            and max(days) < look.look.day < min([*later, 99])
            and not set(look.fields) & set(other.fields)
        ]
        if order == 1 and set(other.fields) == {"clear"} and all("clear" not in look.fields for look in fits):
            # Clears come out at the first look of all: "Clear, Left d10, Left d20".
            fits = sorted(fits, key=lambda look: look.look.day)[:1]
        if len(fits) == 1 and (order == 1 or max(days)):
            fits[0].look = Look(fits[0].look.day, order, fits[0].look.transfer)
            fits[0].fields |= other.fields
            looks = [look for look in looks if look is not other]
    return looks


def _look_of_neighbour(looks, current, name: str, wanted: Look) -> LookColumns | None:
    """Clears without a day beside the dead of a named day are of one look: "Clears, Day 7 dead"."""
    if current is None or current.named or name != "dead" or set(current.fields) != {"clear"} or wanted.day is None:
        return None
    if any(look.look.day == wanted.day for look in looks):
        return None
    current.look, current.named = Look(wanted.day, current.look.order, wanted.transfer), True
    return current


def _next_order(looks: list[LookColumns], name: str) -> int:
    return 1 + sum(name in look.fields or look.look.order is not None and name == "look_at" for look in looks)


def _look(looks: list[LookColumns], wanted: Look) -> LookColumns:
    """The look of this day, order or name; a new one if there is none."""
    for known in looks:
        have = known.look
        same = (
            wanted.day is not None
            and have.day == wanted.day
            or wanted.day is None
            and wanted.order is not None
            and have.order == wanted.order
            or wanted.transfer
            and have.transfer
            or wanted.order is not None
            and have.order == wanted.order
            and (have.day is None or wanted.day is None)
        )
        if same:
            known.look = Look(
                have.day if have.day is not None else wanted.day,
                have.order if have.order is not None else wanted.order,
                have.transfer or wanted.transfer,
            )
            return known
    looks.append(LookColumns(wanted))
    return looks[-1]


def _merged(looks: list[LookColumns], length: float) -> list[LookColumns]:
    """Looks with a day near the transfer and the transfer itself are one, where their columns do not collide."""
    transfer = next((look for look in looks if look.look.transfer), None)
    if transfer is None:
        return looks
    candlings = [look for look in looks if look is not transfer]
    undated = [look for look in candlings if "look_at" not in look.fields]
    if set(transfer.fields) == {"look_at"} and len(candlings) > 1 and undated == candlings[-1:]:
        # "Transfer" heads a date; "clear 3, dead 3" beside it are what was found then.
        transfer.fields |= undated[0].fields
        return [look for look in looks if look is not undated[0]]
    for other in looks:
        if other is transfer or other.look.day is None or set(other.fields) & set(transfer.fields):
            continue
        if transfer.look.day is None and abs(other.look.day - TRANSFER_SHARE * length) <= 2:
            transfer.look = Look(other.look.day, other.look.order, True)
            transfer.fields = {**other.fields, **transfer.fields}
            return [look for look in looks if look is not other]
    return looks
