from typing import Any

import pytest
from pydantic import ValidationError

from bezelbook.kinds.note.opening import Control, LoomPocket, OpeningSeen
from bezelbook.kinds.record import Part

HAZARD = {"what": "hazard switch", "beyond": "top", "near": "14 mm"}


def test_nothing_has_to_be_seen() -> None:
    seen = OpeningSeen()
    assert (seen.held_by, seen.rear_support, seen.rear_stud, seen.loom_pocket) == ((), None, None, None)


def test_a_control_is_ruled_from_an_edge_of_the_opening() -> None:
    control = Control.model_validate({**HAZARD, "far": "32 mm", "starts": "-5 mm", "ends": "21 mm"})
    assert control.starts is not None
    assert control.far is not None
    assert (control.near.base, control.far.base, control.starts.base) == (14_000_000, 32_000_000, -5_000_000)


@pytest.mark.parametrize(
    ("piece", "wrong"),
    [
        (Control, {"what": "vent", "near": "14 mm"}),
        (Control, {**HAZARD, "beyond": "above"}),
        (Control, {**HAZARD, "near": 14}),
        (Control, {**HAZARD, "near": "-14 mm"}),
        (LoomPocket, {"where": ["right"]}),
        (LoomPocket, {"room": "lots"}),
        (OpeningSeen, {"held_by": ["magic"]}),
        (OpeningSeen, {"rear_support": True}),
    ],
)
def test_a_piece_says_which_value_it_does_not_take(piece: type[Part], wrong: dict[str, Any]) -> None:
    with pytest.raises(ValidationError):
        piece.model_validate(wrong)
