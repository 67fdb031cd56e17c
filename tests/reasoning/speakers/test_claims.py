"""What notes settle, told by the answers they lead to where the laws do not reach."""

from typing import Any

import pytest

from bezelbook.reasoning.bounds import STRICT, Rise, exactly
from bezelbook.reasoning.speakers.cells import SpeakerDemand, SpeakerRoom
from bezelbook.reasoning.speakers.claims import fit
from bezelbook.reasoning.speakers.needs import SpeakerNeeds
from bezelbook.values.span import BLANK, Span
from tests.reasoning.speakers.doors import (
    BUILDS,
    DOOR,
    SHELF,
    ask,
    book,
    car,
    measured,
    mount,
    reading,
    roomy,
    speaker,
    tried,
)


@pytest.mark.parametrize(
    ("span", "floor"),
    [
        (Span(10, 12, reached=True), exactly(10)),
        (Span(10, 12), exactly(10) + STRICT),
        (Span(10, 10), exactly(10)),
        (BLANK, exactly(0)),
    ],
)
def test_what_went_in_had_room_for_its_least_size_or_a_hair_more(span: Span, floor: int) -> None:
    cell = SpeakerRoom((), "nothing", "fixed")
    needs = SpeakerNeeds("it", "it", {"mounting depth": span}, {})
    demand = SpeakerDemand("mounting depth", cell, 3, "fixed")
    assert fit((demand,), needs, frozenset()) == (Rise(cell, None, floor - exactly(3)),)


def verdict(*records: Any, what: Any = "six", **more: Any) -> str:
    return ask(book(*records), what, **more).verdict


def test_readings_through_a_bracket_are_of_what_it_presents() -> None:
    ring = mount("ring", thickness="8 ± 1 mm")
    rear = reading("rear depth to glass down", "70 ± 1 mm", datum="bracket seat")
    front = reading("front clearance", "20 ± 1 mm", datum="bracket seat")
    note = measured("m", reading("cut-out", "140 ± 1 mm"), rear, front, mounts=["ring"])
    assert verdict(ring, note, mounts=["ring"]) == "goes in"
    assert verdict(ring, note, what={"mounting_depth": "60 mm"}) == "goes in"
    assert verdict(ring, note, what={"mounting_depth": "62 mm"}) == "too close"


def test_a_hole_read_through_a_bracket_is_the_bracket_s() -> None:
    bracket = mount("bracket", mount_kind="bracket", inner="130 ± 9 mm", thickness="1 mm caliper")
    small = measured("m", reading("cut-out", "128 ± 1 mm"), mounts=["bracket"])
    assert verdict(bracket, small, what={"basket": "130 mm"}, mounts=["bracket"]) == "does not"
    small = measured("m", reading("cut-out", "132 ± 1 mm"), mounts=["bracket"])
    assert verdict(bracket, small, what={"basket": "130 mm"}, mounts=["bracket"]) == "goes in"
    tabs = mount("bracket", mount_kind="bracket", tabs_in="120 ± 19 mm", tabs_out="140 mm caliper")
    assert verdict(tabs, small, what={"basket": "130 mm"}, mounts=["bracket"], tabs="in") == "too close"
    said = measured("m", reading("cut-out", "132 ± 1 mm"), mounts=["bracket"], tabs="in")
    assert verdict(tabs, said, what={"basket": "130 mm"}, mounts=["bracket"], tabs="in") == "goes in"


def test_a_hole_read_through_two_that_frame_it_is_nobody_knows_whose() -> None:
    rings = [mount(name, inner="150 mm caliper", thickness="1 mm caliper") for name in ("one", "two")]
    note = measured("m", reading("cut-out", "132 ± 1 mm"), mounts=["one", "two"])
    assert verdict(*rings, note, what={"basket": "130 mm"}) == "goes in if"


def test_a_reading_that_is_no_room_says_nothing_of_one() -> None:
    note = measured("m", reading("bolt circle", "156 mm", datum=None))
    assert verdict(note) == "nobody has tried"


def test_a_note_of_an_unknown_build_says_what_is_true_of_every_build() -> None:
    assert verdict(car(splits=BUILDS), roomy()) == "nobody has tried"
    assert verdict(car(splits=BUILDS), roomy(splits={"build": "late"}), splits={"build": "late"}) == "goes in"
    both = [roomy("r", splits={"build": "late"}), roomy("s", splits={"build": "early"})]
    assert verdict(car(splits=BUILDS), *both) == "goes in"


def test_a_no_whose_reason_is_not_there_says_nothing() -> None:
    no = tried(verdict="does not", reason="glass", glass="up")
    assert verdict(roomy(), no) == "goes in"


