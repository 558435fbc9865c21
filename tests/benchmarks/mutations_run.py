"""Runs of `mutations.py`: the tests that come to an edited line, on a copy of the source, until the first failure.

Which test file comes to which lines is seen once, with nothing cached left from one file to the next.
"""

from __future__ import annotations

import ast
import functools
import gc
import hashlib
import importlib
import json
import os
import re
import shutil
import signal
import sys
import tempfile
import time
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from mutations import Edit

ROOT = Path(__file__).resolve().parents[2]
ROOMS = ("losses", "climate", "relate", "usual", "advice")
#: A run is ended after so many times what its tests take without an edit, and at the earliest after so many
#: seconds: the edit made a loop without end. Such runs are told apart, since a loaded machine could cause them too.
TIMES, LEAST = 6, 400


def tests_for(file: str) -> list[str]:
    """The room's tests, those that name the file first; then tests of other rooms and outside values that name it."""
    room, stem = file.split("/")[0], Path(file).stem
    name = re.compile(rf"{room}(\.| import .*\b){stem}\b")
    own = [path for path in sorted((ROOT / "tests" / room).rglob("test_*.py"))]
    others = [
        path
        for place in (*ROOMS, "outside")
        if place != room
        for path in sorted((ROOT / "tests" / place).rglob("test_*.py"))
        if name.search(path.read_text("utf-8"))
    ]
    own.sort(key=lambda path: (not name.search(path.read_text("utf-8")), "guard" not in path.name, path.name))
    return [str(path.relative_to(ROOT)) for path in own[:1] + others + own[1:]]


def _head(node: ast.stmt) -> int:
    """First line of a statement, decorators included."""
    return min([node.lineno, *(one.lineno for one in getattr(node, "decorator_list", ()))])


def _statement(file: str, line: int) -> ast.stmt:
    """Innermost statement at a line of a room's file."""
    tree = ast.parse((ROOT / "hatchkit" / file).read_bytes())
    around = [node for node in ast.walk(tree) if isinstance(node, ast.stmt) and _head(node) <= line <= node.end_lineno]
    return max(around, key=lambda node: (_head(node), -node.end_lineno))


def _lines(found: ast.stmt, line: int) -> set[int]:
    """Lines of a statement; of one with a block its head."""
    block = getattr(found, "body", None)
    last = max(found.lineno, block[0].lineno - 1) if block else found.end_lineno
    return set(range(_head(found), last + 1)) | {line}


def _uses(edit: Edit, found: ast.stmt) -> tuple[set[str], dict[str, set[int]]]:
    """Names that a statement run at import gives to others, and where they are used: file -> lines; else nothing."""
    if isinstance(found, ast.FunctionDef) and edit.line >= found.lineno:  # a default
        return set(), {edit.file: set(range(found.body[0].lineno, found.end_lineno + 1))}
    targets = found.targets if isinstance(found, ast.Assign) else []
    names = {node.id for target in targets for node in ast.walk(target) if isinstance(node, ast.Name)}
    uses: dict[str, set[int]] = {}
    for path in (ROOT / "hatchkit").rglob("*.py") if names else ():
        text = path.read_text("utf-8")
        for node in ast.walk(ast.parse(text)) if any(name in text for name in names) else ():
            name = node.attr if isinstance(node, ast.Attribute) else getattr(node, "id", None)
            if name in names and isinstance(node.ctx, ast.Load):
                uses.setdefault(str(path.relative_to(ROOT / "hatchkit")), set()).add(node.lineno)
    return names, uses


def reaching(edit: Edit, reach: dict) -> list[str]:
    """Of the tests for a file those that come to the edited statement, the quick ones first.

    A statement that runs at import concerns those that come to where its names are used, or that use them themselves;
    where that is at import again, all of them, those first that come to more of the file than that.
    """
    tests, found = tests_for(edit.file), _statement(edit.file, edit.line)
    there = {test: set(reach[test]["lines"].get(edit.file, ())) for test in tests}
    at_import, lines = reach[""]["lines"], _lines(found, edit.line)
    if not lines & set(at_import.get(edit.file, ())):
        tests = [test for test in tests if lines & there[test]]
    else:
        names, uses = _uses(edit, found)
        if uses and not any(lines & set(at_import.get(file, ())) for file, lines in uses.items()):
            tests = [
                test
                for test in tests
                if any(lines & set(reach[test]["lines"].get(file, ())) for file, lines in uses.items())
                or any(name in (ROOT / test).read_text("utf-8") for name in names)
            ]
    return sorted(tests, key=lambda test: (not there[test], reach[test]["seconds"]))


