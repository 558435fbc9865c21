"""The sentences about causes: what fits, what speaks against, what is not known, and the verdict."""

from __future__ import annotations

from typing import NamedTuple

import numpy as np
import pandas as pd

from hatchkit.advice.signs import names
from hatchkit.advice.tally import STAGES
from hatchkit.words.spelling import day_words
from hatchkit.words.stage_names import in_words
from hatchkit.words.tables import percent

#: A factor beyond this, up or down, is worth a mention.
WORTH = 1.5

#: A stage of whose eggs more than this share is only assumed is not told by itself.
ASSUMED = 0.2

#: So many tied causes and so many differences are named in a sentence; the tables have them all.
TIES, DIFFERENCES = 3, 4

#: Mark of a line that says no more than another one of the same fact.
ONCE = "; counted once"

#: A remark is quoted up to so many letters.
QUOTED = 160


class Counted(NamedTuple):
    """What became of one batch's eggs: counts per stage, deaths between stages, eggs without a known end."""

    counts: np.ndarray
    between: tuple
    unaccounted: float

    @property
    def eggs_set(self) -> float:
        """Eggs of the batch, those without a known end too."""
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


def for_and_against(row: dict, lines, counted: Counted, pattern, usual, known) -> dict:
    """Texts fits, against and unknown for one candidate.

    Parameters
    ----------
    row : dict
        The candidate, with its likeliest variant and `by_stage`, the parts of its harm (`harm.by_stage`).
    lines : list of Line
        Its evidence (`evidence.told`).
    counted : Counted
    pattern : DataFrame
        `Causes.pattern`.
    usual : Usual
    known : dict
        Evidence items by name.
    """
    if row["cause"] == "bad_luck":
        return _for_bad_luck(counted, usual)
    if row["cause"] == "unlisted":
        return dict(fits="", against="it allows any pattern, so it never fits well", unknown="")
    fits, against = _pattern_words(row, counted, pattern["usual"].to_numpy(), usual.rho)
    unknown, signs = [], names()
    for part, found, _, factor in lines:  # told twice it counts once, but both are told
        if found == "not known":
            unknown.append(known[part]["needs"])
        elif factor >= WORTH or factor <= 1 / WORTH:
            told = item_words(known[part]) if found == "known" else f"you noted: {signs[part]} (\u201c{found}\u201d)"
            (fits if factor > 1 else against).append(told)
    missing = "; ".join(f"no {need}" for need in dict.fromkeys(unknown))
    return dict(fits="; ".join(fits), against="; ".join(against), unknown=missing)


def item_words(item) -> str:
    """One evidence item with its value, in words; a gauge beside what is usual with this keeper."""
    if item["unit"] == "share":
        told = f"{item['name']} {percent(item['value'])}"
    elif item["item"] == "tray":
        told = f"{item['name']}: 1 in {round(10 ** item['value'])}"
    else:
        told = f"{item['name']}: {_number(item, item['value'])} {item['unit']}".rstrip()
    if item["kind"] != "gauge" or not item["good_batches"]:
        return told
    usual = percent(item["usual"]) if item["unit"] == "share" else _number(item, item["usual"])
    return f"{told} ({usual} in your good batches)"


def _number(item, value) -> str:
    sign = "+" if item["item"] in SIGNED and value > 0 else ""
    return f"{sign}{value:.{int(item['digits'])}f}"


#: Items told with their sign.
SIGNED = ("log_level", "clock", "clock_machine", "water_loss", "rh_set", "rh_hatch")


def different_words(causes) -> str:
    """The sentence that opens the reasons: what was different this time, most first."""
    rows = causes.different.head(DIFFERENCES).to_dict("records")
    good = int(causes.evidence["good_batches"].max())
    beside = (
        f"your {good} good batches"
        if good > 1
        else "your one good batch and published values"
        if good
        else "published values, as you have no good batch yet"
    )
    if not rows:
        return f"What was different this time? Nothing on record differs from {beside}."
    told = [
        f"{row['name']}: {row['value']}, {row['usual']} in the good ones"
        if isinstance(row["value"], str)
        else item_words(row | dict(kind="gauge" if row["good_batches"] else "dose"))
        for row in rows
    ]
    text = "; ".join(told)
    return f"What was different this time, beside {beside}? {text[0].upper() + text[1:]}."


