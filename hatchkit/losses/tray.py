"""Where on the tray did embryos die? A map, and whether the dead lie together or at the edge."""

import math

import numpy as np
import pandas as pd

from hatchkit.losses.egg_rows import text

#: Eggs that tell nothing of the place: never held a living embryo, or were taken out.
NOT_AT_RISK = ("clear", "infertile", "removed", "unaccounted")


def tray_map(season, batch=None) -> pd.DataFrame:
    """One row per egg with a place: batch, tray, row, col, egg, fate, at_risk, died.

    Parameters
    ----------
    batch : optional
        Only this batch; all batches with places when left out.
    """
    if batch is not None:
        season.batch(batch)
    eggs = season.eggs
    columns = ["batch", "tray", "row", "col", "egg", "fate", "at_risk", "died"]
    if not len(eggs) or not {"row", "col"} <= set(eggs.columns):
        return pd.DataFrame(columns=columns)
    eggs = _which_egg(eggs)
    eggs = eggs[eggs["row"].notna() & eggs["col"].notna()]
    if batch is not None:
        eggs = eggs[eggs["batch"] == str(batch)]
    fates = _which_egg(season.fates[season.fates["egg"] != ""])
    of = ["batch", "name", "nth"]
    fate = dict(zip(fates[of].itertuples(index=False, name=None), fates["fate"], strict=True))
    keys = list(eggs[of].itertuples(index=False, name=None))
    out = pd.DataFrame(
        {
            "batch": [key[0] for key in keys],
            "tray": [text(tray) for tray in eggs["tray"]],
            "row": eggs["row"].to_numpy(dtype=float).astype(int),
            "col": eggs["col"].to_numpy(dtype=float).astype(int),
            "egg": [key[1] for key in keys],
            "fate": [fate.get(key, "unaccounted") for key in keys],
        }
    )
    out["at_risk"] = ~out["fate"].isin(NOT_AT_RISK)
    out["died"] = out["fate"].isin(("dead", "pipped_dead"))
    return out[columns]


def tray_season(season) -> pd.DataFrame:
    """Each place of a machine's trays over all batches whose eggs have places.

    Returns
    -------
    DataFrame
        machine ("" where it was not kept), tray, row, col, batches (that had an egg there), at_risk, died (embryos),
        share (missing where none was at risk).
    """
    mapped = tray_map(season)
    machines = season.batches.assign(batch=season.batches["batch"].astype(str)).set_index("batch")["incubator"]
    mapped["machine"] = mapped["batch"].map(machines).fillna("").astype(str)
    table = mapped.groupby(["machine", "tray", "row", "col"], as_index=False).agg(
        batches=("batch", "nunique"), at_risk=("at_risk", "sum"), died=("died", "sum")
    )
    return table.assign(share=(table["died"] / table["at_risk"].where(table["at_risk"] > 0)).astype(float))


def _which_egg(table) -> pd.DataFrame:
    """With batch and name as text, and nth: numbers may begin anew on each tray, so the second egg 1 is told apart."""
    table = table.assign(batch=table["batch"].astype(str), name=table["egg"].astype(str))
    return table.assign(nth=table.groupby(["batch", "name"]).cumcount())


def neighbours(row, col) -> np.ndarray:
    """Pairs of eggs that touch, at a side or a corner: int array of shape (pairs, 2)."""
    row, col = np.asarray(row), np.asarray(col)
    near = (np.abs(row[:, None] - row[None, :]) <= 1) & (np.abs(col[:, None] - col[None, :]) <= 1)
    return np.argwhere(np.triu(near, k=1))


def joins(died, pairs) -> int | np.ndarray:
    """Pairs of touching eggs that both died; `died` may hold many arrangements, shape (..., eggs)."""
    died = np.asarray(died)
    return np.sum(died[..., pairs[:, 0]] & died[..., pairs[:, 1]], axis=-1)


def at_edge(row, col) -> np.ndarray:
    """Whether each place lies at the edge of the filled part of the tray."""
    row, col = np.asarray(row), np.asarray(col)
    return (row == row.min()) | (row == row.max()) | (col == col.min()) | (col == col.max())


def clustering(season, batch=None, *, draws: int = 4999, seed: int = 1) -> pd.DataFrame:
    """Do the dead lie together, or at the edge? Permutation tests within each tray of each batch.

    Parameters
    ----------
    batch : optional
        Only this batch; all together when left out.

    Returns
    -------
    DataFrame
        One row a question: neighbours (pairs of touching eggs that both died) and edge (share of the dead at the
        edge), and together for the one answer of the family: the larger of the two standardised, on the same draws.
        seen, expected; chance of a pattern at least as strong when the same deaths fall anywhere on their tray
        (edge: in either direction); eggs at risk, deaths, trays; smallest: the smallest chance that any arrangement
        of so few deaths could have given. No rows where no egg has a place or fewer than 2 died; attrs["places"]:
        eggs with a place.
    """
    mapped = tray_map(season, batch)
    places = mapped[mapped["at_risk"].astype(bool)]
    trays = [part for _, part in places.groupby(["batch", "tray"], sort=False) if 0 < part["died"].sum() < len(part)]
    deaths = int(sum(part["died"].sum() for part in trays))
    columns = ["question", "seen", "expected", "chance", "smallest", "eggs", "deaths", "trays"]
    if deaths < 2:
        table = pd.DataFrame(columns=columns)
        table.attrs["places"] = len(mapped)
        return table
    random = np.random.default_rng(seed)
    seen, drawn = np.zeros(2), np.zeros((draws, 2))
    for part in trays:
        died, pairs = part["died"].to_numpy(), neighbours(part["row"], part["col"])
        edge = at_edge(part["row"], part["col"])
        shuffled = random.permuted(np.tile(died, (draws, 1)), axis=1)
        seen += joins(died, pairs), (died & edge).sum()
        drawn += np.column_stack([joins(shuffled, pairs), (shuffled & edge).sum(axis=1)])
    table = pd.DataFrame(_answers(seen, drawn, deaths), columns=columns).assign(
        eggs=sum(map(len, trays)), deaths=deaths, trays=len(trays)
    )
    table.attrs["places"] = len(mapped)
    return table


def _answers(seen, drawn, deaths) -> list[dict]:
    middle, spread = drawn.mean(axis=0), drawn.std(axis=0)
    spread = np.where(spread > 0, spread, 1.0)
    # Touching counts only when it is more than chance; the edge in both directions.
    score, scores = (seen - middle) / spread, (drawn - middle) / spread
    score[1], scores[:, 1] = abs(score[1]), np.abs(scores[:, 1])
    both, all_both = score.max(), scores.max(axis=1)
    rows = [
        {
            "question": name,
            "seen": seen[place] / share,
            "expected": middle[place] / share,
            **_chance(score[place], scores[:, place]),
        }
        for name, place, share in (("neighbours", 0, 1), ("edge", 1, deaths))
    ]
    return [*rows, {"question": "together", "seen": math.nan, "expected": math.nan, **_chance(both, all_both)}]


def _chance(score, scores) -> dict:
    def at_least(value):
        return (1 + np.sum(scores >= value - 1e-9)) / (1 + len(scores))

    return {"chance": at_least(score), "smallest": at_least(max(scores.max(), score))}
