"""World 'third': every egg has a tolerance; wear and hurt pile up and kill it after a delay.

An egg is lost when ordinary wear plus the lasting damage of a cause passes its tolerance, or when a sharp hurt passes a
second one by itself. Development runs by the egg's own
temperature, so cold and warmth move the stage at which it dies and the hour it hatches. How much a cause matters is
settled by bisection so that the wanted share of eggs is lost beyond the ordinary; whose fault a loss is, is told by
running the very same eggs without the cause. Sources in damage.py; tolerances (log sd 0.35-0.7) from memory.
"""

from __future__ import annotations

import numpy as np
import pandas as pd
from scipy.stats import norm

from . import air, damage, surroundings, words, writing
from . import third_book as book
from .codes import BIRDS, SEVERITY, check_cause
from .kernels import event_age
from .second import truth

SAMPLE = 800  # eggs on which the strength of a cause is settled


def season_numbers(bird, codes, draw):
    """Numbers of the whole season."""
    return {
        "lost": float(np.clip(1 - draw.normal(bird.kept, 0.06), 0.06, 0.4)),
        "fertile": float(draw.uniform(*bird.fertile)),
        "tough": float(draw.uniform(0.35, 0.7)),
        "batch_sd": float(draw.uniform(0.03, 0.15)),
        "wear": draw.dirichlet([5.0, 1.5, 5.0]),
        "early_scale": float(draw.uniform(1.2, 2.6)),
        "late_at": float(draw.uniform(18.0, 19.5)),
        "lag": float(draw.uniform(0.2, 1.2)),  # days from a fatal hurt to death
        "ready_sd": float(draw.uniform(0.12, 0.25)),  # chicken days; hatch window of about a day (Meijerhof 2006)
        "jitter": draw.lognormal(0, 0.25, 5),
        "home": surroundings.season_home(bird, codes, draw),
        "habits": book.draw_habits(draw),
        "language": str(draw.choice(words.LANGUAGES)),
    }


def eggs_of(count, bird, found, codes, season, hours_air, draw, at):
    """Fresh eggs with their own tolerance, place, shell and clock; paths of damage per cause.

    Returns
    -------
    dict of arrays over eggs (and hours), see damage.rate
    """
    place = draw.uniform(-0.5, 0.5, count)
    spread = found["spread"] * (1.0 if "uneven_heat" in codes else 0.5)
    temp = hours_air["temp_c"].to_numpy()[:, None] + place * spread
    rate = damage.clock(temp, bird.set_c, bird.days)
    late = 0.9 * (np.exp(found["log_stored"]) - 5) / 24 * 21 / bird.days  # an hour or so per stored day (P27, P31)
    stage = np.cumsum(rate, axis=0) - np.clip(late, -0.3, 1.2) * np.minimum(1, np.cumsum(rate, axis=0) / 3)
    dry = (1 - found["rh_set"] / 100) / 0.48 * (1.0 + (0.25 if "altitude" in codes else 0.0))
    world = {
        "stage": np.maximum(stage, 0),
        "temp": temp,
        "set_c": bird.set_c,
        "place": place,
        "at": at,
        "loss": 0.12 * dry * draw.lognormal(0, 0.15, count),
        "jitter": season["jitter"],
    }
    # So worn that the share of eggs past their tolerance follows the season's curve of deaths by stage.
    curve = np.clip(damage.background(np.minimum(world["stage"], 21), season), 1e-6, 1)
    world["wear"] = np.exp(season["tough"] * (norm.ppf(season["lost"] * curve) - norm.ppf(season["lost"])))
    world["tolerance"] = np.exp(season["tough"] * draw.normal(size=count))
    world["own"] = {c: np.exp(damage.OWN.get(c, 0.5) * draw.normal(size=count)) for c in codes}
    tough = season["tough"]
    world["acute"] = {c: world["tolerance"] ** 0.5 * np.exp(tough * draw.normal(size=count)) for c in codes}
    world["path"] = {c: np.cumsum(damage.rate(c, world), axis=0) for c in codes if c != "infertile"}
    world["ready"] = 21 + season["ready_sd"] * draw.normal(size=count)
    return world


