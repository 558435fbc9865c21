"""What an excursion looks like, judged by its curve alone, with what speaks for the word.

The words are hints for a person who was there: a log cannot know who opened a lid. Limits below are
judgement; the curves behind them: a lid opening lets warm, damp air out within minutes and the heater
brings it back on a bend; without power the closed box cools along an exponential towards the room
and its relative humidity rises; a faulty probe jumps both ways between two readings, and up faster than
a heater warms air.
"""

import numpy as np

#: A cold stretch that begins within this many hours of setting is the eggs' own cold (they take 6 to 8 h to
#: warm up, Penn State).
LOADING_H = 3.0
#: ... if it does not last longer than this, hours.
LOADING_LASTS_H = 12.0
#: 80 % of a fall within this time (or two steps) is fast.
FAST_H = 0.4
#: K per minute: faster than a closed box cools without power (17 K over 1.5 h starts at 0.2).
OPENING_RATE = 0.25
#: K in a single step, out and back again, without a bend.
JUMP_K = 3.0
#: ... and up faster than a heater brings the air of a small machine back, K per minute: with readings ten minutes
#: apart a lid or a lost heater can look just as square.
HEATER_K_MIN = 1.2
#: Hours between readings from which a fast curve cannot be seen.
COARSE_H = 0.2
#: Change of humidity, %RH, that tells something: cooling shut in raises it (vapour stays, capacity falls),
#: room air lowers it (20 degC and 50 %RH warmed to 30 degC is 28 %RH).
TOLD_RH = 5.0
#: K that probes of one incubator drift apart by when one of them fails. A real change moves them all.
PROBES_PART_K = 1.0
#: K from where it was before, up to which a slow change is a drift.
DRIFT_K = 3.0
#: ... and deeper, when it falls by fewer K per hour than a box without heat does (4 to 12).
CREEP_K, CREEP_K_H = 8.0, 2.5
#: An opening longer than this, hours, is more than candling: left ajar, perhaps.
AJAR_H = 2.0
#: Stretches from this many hours are judged by their upper quarter instead of their single extreme.
LONG_H = 4.0
#: For warm air: a rise of up to this many K, most of it over `SLOW_H` or longer, is a thermostat's drift.
WARM_DRIFT_K, SLOW_H = 2.0, 1.0


def looks_like(columns, first: int, last: int, warm: bool, step_h: float):
    """What one curve can look like and what speaks for it; days beside the range are told apart in ``climate.steady``.

    Parameters
    ----------
    columns : dict of arrays
        Readings with a temperature, as in ``batch_track``: clock_h (hours since setting), air_c,
        rh_pct, hours, gap, level, usual (nothing happens: in range, or where the machine ran for days),
        low_c, high_c, probe_spread_c.
    first, last : int
        Positions of the first and last reading out of range.
    warm : bool
    step_h : float
        Usual step, hours.

    Returns
    -------
    word : {"opening", "drift", "outage", "overheating", "sensor", "loading", "unclear"}
    evidence : dict
        `seen` (jumped, probes, loading, unlogged, fell_slowly, fell_fast, cooled, fell, rose) and its numbers:
        ``*_k`` differences, ``*_c`` temperatures, ``*_h`` hours, ``*_pct`` changes of humidity.
    """
    curve = measure(columns, first, last, warm, step_h)
    if curve["jumped"]:
        return "sensor", dict(seen="jumped", in_k=curve["jump_in_k"], out_k=curve["jump_out_k"])
    if curve["probes_part_k"] >= max(PROBES_PART_K, 0.9 * curve["depth_k"]):
        return "sensor", dict(seen="probes", apart_k=curve["probes_part_k"])
    return _warm(curve) if warm else _cold(curve)


def measure(columns, first, last, warm, step_h) -> dict:
    """Numbers that describe the curve: depth, times, rates, and whether both edges are jumps."""
    sign = 1.0 if warm else -1.0
    clock, air, gap = columns["clock_h"], columns["air_c"], columns["gap"]
    joined_before = first > 0 and not gap[first]
    joined_after = last + 1 < len(air) and not gap[last + 1]
    base = _base(columns, first)
    begin = first - 1 if joined_before else first
    beyond = sign * (air[begin : last + 1] - base)
    inside = sign * (air[first : last + 1] - base)
    hours = float(clock[last] - clock[first] + columns["hours"][last])
    # In a long stretch a lid opened on the way must not give the curve its name.
    depth = float(np.quantile(inside, 0.75)) if hours >= LONG_H else float(beyond.max())
    top = int(np.argmax(beyond >= depth))
    quick = int(np.argmax(beyond >= 0.8 * depth)) if depth > 0 else 0
    step = np.diff(clock[begin : begin + top + 1]) * 60
    rate = float((np.diff(beyond[: top + 1]) / np.maximum(step, 1e-9)).max()) if top > 0 else 0.0
    jump_in = sign * (air[first] - air[first - 1]) if joined_before else 0.0
    jump_out = sign * (air[last] - air[last + 1]) if joined_after else 0.0
    # The edge at which the air warms: the way in of heat, the way out of cold.
    up, at = (jump_in, first) if warm else (jump_out, last + 1)
    too_fast = bool(up > 0) and up >= HEATER_K_MIN * 60 * (clock[at] - clock[at - 1])
    deep = np.flatnonzero(inside >= 0.5 * inside.max()) + first
    rh = columns["rh_pct"]
    hours_before = slice(int(np.searchsorted(clock, clock[first] - 6.0)), first)
    spread = columns["probe_spread_c"]
    apart = _median(spread[deep]) - _median(spread[hours_before])
    flat = float(inside.max() - inside.min()) < 0.3 * depth
    return {
        "age_h": float(clock[first]),
        "hours": hours,
        "base_c": base,
        "extreme_c": float(base + sign * beyond.max()),
        "depth_k": depth,
        "to_extreme_h": float(clock[begin + top] - clock[begin]),
        "to_80_h": float(clock[begin + quick] - clock[begin]),
        "rate_k_min": rate,
        "jump_in_k": float(jump_in),
        "jump_out_k": float(jump_out),
        "jumped": bool(flat and too_fast and min(jump_in, jump_out) >= max(JUMP_K, 0.6 * depth)),
        "rh_change_pct": _median(rh[deep]) - _median(rh[hours_before]),
        "probes_part_k": apart if np.isfinite(apart) else 0.0,
        "step_h": step_h,
        "level": int(np.abs(columns["level"][first : last + 1]).max()),
        "back": bool(joined_after),
        "known_before": bool(joined_before),
    }


