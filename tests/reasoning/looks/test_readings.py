from typing import Any

from bezelbook.kinds.record import Record
from bezelbook.reasoning.looks.readings import (
    STEPS,
    TRIED,
    Unread,
    likely_lengths,
    limits_mm,
    numbered,
    one_of_likely,
    unread,
)
from bezelbook.values.words import NINTHS
from tests.reasoning import making

MM = 1_000_000
BEZEL = making.vehicle(places={making.HOLE: {"kind": "opening behind a bezel", "side": "centre"}})


def blank(*records: Record) -> dict[str, Unread]:
    found = unread(making.place(making.book(*records)), ())
    return {one.ninth or one.size: one for one in found}


def test_of_an_opening_that_nobody_read_everything_is_unread_within_the_usual() -> None:
    found = blank()
    assert set(found) == {"width", "height", *NINTHS}
    assert found["width"] == Unread("width", None, 40 * MM, 300 * MM)
    assert (found["centre"].ninth, found["centre"].least, found["centre"].most) == ("centre", 60 * MM, 350 * MM)


def test_behind_a_bezel_its_own_hole_is_unread_too() -> None:
    assert set(blank(BEZEL)) == {"width", "height", "nose width", "nose height", *NINTHS}
    assert [limits_mm(need) for need in ("nose width", "width", "depth")] == [(40, 300), (40, 300), (60, 350)]


def test_a_nose_that_only_a_note_speaks_of_is_nothing_that_the_car_frames() -> None:
    assert "nose width" not in blank(making.unit(), making.tried(verdict="does not", reason="nose"))


def test_what_was_read_to_a_few_millimetres_is_not_unread() -> None:
    note = making.measured("tape", making.reading("width", "190 ± 1 mm"), making.reading("depth", "150 ± 2 mm", "left"))
    assert set(blank(note)) == {"height", *NINTHS} - {"left"}


def test_what_was_read_coarsely_is_worth_reading_again_within_what_it_left() -> None:
    found = blank(making.measured("tape", making.reading("width", "190 ± 3 mm")))
    assert (found["width"].least, found["width"].most) == (187 * MM, 193 * MM)


def test_what_went_in_or_did_not_bounds_what_may_still_be_read() -> None:
    deep = making.unit("deep", body_depth="170 ± 1 mm caliper")
    no = making.tried("no", what="deep", verdict="does not", reason="depth", where=["centre"], plugs="off")
    found = blank(making.unit(), deep, making.tried(), no)
    assert found["width"].least == 177 * MM
    assert found["left"].least == 109 * MM
    assert found["left"].most == 350 * MM


def test_readings_are_the_middles_of_equal_parts_of_what_is_open() -> None:
    read = [one_of_likely((), 100 * MM, 240 * MM, number) for number in range(TRIED)]
    assert read == [length * MM for length in (110, 130, 150, 170, 190, 210, 230)]
    assert [one_of_likely((), 1, 101, number) for number in (0, 1)] == [8, 22]  # whole nanometres


def test_where_enough_likely_lengths_are_possible_one_of_those_is_read() -> None:
    """As many of them inside as are imagined: each of them is imagined once, in order."""
    likely = tuple((150 + 7 * number) * MM for number in range(TRIED))
    read = [one_of_likely((*likely, 320 * MM), 100 * MM, 300 * MM, number) for number in range(TRIED)]
    assert tuple(read) == likely
    assert one_of_likely(likely[:2], 100 * MM, 300 * MM, 3) == 200 * MM
    assert one_of_likely(likely[:3], 100 * MM, 300 * MM, 3) == likely[1]


def test_a_likely_length_at_the_very_end_of_what_is_possible_is_not_read() -> None:
    likely = tuple(length * MM for length in (100, 120, 150, 170, 200))
    read = {one_of_likely(likely, 100 * MM, 200 * MM, number) for number in range(TRIED)}
    assert read == set(likely[1:-1])


def test_each_reading_comes_once_and_no_two_sizes_are_at_their_least_together() -> None:
    numbers = {size: [numbered(size, number) for number in range(TRIED)] for size in STEPS}
    assert all(sorted(found) == list(range(TRIED)) for found in numbers.values())
    assert len({found.index(0) for found in numbers.values()}) == len(STEPS)


def test_a_reading_is_within_half_a_millimetre_by_caliper_and_a_millimetre_by_gauge() -> None:
    for size, give in (("width", MM // 2), ("depth", MM)):
        spans = [Unread(size, None, 100 * MM, 240 * MM).reading(number) for number in range(TRIED)]
        assert {(span.high or 0) - (span.low or 0) for span in spans} == {2 * give}
        assert min((span.high or 0) - give for span in spans) == 110 * MM


def test_an_opening_is_likely_a_little_larger_than_boxes_of_the_book() -> None:
    base = making.book(making.unit(body_width="178 ± 1 mm caliper"), making.unit("blank", body_width=None))
    assert likely_lengths(base, "width") == tuple(length * MM for length in (176, 179, 182, 185, 188))
    assert likely_lengths(making.book(), "width") == ()
    depths = likely_lengths(base, "depth")
    assert (depths[0], depths[-1]) == (120 * MM, 239 * MM)


def test_a_size_that_only_one_reading_would_agree_with_is_not_worth_reading() -> None:
    small = making.unit(body_width="300 ± 1 mm caliper", body_height="20 ± 1 mm caliper")
    huge = making.tried(numbers="read back")
    found = blank(small, huge)
    assert found["width"].least == 299 * MM
    full = making.unit(body_width="301 ± 1 mm caliper")
    assert "width" not in blank(full, huge)
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


def test_where_one_account_leaves_it_endless_no_other_says_how_much_may_be_read() -> None:
    units = [making.unit(f"u{depth}", body_depth=f"{depth} ± 1 mm caliper") for depth in (150, 160)]
    no = making.tried("no", what="u150", verdict="does not", reason="depth", where=["centre"], plugs="off")
    found = blank(*units, making.tried("yes", what="u160", plugs="off"), no)["centre"]
    assert (found.least, found.most) == (60 * MM, 350 * MM)


def test_likely_lengths_are_whole_nanometres() -> None:
    base = making.book(making.unit(body_width="178 ± 1 mm caliper"))
    assert {type(length) for length in likely_lengths(base, "width")} == {int}


def test_what_was_read_closely_in_another_build_is_half_of_what_is_likely_in_this_one_while_it_is_possible() -> None:
    car = making.vehicle(splits={"build": making.split("early", "late")})
    readings = making.reading("depth", "142 ± 1 mm"), making.reading("width", "190 ± 3 mm")
    early = making.measured("early", *readings, splits={"build": "early"})

    def late(*records: Record) -> dict[str, tuple[int, ...]]:
        place = making.place(making.book(car, *records))
        return {one.ninth or one.size: one.likely for one in unread(place, (("build", "late"),))}

    usual = [length * MM for length in range(120, 240)]
    assert late()["left"] == tuple(usual)
    assert late(early)["left"] == tuple(sorted(usual + len(usual) * [142 * MM]))
    assert {type(length) for length in late(early)["left"]} == {int}
    assert late(early)["width"] == ()
    deep = making.unit(body_width=None, body_height=None, body_depth="150 ± 1 mm caliper")
    fitted = making.tried(what="box", splits={"build": "late"}, plugs="off")
    assert late(early, deep, fitted)["left"] == tuple(usual)
