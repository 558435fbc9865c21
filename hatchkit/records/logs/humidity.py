"""Relative humidity of a sensor file: as logged, a share or per cent, or from the wet bulb or the dew point."""

import numpy as np

from hatchkit.records import marks
from hatchkit.records.logs import values


def humidity(channel, numbers, temp_c, wishes, account) -> np.ndarray:
    """Relative humidity in % of every line of one channel.

    Parameters
    ----------
    numbers : dict
        Values of each quantity the channel logs, as written: rh, wet_bulb, dew_point.
    temp_c : ndarray of float
        Air temperature of the same lines in °C.
    """
    rh = numbers.get("rh")
    if rh is None:
        return _from_other(channel, numbers, temp_c, wishes, account)
    odd = np.flatnonzero((rh < 0) | (rh > 100))
    wrong = odd[marks.humidity_out_of_range(rh[odd])]
    wrong = np.union1d(wrong, odd[values.missing_codes(rh[odd], "rh", "%")])
    if len(wrong):
        rh = rh.copy()
        facts = dict(count=len(wrong), name=channel.name, values=np.unique(rh[wrong])[:5].tolist())
        rh[wrong] = np.nan
        account.say("doubtful", "log_humidity_impossible", **facts)
    highest = np.fmax.reduce(rh) if len(rh) else np.nan
    if 0.05 < highest <= 1.0 and np.isfinite(rh).sum() > 3:
        account.say("note", "log_humidity_share", name=channel.name)
        rh = rh * 100
    return rh


def _from_other(channel, numbers, temp_c, wishes, account) -> np.ndarray:
    """Humidity from the wet bulb or the dew point, where there is no humidity column."""
    nothing = np.full(len(temp_c), np.nan)
    other = "wet_bulb" if "wet_bulb" in numbers else "dew_point" if "dew_point" in numbers else None
    if other is None or "temp" not in numbers:
        return nothing
    # The one place where records looks into climate: air.py holds formulas only and imports nothing of it.
    from hatchkit.climate import air

    logged = numbers[other]
    said = channel.units.get(other) or channel.units.get("temp") or values.unit_from_range(logged)[0]
    wet = values.to_celsius(logged, wishes.temp_unit or said)
    good = np.isfinite(wet) & np.isfinite(temp_c) & (wet > -20) & (wet <= temp_c + 0.5)
    rh = nothing
    dry, cold = temp_c[good], np.minimum(wet[good], temp_c[good])
    if other == "wet_bulb":
        coefficient = air.STILL_WICK if wishes.still_air else air.VENTILATED_WICK
        rh[good] = air.rh_from_wet_bulb(dry, cold, wishes.pressure_kpa, coefficient)
        account.say(
            "note",
            "log_humidity_wet_bulb",
            name=channel.name,
            air="still" if wishes.still_air else "fan",
            coefficient=round(coefficient * 1e4, 2),
            pressure=round(wishes.pressure_kpa, 1),
        )
    else:
        rh[good] = 100 * air.saturation_pressure(cold) / air.saturation_pressure(dry)
        account.say("note", "log_humidity_dew_point", name=channel.name)
    return rh
