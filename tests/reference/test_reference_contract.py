"""The tables as the one list of columns describes them."""

import pandas as pd
import pytest

from hatchkit.reference import contract


def test_an_empty_track_has_its_columns_and_their_kinds():
    track = contract.empty("track")
    assert list(track)[:3] == ["time", "age_days", "stage"] and len(track) == 0
    assert str(track["time"].dtype) == "datetime64[us, UTC]"
    assert track["age_days"].dtype == float and track["gap"].dtype == bool
    assert pd.api.types.is_string_dtype(track["stage"]) and str(track["level"].dtype) == "Int64"


def test_each_table_is_described_once_and_each_kind_is_known():
    facts = contract._described()
    assert not facts.duplicated(["table", "column"]).any()
    assert set(facts["kind"]) <= {"time", "count", "number", "text", "yes/no"}
    for table in facts["table"].unique():
        assert list(contract.empty(table)) == contract.columns(table)


def test_a_table_that_nobody_described_is_an_error():
    with pytest.raises(KeyError, match="nonesuch"):
        contract.empty("nonesuch")
