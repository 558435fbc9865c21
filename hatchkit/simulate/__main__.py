"""Write the demo season (or --years) again from its fixed seed, or, with --seed, a new season with a hidden cause."""

import argparse
import sys

from hatchkit.problems import HatchkitError
from hatchkit.records.writing import safe_output
from hatchkit.say import text
from hatchkit.simulate import cause_names, simulate_season, write_demo
from hatchkit.simulate.causes import SEVERITIES
from hatchkit.terminal import speak_everywhere, whole


def main(arguments=None) -> int:
    """Write the demo season, or its years, to a folder; returns the exit status."""
    speak_everywhere()
    parser = argparse.ArgumentParser(prog="python -m hatchkit.simulate", description=__doc__)
    parser.add_argument("folder", help="where the season goes")
    parser.add_argument("--years", action="store_true", help="write the three demo years instead")
    parser.add_argument("--answer", help="file for the sealed answer (outside the folder)")
    parser.add_argument("--seed", type=whole(0), help="write a new season from this seed instead of the demo")
    parser.add_argument("--cause", choices=cause_names(), help="what to plant (drawn with the seed if left out)")
    parser.add_argument("--severity", choices=SEVERITIES, default="severe")
    parser.add_argument("--batches", type=whole(1), default=8)
    given = parser.parse_args(arguments)
    try:
        if given.answer:
            safe_output(given.answer, suffix=".json")
        if given.years:
            from hatchkit.simulate.demo_years import write_years

            write_years(given.folder)
        elif given.seed is None:
            write_demo(given.folder, answer=given.answer)
        else:
            simulate_season(
                given.folder,
                seed=given.seed,
                cause=given.cause,
                severity=given.severity,
                batches=given.batches,
                answer=given.answer,
            )
    except HatchkitError as error:
        print(error, file=sys.stderr)
        return 2
    except OSError as error:
        print(f"{error.filename or 'A file'} cannot be written: {error.strerror}.", file=sys.stderr)
        return 2
    print(text("simulated", dict(folder=given.folder, answer=given.answer)))
    return 0


if __name__ == "__main__":
    sys.exit(main())
