import re

import pytest

from bezelbook.publish.book_data import book_data
from bezelbook.publish.knowledge import Knowledge
from bezelbook.publish.patterns import browser_pattern
from bezelbook.reasoning.said_sizes import NO_SIZES, SIZES
from bezelbook.reasoning.vocabulary import OPENINGS, SAME_WORDS, vocabulary
from tests.publish.pages_of import knowledge_about
from tests.reasoning import making


def test_it_holds_every_phrase_of_the_vocabulary_in_its_order(worked: Knowledge) -> None:
    told = book_data(worked)["phrases"]
    assert [one["words"].split() for one in told] == [list(one.words) for one in vocabulary(worked.book)]
    assert {"words": "late", "points": "split", "id": "late", "of": "compact-hatch-2", "axis": "build"} in told


def test_it_names_vehicles_with_their_places_and_which_of_them_take_a_box() -> None:
    door = {"kind": "door lower", "side": "left"}
    car = making.vehicle(
        places={"slot": {"kind": "pocket", "side": "centre", "name": "the slot"}, "front-door": door},
        splits={"build": making.split("early")},
    )
    [told] = book_data(knowledge_about(car))["vehicles"]
    assert told["places"] == [
        {"id": "slot", "name": "the slot", "opening": True, "speaker": False, "side": "centre", "own": ["slot"]},
        {
            "id": "front-door",
            "name": "front door",
            "opening": False,
            "speaker": True,
            "side": "left",
            "own": ["door", "front", "lower"],
        },
    ]
    assert (told["data"], told["axes"], told["generation"], told["years"]) == (
        f"data/vehicles/{making.CAR}.js",
        ["build"],
        1,
        5,
    )
    assert "pocket" in OPENINGS


def test_every_page_with_a_name_of_its_own_can_be_found_by_it() -> None:
    pages = book_data(knowledge_about(making.unit(also=["the box"]), making.mount()))["pages"]
    assert [page[:3] for page in pages] == [
        ["small van", "vehicle", f"vehicles/{making.CAR}.html"],
        ["box", "head unit", "head-units/box.html"],
        ["kit", "kit", "mounts/kit.html"],
        ["Too much of it", "how the book checks itself", "checks/too-much.html"],
    ]
    assert pages[1][3] == ["the box", "box"]


@pytest.mark.parametrize("pattern", [SIZES.pattern, NO_SIZES.pattern, *(pattern for pattern, _ in SAME_WORDS)])
def test_a_pattern_for_the_browser_says_nothing_that_a_browser_takes_for_more(pattern: str) -> None:
    assert not re.search(r"\\[bdwsBDWS]", browser_pattern(pattern))


@pytest.mark.parametrize("text", ["gen 2", "gen 2½", "gen2", "mk 2 ", "x2din", "½din 2", "generation2a"])
def test_a_pattern_for_the_browser_matches_as_it_did(text: str) -> None:
    for pattern, _ in SAME_WORDS:
        assert [one.span() for one in re.finditer(browser_pattern(pattern), text)] == [
            one.span() for one in re.finditer(pattern, text)
        ]
