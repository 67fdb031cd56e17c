"""The verdict, in the order that a careful shop would give it."""

from tests.reasoning.speakers.doors import BUILDS, ask, book, car, measured, mount, reading, roomy, speaker, tried


def test_a_ring_of_the_book_that_is_tight_tells_nothing_of_the_place() -> None:
    ring = mount("ring", inner="130.05 ± 0.1 mm", thickness="1 mm caliper")
    assert ask(book(ring), mounts=None).verdict == "nobody has tried"
    assert ask(book(ring), mounts=["ring"]).verdict == "too close"


def test_what_was_measured_too_near_to_call() -> None:
    assert ask(book(roomy(glass="60 ± 1 mm"))).verdict == "too close"
    assert ask(book(roomy(glass="58 ± 1 mm"))).verdict == "does not"
    near = [roomy(glass="60 ± 1 mm"), tried(verdict="does not", reason="grille", what="six")]
    assert ask(book(*near)).verdict == "argued over"


def test_a_size_that_nobody_knows_is_never_too_close() -> None:
    odd = speaker("odd", basket=None)
    assert ask(book(odd, roomy()), "odd").verdict == "nobody has tried"


def test_a_reading_that_is_short_of_nothing_is_no_close_call() -> None:
    front = measured("m", reading("front clearance", "20 ± 1 mm"))
    assert ask(book(front)).verdict == "nobody has tried"
    assert ask(book(front, speaker(front_height="20 mm caliper"))).verdict == "too close"


def test_ways_that_cannot_take_it_are_left_out_unless_none_can() -> None:
    thick = mount("thick", thickness="30 mm caliper")
    found = ask(book(thick, mount("thin", thickness="1 mm caliper"), roomy(glass="60 ± 1 mm")), mounts=None)
    assert [stack.mounts for stack in found.asked.stacks] == [(), ("thin",)]
    found = ask(book(thick, roomy(glass="50 ± 1 mm")), mounts=None)
    assert [stack.mounts for stack in found.asked.stacks] == [(), ("thick",)]
    assert found.verdict == "does not"


def test_one_build_that_rules_it_out_leaves_the_other_too_close() -> None:
    sides = [
        roomy("a", glass="50 ± 1 mm", splits={"build": "early"}),
        roomy("b", glass="60 ± 1 mm", splits={"build": "late"}),
    ]
    assert ask(book(car(splits=BUILDS), *sides)).verdict == "too close"
