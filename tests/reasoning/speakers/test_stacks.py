"""Rings, brackets and plates in order."""

from bezelbook.knowledge_base import knowledge_base
from bezelbook.reasoning.speakers.gasket import gasket_named
from bezelbook.reasoning.speakers.stacks import BARE, hole_span, stack_of
from bezelbook.values.span import BLANK, UNKNOWN, Span
from tests.reasoning.making import record
from tests.reasoning.speakers.doors import book, foam, mount

MM = 1_000_000
OF = book(
    mount("ring", thickness="10 mm caliper"),
    mount("wide-ring", thickness="5 mm caliper", inner="145 ± 1 mm"),
    mount("bracket", mount_kind="bracket", tabs_in="127 mm caliper", tabs_out="143 mm caliper"),
    mount("plate", mount_kind="plate", thickness="6 mm caliper", inner="222 mm caliper", inner_short="152 mm caliper"),
    mount("takes", mount_kind="bracket", basket="141 mm caliper", basket_short="100 mm caliper"),
    mount("printed", mount_kind="bracket", inner="141 mm printed"),
    foam(),
)


def test_thicknesses_add_up_and_so_does_the_gasket() -> None:
    found = stack_of(OF, ("ring", "wide-ring"), gasket_named(OF, "foam"))
    assert found.offset == Span(16 * MM, 16 * MM)
    assert (found.key, found.mounts) == (("ring", "wide-ring", "+ foam"), ("ring", "wide-ring"))
    assert found.words == "ring and wide ring"
    assert BARE.words == "no mount"


def test_a_basket_goes_through_a_ring_and_through_what_is_under_it() -> None:
    found = stack_of(OF, ("wide-ring",))
    assert (found.holes, found.through, found.has_tabs) == ((("wide-ring", False),), True, False)
    found = stack_of(OF, ("bracket", "wide-ring"))
    assert (found.holes, found.through, found.has_tabs) == ((("bracket", True), ("wide-ring", False)), False, True)


def test_a_bracket_or_a_plate_takes_the_place_of_the_car_s_hole() -> None:
    found = stack_of(OF, ("wide-ring", "plate"))
    assert (found.holes, found.through) == ((("plate", False),), False)
    assert stack_of(OF, ("ring",)).through


def test_a_mount_that_the_book_does_not_know_may_be_anything() -> None:
    found = stack_of(OF, ("Some Ring",))
    assert (found.offset, found.through, found.strange) == (UNKNOWN, False, ("Some Ring",))
    assert found.holes == (('"some ring"', False),)
    assert hole_span(OF, '"some ring"', "long", None) == BLANK


def test_the_holes_of_mounts() -> None:
    assert hole_span(OF, "bracket", "short", "in") == Span(127 * MM, 127 * MM)
    assert hole_span(OF, "bracket", "long", "out") == Span(143 * MM, 143 * MM)
    assert hole_span(OF, "plate", "long", None) == Span(222 * MM, 222 * MM)
    assert hole_span(OF, "plate", "short", None) == Span(152 * MM, 152 * MM)
    assert hole_span(OF, "takes", "short", None) == Span(100 * MM, 100 * MM)
    assert hole_span(OF, "wide-ring", "short", None) == Span(144 * MM, 146 * MM)
    assert hole_span(OF, "ring", "long", None) == BLANK
    assert hole_span(OF, "printed", "long", None) == UNKNOWN


def test_a_mount_whose_tabs_were_measured_one_way_has_tabs() -> None:
    of = book(mount("out", mount_kind="bracket", tabs_out="143 mm caliper"))
    assert stack_of(of, ("out",)).has_tabs


def test_what_is_strange_stays_so_under_what_the_book_knows() -> None:
    found = stack_of(OF, ("ring", "Some Ring", "wide-ring"))
    assert found.strange == ("Some Ring",)
    assert found.words == 'ring and "some ring" and wide ring'


def test_the_hole_of_a_mount_has_the_error_of_the_house_s_caliper() -> None:
    of = knowledge_base((record("shop", "shop", {"name": "Shop", "format": 1}), mount("ring", inner="135 mm caliper")))
    assert hole_span(of, "ring", "long", None) == Span(134_800_000, 135_200_000)
