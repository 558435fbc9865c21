"""When a cause of the fifth world kills: kernels of age, of what the struck eggs become, and how many are struck.

Ages are in days of a 21-day bird, in `BINS` bins. A death is timed by a Weibull or lognormal delay from setting, by a
late bump about the turn to breathing air, or by a Weibull delay from an event. Shapes follow what is published
(two phases of death: Kuurman et al. 2001; heat at day 7 the worst: Ande & Wilson 1981; seldom turned eggs die early and
late: Elibol & Brake; day 2-8 decides the position); all constants are this world's own (no source).
"""

from __future__ import annotations

import numpy as np
from scipy.special import ndtr

BINS = 32
EDGES = np.linspace(0, 21, BINS + 1)
MIDDLES = (EDGES[:-1] + EDGES[1:]) / 2
BANDS = {"mild": (0.10, 0.20), "moderate": (0.20, 0.38), "severe": (0.38, 0.70)}


def weibull(age, shape, scale):
    """Distribution function of a Weibull delay; arrays broadcast."""
    return 1 - np.exp(-((np.clip(age, 0, None) / scale) ** shape))


def lognormal(age, middle, spread):
    """Distribution function of a lognormal delay with this median."""
    return ndtr(np.log(np.clip(age, 1e-6, None) / middle) / spread)


def bump(age, middle, spread):
    """Normal about `middle`, cut off at setting and at the end."""
    low, high = ndtr((0 - middle) / spread), ndtr((21 - middle) / spread)
    return np.clip((ndtr((age - middle) / spread) - low) / (high - low), 0, 1)


ORDINARY = {
    "early": lambda age: weibull(age, 1.25, 3.1),
    "mid": lambda age: age / 21,
    "late": lambda age: bump(age, 19.6, 1.0),
}


def strengths(draw, n, severity=None):
    """Shares of the live embryos lost (n), of one severity or of all three alike."""
    bands = [BANDS[severity]] if severity else list(BANDS.values())
    low, high = np.array(bands)[draw.integers(len(bands), size=n)].T
    return draw.uniform(low, high)


def event_days(cause, draw, n):
    """Days of the event (n): evenly in the cause's window, or zeros."""
    return draw.uniform(*cause.window, size=n) if cause.window else np.zeros(n)


def harm(cause, k, day, draw):
    """What a cause does in n worlds, as drawn: each has its own shape about the usual one.

    Parameters
    ----------
    cause : `fifth_causes.Cause`
    k, day : arrays of n; share struck, day of the event (days of 21)

    Returns
    -------
    dict : ``cdf`` n x (BINS + 1), share of the struck dead by each edge; ``infertile``, ``pipped``, ``culled`` (n),
    shares of the struck; ``struck`` (n); ``cause``
    """
    n = len(k)
    weights = [part[0] for part in cause.parts] + [cause.infertile, cause.pipped, cause.culled]
    kept = np.array(weights) > 0
    shares = np.zeros((n, len(weights)))
    shares[:, kept] = draw.dirichlet(25 * np.array(weights)[kept] / sum(weights), size=n)
    stretch = np.exp(draw.normal(0, 0.12, size=(n, 1)))
    cdf = np.zeros((n, BINS + 1))
    for place, (_, kind, first, second) in enumerate(cause.parts):
        if kind == "weibull":
            own = weibull(EDGES, first, second * stretch)
        elif kind == "lognormal":
            own = lognormal(EDGES, first * stretch, second)
        elif kind == "bump":
            own = bump(EDGES, 21 - (21 - first) * stretch, second * stretch)
        else:
            own = weibull(EDGES - day[:, None], first, second * stretch)
        cdf += shares[:, [place]] * own / np.clip(own[:, [-1]], 0.05, None)
    infertile, pipped, culled = shares[:, -3:].T
    return {"cdf": cdf, "infertile": infertile, "pipped": pipped, "culled": culled, "struck": k, "cause": cause}
