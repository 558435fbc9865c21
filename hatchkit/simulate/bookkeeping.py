"""What a person sees and writes down: candlings with their mistakes, breakout, counts, weighings."""

import numpy as np
import pandas as pd

LOOKS = ("candle1", "candle2", "transfer")


def candle(rng, eggs: pd.DataFrame, *, look_days, species, p, opened_clears=False) -> pd.DataFrame:
    """The person's view of each egg.

    Parameters
    ----------
    eggs : DataFrame
        From `biology.draw_eggs`.
    look_days : dict
        Age in days at candle1, candle2, transfer; a look that was not made is left out.
    species : Series
    p : dict
        `miss_rate` and `false_rate` are the candling mistakes.
    opened_clears : bool
        Eggs taken out at a candling are opened, so that infertile and early dead are told apart.

    Returns
    -------
    DataFrame, one row per egg
        egg, candle1, candle2, transfer, outcome, stage_day, out_at (look at which the egg left, or
        "hatch"), reason (rotten, cracked or empty), thrown_alive, missed.
    """
    count = len(eggs)
    scale = species["incubation_days"] / 21
    died = eggs["died_day"].fillna(np.inf).to_numpy()
    looks_clear = ~eggs["fertile"].to_numpy() | (died < p["clear_look_days"] * scale)
    rotten = eggs["rotten_day"].fillna(np.inf).to_numpy()
    cracked = rng.random(count) < p["cracked_share"]
    inside = np.ones(count, dtype=bool)
    out_at = np.full(count, "hatch", dtype=object)
    reason = np.full(count, "", dtype=object)
    thrown_alive, missed = np.zeros(count, dtype=bool), np.zeros(count, dtype=bool)
    seen = pd.DataFrame({"egg": eggs["egg"].to_numpy()})
    last = [name for name in LOOKS if name in look_days][-1:]
    for name in LOOKS:
        if name not in look_days:
            seen[name] = ""
            continue
        day = look_days[name]
        state = np.full(count, "alive", dtype=object)
        gone = looks_clear | (died <= day - 0.3)
        noticed = gone & (rng.random(count) >= p["miss_rate"])
        state[noticed] = np.where(looks_clear, "clear", "dead")[noticed]
        wrong = ~gone & (rng.random(count) < p["false_rate"])
        state[wrong] = "clear" if name == "candle1" else "dead"
        rots = (rotten <= day) | ((name in last) & np.isfinite(rotten))
        breaks = cracked & (name == next(iter(look_days)))
        state[rots | breaks] = "removed"
        state[~inside] = ""
        seen[name] = state
        leaves = inside & (state != "alive")
        reason[leaves & breaks] = "cracked"
        reason[leaves & rots] = "rotten"
        missed |= inside & gone & (state == "alive")
        thrown_alive |= leaves & ~gone & ~rots & ~breaks
        out_at[leaves] = name
        inside &= ~leaves
    seen["out_at"], seen["reason"] = out_at, reason
    seen["thrown_alive"], seen["missed"] = thrown_alive, missed
    return _at_the_end(rng, eggs, seen, scale=scale, p=p, opened_clears=opened_clears)


def _at_the_end(rng, eggs, seen, *, scale, p, opened_clears):
    """Outcome and breakout stage; eggs taken out unopened keep an empty outcome."""
    died = eggs["died_day"].to_numpy()
    empty = ~eggs["fertile"].to_numpy() | (died < p["infertile_look_days"] * scale)
    outcome = np.select(
        [eggs["culled"], eggs["hatched_day"].notna(), eggs["pipped"], empty],
        ["culled", "hatched", "pipped_dead", "infertile"],
        "dead",
    ).astype(object)
    left = seen["out_at"].to_numpy() != "hatch"
    outcome[left & (seen["reason"].to_numpy() != "")] = "removed"
    opened = ~left | opened_clears
    discarded = left & (seen["reason"].to_numpy() == "")
    outcome[discarded & ~np.isfinite(died) & eggs["fertile"].to_numpy()] = "dead"
    outcome[discarded & (outcome == "pipped_dead")] = "dead"
    outcome[discarded & ~opened] = ""
    # the eye is good to about half a day in the first half and a day later
    look = died + rng.normal(0, 0.03 * died.clip(0, 21 * scale) + 0.2)
    look = np.clip(np.round(look), 1, np.round(20 * scale))
    seen["outcome"] = outcome
    seen["stage_day"] = np.where((outcome == "dead") & opened & np.isfinite(died), look, np.nan)
    return seen


def count_up(seen, eggs, *, limits, opens_unhatched=True) -> dict:
    """The counts of one batch row, as a careful person would write them.

    Parameters
    ----------
    seen : DataFrame
        From `candle`.
    eggs : DataFrame
        The truth, for what opening the eggs shows (wrong position).
    limits : (float, float)
        Last day of early and of mid deaths.
    opens_unhatched : bool
        Without it all unhatched eggs are only counted as dead in shell.
    """
    columns = {name: seen[name].to_numpy() for name in seen}
    outcome, stage, end = columns["outcome"], columns["stage_day"], columns["out_at"] == "hatch"
    counts: dict = {}
    for number, name in enumerate(LOOKS, start=1):
        made = not (columns[name] == "").all()
        for kind in ("clear", "dead"):
            counts[f"{kind}{number}"] = int((columns[name] == kind).sum()) if made else None
    dead, empty = end & (outcome == "dead"), end & (outcome == "infertile")
    kinds = {
        "removed": outcome == "removed",
        "contaminated": columns["reason"] == "rotten",
        "cracked": columns["reason"] == "cracked",
        "culled": end & (outcome == "culled"),
        "hatched": end & np.isin(outcome, ("hatched", "culled")),
        "pipped_dead": end & (outcome == "pipped_dead"),
    }
    early, mid = limits
    opened = {
        "broken_infertile": empty,
        "broken_early": dead & (stage <= early),
        "broken_mid": dead & (stage > early) & (stage <= mid),
        "broken_late": dead & (stage > mid),
        "malpositioned": dead & (stage > mid) & eggs["malpositioned"].to_numpy(),
    }
    kinds |= opened if opens_unhatched else {"dead_in_shell": dead | empty}
    unknown = ["dead_in_shell"] if opens_unhatched else opened
    return counts | {name: int(which.sum()) for name, which in kinds.items()} | dict.fromkeys(unknown)


def weighings(rng, eggs, seen, *, batch, moments, days, transfer_day, single) -> pd.DataFrame:
    """Weights of the eggs still in at each moment: `single` eggs, or the whole tray at once.

    Returns
    -------
    DataFrame: batch, egg, weighed_at, grams, eggs_weighed
    """
    order = {name: place for place, name in enumerate([*LOOKS, "hatch"])}
    left_at = seen["out_at"].map(order).to_numpy()
    rows, chosen = [], range(min(12, len(eggs)))
    for place, (moment, day) in enumerate(zip(moments, days, strict=True)):
        inside = left_at >= place
        grams = eggs["weight_g"] * (1 - eggs["loss_share"] * day / transfer_day)
        if single:
            chosen = [i for i in chosen if inside[i]]
            for i in chosen:
                value = round(grams[i] + rng.normal(0, 0.1), 1)
                rows.append((batch, str(eggs["egg"][i]), moment, value, 1))
        else:
            rows.append((batch, "", moment, round(grams[inside].sum() + rng.normal(0, 2)), int(inside.sum())))
    return pd.DataFrame(rows, columns=["batch", "egg", "weighed_at", "grams", "eggs_weighed"])
