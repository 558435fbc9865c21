"""The sentences about causes: what fits, what speaks against, what is not known, and the verdict."""

from __future__ import annotations

from functools import cache

import numpy as np
import pandas as pd

from hatchkit import reference
from hatchkit.stage_names import in_words
from hatchkit.tables import percent

#: A factor beyond this, up or down, is worth a mention.
WORTH = 1.5


def for_and_against(row: dict, lines, counts, usual, known) -> dict:
    """Texts fits, against and unknown for one candidate.

    Parameters
    ----------
    row : dict
        The candidate, with its likeliest variant.
    lines : list of dict
        The factors of that variant (rows of `Causes.sums`).
    counts, usual
        The batch's eggs per stage and what is ordinary.
    known : dict
        Evidence items by name.
    """
    if row["cause"] == "bad_luck":
        return _for_bad_luck(counts, usual)
    if row["cause"] == "unlisted":
        return dict(fits="it allows any pattern, so it never fits well", against="", unknown="")
    fits, against = _pattern_words(row, counts, usual)
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


def _pattern_words(row, counts, usual) -> tuple[list, list]:
    """Stages that are as the cause says, and stages that are not."""
    from hatchkit.advice.ordinary import STAGES
    from hatchkit.advice.score import shifted

    pattern = cause_patterns()[row["cause"], row["variant"]]
    doublings = np.array([0.0] + [pattern[stage] for stage in STAGES[1:]])
    total = counts.sum()
    under = shifted(usual.shares, doublings, np.array([1.0]))[0] * total
    fits, against = [], []
    for stage, seen, normal, wanted, steps in zip(
        STAGES[1:], counts[1:], usual.shares[1:] * total, under[1:], doublings[1:], strict=True
    ):
        spread = np.sqrt(max(normal, 1.0) * (1 + (total - 1) * usual.rho))
        told = f"{_eggs(seen)} {in_words(stage)} where {_eggs(normal)} is usual"
        if steps >= 1 and seen > normal + spread:
            fits.append(told)
        elif steps >= 1 and wanted > normal + spread and seen < normal + 0.5 * spread:
            against.append(f"only {_eggs(seen)} {in_words(stage)}, {_eggs(wanted)} expected of it")
        elif steps == 0 and seen > normal + 2 * spread:
            against.append(f"it does not explain the {told}")
    return fits, against


def _eggs(number) -> str:
    """A count, with one decimal only where eggs were shared out between stages or expected."""
    return f"{number:.0f}" if abs(number - round(number)) < 0.05 or number >= 10 else f"{number:.1f}"


def _for_bad_luck(counts, usual) -> dict:
    good, total = counts[0], counts.sum()
    expected = usual.shares[0] * total
    spread = np.sqrt(total * usual.shares[0] * (1 - usual.shares[0]) * (1 + (total - 1) * usual.rho))
    away = (good - expected) / spread
    told = (
        f"{_eggs(good)} good chicks of {total:.0f} eggs, {_eggs(expected)} usual and {_eggs(spread)} more or less "
        "common"
    )
    return dict(fits=told if away > -1.5 else "", against=told if away <= -1.5 else "", unknown="")


def limits(season, batch, items, usual) -> tuple:
    """What bounds every verdict on this batch."""
    told = []
    incubator = season.batch(batch).get("incubator")
    checked = season.settings.get("incubators", {}).get(str(incubator), {})
    logged = items.set_index("item").loc[["log_level", "heat_mid", "cold_mid"], "level"].notna().any()
    if not logged:
        told.append("No temperature was logged for this batch, so no verdict on heat or cold can be firm.")
    elif "probe_offset_c" not in checked:
        told.append(
            "No check of this incubator's probe is on record, so every word on temperature holds only "
            "if it "
            "reads true."
        )
    if usual.batches < 4:
        told.append(
            f"Only {usual.batches} other batch{'es' if usual.batches != 1 else ''} of this species to "
            "compare "
            "with; the published ledger stands in."
        )
    row = season.batch(batch)
    if pd.isna(row.get("broken_early")) and pd.isna(row.get("broken_late")):
        told.append("Unhatched eggs were not opened (or not written down), so ages of death are rough.")
    return tuple(told)


def verdict(causes) -> str:
    """The verdict of `Causes` in a few sentences."""
    first = causes.table.iloc[0]
    tied = causes.table[causes.table["tied"]]
    name = _lower(first["name"])
    if causes.verdict in ("confident", "probable"):
        lead = "very likely" if causes.verdict == "confident" else "probably, not surely,"
        text = f"Batch {causes.batch}: {lead} {name} ({percent(first['share'])} of the weight)."
        text += f" It fits because of: {first['fits']}." if first["fits"] else ""
        text += f" Against it: {first['against']}." if first["against"] else ""
        text += f" Not known: {first['unknown']}." if first["unknown"] else ""
    elif causes.verdict == "bad luck":
        text = (
            f"Batch {causes.batch}: ordinary bad luck is enough to explain it ({percent(first['share'])} of "
            "the "
            "weight); no cause stands out."
        )
    else:
        text = f"Batch {causes.batch}: the records cannot tell."
    if len(tied) > 1:
        names = " and ".join(_lower(name) for name in tied["name"])
        text += f" As good as tied: {names}."
    text += f" Check next: {first['check_next']}" if causes.verdict in ("confident", "probable") else ""
    return " ".join([text, *causes.limits])


def _lower(name) -> str:
    return name[0].lower() + name[1:]


def summary(table) -> pd.DataFrame:
    """Rows of `Causes.table` in the reader's words."""
    shown = pd.DataFrame(
        {
            "Cause": table["name"],
            "Weight": [percent(share) for share in table["share"]],
            "Fits because": table["fits"],
            "Speaks against": table["against"],
            "Not known": table["unknown"],
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
    names = causes.evidence.set_index("item")["name"]
    lines = [
        f"How the weight of {_lower(row['name'])} comes about (times as likely with the cause as with bad luck):"
    ]
    for part in rows.to_dict("records"):
        found = part["found"].replace("_", " ")
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
