from typing import Any

from bezelbook.reasoning.circuits.jobs import REARS
from bezelbook.reasoning.circuits.two_piece import TwoPiece, fits_in, pairs, two_piece
from bezelbook.reasoning.unknowns import Missing
from tests.reasoning.circuits.a_car import CAR, DASH, LATE, book, car, plug_in, seen, tried, vehicle
from tests.reasoning.making import record

BAY = "boot-bay"
BARE = {"mounts": "none", "plugs": "on", "loom": "aside", "cut": "nothing"}
SIZES = {
    "body_width": "170 mm caliper",
    "body_height": "90 mm caliper",
    "body_depth": "30 mm caliper",
    "plug_exit": "centre",
    "plug_and_bend": "20 mm caliper",
}


def display(**content: Any) -> Any:
    plain = {"name": "Display", "size_class": "two-piece display", **SIZES}
    return record("head_units", "display", plain | content)


def box(**content: Any) -> Any:
    return record("head_units", "box", {"name": "Box", "size_class": "two-piece box", **SIZES} | content)


def van(**more: Any) -> Any:
    dash = {"kind": "plain opening", "side": "centre"}
    return vehicle(places={DASH: dash, BAY: {"kind": "module bay", "side": "left"}, **more})


def found(*records: Any) -> TwoPiece:
    own = car(van(), seen("one"), plug_in(), display(), box(goes_with=["display"]), *records)
    return two_piece(own, pairs(own.book)[0], fits_in(own.book))


def test_one_piece_naming_the_other_is_enough_and_only_a_display_and_a_box_make_a_pair() -> None:
    assert [(pair.display.id, pair.box.id) for pair in pairs(book(display(), box(goes_with=["display"])))] == [
        ("display", "box")
    ]
    assert len(pairs(book(display(goes_with=["box", "gone"]), box()))) == 1
    assert pairs(book(display(), box())) == ()
    assert (
        pairs(book(display(goes_with=["other"]), record("head_units", "other", {"name": "O", "size_class": "double"})))
        == ()
    )


def test_both_pieces_have_a_place_and_the_leads_a_chain() -> None:
    one = found()
    assert (one.front.piece.id, one.front.place) == ("display", DASH)
    assert [(seat.piece.id, seat.place) for seat in one.elsewhere] == [("box", BAY)]
    assert [piece.record.id for piece in one.chain.pieces] == ["plug-in"]
    assert one.stopped_by == ""
    assert (
        one.headline
        == "display: nobody has tried; box: nobody has tried; leads: complete, once the looks below are made"
    )


def test_the_leads_bring_what_the_radio_in_two_pieces_asks_for() -> None:
    one = found(display(needs=["reverse"]))
    extras = {need.circuit for need in one.chain.task.needs if not need.must} - set(REARS)  # type: ignore[union-attr]
    assert extras == {"reverse"}


def test_a_piece_that_certainly_has_no_place_stops_the_job() -> None:
    bare = {"verdict": "does not", "sure": "dry-fitted", "reason": "depth", **BARE}
    no = tried("no", what="display", **bare)
    assert found(no).stopped_by == "the Display does not go in"
    assert found(no).headline == "the Display does not go in; leads: complete, once the looks below are made"
    nowhere = tried("no", what="box", place=BAY, **bare)
    assert found(nowhere).stopped_by == "the Box goes in nowhere"


def test_the_likeliest_place_for_the_box_comes_first() -> None:
    places = {BAY: {"kind": "module bay", "side": "left"}, "glovebox": {"kind": "glovebox", "side": "right"}}
    went_in = tried("in", what="box", place="glovebox", job="a", **BARE)
    assert [seat.place for seat in found(van(**places), went_in).elsewhere] == ["glovebox", BAY]


def test_a_vehicle_without_another_opening_asks_where_the_box_would_go() -> None:
    one = found(vehicle())
    assert (one.elsewhere, one.stopped_by) == ((), "")
    assert one.headline == (
        "display: nobody has tried; box: no place for it yet; leads: complete, once the looks below are made"
    )
    assert one.unknown == (
        Missing(
            "where the Box would go: the vehicle lists no other opening",
            "look under the seats, behind the glovebox and beside the boot, 10 min",
            "whether the job can be done at all",
        ),
        Missing(
            "how long the way is from the display to the box",
            "lay a string along the way that the cable would take, clear of hinges and pedals, 5 min",
            "whether one cable reaches",
        ),
    )


def test_the_cable_reached_where_one_job_fitted_both() -> None:
    front = tried("front", what="display", job="a")
    behind = tried("behind", what="box", place=BAY, job="a")
    assert found(front, behind).reached == ("a",)
    assert found(front, behind).unknown == ()
    assert found(front, behind).cable_words == "nobody has measured how long it is; reached in a"
    again = (tried("front-b", what="display", job="b"), tried("behind-b", what="box", place=BAY, job="b"))
    assert found(front, behind, *again).cable_words.endswith("; reached in a, b")


def test_two_jobs_a_job_without_a_tag_or_one_that_was_not_fitted_show_nothing() -> None:
    front = tried("front", what="display", job="a")
    for behind in (
        tried("behind", what="box", place=BAY, job="b"),
        tried("behind", what="box", place=BAY),
        tried("behind", what="box", place=BAY, job="a", sure="dry-fitted"),
        tried("behind", what="box", place=BAY, job="a", verdict="goes in if", condition="a hole"),
        tried("behind", what="some box", place=BAY, job="a"),
    ):
        assert found(front, behind).reached == ()
    assert [one.what for one in found(front).unknown] == ["how long the way is from the display to the box"]


def test_the_length_of_the_cable_is_on_either_record() -> None:
    assert found(display(cable="2 m")).cable_words == "2000 mm (78.74 in); never laid in this vehicle"
    assert found(box(cable="2 m", goes_with=["display"])).cable_words.startswith("2000 mm")


def test_a_build_is_asked_about_as_itself() -> None:
    one = found()
    assert dict(one.chain.car.build) == LATE
    assert one.front.answer.question.vehicle == CAR
    assert one.front.answer.question.splits == LATE


def test_a_place_that_is_asked_about_twice_answers_the_same() -> None:
    own = car(van(), seen("one"), display(), box(goes_with=["display"]))
    fits = fits_in(own.book)
    assert fits(own, DASH, "display").plain() == fits(own, DASH, "display").plain()
