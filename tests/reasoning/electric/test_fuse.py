from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bezelbook.reasoning.electric.amounts import Range
from bezelbook.reasoning.electric.conductor import conductor
from bezelbook.reasoning.electric.fuse import RATINGS, Fusing, Says, fuse, largest, on_wire


def drawn(low: Fraction | int, high: Fraction | int | None = None) -> Range:
    return Range(Fraction(low), Fraction(low if high is None else high))


# Trade 4.9, copper on a short run: common practice without a source.
@pytest.mark.parametrize(
    ("size", "sure", "most"),
    [
        ("16 AWG", 10, 15),
        ("14 AWG", 15, 20),
        ("12 AWG", 20, 30),
        ("10 AWG", 30, 40),
        ("8 AWG", 50, 60),
        ("4 AWG", 100, 150),
        ("2 AWG", 150, 200),
        ("1/0 AWG", 250, 300),
        ("6 AWG", 50, 60),
        ("9 AWG", 30, 40),
        ("3 AWG", 100, 150),
        ("1 AWG", 150, 200),
        ("11 AWG", 20, 30),
        ("13 AWG", 15, 20),
        ("15 AWG", 10, 15),
        ("4/0 AWG", 250, 300),
        ("21 mm2", 50, 60),
        ("21.2 mm2", 100, 150),
        ("1.5 mm2", 10, 15),
    ],
)
def test_a_wire_has_the_largest_fuse_of_its_gauge_or_of_the_next_thinner_one(size: str, sure: int, most: int) -> None:
    assert largest(conductor(size)) == (sure, most)


def test_thin_wire_has_no_usual_fuse() -> None:
    assert largest(conductor("18 AWG")) is None
    assert largest(conductor("0.001 mm2")) is None
    chosen = fuse(drawn(2), conductor("18 AWG"))
    assert chosen == Fusing(
        Fraction(2), "unknown", "no usual fuse is known for 18 AWG copper: the wire maker's figure rules"
    )


@pytest.mark.parametrize(
    ("amps", "size", "rating", "says"),
    [
        (54, "4 AWG", 60, "fine"),
        (54, "8 AWG", 60, "only on a short run"),
        (80, "8 AWG", 80, "the wire is too thin"),
        (100, "4 AWG", 100, "fine"),
        (Fraction(1001, 10), "4 AWG", 125, "only on a short run"),
        (Fraction(75, 10), "16 AWG", Fraction(75, 10), "fine"),
        (8, "16 AWG", 10, "fine"),
    ],
)
def test_the_fuse_is_the_next_that_carries_the_draw(amps: Fraction, size: str, rating: Fraction, says: Says) -> None:
    chosen = fuse(drawn(amps), conductor(size))
    assert (chosen.amps, chosen.says) == (rating, says)


@pytest.mark.parametrize("rating", [80, 100, 125, 150, 175, 200, 225, 250, 300])
def test_each_large_size_that_shops_stock_is_the_fuse_for_its_own_draw(rating: int) -> None:
    # Above 100 A: common practice, without a source.
    assert fuse(drawn(rating), conductor("4/0 AWG")).amps == rating


def test_what_is_not_known_to_be_copper_has_no_usual_fuse() -> None:
    assert largest(conductor("4 AWG", "copper-clad aluminium")) is None
    assert largest(conductor("4 AWG", None)) is None
    blank = fuse(drawn(54), conductor("4 AWG", None))
    rules = "the wire maker's figure rules"
    assert blank == Fusing(Fraction(60), "unknown", f"no usual fuse is known for 4 AWG wire: {rules}")
    said = fuse(drawn(54), conductor("4 AWG", "copper-clad aluminium")).why
    assert said == f"no usual fuse is known for 4 AWG copper-clad aluminium: {rules}"


def test_a_draw_that_no_fuse_carries_is_split() -> None:
    chosen = fuse(drawn(Fraction(3008, 10)), conductor("4/0 AWG"))
    assert chosen == Fusing(None, "the wire is too thin", "no usual fuse carries 301 A: split the run")
    assert fuse(drawn(300), conductor("4/0 AWG")).amps == 300


def test_the_most_that_may_be_drawn_is_carried() -> None:
    assert fuse(drawn(27, 43), conductor("4 AWG")).amps == 50


def test_each_answer_says_why() -> None:
    usual = largest(conductor("8 AWG"))
    assert usual is not None
    assert on_wire(Fraction(50), usual)[1] == "the wire carries up to 50 A; the wire maker's figure rules"
    assert on_wire(Fraction(60), usual)[1] == "50 A for sure, 60 A at most; the wire maker's figure rules"
    assert on_wire(Fraction(80), usual)[1] == "no more than 60 A on this wire"


@given(st.fractions(Fraction(1, 10), 300, max_denominator=10))
def test_no_fuse_is_smaller_than_the_draw_and_the_one_before_is(amps: Fraction) -> None:
    chosen = fuse(drawn(amps), conductor("4/0 AWG")).amps
    assert chosen is not None
    assert chosen >= amps
    assert all(rating < amps for rating in RATINGS if rating < chosen)
