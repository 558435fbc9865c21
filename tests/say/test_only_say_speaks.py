"""Only `say` speaks: sentences that other rooms still hold are counted, room by room, and may only grow fewer."""

import ast
import re
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2] / "hatchkit"

#: Sentences that a room still holds itself. A room that is not named holds none. Numbers may only fall.
STILL = {
    "bootstrap": 10,
    "cli": 26,
    "pages": 1,
    "records": 332,
    "reference": 1,
    "season": 6,
    "start": 3,
    "terminal": 5,
}
WORD = re.compile(r"[\"'(„]*[A-Za-z][A-Za-z'’-]*[.,;:!?)\"']*$")
#: Texts for machines.
NO_WORDS = ("<", "@", "system-ui", "select ", "SELECT ", "import ")
#: What a mistake of a programmer's gets, never a keeper.
OURS = ("ValueError", "TypeError", "KeyError", "LookupError", "AttributeError", "RuntimeError", "MissingWords")
#: The launcher's help.
HELP = ("help", "description", "epilog", "metavar")


def is_sentence(text: str) -> bool:
    """Four words or more, beside what is filled in."""
    words = [word for word in text.split() if WORD.match(word)]
    return len(words) >= 4 and not text.startswith(NO_WORDS)


def sentences(tree: ast.AST) -> list[tuple[int, str]]:
    """Line and text of every sentence in a file's code: no docstrings, no launcher's help, no programmer's errors."""
    found, nodes = [], [tree]
    while nodes:
        node = nodes.pop()
        if isinstance(node, ast.Expr) and isinstance(node.value, ast.Constant):
            continue
        if isinstance(node, ast.Raise) and getattr(getattr(node.exc, "func", None), "id", "") in OURS:
            continue
        if isinstance(node, ast.keyword) and node.arg in HELP:
            continue
        text = ""
        if isinstance(node, ast.JoinedStr):
            text = "".join(str(part.value) if isinstance(part, ast.Constant) else "{}" for part in node.values)
            nodes += [part for part in node.values if not isinstance(part, ast.Constant)]
        elif isinstance(node, ast.Constant) and isinstance(node.value, str):
            text = node.value
        else:
            nodes += ast.iter_child_nodes(node)
        if is_sentence(text):
            found.append((node.lineno, text))
    return found


def by_room() -> dict[str, list]:
    """Every sentence outside `say` by room; a file at the top of the house is a room of its own."""
    rooms: dict[str, list] = {}
    for file in sorted(ROOT.rglob("*.py")):
        room = file.relative_to(ROOT).parts[0].removesuffix(".py")
        found = sentences(ast.parse(file.read_text(encoding="utf-8")))
        rooms.setdefault(room, []).extend((f"{file.name}:{line}", text) for line, text in found)
    return rooms


def test_what_counts_as_a_sentence():
    code = '''"""A docstring is not said to anyone."""
def f(x):
    """Nor is this one said."""
    if x:
        raise ValueError("a mistake of ours is none")
    parser.add_argument("x", help="what the launcher says of it")
    return f"batch {x} was very late: {'she is not to blame' if x else ''}", "three words only", "egg_count_so_far"
'''
    assert [text for _, text in sentences(ast.parse(code))] == ["batch {} was very late: {}", "she is not to blame"]
    assert not is_sentence('<svg role="img" class="picture of a hatch">') and not is_sentence("a b_c d_e f_g")


def test_no_sentence_outside_say_beyond_those_that_are_known():
    rooms = by_room()
    more = {room: found for room, found in rooms.items() if room != "say" and len(found) > STILL.get(room, 0)}
    assert more == {}, "say it in hatchkit/say/messages, in every language"


if __name__ == "__main__":
    for room, found in by_room().items():
        print(room, len(found))
