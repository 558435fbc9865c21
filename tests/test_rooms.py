"""Imports run downward only and in no circle, late ones included; today's exceptions are listed and may only go."""

import ast
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent / "hatchkit"

#: The house from the ground up: a room imports rooms that stand before it, never one of its own line or behind.
FLOORS = (
    {"say"},
    {"problems"},
    {"reference", "units", "terminal"},
    {"words"},
    {"losses", "climate", "usual"},
    {"records"},
    {"season"},
    {"relate"},
    {"yearly"},
    {"advice", "trials"},
    {"findings"},
    {"figures"},
    {"simulate"},
    {"pages"},
    {"widgets"},
    {"teach"},
    {"bootstrap"},
    {"start"},
    {"cli"},
    {"__main__"},
)

#: Rooms that stand before another and are no business of its: records knows nothing of statistics (one file of
#: formulas excepted), figures draw what they are given (with words from say), nothing that computes knows how the
#: reader is spoken to.
STRANGERS = {
    "records": {"losses", "usual", "climate"},
    "figures": {"problems", "records", "season", "losses", "climate", "usual", "relate", "advice", "findings"},
    "losses": {"say", "words.tables"},
    "climate": {"say"},
    "usual": {"say", "problems", "words"},
}
ALLOWED_ARROWS = {
    ("records.logs.humidity", "climate.air"),
    ("records.logs.season", "climate.air"),
}

ALLOWED_UPWARD = set()


def _modules() -> dict[str, Path]:
    found = {}
    for file in ROOT.rglob("*.py"):
        parts = file.relative_to(ROOT).with_suffix("").parts
        found[".".join(part for part in parts if part != "__init__") or "hatchkit"] = file
    return found


def _imported(name: str, file: Path, modules) -> set[str]:
    """Modules of the kit that a module imports, wherever in it; for type checkers alone does not count."""
    tree, found = ast.parse(file.read_text(encoding="utf-8")), set()
    nodes = list(tree.body)
    while nodes:
        node = nodes.pop()
        if isinstance(node, ast.If) and "TYPE_CHECKING" in ast.unparse(node.test):
            nodes += node.orelse
            continue
        if isinstance(node, ast.Import):
            found |= {alias.name.removeprefix("hatchkit.") for alias in node.names if alias.name.startswith("hatchkit")}
        elif isinstance(node, ast.ImportFrom) and (node.module or "").split(".")[0] == "hatchkit":
            home = node.module.removeprefix("hatchkit").lstrip(".")
            for alias in node.names:
                inside = f"{home}.{alias.name}".lstrip(".")
                found.add(inside if inside in modules else home or "hatchkit")
        nodes += ast.iter_child_nodes(node)
    return found - {name}


MODULES = _modules()
ARROWS = {name: _imported(name, file, MODULES) for name, file in MODULES.items()}


def _room(module: str) -> str:
    return module.split(".")[0]


def _circles() -> set[frozenset]:
    """Strongly connected parts of more than one module (Tarjan 1972)."""
    order, low, path, found = {}, {}, [], set()

    def visit(name):
        order[name] = low[name] = len(order)
        path.append(name)
        for other in ARROWS.get(name, ()):
            if other not in order:
                visit(other)
                low[name] = min(low[name], low[other])
            elif other in path:
                low[name] = min(low[name], order[other])
        if low[name] == order[name]:
            part = path[path.index(name) :]
            del path[path.index(name) :]
            if len(part) > 1:
                found.add(frozenset(part))

    for name in ARROWS:
        if name not in order:
            visit(name)
    return found


def test_the_drawing_sees_the_house_as_it_is():
    assert "losses.proportions" in ARROWS["losses.breakdown"], "an import at the top of a file"
    assert "losses.fates" in ARROWS["season"], "an import inside a function"
    assert len(MODULES) > 150 and sum(map(len, ARROWS.values())) > 400


def test_a_circle_would_be_seen(monkeypatch):
    monkeypatch.setitem(ARROWS, "advice.published", {"advice.tally"})
    assert any({"advice.published", "advice.tally"} <= circle for circle in _circles())


def test_every_room_has_its_place():
    placed = set().union(*FLOORS) | {"hatchkit"}
    assert {_room(name) for name in MODULES} <= placed, "say in FLOORS where a new room stands"


def test_imports_run_downward_only():
    height = {room: floor for floor, rooms in enumerate(FLOORS) for room in rooms}
    upward = {
        (name, other)
        for name, others in ARROWS.items()
        for other in others
        if name != "hatchkit"
        and other != "hatchkit"
        and _room(name) != _room(other)
        and height[_room(other)] >= height[_room(name)]
    }
    assert upward == ALLOWED_UPWARD


def test_rooms_do_not_know_what_is_no_business_of_theirs():
    found = {
        (name, other)
        for name, others in ARROWS.items()
        for other in others
        if {_room(other), other} & STRANGERS.get(_room(name), set())
    }
    assert found == ALLOWED_ARROWS


def test_no_circle():
    assert _circles() == set()


def test_nobody_imports_the_launcher_but_the_door():
    assert {name for name, others in ARROWS.items() if "cli" in others} == {"__main__"}
