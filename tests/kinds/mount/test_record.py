from typing import Any

import pytest
from pydantic import ValidationError

from bezelbook.kinds.mount.record import Mount

LEAST = {"id": "flush-kit", "name": "Flush kit", "mount_kind": "kit"}


def mount(**fields: Any) -> Mount:
    return Mount.model_validate({**LEAST, **fields})


def test_a_name_and_what_sort_of_mount_are_enough() -> None:
    kit = mount()
    assert (kit.proud, kit.thickness, kit.made_for) == (None, None, ())
    assert kit.presents.width is None
    assert kit.presents.ninths == ()
    assert kit.holes.ready is None


@pytest.mark.parametrize(
    ("proud", "nanometres", "give"),
    [
        ("flush", 0, 0),
        ("+6 mm ± 0.5 mm caliper", 6_000_000, 500_000),
        ("-5 mm caliper", -5_000_000, None),
        ("1/4 in caliper", 6_350_000, None),
    ],
)
def test_it_holds_the_part_proud_recessed_or_exactly_flush(proud: str, nanometres: int, give: int | None) -> None:
    offset = mount(proud=proud).proud
    assert offset is not None
    assert (offset.base, offset.give) == (nanometres, give)


@pytest.mark.parametrize("proud", ["Flush kit", "6", 6, "about 6 mm"])
def test_how_far_it_stands_out_is_a_length_or_the_word(proud: object) -> None:
    with pytest.raises(ValidationError, match="proud"):
        mount(proud=proud)


def test_a_hole_may_lie_before_a_part_of_the_opening_only() -> None:
    presents = mount(presents={"height": "53.2 mm caliper", "ninths": ["upper-left", "upper", "upper-right"]}).presents
    assert presents.ninths == ("upper-left", "upper", "upper-right")


@pytest.mark.parametrize(
    ("field", "wrong"),
    [
        ("mount_kind", "usual ring"),
        ("handed", "driver"),
        ("material", "wood"),
        ("thickness", 12.7),
        ("holes", {"ready": -1}),
        ("holes", {"ready": 100}),
        ("presents", {"ninths": ["top"]}),
        ("made_for", [{"vehicle": "compact-hatch-2"}]),
        ("needs_too", ["The other kit"]),
        ("holes", {"patterns": [{"count": 4}]}),
        ("holes", {"patterns": [{"state": "drilled"}]}),
        ("holes", {"patterns": [{"state": "ready", "circle": 156}]}),
        ("basket", 141),
        ("inner", "132"),
        ("screws", [{"length": "6 mm"}]),
        ("screws", {"thread": "M5"}),
        ("prep", "15 mm"),
    ],
)
def test_a_field_says_which_value_it_does_not_take(field: str, wrong: object) -> None:
    with pytest.raises(ValidationError, match=field):
        mount(**{field: wrong})


def test_it_may_be_made_for_one_build_of_a_place() -> None:
    place = {"vehicle": "compact-hatch-2", "place": "dash-centre", "splits": {"build": "late"}}
    assert mount(made_for=[place]).made_for[0].splits == {"build": "late"}


def test_holes_that_were_measured_say_which_they_are_and_where_the_first_one_sits() -> None:
    pattern = {"state": "to drill", "holds": "the part", "count": 4, "circle": "156 mm caliper", "first": "1:30"}
    made = mount(holes={"patterns": [pattern]}).holes.patterns[0]
    assert made.circle is not None
    assert (made.state, made.count, made.circle.base, made.first) == ("to drill", 4, 156_000_000, "1:30")


def test_screws_may_be_words_or_sizes() -> None:
    assert mount(screws="M5 x 6 x 4").screws == "M5 x 6 x 4"
    sized = mount(screws=[{"thread": "M5", "length": "6 mm", "count": 4}]).screws
    assert not isinstance(sized, str)
    assert sized is not None
    assert (sized[0].thread, sized[0].count) == ("M5", 4)
