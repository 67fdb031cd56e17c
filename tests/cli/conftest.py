"""Running the command as a person would, in a folder of its own."""

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import TypeAlias

import pytest

from bezelbook.cli import main, progress

SHOP = "name: A shop\nformat: 1\n"
HATCH = """\
name: Compact hatch, second generation
also: [hatch two]
vehicle_class: compact hatch
generation: 2
model_years: 5
splits: {build: {values: {early: {tell: a round knob}, late: {tell: a square knob, also: [facelift]}}}}
places:
  dash: {kind: plain opening, side: centre, name: radio hole}
  pod: {kind: overhead console, side: centre, name: roof slot}
  door: {kind: door lower, side: left}
"""
SHORT = "name: short one\nsize_class: double\nbody_depth: 110 ± 1 mm\nplug_exit: right\nplug_and_bend: 30 ± 2 mm\n"
DEEP = "name: deep one\nsize_class: double\nbody_depth: 170 ± 1 mm\nplug_exit: right\nplug_and_bend: 30 ± 2 mm\n"
STATE = "mounts: none\ncut: nothing\nloom: aside\nplugs: on\n"
TRIED = f"form: tried\nvehicle: hatch-2\nplace: dash\nsplits: {{build: late}}\n{STATE}"
WENT_IN = TRIED + "author: rk\ndate: 2026-02-03\njob: blue\nwhat: short\nverdict: goes in\nsure: fitted\n"
STOPPED = TRIED + "author: tm\ndate: 2026-03-04\nwhat: short\nverdict: does not\nsure: dry-fitted\nreason: depth\n"
SEEN = "form: seen\nvehicle: hatch-2\nplace: dash\nsplits: {build: late}\n"
CAME_OFF = SEEN + "author: rk\ndate: 2026-02-03\namplifier: not there\npieces: [surround]\n"
BOOK = {
    "shop.yaml": SHOP,
    "vehicles/hatch-2.yaml": HATCH,
    "head_units/short.yaml": SHORT,
    "head_units/deep.yaml": DEEP,
    "notes/2026/came-off.yaml": CAME_OFF,
    "notes/2026/went-in.yaml": WENT_IN,
    "jobs/blue.yaml": "tag: blue\nvehicle: hatch-2\nwishes: [{want: add, what: deep}]\n",
}


@dataclass(frozen=True)
class Ran:
    """How a command ended and what it said."""

    code: int
    out: str
    err: str

    @property
    def said(self) -> str:
        """Everything that a person saw."""
        return self.out + self.err


Run: TypeAlias = Callable[..., Ran]
Write: TypeAlias = Callable[..., Path]


def ended(arguments: tuple[object, ...]) -> int:
    try:
        return main([str(argument) for argument in arguments])
    except SystemExit as end:
        return end.code if isinstance(end.code, int) else -1


@pytest.fixture
def run(tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> Run:
    """Run a command in an empty folder; whatever it is given, it ends with a code and never with a traceback."""
    monkeypatch.chdir(tmp_path)
    monkeypatch.setattr(progress, "PATIENCE", 600)  # a busy machine is not told that it is slow

    def command(*arguments: object) -> Ran:
        capsys.readouterr()
        code = ended(arguments)
        said = capsys.readouterr()
        assert "Traceback" not in said.out + said.err
        return Ran(code, said.out, said.err)

    return command


@pytest.fixture
def write(tmp_path: Path) -> Write:
    """Write files below the folder that the command runs in: a book in kb, and more files or others in their place."""

    def files(**more: str | bytes | None) -> Path:
        for name, text in {**BOOK, **more}.items():
            path = tmp_path / "kb" / name
            path.parent.mkdir(parents=True, exist_ok=True)
            if text is not None:
                path.write_bytes(text.encode() if isinstance(text, str) else text)
        return tmp_path / "kb"

    return files
