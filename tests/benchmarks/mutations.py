"""How many small faults in the formulas would the tests notice?

    python tests/benchmarks/mutations.py                 # 150 drawn edits, survivors to results/mutations.md
    python tests/benchmarks/mutations.py --edits 40 --seed 7 --workers 1
    python tests/benchmarks/mutations.py --again         # only those that were not noticed, or not run, last time
    python tests/benchmarks/mutations.py --named         # the faults that once survived, each by itself

Each edit changes one constant, comparison, sign or step of one in a room of formulas, in a copy of the source; those
of the room's tests that come to the line then run until the first failure. An edit that no test notices is a survivor:
it needs a test, or a line with a reason in mutations_alike.csv.
"""

from __future__ import annotations

import argparse
import ast
import csv
import datetime
import functools
import gc
import hashlib
import importlib
import json
import os
import random
import re
import shutil
import signal
import subprocess
import sys
import tempfile
import time
from dataclasses import dataclass
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
RESULTS = Path(__file__).resolve().parent / "results" / "mutations.md"
ROOMS = ("losses", "climate", "relate", "usual", "advice")
#: A run is ended after so many times what its tests take without an edit, and at the earliest after so many
#: seconds: the edit made a loop without end. Such runs are told apart, since a loaded machine could cause them too.
TIMES, LEAST = 6, 400

OPERATORS = {
    ast.Add: ("+", "-"),
    ast.Sub: ("-", "+"),
    ast.Mult: ("*", "/"),
    ast.Div: ("/", "*"),
    ast.Pow: ("**", "*"),
    ast.FloorDiv: ("//", "/"),
}
COMPARISONS = {
    ast.Lt: ("<", "<="),
    ast.LtE: ("<=", "<"),
    ast.Gt: (">", ">="),
    ast.GtE: (">=", ">"),
    ast.Eq: ("==", "!="),
    ast.NotEq: ("!=", "=="),
    ast.Is: ("is", "is not"),
    ast.IsNot: ("is not", "is"),
    ast.In: ("in", "not in"),
    ast.NotIn: ("not in", "in"),
}

#: Faults that survived when they were first tried by hand: name -> (file, text, text instead).
NAMED = {
    "95 % range made 90 %": ("losses/predictive.py", "tail = (1 - level) / 2", "tail = 1 - level"),
    "level of the clear-sign floor halved (weighted)": (
        "relate/effect.py",
        'stdtrit(df, 1 - rules()["clear_chance"])',
        'stdtrit(df, 1 - rules()["clear_chance"] / 2)',
    ),
    "level of the clear-sign floor halved (Bayes)": (
        "relate/effect.py",
        '[tail, limit["clear_chance"], 0.5',
        '[tail, limit["clear_chance"] / 2, 0.5',
    ),
    "chicks lost pass exposed windows unharmed": (
        "relate/excess.py",
        "spared = spared * (1 - share) + gain",
        "spared = spared + gain",
    ),
    "covariate budget doubled (deaths)": ("relate/design.py", "deaths // 10", "deaths // 5"),
    "covariate budget doubled (batches)": (
        "relate/design.py",
        "max(batches - 2, 0) // 5",
        "2 * max(batches - 2, 0) // 5",
    ),
    "n for n - 1 in the Williams weight": (
        "relate/effect.py",
        "weight = 1 / (1 + (at_risk - 1) * k",
        "weight = 1 / (1 + at_risk * k",
    ),
    "n for n - 1 in the Williams moment": (
        "relate/effect.py",
        "expected * (at_risk - 1) * share",
        "expected * at_risk * share",
    ),
    "least band of the clock 6 h": ("climate/clock.py", "max(half, 8.0)", "max(half, 6.0)"),
    "JOIN_HOURS doubled": ("climate/excursions.py", "JOIN_HOURS = 0.5", "JOIN_HOURS = 1.0"),
    "window of the egg's extreme 0 h": ("climate/excursions.py", "EGG_EXTREME_H = 2.0", "EGG_EXTREME_H = 0.0"),
    "boundary of the rolling dose": (
        "climate/dose.py",
        'clock_h - ROLLING_H, side="right"',
        'clock_h - ROLLING_H, side="left"',
    ),
    "no discount for eggs of one batch being alike": (
        "usual/beta_binomial.py",
        "size = (1 - rho) / rho\n",
        "size = 1e9 + 0 * rho\n",
    ),
    "width of the prior 3.92": ("advice/plan.py", "/ 2.56)", "/ 3.92)"),
    "storage below 3 days shortens the hatch": (
        "advice/dates.py",
        "max(stored_days - FRESH_DAYS, 0.0)",
        "(stored_days - FRESH_DAYS)",
    ),
    "the plan's 90 % made 95 %": ("advice/plan.py", "*, sure=0.9, set_at", "*, sure=0.95, set_at"),
    "the plan's 90 % made 95 % (eggs)": (
        "usual/beta_binomial.py",
        "def eggs_learned(weight, chicks, *, sure=0.9)",
        "def eggs_learned(weight, chicks, *, sure=0.95)",
    ),
}

