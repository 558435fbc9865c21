"""Write the demo season again from its fixed seed, or, with --seed, a new season with a hidden cause."""

from __future__ import annotations

import argparse
import sys

from hatchkit.problems import HatchkitError
from hatchkit.simulate import cause_names, simulate_season, write_demo
from hatchkit.simulate.causes import SEVERITIES


def main(arguments=None) -> int:
    parser = argparse.ArgumentParser(prog="python -m hatchkit.simulate", description=__doc__)
    parser.add_argument("folder", help="where the season goes")
    parser.add_argument("--answer", help="file for the sealed answer (outside the folder)")
    parser.add_argument("--seed", type=int, help="write a new season from this seed instead of the demo")
    parser.add_argument("--cause", choices=cause_names(), help="what to plant (drawn with the seed if left out)")
    parser.add_argument("--severity", choices=SEVERITIES, default="severe")
    parser.add_argument("--batches", type=int, default=8)
    given = parser.parse_args(arguments)
    try:
        if given.seed is None:
            answer = write_demo(given.folder)
        else:
            answer = simulate_season(given.folder, seed=given.seed, cause=given.cause, severity=given.severity,
                                     batches=given.batches)
        sealed = answer.write(given.answer) if given.answer else None
    except HatchkitError as error:
        print(error, file=sys.stderr)
        return 2
    print(f"The season is in {given.folder}." + (f" What was planted is in {sealed}." if sealed else ""))
    return 0


if __name__ == "__main__":
    sys.exit(main())