class Copies:
    """Copies of the source, one for each worker, in which one file at a time is changed."""

    def __init__(self, workers: int):
        self.top = Path(tempfile.mkdtemp(prefix="mutations-"))
        self.free = []
        for number in range(workers):
            place = self.top / str(number)
            for name in ("hatchkit", "tests", "data_demo", "notebooks"):
                shutil.copytree(ROOT / name, place / name, ignore=shutil.ignore_patterns("__pycache__", "results"))
            shutil.copy(ROOT / "pyproject.toml", place)
            self.free.append(place)

    def change(self, place: Path, edit: Edit) -> None:
        file = place / "hatchkit" / edit.file
        source = file.read_bytes()
        file.with_suffix(".whole").write_bytes(source)
        file.write_bytes(source[: edit.start] + edit.new.encode() + source[edit.end :])

    def restore(self, place: Path, edit: Edit) -> None:
        file = place / "hatchkit" / edit.file
        file.with_suffix(".whole").replace(file)


class Reached:
    """Notes for every test file the lines that it comes to, as if it ran alone: nothing cached is left from another."""

    def __init__(self, place: Path):
        import coverage

        self.home = place / "hatchkit"
        self.seen = coverage.Coverage(data_file=None, include=[f"{self.home}/*"])
        self.file, self.since = "", time.process_time()
        self.seconds: dict[str, float] = {}
        self.seen.start()

    def pytest_collection_finish(self):
        """What runs at import must not be put down to the first test that imports late."""
        for room in ROOMS:
            for file in sorted((self.home / room).glob("*.py")):
                importlib.import_module(f"hatchkit.{room}.{file.stem}")

    def pytest_runtest_setup(self, item):
        file = item.nodeid.partition("::")[0]
        if file == self.file:
            return
        self.turn(file)
        for one in gc.get_objects():
            if isinstance(one, functools._lru_cache_wrapper) and one.__module__.startswith(("hatchkit", "tests")):
                one.cache_clear()

    def turn(self, file: str) -> None:
        now = time.process_time()
        self.seconds[self.file] = self.seconds.get(self.file, 0.0) + now - self.since
        self.file, self.since = file, now
        self.seen.switch_context(file)

    def found(self) -> dict:
        """Test file -> its seconds and the lines it comes to; under "" what every import comes to."""
        self.turn("")
        self.seen.stop()
        data, lines = self.seen.get_data(), {test: {} for test in self.seconds}
        for file in data.measured_files():
            for line, tests in data.contexts_by_lineno(file).items():
                for test in tests:
                    lines[test].setdefault(str(Path(file).relative_to(self.home)), []).append(line)
        return {test: dict(seconds=self.seconds[test], lines=lines[test]) for test in lines}


def start(place: Path, tests: list[str], reach: bool = False) -> int:
    """Run tests in a child that finds the heavy libraries loaded, and note the lines they come to; its process id."""
    child = os.fork()
    if child:
        return child
    os.setsid()
    os.chdir(place)
    os.environ.update(PYTHONPATH=str(place), PYTHONDONTWRITEBYTECODE="1")
    sys.dont_write_bytecode = True
    sys.path[:] = [str(place)] + [path for path in sys.path if path not in ("", str(ROOT), str(Path(__file__).parent))]
    quiet = os.open(place / "said.txt", os.O_CREAT | os.O_TRUNC | os.O_WRONLY)
    os.dup2(quiet, 1)
    os.dup2(quiet, 2)
    asked = ["-x", "-q", "-p", "no:cacheprovider", "--no-header", "--rootdir", str(place)]
    try:
        import pytest

        plugins = [Reached(place)] if reach else []
        status = pytest.main([*asked, "-c", str(place / "pyproject.toml"), *tests], plugins)
        for plugin in plugins:
            (place / "reach.json").write_text(json.dumps(plugin.found()), encoding="utf-8")
    except BaseException as error:
        print(f"ERROR {error!r}")
        status = 3
    sys.stdout.flush()
    os._exit(int(status))


