"""Why this cause? Each piece of evidence on it with its push, strongest first: the ladder that a reader goes down."""

from __future__ import annotations

import numpy as np
import pandas as pd

COLUMNS = ["part", "kind", "value", "usual", "unit", "digits", "said", "factor", "push", "strength"]

#: Least factor of each strength; less is "hardly". Source: Kass & Raftery 1995, J. Am. Stat. Assoc. 90:773 (3, 20, 150
#: on the scale of Bayes factors).
STRENGTHS = ((150.0, "very_strong"), (20.0, "strong"), (3.0, "some"))

#: A factor nearer to 1 than this is no push at all.
NO_PUSH = 1.05


def ladder(causes, cause=None) -> pd.DataFrame:
    """Every piece of evidence on one cause, as how many times as likely it is with the cause as with bad luck.

    Parameters
    ----------
    causes : Causes
    cause : str, optional
        The likeliest that has a name if left out.

    Returns
    -------
    DataFrame
        part (``pattern``: the days and stages of the losses, mean over the cause's ways; ``before``: how common the
        cause is beside bad luck; an item; a sign), kind (pattern, before, item, sign), value, usual, unit,
        digits (items), said (signs: the person's words), factor, push (log10 of it; missing where the thing is not
        known), strength (``for_very_strong`` ... ``for_hardly``, ``none``, ``against_hardly`` ...
        ``against_very_strong``, ``unknown``). Strongest first, the unknown last. A fact that two things tell stands
        once.
    """
    cause = causes.first_named() if cause is None else cause
    sums, items = causes.arithmetic(cause), {item["item"]: item for item in causes.evidence.to_dict("records")}
    pattern = sums[sums["part"] == "pattern"]
    priors = causes.table.set_index("cause")["prior"]
    rows = [
        dict(part="pattern", kind="pattern", factor=float((pattern["chance"] * pattern["factor"]).sum())),
        dict(part="before", kind="before", factor=float(priors[cause] / priors["bad_luck"])),
    ]
    lines = sums[~sums["part"].isin(["pattern", "second"])].drop_duplicates("part")
    for line in lines.to_dict("records"):
        item = items.get(line["part"])
        known = line["found"] != "not known"
        if line["once"]:
            continue
        rows.append(
            dict(
                part=line["part"],
                kind="item" if item else "sign",
                factor=line["factor"] if known else np.nan,
                said="" if item else line["found"],
                **({name: item[name] for name in ("value", "usual", "unit", "digits")} if item else {}),
            )
        )
    table = pd.DataFrame(rows, columns=COLUMNS)
    table["push"] = np.log10(table["factor"].astype(float).clip(lower=1e-12))
    table["strength"] = [_strength(factor) for factor in table["factor"].astype(float)]
    table[["said", "unit"]] = table[["said", "unit"]].astype(object).fillna("")
    table["digits"] = table["digits"].astype(float).fillna(0).astype(int)
    order = table["push"].abs().sort_values(ascending=False, kind="stable", na_position="last").index
    return table.loc[order].reset_index(drop=True)


def _strength(factor) -> str:
    if np.isnan(factor):
        return "unknown"
    size = max(factor, 1 / max(factor, 1e-12))
    if size < NO_PUSH:
        return "none"
    side = "for" if factor > 1 else "against"
    return f"{side}_{next((name for least, name in STRENGTHS if size >= least), 'hardly')}"
