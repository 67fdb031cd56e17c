"""The world and its people know nothing of the tool: they could not agree with it by sharing its code."""

import ast
from pathlib import Path

import pytest

HERE = Path(__file__).parent
# Who asks the tool has to know it; what is asked about must not.
ASKING = {"counter.py", "shrinking.py"}
DRAWING = [path for path in sorted(HERE.rglob("*.py")) if path.name not in ASKING and not path.name.startswith("test_")]


def imported(path: Path) -> set[str]:
    """Every module that a file imports, and what it takes from it."""
    found = set()
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            found |= {alias.name for alias in node.names}
        elif isinstance(node, ast.ImportFrom):
            found |= {f"{node.module}.{alias.name}" for alias in node.names}
    return found


@pytest.mark.parametrize("path", DRAWING, ids=lambda path: path.relative_to(HERE).as_posix())
def test_nothing_comes_from_the_tool_but_its_writer(path: Path) -> None:
    tools = {name for name in imported(path) if name.startswith("bezelbook")}
    assert tools <= {"bezelbook.store.yaml_out.to_yaml"}


@pytest.mark.parametrize("path", DRAWING, ids=lambda path: path.relative_to(HERE).as_posix())
def test_nothing_comes_from_those_who_ask(path: Path) -> None:
    askers = {f"tests.simulator.{name.removesuffix('.py')}" for name in ASKING}
    assert not {name for name in imported(path) if name.rpartition(".")[0] in askers}
