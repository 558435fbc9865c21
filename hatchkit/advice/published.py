"""The stages that are scored and the published ledger: how an ordinary batch's eggs fall on them."""

from __future__ import annotations

from functools import cache

import numpy as np

from hatchkit import reference

#: Stages of the score; "clear" holds clears and opened infertiles, "hatched" good chicks only.
STAGES = ("hatched", "culled", "clear", "early", "mid", "late", "pipped_dead", "removed")


def loss_shares(shares, clears_counted) -> np.ndarray:
    """How eggs that are no chicks are spread over the stages, from shares of eggs set."""
    lost = np.array(shares, dtype=float)
    lost[STAGES.index("hatched")] = 0.0
    if clears_counted:
        lost[STAGES.index("clear")] = 0.0
    return lost / lost.sum()


@cache
def published_shares() -> np.ndarray:
    """Shares of eggs set of the published ledger (``reference/ordinary_ledger.csv``), in the order of `STAGES`."""
    shares = reference.load("ordinary_ledger").set_index("stage").loc[list(STAGES), "share_of_set"].to_numpy()
    return shares / shares.sum()
