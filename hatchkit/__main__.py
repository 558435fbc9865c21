"""``python3 -m hatchkit ...``: set up what is missing on first use, then run the launcher.

Written so that an old Python can read it and answer with a sentence.
"""

import sys

from hatchkit import bootstrap


def main():
    """Start the launcher; returns the exit status."""
    arguments = sys.argv[1:]
    try:
        status = bootstrap.run_in_own_environment(arguments)
    except bootstrap.SetupError as error:
        sys.stderr.write(str(error) + "\n")
        return 2
    if status is not None:
        return status
    from hatchkit.cli import main as run

    return run(arguments)


if __name__ == "__main__":
    sys.exit(main())
