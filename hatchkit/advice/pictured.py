"""What the pictures of this room tell, as facts for ``say.text("picture_...", facts)``."""

from __future__ import annotations

import pandas as pd

from hatchkit.advice.cause_weights import UNNAMED


def ranked_causes(causes) -> dict:
    """Facts of `figures.advice.ranked_causes`: first, share, tie (how many tie with it), second, second_share."""
    table = causes.table
    return dict(
        batch=causes.batch,
        first=table["cause"].iloc[0],
        share=float(table["share"].iloc[0]),
        ties=int(table["tied"].sum()) - 1,
        second=table["cause"].iloc[1],
        second_share=float(table["share"].iloc[1]),
    )


def what_if(result) -> dict:
    """Facts of `figures.advice.what_if`: the largest stage and cause, and the chicks that spells cost."""
    table = result.table
    stages, named = (table[table["block"] == block] for block in ("stage", "cause"))
    stage = stages[stages["key"] != "unaccounted"].sort_values("eggs").iloc[-1]
    named = named[~named["key"].isin(["usual", "not_explained", "unaccounted"])].sort_values("eggs")
    back = table[table["block"] == "excursions"]
    usual = float(stage["usual"])
    return dict(
        stage=stage["key"],
        eggs=round(stage["eggs"]),
        usual=round(usual) if usual == usual else None,
        cause=named["key"].iloc[-1] if len(named) else None,
        cause_eggs=round(named["eggs"].iloc[-1]) if len(named) else 0,
        spells=bool(len(back)),
        **{
            name: round(back[column].iloc[0]) if len(back) else 0
            for name, column in (("chicks", "eggs"), ("low", "low"), ("high", "high"))
        },
    )


def ladder(causes, table) -> dict:
    """Facts of `figures.why.ladder`: cause, share, what pushes most each way, how much is not known.

    Parameters
    ----------
    causes : Causes
    table : DataFrame
        ``evidence_ladder.ladder`` of the cause that comes first by name.
    """
    cause = causes.table[~causes.table["cause"].isin(UNNAMED)].iloc[0]
    sides = [table[table["strength"].str.startswith(side)] for side in ("for", "against")]
    told = {}
    for side, part in zip(("for", "against"), sides, strict=True):
        first = part.iloc[0] if len(part) else {"kind": "nothing", "part": "", "strength": "none"}
        told |= {f"{side}_{name}": first[name] for name in ("kind", "part", "strength")}
    return dict(
        batch=causes.batch,
        cause=cause["cause"],
        share=float(cause["share"]),
        pushes_for=len(sides[0]),
        pushes_against=len(sides[1]),
        unknown=int((table["strength"] == "unknown").sum()),
        **told,
    )


def differences(batch, table) -> dict:
    """Facts of `figures.why.differences`: how many, and the furthest with its value and the usual one."""
    if table.empty:
        return dict(batch=batch, count=0, name=None, value=None, usual=None)
    row = table.iloc[0]
    value, usual = (
        row[name] if isinstance(row[name], str) else f"{float(row[name]):.{int(row['digits'])}f} {row['unit']}".strip()
        for name in ("value", "usual")
    )
    return dict(batch=batch, count=len(table), name=row["item"], value=value, usual=usual)


def age_against_season(batch, mine, season) -> dict:
    """Facts of `figures.advice.age_against_season`: share lost by batch and species, whether outside the band."""
    own, kin = mine.iloc[-1], season.iloc[-1]
    rise = (mine["at_most"].shift(-1) - mine["at_least"]).to_numpy()[:-1]
    most = int(rise.argmax()) if len(rise) else 0
    lost = float(own["at_least"])
    return dict(
        batch=batch,
        lost=lost,
        kin=float(kin["at_least"]),
        low=float(kin["band_low"]),
        high=float(kin["band_high"]),
        step=float(rise[most]) if len(rise) else 0.0,
        beyond="above" if lost > kin["band_high"] else "below" if lost < kin["band_low"] else "within",
        day_from=float(mine["day"].iloc[most]),
        day_to=float(mine["day"].iloc[min(most + 1, len(mine) - 1)]),
    )


def drawings(guide) -> dict:
    """Facts of `figures.advice.breakout_drawings`: the looks that are drawn, in order."""
    return dict(looks=list(guide["look"]))


def season_at_a_glance(glance) -> dict:
    """Facts of `figures.glance.season_at_a_glance`: batches, machines, first and last day, best, worst, spells."""
    batches, zone = glance.batches, glance.timezone
    known = batches[batches["share"].notna()].sort_values("share", kind="stable")
    best, worst = (known.iloc[-1], known.iloc[0]) if len(known) else (None, None)
    spells = glance.spells
    largest = spells.loc[spells["degree_hours"].abs().idxmax()] if len(spells) else None
    return dict(
        batches=len(batches),
        machines=batches["machine"].nunique(),
        ended=len(known),
        first=batches["set_at"].min().tz_convert(zone).date() if len(batches) else None,
        last=batches["end_at"].max().tz_convert(zone).date() if len(batches) else None,
        best="" if best is None else best["batch"],
        best_share=0.0 if best is None else float(best["share"]),
        worst="" if worst is None else worst["batch"],
        worst_share=0.0 if worst is None else float(worst["share"]),
        spells=len(spells),
        kind="none" if largest is None else largest["kind"],
        machine="" if largest is None else str(largest["machine"]),
        when=None if largest is None else largest["start"].tz_convert(zone).date(),
        hours=0.0 if largest is None else float(largest["hours"]),
    )


def eggs_to_set(plan) -> dict:
    """Facts of `figures.next_set.eggs_to_set`: chicks, and eggs for one half, the wanted and 95 % sureness."""
    rows = plan.eggs.set_index(plan.eggs["sure"].round(4))
    wanted = round(float(plan.basis["sure"]), 4)
    number = {name: rows.at[sure, "eggs"] for name, sure in (("half", 0.5), ("eggs", wanted), ("most", 0.95))}
    return dict(
        chicks=int(plan.basis["chicks"]),
        sure=wanted,
        **{name: None if pd.isna(value) else int(value) for name, value in number.items()},
    )
