"""Width and height alone: what they rule out is out, else how deep a thing may be (trade.md 13's opening)."""

from pathlib import Path

import pytest

from bezelbook.pipeline import Answer, Choice, Counter, knowledge_of
from bezelbook.reasoning.needs import Need
from bezelbook.reasoning.question import Question
from bezelbook.reasoning.spoken.depths import depths_at
from bezelbook.values.quantity import Quantity
from tests.reasoning import making


@pytest.fixture(scope="module")
def counter(kb: Path) -> Counter:
    return Counter(knowledge_of(kb).book)


def test_how_deep_it_may_be_is_told_for_each_mount(books: Path) -> None:
    found, _ = Counter(knowledge_of(books / "worked").book).ask_words("hatch 2 late 177 x 99 mm")
    assert isinstance(found, Choice)
    # The duct in the lower left is 150 ± 3 mm behind the face.
    assert any("up to 147 mm" in line for line in found.known)


def test_where_nothing_was_seen_no_depth_is_certain(books: Path) -> None:
    found, _ = Counter(knowledge_of(books / "worked").book).ask_words("hatch 2 early 177 x 99 mm")
    assert isinstance(found, Choice)
    assert any(line.endswith("no depth is certain") for line in found.known)


def test_what_is_too_high_is_out_however_deep_it_is(counter: Counter) -> None:
    found, _ = counter.ask_words("hatch dash 190 x 120 mm")
    assert isinstance(found, Answer)
    assert found.verdict == "does not"


@pytest.mark.parametrize(("first", "depth"), [("mm", "158 mm (6.22 in)"), ("in", "6.22 in (158 mm)")])
def test_a_mount_that_its_width_and_height_rule_out_is_not_told(first: str, depth: str) -> None:
    here = [{"vehicle": making.CAR, "place": making.HOLE}]
    wide = {"width": "185 mm caliper", "height": "105 mm caliper"}
    slim = {"width": "150 mm caliper", "height": "60 mm caliper"}
    kits = making.mount("wide", presents=wide, made_for=here), making.mount("slim", presents=slim, made_for=here)
    deep = making.measured("deep", making.reading("depth", "160 ± 2 mm"))
    place = making.place(making.book(making.shop(units_first=first), making.roomy(), deep, *kits))
    sizes: dict[Need, Quantity] = {"width": making.length("170 mm"), "height": making.length("90 mm")}
    assert list(depths_at(place, Question(making.CAR, making.HOLE, sizes=sizes))) == [
        f"with wide: up to {depth} deep goes in, as far as its plug and bend have room"
    ]
