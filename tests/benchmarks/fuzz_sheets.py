"""Break 2,000 sheets in many ways at once and count how many give back what they should.

Run: python tests/benchmarks/fuzz_sheets.py [how many] [seed]
"""

import random
import sys
import tempfile
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[1] / "records"))

from broken_sheets import break_it, draw_truth, faults, write_sheet

from hatchkit.records.folder import read_folder


def main() -> int:
    """Print the number of sheets read rightly, and the faults of the others."""
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 2_000
    first = int(sys.argv[2]) if len(sys.argv) > 2 else 0
    bad, start = 0, time.perf_counter()
    for seed in range(first, first + count):
        pick = random.Random(seed).choice
        truth = draw_truth(pick)
        grid, place, headings, form = break_it(truth, pick)
        with tempfile.TemporaryDirectory() as folder:
            write_sheet(Path(folder), grid, form, pick)
            try:
                wrong = faults(read_folder(Path(folder)), truth, place, headings)
            except Exception as error:  # any traceback is a fault; the seed brings it back
                wrong = [f"{type(error).__name__}: {error}"]
        if wrong:
            bad += 1
            print(f"seed {seed} ({form}): {'; '.join(wrong)}")
    took = time.perf_counter() - start
    print(f"{count - bad:,} of {count:,} sheets gave the truth or named the place, in {took:.0f} s")
    return 1 if bad else 0


if __name__ == "__main__":
    sys.exit(main())
