"""Amounts that go together with the exposure are said to, by how much is shared."""

import numpy as np
import pandas as pd
import pytest

from hatchkit.relate.confounding import confounding
from hatchkit.relate.design import design
from hatchkit.relate.hazard import relate_counts


def table(stored_days):
    exposed = np.arange(len(stored_days)) % 4 == 0
    return pd.DataFrame(
        {
            "batch": np.arange(len(stored_days)).astype(str),
            "window": 1,
            "days": 7.0,
            "at_risk": 48.0,
            "died": 2.0,
            "dose": exposed.astype(float),
            "stored_days": stored_days,
        }
    )


# Storage of 16 batches, every fourth exposed: the squared correlation is worked with numpy.corrcoef.
@pytest.mark.parametrize(
    ("stored_days", "shared", "said"),
    [
        ([3, 2, 3, 4, 3, 2, 3, 4, 3, 2, 3, 4, 3, 2, 3, 4], 0.00, "hardly go together: 0 % shared."),
        ([4, 2, 3, 4, 4, 2, 3, 4, 4, 2, 3, 4, 4, 2, 3, 4], 0.27, "go together (in part: 27 % shared): part of"),
        ([5, 2, 3, 4, 5, 2, 3, 4, 5, 2, 3, 4, 3, 2, 3, 4], 0.38, "go together (in part: 38 % shared): part of"),
        ([9, 2, 3, 4, 9, 2, 3, 4, 9, 2, 3, 4, 4, 2, 3, 4], 0.72, "go together (72 % shared): part of"),
    ],
)
def test_storage_that_is_partly_shared_with_the_exposure_is_not_called_apart(stored_days, shared, said):
    found = confounding(design(table(np.array(stored_days, float)))).set_index("factor").loc["days of storage"]
    assert found["explained"] == pytest.approx(shared, abs=0.005)
    assert said in found["says"] and "do not go together" not in found["says"]


def test_only_what_goes_together_is_told_with_the_verdict():
    part = relate_counts(table(np.array([4, 2, 3, 4] * 4, float)), detect=False).words()
    assert "days of storage go together (in part: 27 % shared)" in part
    assert "go together" not in relate_counts(table(np.array([3, 2, 3, 4] * 4, float)), detect=False).words()
