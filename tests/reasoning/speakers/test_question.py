"""A question in the book's own terms."""

from bezelbook.reasoning.speakers.question import spacers
from tests.reasoning.speakers.doors import BUILDS, CAR, DOOR, book, car, foam, mount, place, resolved, roomy, tried

RINGS = (
    mount("ring", thickness="10 mm caliper"),
    mount("left-ring", thickness="8 mm caliper", handed="left"),
    mount("right-ring", thickness="8 mm caliper", handed="right"),
    mount("odd-ring"),
)


def test_blank_mounts_are_none_or_any_that_the_book_knows() -> None:
    made = mount("bracket", mount_kind="bracket", made_for=[{"vehicle": CAR, "place": DOOR}])
    other = mount("other", mount_kind="bracket", made_for=[{"vehicle": CAR, "place": "shelf"}])
    seen = tried(mounts=["bracket", "ring"])
    strange = tried("s", mounts=["a ring from somewhere"])
    found = resolved(book(*RINGS, made, other, seen, strange, roomy()))
    assert [stack.mounts for stack in found.stacks] == [
        (),
        ("bracket",),
        ("bracket", "ring"),
        ("left-ring",),
        ("ring",),
    ]
    assert found.any_mount
    assert found.mount_words.startswith("no mount, bracket, bracket and ring")


def test_a_mount_for_another_build_is_no_way_to_fit_it() -> None:
    made = mount("b", mount_kind="bracket", made_for=[{"vehicle": CAR, "place": DOOR, "splits": {"build": "late"}}])
    of = book(car(splits=BUILDS), made)
    assert [stack.mounts for stack in resolved(of, splits={"build": "early"}).stacks] == [()]
    assert [stack.mounts for stack in resolved(of, splits={"build": "late"}).stacks] == [(), ("b",)]


def test_named_mounts_are_the_only_ones() -> None:
    found = resolved(book(*RINGS), mounts=("ring",))
    assert [stack.mounts for stack in found.stacks] == [("ring",)]
    assert not found.any_mount


def test_tabs_that_nobody_spoke_of_may_be_in_or_out() -> None:
    of = book(mount("bracket", mount_kind="bracket", tabs_in="120 mm caliper", tabs_out="140 mm caliper"))
    assert [setting.tabs for setting in resolved(of, mounts=("bracket",)).settings] == ["in", "out"]
    assert [setting.tabs for setting in resolved(of, mounts=("bracket",), tabs="out").settings] == ["out"]
    assert [setting.tabs for setting in resolved(of, mounts=()).settings] == ["in"]


def test_every_build_left_open_is_a_setting() -> None:
    of = book(car(splits=BUILDS))
    assert len(resolved(of, mounts=()).settings) == 2
    assert resolved(of, mounts=(), splits={"build": "late"}).known == {"build": "late"}


def test_a_gasket_sits_on_every_stack() -> None:
    found = resolved(book(*RINGS, foam()), gasket="foam")
    assert {stack.gasket.key for stack in found.stacks} == {"foam"}


def test_the_rings_for_a_side() -> None:
    of = book(*RINGS)
    assert [ring.id for ring in spacers(place(of))] == ["left-ring", "ring"]
    assert [ring.id for ring in spacers(place(of, "boot"))] == ["ring"]


def test_a_mount_that_only_a_reading_was_made_on_is_no_usual_one() -> None:
    bracket = mount("b", mount_kind="bracket", inner="140 mm caliper", thickness="1 mm caliper")
    read = resolved(book(bracket, roomy(mounts=["b"])))
    fitted = resolved(book(bracket, tried(mounts=["b"])))
    assert [stack.mounts for stack in read.stacks] == [()]
    assert [stack.mounts for stack in fitted.stacks] == [(), ("b",)]


def test_a_model_year_names_the_build_that_it_belongs_to() -> None:
    years = {"build": {"values": {"early": {"years": [1]}, "late": {"years": [2]}}}}
    found = resolved(book(car(splits=years)), year=2)
    assert (found.known, found.builds) == ({"build": "late"}, ((("build", "late"),),))
