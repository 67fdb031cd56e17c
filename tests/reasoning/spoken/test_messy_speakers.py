"""Questions about speakers as they are shouted over a counter, and what a shop means by each.

Written down before the reader was, from the trade's own words (trade.md 2.3, 2.4 and 11: common practice, no source).
"""

from collections.abc import Mapping
from pathlib import Path
from typing import Any

import pytest

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.pipeline import knowledge_of
from bezelbook.reasoning.question import Question
from bezelbook.reasoning.speakers.question import SpeakerQuestion
from bezelbook.reasoning.spoken.found import Choice
from bezelbook.reasoning.words import read_words
from tests.reasoning.spoken.an_odd_shop import an_odd_shop

MM = 1_000_000


def brief(book: KnowledgeBase, text: str) -> dict[str, Any]:
    """What a question comes to, without what was left as it usually is."""
    found = read_words(book, text).read
    if isinstance(found, Choice):
        return {"ask": found.ask, "options": [words for _, words in found.options]}
    if isinstance(found, Question):
        return {"opening": found.place}
    assert isinstance(found, SpeakerQuestion)
    sizes: dict[str, Any] = {of: size.base / MM for of, size in found.sizes.items()}
    said: dict[str, Any] = {
        "at": f"{found.vehicle} {found.place}",
        "speaker": found.speaker,
        "mounts": found.mounts,
        "tabs": found.tabs,
        "glass": found.glass if found.glass == "up" else None,
        "splits": found.splits,
        "year": found.year,
    }
    return {key: value for key, value in (said | sizes).items() if value or value == ()}


def asks(ask: str, *options: str) -> dict[str, Any]:
    return {"ask": ask, "options": list(options)}


HATCH, SEDAN, PICKUP, SUV = "compact-hatch-2", "large-sedan-2", "full-size-pickup-3", "mid-suv-1"
DIFFERS = "No two {} speakers need be alike. Which one, or how deep is it?"
HATCH_DOORS = ("front door left", "front door right")
SIX_AND_A_HALVES = (
    "boxed six and a half",
    "component six",
    "deep six and a half",
    "plain six and a half",
    "shallow six and a half",
    "two ohm six",
)

