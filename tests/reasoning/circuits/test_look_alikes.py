from typing import Any

from bezelbook.reasoning.circuits.look_alikes import LookAlike, look_alikes
from tests.reasoning.circuits.a_car import book, connector

LEFT: dict[str, Any] = {"keying": [{"kind": "rib", "side": "top", "reads": "left of the middle"}]}
RIGHT: dict[str, Any] = {
    "keying": [{"kind": "rib", "side": "top", "reads": "right of the middle"}, {"kind": "key letter"}]
}
LONG = {"shell": "long"}


def alike(*records: Any) -> tuple[LookAlike, ...]:
    return look_alikes(book(*records), "square")


def test_what_a_record_says_of_another_counts_both_ways() -> None:
    says = connector(
        looks_like=[{"connector": "offset", "difference": "Rib."}, {"connector": "gone", "difference": "x"}]
    )
    assert alike(says, connector("offset", cavities=9)) == (LookAlike("offset", "Rib."),)
    other = connector("offset", cavities=9, looks_like=[{"connector": "square", "difference": "Other rib."}])
    assert alike(other) == (LookAlike("offset", "Other rib."),)


def test_what_is_said_of_two_others_or_of_a_connector_itself_says_nothing_of_it() -> None:
    third = {"connector": "third", "difference": "x"}
    others = (connector("offset", cavities=9, looks_like=[third]), connector("third", cavities=6))
    assert alike(*others) == ()
    assert alike(connector(looks_like=[{"connector": "square", "difference": "x"}])) == ()


def test_the_same_shell_rows_and_cavities_look_alike_and_the_keys_tell_them_apart() -> None:
    [found] = alike(connector(**LEFT), connector("offset", **RIGHT))
    expected = (
        "The square: rib at the top left of the middle; The offset: rib at the top right of the middle and key letter"
    )
    assert found == LookAlike("offset", expected)
    [bare] = alike(connector(**LEFT), connector("offset", keying="not there"))
    assert bare.difference == "The square: rib at the top left of the middle; The offset: no key"
    [needless] = alike(connector(**LEFT), connector("offset", keying="not needed"))
    assert needless == bare


def test_keys_that_nobody_looked_at_or_that_are_the_same_tell_nothing_apart() -> None:
    assert alike(connector(**LEFT), connector("offset")) == (LookAlike("offset", ""),)
    assert alike(connector(**LEFT), connector("offset", **LEFT)) == (LookAlike("offset", ""),)


def test_another_shape_or_the_other_half_is_no_look_alike() -> None:
    assert alike(connector("long", **LONG), connector("radio", side="unit side")) == ()
    assert alike(connector("half").model_copy(update={"side": None})) == (LookAlike("half", ""),)
    nothing = connector().model_copy(update={"cavities": None})
    assert alike(nothing, connector("other").model_copy(update={"cavities": None})) == ()