def _base(columns, first) -> float:
    """Median of the usual readings of the six hours before; else the middle of the range."""
    begin = int(np.searchsorted(columns["clock_h"], columns["clock_h"][first] - 6.0))
    before = columns["air_c"][begin:first][columns["usual"][begin:first]]
    if len(before) >= 3:
        return float(np.median(before))
    return float((columns["low_c"][first] + columns["high_c"][first]) / 2)


def _cold(curve):
    hours, depth = curve["hours"], curve["depth_k"]
    if curve["age_h"] < LOADING_H and hours <= LOADING_LASTS_H:
        return "loading", dict(seen="loading", depth_k=depth)
    if not curve["known_before"]:
        return "unclear", _unknown_before(curve, "coldest")
    fall = dict(depth_k=depth, over_h=curve["to_extreme_h"])
    fast = curve["to_80_h"] <= max(FAST_H, 2 * curve["step_h"])
    coarse = curve["step_h"] > COARSE_H
    damp = _dampness(curve)
    creeping = depth <= CREEP_K and 0.8 * depth < CREEP_K_H * curve["to_80_h"]
    if not fast and (depth <= DRIFT_K or creeping):
        return "drift", dict(seen="fell_slowly", **fall)
    rushed = curve["rate_k_min"] >= OPENING_RATE * (1 if fast else 2) and not coarse
    # Humidity that rises speaks against an opening only where the fall itself does not settle it.
    if (fast and rushed) or damp != "rose" and (rushed or damp == "fell" or (fast and depth <= DRIFT_K)):
        return "opening", dict(
            seen="fell_fast",
            depth_k=depth,
            most_h=curve["to_80_h"],
            whole_h=hours,
            then="ajar" if hours > AJAR_H else "back" if curve["back"] else "open",
            dry_pct=-curve["rh_change_pct"] if damp == "fell" else None,
        )
    if hours >= 0.5 and depth >= DRIFT_K and not (coarse and fast):
        return "outage", dict(
            seen="cooled",
            fell_k=curve["base_c"] - curve["extreme_c"],
            over_h=curve["to_extreme_h"],
            per_hour_k=60 * curve["rate_k_min"],
            extreme_c=curve["extreme_c"],
            damp_pct=curve["rh_change_pct"] if damp == "rose" else None,
        )
    return "unclear", dict(seen="fell", **fall, coarse=bool(coarse))


def _unknown_before(curve, worst) -> dict:
    """Evidence without a change: what was before was not logged, so nobody knows whether the air fell or rose."""
    since = "unknown" if curve["age_h"] >= LOADING_H else "too_long" if worst == "coldest" else "setting"
    return dict(
        seen="unlogged",
        extreme_c=curve["extreme_c"],
        worst=worst,
        since=since,
        whole_h=curve["hours"],
        stayed=False,
    )


def _dampness(curve) -> str:
    """Whether humidity rose, fell or tells nothing while the air was at its coldest."""
    change = curve["rh_change_pct"]
    if not np.isfinite(change) or abs(change) < TOLD_RH:
        return ""
    return "rose" if change > 0 else "fell"


def _median(values) -> float:
    values = values[np.isfinite(values)]
    return float(np.median(values)) if len(values) else float("nan")


def _warm(curve):
    rise = dict(
        seen="rose",
        depth_k=curve["depth_k"],
        over_h=curve["to_extreme_h"],
        extreme_c=curve["extreme_c"],
        whole_h=curve["hours"],
        stayed=False,
    )
    if not curve["known_before"]:
        rise = _unknown_before(curve, "warmest")
    slow = curve["to_80_h"] >= SLOW_H and curve["depth_k"] <= WARM_DRIFT_K
    if slow or (curve["level"] < 2 and curve["hours"] >= 2):
        return "drift", rise | dict(stayed=True)
    if curve["level"] >= 2:
        return "overheating", rise
    return "unclear", rise
