"""What explains a clash gives room enough the right way round, and is weighed by what the book itself says."""

from fractions import Fraction

import pytest

from bezelbook.reasoning.differing.explaining import explained
from bezelbook.values.words import AXES, NINTHS
from tests.reasoning import making
from tests.reasoning.differing.a_clash import axes, no, why, yes


def test_a_blank_that_would_give_the_yes_more_room_is_named_and_the_wrong_way_round_drops_out() -> None:
    assert "loom" in axes(why(yes(loom=None), no(loom="behind")))
    assert "loom" not in axes(why(yes(loom="behind"), no(loom=None)))
    assert "plugs" in axes(why(yes(plugs=None), no()))
    assert "plugs" not in axes(why(yes(plugs=None, sure="fitted"), no()))
    assert "cut" in axes(why(yes(cut=None), no()))
    assert "cut" not in axes(why(yes(), no(cut=None)))


def test_the_order_of_the_two_notes_makes_no_difference() -> None:
    one, other = yes(loom=None, cut=None), no(mounts=None, plugs=None)
    assert [(one.axis, one.weight) for one in why(one, other)] == [(one.axis, one.weight) for one in why(other, one)]


def test_the_more_room_is_wanting_the_less_a_loom_explains() -> None:
    """A loom takes ten to forty millimetres: common practice, no source."""
    little = why(yes(loom=None), no(loom="behind"))
    much = why(yes(loom=None), no(loom="behind", what="flat"), making.unit("flat", body_depth="125 ± 1 mm caliper"))
    weights = [{one.axis: one.weight for one in found}["loom"] for found in (little, much)]
    assert weights[0] > weights[1] > 0


def test_only_the_axes_asked_for_are_told() -> None:
    first, second = yes(loom=None, cut=None), no(loom=None)
    book = making.book(first, second, making.unit("deep", body_depth="170 ± 1 mm caliper"))
    assert axes(explained(book, book.vehicles[making.CAR], making.HOLE, (first, second), ("how sure",))) == []


def test_a_weak_note_may_just_be_wrong() -> None:
    found = why(yes(sure="told"), no())
    assert found[0].words == "how sure: yes was only told"
    assert found[0].line == "1/4 how sure: how sure: yes was only told"
    assert found[0].proposal.axis == "how sure"


@pytest.mark.parametrize(("words", "weight"), [("driver side", Fraction(1, 2)), (None, Fraction(1, 100))])
def test_a_place_that_has_another_side_may_have_been_mistaken_for_it(words: str | None, weight: Fraction) -> None:
    door = {"kind": "door lower", "side": "left"}
    car = making.vehicle(places={making.HOLE: {**door, "other_side": "r"}, "r": {**door, "side": "right"}})
    sides = [one for one in why(yes(words=words), no(), car) if one.axis == "side"]
    assert [one.weight for one in sides] == [weight]


def test_weights_are_exact_shares_and_their_order_is_the_likeliest_first() -> None:
    found = why(yes(loom=None, cut=None, mounts=None, plugs=None), no(loom=None, mounts=None))
    assert all(0 < one.weight <= 1 and isinstance(one.weight, Fraction) for one in found)
    assert [one.weight for one in found] == sorted((one.weight for one in found), reverse=True)
    assert {one.axis for one in found} <= set(AXES)


def test_a_note_of_a_vehicle_that_no_record_has_is_explained_all_the_same() -> None:
    first, second = yes(loom=None), no(loom="behind")
    book = making.book(first, second, making.unit("deep", body_depth="170 mm caliper"))
    assert explained(book, None, "anywhere", (first, second)) == ()
    whole = making.book(
        first, second, *(making.unit(n, body_depth=f"{d} mm caliper") for n, d in (("deep", 170), ("shallow", 160)))
    )
    assert axes(explained(whole, None, "anywhere", (first, second))) == ["loom", "glass"]


def test_of_three_notes_each_two_are_weighed_and_of_one_axis_the_likeliest_is_kept() -> None:
    """Two together leave no ninth for what the third has read; any one of them may be of another car."""
    anywhere = making.measured("c", making.reading("depth", "150 ± 1 mm", tool="depth gauge", zones=None))
    left, right = NINTHS[:4], NINTHS[4:]
    halves = [
        making.measured(name, making.reading("depth", f"{mm} ± 1 mm", *zones, tool="depth gauge"))
        for name, mm, zones in (("a", 175, left), ("b", 170, right))
    ]
    three = [*halves, anywhere]
    book = making.book(*three)
    found = explained(book, book.vehicles[making.CAR], making.HOLE, three, weighed=True)
    assert {"datum", "build"} <= {one.axis for one in found}
    assert len({one.axis for one in found}) == len(found)
    assert explained(book, book.vehicles[making.CAR], making.HOLE, three[:1], weighed=True) == ()