def load() -> None:
    """Load the heavy libraries once, for every child to find."""
    import matplotlib.pyplot  # noqa: F401
    import pandas  # noqa: F401
    import pytest  # noqa: F401
    import scipy.optimize  # noqa: F401
    import statsmodels.genmod.generalized_linear_model  # noqa: F401


def reach_of(edits: list[Edit], keep: Path | None) -> dict:
    """Test file -> its seconds and the lines it comes to; ends the script where one fails on the source as it is.

    `keep`: where this is kept. A test file that has changed since is run again; delete the file when the source has
    changed much, or edits may pass for unnoticed that are not.
    """
    kept = json.loads(keep.read_text("utf-8")) if keep and keep.exists() else {}
    texts = {
        test: hashlib.sha256((ROOT / test).read_bytes()).hexdigest() for edit in edits for test in tests_for(edit.file)
    }
    tests = [test for test, text in sorted(texts.items()) if kept.get(test, {}).get("text") != text]
    if not tests:
        return kept
    print(f"{len(tests)} test files are run as they are", flush=True)
    copies = Copies(1)
    try:
        place = copies.free[0]
        _, status = os.waitpid(start(place, tests, reach=True), 0)
        if status:
            sys.exit(f"Tests fail on the source as it is:\n{(place / 'said.txt').read_text('utf-8')[-2000:]}")
        reach = json.loads((place / "reach.json").read_text("utf-8"))
    finally:
        shutil.rmtree(copies.top, ignore_errors=True)
    reach = kept | {test: found | {"text": texts.get(test, "")} for test, found in reach.items()}
    if keep:
        keep.write_text(json.dumps(reach), encoding="utf-8")
    return reach


def run(edits: list[Edit], reach: dict, workers: int, minutes: float) -> dict[Edit, tuple[str, float, str]]:
    """edit -> (noticed, no end, survived or broken; seconds; the test that noticed it).

    Broken is a run that ended without a test that failed: it says nothing, and is told as such.
    """
    copies, waiting, running, done = Copies(workers), list(edits), {}, {}
    until = time.monotonic() + 60 * minutes

    def note(edit, word, took, by):
        done[edit] = (word, took, by)
        print(f"{len(done):3d} {word:8s} {took:4.0f} s  {edit.file}:{edit.line} {edit.what}   {by[:90]}", flush=True)

    try:
        while waiting or running:
            while waiting and copies.free and time.monotonic() < until:
                edit = waiting.pop(0)
                tests = reaching(edit, reach)
                if not tests:
                    note(edit, "survived", 0.0, "no test comes to it")
                    continue
                place = copies.free.pop()
                copies.change(place, edit)
                limit = max(LEAST, TIMES * sum(reach[test]["seconds"] for test in tests))
                running[start(place, tests)] = (edit, place, time.monotonic(), limit)
            if not running:
                break
            time.sleep(0.1)
            for child, (edit, place, since, limit) in list(running.items()):
                took = time.monotonic() - since
                ended, status = os.waitpid(child, os.WNOHANG)
                if not ended and took > limit:
                    os.killpg(child, signal.SIGKILL)
                    ended, status = os.waitpid(child, 0)
                if not ended:
                    continue
                said = (place / "said.txt").read_text("utf-8", "replace")
                by = re.search(r"^(?:FAILED|ERROR) (\S+)", said, re.M)
                by = by[1] if by else ""
                word = "survived" if status == 0 else "noticed" if by else "no end" if took > limit else "broken"
                note(edit, word, took, by or ("" if status == 0 else said[-200:]))
                copies.restore(place, edit)
                copies.free.append(place)
                del running[child]
    finally:
        shutil.rmtree(copies.top, ignore_errors=True)
    return done
