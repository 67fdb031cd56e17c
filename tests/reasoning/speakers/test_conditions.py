"""The single things that would make it a yes."""

from typing import Any

import pytest

from tests.reasoning.speakers.doors import (
    CAR,
    OTHER,
    ask,
    book,
    car,
    foam,
    measured,
    mount,
    reading,
    roomy,
    shop,
    speaker,
    tried,
)

SPLITS: dict[str, Any] = {"build": {"values": {"early": {"tell": "a round handle"}, "late": {}}}}
RING = mount("ring", thickness="8 mm caliper")


def first(*records: Any, what: Any = "six", **more: Any) -> str:
    """The first condition; the verdict where there is none."""
    found = ask(book(*records), what, **more)
    return found.conditions[0].words if found.verdict == "goes in if" else found.verdict


def test_the_build() -> None:
    of = (car(splits=SPLITS), roomy(splits={"build": "early"}))
    assert first(*of) == "the build is early"
    assert ask(book(*of)).conditions[0].look == "how to tell: a round handle"
    late = ask(book(car(splits=SPLITS), roomy(splits={"build": "late"})))
    assert late.conditions[0].look == "how to tell: nobody has written how to tell"
    assert ask(book(car(splits=SPLITS, never_built=[{"build": "late"}]), roomy())).verdict == "goes in"


def test_the_mount() -> None:
    thick = mount("thick", thickness="10.5 mm caliper")
    assert first(RING, thick, roomy(glass="58 ± 1 mm"), mounts=None) == "it is fitted with ring"
    found = ask(book(RING, roomy(glass="58 ± 1 mm")), mounts=None)
    assert (found.verdict, found.asked.mount_words, found.needs[0]) == ("goes in", "ring", "ring")


def test_what_goes_in_by_itself_needs_no_mount() -> None:
    found = ask(book(RING, roomy()), mounts=None)
    assert (found.verdict, [stack.mounts for stack in found.asked.stacks]) == ("goes in", [()])


def test_a_ring_that_the_book_does_not_hold() -> None:
    words = "it sits on a ring from 2 mm (0.08 in) to 10 mm (0.39 in) thick"
    assert first(roomy(glass="58 ± 1 mm"), mounts=None) == words
    # By hand: the ring in the middle, of 9 mm, keeps 51 + 9 behind and 19 - 9 in front even at worst.
    tight = "it sits on a ring from 8 mm (0.31 in) to 10 mm (0.39 in) thick"
    assert first(roomy(glass="52 ± 1 mm"), mounts=None) == tight
    assert first(roomy(glass="58 ± 1 mm"), mounts="none") == "does not"
    assert first(roomy(glass="48 ± 1 mm"), mounts=None) == "does not"
    assert first(measured("m", reading("rear depth to glass down", "58 ± 1 mm")), mounts=None) == "does not"
    with_foam = first(foam(), roomy(glass="58 ± 1 mm"), mounts=None, gasket="foam")
    assert with_foam == "it sits on a ring from 1 mm (0.04 in) to 9 mm (0.35 in) thick"
    narrow = [roomy(glass="58 ± 1 mm"), speaker("wide", basket="150 mm caliper")]
    assert first(*narrow, what="wide", mounts=None) == "does not"


def test_the_printed_sizes() -> None:
    printed = speaker("boxed", mounting_depth="60 mm printed")
    assert first(printed, roomy(), what="boxed") == "its printed sizes are true (mounting depth 60 mm (2.36 in))"
    assert first(speaker("boxed", mounting_depth="69.5 mm printed"), roomy(), what="boxed") == "nobody has tried"


