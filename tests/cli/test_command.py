"""The command as a whole: how wrong use ends, and that nobody at a bench ever sees a traceback."""

import json
import os
import subprocess
import sys
from collections.abc import Callable
from io import StringIO
from pathlib import Path
from typing import Any

import pytest

from bezelbook import cli
from bezelbook.cli import COMMANDS, main, parser
from tests.cli.conftest import STOPPED, Run, Write

READING = ("check", "ask", "pages", "site", "upgrade")
WRONG = [
    [],
    ["chek"],
    ["check", "--bok", "kb"],
    ["check", "extra"],
    ["check", "--format", "xml"],
    ["check", "--book"],
    ["pages"],
    ["start"],
    ["ask", "--batch"],
    ["check", "--today", "2026-02-30"],
    ["check", "--today", "yesterday"],
    ["schema", "--book", "kb"],
]


@pytest.mark.parametrize("arguments", WRONG, ids=" ".join)
def test_wrong_use_ends_with_3_and_says_what_there_is(run: Run, write: Write, arguments: list[str]) -> None:
    write()
    ran = run(*arguments)
    assert ran.code == 3
    assert ran.out == ""
    assert ran.err.startswith("usage: bezelbook")
    assert ran.err.endswith(" bezelbook --help lists what there is.\n")


@pytest.mark.parametrize("command", ["", *(module.__name__.rpartition(".")[2] for module in COMMANDS)])
def test_help_names_what_there_is_and_ends_with_0(run: Run, command: str) -> None:
    ran = run(*([command] if command else []), "--help")
    assert (ran.code, ran.err) == (0, "")
    assert ran.out.startswith(f"usage: bezelbook {command}")


def test_every_command_that_is_promised_is_there() -> None:
    text = parser().format_help()
    assert all(f"    {name} " in text for name in ("check", "ask", "pages", "schema", "site", "start", "upgrade"))


def folder_called(book: str, command: str) -> list[str]:
    more = {"ask": ["x"], "pages": ["--out", "out"], "site": ["--config", "mkdocs.yml"]}.get(command, [])
    return [command, "--book", book, *more]


@pytest.mark.parametrize("command", READING)
def test_where_there_is_no_book_that_is_said(run: Run, tmp_path: Path, command: str) -> None:
    (tmp_path / "mkdocs.yml").write_text("site_name: x\n", "utf-8")
    (tmp_path / "file").write_bytes(b"")
    for book in ("nowhere", "file", "nowhere/below", "\x00"):
        ran = run(*folder_called(book, command))
        assert (ran.code, ran.out) == (3, "")
        assert ran.err.startswith(f"bezelbook: there is no book in {book}. Start one with bezelbook start")


STRANGE: dict[str, bytes] = {
    "binary": bytes(range(256)) * 50,
    "not UTF-8": "name: caf\xe9\n".encode("latin-1"),
    "UTF-16": "name: x\n".encode("utf-16"),
    "a NUL": b"name: x\x00\n",
    "nothing": b"",
    "blanks": b" \n\t\n",
    "a byte order mark": b"\xef\xbb\xbf",
    "emoji": "🚗: 🔊\n".encode(),
    "100 kB of one word": b"x" * 100_000,
    "300 kB": b"name: " + b"x" * 300_000,
    "deep brackets": b"[" * 100_000,
    "deep mappings": b"".join(b" " * n + b"a:\n" for n in range(300)),
    "an alias bomb": b"a: &a [x]\nb: &b [*a, *a]\nc: [*b, *b]\n",
    "two documents": b"name: x\n---\nname: y\n",
    "a tag": b"!!python/object/apply:os.system ['true']\n",
    "unbalanced": b"name: {x: [\n",
    "tabs": b"name:\n\tx: 1\n",
    "a number of thousands of digits": b"generation: " + b"9" * 5000 + b"\n",
    "a key that is a list": b"[a, b]: c\n",
    "a list": b"- 1\n- 2\n",
    "a word": b"word\n",
}


@pytest.mark.parametrize("kind", ["shop.yaml", "vehicles/x.yaml", "notes/2026/x.yaml"])
@pytest.mark.parametrize("text", STRANGE.values(), ids=STRANGE.keys())
def test_whatever_stands_in_a_file_is_one_more_complaint_and_the_rest_is_read(
    run: Run, write: Write, kind: str, text: bytes
) -> None:
    write(**{kind: text})
    ran = run("check")
    assert ran.code == 2
    told = [line for line in ran.out.splitlines() if line.startswith(f"kb/{kind}:")]
    assert told
    assert all(len(line) < 2000 for line in told)
    assert f"{6 if kind == 'shop.yaml' else 7} records read, 1 file left out" in ran.out
    assert run("ask", "short hatch dash late").out.startswith("GOES IN")


