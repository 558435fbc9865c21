"""Why could nothing be related? What the rows of a design lack."""

import numpy as np


def nothing_to_relate(design) -> dict:
    """Why there is nothing to relate; empty if there is.

    `why` is no_window (of none eggs, dead and length are known), not_logged, one_batch, no_death, all_died,
    no_excursion, same_dose, or uncounted (every window with an excursion was left out: `windows`, `batches`, and
    whether they were `not_counted` or cannot be used).
    """
    if len(design.rows) == 0:
        return dict(why="no_window")
    if not design.known.any():
        return dict(why="not_logged")
    if len(design.known_batches) < 2:
        return dict(why="one_batch")
    if design.died[design.known].sum() == 0:
        return dict(why="no_death")
    if (design.at_risk - design.died)[design.known].sum() == 0:
        return dict(why="all_died")
    if not design.exposed.any():
        return _unseen(design.left_out) or dict(why="no_excursion")
    if all(
        np.ptp(design.dose[design.known & (design.cell == cell)]) < 1e-12
        for cell in np.unique(design.cell[design.known])
    ):
        return dict(why="same_dose")
    return {}


def _unseen(left_out) -> dict:
    """That every window with an excursion was left out; empty if none was."""
    hit = left_out[left_out["exposed"].astype(bool)]
    if hit.empty:
        return {}
    return dict(
        why="uncounted",
        windows=len(hit),
        batches=list(dict.fromkeys(hit["batch"].astype(str))),
        not_counted=bool((hit["why"] == "not_counted").all()),
    )
