"""The sentences about causes: what fits, what speaks against, what is not known, and the verdict."""

from __future__ import annotations

from functools import cache
from typing import NamedTuple

import numpy as np
import pandas as pd

from hatchkit import reference
from hatchkit.advice.tally import STAGES
from hatchkit.spelling import day_words
from hatchkit.stage_names import in_words
from hatchkit.tables import percent

#: A factor beyond this, up or down, is worth a mention.
WORTH = 1.5

#: A stage of whose eggs more than this share is only assumed is not told by itself.
ASSUMED = 0.2

#: A remark is quoted up to so many letters.
QUOTED = 160


class Seen(NamedTuple):
    """What became of one batch's eggs: counts per stage, deaths between stages, eggs without a known end."""

    counts: np.ndarray
    between: tuple
    unaccounted: float

    @property
    def eggs_set(self) -> float:
        return float(self.counts.sum() + self.unaccounted)

    def mostly_unknown(self, limit) -> bool:
        """Whether more than the share `limit` of the eggs set have no known end."""
        return self.unaccounted > limit * self.eggs_set

    def assumed(self) -> np.ndarray:
        """Eggs of each stage that are there only because a death between stages was shared out."""
        eggs = np.zeros(len(self.counts))
        for group in self.between:
            eggs[list(group.columns)] += group.eggs * np.array(group.mass) / sum(group.mass)
        return eggs


def for_and_against(row: dict, lines, seen: Seen, usual, known) -> dict:
    """Texts fits, against and unknown for one candidate.

    Parameters
    ----------
    row : dict
        The candidate, with its likeliest variant.
    lines : list of dict
        The factors of that variant (rows of `Causes.sums`).
    seen, usual
        What became of the batch's eggs and what is ordinary.
    known : dict
        Evidence items by name.
    """
    if row["cause"] == "bad_luck":
        return _for_bad_luck(seen, usual)
    if row["cause"] == "unlisted":
        return dict(fits="", against="it allows any pattern, so it never fits well", unknown="")
    fits, against = _pattern_words(row, seen, usual)
    unknown = []
    for line in lines:
        if line["part"] == "pattern":
            continue
        item = known[line["part"]]
        if line["found"] == "not known":
            unknown.append(item["needs"])
        elif line["factor"] >= WORTH:
            fits.append(item_words(item))
        elif line["factor"] <= 1 / WORTH:
            against.append(item_words(item))
    missing = "; ".join(f"no {need}" for need in dict.fromkeys(unknown))
    return dict(fits="; ".join(fits), against="; ".join(against), unknown=missing)


def item_words(item) -> str:
    """One evidence item with its value, in words."""
    if item["kind"] == "noted":
        return item["name"] if item["value"] else f"no {item['name']}"
    if item["unit"] == "share":
        return f"{item['name']} {percent(item['value'])}"
    if item["item"] == "tray":
        return f"{item['name']}: 1 in {round(10 ** item['value'])}"
    sign = "+" if item["kind"] == "two_sided" and item["value"] > 0 else ""
    return f"{item['name']}: {sign}{item['value']:.{int(item['digits'])}f} {item['unit']}"


@cache
def cause_patterns() -> dict:
    """Shift of each stage under each variant of each cause: {(cause, variant): its row}."""
    table = reference.load("cause_patterns")
    return {(row["cause"], row["variant"]): row for row in table.to_dict("records")}


def _pattern_words(row, seen: Seen, usual) -> tuple[list, list]:
    """Stages that are as the cause says, and stages that are not."""
    from hatchkit.advice.score import shifted

    pattern = cause_patterns()[row["cause"], row["variant"]]
    doublings = np.array([0.0] + [pattern[stage] for stage in STAGES[1:]])
    total = seen.counts.sum()
    expected, assumed = usual.shares * total, seen.assumed()
    under = shifted(usual.shares, doublings, np.array([1.0]))[0] * total
    fits, against = _between_words(seen, expected, doublings, usual.rho)
    for place in range(1, len(STAGES)):
        eggs, normal, wanted, steps = seen.counts[place], expected[place], under[place], doublings[place]
        spread = np.sqrt(max(normal, 1.0) * (1 + (total - 1) * usual.rho))
        name = in_words(STAGES[place])
        if assumed[place] > ASSUMED * max(eggs, 1.0):
            continue  # told by its days
        told = f"{_eggs(eggs)} {name} where {_eggs(normal)} is usual"
        if steps >= 1 and eggs > normal + spread:
            fits.append(told)
        elif steps >= 1 and wanted > normal + spread and eggs < normal + 0.5 * spread and not seen.unaccounted:
            against.append(f"only {_eggs(eggs)} {name}, {_eggs(wanted)} expected of it" if eggs >= 0.5 else
                           f"no {name}, {_eggs(wanted)} expected of it")
        elif steps == 0 and eggs > normal + 2 * spread:
            against.append(f"it does not explain the {told}")
    return fits, against


