"""How fast embryos grow at a temperature, next to the temperature they should have."""

import numpy as np

from hatchkit.climate.egg_heat import constant


def rate(lagged_air_c, usual_c):
    """Hours of development in an hour of clock time.

    Parameters
    ----------
    lagged_air_c : array
        Air with the egg's lag but without the embryo's own heat: the trade's days already contain it.
    usual_c : float or array
        Temperature at which the species takes its usual days; there the rate is 1.

    Returns
    -------
    array
        0 at 25 degC and below, 1 at `usual_c`, at most 1.13; missing stays missing.

    Notes
    -----
    Q10 = 1.85 (bobwhite eggs at 35.5 and 37.5 degC, Birchard: 1.835), which is good between 35 and
    39 degC; the fade between 30 and 25 degC and the top 2 K above the usual temperature are judgement.
    """
    temp = np.asarray(lagged_air_c, dtype=float)
    above = np.minimum(temp, usual_c + constant("rate_top_k")) - usual_c
    zero, full = constant("rate_zero_c"), constant("rate_full_c")
    return constant("rate_q10") ** (above / 10) * np.clip((temp - zero) / (full - zero), 0, 1)
