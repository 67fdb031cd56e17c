"""Another repository that holds a book can check it before a commit."""

import shlex
from pathlib import Path

import yaml

from bezelbook.cli import parser

KEYS = {"id", "name", "description", "entry", "language", "files", "pass_filenames"}


def test_the_hook_runs_a_command_that_there_is() -> None:
    [hook] = yaml.safe_load((Path(__file__).parents[1] / ".pre-commit-hooks.yaml").read_text())
    assert hook.keys() == KEYS
    command, *arguments = shlex.split(hook["entry"])
    assert command == "bezelbook"
    assert parser().parse_args(arguments).strict
    assert (hook["language"], hook["pass_filenames"]) == ("python", False)