def _pattern_words(row, counted: Counted, expected, rho) -> tuple[list, list]:
    """Stages that are as the cause says, and stages that are not."""
    part = row["by_stage"]
    total, assumed = counted.counts.sum(), counted.assumed()
    under = expected + part * max(row["eggs_lost"], 1.0)
    fits, against = _between_words(counted, expected, part, rho)
    for place in range(1, len(STAGES)):
        eggs, normal, wanted = counted.counts[place], expected[place], under[place]
        spread = np.sqrt(max(normal, 1.0) * (1 + (total - 1) * rho))
        if assumed[place] > ASSUMED * max(eggs, 1.0):
            continue  # told by its days
        told = f"{_eggs(eggs)} {in_words(STAGES[place])} where {_eggs(normal)} is usual"
        if part[place] >= MAIN and eggs > normal + spread:
            fits.append(told)
        elif (
            part[place] >= MAIN
            and eggs < normal + 0.5 * spread
            and wanted > normal + spread
            and not (counted.unaccounted)
        ):
            against.append(
                f"only {_eggs(eggs)} {in_words(STAGES[place])}" if eggs >= 0.5 else f"no {in_words(STAGES[place])}"
            )
        elif part[place] < MINOR and eggs > normal + 2 * spread:
            against.append(f"it does not explain the {told}")
    return fits, against


#: Part of a cause's harm at a stage from which the stage speaks for it, and under which it is none of its own.
MAIN, MINOR = 0.15, 0.03


def _between_words(counted: Counted, expected, part, rho) -> tuple[list, list]:
    """Deaths told by their days, where their stage is only assumed."""
    assumed, fits, against = counted.assumed(), [], []
    for columns in dict.fromkeys(group.columns for group in counted.between):
        groups, columns = [group for group in counted.between if group.columns == columns], list(columns)
        eggs = sum(group.eggs for group in groups)
        first, last = min(group.after_day for group in groups), max(group.by_day for group in groups)
        if not any(assumed[place] > ASSUMED * max(counted.counts[place], 1.0) for place in columns):
            continue
        normal = expected[columns].sum()
        stages = " or ".join(in_words(STAGES[place]).removesuffix(" dead") for place in columns)
        days = (
            f"between day {day_words(first)} and {day_words(last)}"
            if np.isfinite(last)
            else f"after day {day_words(first)}"
        )
        told = f"{eggs:.0f} dead {days} ({stages}, not known which; {_eggs(normal)} is usual for these together)"
        spread = np.sqrt(max(normal, 1.0) * (1 + (counted.counts.sum() - 1) * rho))
        if eggs > normal + spread and part[columns].max() >= MAIN:
            fits.append(told)
        elif eggs > normal + 2 * spread and part[columns].max() < MINOR:
            against.append(f"it does not explain the {told}")
    return fits, against


def _eggs(number) -> str:
    """A count, with one decimal only where eggs were shared out between stages or expected."""
    return f"{number:.0f}" if abs(number - round(number)) < 0.05 or number >= 10 else f"{number:.1f}"


def _for_bad_luck(counted: Counted, usual) -> dict:
    good, total = counted.counts[0], counted.eggs_set
    expected = usual.shares[0] * total
    spread = np.sqrt(total * usual.shares[0] * (1 - usual.shares[0]) * (1 + (total - 1) * usual.rho))
    away = (good - expected) / spread
    told = (
        f"{_eggs(good)} good chicks of {total:.0f} eggs set, {_eggs(expected)} usual and {_eggs(spread)} more or "
        "less common"
    )
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
    logged = items.set_index("item").loc[["log_level", "heat", "cold"], "value"].notna().any()
    if not logged:
        told.append("No temperature was logged for this batch, so no verdict on heat or cold can be firm.")
    elif "probe_offset_c" not in checked:
        told.append(
            "No check of this incubator's probe is on record, so every word on temperature holds only if it reads true."
        )
    if usual.batches < 4:
        others = (
            f"Only {usual.batches} other batch{'es' if usual.batches > 1 else ''} of this species"
            if usual.batches
            else "No other batch of this species is there"
        )
        told.append(f"{others} to compare with; the published ledger stands in.")
    if pd.isna(row.get("broken_early")) and pd.isna(row.get("broken_late")):
        told.append("Unhatched eggs were not opened (or not written down), so ages of death are rough.")
    return tuple(told)