def test_the_tabs() -> None:
    bracket = mount(
        "bracket", mount_kind="bracket", tabs_in="120 mm caliper", tabs_out="140 mm caliper", thickness="1 mm caliper"
    )
    of = (shop(width="1 mm"), bracket, roomy())
    words = "the tabs of bracket are broken out, which cannot be undone"
    limit = ", and then it takes a basket of up to 139 mm (5.47 in)"
    assert first(*of, mounts=["bracket"]) == words + limit
    assert first(*of, mounts=["bracket"], tabs="in") == "does not"
    second = mount(
        "second", mount_kind="spacer", tabs_in="120 mm caliper", tabs_out="150 mm caliper", thickness="1 mm caliper"
    )
    assert first(*of, second, mounts=["bracket", "second"]).endswith("which cannot be undone")


@pytest.mark.parametrize(
    ("size", "words"),
    [
        ("cut-out", "the hole is at least 131 mm (5.16 in) across"),
        ("rear depth to glass down", "there is at least 65 mm (2.56 in) to the glass, all the way down"),
        ("front clearance", "there is at least 13 mm (0.51 in) to the grille"),
    ],
)
def test_the_one_size_that_nobody_measured(size: str, words: str) -> None:
    whole = {"cut-out": "140 ± 1 mm", "rear depth to glass down": "70 ± 1 mm", "front clearance": "20 ± 1 mm"}
    rest = [reading(of, reads) for of, reads in whole.items() if of != size]
    assert first(shop(width="1 mm", glass="5 mm", grille="3 mm"), measured("m", *rest)) == words


def test_two_sizes_that_nobody_measured_are_two_things() -> None:
    assert first(measured("m", reading("cut-out", "140 ± 1 mm"))) == "nobody has tried"
    blank = speaker("odd", front_height=None)
    assert first(blank, roomy(), what="odd") == "nobody has tried"
    deep = measured("m", reading("cut-out", "140 ± 1 mm"), reading("rear depth to glass down", "70 ± 1 mm"))
    assert first(blank, deep, what="odd") == "nobody has tried"


def test_it_is_told_as_it_would_be_read_without_the_ring() -> None:
    ring = mount("rough", thickness="8 ± 1 mm")
    deep = measured("m", reading("cut-out", "140 ± 1 mm"), reading("rear depth to glass down", "70 ± 1 mm"))
    assert first(ring, deep, mounts=["rough"]) == "there is at least 19 mm (0.75 in) to the grille"
    front = measured("m", reading("cut-out", "140 ± 1 mm"), reading("front clearance", "30 ± 1 mm"))
    assert first(ring, front, mounts=["rough"]) == "there is at least 53 mm (2.09 in) to the glass, all the way down"


@pytest.mark.parametrize(
    ("content", "made"),
    [
        ({"mounts": None}, "with no mount and with no gasket"),
        ({"cut": None}, "with nothing cut"),
        ({"glass": None}, "with the glass run all the way"),
        ({"gasket": None}, "with no gasket"),
        ({"cut": None, "glass": None}, "with nothing cut and with the glass run all the way"),
        ({"splits": {}}, "in a car of this build (late)"),
    ],
)
def test_what_a_yes_left_unsaid_is_one_thing_to_ask_its_author(content: dict[str, Any], made: str) -> None:
    note = tried(**{"splits": {"build": "late"}, "gasket": "none" if "mounts" not in content else None, **content})
    found = ask(book(car(splits=SPLITS), foam(), note), splits={"build": "late"})
    assert found.verdict == "goes in if"
    assert found.conditions[-1].words == f"the note n was made {made}"
    assert found.conditions[-1].look == "ask its author (rk)"


def test_a_yes_in_another_state_is_not_asked_about() -> None:
    assert first(RING, tried(mounts=["ring"], cut=None)) == "nobody has tried"
    assert ask(book(tried(author=None, cut=None))).conditions[0].look == "ask its author (not signed)"
    assert first(tried()) == "goes in"


def test_a_yes_that_says_its_gasket_counts_with_that_one() -> None:
    unsaid = "the note n was made with nothing cut"
    assert first(foam(), tried(cut=None, gasket="foam"), gasket="foam") == unsaid
    assert first(foam(), tried(cut=None, gasket="none")) == unsaid
    # With no gasket, 10 mm of front went in; with 1 mm of foam it asks for 11.
    assert first(foam(), tried(cut=None, gasket="none"), gasket="foam") == "nobody has tried"


