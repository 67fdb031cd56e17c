from bezelbook.kinds.record import Record
from bezelbook.publish.opening import Opening
from bezelbook.publish.strips import sections, strips, unknown_strips
from tests.publish.reading_html import parsed
from tests.reasoning import making

MM = 1_000_000


def opening(*records: Record) -> Opening:
    return Opening(making.book(*records), making.CAR, making.HOLE)


def test_there_is_a_strip_for_each_build_and_mount_of_which_anything_is_known(dash: Opening) -> None:
    [late] = strips(dash)
    assert late.title == "late, flush kit"
    assert late.words == "goes in up to 147 mm (5.79 in); does not from 153 mm (6.02 in) on"
    assert unknown_strips(dash) == ("early, flush kit",)


def test_what_was_tried_there_is_notched_into_it(dash: Opening) -> None:
    [late] = strips(dash)
    assert [(letter, notch.size // MM, notch.went_in, len(notch.words)) for letter, notch in late.notches] == [
        ("a", 110, True, 2),
        ("b", 170, False, 1),
    ]


def test_a_no_for_another_reason_than_depth_is_no_notch_in_the_depth() -> None:
    wide = making.tried("wide", verdict="does not", reason="width")
    unsaid = making.tried("unsaid", verdict="does not", what="deep")
    found = strips(opening(making.unit(), making.unit("deep", body_depth="170 mm caliper"), wide, unsaid))
    assert [notch.size // MM for strip in found for _, notch in strip.notches] == [170]


def test_what_was_tried_with_another_mount_is_not_notched_here() -> None:
    found = strips(opening(making.unit(), making.mount(), making.tried(), making.tried("b", mounts=["kit"])))
    assert {strip.title: len(strip.notches) for strip in found} == {"no mount": 1, "kit": 1}
    blank = strips(
        opening(making.unit(), making.tried(mounts=None), making.measured("m", making.reading("depth", "150 ± 3 mm")))
    )
    assert [strip.notches for strip in blank] == [()]


def test_width_and_height_are_said_beside_it() -> None:
    [strip] = strips(opening(making.roomy(), making.measured("m", making.reading("depth", "150 ± 3 mm"))))
    assert strip.others[0].startswith("width: goes in up to 189 mm")
    assert strip.others[1].startswith("height: goes in up to 119 mm")


def test_all_strips_of_a_place_have_one_scale() -> None:
    late = making.split("early", "late")
    found = strips(
        opening(
            making.vehicle(splits={"build": late}),
            making.measured("e", making.reading("depth", "150 ± 3 mm"), splits={"build": "early"}),
            making.measured("l", making.reading("depth", "300 ± 3 mm"), splits={"build": "late"}),
        )
    )
    ends = [parsed(strip.drawing).all("svg")[0].attributes["data-end"] for strip in found]
    assert ends == [str(340 * MM)] * 2


def test_the_nine_depths_stand_as_seen_from_the_seat(dash: Opening) -> None:
    [late] = sections(dash)
    assert late.title == "late"
    assert [[depth.ninth for depth, _, _ in row] for row in late.rows] == [
        ["upper-left", "upper", "upper-right"],
        ["left", "centre", "right"],
        ["lower-left", "lower", "lower-right"],
    ]
    assert late.rows[2][0][1:] == ("150 mm ± 3 mm", "5.91 in")


def test_a_build_that_nobody_measured_has_no_section() -> None:
    assert sections(opening()) == ()
