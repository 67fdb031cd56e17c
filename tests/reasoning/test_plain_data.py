"""Plain data from outside, key by key; what the questions that use it say is tested with them."""

from typing import Any

import pytest

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.plain_data import (
    LONGEST,
    choice_of,
    cut_of,
    length_of,
    mapping_of,
    mounts_of,
    near,
    one_of,
    only,
    short,
    splits_of,
    text_of,
    year_of,
)
from bezelbook.values.complaint import Wrong
from tests.reasoning.making import CAR, HOLE, book, length, mount, split, tried, vehicle

OF = book(vehicle(splits={"build": split("early", "late")}), mount("flush"), tried(mounts=["kit from the Shelf"]))


def test_what_can_be_read_is_read() -> None:
    assert length_of(KnowledgeBase(), "depth", "165 mm") == length("165 mm")
    # What a caliper read may be off by the shop's own, 0.2 mm, unless a ± is typed (trade.md 2.12: common practice).
    assert length_of(KnowledgeBase(), "depth", "165 mm caliper").give == 200_000
    assert length_of(KnowledgeBase(), "depth", "165 ± 1 mm caliper").give == 1_000_000
    assert splits_of(OF, CAR, {"build": "late"}) == {"build": "late"}
    assert splits_of(OF, CAR, {"build": "not looked"}) == splits_of(OF, CAR, {"build": ""}) == {}
    assert (year_of(OF, CAR, 1), year_of(OF, CAR, 5), year_of(OF, CAR, None)) == (1, 5, None)
    assert mounts_of(OF, CAR, HOLE, "none") == ()
    assert mounts_of(OF, CAR, HOLE, None) is None
    assert mounts_of(OF, CAR, HOLE, ["flush", "kit from the shelf"]) == ("flush", "kit from the shelf")
    assert mounts_of(OF, CAR, HOLE, "flush") == ("flush",)
    assert (cut_of(None), cut_of("a rib")) == ("nothing", "a rib")
    assert (choice_of({"tabs": "in"}, "tabs", ("in", "out")), choice_of({}, "tabs", ("in",))) == ("in", None)
    assert (text_of({"place": "x"}, "place"), mapping_of({}, "state"), one_of("a", {"a": 1}, "word")) == ("x", {}, "a")
    only({"a": 1}, ("a", "b"), "here")


@pytest.mark.parametrize(
    ("wrong", "complaint"),
    [
        (
            lambda: length_of(KnowledgeBase(), "depth", 165),
            'depth is a bare number, 165. Write "165 mm" or "165 in".',
        ),
        (
            lambda: length_of(KnowledgeBase(), "depth", 100.0),
            'depth is a bare number, 100.0. Write "100 mm" or "100 in".',
        ),
        (
            lambda: length_of(KnowledgeBase(), "depth", 0.5),
            'depth is a bare number, 0.5. Write "0.5 mm" or "0.5 in".',
        ),
        (
            lambda: length_of(KnowledgeBase(), "depth", value=True),
            'depth is not a size. Write it as text, such as "depth": "165 mm".',
        ),
        (lambda: length_of(KnowledgeBase(), "depth", "165"), "depth: 165 is a bare number. Write 165 mm or 165 in."),
        (
            lambda: length_of(KnowledgeBase(), "depth", "165 mm Printed"),
            'depth is only printed, which carries no answer. Ask "165 mm", then put a caliper on it.',
        ),
        (
            lambda: splits_of(OF, CAR, {"trim": "plush"}),
            'the book has no split of small-van-1 "trim". One of: build.',
        ),
        (
            lambda: splits_of(OF, CAR, {"build": "lat"}),
            'the book has no value of build "lat". Did you mean "late"?',
        ),
        (lambda: year_of(OF, CAR, year=True), "year True is not a model year of small-van-1. Count them from 1 to 5."),
        (lambda: year_of(OF, CAR, year=0), "year 0 is not a model year of small-van-1. Count them from 1 to 5."),
        (
            lambda: mounts_of(OF, CAR, HOLE, [3]),
            'mounts is not a list of names. Write ["flush-kit"], or the word "none".',
        ),
        (lambda: mounts_of(OF, CAR, HOLE, ["flus"]), 'the book has no mount "flus". Did you mean "flush"?'),
        (lambda: cut_of(3), 'cut is not in words. Write what may be cut, or "nothing".'),
        (lambda: choice_of({"tabs": "off"}, "tabs", ("in", "out")), "tabs is 'off'. Write one of: in, out."),
        (
            lambda: text_of({"place": " "}, "place"),
            '"place" is missing. Add it as text, for example "place": "…".',
        ),
        (lambda: mapping_of({"state": []}, "state"), '"state" is not a set of keys and values. Write "state": {…}.'),
        (lambda: only({"c": 1}, ("aa", "bb"), "here"), 'there is no "c" in here. One of: aa, bb.'),
    ],
)
def test_what_cannot_be_read_is_complained_of(wrong: Any, complaint: str) -> None:
    with pytest.raises(Wrong) as found:
        wrong()
    assert str(found.value) == complaint


def test_the_nearest_name_is_offered_and_else_the_first_of_them() -> None:
    assert near("flus", ("flush", "proud")) == 'Did you mean "flush"?'
    assert near("xyz", ("flush", "proud")) == "One of: flush, proud"
    assert near("xyz", tuple(f"name-{number}" for number in range(21))).endswith("name-18, name-19 …")
    assert near("xyz", tuple(f"name-{number}" for number in range(20))).endswith("name-18, name-19")
    assert near("x", ()) == "There is none to name yet"


def test_no_more_of_a_name_is_said_back_than_any_name_has() -> None:
    assert short("x" * LONGEST) == "x" * LONGEST
    assert short("x" * (LONGEST + 1)) == f"{'x' * LONGEST} …"


def test_a_bare_number_that_no_size_could_have_is_complained_of_like_any_other() -> None:
    with pytest.raises(Wrong, match="depth is a bare number"):
        length_of(KnowledgeBase(), "depth", 10**400)


def test_a_bare_number_of_many_decimals_is_offered_as_it_can_be_kept() -> None:
    with pytest.raises(Wrong, match=r'Write "165\.1234 mm" or "165\.1234 in"'):
        length_of(KnowledgeBase(), "depth", 165.12341)
    with pytest.raises(Wrong, match=r"96\.1234 mm"):
        length_of(KnowledgeBase(), "depth", "96.12341")
