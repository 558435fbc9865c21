"""What the pictures of this room tell, as facts for ``say.text("picture_...", facts)``."""

from __future__ import annotations

from hatchkit import reference


def losses_against_dose(batches) -> dict:
    """Facts of `figures.relate.losses_against_dose`: hit, above, worst, worst_share, worst_high, free, free_above.

    Parameters
    ----------
    batches : DataFrame
        ``Relation.batches``.
    """
    known = batches[batches["dose"].notna()]
    met, beyond = known["exposed"].astype(bool), known["share_died"] > known["share_expected_high"]
    worst = known[met & beyond].sort_values("share_died").tail(1)
    first = worst.iloc[0] if len(worst) else {"batch": "", "share_died": 0.0, "share_expected_high": 0.0}
    return dict(
        hit=int(met.sum()),
        above=int((met & beyond).sum()),
        worst=str(first["batch"]),
        worst_share=float(first["share_died"]),
        worst_high=float(first["share_expected_high"]),
        free=int((~met).sum()),
        free_above=int((~met & beyond).sum()),
    )


def hazard_by_window(windows) -> dict:
    """Facts of `figures.relate.hazard_by_window`: the window with the highest ratio, how many lie clearly above."""
    known = windows[windows["hazard_ratio"].notna()]
    if known.empty:
        return dict(name=None, ratio=0.0, low=0.0, high=0.0, sure=False, clear=0, count=0)
    row = known.loc[known["hazard_ratio"].astype(float).idxmax()]
    return dict(
        name=str(row["name"]),
        ratio=float(row["hazard_ratio"]),
        low=float(row["low"]),
        high=float(row["high"]),
        sure=bool(row["low"] > 1),
        clear=int((known["low"] > 1).sum()),
        count=len(known),
    )


def losses_beside_exposure(exposure) -> dict:
    """Facts of `figures.relate.losses_beside_exposure`: spells, their batches, the worst stretch, unlogged ones.

    A stretch counts as one with a spell where its `dose` is above 0, or, in a table without doses, where the egg met
    at least the degree-hours that count (``reference/dose_measures.csv``).
    """
    met = _met(exposure)
    share = (exposure["died"] / exposure["at_risk"].where(exposure["at_risk"] > 0)).astype(float)
    worst = exposure.loc[share.idxmax()] if share.notna().any() else None
    return dict(
        spells=int(met.sum()),
        batches=list(dict.fromkeys(exposure.loc[met, "batch"].astype(str))),
        worst="" if worst is None else str(worst["batch"]),
        worst_share=0.0 if worst is None else float(share.max()),
        day_from=0.0 if worst is None else float(worst["day_start"]),
        day_to=0.0 if worst is None else float(worst["day_end"]),
        met=bool(worst is not None and met[worst.name]),
        dark=int((~(exposure["share_logged"] > 0)).sum()),
    )


def _met(exposure):
    if "dose" in exposure:
        return exposure["dose"] > 0
    least = reference.load("dose_measures").set_index("measure")["least"]
    return (exposure["egg_degree_hours_warm"] >= least["egg_degree_hours_warm"]) | (
        exposure["egg_degree_hours_cold"] >= least["egg_degree_hours_cold"]
    )
