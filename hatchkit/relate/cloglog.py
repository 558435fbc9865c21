"""Complementary log-log binomial fits of many simulated seasons at once, on plain arrays.

The reported model is fitted by statsmodels (`hatchkit.relate.hazard`); this is the same model for the
places where hundreds of seasons with one design are fitted together (null fits, power, calibration).
"""

import numpy as np

#: Linear predictors are kept inside this range: hazards from 1e-11 to 1 - 1e-10.
ETA_RANGE = (-25.0, 3.1)
#: Furthest that one step may move a linear predictor; the step's direction is kept, whatever the columns' units.
LONGEST = 4.0


def fit_many(died, at_risk, design, offset=0.0, *, ridge=0.0, rounds=30, tolerance=1e-10):
    """Maximum likelihood (Fisher scoring) of log(-log(1 - p)) = design @ b + offset.

    Parameters
    ----------
    died : array (seasons, rows) or (rows,)
        Deaths.
    at_risk : array (rows,)
        Eggs alive at the start; at least 1.
    design : array (rows, terms)
    offset : array (rows,) or float
        For a hazard: log of the window's length in days.
    ridge : float
        Added to the information's diagonal; holds coefficients finite where the data do not.
    rounds, tolerance
        Longest number of steps; stop when no coefficient moves by more than this.

    Returns
    -------
    coef : array (seasons, terms)
    covariance : array (seasons, terms, terms)
        Inverse of the expected information (no overdispersion).
    share : array (seasons, rows)
        Fitted probability of death.

    Source: McCullagh & Nelder 1989, Generalized Linear Models, ch. 2 and 4 (method, from memory); tests
    compare it with statsmodels.
    """
    died = np.atleast_2d(np.asarray(died, float))
    at_risk, design = np.asarray(at_risk, float), np.asarray(design, float)
    terms = design.shape[1]
    pairs = np.einsum("np,nq->npq", design, design).reshape(len(design), terms * terms)
    start = np.log(-np.log1p(-(died.sum(1) + 0.5) / (at_risk.sum() + 1.0)))
    working = start[:, None] - np.broadcast_to(offset, died.shape)
    coef = np.linalg.lstsq(design, working.T, rcond=None)[0].T
    eye = np.eye(terms) * ridge
    for _ in range(rounds):
        share, slope, weight = _parts(coef @ design.T + offset, at_risk)
        information = (weight @ pairs).reshape(-1, terms, terms) + eye
        score = ((died - at_risk * share) * slope) @ design - ridge * coef
        step = np.linalg.solve(information, score[..., None])[..., 0]
        reach = np.abs(step @ design.T).max(axis=1, keepdims=True, initial=0.0)
        step = step * np.minimum(1.0, LONGEST / np.maximum(reach, LONGEST))
        coef = coef + step
        if np.abs(step).max(initial=0.0) < tolerance:
            break
    share, _, weight = _parts(coef @ design.T + offset, at_risk)
    information = (weight @ pairs).reshape(-1, terms, terms) + eye
    return coef, np.linalg.inv(information), share


def _parts(eta, at_risk):
    """Probability, d log-likelihood / d eta per death above expectation, and the working weight."""
    hazard = np.exp(np.clip(eta, *ETA_RANGE))
    share = -np.expm1(-hazard)
    slope = hazard / share
    return share, slope, at_risk * slope * hazard * np.exp(-hazard)


def dispersion(died, at_risk, share, freedom):
    """Pearson X2 over its degrees of freedom; arrays (seasons, rows) -> (seasons,)."""
    expected = at_risk * share
    chi2 = ((died - expected) ** 2 / (expected * (1 - share))).sum(-1)
    return chi2 / freedom
