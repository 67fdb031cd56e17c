"""The one number that decides."""

from typing import Any

import pytest

from bezelbook.reasoning.room_span import RoomSpan
from bezelbook.reasoning.speakers.cells import RoomSize
from bezelbook.reasoning.speakers.number import SpeakerSpot, _tightest, spots
from tests.reasoning.speakers.doors import (
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

MM = 1_000_000


def test_a_yes_is_decided_by_what_leaves_least_of_what_is_wanted() -> None:
    spot = ask(book(shop(glass="5 mm", grille="3 mm"), roomy(glass="66 ± 1 mm"))).spot
    assert spot is not None
    assert (spot.size, spot.left, spot.house, spot.sure_gap, spot.best_gap) == ("glass", 6 * MM, 5 * MM, 5 * MM, 7 * MM)
    assert spot.words("mm") == (
        "mounting depth: it asks 60 mm (2.36 in) at the glass; there is 66 mm (2.60 in) ± 1 mm, "
        "so 6 mm (0.24 in) is left; the house wants 5 mm (0.20 in)"
    )
    short = ask(book(shop(glass="5 mm", grille="3 mm"), roomy(glass="50 ± 1 mm"))).spot
    assert short is not None
    assert short.words("mm").endswith("there is 50 mm (1.97 in) ± 1 mm, so it is short by about 10 mm (0.39 in)")


def test_what_the_figures_are_short_by_does_not_speak_against_what_was_seen_to_go_in() -> None:
    """By hand: 22 to 26 asked of 20 to 24 in front, of which what went in leaves 22 to 24."""
    plays = speaker(front_height="22 mm ± 1 mm caliper", excursion="3 mm ± 1 mm caliper")
    front = measured("m", reading("front clearance", "22 ± 2 mm"))
    found = ask(book(shop(grille="3 mm"), plays, front, tried()), mounts="none")
    assert found.spot is not None
    assert (found.verdict, found.spot.size, found.spot.left < 0) == ("goes in", "front", True)
    number = found.plain()["number"]
    assert number is not None
    assert number["words"].endswith("in), but it was seen to go in")
    assert "but it was" not in found.spot.words("mm")


def test_what_a_cone_asks_for_only_while_it_plays_is_said_apart() -> None:
    """By hand: 20 in front less 10 at rest and 5 when it plays is 5."""
    plays = speaker(front_height="10 mm caliper", excursion="5 mm caliper")
    found = ask(book(shop(grille="3 mm"), roomy(), plays))
    assert found.spot is not None
    assert found.spot.words("mm") == (
        "front height: it asks 10 mm (0.39 in), and up to 5 mm (0.20 in) more when it plays, at the grille; "
        "there is 20 mm (0.79 in) ± 1 mm, so 5 mm (0.20 in) is left; the house wants 3 mm (0.12 in)"
    )
    assert found.spot.asks("mm") == "10 mm (0.39 in), and up to 5 mm (0.20 in) more when it plays"
    assert found.spot.asks("in") == "0.39 in (10 mm), and up to 0.20 in (5 mm) more when it plays"
    unsaid = ask(book(shop(grille="3 mm"), roomy(), speaker())).spot
    assert unsaid is not None
    assert (unsaid.size, unsaid.asks("mm")) == ("front", "10 mm (0.39 in)")
    tight = ask(book(shop(glass="9 mm"), roomy(), plays)).spot
    assert tight is not None
    assert (tight.size, tight.asks("mm")) == ("glass", "60 mm (2.36 in)"), "of the depth it asks for no more"


def test_a_no_is_decided_by_what_is_furthest_short() -> None:
    spot = ask(book(roomy(glass="50 ± 1 mm"), speaker(front_height="22 mm caliper"))).spot
    assert spot is not None
    assert (spot.size, spot.best_gap) == ("glass", -9 * MM)
    assert spot.words("mm").endswith("there is 50 mm (1.97 in) ± 1 mm")


def test_too_close_is_decided_by_what_is_tight() -> None:
    spot = ask(book(roomy(glass="60 ± 1 mm"))).spot
    assert spot is not None
    assert (spot.size, spot.is_tight) == ("glass", True)


def test_just_enough_is_not_short() -> None:
    spot = ask(book(shop(glass="5 mm", grille="3 mm"), roomy(glass="60 ± 1 mm"))).spot
    assert spot is not None
    assert spot.words("mm").endswith("so 0 mm (0 in) is left; the house wants 5 mm (0.20 in)")


def test_a_spot_that_is_certain_does_not_decide_what_is_too_close_at_another() -> None:
    """By hand: the glass leaves 2 ± 4, the front 1.5 ± 1; only the first may be less than nothing."""
    sizes = {"basket": "130 mm", "mounting_depth": "60 mm", "front_height": "18.5 mm"}
    found = ask(book(roomy(glass="62 ± 4 mm")), sizes)
    assert found.spot is not None
    assert (found.verdict, found.spot.size) == ("too close", "glass")


def test_of_two_builds_in_which_it_goes_the_one_that_leaves_least_of_what_is_wanted_decides() -> None:
    """By hand: 6 to the glass where 5 are wanted leaves less over than 4 to the grille where 2 are."""
    splits: dict[str, Any] = {"build": {"values": {"early": {}, "late": {}}}}
    early = roomy("e", glass="66 ± 0.5 mm", splits={"build": "early"})
    late = measured(
        "l",
        reading("cut-out", "140 ± 1 mm"),
        reading("rear depth to glass down", "80 ± 1 mm"),
        reading("front clearance", "14 ± 0.5 mm"),
        splits={"build": "late"},
    )
    found = ask(book(shop(glass="5 mm", grille="2 mm"), car(splits=splits), early, late))
    assert found.verdict == "goes in"
    assert found.spot is not None
    assert (found.spot.size, found.spot.left, found.spot.house) == ("glass", 6 * MM, 5 * MM)


def test_of_many_ways_the_one_that_comes_nearest_decides() -> None:
    rings = [mount("thin", thickness="1 mm caliper"), mount("thick", thickness="4 mm caliper")]
    spot = ask(book(*rings, roomy(glass="58 ± 1 mm")), mounts=None).spot
    assert spot is not None
    assert spot.room.least == 61 * MM


def test_what_only_went_in_is_known_at_one_end() -> None:
    spot = ask(book(tried())).spot
    assert spot is not None
    assert (spot.best_gap, spot.room.least) == (None, 130 * MM)
    assert spot.words("mm").endswith("at least 130 mm (5.12 in) is known to be there")


def test_where_nothing_is_known_no_number_decides() -> None:
    assert ask(book()).spot is None
    assert ask(book(speaker("odd", basket=None, mounting_depth=None, front_height=None)), "odd").spot is None
    assert ask(book(tried(verdict="does not", what="six"))).spot is None


def test_what_just_goes_in_with_what_the_house_likes_is_not_tight() -> None:
    def spot(room: int, left: int) -> SpeakerSpot:
        return SpeakerSpot("basket", "short way", 8, 10, RoomSpan(room, 20), left, 3)

    assert not spot(room=10, left=3).is_tight
    assert spot(room=9, left=3).is_tight
    assert spot(room=10, left=2).is_tight


@pytest.mark.parametrize(
    ("size", "where"),
    [
        ("long way", "the hole, the long way"),
        ("short way", "the hole"),
        ("fixed", "the first thing behind that does not move"),
        ("glass", "the glass"),
        ("front", "the grille"),
    ],
)
def test_each_size_of_the_room_is_called_what_a_shop_calls_it(size: RoomSize, where: str) -> None:
    asks = SpeakerSpot("basket", size, 10 * MM, 10 * MM, RoomSpan(11 * MM, 11 * MM), MM, 0)
    assert asks.words("mm").startswith(f"basket: it asks 10 mm (0.39 in) at {where}; there is ")


def test_what_is_left_and_what_is_short_come_in_the_shops_own_unit_first() -> None:
    left = ask(book(shop(glass="5 mm"), roomy(glass="66 ± 1 mm"))).spot
    short = ask(book(shop(glass="5 mm"), roomy(glass="50 ± 1 mm"))).spot
    assert left is not None
    assert short is not None
    assert left.words("in").endswith("so 0.24 in (6 mm) is left; the house wants 0.20 in (5 mm)")
    assert short.words("in").endswith("so it is short by about 0.39 in (10 mm)")


def test_of_two_builds_that_are_too_close_the_one_that_comes_nearest_decides() -> None:
    splits: dict[str, Any] = {"build": {"values": {"early": {}, "late": {}}}}
    early, late = (
        roomy(build, glass=f"{glass} ± 3 mm", splits={"build": build}) for build, glass in (("early", 58), ("late", 59))
    )
    found = ask(book(car(splits=splits), early, late))
    assert found.verdict == "too close"
    assert found.spot is not None
    assert found.spot.left == -MM


def test_of_two_that_are_short_for_certain_the_shorter_decides_and_not_one_that_may_do() -> None:
    deep = ask(book(roomy(glass="58 ± 1 mm"), speaker(front_height="25 mm caliper"))).spot
    assert deep is not None
    assert (deep.size, deep.best_gap) == ("front", -4 * MM)
    rest = reading("cut-out", "140 ± 1 mm"), reading("rear depth to glass down", "58 ± 1 mm")
    rough = measured("w", *rest, reading("front clearance", "20 ± 10 mm"))
    found = ask(book(rough, speaker(front_height="25 mm caliper")))
    assert found.verdict == "does not"
    assert found.spot is not None
    assert (found.spot.size, found.spot.best_gap) == ("glass", -MM)


def test_what_nobody_knows_of_a_speaker_is_no_spot() -> None:
    of = book(speaker("odd", mounting_depth=None), roomy())
    asked = resolved(of, speaker="odd", mounts=())
    assert {spot.size for spot in spots(place(of), asked, asked.settings[0])} == {"short way", "front"}


@pytest.mark.parametrize(("most", "is_short"), [(10, True), (11, False)])
def test_a_no_is_decided_by_what_has_nothing_left_at_best(most: int, *, is_short: bool) -> None:
    spot = SpeakerSpot("basket", "short way", 10, 12, RoomSpan(9, most), 0, 0)
    assert _tightest([spot], "does not") == (spot if is_short else None)


@pytest.mark.parametrize(("least", "is_known"), [(0, False), (1, True)])
def test_only_where_there_is_certainly_room_a_yes_is_decided(least: int, *, is_known: bool) -> None:
    spot = SpeakerSpot("basket", "short way", 0, 0, RoomSpan(least, None), 0, 0)
    assert _tightest([spot], "goes in") == (spot if is_known else None)


def test_what_did_not_go_in_is_short_by_its_own_size() -> None:
    spot = ask(book(tried(verdict="does not", reason="glass"))).spot
    assert spot is not None
    assert (spot.size, spot.best_gap) == ("glass", 0)
