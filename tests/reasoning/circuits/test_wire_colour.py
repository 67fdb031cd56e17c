import pytest

from bezelbook.reasoning.circuits.wire_colour import colours_said


@pytest.mark.parametrize(
    "words",
    ["green/black", "black/green", "GN/BK", "grn-blk", "green with a black stripe", "Light green, black tracer"],
)
def test_a_stripe_is_the_same_whichever_way_round_and_however_short_it_is_written(words: str) -> None:
    assert colours_said(words) == frozenset({"green", "black"})


def test_one_colour_has_one_word() -> None:
    assert colours_said("purple") == colours_said("VT") == frozenset({"violet"})
    assert colours_said("gray") == colours_said("gry") == frozenset({"grey"})


@pytest.mark.parametrize("words", ["b", "the fat one", "0.75 red", "", "striped"])
def test_what_is_no_colour_tells_nothing(words: str) -> None:
    assert colours_said(words) is None