def _between_words(seen: Seen, expected, doublings, rho) -> tuple[list, list]:
    """Deaths told by their days, where their stage is only assumed."""
    assumed, fits, against = seen.assumed(), [], []
    for columns in dict.fromkeys(group.columns for group in seen.between):
        groups, columns = [group for group in seen.between if group.columns == columns], list(columns)
        eggs = sum(group.eggs for group in groups)
        first, last = min(group.after_day for group in groups), max(group.by_day for group in groups)
        if not any(assumed[place] > ASSUMED * max(seen.counts[place], 1.0) for place in columns):
            continue
        normal = expected[columns].sum()
        stages = " or ".join(in_words(STAGES[place]).removesuffix(" dead") for place in columns)
        days = (f"between day {day_words(first)} and {day_words(last)}" if np.isfinite(last) else
                f"after day {day_words(first)}")
        told = f"{eggs:.0f} dead {days} ({stages}, not known which; {_eggs(normal)} is usual for these together)"
        spread = np.sqrt(max(normal, 1.0) * (1 + (seen.counts.sum() - 1) * rho))
        if eggs > normal + spread and doublings[columns].max() >= 1:
            fits.append(told)
        elif eggs > normal + 2 * spread and not doublings[columns].any():
            against.append(f"it does not explain the {told}")
    return fits, against


def _eggs(number) -> str:
    """A count, with one decimal only where eggs were shared out between stages or expected."""
    return f"{number:.0f}" if abs(number - round(number)) < 0.05 or number >= 10 else f"{number:.1f}"


def _for_bad_luck(seen: Seen, usual) -> dict:
    good, total = seen.counts[0], seen.eggs_set
    expected = usual.shares[0] * total
    spread = np.sqrt(total * usual.shares[0] * (1 - usual.shares[0]) * (1 + (total - 1) * usual.rho))
    away = (good - expected) / spread
    told = (f"{_eggs(good)} good chicks of {total:.0f} eggs set, {_eggs(expected)} usual and {_eggs(spread)} more or "
            "less common")
    return dict(fits=told if away > -1.5 else "", against=told if away <= -1.5 else "", unknown="")


def remark(row) -> str:
    """The person's remark on a batch (its row), cut where it is long; empty where there is none."""
    notes = row.get("notes")
    text = "" if notes is None or pd.isna(notes) else " ".join(str(notes).split())
    return text if len(text) <= QUOTED else text[:QUOTED].rsplit(" ", 1)[0] + " ..."


def limits(season, row, items, usual) -> tuple:
    """What bounds every verdict on this batch (its row of batches)."""
    told = []
    checked = season.settings.get("incubators", {}).get(str(row.get("incubator")), {})
    logged = items.set_index("item").loc[["log_level", "heat_mid", "cold_mid"], "level"].notna().any()
    if not logged:
        told.append("No temperature was logged for this batch, so no verdict on heat or cold can be firm.")
    elif "probe_offset_c" not in checked:
        told.append("No check of this incubator's probe is on record, so every word on temperature holds only if it "
                    "reads true.")
    if usual.batches < 4:
        others = (f"Only {usual.batches} other batch{'es' if usual.batches > 1 else ''} of this species"
                  if usual.batches else "No other batch of this species is there")
        told.append(f"{others} to compare with; the published ledger stands in.")
    if pd.isna(row.get("broken_early")) and pd.isna(row.get("broken_late")):
        told.append("Unhatched eggs were not opened (or not written down), so ages of death are rough.")
    return tuple(told)


