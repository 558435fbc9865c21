"""First-use set-up with nothing but the standard library.

A checkout carries its own environment in ``.venv``: it is made, filled from pyproject.toml and used
from then on. Where the running Python already has everything (a class-room image, an activated
environment), nothing is made. Old Pythons must be able to read this file, hence its plain syntax.
"""

import hashlib
import importlib.util
import os
import subprocess
import sys

OLDEST = (3, 11)
NEEDED = ["pandas", "numpy", "matplotlib", "jupyterlab", "scipy", "statsmodels", "openpyxl",
          "python_calamine"]
NEEDED_FOR_TESTS = ["pytest", "nbval", "hypothesis", "ruff", "psychrolib", "icalendar", "selenium"]


class SetupError(Exception):
    """Set-up cannot go on; the message is one plain sentence or two."""


def run_in_own_environment(arguments):
    """Run the launcher in the checkout's own environment if this Python lacks something.

    Returns the exit status of that run, or None if this Python can do the work itself.
    """
    if sys.version_info < OLDEST:
        raise SetupError("hatchkit needs Python 3.11 or newer; this is Python %d.%d. Install a newer Python "
                         "and start the same command with it." % sys.version_info[:2])
    needed = NEEDED + (NEEDED_FOR_TESTS if arguments[:1] == ["test"] else [])
    if all(importlib.util.find_spec(name) for name in needed):
        return None
    root = checkout()
    if root is None:
        missing = ", ".join(name for name in needed if not importlib.util.find_spec(name))
        raise SetupError("hatchkit is installed without some libraries that it needs (%s). Install them with: "
                         "pip install 'hatchkit[test]'" % missing)
    if os.environ.get("HATCHKIT_SET_UP") == root:
        raise SetupError("The environment in .venv is damaged. Delete the folder .venv and start the same "
                         "command again.")
    python = _environment(root)
    return subprocess.call([python, "-m", "hatchkit"] + arguments, env=dict(os.environ, HATCHKIT_SET_UP=root))


def checkout():
    """The folder of the source checkout that this package lies in, or None."""
    root = os.path.dirname(os.path.dirname(os.path.abspath(__file__)))
    return root if os.path.isfile(os.path.join(root, "pyproject.toml")) else None


def _environment(root):
    """Path of the Python in ``.venv``, made or refreshed when pyproject.toml has changed."""
    home = os.path.join(root, ".venv")
    windows = os.name == "nt"
    python = os.path.join(home, "Scripts" if windows else "bin", "python.exe" if windows else "python")
    stamp_file = os.path.join(home, "hatchkit-setup")
    with open(os.path.join(root, "pyproject.toml"), "rb") as file:
        stamp = hashlib.sha256(file.read() + root.encode("utf-8")).hexdigest()
    if os.path.isfile(python) and _text(stamp_file) == stamp:
        return python
    sys.stderr.write("Setting up hatchkit in %s (once, about a minute; needs the internet) ...\n" % home)
    if not os.path.isfile(python):
        _make(home)
    _fill(python, root, home)
    with open(stamp_file, "w") as file:
        file.write(stamp)
    return python


def _make(home):
    made = subprocess.run([sys.executable, "-m", "venv", home], stdout=subprocess.PIPE,
                          stderr=subprocess.STDOUT, universal_newlines=True)
    if made.returncode:
        raise SetupError("Python could not make an environment in %s. On Debian or Ubuntu install the package "
                         "python3-venv first; elsewhere check that the folder can be written to.\n%s"
                         % (home, made.stdout.strip()[-400:]))


def _fill(python, root, home):
    log = os.path.join(home, "hatchkit-setup.log")
    with open(log, "w") as file:
        status = subprocess.call([python, "-m", "pip", "install", "--disable-pip-version-check",
                                  "--no-input", "-e", root + "[test]"], stdout=file, stderr=file)
    if status:
        raise SetupError("hatchkit could not fetch the libraries that it needs. Is this machine online? "
                         "What pip said is in %s; once mended, start the same command again." % log)


def _text(path):
    try:
        with open(path) as file:
            return file.read()
    except OSError:
        return ""
