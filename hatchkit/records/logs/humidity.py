"""Relative humidity of a sensor file: as logged, or worked out from the wet bulb or the dew point."""

from __future__ import annotations

import numpy as np

from hatchkit.records import marks
from hatchkit.records.logs import values
from hatchkit.words.spelling import many


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
        shown = ", ".join(format(v, "g") for v in np.unique(rh[wrong])[:5])
        rh[wrong] = np.nan
        account.say(
            "doubtful",
            f"{many(len(wrong), 'humidity value')} of {channel.name} that cannot be: {shown}",
            "rh_pct is left empty there; the temperature stays",
        )
    highest = np.fmax.reduce(rh) if len(rh) else np.nan
    if 0.05 < highest <= 1.0 and np.isfinite(rh).sum() > 3:
        account.say("note", f"humidity of {channel.name} lies between 0 and 1", "read as a share and shown in %")
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
        wick = "a wick in still air" if wishes.still_air else "a ventilated wick"
        account.say(
            "note",
            f"{channel.name} has a wet bulb and no humidity",
            f"humidity worked out for {wick} (coefficient {coefficient * 1e4:.2f}e-4 per K) at "
            f"{wishes.pressure_kpa:.1f} kPa",
            'air = "still" or "fan" and altitude_m of the incubator in season.toml change that',
        )
    else:
        rh[good] = 100 * air.saturation_pressure(cold) / air.saturation_pressure(dry)
        account.say("note", f"{channel.name} has a dew point and no humidity", "humidity worked out from the dew point")
    return rh