def test_a_file_that_nobody_may_read_is_told_and_the_rest_is_read(
    run: Run, write: Write, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Whoever runs the tests may read everything, so that the refusal is made up where the file is opened."""
    book = write()
    opened: Callable[..., Any] = Path.open

    def refuse(path: Path, *rest: Any, **more: Any) -> Any:
        if path.name == "deep.yaml":
            raise PermissionError(13, "Permission denied", str(path))
        return opened(path, *rest, **more)

    monkeypatch.setattr(Path, "open", refuse)
    ran = run("check")
    assert book.is_dir()
    assert ran.code == 2
    assert ran.out.startswith("kb/head_units/deep.yaml:1:1: this file cannot be opened: Permission denied.")
    assert run("ask", "short hatch dash late").code == 2


@pytest.mark.parametrize(
    ("arguments", "path"),
    [
        (["pages", "--out", "file"], "file"),
        (["pages", "--out", "file/below"], "file/below"),
        (["schema", "--out", "file"], "file"),
        (["start", "file/below"], "file"),
    ],
)
def test_a_file_in_the_way_is_named(run: Run, write: Write, tmp_path: Path, arguments: list[str], path: str) -> None:
    write()
    (tmp_path / "file").write_bytes(b"mine")
    ran = run(*arguments)
    assert ran.code == 3
    assert path in ran.err
    assert (tmp_path / "file").read_bytes() == b"mine"


def test_a_name_that_no_folder_can_have_is_refused(run: Run) -> None:
    ran = run("check", "--book", "x" * 5000)
    assert (ran.code, ran.out) == (3, "")
    assert ran.err.endswith(": File name too long. See that it can be read or written there.\n")


def test_a_full_disk_ends_with_3_and_a_sentence(run: Run, monkeypatch: pytest.MonkeyPatch) -> None:
    def full(*_: object) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr("bezelbook.cli.schema.write_schemas", full)
    ran = run("schema")
    assert (ran.code, ran.err) == (
        3,
        "bezelbook: a file: No space left on device. See that it can be read or written there.\n",
    )


COMMAND = [sys.executable, "-c", "import sys; from bezelbook.cli import main; sys.exit(main())"]


def test_a_terminal_that_lacks_a_sign_shows_its_code(write: Write, tmp_path: Path) -> None:
    write(**{"notes/2026/stopped.yaml": STOPPED})
    environment = {**os.environ, "PYTHONIOENCODING": "ascii"}
    arguments = [*COMMAND, "ask", "--format", "json", "deep hatch dash late"]
    ran = subprocess.run(arguments, cwd=tmp_path, env=environment, capture_output=True, check=False)
    assert (ran.returncode, ran.stderr) == (0, b"")
    told = json.loads(ran.stdout.decode("ascii"))
    assert "±" in told["number"]["asks"]
    ran = subprocess.run(
        [*COMMAND, "ask", "deep hatch dash late"], cwd=tmp_path, env=environment, capture_output=True, check=False
    )
    assert (ran.returncode, ran.stderr) == (0, b"")
    assert b"\\xb1" in ran.stdout


def test_whoever_has_seen_enough_may_close_the_pipe(write: Write, tmp_path: Path) -> None:
    write()
    arguments = [*COMMAND, "check", "--format", "json"]
    with subprocess.Popen(arguments, cwd=tmp_path, stdout=subprocess.PIPE, stderr=subprocess.PIPE) as ran:
        assert ran.stdout is not None
        assert ran.stderr is not None
        ran.stdout.close()
        said = ran.stderr.read()
    assert (ran.returncode, said) == (0, b"")


def test_a_closed_pipe_ends_with_0_and_swallows_the_rest(
    monkeypatch: pytest.MonkeyPatch, write: Write, tmp_path: Path
) -> None:
    write()
    monkeypatch.chdir(tmp_path)
    reader, writer = os.pipe()
    os.close(reader)
    with os.fdopen(writer, "w", encoding="utf-8") as out:
        monkeypatch.setattr("sys.stdout", out)
        assert main(["check"]) == 0
        out.write("more")


def test_output_may_go_where_no_terminal_is(monkeypatch: pytest.MonkeyPatch, write: Write, tmp_path: Path) -> None:
    write()
    monkeypatch.chdir(tmp_path)
    monkeypatch.setattr("sys.stdout", StringIO())
    assert main(["check"]) == 0


def test_the_exit_codes_are_said_where_the_command_is() -> None:
    assert cli.main.__doc__ is not None
    assert all(f"{code} " in cli.main.__doc__ for code in range(4))