#: Edits that change nothing that anybody could see: (file, line of source, edit, place in the line) -> why.
with open(Path(__file__).with_name("mutations_alike.csv"), encoding="utf-8", newline="") as _alike:
    EQUIVALENT = {
        (row["file"], row["line"], row["edit"], int(row["place"])): row["why"] for row in csv.DictReader(_alike)
    }


@dataclass(frozen=True)
class Edit:
    """One change of the source: bytes `start` to `end` of a file become `new`."""

    file: str
    start: int
    end: int
    old: str
    new: str
    line: int
    text: str
    place: int = 0

    @property
    def key(self) -> tuple:
        """By which an edit is known again after the file has changed elsewhere: line, place in it, change."""
        return (self.file, self.text, self.what, self.place)

    @property
    def what(self) -> str:
        return f"{self.old} -> {self.new}"


def edits_of(file: Path, name: str) -> list[list[Edit]]:
    """Every edit that can be made in one file, those of one place together."""
    source = file.read_bytes()
    lines = source.split(b"\n")
    starts = [0]
    for line in lines:
        starts.append(starts[-1] + len(line) + 1)

    def span(node):
        return starts[node.lineno - 1] + node.col_offset, starts[node.end_lineno - 1] + node.end_col_offset

    def edit(start, end, new):
        number = source.count(b"\n", 0, start) + 1
        ahead = source[starts[number - 1] : start].decode()
        return Edit(
            name,
            start,
            end,
            source[start:end].decode(),
            new,
            number,
            lines[number - 1].decode().strip(),
            len(ahead.lstrip()),
        )

    def between(left, right, old, new):
        start, end = span(left)[1], span(right)[0]
        at = re.search(re.escape(old).replace(r"\ ", r"\s+"), source[start:end].decode())
        return [edit(start + at.start(), start + at.end(), new)] if at else []

    found = []
    for node in _computed(ast.parse(source)):
        if isinstance(node, ast.Constant) and type(node.value) in (int, float, bool):
            found.append([edit(*span(node), other) for other in _others(node.value)])
        elif isinstance(node, ast.BinOp) and type(node.op) in OPERATORS:
            found.append(between(node.left, node.right, *OPERATORS[type(node.op)]))
        elif isinstance(node, ast.Compare) and type(node.ops[0]) in COMPARISONS:
            found.append(between(node.left, node.comparators[0], *COMPARISONS[type(node.ops[0])]))
        elif isinstance(node, ast.UnaryOp) and isinstance(node.op, ast.USub):
            found.append([edit(span(node)[0], span(node.operand)[0], "+")])
        elif isinstance(node, ast.BoolOp):
            words = ("and", "or") if isinstance(node.op, ast.And) else ("or", "and")
            found.append(between(node.values[0], node.values[1], *words))
    return [together for together in found if together]


def _computed(node):
    """Nodes that compute something: neither annotations nor the parts of f-strings, which positions do not tell."""
    for name, child in ast.iter_fields(node):
        if name in ("annotation", "returns") or isinstance(node, ast.JoinedStr):
            continue
        for one in child if isinstance(child, list) else [child]:
            if isinstance(one, ast.AST):
                yield one
                yield from _computed(one)


def _others(value) -> list[str]:
    if isinstance(value, bool):
        return [str(not value)]
    if isinstance(value, int):
        return [str(value - 1), str(value + 1)]
    return [repr(value * 0.5), repr(value * 2.0)] if value else ["1.0"]


def possible() -> list[list[Edit]]:
    """Every edit that can be made in the rooms, those of one place together."""
    return [
        together
        for room in ROOMS
        for file in sorted((ROOT / "hatchkit" / room).glob("*.py"))
        for together in edits_of(file, f"{room}/{file.name}")
    ]


def drawn(count: int, seed: int) -> list[Edit]:
    """`count` edits at as many places, by a seed."""
    rng, every = random.Random(seed), possible()
    return [rng.choice(together) for together in rng.sample(every, min(count, len(every)))]


def named() -> list[Edit]:
    """The faults of `NAMED`; one whose text is gone is told and left out."""
    found = []
    for name, (file, old, new) in NAMED.items():
        source = (ROOT / "hatchkit" / file).read_bytes()
        start = source.find(old.encode())
        if start < 0 or source.count(old.encode()) > 1:
            print(f"not found as it was: {name} ({file})")
            continue
        found.append(Edit(file, start, start + len(old.encode()), old, new, source.count(b"\n", 0, start) + 1, name))
    return found


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


