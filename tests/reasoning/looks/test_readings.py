from typing import Any

from bezelbook.kinds.record import Record
from bezelbook.reasoning.looks.readings import IMAGINED, TRIED, Unread, read_as, unread
from bezelbook.values.words import NINTHS
from tests.reasoning import making

MM = 1_000_000


def blank(*records: Record) -> dict[str, Unread]:
    found = unread(making.place(making.book(*records)), ())
    return {one.ninth or one.size: one for one in found}


def test_of_an_opening_that_nobody_read_everything_is_unread_within_the_usual() -> None:
    found = blank()
    assert set(found) == {"width", "height", *NINTHS}
    assert found["width"] == Unread("width", None, 40 * MM, 300 * MM)
    assert found["centre"] == Unread("depth", "centre", 60 * MM, 350 * MM)


def test_what_was_read_is_not_unread() -> None:
    note = making.measured("tape", making.reading("width", "190 ± 1 mm"), making.reading("depth", "150 ± 3 mm", "left"))
    assert set(blank(note)) == {"height", *NINTHS} - {"left"}


def test_what_went_in_or_did_not_bounds_what_may_still_be_read() -> None:
    deep = making.unit("deep", body_depth="170 ± 1 mm caliper")
    no = making.tried("no", what="deep", verdict="does not", reason="depth", where=["centre"], plugs="off")
    found = blank(making.unit(), deep, making.tried(), no)
    assert found["width"].least == 177 * MM
    assert found["left"].least == 109 * MM
    assert found["left"].most == 350 * MM


def test_readings_are_the_middles_of_equal_parts_of_what_is_open() -> None:
    one = Unread("depth", "left", 100 * MM, 200 * MM)
    said = [one.reading(number)["reads"] for number in range(TRIED)]
    assert said == [f"{middle} ± 1 mm" for middle in (110, 130, 150, 170, 190)]
    assert one.reading(0) == {"of": "depth", "reads": "110 ± 1 mm", "zones": ["left"], "datum": "sub-dash face"}


def test_the_note_is_one_that_somebody_could_write() -> None:
    car = making.vehicle(splits={"build": making.split("early", "late")})
    place = making.place(making.book(car))
    build = (("build", "late"),)
    note = read_as(place, build, unread(place, build), {"width": 0, "height": 1, "depth": 2})
    assert (note.id, note.vehicle, note.place, note.splits) == (IMAGINED, making.CAR, making.HOLE, {"build": "late"})
    assert [reading.reads.typed for reading in note.readings[:3]] == ["66 ± 1 mm", "92 ± 1 mm", "205 ± 1 mm"]


def test_a_size_that_only_one_reading_would_agree_with_is_not_worth_reading() -> None:
    small = making.unit(body_width="300 ± 1 mm caliper", body_height="20 ± 1 mm caliper")
    huge = making.tried(numbers="read back")
    found = blank(small, huge)
    assert found["width"].least == 299 * MM
    wide = making.unit(body_width="310 ± 1 mm caliper")
    assert "width" not in blank(wide, huge)


def test_a_reading_that_is_argued_over_was_read() -> None:
    assert "width" not in blank(
        making.unit(), making.tried(), making.measured("tape", making.reading("width", "90 ± 1 mm"))
    )


def test_of_two_accounts_the_roomier_says_how_much_may_be_read() -> None:
    units = [making.unit(f"u{depth}", body_depth=f"{depth} ± 1 mm caliper") for depth in (150, 160, 200)]
    no: dict[str, Any] = {"verdict": "does not", "reason": "depth", "where": ["centre"], "plugs": "off"}
    notes = [
        making.tried("yes", what="u160", plugs="off"),
        making.tried("short-no", what="u150", **no),
        making.tried("long-no", what="u200", **no),
    ]
    found = blank(*units, *notes)["centre"]
    assert (found.least, found.most) == (60 * MM, 201 * MM)


def test_where_enough_openings_were_read_a_reading_is_one_like_theirs() -> None:
    """As many readings inside as are imagined: each of them is imagined once, in order."""
    usual = tuple((150 + 7 * number) * MM for number in range(TRIED))
    size = Unread("depth", "centre", 100 * MM, 300 * MM, (*usual, 320 * MM))
    assert [size.reading(number)["reads"] for number in range(TRIED)] == [f"{one // MM} ± 1 mm" for one in usual]
