"""What the pictures of this room tell, as facts for ``say.text("picture_...", facts)``."""

from __future__ import annotations


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
    return dict(hit=int(met.sum()), above=int((met & beyond).sum()), worst=str(first["batch"]),
                worst_share=float(first["share_died"]), worst_high=float(first["share_expected_high"]),
                free=int((~met).sum()), free_above=int((~met & beyond).sum()))
