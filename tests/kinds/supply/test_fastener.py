from typing import get_args

import pytest
from pydantic import ValidationError

from bezelbook.kinds.supply.fastener import FastenerKind, Grip


def test_screws_clips_rivets_and_nuts_are_all_there() -> None:
    kinds = get_args(FastenerKind)
    assert len(kinds) == len(set(kinds))
    assert {"machine screw", "self-tapping screw", "fir-tree clip", "push rivet", "clip nut"} < set(kinds)


def test_nothing_has_to_be_measured() -> None:
    assert set(Grip().model_dump().values()) == {None}


@pytest.mark.parametrize("field", ["head", "neck", "shank", "hole", "grip"])
def test_a_diameter_says_how_it_was_read(field: str) -> None:
    size = getattr(Grip.model_validate({field: "5/16 in caliper"}), field)
    assert (size.base, size.by) == (7_937_500, "caliper")


@pytest.mark.parametrize(("field", "wrong"), [("length", 12), ("thread", 4.2), ("stays", "somewhere"), ("drive", "")])
def test_a_field_says_which_value_it_does_not_take(field: str, wrong: object) -> None:
    with pytest.raises(ValidationError, match=field):
        Grip.model_validate({field: wrong})
