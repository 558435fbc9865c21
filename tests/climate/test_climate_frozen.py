"""Facts are handed on as they are."""

import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[1]))
from frozen import changeable


def test_facts_cannot_be_changed():
    assert changeable("climate") == []
