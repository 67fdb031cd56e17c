"""The schema files: written, and compared without writing."""

import json
from pathlib import Path

import pytest
from jsonschema import Draft202012Validator

from bezelbook.kinds import KINDS
from tests.cli.conftest import Run

ENDING = ".schema.json"


@pytest.fixture
def folder(run: Run, tmp_path: Path) -> Path:
    ran = run("schema")
    assert (ran.code, ran.out) == (0, "The schemas are in schema.\n")
    return tmp_path / "schema"


def test_there_is_a_schema_for_every_kind_and_for_an_answer(folder: Path) -> None:
    names = {path.name.removesuffix(ENDING) for path in folder.iterdir()}
    assert names == {"answer", "wiring_answer", *(kind.name for kind in KINDS.values())}
    for path in folder.iterdir():
        Draft202012Validator.check_schema(json.loads(path.read_text("utf-8")))


def test_what_was_just_written_is_up_to_date(run: Run, folder: Path) -> None:
    ran = run("schema", "--check")
    assert (ran.code, ran.out) == (0, "The schemas in schema are up to date.\n")
    assert folder.is_dir()


def test_a_changed_a_missing_and_an_extra_file_are_shown_and_nothing_is_written(run: Run, folder: Path) -> None:
    (folder / f"shop{ENDING}").write_text("{}\n", "utf-8")
    (folder / f"note{ENDING}").unlink()
    (folder / f"gramophone{ENDING}").write_text('{"old": 1}\n', "utf-8")
    before = {path.name: path.read_bytes() for path in folder.iterdir()}
    ran = run("schema", "--check")
    assert ran.code == 1
    for name in ("shop", "note", "gramophone"):
        assert f"--- {name}{ENDING} as it is" in ran.out
    assert '-{"old": 1}' in ran.out
    assert {path.name: path.read_bytes() for path in folder.iterdir()} == before


def test_writing_again_mends_all_three(run: Run, folder: Path) -> None:
    (folder / f"gramophone{ENDING}").write_text("{}\n", "utf-8")
    (folder / f"shop{ENDING}").write_text("{}\n", "utf-8")
    run("schema")
    assert run("schema", "--check").code == 0
    assert not (folder / f"gramophone{ENDING}").exists()


def test_a_folder_that_is_not_there_is_out_of_date(run: Run) -> None:
    assert run("schema", "--check", "--out", "elsewhere").code == 1


def test_the_project_s_own_schemas_are_up_to_date(run: Run, root: Path) -> None:
    assert (
        run("schema", "--check", "--out", root / "schema").said == f"The schemas in {root / 'schema'} are up to date.\n"
    )
