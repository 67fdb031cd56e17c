"""Plain scalars mean what the core schema of YAML 1.2.2 says, and text is written so that 1.1 agrees.

`data/yaml_scalars.csv` has each token with its meaning by section 10.3 of YAML 1.2.2, and what PyYAML 6.0.4, a reader
of YAML 1.1, makes of it.
"""

import ast
import csv
import math
from pathlib import Path

import pytest
from yaml import CSafeLoader

from bezelbook.store.scalars import resolve
from bezelbook.store.yaml_out import to_yaml
from bezelbook.store.yaml_text import read_yaml

CORE = "yaml_1.2.2_core_schema"
BY_1_1 = "PyYAML_6.0.4_safe_load"

with (Path(__file__).parent / "data" / "yaml_scalars.csv").open(encoding="utf-8", newline="") as lines:
    ROWS = list(csv.DictReader(lines))

NUMBERS = {"inf": math.inf, "nan": math.nan}


def meant(said: str) -> object:
    """The value that a cell such as `int:12` stands for."""
    kind, _, value = said.partition(":")
    if kind == "null":
        return None
    return NUMBERS[value] if value in NUMBERS else ast.literal_eval(value)


def same(one: object, other: object) -> bool:
    return repr(one) == repr(other) and type(one) is type(other)


every_token = pytest.mark.parametrize("row", ROWS, ids=lambda row: row["token"])


@every_token
def test_a_token_has_the_meaning_of_the_core_schema(row: dict[str, str]) -> None:
    assert same(resolve(row["token"]), meant(row[CORE]))


@every_token
def test_a_record_holds_that_meaning_unless_it_is_no_number_to_count_with(row: dict[str, str]) -> None:
    value = meant(row[CORE])
    parsed = read_yaml(f"a: {row['token']}\n".encode())
    if isinstance(value, float) and not math.isfinite(value):
        assert len(parsed.faults) == 1
    else:
        assert parsed.faults == ()
        assert isinstance(parsed.value, dict)
        assert same(parsed.value["a"], value)


@every_token
def test_a_token_that_was_text_is_written_so_that_1_1_reads_text(row: dict[str, str]) -> None:
    written = to_yaml({"a": row["token"]})
    loader = CSafeLoader(written)
    try:
        assert loader.get_single_data() == {"a": row["token"]}
    finally:
        loader.dispose()
    assert read_yaml(written.encode()).value == {"a": row["token"]}


def test_the_two_versions_disagree_often_enough_to_matter() -> None:
    assert sum(row[CORE] != row[BY_1_1] for row in ROWS) > 20
