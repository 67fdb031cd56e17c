"""The verdict, in the order that a careful shop would give it."""

import pytest

from bezelbook.reasoning.speakers.verdict import settled
from tests.reasoning.speakers.doors import (
    BUILDS,
    ask,
    book,
    car,
    measured,
    mount,
    place,
    reading,
    resolved,
    roomy,
    shop,
    speaker,
    tried,
)


def test_a_ring_of_the_book_that_is_tight_tells_nothing_of_the_place() -> None:
    ring = mount("ring", inner="130.05 ± 0.1 mm", thickness="1 mm caliper")
    assert ask(book(ring), mounts=None).verdict == "nobody has tried"
    assert ask(book(ring), mounts=["ring"]).verdict == "too close"


@pytest.mark.parametrize(
    ("inner", "said"), [("131", "goes in"), ("130.5", "too close"), ("130", "too close"), ("129.9", "does not")]
)
def test_a_hole_known_exactly_that_misses_only_what_the_house_likes_is_too_close(inner: str, said: str) -> None:
    exact = mount("exact", mount_kind="bracket", inner=f"{inner} mm caliper", thickness="1 mm caliper")
    deep = measured("m", reading("rear depth to glass down", "90 ± 1 mm"), reading("front clearance", "40 ± 1 mm"))
    assert ask(book(shop(width="1 mm"), exact, deep), mounts=["exact"]).verdict == said


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


def test_a_reading_that_is_just_enough_is_no_close_call() -> None:
    just, not_quite = (measured("m", reading("rear depth to glass down", f"{mm} ± 1 mm")) for mm in ("61", "60.9"))
    assert ask(book(just)).verdict == "nobody has tried"
    assert ask(book(not_quite)).verdict == "too close"


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


def test_a_bracket_whose_hole_nobody_measured_is_no_firm_yes_however_wide_the_car_s_hole_is() -> None:
    flush = {"mount_kind": "bracket", "proud": "flush"}
    assert ask(book(roomy(), mount("b", **flush, inner="135 mm caliper")), mounts=["b"]).verdict == "goes in"
    assert ask(book(roomy(), mount("b", **flush)), mounts=["b"]).verdict == "goes in if"
    went_in = tried(mounts=["b"])
    assert ask(book(mount("b", **flush), went_in), mounts=["b"]).verdict == "goes in"
    assert ask(book(mount("b", **flush), went_in), what={"basket": "130 mm"}).verdict != "goes in"


def test_with_the_glass_up_something_is_behind_it_all_the_same() -> None:
    flat = {"basket": "100 mm", "mounting_depth": "68 mm"}
    assert ask(book(roomy()), flat, glass="up").verdict != "goes in"
    fixed = measured("f", reading("rear depth to fixed", "75 ± 1 mm"))
    assert ask(book(roomy(), fixed), flat, glass="up").verdict == "goes in"


def test_a_no_with_the_glass_up_and_no_reason_may_have_been_short_of_what_is_fixed() -> None:
    tall = speaker("tall", front_height="15 mm caliper")
    refused = tried(verdict="does not", glass="up", what="six")
    hole = measured("m", reading("cut-out", "140 ± 1 mm"))
    assert ask(book(tall, refused, hole), what={"front_height": "15 mm"}).verdict != "does not"


def test_rings_thicker_than_the_front_leave_less_than_nothing_there() -> None:
    rings = [mount(name, thickness="12 ± 1 mm") for name in ("one", "two")]
    refused = tried(verdict="does not", reason="grille", mounts=["one", "two"])
    assert ask(book(*rings, refused), what={"front_height": "16 mm"}).verdict != "goes in"
    assert ask(book(*rings), what={"front_height": "1 mm"}, mounts=["one"]).verdict != "goes in"


def test_words_that_name_no_mount_are_each_note_s_own_thing() -> None:
    words = {"mounts": ["some bracket"]}
    both = book(tried("yes", **words), tried("no", **words, verdict="does not", reason="depth"))
    assert len(place(both).accounts) == 1


def test_two_rings_that_are_tight_leave_the_depth_behind_them_too_near_to_call() -> None:
    """By hand: 52 to the glass and 8 of ring are 60 of speaker, 18 in front less 8 its 10, each within 1 mm."""
    rest = [reading("cut-out", "140 ± 1 mm"), reading("front clearance", "18 ± 1 mm")]
    tight = measured("m", *rest, reading("rear depth to glass down", "52 ± 1 mm"))
    rings = [
        mount(name, thickness=t, inner="150 mm caliper") for name, t in (("a", "8 mm caliper"), ("b", "8.2 mm caliper"))
    ]
    found = ask(book(tight, *rings), mounts=None)
    assert (found.verdict, found.asked.mount_words) == ("too close", "a or b")


@pytest.mark.parametrize(("what", "across"), [("ov", "90 mm (3.54 in)"), ("six", "130 mm (5.12 in)")])
def test_a_hole_of_which_only_the_long_way_was_read_is_asked_for_its_short_way(what: str, across: str) -> None:
    oval = speaker("ov", basket="130 mm caliper", basket_short="90 mm caliper")
    deep, front = reading("rear depth to glass down", "80 ± 1 mm"), reading("front clearance", "30 ± 1 mm")
    found = ask(book(oval, measured("m", reading("cut-out long way", "140 ± 1 mm"), deep, front)), what)
    assert found.verdict == "goes in if"
    assert found.conditions[0].words == f"the hole is at least {across} across"
    whole = "the hole was never measured"
    assert found.unknown[0].what == (f"{whole} the short way" if what == "ov" else whole)


@pytest.mark.parametrize(
    ("glass", "expected"), [("70 ± 1 mm", "goes in"), ("58 ± 1 mm", "does not"), ("60 ± 1 mm", None)]
)
def test_what_is_settled_is_what_the_verdict_says_and_nothing_where_it_is_open(
    glass: str, expected: str | None
) -> None:
    of = book(roomy(glass=glass))
    assert settled(place(of), resolved(of, mounts=())) == expected


def test_what_a_ring_would_mend_and_what_is_argued_over() -> None:
    mended = book(roomy(glass="58 ± 1 mm"))
    assert ask(mended, mounts=None).verdict == "goes in if"
    assert settled(place(mended), resolved(mended, mounts=None)) is None
    apart = book(roomy("a", glass="50 ± 1 mm"), roomy("b", glass="70 ± 1 mm"))
    assert settled(place(apart), resolved(apart, mounts=())) == "argued over"