def _dies(world, strength, wear, last=False):
    """Whether each egg's load has passed a tolerance, by hour and egg, or at the last hour only."""
    pick = (lambda path: path[-1]) if last else (lambda path: path)
    load = wear * pick(world["wear"])
    fatal = np.zeros(load.shape, bool)
    for code, unit in strength.items():
        hurt = unit * world["own"][code] * pick(world["path"][code])
        stays = damage.STAYS.get(code, 1.0)
        load = load + stays * hurt
        if stays < 1:
            fatal |= hurt >= world["acute"][code]
    return fatal | (load >= world["tolerance"])


def settle(world, codes, parts, excess, wear):
    """Strengths of the causes so that the sample loses `excess` more than without them; codes in turn.

    Returns
    -------
    (dict code -> strength, share lost beyond the ordinary on the sample)
    """
    ordinary = _dies(world, {}, wear, last=True).mean()
    strength, barren, aim = {}, 0.0, 0.0
    for code, part in zip(codes, parts, strict=True):
        if code == "infertile":
            barren = min(part * excess / (1 - ordinary), 0.95)
            continue
        aim = min(aim + part * excess / (1 - barren), 0.97 * (1 - ordinary))
        low, high = -14.0, 14.0
        for _ in range(30):
            middle = (low + high) / 2
            lost = _dies(world, strength | {code: np.exp(middle)}, wear, last=True).mean() - ordinary
            low, high = (middle, high) if lost < aim else (low, middle)
        strength[code] = float(np.exp(high))
    kept = 1 - _dies(world, strength, wear, last=True).mean()
    if barren:
        strength["infertile"] = barren
    return strength, float((1 - ordinary) - (1 - barren) * kept)


def ends_of(world, strength, wear, season, bird, draw):
    """Ends of the eggs: frame end, day, stage, hatch_h, lost_to, by comparing with the same eggs unharmed."""
    killers = {c: u for c, u in strength.items() if c != "infertile"}
    fatal = _dies(world, killers, wear)
    eggs, hours = np.arange(fatal.shape[1]), len(fatal)
    lost = fatal[-1]
    first = fatal.argmax(axis=0)
    lag = draw.gamma(1.5, season["lag"] / 1.5, len(eggs)) * 24
    died = np.minimum(first + lag, hours - 1).astype(int)
    stage = world["stage"][died, eggs]
    hatch = (world["stage"] >= world["ready"]).argmax(axis=0)
    hatch = np.where(world["stage"][-1] >= world["ready"], hatch, hours - 1)
    ripe = world["ready"] - stage
    end = np.where(
        ~lost, "sound", np.where(ripe <= 0, "cull", np.where(ripe < draw.uniform(0.2, 0.7, len(eggs)), "pip", "dead"))
    )
    plain = _dies(world, {}, wear, last=True)
    owner = np.where(lost, "ordinary", "")
    final = {c: u * world["own"][c] * world["path"][c][-1] for c, u in killers.items()}
    for c in killers:
        spared = ~_dies(world, {o: u for o, u in killers.items() if o != c}, wear, last=True)
        most = np.all([final[c] >= final[o] for o in killers], axis=0)
        owner = np.where(lost & ~plain & (most | (spared & (owner == "ordinary"))), c, owner)
    frame = pd.DataFrame({"end": end, "day": (died + 1) / 24, "stage": stage, "hatch_h": hatch + 1.0, "lost_to": owner})
    return _marks(frame, draw)


def _marks(frame, draw):
    """Malposition and rot by whose fault the loss is (damage.MAL, damage.ROT)."""
    mal = frame["lost_to"].map(lambda c: damage.MAL.get(c, 0.08)).to_numpy() > draw.random(len(frame))
    rot = frame["lost_to"].map(lambda c: damage.ROT.get(c, 0.03)).to_numpy() > draw.random(len(frame))
    frame["mal"] = mal & (frame["end"] == "dead") & (frame["stage"] > 17.5)
    frame["rot"] = rot & (frame["end"] == "dead") & (frame["stage"] > 3)
    frame.loc[frame["end"].isin(["sound", "cull"]), ["day", "stage"]] = np.nan
    frame["lost_to"] = frame["lost_to"].where(frame["lost_to"] != "", None)
    frame["killed_by"] = frame["lost_to"]
    return frame


