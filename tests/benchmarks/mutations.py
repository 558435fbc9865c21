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
import json
import random
import re
import subprocess
from dataclasses import dataclass
from pathlib import Path

from mutations_named import NAMED
from mutations_run import ROOMS, ROOT, load, reach_of, run

RESULTS = Path(__file__).resolve().parent / "results" / "mutations.md"
#: What each draw gave at first, before anything was mended for it.
DRAWS = RESULTS.with_name("mutations_draws.json")

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


def commit() -> str:
    """Short name of the commit that the source is at."""
    asked = ["git", "rev-parse", "--short", "HEAD"]
    return subprocess.run(asked, cwd=ROOT, capture_output=True, text=True).stdout.strip()


def keep_draw(edits, done, seed: int) -> None:
    """Add a draw to those that were made before, with the edits that it found unnoticed."""
    words = [found[0] for found in done.values()]
    draws = json.loads(DRAWS.read_text("utf-8")) if DRAWS.exists() else []
    draws.append(
        dict(
            seed=seed,
            commit=commit(),
            date=f"{datetime.date.today()}",
            noticed=words.count("noticed") + words.count("no end"),
            survived=[edit.key for edit in edits if done.get(edit, ("",))[0] == "survived"],
        )
    )
    DRAWS.write_text("[\n" + ",\n".join(map(json.dumps, draws)) + "\n]\n", encoding="utf-8")


def draws_told() -> list[str]:
    """Lines on every draw as it came out at first, and on all of them together."""
    rows, sums = [], [0, 0, 0]
    for draw in json.loads(DRAWS.read_text("utf-8")) if DRAWS.exists() else []:
        alike = sum(tuple(key) in EQUIVALENT for key in draw["survived"])
        counts = [draw["noticed"], len(draw["survived"]) - alike, alike]
        sums = [one + more for one, more in zip(sums, counts, strict=True)]
        rows.append((f"{draw['seed']}", draw["commit"], draw["date"], counts))
    rows.append(("all", "", "", sums))
    lines = ["", "## Draws as they came out, before mending", "", "Which have no effect was judged afterwards.", ""]
    lines += [
        "| seed | commit | date | noticed | not | without effect | share noticed |",
        "|---|---|---|---|---|---|---|",
    ]
    return lines + [
        f"| {seed} | {at} | {day} | {noticed} | {open_} | {alike} | {noticed / max(noticed + open_, 1):.1%} |"
        for seed, at, day, (noticed, open_, alike) in rows
    ]


def report(edits, done, title: str) -> str:
    """The results as a page of Markdown."""
    survived = [edit for edit in edits if done.get(edit, ("",))[0] == "survived"]
    alike = [edit for edit in survived if edit.key in EQUIVALENT]
    open_ = [edit for edit in survived if edit not in alike]
    broken, endless = (sum(found[0] == word for found in done.values()) for word in ("broken", "no end"))
    counted = len(done) - len(alike) - broken
    lines = [
        f"# {title}",
        "",
        f"Commit {commit()}, {datetime.date.today()}; `python tests/benchmarks/mutations.py`. "
        f"{len(edits)} edits drawn, {len(done)} run, {len(done) - len(survived) - broken} noticed ({endless} of them "
        f"by going on without end), {len(open_)} not, {len(alike)} without any effect, {broken} ended without a word: "
        f"{(counted - len(open_)) / max(counted, 1):.1%} of those that matter noticed.",
        *draws_told(),
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
    if not options.again:
        keep_draw(edits, done, options.seed)
    rows = [[*edit.key, *done[edit]] for edit in edits if edit in done]
    RESULTS.with_suffix(".json").write_text("[\n" + ",\n".join(map(json.dumps, rows)) + "\n]\n", encoding="utf-8")
    title = "Small faults and the tests, the last draw" + (" once more, after mending" if options.again else "")
    RESULTS.write_text(report(edits, done, title), encoding="utf-8")
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
