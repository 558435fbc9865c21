"""What a measured thing (days of storage, humidity, hours late) usually is with this person, by partial pooling."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

#: A keeper's own good batches are drawn towards the published value as if that stood for so many batches.
PUBLISHED_BATCHES = 1.0


@dataclass(frozen=True)
class Gauge:
    """Middle and spread of one item, and how many good batches stand behind it."""

    middle: float
    spread: float
    batches: int


def usual_of(values, weights, *, published, spread) -> Gauge:
    """Usual value of an item for this person.

    Parameters
    ----------
    values : array, shape (batches,)
        The item in the person's other batches; missing ones are left out.
    weights : array, shape (batches,)
        How good each batch was, 0 to 1: a poor batch is no measure of what does no harm.
    published : float
        Value at which the published texts see no harm.
    spread : float
        How far ordinary batches lie about the usual value (stated, in units of the item).

    Notes
    -----
    Normal with known spread; the published value counts as `PUBLISHED_BATCHES` batches. What good batches share with
    a poor one can't be what was wrong with it.
    """
    values, weights = np.asarray(values, float), np.asarray(weights, float)
    known = np.isfinite(values) & (weights > 0)
    values, weights = values[known], weights[known]
    total = weights.sum()
    middle = (published * PUBLISHED_BATCHES + weights @ values) / (PUBLISHED_BATCHES + total)
    around = weights @ (values - middle) ** 2 if total else 0.0
    return Gauge(float(middle), float(np.sqrt((3 * spread**2 + around) / (3 + total))), int((weights > 0.5).sum()))