def test_a_no_about_a_size_that_nobody_knows_rules_nothing_else_out() -> None:
    unknown = tried("n", verdict="does not", reason="depth", what="some coax")
    assert verdict(roomy(), unknown) == "goes in"


@pytest.mark.parametrize(
    ("note", "what", "found"),
    [
        (tried(reason="glass", to_spare="3 ± 1 mm"), {"mounting_depth": "62 mm"}, "goes in"),
        (tried(reason="glass", to_spare="3 ± 1 mm"), {"mounting_depth": "64 mm"}, "does not"),
        (tried(reason="glass", to_spare="3 ± 1 mm", glass=None), {"mounting_depth": "64 mm"}, "nobody has tried"),
        (tried(to_spare="3 ± 1 mm"), {"mounting_depth": "64 mm"}, "nobody has tried"),
        (tried(reason="other", to_spare="3 ± 1 mm"), {"mounting_depth": "64 mm"}, "nobody has tried"),
        (tried(reason="glass", to_spare="3 mm"), {"mounting_depth": "68 mm"}, "does not"),
        (tried(reason="grille", to_spare="3 ± 1 mm"), {"front_height": "14 mm"}, "does not"),
        (tried(verdict="does not", reason="glass", short_by="3 ± 1 mm"), {"mounting_depth": "56 mm"}, "goes in"),
        (tried(verdict="does not", reason="grille", short_by="3 ± 1 mm"), {"front_height": "6 mm"}, "goes in"),
        (tried(reason="depth", to_spare="3 ± 1 mm", place=SHELF), {"mounting_depth": "62 mm"}, "goes in"),
    ],
)
def test_by_so_much_is_a_reading_of_what_the_reason_names(note: Any, what: dict[str, str], found: str) -> None:
    where = SHELF if note.place == SHELF else DOOR
    said = ask(book(note), what, where=where).verdict
    assert (said if said != "goes in if" else "nobody has tried") == found


def test_to_spare_of_what_is_fixed_is_not_known_where_it_may_have_been_the_glass() -> None:
    fixed = measured("m", reading("rear depth to fixed", "65 ± 20 mm"))
    yes = tried(reason="depth", to_spare="3 ± 1 mm", glass=None)
    assert verdict(fixed, yes, what={"mounting_depth": "64 mm"}, glass="up") == "too close"
    said = tried(reason="depth", to_spare="3 ± 1 mm", glass="up")
    assert verdict(fixed, said, what={"mounting_depth": "64 mm"}, glass="up") == "does not"


def test_by_so_much_of_a_hole_with_tabs_needs_the_tabs_said() -> None:
    bracket = mount("bracket", mount_kind="bracket", tabs_in="100 ± 50 mm", tabs_out="150 mm caliper")
    blank = tried(mounts=["bracket"], reason="width", verdict="does not", short_by="3 ± 1 mm")
    ask_for = {"what": {"basket": "126 mm"}, "mounts": ["bracket"], "tabs": "in"}
    assert verdict(bracket, blank, **ask_for) == "too close"
    said = tried(mounts=["bracket"], reason="width", verdict="does not", short_by="3 ± 1 mm", tabs="in")
    assert verdict(bracket, said, **ask_for) == "goes in"


def test_by_so_much_is_of_the_very_state_it_was_seen_in() -> None:
    cut = tried(reason="glass", to_spare="3 ± 1 mm", cut=None)
    assert verdict(cut, what={"mounting_depth": "55 mm"}) == "goes in if"
    assert verdict(cut, what={"mounting_depth": "62 mm"}) == "goes in if"
    assert verdict(cut, what={"mounting_depth": "64 mm"}) == "does not"  # more was not there even with whatever was cut


def test_one_record_s_yes_and_no_clash_whatever_its_size() -> None:
    rough = speaker(mounting_depth="60 ± 5 mm")
    of = book(rough, tried("yes"), tried("no", verdict="does not", reason="glass"))
    assert ask(of, {"mounting_depth": "50 mm"}).verdict == "argued over"


def test_a_no_because_of_the_glass_says_nothing_of_what_is_fixed() -> None:
    fixed_is_spoken_of = tried("big", verdict="does not", reason="depth", glass="up", what="big")
    big = speaker("big", mounting_depth="80 mm caliper")
    no = tried("no", verdict="does not", reason="glass")
    assert verdict(big, fixed_is_spoken_of, roomy(glass="70 ± 1 mm"), no) == "argued over"


ROUGH = speaker(mounting_depth="60 ± 5 mm")
RING = mount("ring", thickness="8 mm caliper")


