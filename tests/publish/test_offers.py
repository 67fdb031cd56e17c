"""What a page offers instead of a wish is what the desk offers, and each row says what it rests on and takes."""

import pytest

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.publish.address import Links
from bezelbook.publish.offers import Offers, offer_row
from bezelbook.publish.opening import openings_of
from bezelbook.reasoning.next_best.desk import Desk
from bezelbook.reasoning.question import Question
from tests.reasoning import making


@pytest.fixture
def book() -> KnowledgeBase:
    short = making.unit("short", body_depth="90 ± 1 mm caliper")
    deep = making.unit("deep", body_depth="190 ± 1 mm caliper")
    went, stopped = (
        making.tried("went", what="short"),
        making.tried("stopped", what="deep", verdict="does not", reason="depth"),
    )
    return making.book(making.vehicle(), short, deep, went, stopped)


def test_the_page_offers_what_the_desk_offers(book: KnowledgeBase) -> None:
    [opening] = openings_of(book)
    found = Desk(book).opening(Question(making.CAR, making.HOLE, unit="deep"))
    assert found.verdict == "does not"
    offers = Offers(book, [opening])
    assert offers.of(found) == found.instead
    assert "short" in {offer.thing for offer in found.instead}
    units = {offer.thing for choice in opening.choices for offer in offers.units(opening, choice)}
    assert "short" in units


def test_a_row_says_how_sure_it_is_and_what_is_to_buy(book: KnowledgeBase) -> None:
    found = Desk(book).opening(Question(making.CAR, making.HOLE, unit="deep"))
    offer = next(one for one in found.instead if one.thing == "short")
    row = offer_row(offer, Links("index.md", book))
    assert row.verdict.startswith("goes in")
    assert "fitted, one job" in row.takes
    assert row.at
