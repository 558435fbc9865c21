"""Functions and classes of the kit that neither the kit nor a notebook uses: shown to somebody, or to be removed.

    python tests/benchmarks/only_tests_call.py

By name alone: one that shares its name with another that is used is not found. The public calls, and those of
the simulator, are left out.
"""

from __future__ import annotations

import ast
import re
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
#: Kept though only tests call it: the plain function on arrays through which an estimate is held against books; and
#: what the second process of a page is told to run.
TOLD = {"age_at_death_from", "serve"}


def _words(folder: str, ending: str) -> set[str]:
    text = "\n".join(file.read_text(encoding="utf-8") for file in (ROOT / folder).rglob(f"*{ending}"))
    return set(re.findall(r"\b[A-Za-z_]\w*\b", text))


def _pictures_by_name(trees) -> set[str]:
    """Functions asked for by a name in quotation marks, as pictures are: "losses.egg_ledger"."""
    texts = (node.value for tree in trees for node in ast.walk(tree) if isinstance(node, ast.Constant))
    return {text.rpartition(".")[2] for text in texts if isinstance(text, str) and re.fullmatch(r"[a-z_]+\.\w+", text)}


def main() -> None:
    """Print each with its file and whether a test names it."""
    trees = {file: ast.parse(file.read_text(encoding="utf-8")) for file in sorted((ROOT / "hatchkit").rglob("*.py"))}
    used = {
        node.id if isinstance(node, ast.Name) else node.attr
        for tree in trees.values()
        for node in ast.walk(tree)
        if isinstance(node, (ast.Name, ast.Attribute))
    }
    used |= _pictures_by_name(trees.values())
    used |= _words("notebooks", ".ipynb") | _words("hatchkit", ".j2") | {"__getattr__", "__dir__"}
    used |= TOLD
    for face in (ROOT / "hatchkit" / "__init__.py", ROOT / "hatchkit" / "simulate" / "__init__.py"):
        used |= set(re.findall(r'"(\w+)"', face.read_text(encoding="utf-8")))
    tests, count = _words("tests", ".py"), 0
    for file, tree in trees.items():
        for node in tree.body:
            if isinstance(node, (ast.FunctionDef, ast.ClassDef)) and node.name not in used:
                count += 1
                print(f"{file.relative_to(ROOT)}: {node.name}{'' if node.name in tests else ' (not even a test)'}")
    print(f"{count} functions and classes")


if __name__ == "__main__":
    main()
