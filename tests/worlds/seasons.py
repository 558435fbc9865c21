"""The door of the package: one call for either world, and a balanced list of cases."""

from __future__ import annotations

import tempfile

import numpy as np

from . import second, third
from .codes import BIRDS, CAUSES, SEVERITY

WORLDS = {"second": second.make, "third": third.make}


def make_season(world, seed, cause=None, severity="moderate", species="chicken", folder=None, scope="batch"):
    """Write one season's folder and tell the truth about it.

    Parameters
    ----------
    world : "second" or "third"
    seed : int; the same arguments give the same season
    cause : None (no cause at all), a code of CAUSES, or a pair of codes at work in the same batch
    severity : "mild", "moderate" or "severe": band of the share of would-be fertile eggs lost beyond the ordinary
    species : a key of BIRDS
    folder : where to write; a new temporary folder when None (its path is truth["folder"])
    scope : "batch" (one hit batch) or "season" (every batch hit alike)

    Returns
    -------
    dict : world, seed, species, severity, scope, folder;
        batch_hit (name, or None), batches_hit, causes (codes);
        eggs_lost_by_cause {code: eggs}; excess_share {batch: expected share}; excess_realised {batch: share};
        would_be_fertile {batch: eggs};
        eggs : DataFrame batch, end, day (true day of death, bird's calendar), killed_by, lost_to (code, "ordinary",
            None: lost_to is "ordinary" for an egg that a cause killed but that would have been lost without it too);
        batches : list of dicts per batch, and season : dict (what the oracle needs)

    Raises
    ------
    ValueError
        For an unknown world, code, severity, species or scope.
    """
    for name, value, allowed in (
        ("world", world, WORLDS),
        ("severity", severity, SEVERITY),
        ("species", species, BIRDS),
        ("scope", scope, ("batch", "season")),
    ):
        if value not in allowed:
            raise ValueError(f"{name}: {value!r} is none of {list(allowed)}")
    folder = tempfile.mkdtemp(prefix="season_") if folder is None else folder
    found = WORLDS[world](folder, seed, cause, severity, species, scope)
    found["folder"] = str(folder)
    return found


def cases(count, seed=0, world="second", species=("chicken",), none_share=0.1, pair_share=0.1, season_share=0.05):
    """Arguments for `make_season`, balanced over causes and severities, in a shuffled order.

    Returns
    -------
    list of dicts, to be given as make_season(**case, folder=...)
    """
    draw = np.random.default_rng([9, seed])
    out, ring = [], []
    for number in range(count):
        ring = ring or list(draw.permutation(len(CAUSES)))
        kind = draw.random()
        if kind < none_share:
            cause = None
        elif kind < none_share + pair_share:
            cause = tuple(str(c) for c in draw.choice(CAUSES, 2, replace=False))
        else:
            cause = CAUSES[ring.pop()]
        whole = cause is not None and not isinstance(cause, tuple) and draw.random() < season_share
        out.append(
            {
                "world": world,
                "seed": int(seed * 100_000 + number),
                "cause": cause,
                "severity": str(draw.choice(list(SEVERITY))),
                "species": str(draw.choice(species)),
                "scope": "season" if whole else "batch",
            }
        )
    return out
