"""A note speaks of so much room at each of some spots, or of not so much at one of them."""

from typing import Any

import pytest

from bezelbook.kinds.note.record import AnyNote
from bezelbook.reasoning.differing.rooms_said import Said, room_of, said_of
from bezelbook.values.words import NINTHS
from tests.reasoning import making
from tests.reasoning.differing.a_clash import note

MM = 1_000_000
BOX = making.unit("box", body_depth="110 ± 1 mm caliper")


def said(one: AnyNote) -> list[Said]:
    return list(said_of(making.book(BOX), one))


def ends(one: AnyNote) -> list[tuple[set[str], int | None, int | None]]:
    """The spots with what there is at least and at most, in whole millimetres."""
    return [(set(it.spots), it.least and it.least // MM, it.most and it.most // MM) for it in said(one)]


def read(of: str, reads: str, **more: Any) -> AnyNote:
    return making.measured("m", making.reading(of, reads, **more))


def test_a_reading_of_two_ninths_says_both_of_each() -> None:
    two = making.measured("m", making.reading("depth", "150 ± 2 mm", "left", "right"))
    assert ends(two) == [({"left", "right"}, 148, None), ({"left"}, None, 152), ({"right"}, None, 152)]
    assert ends(read("width", "182 ± 1 mm")) == [({""}, 181, None), ({""}, None, 183)]


def test_a_depth_without_its_ninth_says_only_that_some_spot_is_no_deeper() -> None:
    assert ends(read("depth", "150 ± 2 mm", zones=None)) == [(set(NINTHS), None, 152)]


def test_glass_at_its_worst_leaves_no_more_room_than_what_is_fixed() -> None:
    assert ends(read("rear depth at worst of travel", "55 ± 1 mm")) == [
        ({"fixed", "down", "worst"}, 54, None),
        ({"worst"}, None, 56),
    ]
    assert ends(read("rear depth to fixed", "71 ± 1 mm")) == [({"fixed"}, 70, None), ({"fixed"}, None, 72)]


def test_a_round_hole_is_read_both_ways() -> None:
    ways = {"long way", "short way"}
    assert ends(read("cut-out", "127 ± 1 mm"))[0] == (ways, 126, None)
    assert ends(read("cut-out short way", "127 ± 1 mm"))[0] == ({"short way"}, 126, None)


@pytest.mark.parametrize(
    ("of", "more", "held", "compared"),
    [
        ("depth", {}, False, True),
        ("depth", {"datum": "kit seat"}, True, True),
        ("depth", {"datum": None}, False, False),
        ("depth", {"datum": "finished bezel face"}, False, False),
        ("width", {"tool": "eye"}, True, False),
    ],
)
def test_what_a_reading_has_in_it_and_whether_it_can_be_compared(
    of: str, more: dict[str, Any], *, held: bool, compared: bool
) -> None:
    assert {(one.held, one.compared) for one in said(read(of, "150 mm", **more))} == {(held, compared)}


def test_what_went_in_had_room_everywhere_and_what_did_not_lacked_it_somewhere() -> None:
    depths = [one for one in said(making.tried()) if one.size == "depth"]
    assert [(set(one.spots), one.least) for one in depths] == [(set(NINTHS), 109 * MM)]
    short = {"verdict": "does not", "sure": "dry-fitted", "reason": "depth"}
    assert ends(making.tried(**short)) == [(set(NINTHS), None, 111)]
    assert ends(making.tried(**short, where=["left"])) == [({"left"}, None, 111)]
    assert ends(making.tried(verdict="not tried")) == []
    assert ends(note("s", "seen", plug="grey")) == []


@pytest.mark.parametrize(
    ("glass", "spots", "stopped"), [("up", {"fixed"}, {"fixed"}), (None, {"fixed", "down", "worst"}, {"worst"})]
)
def test_a_speaker_meets_what_is_behind_it(glass: str | None, spots: set[str], stopped: set[str]) -> None:
    cone = {"what": "cone", "sizes": {"mounting_depth": "63 ± 1 mm", "basket": "141 ± 1 mm"}, "glass": glass}
    went = [one for one in said(making.tried(**cone)) if one.size == "depth"]
    assert [set(one.spots) for one in went] == [spots]
    hit = making.tried(**cone, verdict="does not", sure="dry-fitted", reason="glass")
    assert [set(one.spots) for one in said(hit)] == [stopped]


def test_a_basket_that_is_too_wide_is_short_of_hole() -> None:
    wide = making.tried(
        what="cone",
        sizes={"mounting_depth": "63 ± 1 mm", "basket": "141 ± 1 mm"},
        verdict="does not",
        sure="dry-fitted",
        reason="width",
    )
    assert room_of(making.book(), wide) == {"hole": (None, 142 * MM)}


def test_of_several_spots_the_shallowest_stops_a_thing() -> None:
    """A wire is trusted to ± 5 mm: trade 2.12."""
    wire = making.measured("m", making.reading("depth", "150 mm"), making.reading("depth", "205 mm", "centre"))
    assert room_of(making.book(), wire) == {"depth": (145 * MM, 155 * MM)}


def gap(one: AnyNote, *records: Any) -> list[tuple[str, set[str], int | None, int | None]]:
    """What by so much tells of the room: all that a note says beyond what it says without its gap."""
    book = making.book(*(records or (BOX,)))
    without = set(said_of(book, one.model_copy(update={"to_spare": None, "short_by": None})))
    told = [it for it in said_of(book, one) if it not in without]
    return [(it.size, set(it.spots), it.least and it.least // MM, it.most and it.most // MM) for it in told]


FELL_SHORT = {"verdict": "does not", "sure": "dry-fitted", "short_by": "8 ± 2 mm"}
TO_SPARE = {"to_spare": "8 ± 2 mm"}


@pytest.mark.parametrize(
    ("more", "expected"),
    [
        ({**FELL_SHORT, "reason": "width"}, ("width", {""}, 167, 173)),
        ({**FELL_SHORT, "reason": "height"}, ("height", {""}, 89, 95)),
        ({**FELL_SHORT, "reason": "depth", "where": ["left"]}, ("depth", {"left"}, 99, 105)),
        ({**FELL_SHORT, "reason": "plug", "where": ["right"]}, ("depth", {"right"}, 126, 142)),
        ({**FELL_SHORT, "reason": "depth", "where": ["right"], "plugs": "off"}, ("depth", {"right"}, 99, 105)),
        ({**FELL_SHORT, "reason": "depth", "where": ["left", "right"]}, None),
        ({**FELL_SHORT, "reason": "depth"}, None),
        ({**FELL_SHORT, "where": ["left"]}, None),
        ({**FELL_SHORT, "reason": "nose"}, None),
        ({**TO_SPARE, "where": ["left"]}, ("depth", {"left"}, 115, 121)),
        ({**TO_SPARE, "where": ["right"]}, ("depth", {"right"}, 142, 158)),
    ],
)
def test_by_so_much_tells_how_deep_it_is_where_it_was_seen(more: dict[str, Any], expected: Any) -> None:
    """By hand: 178 - 8, 100 - 8, 110 - 8 and with the plug 142 - 8, each with the ± of both."""
    size, spots, least, most = expected or ("", (), 0, 0)
    both: Any = [(size, spots, least, None), (size, spots, None, most)]
    assert gap(making.tried(**more)) == (both if expected else [])


def test_by_so_much_where_nobody_knows_whether_the_plug_leaves_is_of_the_one_or_the_other() -> None:
    assert gap(making.tried(where=["left"], **TO_SPARE), making.unit(plug_exit=None)) == [
        ("depth", {"left"}, 115, None),
        ("depth", {"left"}, None, 158),
    ]


@pytest.mark.parametrize(
    ("reason", "expected"),
    [
        ("glass", [({"fixed", "down", "worst"}, 52, None), ({"worst"}, None, 58)]),
        ("depth", [({"fixed"}, 52, None), ({"fixed"}, None, 58)]),
        ("grille", [({""}, 1, None), ({""}, None, 7)]),
        ("width", []),
        (None, []),
    ],
)
def test_by_so_much_of_a_speaker_is_of_the_room_that_its_reason_names(reason: str | None, expected: Any) -> None:
    """By hand: 63 - 8 behind and 12 - 8 in front, each ± 1 and ± 2."""
    sizes = {"mounting_depth": "63 ± 1 mm", "basket": "141 ± 1 mm", "front_height": "12 ± 1 mm"}
    found = gap(making.tried(what="cone", sizes=sizes, reason=reason, **FELL_SHORT))
    assert [one[1:] for one in found] == expected


@pytest.mark.parametrize(
    ("more", "says"),
    [
        ({"cut": "the rib"}, True),
        ({"tabs": "out", "cut": "nothing"}, True),
        ({"cut": "nothing"}, False),
        ({"cut": None}, False),
    ],
)
def test_what_goes_in_on_a_condition_went_in_where_that_was_done(more: dict[str, Any], *, says: bool) -> None:
    on_a_condition = making.tried(verdict="goes in if", condition="something is done first", **more)
    assert bool(said(on_a_condition)) is says
