"""The counts behind the relation: which rows can be used, and the columns of the model."""

from dataclasses import dataclass

import numpy as np
import pandas as pd

NEEDED = ["batch", "window", "days", "at_risk", "died"]
#: Numeric covariates that are taken up if the table has them and the data can carry them, in this order.
COVARIATES = ["stored_days", "flock_age_weeks"]
#: Where there are several of them, comparisons stay inside one.
BEYOND = ("season", "keeper")


@dataclass(frozen=True)
class Design:
    """Clean rows and their codes.

    Attributes
    ----------
    rows : DataFrame
        Rows that can be used, in the order of the table given, with float counts and `dose`
        (missing where not known).
    left_out : DataFrame
        batch, window, why.
    batch, window, cell : int array (rows,)
        Codes; a cell is a window of one species, and each cell has its own baseline hazard.
    batches, windows : array
        What the codes stand for.
    strata : str array (batches,)
        Species and incubator and, of several years or keepers, season and keeper; exchanges stay inside.
    pools : str array (batches,)
        Batches among which histories are exchanged: one stratum, the same looks.
    step : float
        Mean dose of the exposed rows: the dose at which hazard ratios are stated.
    exposed : bool array (rows,)
    extra : array (rows, terms)
        Columns besides cells and dose; `extra_names` names them, `not_carried` those left out.
    """

    rows: pd.DataFrame
    left_out: pd.DataFrame
    batch: np.ndarray
    window: np.ndarray
    cell: np.ndarray
    batches: np.ndarray
    windows: np.ndarray
    strata: np.ndarray
    pools: np.ndarray
    step: float
    exposed: np.ndarray
    extra: np.ndarray
    extra_names: list
    not_carried: list

    @property
    def died(self):
        """Deaths per row, shape (rows,)."""
        return self.rows["died"].to_numpy(float)

    @property
    def at_risk(self):
        """Living embryos at the start of each row's window, shape (rows,)."""
        return self.rows["at_risk"].to_numpy(float)

    @property
    def dose(self):
        """Dose per row as scored, NaN where nothing was logged, shape (rows,)."""
        return self.rows["dose"].to_numpy(float)

    @property
    def offset(self):
        """Log of the window's length in days, shape (rows,)."""
        return np.log(self.rows["days"].to_numpy(float))

    @property
    def known(self):
        """Rows whose dose is known."""
        return np.isfinite(self.dose)

    @property
    def exposed_batches(self):
        """Codes of the batches with an exposed row."""
        return np.unique(self.batch[self.exposed])

    @property
    def known_batches(self):
        """Codes of the batches with a row of known dose."""
        return np.unique(self.batch[self.known])

    def cells(self):
        """Dummy columns of the cells (rows, cells)."""
        return np.eye(self.cell.max(initial=-1) + 1)[self.cell]

    def grid(self, values):
        """Row values laid out as (batches, windows); nan where a batch has no such window."""
        out = np.full((len(self.batches), len(self.windows)), np.nan)
        out[self.batch, self.window] = values
        return out


def design(table, dose="dose", *, covariates=None, least=0.0) -> Design:
    """Check a table of counts and code it.

    Parameters
    ----------
    table : DataFrame
        batch, window, days, at_risk, died, the dose column and, if kept, species, incubator and
        covariates. Each batch has a window at most once.
    dose : str
        Name of the dose column.
    covariates : list of str, optional
        Numeric columns to adjust for; by default `COVARIATES`, as far as the table has them.
    least : float
        Doses at or below this count as no exposure (and are set to 0).
    """
    missing = [name for name in [*NEEDED, dose, *(covariates or [])] if name not in table]
    if missing:
        raise ValueError(f"the table of counts lacks the columns {', '.join(missing)}")
    rows, left_out = _usable(table, dose, least)
    batch, batches = pd.factorize(rows["batch"])
    window, windows = _in_order(rows)
    species = _text(rows, "species")
    cell, _ = pd.factorize(pd.Series(species + "|" + window.astype(str)))
    strata = pd.Series(species + "|" + _text(rows, "incubator"))
    for name in BEYOND:
        if name in rows and rows[name].nunique() > 1:
            strata = strata + "|" + _text(rows, name)
    strata = strata.groupby(batch).first().to_numpy(str)
    exposed, step = _exposed(rows)
    extra, names, not_carried = _extra(rows, batch, covariates)
    return Design(
        rows,
        left_out,
        batch,
        window,
        cell,
        np.asarray(batches),
        np.asarray(windows),
        strata,
        _pools(strata, batch, window),
        step,
        exposed,
        extra,
        names,
        not_carried,
    )


