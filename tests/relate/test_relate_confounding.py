"""Amounts that go together with the exposure are said to, by how much is shared."""

import numpy as np
import pandas as pd
import pytest

from hatchkit.findings import more_relate
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
    ("stored_days", "shared", "how"),
    [
        ([3, 2, 3, 4, 3, 2, 3, 4, 3, 2, 3, 4, 3, 2, 3, 4], 0.00, "hardly"),
        ([4, 2, 3, 4, 4, 2, 3, 4, 4, 2, 3, 4, 4, 2, 3, 4], 0.27, "in_part"),
        ([5, 2, 3, 4, 5, 2, 3, 4, 5, 2, 3, 4, 3, 2, 3, 4], 0.38, "in_part"),
        ([9, 2, 3, 4, 9, 2, 3, 4, 9, 2, 3, 4, 4, 2, 3, 4], 0.72, "together"),
    ],
)
def test_storage_that_is_partly_shared_with_the_exposure_is_not_called_apart(stored_days, shared, how):
    found = confounding(design(table(np.array(stored_days, float)))).set_index("factor").loc["stored_days"]
    assert found["explained"] == pytest.approx(shared, abs=0.005)
    assert found["how"] == how and found["apart"]


def test_only_what_goes_together_is_told_with_the_verdict():
    part, hardly = (
        {
            one.code: one.facts
            for one in more_relate.counts(relate_counts(table(np.array(days * 4, float)), detect=False))
        }
        for days in ([4, 2, 3, 4], [3, 2, 3, 4])
    )
    assert part["relate_in_part"]["explained"] == pytest.approx(0.27, abs=0.005)
    assert not {"relate_in_part", "relate_together"} & set(hardly)
