"""hatchkit: where a hatch lost its eggs, whether that is more than bad luck, and what to change.

The public calls are listed in ``_HOME`` and fetched on first use, so that importing the package
costs nothing and a mistake on the command line is answered at once.
"""

from importlib import import_module

__version__ = "0.1.0"

_HOME = {
    "Season": "hatchkit.season",
    "load_season": "hatchkit.season",
    "read_readings": "hatchkit.records.logs.read",
    "breakdown": "hatchkit.losses.breakdown",
    "age_at_death": "hatchkit.losses.death_age",
    "find_excursions": "hatchkit.climate.excursions",
    "exposure": "hatchkit.relate.exposure",
    "relate_losses": "hatchkit.relate.relation",
    "likely_causes": "hatchkit.advice.causes",
    "next_set": "hatchkit.advice.plan",
    "simulate_season": "hatchkit.simulate",
    "groups": "hatchkit.yearly.groups",
    "years": "hatchkit.findings.years",
    "trial": "hatchkit.trials.plan",
    "review": "hatchkit.findings.season",
    "poor_hatch": "hatchkit.findings.batch",
    "write_page": "hatchkit.pages.page",
    "write_report": "hatchkit.pages.report",
    "HatchkitError": "hatchkit.problems",
}

__all__ = sorted(_HOME) + ["__version__"]


def __getattr__(name):
    if name in _HOME:
        return getattr(import_module(_HOME[name]), name)
    raise AttributeError("module 'hatchkit' has no attribute " + repr(name))


def __dir__():
    return __all__
