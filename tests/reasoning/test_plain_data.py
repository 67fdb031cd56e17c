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
    assert (year_of(OF, CAR, 5), year_of(OF, CAR, None)) == (5, None)
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
        (lambda: length_of(KnowledgeBase(), "depth", 165), "depth is a bare number, 165"),
        (lambda: length_of(KnowledgeBase(), "depth", value=True), "depth is not a size"),
        (lambda: length_of(KnowledgeBase(), "depth", "165"), "depth: 165 is a bare number"),
        (lambda: splits_of(OF, CAR, {"trim": "plush"}), 'the book has no split of small-van-1 "trim"'),
        (lambda: year_of(OF, CAR, year=True), "year True is not a model year"),
        (lambda: mounts_of(OF, CAR, HOLE, [3]), "mounts is not a list of names"),
        (lambda: mounts_of(OF, CAR, HOLE, ["flus"]), 'the book has no mount "flus"'),
        (lambda: cut_of(3), "cut is not in words"),
        (lambda: choice_of({"tabs": "off"}, "tabs", ("in", "out")), "tabs is 'off'"),
        (lambda: text_of({"place": " "}, "place"), '"place" is missing'),
        (lambda: mapping_of({"state": []}, "state"), '"state" is not a set of keys and values'),
        (lambda: only({"c": 1}, ("a", "b"), "here"), 'there is no "c" in here'),
    ],
)
def test_what_cannot_be_read_is_complained_of(wrong: Any, complaint: str) -> None:
    with pytest.raises(Wrong) as found:
        wrong()
    assert found.value.what.startswith(complaint)


def test_the_nearest_name_is_offered_and_else_the_first_of_them() -> None:
    assert near("flus", ("flush", "proud")) == 'Did you mean "flush"?'
    assert near("xyz", ("flush", "proud")) == "One of: flush, proud"
    assert near("xyz", tuple(f"name-{number}" for number in range(30))).endswith(" …")
    assert near("x", ()) == "There is none to name yet"


def test_no_more_of_a_name_is_said_back_than_any_name_has() -> None:
    assert short("x" * LONGEST) == "x" * LONGEST
    assert short("x" * (LONGEST + 1)) == f"{'x' * LONGEST} …"


def test_a_bare_number_of_many_decimals_is_offered_as_it_can_be_kept() -> None:
    with pytest.raises(Wrong, match=r'Write "165\.1234 mm" or "165\.1234 in"'):
        length_of(KnowledgeBase(), "depth", 165.12341)
    with pytest.raises(Wrong, match=r"96\.1234 mm"):
        length_of(KnowledgeBase(), "depth", "96.12341")