def verdict(causes) -> str:
    """The verdict of `Causes` in a few sentences; eggs without a known end come first where they are many."""
    first = causes.table.iloc[0]
    name = _lower(first["name"])
    many = bool(causes.unaccounted) and not causes.table["firm"].any()
    parts = [f"{_unaccounted(causes)}, so no cause can be named with confidence."] if many else []
    if causes.verdict in ("confident", "probable"):
        lead = "very likely" if causes.verdict == "confident" else "probably, not surely,"
        parts.append(f"Batch {causes.batch}: {lead} {name} ({percent(first['share'])} of the weight).")
        parts += [f"{what}: {first[key]}." for what, key in (("It fits because of", "fits"), ("Against it", "against"),
                                                             ("Not known", "unknown")) if first[key]]
    elif causes.verdict == "bad luck":
        parts.append(f"Batch {causes.batch}: ordinary bad luck is enough to explain it ({percent(first['share'])} of "
                     "the weight); no cause stands out.")
    else:
        parts.append(f"Batch {causes.batch}: the records cannot tell.")
        if first["cause"] == "bad_luck" and first["share"] >= 0.5:
            parts.append("Ordinary bad luck has most of the weight, but what became of so many eggs is not known.")
        elif causes.table["tied"].sum() == 1:
            parts.append(f"Most of the weight has: {name} ({percent(first['share'])}), too little to name it.")
    tied = causes.table[causes.table["tied"]]
    if len(tied) > 1:
        parts.append(f"As good as tied: {' and '.join(_lower(name) for name in tied['name'])}.")
    if causes.verdict in ("confident", "probable"):
        parts.append(f"Check next: {first['check_next']}")
    parts += [f"{_unaccounted(causes)}."] if causes.unaccounted and not many else []
    parts += causes.limits
    parts += [f'Your remark on this batch: "{causes.remark}".'] if causes.remark else []
    return " ".join(parts)


def _unaccounted(causes) -> str:
    """How many of the batch's eggs have no known end."""
    eggs = causes.unaccounted
    return f"{eggs:.0f} of the {causes.eggs_set:.0f} eggs set in batch {causes.batch} {_have(eggs)} no known end"


def _have(eggs) -> str:
    return "has" if round(eggs) == 1 else "have"


def _lower(name) -> str:
    return name[0].lower() + name[1:]


def summary(table) -> pd.DataFrame:
    """Rows of `Causes.table` in the reader's words."""
    shown = pd.DataFrame(
        {
            "Cause": table["name"],
            "Weight": [percent(share) for share in table["share"]],
            "Fits because": table["fits"].replace("", "nothing in particular"),
            "Speaks against": table["against"].replace("", "nothing found"),
            "Not known": table["unknown"].replace("", "nothing that it needs"),
            "Check next": table["check_next"],
        }
    )
    shown.loc[table["tied"].to_numpy() & (table["tied"].sum() > 1), "Cause"] += " (tie)"
    return shown.reset_index(drop=True)


def arithmetic_words(causes, cause) -> str:
    """How the weight of one cause comes about, factor by factor, so that it can be followed by hand."""
    row = causes.table.set_index("cause").loc[cause]
    rows = causes.arithmetic(cause)
    rows = rows[rows["variant"] == row["variant"]]
    names, kinds = (causes.evidence.set_index("item")[column] for column in ("name", "kind"))
    lines = [
        f"How the weight of {_lower(row['name'])} comes about (times as likely with the cause as with bad luck):"
    ]
    for part in rows.to_dict("records"):
        found = part["found"].replace("_", " ")
        if kinds.get(part["part"]) == "noted":
            found = {"usual": "none", "very high": "there is one"}.get(found, found)
        what = (
            "the stages at which eggs were lost" if part["part"] == "pattern" else f"{names[part['part']]}: {found}"
        )
        lines.append(f"  {_times(part['factor'])}  {what}")
    variants = causes.arithmetic(cause)["variant"].nunique()
    tail = (
        f"; the cause's weight is the mean over its {variants} ages, of which this is the likeliest"
        if variants > 1
        else ""
    )
    lines.append(
        f"  {_times(rows['factor'].prod())}  all together{tail}. Before looking it had "
        f"{percent(row['prior'], 1)} of the "
        f"weight, after it {percent(row['share'])}."
    )
    return "\n".join(lines)


def _times(factor) -> str:
    return f"x {factor:.2g}" if factor < 10 else f"x {factor:.0f}" if factor < 1e5 else "x over 100,000"