DEMO: Mapping[str, dict[str, Any]] = {
    "hatch 2 left front door deep six and a half": {"at": f"{HATCH} front-door-left", "speaker": "deep-six-and-a-half"},
    "HATCH MK2 LH FRONT DOOR - THE HEAVY 6.5??": {"at": f"{HATCH} front-door-left", "speaker": "deep-six-and-a-half"},
    "hatch2 frnt lft dr deep 6.5": {"at": f"{HATCH} front-door-left", "speaker": "deep-six-and-a-half"},
    "hatch fl door slim 6.5 on the 12.7 ring": {
        "at": f"{HATCH} front-door-left",
        "speaker": "shallow-six-and-a-half",
        "mounts": ("half-inch-ring",),
    },
    "does the trade coax go in a pickup three right front door with the window up": {
        "at": f"{PICKUP} front-door-right",
        "speaker": "plain-six-and-a-half",
        "glass": "up",
    },
    "estate l/h front door 63 deep": {"at": "estate-wagon-3 front-door-left", "mounting_depth": 63},
    "estate front dr left, depth 63 cut-out 143": {
        "at": "estate-wagon-3 front-door-left",
        "mounting_depth": 63,
        "cut_out": 143,
    },
    "roadster driver's door slim 6.5": asks(
        "Left or right, sitting in it and facing forward? The driver may sit on either. Which side?", *HATCH_DOORS
    ),
    "roadster driver's door slim 6.5 left": {
        "at": "small-roadster-1 front-door-left",
        "speaker": "shallow-six-and-a-half",
    },
    "estate passenger side front door plain 6.5": asks(
        "Left or right, sitting in it and facing forward? The driver may sit on either. Which side?", *HATCH_DOORS
    ),
    "sedan left parcel shelf 6x9": {"at": f"{SEDAN} shelf-left", "speaker": "shelf-oval"},
    "sedan six by nine right rear deck": asks(DIFFERS.format("6 x 9 in"), "shelf oval"),
    "suv rear door speakers?": asks("Which side?", "rear door left", "rear door right"),
    "hatch front door speakers": asks("Which side?", *HATCH_DOORS),
    "fronts in the hatch": asks("Which side?", *HATCH_DOORS),
    "hatch both front doors slim 6.5": asks("Which side?", *HATCH_DOORS),
    "van2 rear doors?": asks(
        "The book has no such place for a speaker in the Cargo van, second generation. Which place?",
        "overhead",
        *HATCH_DOORS,
        "load bay left",
    ),
    "minivan front left thin 5.25": {"at": "minivan-2 front-door-left", "speaker": "slim-five"},
    "city car dash corners 3.5": asks("Which side?", "dash corner left", "dash corner right"),
    "city car left dash corner 4 inch coax": {
        "at": "city-car-1 dash-corner-left",
        "speaker": "four-inch-coax",
    },
    "hatch sails tweeters": asks("Which side?", "mirror left", "mirror right"),
    "hatch rh sail panel silk dome in the cup": {
        "at": f"{HATCH} mirror-right",
        "speaker": "silk-dome",
        "mounts": ("tweeter-cup",),
    },
    "hatch left mirror triangle tiny dome": {"at": f"{HATCH} mirror-left", "speaker": "tiny-dome"},
    "the electric, left front door 165": asks(DIFFERS.format("6 1/2 in"), *SIX_AND_A_HALVES),
    "light truck 2 kick panels 5 1/4": asks(
        "The book has no such place for a speaker in the Light truck, second generation. Which place?",
        "overhead",
        *HATCH_DOORS,
    ),
    "pickup rl door 6.75": asks(DIFFERS.format("6 3/4 in"), "six three quarter"),
    "pickup three under the seat shallow eight": {"at": f"{PICKUP} under-rear-seat", "speaker": "shallow-eight"},
    "suv load bay ten inch sub": {"at": f"{SUV} load-bay-right", "speaker": "ten-sub"},
    "estate spare wheel well, the ten": {"at": "estate-wagon-3 spare-well", "speaker": "ten-sub"},
    "hatch left front door 63": {"at": f"{HATCH} front-door-left", "mounting_depth": 63},
    'hatch left front door 2 1/2"': {"at": f"{HATCH} front-door-left", "mounting_depth": 63.5},
    "hatch left front door 2.5": {"at": f"{HATCH} front-door-left", "mounting_depth": 63.5},
    "hatch left front door 143": asks("Is 143 its depth, or the hole it needs?", "143 deep", "cut out 143"),
    "hatch left front door bolt circle 156, 63 deep": {
        "at": f"{HATCH} front-door-left",
        "mounting_depth": 63,
        "bolt_circle": 156,
    },
    "hatch left front door deep six and a half, tab bracket, tabs snapped out": {
        "at": f"{HATCH} front-door-left",
        "speaker": "deep-six-and-a-half",
        "mounts": ("door-bracket-tabs",),
        "tabs": "out",
    },
    "hatch frt rh door comps": asks("Which speaker, or how deep is it?", "component six"),
    "sedan 6.5 speakers": asks("Which side?", "shelf left", "shelf right"),
    "minivan rear quarters 6.5": asks("Which side?", "rear quarter left", "rear quarter right"),
    "suv rf door 2 ohm coax with no ring": {"at": f"{SUV} front-door-right", "speaker": "two-ohm-six", "mounts": ()},
    "van front door right hand side five by seven": {"at": "cargo-van-2 front-door-right", "speaker": "five-by-seven"},
    "van front door r flat 8 year 3": {"at": "cargo-van-2 front-door-right", "speaker": "shallow-eight", "year": 3},
    "hatch left door 50 mm deep 10mm spacer": {
        "at": f"{HATCH} front-door-left",
        "mounting_depth": 50,
        "mounts": ("spacer-ten",),
    },
    "hatch left door 50 deep on a 14 mm ring": {"at": f"{HATCH} front-door-left", "mounting_depth": 50},
    "sedan rear shelf left 152x222 cut out 82 deep": {
        "at": f"{SEDAN} shelf-left",
        "cut_out": 222,
        "cut_out_short": 152,
        "mounting_depth": 82,
    },
    "crossover ev front left door 2.5 in deep, facelift": {
        "at": "electric-crossover-1 front-door-left",
        "mounting_depth": 63.5,
    },
    "courier left front door slim 5.25 windows up": {
        "at": "courier-1 front-door-left",
        "speaker": "slim-five",
        "glass": "up",
    },
    "short double in the hatch left front door": asks(
        "front door left is no opening that takes a box. Which place?", "dash centre"
    ),
    "deep six and a half in the hatch dash": asks(
        "radio opening takes no speaker. Which place?", *HATCH_DOORS, "mirror left", "mirror right"
    ),
    "SUV right front door, CHEAP 6.5 — with the 18 ring?": {
        "at": f"{SUV} front-door-right",
        "speaker": "plain-six-and-a-half",
        "mounts": ("spacer-eighteen",),
    },
    "late hatch, upgraded, lf door, slim 6.5": {
        "at": f"{HATCH} front-door-left",
        "speaker": "shallow-six-and-a-half",
        "splits": {"build": "late", "audio": "upgraded"},
    },
    # Still about openings.
    "hatch dash 165 deep": {"opening": "dash-centre"},
    "4 door hatch 165 deep": {"opening": "dash-centre"},
}

