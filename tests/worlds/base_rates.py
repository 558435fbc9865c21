"""Base rates: what all six batches share cannot be why one of them failed.

Six batches from hens of 110 weeks (or stored 14 days, or at 46 % humidity), five of them fine. In one version nothing
in the records tells the sixth apart, in the other its own cause stands in log and notes. Ours; the reasoning is common
practice, no source.
"""

from __future__ import annotations

from .written import Case, batch, write_case

FINE = (
    {"hatched": 25, "clear1": 3, "dead1": 1, "broken_late": 1},
    {"hatched": 24, "clear1": 3, "dead1": 1, "broken_late": 1, "pipped_dead": 1},
    {"hatched": 26, "clear1": 2, "dead1": 1, "broken_late": 1},
    {"hatched": 24, "clear1": 4, "broken_early": 1, "broken_late": 1},
    {"hatched": 25, "clear1": 2, "dead1": 2, "broken_late": 1},
)
SHARED = {
    "hens of 110 weeks": ({"flock_age_weeks": 110, "stored_days": 5}, {}, "old_flock"),
    "stored 14 days": ({"stored_days": 14, "flock_age_weeks": 45}, {}, "long_storage"),
    "46 % humidity": ({"stored_days": 5, "flock_age_weeks": 45}, {"rh_set": 46.0}, "too_dry"),
}
# The sixth batch: told apart by nothing (half lost, at all ages), or by a power cut in the log.
DUMB = {"hatched": 12, "clear1": 4, "dead1": 4, "broken_early": 1, "broken_mid": 2, "broken_late": 5, "pipped_dead": 2}
COLD = {
    "hatched": 12,
    "clear1": 3,
    "dead1": 1,
    "broken_mid": 1,
    "broken_late": 10,
    "pipped_dead": 3,
    "notes": "power out over night",
    "hatch": (24, 60),
}


def _case(shared, own):
    values, weather, blamed = SHARED[shared]
    told = [dict(f) for f in FINE]
    told.insert(3, dict(COLD if own else DUMB))
    batches = [
        batch(
            30,
            t.pop("hatched"),
            **values,
            **t,
            air=dict(weather) | ({"cold": (16.0, 10.0, 18.0)} if own and i == 3 else {}),
        )
        for i, t in enumerate(told)
    ]
    return Case(
        f"{shared} in all, {'own cause shown' if own else 'no other sign'}",
        "base rate, ours",
        batches,
        3,
        ("cold_spell",) if own else (),
        never=(blamed,),
    )


BASE_RATES = tuple(_case(shared, own) for shared in SHARED for own in (False, True))

__all__ = ["BASE_RATES", "write_case"]