def test_a_yes_on_a_ring_says_that_there_is_less_room_without_it() -> None:
    yes = tried(mounts=["ring"])
    assert verdict(ROUGH, RING, yes, mounts=["ring"]) == "goes in"
    assert verdict(ROUGH, RING, yes) == "goes in if"


def test_a_no_on_a_ring_is_one_without_it_too() -> None:
    no = tried(mounts=["ring"], verdict="does not", reason="glass")
    assert verdict(ROUGH, RING, no, mounts=["ring"]) == verdict(ROUGH, RING, no) == "does not"
    bare = tried(verdict="does not", reason="glass")
    assert verdict(ROUGH, RING, bare, mounts=["ring"]) != "does not"


def test_what_is_like_a_speaker_shares_the_sizes_that_nobody_typed() -> None:
    """Its depth is only known to 5 mm, and is the very one that went in, or that did not."""
    like = {"like": "six", "basket": "129 mm"}
    assert verdict(ROUGH, tried(), what=like) == "goes in"
    assert verdict(ROUGH, tried(verdict="does not", reason="glass"), what=like) == "does not"
    assert verdict(ROUGH, tried(), what={"mounting_depth": "60 ± 5 mm", "basket": "129 mm"}) == "goes in if"


def test_what_may_be_as_small_as_what_did_not_go_in_cannot_have_gone_in_and_be_that() -> None:
    """What went in is more than 59 mm deep, at least, and 59 did not go in."""
    yes = tried("yes", what="some coax", sizes={"mounting_depth": "60 ± 1 mm"})
    no = tried("no", what="other", sizes={"mounting_depth": "59 mm caliper"}, verdict="does not", reason="glass")
    assert verdict(yes, no, what={"mounting_depth": "59 mm"}) == "argued over"


def test_short_by_says_how_much_room_there_is_at_most_as_well() -> None:
    no = tried(verdict="does not", reason="glass", short_by="3 ± 1 mm")
    assert verdict(no, what={"mounting_depth": "58.5 mm"}) == "does not"
    assert verdict(no, what={"mounting_depth": "57 mm"}) == "too close"


def test_two_cars_in_which_nobody_knows_what_was_cut_may_have_had_different_room() -> None:
    by = (("a", "3 ± 1 mm"), ("b", "8 ± 1 mm"))
    between = {"mounting_depth": "65 mm"}
    blank = [tried(name, reason="glass", to_spare=spare, cut=None) for name, spare in by]
    assert verdict(*blank, what=between) == "does not"
    assert verdict(*(tried(n, reason="glass", to_spare=spare) for n, spare in by), what=between) == "argued over"
    tabs = {"tabs_in": "140 mm caliper", "tabs_out": "150 mm caliper"}
    bracket = mount("bracket", mount_kind="bracket", thickness="1 mm caliper", **tabs)
    on = {"mounts": ["bracket"], "reason": "glass"}
    unsaid = [tried(name, to_spare=spare, **on) for name, spare in by]
    assert verdict(bracket, *unsaid, what=between, mounts=["bracket"], tabs="out") == "does not"
    said = [tried(name, to_spare=spare, tabs="out", **on) for name, spare in by]
    assert verdict(bracket, *said, what=between, mounts=["bracket"], tabs="out") == "argued over"


def test_a_reading_from_the_door_metal_is_of_the_bare_door_whatever_was_on_it() -> None:
    ring = mount("ring", thickness="8 ± 1 mm")
    note = roomy(mounts=["ring"])
    assert verdict(ring, note, what={"mounting_depth": "69 mm"}) == "goes in"
    assert verdict(ring, note, what={"mounting_depth": "76 mm"}, mounts=["ring"]) == "goes in"


def test_a_hole_that_is_not_round_is_not_read_by_one_number() -> None:
    assert verdict(roomy(shape="round")) == "goes in"
    assert verdict(roomy(shape="oval")) == verdict(roomy(shape="D")) == "goes in if"


def test_a_hole_read_with_the_tabs_out_is_the_hole_without_them() -> None:
    tabs = {"tabs_in": "120 mm caliper", "tabs_out": "140 ± 19 mm", "thickness": "1 mm caliper"}
    bracket = mount("bracket", mount_kind="bracket", **tabs)
    out = measured("o", reading("cut-out", "142 ± 1 mm"), mounts=["bracket"], tabs="out")
    assert verdict(bracket, roomy(), out, what={"basket": "138 mm"}, mounts=["bracket"], tabs="out") == "goes in"
    assert verdict(bracket, roomy(), what={"basket": "138 mm"}, mounts=["bracket"], tabs="out") == "too close"