def test_unsaid_tabs_are_asked_about_where_the_question_says_them() -> None:
    bracket = mount("b", mount_kind="bracket", tabs_in="120 mm caliper", tabs_out="140 mm caliper")
    note = tried(mounts=["b"])
    assert first(bracket, note, mounts=["b"], tabs="in") == "does not"
    small = speaker("small", basket="110 mm caliper")
    said = tried(mounts=["b"], what="small")
    wide = mount("b", mount_kind="bracket", tabs_in="112 ± 5 mm", tabs_out="140 mm caliper")
    assert first(wide, small, said, what="small", mounts=["b"], tabs="in") == "the note n was made with the tabs in"


def test_a_cut() -> None:
    assert first(tried(cut="a rib")) == "this may be cut: a rib"
    assert first(tried(cut="a rib"), what={"mounting_depth": "70 mm"}).startswith("there is at least 70 mm")


def test_a_made_for_mount_by_name() -> None:
    bracket = mount(
        "b",
        mount_kind="bracket",
        thickness="8 mm caliper",
        inner="150 mm caliper",
        made_for=[{"vehicle": CAR, "place": OTHER}],
    )
    of = book(bracket, roomy(glass="58 ± 1 mm", place=OTHER))
    found = ask(of, where=OTHER, mounts=None)
    assert (found.verdict, found.asked.mount_words) == ("goes in", "b")


def test_tabs_that_are_not_all_there_is_to_it() -> None:
    bracket = mount("b", mount_kind="bracket", tabs_in="120 mm caliper", tabs_out="140 mm caliper")
    assert first(bracket, mounts=["b"]) == "nobody has tried"


BRACKET = mount(
    "b", mount_kind="bracket", tabs_in="120 mm caliper", tabs_out="140 mm caliper", thickness="1 mm caliper"
)


@pytest.mark.parametrize(
    ("records", "asked", "look"),
    [
        (
            (RING, mount("thick", thickness="10.5 mm caliper"), roomy(glass="58 ± 1 mm")),
            {"mounts": None},
            "choose the mount",
        ),
        (
            (speaker("boxed", mounting_depth="60 mm printed"), roomy()),
            {"what": "boxed"},
            "put a caliper on it, 2 min on the bench",
        ),
        ((BRACKET, roomy()), {"mounts": ["b"]}, "agree it in writing with the customer first"),
        ((tried(cut="a rib"),), {}, "agree it in writing with the customer first"),
    ],
)
def test_a_condition_says_how_to_find_out_and_a_question_could_say_it(
    records: tuple[Any, ...], asked: dict[str, Any], look: str
) -> None:
    condition = ask(book(*records), **asked).conditions[0]
    assert condition.look == look
    assert condition.narrowed is not None


def test_a_ring_that_was_not_asked_for_is_to_be_made() -> None:
    [condition] = ask(book(roomy(glass="58 ± 1 mm")), mounts=None).conditions
    assert condition.look == "make or order the ring"
    assert (condition.template, condition.lengths) == ("it sits on a ring from {} to {} thick", (2_000_000, 10_000_000))


@pytest.mark.parametrize(
    ("size", "look"),
    [
        ("cut-out", "caliper across it, 2 min with the lining off"),
        ("rear depth to glass down", "putty on the magnet and run the glass, 5 min"),
        ("front clearance", "putty under the lining, 5 min"),
    ],
)
def test_a_size_that_nobody_measured_says_with_what(size: str, look: str) -> None:
    whole = {"cut-out": "140 ± 1 mm", "rear depth to glass down": "70 ± 1 mm", "front clearance": "20 ± 1 mm"}
    rest = [reading(of, reads) for of, reads in whole.items() if of != size]
    assert ask(book(measured("m", *rest))).conditions[0].look == look
