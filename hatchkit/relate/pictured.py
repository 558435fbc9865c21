"""What the pictures of this room tell, as facts for ``say.text("picture_...", facts)``."""

from typing import Any


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
    first: Any = worst.iloc[0] if len(worst) else {"batch": "", "share_died": 0.0, "share_expected_high": 0.0}
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