def _statement(file: str, line: int) -> set[int]:
    """Lines of the statement at a line of a room's file; of one with a block its head."""
    tree = ast.parse((ROOT / "hatchkit" / file).read_bytes())
    around = [node for node in ast.walk(tree) if isinstance(node, ast.stmt) and node.lineno <= line <= node.end_lineno]
    inner = max(around, key=lambda node: (node.lineno, -node.end_lineno))
    block = getattr(inner, "body", None)
    last = max(inner.lineno, block[0].lineno - 1) if block else inner.end_lineno
    return set(range(inner.lineno, last + 1)) | {line}


def reaching(edit: Edit, reach: dict) -> list[str]:
    """Of the tests for a file those that come to the edited statement, the quick ones first.

    A statement that runs at import concerns all of them; those that come to more of the file than that are first.
    """
    tests, lines = tests_for(edit.file), _statement(edit.file, edit.line)
    there = {test: set(reach[test]["lines"].get(edit.file, ())) for test in tests}
    if not lines & set(reach[""]["lines"].get(edit.file, ())):
        tests = [test for test in tests if lines & there[test]]
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


def report(edits, done, title: str) -> str:
    """The results as a page of Markdown."""
    commit = subprocess.run(["git", "rev-parse", "--short", "HEAD"], cwd=ROOT, capture_output=True, text=True).stdout
    survived = [edit for edit in edits if done.get(edit, ("",))[0] == "survived"]
    alike = [edit for edit in survived if edit.key in EQUIVALENT]
    open_ = [edit for edit in survived if edit not in alike]
    broken, endless = (sum(found[0] == word for found in done.values()) for word in ("broken", "no end"))
    counted = len(done) - len(alike) - broken
    lines = [
        f"# {title}",
        "",
        f"Commit {commit.strip()}, {datetime.date.today()}; `python tests/benchmarks/mutations.py`. "
        f"{len(edits)} edits drawn, {len(done)} run, {len(done) - len(survived) - broken} noticed ({endless} of them "
        f"by going on without end), {len(open_)} not, {len(alike)} without any effect, {broken} ended without a word: "
        f"{(counted - len(open_)) / max(counted, 1):.1%} of those that matter noticed.",
        "",
        "## Not noticed",
        "",
        "| where | edit | line |",
        "|---|---|---|",
    ]
    lines += [f"| {edit.file}:{edit.line} | `{edit.what}` | `{edit.text}` |".replace("|=", r"\|=") for edit in open_]
    lines += ["", "## Without effect", "", "| where | edit | why |", "|---|---|---|"]
    lines += [
        f"| {edit.file}:{edit.line} | `{edit.what}` in `{edit.text}` | {EQUIVALENT[edit.key]} |" for edit in alike
    ]
    return "\n".join(lines) + "\n"


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__.split("\n")[0])
    parser.add_argument("--edits", type=int, default=150)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--workers", type=int, default=2)
    parser.add_argument("--minutes", type=float, default=600.0, help="begin no further edit after this time")
    parser.add_argument("--reach", type=Path, help="file that keeps which test comes to which lines, for the next draw")
    parser.add_argument("--named", action="store_true")
    parser.add_argument("--again", action="store_true")
    options = parser.parse_args()
    edits = named() if options.named else drawn(options.edits, options.seed)
    kept: dict = {}
    if options.again:
        edits, kept = earlier()
    waiting = [edit for edit in edits if edit not in kept]
    load()
    done = dict(kept)
    for room in ROOMS:
        some = [edit for edit in waiting if edit.file.startswith(f"{room}/")]
        if some:
            done |= run(some, reach_of(some, options.reach), options.workers, options.minutes)
    if options.named:
        print(
            "\n".join(f"SURVIVED: {edit.text}" for edit in edits if done.get(edit, ("",))[0] == "survived")
            or f"all {len(done)} noticed"
        )
        return
    RESULTS.parent.mkdir(exist_ok=True)
    rows = [[*edit.key, *done[edit]] for edit in edits if edit in done]
    RESULTS.with_suffix(".json").write_text("[\n" + ",\n".join(map(json.dumps, rows)) + "\n]\n", encoding="utf-8")
    RESULTS.write_text(report(edits, done, f"Small faults and the tests, seed {options.seed}"), encoding="utf-8")
    print(RESULTS.read_text("utf-8").split("\n")[2])


def earlier() -> tuple[list[Edit], dict]:
    """The edits of last time that can still be made, and what became of those that are not to be run again."""
    known = {tuple(row[:4]): tuple(row[4:]) for row in json.loads(RESULTS.with_suffix(".json").read_text("utf-8"))}
    there = {edit.key: edit for together in reversed(possible()) for edit in together}  # of like lines the first
    edits = [there[key] for key in known if key in there]
    for gone in known.keys() - there.keys():
        print(f"can be made no more: {gone}")
    return edits, {
        edit: known[edit.key] for edit in edits if known[edit.key][0] in ("noticed", "no end") or edit.key in EQUIVALENT
    }


if __name__ == "__main__":
    main()