DOORS: Mapping[str, dict[str, Any]] = {
    "hatch 2 left front door the deep six and a half": {
        "at": f"{HATCH} front-door-left",
        "speaker": "deep-sixty-three",
    },
    "hatch, left, 63 deep, ten ring, door": {
        "at": f"{HATCH} front-door-left",
        "mounting_depth": 63,
        "mounts": ("ten-ring",),
    },
    "hatch rf speakers 6½": asks(DIFFERS.format("6 1/2 in"), "deep sixty three"),
    "hatch speakers": asks("Which side?", *HATCH_DOORS),
    "hatch lh door 63 deep 156 pcd 143 hole half inch spacer": {
        "at": f"{HATCH} front-door-left",
        "mounting_depth": 63,
        "bolt_circle": 156,
        "cut_out": 143,
        "mounts": ("half-inch-ring",),
    },
}

ODD: Mapping[str, dict[str, Any]] = {
    "grain cart lh rear door red one": {"at": "grain-cart-4 aft-hatch-l", "speaker": "red-thirteen"},
    "cart 4, off side flap, red one": asks(
        "Left or right, sitting in it and facing forward? The driver may sit on either. Which side?",
        "aft hatch l",
        "aft hatch r",
    ),
    "cart kick right 8 mm proud plate blue 130": {
        "at": "grain-cart-4 foot-r",
        "speaker": "blue-thirteen",
        "mounts": ("proud-plate",),
    },
    "cart right footwell 130": asks(DIFFERS.format("5 1/4 in"), "blue thirteen", "red thirteen"),
    "cart pillar tweeter": asks(
        "The book has no such place for a speaker in the Grain cart. Which place?",
        "aft hatch l",
        "aft hatch r",
        "foot r",
        "roof",
    ),
}


@pytest.fixture(scope="module")
def demo(kb: Path) -> KnowledgeBase:
    return knowledge_of(kb).book


@pytest.fixture(scope="module")
def doors(books: Path) -> KnowledgeBase:
    return knowledge_of(books / "doors").book


@pytest.mark.parametrize(("typed", "meant"), DEMO.items())
def test_a_shouted_question_means_what_a_shop_means_by_it(
    demo: KnowledgeBase, typed: str, meant: dict[str, Any]
) -> None:
    assert brief(demo, typed) == meant


@pytest.mark.parametrize(("typed", "meant"), DOORS.items())
def test_it_does_so_in_the_book_of_the_trades_doors(doors: KnowledgeBase, typed: str, meant: dict[str, Any]) -> None:
    assert brief(doors, typed) == meant


@pytest.mark.parametrize(("typed", "meant"), ODD.items())
def test_it_does_so_in_a_book_with_names_of_its_own(typed: str, meant: dict[str, Any]) -> None:
    assert brief(an_odd_shop(), typed) == meant


@pytest.mark.parametrize("typed", DEMO)
def test_every_answer_offered_leads_on_when_its_words_are_added(demo: KnowledgeBase, typed: str) -> None:
    found = brief(demo, typed)
    for words in found.get("options", ()):
        assert brief(demo, f"{typed} {words}") != found
