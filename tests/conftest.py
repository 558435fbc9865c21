"""Settings for every test: no screen, and a message that lacks its words or facts is an error."""

import os

import pytest

os.environ.setdefault("MPLBACKEND", "Agg")
os.environ.setdefault("HATCHKIT_STRICT", "1")


@pytest.fixture(scope="session")
def demo():
    """The demo season, read once; what is worked out for it stays kept, so no test may change its tables."""
    from hatchkit.season import load_season

    return load_season("demo")


@pytest.fixture(scope="session")
def demo_years():
    """The three demo years, read once; no test may change their tables."""
    from hatchkit.season import load_season

    return load_season("demo-years")


@pytest.fixture(scope="session")
def demo_review(demo):
    """The findings of the demo season."""
    from hatchkit.findings.season import review

    return review(demo)
