"""``python -m hatchkit.simulate FOLDER``: write the demo season again, from its fixed seed."""

from __future__ import annotations

import argparse
import sys

from hatchkit.problems import HatchkitError
from hatchkit.simulate import write_demo


def main(arguments=None) -> int:
    parser = argparse.ArgumentParser(prog="python -m hatchkit.simulate", description=__doc__)
    parser.add_argument("folder", help="where the demo season goes")
    parser.add_argument("--answer", help="file for the sealed answer (outside the folder)")
    given = parser.parse_args(arguments)
    try:
        answer = write_demo(given.folder)
    except HatchkitError as error:
        print(error, file=sys.stderr)
        return 2
    print(f"The demo season is in {given.folder}.")
    if given.answer:
        print(f"What was planted is in {answer.write(given.answer)}.")
    return 0


if __name__ == "__main__":
    sys.exit(main())
