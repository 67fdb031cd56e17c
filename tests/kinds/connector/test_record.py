from typing import Any

import pytest
from pydantic import ValidationError

from bezelbook.kinds.connector.record import Connector

LEAST = {"id": "square-24", "name": "Square 24", "shell": "square"}


def connector(**fields: Any) -> Connector:
    return Connector.model_validate({**LEAST, **fields})


def test_a_name_and_a_shape_are_enough() -> None:
    square = connector()
    assert (square.side, square.cavities, square.populated, square.keying) == (None, None, None, None)
    assert (square.looks_like, square.shell_colours) == ((), ())


@pytest.mark.parametrize("missing", ["name", "shell"])
def test_neither_can_be_left_out(missing: str) -> None:
    with pytest.raises(ValidationError, match=missing):
        Connector.model_validate({field: value for field, value in LEAST.items() if field != missing})


@pytest.mark.parametrize("field", ["function", "functions", "pins", "carries", "wires"])
def test_what_its_cavities_carry_is_no_affair_of_its_record(field: str) -> None:
    with pytest.raises(ValidationError, match="extra"):
        connector(**{field: {"4": "constant"}})


def test_positions_and_terminals_are_two_numbers() -> None:
    both = connector(cavities=24, populated=16)
    assert (both.cavities, both.populated) == (24, 16)


def test_a_shell_that_nobody_looked_at_and_one_without_a_key_are_two_things() -> None:
    assert connector().keying is None
    assert connector(keying="not there").keying == "not there"
    assert connector(keying=[{"kind": "rib"}, {"kind": "key letter", "reads": "A"}]).keying != "not there"


def test_a_latch_and_a_key_may_be_a_word_alone() -> None:
    assert connector(latch="lever") == connector(latch={"kind": "lever"})
    assert connector(keying=["rib"]) == connector(keying=[{"kind": "rib"}])


def test_one_line_tells_it_from_its_double() -> None:
    double = {"connector": "square-24-offset", "difference": "Rib on the other side."}
    assert connector(looks_like=[double]).looks_like[0].difference == "Rib on the other side."


@pytest.mark.parametrize(
    ("field", "wrong"),
    [
        ("shell", "oblong"),
        ("side", "male"),
        ("side", "left"),
        ("cavities", 0),
        ("cavities", 201),
        ("populated", -1),
        ("rows", 2.5),
        ("width", "41 mm deep"),
        ("terminals", {"kind": "male"}),
        ("terminals", {"pitch": 2.5}),
        ("keying", "none"),
        ("keying", [{"reads": "A"}]),
        ("latch", {"side": "top"}),
        ("latch", {"kind": "lever", "side": "upper"}),
        ("secondary_lock", True),
        ("shell_colours", "grey"),
        ("numbering", {"corner": "upper-left", "view": "front", "direction": "row by row"}),
        ("numbering", {"corner": "upper-left", "direction": "row by row"}),
        ("sealed", "yes"),
        ("looks_like", [{"connector": "square-24-offset"}]),
        ("looks_like", [{"connector": "The other one", "difference": "x"}]),
    ],
)
def test_a_field_says_which_value_it_does_not_take(field: str, wrong: object) -> None:
    with pytest.raises(ValidationError, match=field):
        connector(**{field: wrong})
