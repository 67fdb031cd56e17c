"""A question in the book's own terms: what is known of the car, and every way of fitting that it leaves open."""

import pytest

from bezelbook.reasoning.question import Question, asked, needs_asked, open_axes, usual_stacks
from tests.reasoning.making import (
    CAR,
    HOLE,
    book,
    frame,
    length,
    measured,
    mount,
    place,
    reading,
    record,
    resolved,
    split,
    stack,
    tried,
    unit,
    vehicle,
)

SPLITS = vehicle(
    splits={"build": {"values": {"early": {"years": [1]}, "late": {"years": [2]}}}, "hand": split("left", "right")}
)
MADE_FOR = {"made_for": [{"vehicle": CAR, "place": HOLE}]}


def test_what_is_usual_holds_where_nothing_is_said() -> None:
    found = resolved(book(unit()), unit="box")
    assert (found.cut, found.loom, found.plugs_on) == ("nothing", "aside", True)
    assert [one.key for one in found.stacks] == [()]


def test_what_is_said_of_the_state_counts() -> None:
    found = resolved(book(unit(), mount()), unit="box", cut="one rib", loom="behind", plugs="off", mounts=("kit",))
    assert (found.cut, found.loom, found.plugs_on) == ("one rib", "behind", False)
    assert [one.key for one in found.stacks] == [("kit",)]
    (only,) = found.settings
    assert (only.build, only.stack.key, only.cut, only.loom, only.plugs_on) == (
        (),
        ("kit",),
        "one rib",
        "behind",
        False,
    )


def test_what_the_split_or_the_year_tells_narrows_the_builds() -> None:
    of = book(SPLITS, unit())
    assert len(resolved(of, unit="box").builds) == 4
    late = resolved(of, unit="box", splits={"build": "late"})
    assert {dict(build)["build"] for build in late.builds} == {"late"}
    assert resolved(of, unit="box", year=2).builds == late.builds
    assert late.known == {"build": "late"}


def test_a_build_that_never_was_leaves_every_build_open() -> None:
    never = vehicle(splits={"build": split("early", "late")}, never_built=[{"build": "early"}])
    assert resolved(book(never, unit()), unit="box", splits={"build": "early"}).builds == ((("build", "late"),),)


def test_every_build_and_every_mounting_is_a_setting() -> None:
    of = book(SPLITS, unit(), mount("a", **MADE_FOR), mount("b", **MADE_FOR))
    assert len(resolved(of, unit="box").settings) == 8


def test_the_usual_mountings_are_those_seen_here_and_those_made_for_it() -> None:
    elsewhere = {"made_for": [{"vehicle": CAR, "place": "roof"}, {"vehicle": "big-van-1", "place": HOLE}]}
    notes = [
        tried("fitted", mounts=["b"]),
        tried("refused", mounts=["d"], verdict="does not"),
        tried("told", mounts=["e"], sure="told"),
        tried("strange", mounts=["nobody knows"]),
        tried("blank", mounts=None),
        measured("tape", reading("width", "182 mm"), mounts=["f"]),
    ]
    mounts = [mount("a", **MADE_FOR), mount("b"), mount("c", **elsewhere), mount("d"), mount("e"), mount("f")]
    of = book(unit(), *mounts, *notes)
    stacks = usual_stacks(frame(of), place(of).evidence, frame(of).builds)
    assert [one.key for one in stacks] == [("a",), ("b",), ("d",)]


def test_a_bare_fit_is_a_mounting_like_any_other() -> None:
    of = book(unit(), mount("a", **MADE_FOR), tried(mounts="none"))
    assert [one.key for one in usual_stacks(frame(of), place(of).evidence, frame(of).builds)] == [(), ("a",)]


def test_a_mount_made_for_another_build_is_no_way_to_fit_anything_in_this_one() -> None:
    for_late = {"made_for": [{"vehicle": CAR, "place": HOLE, "splits": {"build": "late"}}]}
    of = book(SPLITS, unit(), mount("a", **MADE_FOR), mount("b", **for_late), tried(mounts=["b"]))
    offered = {
        build: [stack.key for stack in resolved(of, unit="box", splits={"build": build}).stacks]
        for build in ("early", "late")
    }
    assert offered == {"early": [("a",)], "late": [("a",), ("b",)]}
    assert [stack.key for stack in resolved(of, unit="box").stacks] == [("a",), ("b",)]


def test_the_thing_asked_about_is_a_record_or_sizes_or_sizes_beside_a_record() -> None:
    of = book(unit())
    assert needs_asked(of, Question(CAR, HOLE, unit="box")).key == "head_unit:box"
    assert needs_asked(of, Question(CAR, HOLE, sizes={"depth": length("150 mm")})).asked == {"depth", "plug"}
    beside = needs_asked(of, Question(CAR, HOLE, unit="box", sizes={"depth": length("150 mm")}, exit="left"))
    assert (beside.key, beside.exit, beside.key_of("width")) == ("asked", "left", "head_unit:box")


def test_the_axes_still_open_are_those_that_bear_and_differ() -> None:
    car = vehicle(
        splits={
            "build": split("early", "late"),
            "hand": split("left", "right", bears_on={"subjects": ["room"]}),
            "audio": split("base", "upgraded", bears_on={"subjects": ["plug"]}),
        }
    )
    of = book(car, unit())
    assert open_axes(car, HOLE, resolved(of, unit="box").builds) == ("build", "hand")
    assert open_axes(car, HOLE, resolved(of, unit="box", splits={"build": "late"}).builds) == ("hand",)


def test_a_question_can_be_narrowed() -> None:
    of = book(unit(), mount())
    narrowed = resolved(of, unit="box").narrowed(stacks=(stack(of, "kit"),))
    assert [one.stack.key for one in narrowed.settings] == [("kit",)]


@pytest.mark.parametrize("unknown", ["x"])
def test_a_unit_that_is_not_in_the_book_is_no_question(unknown: str) -> None:
    of = book()
    with pytest.raises(KeyError):
        asked(frame(of), place(of).evidence, Question(CAR, HOLE, unit=unknown))
    assert record("shop", "shop", {"name": "s", "format": 1}).format == 1
