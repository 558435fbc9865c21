"""Cause codes, kinds of bird and severity bands shared by both worlds.

Sources
-------
Codes are the project's list of causes (names only) and eight further ones. Lengths, transfer days and set points:
bird-incubation chart of A. L. Cartwright, Texas A&M AgriLife B-6092, 2000 (read as a forum copy). Candling days:
Ernst et al., UC ANR 8134. Egg weights: Bagliacca et al. 2005 (duck), French 2022 (turkey), the rest from memory.
The bands of severity are this family's own choice.
"""

from __future__ import annotations

from dataclasses import dataclass

CAUSES = (
    "infertile",
    "long_storage",
    "bad_storage",
    "old_flock",
    "flock_health",
    "heat_spell",
    "cold_spell",
    "warm_throughout",
    "cool_throughout",
    "too_humid",
    "too_dry",
    "dry_hatch",
    "turning",
    "ventilation",
    "contamination",
    "uneven_heat",
    "altitude",
    "small_end_up",
    "fumes",
    "transfer_jolt",
    "navel_infection",
    "vitamin_lack",
    "posted_eggs",
    "late_turning",
)

# Share of the eggs that would have been fertile, lost beyond what the batch would have lost anyway.
SEVERITY = {"mild": (0.10, 0.15), "moderate": (0.20, 0.35), "severe": (0.45, 0.70)}

# What a keeper's book and log can show of a cause, for choosing test cases and reading misses:
#   log = temperature or humidity log; sheet = a column besides the counts; counts = only losses, signs and words.
SHOWS_IN = {
    "infertile": "counts",
    "long_storage": "sheet",
    "bad_storage": "counts",
    "old_flock": "sheet",
    "flock_health": "counts",
    "heat_spell": "log",
    "cold_spell": "log",
    "warm_throughout": "log",
    "cool_throughout": "log",
    "too_humid": "log",
    "too_dry": "log",
    "dry_hatch": "log",
    "turning": "counts",
    "ventilation": "counts",
    "contamination": "counts",
    "uneven_heat": "log",
    "altitude": "sheet",
    "small_end_up": "counts",
    "fumes": "counts",
    "transfer_jolt": "counts",
    "navel_infection": "counts",
    "vitamin_lack": "counts",
    "posted_eggs": "sheet",
    "late_turning": "counts",
}

DAYS = 21  # hazards of world 'second' are drawn on the chicken's days and stretched to the kind of bird


@dataclass(frozen=True)
class Bird:
    """One kind of bird: lengths in days, set point in degC, usual relative humidity in %, egg in g."""

    name: str
    days: float
    transfer: float
    look1: float
    look2: float
    set_c: float
    rh_set: float
    rh_hatch: float
    egg_g: float
    fertile: tuple[float, float]  # range of the season's mean fertility
    kept: float  # share of fertile eggs hatched in an ordinary batch: centre of the season draw

    def to_bird(self, chicken_day):
        """Days of this bird from days of the chicken (linear stretch, a simplification: embryos do not scale so)."""
        return chicken_day * self.days / DAYS


# kept: chicken small flock 70-90 % (S52 hobby figures; S08 over 90 % is a good hatchery), duck and goose harder (S34),
# partridge-like game birds 82-86 % (P43), quail lower with early deaths of 10-20 % (P38).
BIRDS = {
    "chicken": Bird("chicken", 21, 18, 7, 14, 37.5, 52, 72, 60, (0.78, 0.96), 0.83),
    "duck": Bird("duck", 28, 25, 9, 17, 37.5, 57, 76, 80, (0.75, 0.94), 0.76),
    "quail": Bird("quail", 17.5, 15, 6, 11.5, 37.5, 54, 74, 12, (0.72, 0.93), 0.76),
    "turkey": Bird("turkey", 28, 25, 9, 17, 37.5, 54, 74, 85, (0.76, 0.94), 0.79),
    "goose": Bird("goose", 30, 27, 9, 18, 37.5, 57, 76, 150, (0.62, 0.88), 0.71),
    "pheasant": Bird("pheasant", 24.5, 21, 7, 15, 37.5, 57, 76, 32, (0.75, 0.93), 0.77),
}


def check_cause(cause):
    """Cause argument as a tuple of codes: () for none, one code, or two.

    Raises
    ------
    ValueError
        For a code that is not in CAUSES, or more than two of them, or the same one twice.
    """
    codes = () if cause is None else (cause,) if isinstance(cause, str) else tuple(cause)
    if len(codes) > 2 or len(set(codes)) != len(codes):
        raise ValueError(f"at most two different causes: {codes}")
    for code in codes:
        if code not in CAUSES:
            raise ValueError(f"no such cause: {code}")
    return codes
