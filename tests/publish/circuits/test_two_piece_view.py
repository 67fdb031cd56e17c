from typing import Any

from bezelbook.publish.address import Links, head_unit_page, vehicle_page
from bezelbook.publish.circuits.two_piece_view import TwoPieces, two_piece_jobs
from bezelbook.reasoning.circuits.cars import cars_of
from bezelbook.reasoning.circuits.two_piece import fits_in
from tests.publish.pages_of import pages_about
from tests.reasoning.circuits.a_car import CAR, DASH, book, connector, plug_in, seen, tried, vehicle
from tests.reasoning.making import record

BAY = "boot-bay"
BARE = {"mounts": "none", "plugs": "on", "loom": "aside", "cut": "nothing"}
DISPLAY = record(
    "head_units",
    "display",
    {"name": "Thin face", "size_class": "two-piece display", "goes_with": ["box"], "cable": "2 m"},
)
BOX = record("head_units", "box", {"name": "Brick", "size_class": "two-piece box"})


def van(**more: Any) -> Any:
    bay = {"kind": "module bay", "side": "left"}
    return vehicle(places={DASH: {"kind": "plain opening", "side": "centre"}, BAY: bay, **more})


def test_the_job_stands_with_both_places_and_the_cable_where_somebody_saw_the_plug() -> None:
    base = book(van(), DISPLAY, BOX, seen("one"), plug_in())
    to = Links(vehicle_page(CAR), base)
    fits = fits_in(base)
    late = cars_of(base, base.vehicles[CAR], DASH, {"build": "late", "audio": "base"})[0]
    [job] = two_piece_jobs(late, fits, to)
    assert [(seat.piece, seat.place, seat.verdict) for seat in job.seats] == [
        ("Thin face", "dash centre", "Nobody has tried"),
        ("Brick", "boot bay", "Nobody has tried"),
    ]
    assert (job.title, job.cable) == ("Thin face, Brick", "2000 mm (78.74 in); never laid in this vehicle")
    assert job.looks[-1].what == "how long the way is from the display to the box"
    bay = cars_of(base, base.vehicles[CAR], BAY)[0]
    assert list(two_piece_jobs(bay, fits, to)) == []
    early = cars_of(base, base.vehicles[CAR], DASH, {"build": "early"})[0]
    assert list(two_piece_jobs(early, fits, to)) == []


def test_the_page_of_either_piece_has_every_car_whose_plug_was_seen() -> None:
    base = book(van(), DISPLAY, BOX, seen("one", splits={"build": "late"}), plug_in())
    both = TwoPieces(base)
    for unit in (DISPLAY, BOX):
        [line] = both.of(unit, Links(head_unit_page(unit.id), base))
        assert (line.vehicle, line.builds) == ("Small van", "late")
        assert "once the looks on its page are made" in line.verdict
        assert all(seat.at == "" for seat in line.seats)
    other = record("head_units", "other", {"name": "Other", "size_class": "double"})
    assert both.of(other, Links(head_unit_page("other"), base)) == ()
    assert TwoPieces(book(seen("one"))).of(other, Links(head_unit_page("other"), base)) == ()


def test_both_pages_show_it() -> None:
    pages = pages_about(van(), connector(), DISPLAY, BOX, seen("one", splits={"build": "late"}), plug_in())
    assert "Thin face, Brick:" in pages[vehicle_page(CAR)].text
    assert "Cable between the two" in pages[vehicle_page(CAR)].text
    for unit in ("display", "box"):
        assert "As a radio in two pieces" in pages[head_unit_page(unit)].text
        assert "boot bay" in pages[head_unit_page(unit)].text


def test_where_a_piece_has_no_place_no_leads_are_told() -> None:
    no = tried("no", what="display", verdict="does not", sure="dry-fitted", reason="depth", **BARE)
    base = book(van(), DISPLAY, BOX, seen("one"), plug_in(), no)
    late = cars_of(base, base.vehicles[CAR], DASH, {"build": "late", "audio": "base"})[0]
    [job] = two_piece_jobs(late, fits_in(base), Links(vehicle_page(CAR), base))
    assert (job.verdict, job.pieces, job.rows, job.looks) == ("the Thin face does not go in", (), (), ())
    assert [seat.piece for seat in job.seats] == ["Thin face", "Brick"]
