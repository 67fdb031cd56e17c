from typing import Any, Literal

import pytest
from pydantic import TypeAdapter, ValidationError

from bezelbook.kinds.circuits import CIRCUIT_MEANINGS, FUNCTION_MEANINGS, ByCircuit, ByFunction
from bezelbook.values.words import CIRCUITS, FUNCTIONS

MAP: TypeAdapter[Any] = TypeAdapter(ByCircuit[Literal["passes", "not there"]])
KEEPS: TypeAdapter[Any] = TypeAdapter(ByFunction[Literal["kept", "lost"]])


def test_every_circuit_and_every_function_says_what_it_is() -> None:
    assert tuple(CIRCUIT_MEANINGS) == CIRCUITS
    assert tuple(FUNCTION_MEANINGS) == FUNCTIONS
    assert all(meaning.endswith(".") for meaning in [*CIRCUIT_MEANINGS.values(), *FUNCTION_MEANINGS.values()])


@pytest.mark.parametrize(("maps", "meanings"), [(MAP, CIRCUIT_MEANINGS), (KEEPS, FUNCTION_MEANINGS)])
def test_an_editor_offers_every_one_with_what_it_is_and_no_other(
    maps: TypeAdapter[Any], meanings: dict[str, str]
) -> None:
    schema = maps.json_schema()
    assert {name: field["description"] for name, field in schema["properties"].items()} == meanings
    assert schema["additionalProperties"] is False


def test_a_map_need_not_speak_of_all() -> None:
    assert MAP.validate_python({"constant": "passes"}) == {"constant": "passes"}
    assert KEEPS.validate_python({}) == {}


@pytest.mark.parametrize("wrong", [{"red": "passes"}, {"constant": "yes"}, {"Constant": "passes"}, [], None])
def test_and_speaks_of_nothing_else(wrong: object) -> None:
    with pytest.raises(ValidationError):
        MAP.validate_python(wrong)
