from bezelbook.kinds.record import Record
from tests.publish.pages_of import pages_about
from tests.publish.reading_html import Element
from tests.reasoning import making

PAGE = f"vehicles/{making.CAR}.md"
DOOR = {"kind": "door lower", "side": "left", "safety": "restraint near"}
OPENING = {"kind": "plain opening", "side": "centre", "name": "the hole"}


def page(*records: Record) -> Element:
    return pages_about(*records)[PAGE]


def test_its_splits_stand_with_their_tells() -> None:
    build = {
        "values": {"early": {"tell": "round vents", "years": [1, 2]}, "late": {"also": ["facelift"]}},
        "bears_on": {"subjects": ["room"]},
    }
    car = making.vehicle(splits={"build": build}, never_built=[{"build": "late"}])
    said = page(car).text
    for words in (
        "round vents",
        "Seen in model years 1, 2.",
        "Nobody has written how to tell.",
        "or facelift",
        "changes room",
        "Never built: late.",
    ):
        assert words in said


def test_every_place_has_its_part_of_the_page() -> None:
    places = {making.HOLE: OPENING, "front-door-left": DOOR}
    seen = making.record(
        "notes", "seen", {"form": "seen", "vehicle": making.CAR, "place": "front-door-left", "plug": "long 20"}
    )
    stray = making.tried("stray", place="no-such-place")
    whole = page(making.vehicle(places=places), making.unit(), seen, stray)
    assert [heading.text for heading in whole.all("h2")] == ["the hole", "front door left", "no such place", "Wiring"]
    assert "Restraint near. The vehicle's service information comes first" in whole.text
    assert "Notes name this place, and the vehicle does not list it." in whole.text
    assert {figure.attributes["id"] for figure in whole.all("figure", kind="said")} == {"note-seen", "note-stray"}


def test_what_a_note_says_stands_in_full_as_typed() -> None:
    note = making.tried(words="plenty left", sizes=None, author="rk", job="blue-monday")
    [figure] = page(making.unit(), note).all("figure", id="note-a-note")
    fields = {one.all("dt")[0].text: one.all("dd")[0].text for one in figure.all("div") if one.all("dt")}
    assert fields["job"] == "blue-monday"
    assert fields["words"] == "plenty left"
    assert fields["mounts"] == "none"


def test_a_note_that_waits_is_struck_through_with_the_reason() -> None:
    slip = making.tried("slip", what="borrowed", sizes={"depth": "6.5 mm"})
    [figure] = page(making.unit(), slip).all("figure", kind="aside")
    assert "waits until somebody reads it back" in figure.text


def test_an_opening_whose_notes_cannot_all_be_true_says_so() -> None:
    tape = making.measured("tape", making.reading("depth", "90 ± 3 mm"))
    assert "Some of the notes here cannot all be true." in page(making.unit(), making.tried(), tape).text
    assert "cannot all be true" not in page(making.unit(), making.tried()).text


def test_sisters_lead_to_their_pages_where_there_are_any() -> None:
    other = making.record(
        "vehicles", "other-van", {"name": "other van", "vehicle_class": "van", "generation": 1, "model_years": 2}
    )
    whole = page(making.vehicle(sisters=["other-van", "gone-van"]), other)
    assert [link.attributes["href"] for link in whole.all("a") if link.text == "other van"] == ["other-van.html"]
    assert "gone van" in whole.text


def test_pieces_that_come_off_carry_their_caution() -> None:
    whole = page(
        making.vehicle(
            trim={"left-pillar": {"side": "left", "safety": "restraint near"}, "strip": {"name": "wood strip"}}
        )
    )
    [pieces] = whole.all("ul", kind="trim")
    assert "left pillar left" in pieces.text
    assert "wood strip" in pieces.text
    assert "qualified person" in pieces.text


def test_where_nothing_is_known_it_says_so() -> None:
    said = page().text
    for words in ("No head unit is in the book yet.", "nobody knows yet", "Nobody has measured it.", "No notes yet."):
        assert words in said
