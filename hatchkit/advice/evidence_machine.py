"""What the other batches of one machine tell: doses that good ones met too, and how late the others hatched."""

from __future__ import annotations

import numpy as np
import pandas as pd


def shared(found, batch, good, rows) -> float:
    """The dose that good batches of the same machine met by the same probe (their middle one); 0 without such a batch.

    A probe that reads a degree low shows cold all the time; what batches that did well share has harmed nobody.
    """
    machine, fine = rows[batch].get("incubator"), good.index[good > 0.5]
    doses = found.reindex([name for name in fine if name != batch and rows[name].get("incubator") == machine]).dropna()
    return float(doses.median()) if len(doses) else 0.0


def beyond_the_good(found, item, doses, good, rows) -> dict:
    """Doses by the day without the part that is shared with the good batches of the machine."""
    out = dict(doses)
    for batch, dose in found.items():
        if dose > 0:
            left = max(1 - shared(found, batch, good, rows) / dose, 0.0)
            out[batch] = out[batch]._replace(**{item: getattr(out[batch], item) * left})
    return out


def clock_of_machine(clock, rows) -> pd.Series:
    """Middle clock difference of the other batches of the same incubator; missing below two of them."""
    machines = {}
    for batch, late in clock.dropna().items():
        machines.setdefault(str(rows[batch].get("incubator")), []).append((batch, late))
    out = pd.Series(np.nan, index=clock.index)
    for batch in clock.index:
        others = [late for name, late in machines.get(str(rows[batch].get("incubator")), []) if name != batch]
        if len(others) >= 2 and not pd.isna(rows[batch].get("incubator")):
            out[batch] = float(np.median(others))
    return out