def _wear_level(season, draw):
    """Level of ordinary wear that loses the season's share of fertile eggs (tolerances are log-normal)."""
    level = float(np.exp(season["tough"] * norm.ppf(season["lost"])))
    return level * float(np.exp(draw.normal(0, season["batch_sd"])))


def _batch(i, bird, found, codes, severity, season, set_at, off, draw, at):
    """True fate of one batch: (record, eggs frame)."""
    real = air.batch_air(bird, found, set_at, set_at + pd.Timedelta(days=bird.days * 1.12 + 1.5), 60, draw)
    wear = _wear_level(season, draw)
    fertile = float(np.clip(season["fertile"] + draw.normal(0, 0.05), 0.4, 0.99))
    excess = float(draw.uniform(*SEVERITY[severity])) if codes else 0.0
    parts = draw.dirichlet([4.0] * len(codes)) if codes else np.array([])
    strength, expected = {}, 0.0
    if codes:
        order = sorted(range(len(codes)), key=lambda k: codes[k] != "infertile")
        sample = eggs_of(SAMPLE, bird, found, codes, season, real, draw, at)
        strength, expected = settle(sample, [codes[k] for k in order], parts[order], excess, wear)
    size = int(draw.integers(16, 61))
    eggs = ends_of(eggs_of(size, bird, found, codes, season, real, draw, at), strength, wear, season, bird, draw)
    barren = draw.random(size) < fertile * strength.get("infertile", 0.0)
    empty = ~barren & (draw.random(size) > fertile)
    for mask, owner in ((empty, "ordinary"), (barren, "infertile")):
        fated = mask & (eggs["end"] != "sound").to_numpy()  # would have been lost with a germ in it, too
        eggs.loc[mask, "end"], eggs.loc[mask, "killed_by"], eggs.loc[mask, "lost_to"] = "infertile", owner, owner
        eggs.loc[fated, "lost_to"] = "ordinary"
        eggs.loc[mask, ["day", "stage"]] = np.nan
        eggs.loc[mask, ["mal", "rot"]] = False
    record = {
        "batch": f"B{i + 1}",
        "eggs_set": size,
        "fertile": fertile,
        "causes": codes,
        "excess": expected,
        "parts": dict(zip(codes, parts, strict=True)),
        "found": found,
    }
    return record, eggs


def make(folder, seed, cause=None, severity="moderate", species="chicken", scope="batch"):
    """One season of world 'third'. See worlds.make_season."""
    draw = np.random.default_rng([3, seed])
    codes, bird = check_cause(cause), BIRDS[species]
    season = season_numbers(bird, codes, draw)
    plan = writing.schedule(bird, int(draw.integers(4, 10)), int(draw.integers(1, 4)), draw)
    hit = int(draw.integers(len(plan)))
    at = {c: event_age(c, draw) for c in codes}
    batches, rows, frames, real_of = [], [], [], {}
    for i, (machine, set_at, off) in enumerate(plan):
        mine = codes if codes and (scope == "season" or i == hit) else ()
        found = surroundings.draw_batch(bird, season["home"], mine, draw, at)
        record, eggs = _batch(i, bird, found, mine, severity, season, set_at, off, draw, at)
        row = book.row(record, eggs, season, bird, machine, set_at, off, draw)
        batches.append(record), rows.append(row), frames.append(eggs.assign(batch=record["batch"]))
        real_of[record["batch"]] = found
    logs, incubators = book.logs(rows, real_of, bird, draw)
    losses = [0.12 * (1 - min(b["found"]["rh_set"], 95) / 100) / 0.48 * float(draw.lognormal(0, 0.08)) for b in batches]
    weights = writing.weighings(bird, rows, losses, draw) if draw.random() < 0.25 else None
    settings = {
        "zone": writing.ZONES[season["language"]],
        "language": season["language"],
        "altitude_m": season["home"]["altitude_m"],
        "incubators": incubators,
    }
    writing.write_season(folder, rows, logs, settings, weights, style=str(draw.choice(["csv", "xlsx"])))
    return truth("third", seed, species, codes, severity, scope, batches, pd.concat(frames, ignore_index=True), season)