def _exposed(rows):
    """Exposed rows (bool), and the mean dose of these."""
    value = rows["dose"].to_numpy(float)
    exposed = np.isfinite(value) & (value > 0)
    return exposed, float(value[exposed].mean()) if exposed.any() else 1.0


def _pools(strata, batch, window):
    """Stratum and looks of each batch; batches of a stratum whose looks no other has form one mixed pool.

    A history without a look, dealt to a batch that has it, would lose what the observed arrangement never
    loses: chance then looked too small in 11 % of simulated seasons with missing looks instead of 5 %.
    """
    made = np.zeros((len(strata), window.max(initial=-1) + 1), bool)
    made[batch, window] = True
    looks = pd.Series(
        [
            stratum + "|" + "".join("x" if look else "-" for look in row)
            for stratum, row in zip(strata, made, strict=True)
        ],
        dtype=object,
    )
    lonely = looks.groupby(looks).transform("size") == 1
    return looks.where(~lonely, pd.Series(strata, dtype=object) + "|mixed").to_numpy(str)


def _in_order(rows):
    """Codes of the windows in the order of time where the table has it, else of their numbers or of the table."""
    if "day_end" in rows:
        windows = rows.groupby("window", sort=False)["day_end"].mean().sort_values(kind="stable").index
        return windows.get_indexer(rows["window"]), windows
    return pd.factorize(rows["window"], sort=pd.api.types.is_numeric_dtype(rows["window"]))


def _text(rows, name):
    if name not in rows:
        return np.full(len(rows), "", dtype=object)
    return rows[name].astype(object).where(rows[name].notna(), "").astype(str).to_numpy(object)


def _usable(table, dose, least):
    rows = table.reset_index(drop=True).copy()
    for name in ("days", "at_risk", "died"):
        rows[name] = pd.to_numeric(rows[name], errors="coerce").astype(float)
    value = pd.to_numeric(rows[dose], errors="coerce").astype(float)
    rows["dose"] = value.where(value.isna() | (value > least), 0.0)
    rows["at_row"] = np.arange(len(rows))
    why = pd.Series("", index=rows.index)
    why[rows.duplicated(["batch", "window"])] = "twice"
    why[~(rows["days"] > 0)] = "no_length"
    why[rows["died"] > rows["at_risk"]] = "too_many_dead"
    why[~(rows["at_risk"] >= 1)] = "no_eggs"
    why[rows[["at_risk", "died"]].isna().any(axis=1)] = "not_counted"
    out = why != ""
    left_out = rows.loc[out, ["batch", "window"]].assign(why=why[out], exposed=rows["dose"][out] > 0)
    left_out = left_out.reset_index(drop=True)
    return rows[~out].reset_index(drop=True), left_out


def _extra(rows, batch, covariates):
    """Covariate columns within what the data can carry: a term per 10 deaths and per 5 batches beyond 2."""
    deaths = rows["died"].sum()
    batches = len(np.unique(batch))
    room = int(min(deaths // 10, max(batches - 2, 0) // 5))
    columns, names, not_carried = [], [], []
    for name, block in _candidates(rows, covariates):
        if block is None or block.shape[1] > room:
            not_carried.append(name)
            continue
        room -= block.shape[1]
        columns.append(block)
        names.append(name)
    extra = np.hstack(columns) if columns else np.empty((len(rows), 0))
    return extra, names, not_carried


def _candidates(rows, covariates):
    """Name and columns of each candidate; None where it is missing too often to be used."""
    for name in ("incubator", *BEYOND):
        label = _text(rows, name)
        levels = np.unique(label)
        if len(levels) > 1:
            yield name, (label[:, None] == levels[1:]).astype(float)
    for name in [n for n in COVARIATES if n in rows] if covariates is None else covariates:
        value = pd.to_numeric(rows[name], errors="coerce").to_numpy(float)
        known = np.isfinite(value)
        if not len(known) or known.mean() < 0.8:
            if known.any():
                yield name, None
            continue
        spread = value[known].std()
        if spread > 0:
            yield name, np.where(known, (value - value[known].mean()) / spread, 0.0)[:, None]
