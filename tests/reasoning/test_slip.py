"""Numbers that nobody meets in a shop, and what they were probably meant to be."""

import pytest

from bezelbook.reasoning.slip import slips
from tests.reasoning.making import measured, reading, record, tried

MM = 1_000_000


def typed(**sizes: str) -> tuple[tuple[str, tuple[tuple[str, int], ...]], ...]:
    """The slips in a tried note of these sizes: field and likely readings."""
    return tuple((slip.field, slip.readings) for slip in slips(tried(sizes=sizes)))


def test_six_and_a_half_millimetres_of_depth_were_inches() -> None:
    (slip,) = slips(tried("n", sizes={"depth": "6.5 mm caliper"}))
    assert (slip.note, slip.path, slip.typed) == ("n", ("sizes", "depth"), "6.5 mm caliper")
    assert slip.usual_mm == (20, 220)
    assert slip.readings == (("inches", 165_100_000), ("centimetres", 65 * MM))


def test_a_width_of_18_2_was_centimetres() -> None:
    assert typed(width="18.2 mm") == (("width", (("centimetres", 182 * MM),)),)


def test_what_a_slip_may_have_meant_reaches_to_the_usual_limits_and_no_further() -> None:
    assert typed(width="30 mm") == (("width", (("centimetres", 300 * MM),)),)
    assert typed(width="30.1 mm") == (("width", ()),)
    assert typed(width="1 mm") == (("width", ()),)
    assert typed(height="2.5 mm") == (("height", (("inches", 63_500_000), ("centimetres", 25 * MM))),)


def test_a_number_that_no_slip_explains_is_still_asked_about() -> None:
    assert typed(depth="500 mm") == (("depth", ()),)


@pytest.mark.parametrize(("depth", "asked"), [("20 mm", False), ("19.9 mm", True), ("220 mm", False), ("221 mm", True)])
def test_the_usual_limits_belong_to_the_usual(depth: str, *, asked: bool) -> None:
    assert bool(typed(depth=depth)) == asked


# Common practice, no source: what a shop meets, in millimetres, for a size of a thing.
THING_LIMITS = [
    ("depth", 20, 220),
    ("width", 40, 300),
    ("height", 25, 200),
    ("nose_width", 40, 300),
    ("nose_height", 25, 200),
    ("mounting_depth", 8, 200),
    ("cut_out", 30, 300),
    ("basket", 30, 300),
]
# Common practice, no source: likewise for a reading of a place.
PLACE_LIMITS = [
    ("depth", 60, 350),
    ("width", 40, 300),
    ("height", 45, 200),
    ("cut-out", 30, 300),
    ("cut-out long way", 30, 300),
    ("cut-out short way", 30, 300),
    ("bolt circle", 70, 320),
]


@pytest.mark.parametrize(("name", "low", "high"), THING_LIMITS)
def test_a_size_is_asked_about_beyond_either_limit(name: str, low: int, high: int) -> None:
    assert [bool(typed(**{name: f"{size} mm"})) for size in (low - 1, low, high, high + 1)] == [
        True,
        False,
        False,
        True,
    ]


@pytest.mark.parametrize(("of", "low", "high"), PLACE_LIMITS)
def test_a_reading_is_asked_about_beyond_either_limit(of: str, low: int, high: int) -> None:
    tried_out = [slips(measured("m", reading(of, f"{size} mm"))) for size in (low - 1, low, high, high + 1)]
    assert [bool(found) for found in tried_out] == [True, False, False, True]


def test_each_size_of_a_thing_has_its_own_limits() -> None:
    found = typed(width="39 mm", height="24 mm", nose_width="301 mm", nose_height="201 mm", plug_and_bend="3 mm")
    assert [field for field, _ in found] == ["width", "height", "nose width", "nose height"]


def test_each_reading_of_an_opening_is_looked_at_in_its_place() -> None:
    note = measured("m", reading("depth", "205 mm"), reading("depth", "8 mm"), reading("width", "182 mm"))
    (slip,) = slips(note)
    assert (slip.field, slip.path) == ("opening depth", ("readings", 1, "reads"))
    assert slip.readings == (("inches", 203_200_000), ("centimetres", 80 * MM))


def test_other_readings_have_no_usual_limits_here() -> None:
    assert slips(measured("m", reading("nose width", "1 mm"))) == ()


def test_nothing_is_asked_once_the_numbers_were_read_back() -> None:
    assert slips(tried(sizes={"depth": "6.5 mm"}, numbers="read back")) == ()
    assert slips(measured("m", reading("depth", "8 mm"), numbers="read back")) == ()


def test_a_note_without_numbers_has_no_slips() -> None:
    assert slips(tried()) == ()
    assert (
        slips(
            record("notes", "b", {"form": "bench", "part": "box", "readings": [{"of": "body_depth", "reads": "6 mm"}]})
        )
        == ()
    )


def test_a_speaker_s_sizes_and_its_hole_have_limits_too() -> None:
    assert typed(mounting_depth="2.5 mm", cut_out="5.5 mm", basket="141 mm") == (
        ("mounting depth", (("inches", 63_500_000), ("centimetres", 25 * MM))),
        ("cut out", (("inches", 139_700_000), ("centimetres", 55 * MM))),
    )
    note = measured(
        "m", reading("cut-out", "14.3 mm"), reading("bolt circle", "156 mm"), reading("hole spacing", "1 mm")
    )
    assert [(slip.field, slip.path, slip.readings) for slip in slips(note)] == [
        ("cut-out", ("readings", 0, "reads"), (("centimetres", 143 * MM),)),
    ]


@pytest.mark.parametrize(("holes", "asked"), [(4, True), (3, True), (2, False), (None, False)])
def test_holes_of_a_circle_are_not_a_few_millimetres_apart(holes: int | None, *, asked: bool) -> None:
    """Of circles of 70 to 320: sin 30° of the least, for six holes, and sin 60° of the largest, for three."""
    more = {"bolt_holes": {"count": holes}} if holes else {}
    for text in ("13.3 mm", "278 mm"):
        assert bool(slips(measured("m", reading("hole spacing", text), **more))) == asked
    for text in ("35 mm", "277 mm"):
        assert not slips(measured("m", reading("hole spacing", text), **more))
