"""A hundred and ten generated logs, broken in many ways, give their truth back (long run: tests/benchmarks)."""

import sys
from pathlib import Path

from hypothesis import HealthCheck, Phase, given, settings

sys.path.insert(0, str(Path(__file__).resolve().parents[1] / "benchmarks"))

import fuzz_logs

#: Each try writes a file: a search for the smallest failing one would hang the suite.
UNSHRUNK = (Phase.explicit, Phase.generate)
SLOW_IS_FINE = [HealthCheck.function_scoped_fixture, HealthCheck.too_slow, HealthCheck.data_too_large]


@settings(
    max_examples=50,
    deadline=None,
    database=None,
    derandomize=True,
    suppress_health_check=SLOW_IS_FINE,
    phases=UNSHRUNK,
)
@given(log=fuzz_logs.logs())
def test_what_was_written_is_read_or_named(tmp_path, log):
    fuzz_logs.check(log, tmp_path)
