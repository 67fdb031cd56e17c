from pathlib import Path

import pytest

from bezelbook.kinds.record import Record
from bezelbook.pipeline import knowledge_of
from bezelbook.publish.page_text import bodies
from bezelbook.publish.pages import site_files
from tests.publish import hostile
from tests.publish.pages_of import pages_about
from tests.publish.reading_html import Element, parsed
from tests.reasoning import making
from tests.reasoning.order import trim

PAGE = f"vehicles/{making.CAR}/removal.md"
DOOR = {"kind": "door lower", "side": "left", "safety": "restraint near"}
OPENING = {"kind": "plain opening", "side": "centre", "name": "the hole", "safety": "none"}
PLACES = {
    making.HOLE: OPENING,
    "door": DOOR,
    "shelf": {"kind": "parcel shelf", "side": "left"},
    "whole-car": {"kind": "whole vehicle", "side": "centre"},
}


def page(*records: Record) -> Element:
    return pages_about(*records)[PAGE]


def test_every_place_can_be_picked_and_the_vehicle_as_a_whole_cannot() -> None:
    whole = page(trim.car("strip", places=PLACES), trim.seen("a", pieces=["strip"]), trim.seen("b", place="nowhere"))
    [nav] = whole.all("nav")
    links = [(link.text, link.attributes["href"]) for link in nav.all("a")]
    assert links == [
        ("The hole", "#place-dash-centre"),
        ("Door", "#place-door"),
        ("Shelf", "#place-shelf"),
        ("Nowhere", "#place-nowhere"),
    ]
    assert [one.text for one in nav.all("span", kind="glance")] == [
        "1 strip",
        "restraint near: stop",
        "nobody wrote it",
        "nobody wrote it",
    ]
    for _, at in links:
        assert len(whole.all(id=at.removeprefix("#"))) == 1


def test_a_place_nobody_wrote_of_is_a_gap_with_its_caution() -> None:
    whole = page(trim.car("strip", places=PLACES))
    [gaps] = whole.all("ul", kind="list")
    [door] = gaps.all("li", id="place-door")
    assert "Restraint near: stop." in door.text
    [shelf] = gaps.all("li", id="place-shelf")
    assert "Nobody wrote whether anything near could hurt someone" in shelf.text
    [hole] = gaps.all("li", id="place-dash-centre")
    assert "hurt" not in hole.text
    assert "What to do now: Leave it on" in door.text
    assert "note it piece by piece as it comes off, 3 minutes" in whole.text


def test_the_steps_are_numbered_in_the_order_in_which_the_pieces_come_off() -> None:
    note = trim.seen("a", pieces=[trim.first("bezel", "strip"), "strip"])
    steps = page(trim.car("strip", "bezel", places=PLACES), note).all("li", kind="step")
    assert [step.all("p", kind="piece")[0].text for step in steps] == ["1 Strip", "2 Bezel"]


def test_cautions_come_before_the_drawing_and_the_steps() -> None:
    car = trim.car(places=PLACES, trim={"strip": {"safety": "stored energy"}, "bezel": {}})
    [removal] = page(car, trim.seen("a", pieces=["strip", trim.first("bezel", "strip")])).all("section")
    kinds = [one.attributes.get("class", one.name) for one in removal.inside if isinstance(one, Element)]
    assert kinds.index("caution") < kinds.index("stack") < kinds.index("steps")
    assert "Stored energy: stop." in removal.text
    assert "whether anything that could hurt someone is near bezel" in removal.text


def test_builds_that_differ_have_an_order_each_with_their_tell() -> None:
    split = {"values": {"early": {"tell": "Round vents."}, "late": {}}}
    note = trim.seen("a", pieces=["strip"], splits={"build": "early"}, shares_screw=["strip", "lid"])
    early, late = page(trim.car("strip", splits={"build": split}), note).all("section")
    assert "If it is: early" in early.text
    assert "Round vents." in early.text
    assert "Nobody wrote what comes off first." in late.text


def test_the_vehicle_s_page_leads_there_and_back() -> None:
    pages = pages_about(trim.car("strip"))
    at = [link.attributes["href"] for link in pages[f"vehicles/{making.CAR}.md"].all("a")]
    assert f"{making.CAR}/removal.html" in at
    assert f"../{making.CAR}.html" in [link.attributes["href"] for link in pages[PAGE].all("a")]


def test_the_vehicle_s_page_says_in_a_line_what_comes_off_first() -> None:
    whole = pages_about(trim.car("strip", places=PLACES), trim.seen("a", pieces=["strip"]))[f"vehicles/{making.CAR}.md"]
    [first_off] = whole.all("ul", kind="first-off")
    [link] = first_off.all("a")
    assert (link.text, link.attributes["href"]) == ("The hole", f"{making.CAR}/removal.html#place-{making.HOLE}")
    assert [one.text for one in first_off.all("span", kind="glance")] == ["1 strip"]


def test_a_vehicle_without_places_has_a_page_all_the_same() -> None:
    whole = page(making.vehicle(places={}))
    assert whole.all("nav") == []
    assert whole.all("section") == []


