"""A blank that is unlike its author weighs more; where every blank was weighed, only what may be misread is left."""

from fractions import Fraction
from typing import Any

from bezelbook.kinds.note.record import AnyNote
from bezelbook.reasoning.differing.explanation import Explanation
from tests.reasoning import making
from tests.reasoning.differing.a_clash import axes, no, why, why_still, yes


def read(name: str, reads: str, **said: Any) -> AnyNote:
    """The whole opening, read with a depth gauge."""
    return making.measured(name, making.reading("depth", reads, tool="depth gauge"), **said)


def of(found: tuple[Explanation, ...], axis: str) -> Explanation:
    return next(one for one in found if one.axis == axis)


def test_whoever_always_says_and_this_time_did_not_is_named() -> None:
    usual = [making.tried(f"n{number}", what="tiny", author="ab") for number in range(2)]
    tiny = making.unit("tiny", body_depth="60 ± 1 mm caliper")
    plain = next(one for one in why(yes(loom=None), no(loom="behind"), tiny, *usual) if one.axis == "loom")
    unlike = next(
        one for one in why(yes(loom=None, author="ab"), no(loom="behind"), tiny, *usual) if one.axis == "loom"
    )
    assert unlike.weight > plain.weight
    assert unlike.because == ("ab always says otherwise",)
    assert plain.because == ()


def test_a_blank_that_was_read_at_its_most_generous_explains_nothing_more() -> None:
    """The yes had the loom aside and the no had it behind, as far as anybody could wish; and still they clash."""
    first, second = yes(loom=None, cut=None), no(loom=None, cut=None)
    assert {"loom", "cut"} <= set(axes(why(first, second)))
    assert not {"loom", "cut"} & set(axes(why_still(first, second)))


def test_a_reading_that_does_not_say_may_not_have_been_made_as_usual() -> None:
    """Of 150 and 190 the deeper may have been read where something was cut, or the other one with the loom there."""
    deep, shallow = read("a", "165 ± 1 mm", loom="aside"), read("b", "150 ± 1 mm", cut="nothing")
    found = why_still(deep, shallow)
    assert of(found, "loom").words == "the loom: b does not say where it went"
    assert of(found, "cut").words == "a cut: a does not say whether anything was cut"
    both = why_still(read("a", "165 ± 1 mm", loom="aside", cut="nothing"), read("b", "150 ± 1 mm", loom="aside"))
    assert "loom" not in axes(both)
    assert of(both, "cut").weight < of(found, "cut").weight


def test_a_word_that_is_written_is_doubted_less_than_a_blank() -> None:
    blank = why_still(read("a", "165 ± 1 mm"), read("b", "150 ± 1 mm", cut="nothing"))
    said = why_still(read("a", "165 ± 1 mm", cut="nothing"), read("b", "150 ± 1 mm"))
    assert 0 < of(said, "cut").weight < of(blank, "cut").weight


def test_that_two_words_are_wrong_is_seldomer_than_anything_else() -> None:
    """With the loom aside in the deeper one and behind in the other both would be true, and both say otherwise."""
    assert "loom" not in axes(why_still(read("a", "165 ± 1 mm", loom="behind"), read("b", "150 ± 1 mm", loom="aside")))


def test_a_blank_that_is_read_as_usual_says_nothing_of_how_often_it_is_so() -> None:
    deep, shallow = read("a", "165 ± 1 mm"), read("b", "150 ± 1 mm", cut="nothing")
    blank, said = (
        why_still(deep, shallow, *[read(f"n{number}", "150 ± 1 mm", **more) for number in range(3)])
        for more in ({}, {"cut": "nothing"})
    )
    assert of(blank, "cut").weight > of(said, "cut").weight > 0


def test_the_note_that_the_others_contradict_is_the_one_that_was_made_otherwise() -> None:
    """Three more that read 165, or 150: then it is the one that read otherwise of which something is not said."""
    deep, shallow = read("a", "165 ± 1 mm"), read("b", "150 ± 1 mm")
    with_the_deep, with_the_shallow = (
        why_still(deep, shallow, *[read(f"n{number}", text, loom="aside") for number in range(3)])
        for text in ("165 ± 1 mm", "150 ± 1 mm")
    )
    assert of(with_the_deep, "loom").weight > 5 * of(with_the_shallow, "loom").weight > 0
    assert of(with_the_deep, "build").weight < of(why_still(deep, shallow), "build").weight


def test_a_note_of_another_build_speaks_for_neither() -> None:
    car = making.vehicle(splits={"build": making.split("early", "late")})
    deep, shallow = (
        read(name, text, splits={"build": "early"}) for name, text in (("a", "165 ± 1 mm"), ("b", "150 ± 1 mm"))
    )
    late = [read(f"n{number}", "165 ± 1 mm", splits={"build": "late"}) for number in range(3)]
    bench = making.record("notes", "z", {"form": "bench", "part": "p"})
    alone, beside = why_still(deep, shallow, car), why_still(deep, shallow, car, *late, bench)
    assert of(alone, "build").weight == of(beside, "build").weight == Fraction(1, 4)
