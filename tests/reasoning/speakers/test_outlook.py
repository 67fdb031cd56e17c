"""Whether a speaker goes in in every room, and clear enough."""

import pytest

from bezelbook.reasoning.room_span import RoomSpan
from bezelbook.reasoning.speakers.cells import SpeakerDemand, SpeakerRoom
from bezelbook.reasoning.speakers.outlook import always_fits, clearance, left_over, outlook
from tests.reasoning.speakers.doors import ask, book, measured, place, reading, resolved, roomy, shop, speaker, tried

MM = 1_000_000


def test_notes_that_allow_no_room_settle_nothing() -> None:
    of = book(roomy(glass="50 ± 1 mm"), tried())
    here, asked = place(of), resolved(of, mounts=())
    assert outlook(here.accounts[0].agreeing(here.evidence.standing), asked.needs, asked.settings) == "open"


def test_what_asks_nothing_is_not_said_to_fit() -> None:
    of = book()
    asked = resolved(of, mounts=())
    nothing = asked.narrowed(needs=resolved(of, speaker=None, sizes={}).needs)
    assert not always_fits(place(of).accounts[0], nothing.needs, nothing.settings[0])


@pytest.mark.parametrize(
    ("house", "verdict"),
    [
        ({"glass": "10 mm"}, "goes in"),
        ({"glass": "10.1 mm"}, "too close"),
        ({"grille": "10 mm"}, "goes in"),
        ({"grille": "10.1 mm"}, "too close"),
        ({"width": "10 mm"}, "goes in"),
        ({"width": "10.1 mm"}, "too close"),
        ({"fixed": "50 mm"}, "goes in"),
    ],
)
def test_what_the_house_likes_to_leave_goes_by_the_middles(house: dict[str, str], verdict: str) -> None:
    assert ask(book(shop(**house), roomy())).verdict == verdict


def test_to_what_is_fixed_the_house_leaves_its_own() -> None:
    fixed = measured("f", reading("rear depth to fixed", "64 ± 1 mm"))
    assert ask(book(shop(glass="5 mm", fixed="4 mm"), roomy(), fixed)).verdict == "goes in"
    assert ask(book(shop(glass="5 mm", fixed="4.1 mm"), roomy(), fixed)).verdict == "too close"


def test_what_was_fitted_needs_nothing_left_over() -> None:
    of = book(shop(glass="10 mm"), roomy(glass="65 ± 1 mm"), tried())
    assert ask(of).verdict == "goes in"
    assert ask(of).sure == "fitted"
    assert ask(of, {"mounting_depth": "61 mm"}).verdict == "too close"


def test_the_hole_that_it_wants_needs_nothing_left_over() -> None:
    of = book(shop(width="5 mm"), speaker("snug", basket=None, cut_out="138 mm caliper"), roomy())
    assert ask(of, "snug").verdict == "goes in"
    assert clearance(place(of).frame, resolved(of, speaker="snug").needs, demand("basket")) == 0


def demand(need: str) -> SpeakerDemand:
    return SpeakerDemand(need, SpeakerRoom((), "nothing", "short way"), 0, "short way")  # type: ignore[arg-type]


def test_what_is_left_over_where_only_one_end_is_known() -> None:
    needs = resolved(book()).needs
    assert left_over(needs, demand("basket"), RoomSpan(140 * MM, None)) == 10 * MM
    assert left_over(needs, demand("basket"), RoomSpan(140 * MM, 150 * MM)) == 15 * MM
    blank = resolved(book(speaker("odd", basket=None)), speaker="odd").needs
    assert left_over(blank, demand("basket"), RoomSpan(140 * MM, None)) == 140 * MM


@pytest.mark.parametrize(("glass", "found"), [("70 ± 1 mm", "always"), ("60 ± 1 mm", "open"), ("50 ± 1 mm", "never")])
def test_it_fits_always_never_or_nobody_knows(glass: str, found: str) -> None:
    of = book(roomy(glass=glass))
    asked = resolved(of, mounts=())
    assert outlook(place(of).accounts[0], asked.needs, asked.settings) == found