def verdict(causes) -> str:
    """What was different, and the verdict of `Causes`, in a few sentences.

    Eggs without a known end come first where they are many.
    """
    first = causes.table.iloc[0]
    many = bool(causes.unaccounted) and not causes.table["firm"].any()
    parts = [f"{_unaccounted(causes)}, so no cause can be named with confidence."] if many else []
    parts.append(different_words(causes))
    parts += [_clears(causes)] if causes.mostly_clears else []
    parts += _judgement(causes, first)
    if len(causes.signs):
        read = "; ".join(f"{row['name']} (from \u201c{row['said']}\u201d)" for row in causes.signs.to_dict("records"))
        parts.append(f"Signs read from your words: {read}.")
    parts += [f"{_unaccounted(causes)}."] if causes.unaccounted and not many else []
    parts += causes.limits
    parts += [f'Your remark on this batch: "{causes.remark}".'] if causes.remark else []
    return " ".join(parts)


def _judgement(causes, first) -> list[str]:
    name, weight = _lower(first["name"]), percent(first["share"])
    if causes.verdict in ("confident", "probable"):
        lead = "very likely" if causes.verdict == "confident" else "probably, not surely,"
        return [
            f"Batch {causes.batch}: {lead} {name} ({weight} of the weight).",
            *_reasons(first),
            *_tied(causes),
            f"Check next: {first['check_next']}",
        ]
    if causes.verdict == "two causes":
        pair, rows = causes.pairs.iloc[0], causes.table.set_index("cause")
        told = [
            f"{_lower(rows.at[pair[key], 'name'])} (about {pair['eggs_' + key]:.0f} eggs)"
            for key in ("first", "second")
        ]
        return [
            f"Batch {causes.batch}: probably two things: {told[0]} and {told[1]}.",
            *_reasons(first),
            f"Check next: {first['check_next']}",
        ]
    if causes.verdict == "bad luck":
        return [
            f"Batch {causes.batch}: ordinary bad luck is enough to explain it ({weight} of the weight); no cause "
            "stands out."
        ]
    parts = [f"Batch {causes.batch}: the records cannot tell{' what made them clear' if causes.mostly_clears else ''}."]
    if first["cause"] == "bad_luck" and first["share"] >= 0.5:
        parts.append("Ordinary bad luck has most of the weight, but what became of so many eggs is not known.")
    elif causes.table["tied"].sum() == 1:
        parts.append(f"Most of the weight has: {name} ({weight}), too little to name it.")
    return parts + _tied(causes)


def _reasons(first) -> list[str]:
    return [
        f"{what}: {first[key]}."
        for what, key in (("It fits because of", "fits"), ("Against it", "against"), ("Not known", "unknown"))
        if first[key]
    ]


def _tied(causes) -> list[str]:
    tied = [_lower(name) for name in causes.table.loc[causes.table["tied"], "name"]]
    if len(tied) < 2:
        return []
    more = f" and {len(tied) - TIES} more" if len(tied) > TIES + 1 else ""
    shown = tied[:TIES] if more else tied
    return [f"As good as tied: {'; '.join(shown)}{more}."]


def _clears(causes) -> str:
    """That the loss is one of clears: sure of the count, and what tells infertile from dead early."""
    row = causes.pattern.set_index("stage").loc["clear"]
    opened = causes.evidence.set_index("item").at["clears_opened", "value"]
    told = (
        f"Most of the loss is clears: {_eggs(row['eggs'])} of {causes.eggs_set:.0f} eggs, {_eggs(row['usual'])} usual."
    )
    if np.isnan(opened):
        return told + " Open them at the next candling: no germ means the cocks, a dead one means storage or warmth."
    return told + f" Of those you opened, {percent(opened)} held a germ that had died."


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
    known = causes.evidence.set_index("item")["name"].to_dict() | names()
    items = {item["item"]: item for item in causes.evidence.to_dict("records")}
    lines = [f"How the weight of {_lower(row['name'])} comes about (times as likely with the cause as with bad luck):"]
    for part in rows.to_dict("records"):
        if part["part"] == "with a second cause" and part["factor"] < 1.005:
            continue
        what = {
            "pattern": "the days and stages at which eggs were lost",
            "with a second cause": "its part of the weight of two causes together",
        }.get(part["part"])
        if what is None:
            found = part["found"].removesuffix(ONCE)
            what = (
                f"{known[part['part']]}: not known"
                if found == "not known"
                else item_words(items[part["part"]])
                if found == "known"
                else f"you noted: {names()[part['part']]}"
            )
            what += " (the same fact is counted below or above)" if found != part["found"] else ""
        lines.append(f"  {_times(part['factor'])}  {what}")
    variants = causes.arithmetic(cause)["variant"].nunique()
    tail = (
        f"; the cause's weight is the mean over its {variants} ages or delays, of which this is the likeliest"
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
