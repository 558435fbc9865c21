"""First-use set-up with nothing but the standard library.

A checkout carries its own environment in ``.venv``: it is made, filled from pyproject.toml and used
from then on. Where the running Python already has everything (a class-room image, an activated
environment), nothing is made. Old Pythons must be able to read this file, hence its plain syntax.
"""

import hashlib
import importlib.util
import os
import re
import signal
import subprocess
import sys

OLDEST = (3, 11)
NEEDED = [
    "pandas",
    "numpy",
    "matplotlib",
    "jupyterlab",
    "scipy",
    "statsmodels",
    "openpyxl",
    "python_calamine",
    "charset_normalizer",
    "fluent.runtime",
    "babel",
    "jinja2",
    "ipywidgets",
]
NEEDED_FOR_TESTS = [
    "pytest",
    "nbval",
    "hypothesis",
    "ruff",
    "mypy",
    "pytest_xdist",
    "psychrolib",
    "icalendar",
    "selenium",
]


class SetupError(Exception):
    """Set-up cannot go on; the message is one plain sentence or two."""


def run_in_own_environment(arguments):
    """Run the launcher in the checkout's own environment if this Python lacks something.

    Returns the exit status of that run, or None if this Python can do the work itself.
    """
    if sys.version_info < OLDEST:
        raise SetupError(
            "hatchkit needs Python 3.11 or newer; this is Python %d.%d. Install a newer Python "
            "and start the same command with it." % sys.version_info[:2]
        )
    if arguments[:1] in ([], ["-h"], ["--help"], ["--version"]):
        return None  # these need no library
    lacking = _lacking(NEEDED + (NEEDED_FOR_TESTS if arguments[:1] == ["test"] else []))
    if not lacking:
        return None
    root = checkout()
    if root is None:
        raise SetupError(
            "hatchkit lacks some libraries that it needs (%s). Install them with: "
            "pip install --upgrade 'hatchkit[test]'" % ", ".join(lacking)
        )
    if os.environ.get("HATCHKIT_SET_UP") == root:
        raise SetupError(
            "The environment in .venv is damaged. Delete the folder .venv and start the same command again."
        )
    try:
        python = _environment(root)
    except KeyboardInterrupt:
        raise SetupError("The set-up was stopped before it was done; the same command starts it again.") from None
    except OSError as error:
        raise SetupError(
            "hatchkit could not set itself up in %s: %s cannot be used (%s)."
            % (root, error.filename or "a file", error.strerror)
        ) from None
    return run_and_wait([python, "-m", "hatchkit"] + arguments, env=dict(os.environ, HATCHKIT_SET_UP=root))


def run_and_wait(command, **more):
    """Run a command to its end and return its exit status.

    Ctrl-C reaches the command as it reaches us: it is the command that ends in order, and we after it. Asked to end by
    another program (SIGTERM), we pass it on.
    """
    process = subprocess.Popen(command, **more)

    def pass_on(number, frame):
        process.terminate()  # JupyterLab then ends its kernels, and we after it

    try:
        earlier = signal.signal(signal.SIGTERM, pass_on)
    except ValueError:  # not in the main thread, where alone signals can be received
        earlier = None
    try:
        while True:
            try:
                return process.wait()
            except KeyboardInterrupt:
                pass
    finally:
        if earlier is not None:
            signal.signal(signal.SIGTERM, earlier)


def _lacking(needed):
    """What of the needed libraries is missing here, or older than pyproject.toml asks for."""
    lacking = [name for name in needed if not _found(name)]
    if lacking or os.environ.get("HATCHKIT_SET_UP", "") == checkout():  # there pip has seen to the versions
        return lacking
    from importlib import metadata

    asked = _oldest_versions()
    for name in needed:
        try:
            here = metadata.version(name)
        except metadata.PackageNotFoundError:
            continue  # put there by other means than pip; it is taken as it is
        if _numbers(here) < _numbers(asked.get(name, "0")):
            lacking.append("%s %s or newer, here is %s" % (name, asked[name], here))
    return lacking


def _found(name):
    try:
        return importlib.util.find_spec({"pytest_xdist": "xdist"}.get(name, name)) is not None
    except ImportError:  # the package that it lies in is not there
        return False


def _oldest_versions():
    """{library: oldest version} from pyproject.toml, or from what an installed copy says of itself."""
    root = checkout()
    if root:
        import tomllib

        with open(os.path.join(root, "pyproject.toml"), "rb") as file:
            project = tomllib.load(file).get("project", {})
        wishes = sum(project.get("optional-dependencies", {}).values(), project.get("dependencies", []))
    else:
        from importlib import metadata

        try:
            wishes = metadata.requires("hatchkit") or []
        except metadata.PackageNotFoundError:
            wishes = []
    found = (re.match(r"([\w.-]+)\s*>=\s*([\d.]+)", wish) for wish in wishes)
    return dict((match.group(1).replace("-", "_").lower(), match.group(2)) for match in found if match)


def _numbers(version):
    return tuple(int(part) for part in re.match(r"[\d.]*", version).group().split(".") if part)


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
    if not _runs(python, "-c", ""):  # also one that points to a Python that was upgraded or taken away
        _make(home, "--clear")
    elif not _runs(python, "-m", "pip", "--version"):
        _make(home)
    _fill(python, root, home)
    with open(stamp_file, "w", encoding="utf-8") as file:
        file.write(stamp)
    return python


def _runs(*command):
    try:
        return subprocess.call(command, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL) == 0
    except OSError:
        return False


def _make(home, *options):
    if os.path.lexists(home) and not os.path.isdir(home):
        raise SetupError(
            "%s is a file where hatchkit wants to keep its libraries in a folder of that name. Rename or "
            "delete it and start the same command again." % home
        )
    made = subprocess.run(
        [sys.executable, "-m", "venv", home] + list(options),
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        universal_newlines=True,
    )
    if made.returncode:
        raise SetupError(
            "Python could not make an environment in %s. On Debian or Ubuntu install the package "
            "python3-venv first; elsewhere check that the folder can be written to.\n%s"
            % (home, made.stdout.strip()[-400:])
        )


def _fill(python, root, home):
    log = os.path.join(home, "hatchkit-setup.log")
    with open(log, "w", encoding="utf-8") as file:
        status = subprocess.call(
            [python, "-m", "pip", "install", "--disable-pip-version-check", "--no-input", "-e", root + "[test]"],
            stdout=file,
            stderr=file,
        )
    if status:
        raise SetupError(
            "hatchkit could not fetch the libraries that it needs. Is this machine online? "
            "What pip said is in %s; once fixed, start the same command again." % log
        )


def _text(path):
    try:
        with open(path, encoding="utf-8") as file:
            return file.read()
    except (OSError, ValueError):
        return ""