def test_the_trade_s_own_boot_can_be_followed(books: Path) -> None:
    files = site_files(knowledge_of(books / "trim"))
    whole = parsed(bodies(files)["vehicles/large-sedan-2/removal.md"])
    boot = next(section for section in whole.all("section") if "boot lining" in section.text)
    for words in (
        "Tab behind the seal.",
        "A hook along the front edge.",
        "7 or 6 × Push rivet, the notes differ, so have 7 ready",
        "Ten on a swivel (swivel) – not here: Powered driver.",
        "Odd one: One goes up behind.",
        "Restraint near: stop.",
        "inward, then rearward",
        "swivel: a joint, so that the socket may stand at an angle.",
        "Module ground before the lining.",
        "One of two jobs listed the seat-back bolster",
    ):
        assert words in boot.text


def test_what_an_author_types_is_text_wherever_it_stands() -> None:
    words = hostile.words
    off = {
        "piece": "strip",
        "hidden": words(0),
        "hooks": words(8),
        "refit": words(1),
        "plugs": [words(7)],
        "fasteners": [{"kind": words(0), "where": words(1), "odd_one": words(2), "count": 3}],
        "tools": [{"tool": words(3), "not_here": words(8)}],
    }
    note = trim.seen("a", hidden=words(8), fasteners=[words(0)], words=words(8), pieces=[off, "gone"])
    whole = page(*hostile.records(), note)
    assert whole.all("script") == []
    assert whole.all("img") == []
    assert '<script>document.title = "taken"</script>' in whole.text


@pytest.mark.parametrize("word", ["review", "approve", "resolve", "dashboard", "score", "severity"])
def test_the_page_speaks_as_the_shop_does(demo_pages: dict[str, Element], word: str) -> None:
    pages = [page for path, page in demo_pages.items() if path.endswith("/removal.md")]
    assert pages
    assert all(word not in page.text.lower() for page in pages)


def test_a_place_nobody_wrote_of_points_at_its_written_twin_unless_a_restraint_is_near() -> None:
    side = {"kind": "parcel shelf", "side": "left"}
    places = {
        "shelf-left": {**side, "other_side": "shelf-right"},
        "shelf-right": {**side, "side": "right", "other_side": "shelf-left"},
        "door-left": {**DOOR, "other_side": "door-right"},
        "door-right": {**DOOR, "side": "right", "other_side": "door-left"},
    }
    car = trim.car("board", places=places)
    door = {"piece": "board", "safety": "restraint near"}
    notes = (trim.seen("a", place="shelf-left", pieces=["strip"]), trim.seen("b", place="door-left", pieces=[door]))
    [gaps] = page(car, *notes).all("ul", kind="list")
    [shelf] = gaps.all("li", id="place-shelf-right")
    assert ("#place-shelf-left", "shelf left") in [(one.attributes["href"], one.text) for one in shelf.all("a")]
    [door_right] = gaps.all("li", id="place-door-right")
    assert "twin" not in door_right.text


def test_two_sides_that_are_both_written_point_at_each_other_as_a_hint() -> None:
    side = {"kind": "parcel shelf", "side": "left"}
    places = {
        "shelf-left": {**side, "other_side": "shelf-right"},
        "shelf-right": {**side, "side": "right", "other_side": "shelf-left"},
    }
    notes = [trim.seen(place, place=place, pieces=["board"]) for place in places]
    left, right = page(trim.car("board", places=places), *notes).all("details", kind="target")
    assert "The other side is written too: shelf right." in left.text
    assert "The other side is written too: shelf left." in right.text


def test_clips_that_nobody_counted_are_said_to_be_uncounted() -> None:
    off = {"piece": "strip", "fasteners": ["clip"]}
    [box] = page(trim.car("strip", places=PLACES), trim.seen("a", pieces=[off])).all("div", kind="lay-out")
    assert "clip: nobody counted how many come off." in box.text
    assert "Order:" not in box.text


def test_what_to_lay_out_stands_before_the_first_step() -> None:
    off = {"piece": "strip", "fasteners": [{"kind": "clip", "count": 6}], "tools": ["flat pry"]}
    [target] = page(trim.car("strip", places=PLACES), trim.seen("a", pieces=[off])).all("details", kind="target")
    assert target.text.index("Lay out before you start") < target.text.index("Strip")
    [box] = target.all("div", kind="lay-out")
    assert "flat pry" in box.text
    assert "clip: 6 come off" in box.text


def test_with_nothing_but_restraints_near_there_is_the_caution_and_what_to_do_and_no_more() -> None:
    off = {"piece": "strip", "safety": "restraint near", "took": "4 min", "fasteners": ["clip"], "tools": ["flat pry"]}
    [target] = page(trim.car("strip"), trim.seen("a", pieces=[off], words="Pull.")).all("details", kind="target")
    for words in ("Lay out", "flat pry", "clip", "Putting it back", "4 min", "Pull."):
        assert words not in target.text
    assert "What to do now: Leave it on" in target.text


def test_the_first_place_is_open_and_so_is_a_stop_and_the_others_are_folded() -> None:
    door = {"piece": "lining", "safety": "restraint near"}
    notes = (
        trim.seen("a", pieces=["strip"]),
        trim.seen("b", place="door", pieces=[door]),
        trim.seen("c", place="shelf", pieces=["strip"]),
    )
    folds = page(trim.car("strip", places=PLACES), *notes).all("details", kind="target")
    assert ["open" in fold.attributes for fold in folds] == [True, True, False]


def test_what_is_said_of_the_whole_car_stands_before_the_first_place() -> None:
    whole = page(trim.car("strip", places=PLACES, supply="high voltage present"), trim.seen("a", pieces=["strip"]))
    assert whole.text.index("High voltage near: stop.") < whole.text.index("The hole")
