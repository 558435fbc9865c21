"""The face of the package: cheap to import, every public call where it is said to be."""

import ast
import re
import subprocess
import sys
from pathlib import Path

import pytest

import hatchkit as hk

ROOT = Path(__file__).resolve().parent.parent
ALLOWED_AT_TOP = {"README.md", "DEVELOPERS.md", "pyproject.toml", "notebooks", "hatchkit", "data_demo", "tests"}


def test_importing_hatchkit_loads_no_heavy_library():
    code = (
        "import sys, hatchkit, hatchkit.cli, hatchkit.pages.report, hatchkit.say; hatchkit.HatchkitError; "
        "print(sorted({'pandas', 'numpy', 'matplotlib', 'scipy', 'statsmodels'} & set(sys.modules)))"
    )
    printed = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True, cwd=ROOT)
    assert printed.stdout.strip() == "[]"


@pytest.mark.parametrize("name", [name for name in hk.__all__ if name != "__version__"])
def test_each_public_call_is_there_and_says_what_it_does(name):
    assert getattr(hk, name).__doc__


def test_an_unknown_name_is_an_attribute_error():
    with pytest.raises(AttributeError, match="no_such_call"):
        _ = hk.no_such_call


def _tracked():
    listed = subprocess.run(["git", "ls-files"], cwd=ROOT, capture_output=True, text=True, check=True)
    return listed.stdout.split("\n")[:-1]


def test_the_top_level_holds_what_the_house_has_and_no_more():
    top = {name.split("/")[0] for name in _tracked()}
    assert {name for name in top if not name.startswith(".")} <= ALLOWED_AT_TOP


def test_files_stay_short_enough_to_hold_in_the_head():
    """In statements, docstrings aside: neither the formatter's lines nor a fuller docstring count against a file."""
    long = {
        name: count
        for name in _tracked()
        if name.startswith("hatchkit/") and name.endswith(".py") and (count := _statements(ROOT / name)) > 225
    }
    assert long == {}


def _statements(file: Path) -> int:
    nodes = [node for node in ast.walk(ast.parse(file.read_text(encoding="utf-8"))) if isinstance(node, ast.stmt)]
    words = [node for node in nodes if isinstance(node, ast.Expr) and isinstance(node.value, ast.Constant)]
    return len(nodes) - len(words)


def test_no_committed_text_carries_the_address_of_a_package_host():
    hosts = re.compile(r"(pypi\.org|pythonhosted\.org|registry\.npmjs|deb\.debian)")
    found = [
        name
        for name in _tracked()
        if name.endswith((".py", ".md", ".toml", ".cfg", ".ipynb", ".csv"))
        and name != "tests/test_package.py"
        and hosts.search((ROOT / name).read_text(encoding="utf-8"))
    ]
    assert found == []


def test_every_library_that_is_imported_is_declared():
    import ast
    import importlib.metadata
    import tomllib

    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    declared = {re.match(r"[\w.-]+", wish)[0].lower().replace("-", "_") for wish in project["dependencies"]}
    homes = importlib.metadata.packages_distributions()
    missing = {}
    for file in (ROOT / "hatchkit").rglob("*.py"):
        for node in ast.walk(ast.parse(file.read_text(encoding="utf-8"))):
            names = (
                [alias.name for alias in node.names]
                if isinstance(node, ast.Import)
                else [node.module]
                if isinstance(node, ast.ImportFrom) and node.module
                else []
            )
            for top in {name.split(".")[0] for name in names} - set(sys.stdlib_module_names) - {"hatchkit"}:
                if not {home.lower().replace("-", "_") for home in homes[top]} & declared:
                    missing.setdefault(top, file.name)
    assert missing == {}


def test_the_licence_and_the_mark_of_types_go_with_the_package():
    assert (ROOT / "hatchkit" / "LICENSE").read_text(encoding="utf-8").startswith("MIT License")
    assert (ROOT / "hatchkit" / "py.typed").exists()


def test_the_wheel_takes_every_package_of_the_tree():
    import tomllib

    told = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["tool"]["setuptools"]["packages"]
    there = {".".join(file.parent.relative_to(ROOT).parts) for file in (ROOT / "hatchkit").rglob("__init__.py")}
    assert there <= set(told)
