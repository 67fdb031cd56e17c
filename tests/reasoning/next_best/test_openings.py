from typing import Any

from bezelbook.kinds.record import Record
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.answer import Answer
from bezelbook.reasoning.next_best.desk import Desk
from bezelbook.reasoning.offer import Offer
from bezelbook.reasoning.question import Question
from bezelbook.values.quantity import read_quantity
from tests.reasoning import making
from tests.reasoning.circuits import a_car

HERE = [{"vehicle": making.CAR, "place": making.HOLE}]
NOTHING = "an adapter that is right here: the book has none"


EITHER = making.vehicle(splits={"build": making.split("early", "late")})
TWO = {name: {"kind": "plain opening", "side": "centre"} for name in (making.HOLE, "lower-pocket")}


def ask(of: KnowledgeBase, unit: str | None = "box", **more: Any) -> Answer:
    return Desk(of).opening(Question(making.CAR, making.HOLE, unit=unit, **more))


def offers(*records: Record, **question: Any) -> list[Offer]:
    return list(ask(making.book(*records), **question).instead)


def deep(named: str = "box", **content: Any) -> Record:
    return making.unit(named, body_depth="200 ± 1 mm caliper", **content)


def no(**content: Any) -> Record:
    return making.tried("no", verdict="does not", reason="depth", **content)


def test_a_shallower_one_that_was_fitted_there_is_offered_with_what_it_takes() -> None:
    kit = making.mount(made_for=HERE)
    yes = making.tried(what="short", mounts=["kit"])
    [offer] = offers(deep(), making.unit("short"), kit, yes, no(mounts=["kit"]))
    assert (offer.kind, offer.thing, offer.words) == ("another of its size", "short", "short, with kit")
    assert (offer.verdict, offer.sure, offer.witnesses) == ("goes in", "fitted", 1)
    assert offer.needs == ("kit", NOTHING)
    assert offer.buy == ("short", "kit")


def test_where_it_goes_in_for_certain_or_on_a_condition_nothing_else_is_offered() -> None:
    short, yes = making.unit("short"), making.tried(what="short")
    assert offers(making.unit(), short, yes, making.tried("own")) == []
    late = making.tried("late", splits={"build": "late"})
    found = ask(making.book(EITHER, making.unit(), short, late))
    assert (found.verdict, found.instead) == ("goes in if", ())


def test_where_nobody_has_tried_what_is_known_to_go_in_is_offered() -> None:
    found = ask(making.book(deep(), making.unit("short"), making.tried(what="short")))
    assert found.verdict == "nobody has tried"
    assert [one.thing for one in found.instead] == ["short"]


def test_what_may_go_in_on_a_condition_is_offered_with_it() -> None:
    late = making.tried(what="short", splits={"build": "late"})
    [offer] = offers(EITHER, deep(), making.unit("short"), late)
    assert (offer.verdict, offer.condition, offer.needs) == ("goes in if", "the build is late", (NOTHING,))


def test_what_is_sold_as_another_size_says_so_and_typed_sizes_have_none() -> None:
    single = making.unit("single", size_class="single")
    assert [one.kind for one in offers(deep(), single, making.tried(what="single"))] == ["of another size"]
    sizes = {"depth": read_quantity("200 mm", "length")}
    found = ask(making.book(deep(), single, making.tried(what="single")), None, sizes=sizes)
    assert [(one.kind, one.thing) for one in found.instead] == [("another one", "single")]


def test_a_proud_mount_is_offered_where_the_wish_was_for_a_flush_one() -> None:
    flush = making.mount("flush", made_for=HERE)
    proud = making.mount("proud", proud="60 ± 1 mm caliper", made_for=HERE)
    of = [making.unit(), flush, proud, no(mounts=["flush"]), making.tried("yes", mounts=["proud"])]
    [offer] = offers(*of, mounts=("flush",))
    assert (offer.kind, offer.words, offer.mounts, offer.thing) == ("another mount", "with proud", ("proud",), None)
    assert (offer.sure, offer.needs, offer.buy) == ("fitted", ("proud",), ("box", "proud"))
    assert offers(*of) == []


def test_each_other_mount_that_will_do_is_offered_by_itself() -> None:
    kits = [making.mount(name, made_for=HERE, proud="60 ± 1 mm caliper") for name in ("flush", "a", "b")]
    notes = [no(mounts=["flush"]), *(making.tried(f"with-{name}", mounts=[name]) for name in ("a", "b"))]
    found = offers(making.unit(), *kits, *notes, mounts=("flush",))
    assert [(one.words, one.mounts, one.buy) for one in found] == [
        ("with a", ("a",), ("box", "a")),
        ("with b", ("b",), ("box", "b")),
    ]


def test_another_mount_that_will_do_in_one_build_says_in_which() -> None:
    kits = [making.mount(name, made_for=HERE, proud="60 ± 1 mm caliper") for name in ("flush", "proud")]
    late = making.tried("late", mounts=["proud"], splits={"build": "late"})
    [offer] = offers(EITHER, making.unit(), *kits, no(mounts=["flush"]), late, mounts=("flush",))
    assert (offer.words, offer.verdict, offer.condition) == ("with proud", "goes in if", "the build is late")


def test_of_several_mounts_that_would_do_none_has_to_be_bought() -> None:
    kits = [making.mount(name, made_for=HERE, proud="flush") for name in ("a", "b")]
    yes = [making.tried(f"with-{name}", what="short", mounts=[name]) for name in ("a", "b")]
    [offer] = offers(deep(), making.unit("short"), *kits, *yes, no(mounts=["a"]))
    assert (offer.words, offer.mounts, offer.buy) == ("short, with a or b", (), ("short",))


def test_a_mount_that_was_made_for_elsewhere_is_not_offered() -> None:
    flush, proud = making.mount("flush", made_for=HERE), making.mount("proud", proud="60 ± 1 mm caliper")
    assert offers(making.unit(), flush, proud, no(mounts=["flush"]), mounts=("flush",)) == []


def test_another_opening_of_the_same_car_is_offered() -> None:
    two = making.vehicle(
        places={
            making.HOLE: {"kind": "plain opening", "side": "centre"},
            "pocket": {"kind": "plain opening", "side": "centre", "name": "lower pocket"},
            "roof-box": {"kind": "plain opening", "side": "centre"},
            "door": {"kind": "door lower", "side": "left"},
        }
    )
    [offer] = offers(two, making.unit(), no(), making.tried("yes", place="pocket"))
    assert (offer.kind, offer.words, offer.place) == ("another place", "in the lower pocket", "pocket")


def test_another_opening_is_offered_bare_whatever_mount_was_wished_for() -> None:
    kit, yes = making.mount(made_for=HERE), making.tried("yes", place="lower-pocket")
    found = offers(making.vehicle(places=TWO), making.unit(), kit, no(mounts=["kit"]), yes, mounts=("kit",))
    assert [(one.kind, one.words, one.mounts) for one in found] == [("another place", "in the lower pocket", ())]


def test_what_is_known_of_the_car_holds_for_its_other_openings_too() -> None:
    only_there = making.split("early", "late", bears_on={"places": ["lower-pocket"]})
    van = making.vehicle(places=TWO, splits={"build": only_there})
    of = [van, making.unit(), no(), making.tried("yes", place="lower-pocket", splits={"build": "late"})]
    [known], [blank] = offers(*of, splits={"build": "late"}), offers(*of)
    assert (known.verdict, known.condition) == ("goes in", "")
    assert (blank.verdict, blank.condition) == ("goes in if", "the build is late")


def test_keeping_the_radio_is_offered_for_the_build_that_was_said() -> None:
    tee = a_car.tee(ways={"accessory": "tapped"})
    base = a_car.book(making.shop(), deep(), no(), a_car.seen("one"), tee)
    found = Desk(base).opening(Question(a_car.CAR, a_car.DASH, unit="box", splits=a_car.LATE))
    assert [(one.kind, one.condition) for one in found.instead] == [
        ("keep the radio", "somebody looks at its wiring first")
    ]


def test_a_radio_in_two_pieces_is_promised_only_where_its_box_goes_in_too() -> None:
    two = making.vehicle(places={name: {"kind": "plain opening", "side": "centre"} for name in (making.HOLE, "pocket")})
    screen = making.unit("screen", size_class="two-piece display", goes_with=["brick", "gone"])
    brick = making.unit("brick", size_class="two-piece box", goes_with=["screen"])
    fitted = making.tried(what="screen")
    [offer] = offers(two, deep(), screen, brick, fitted)
    assert (offer.kind, offer.verdict) == ("in two pieces", "goes in if")
    assert offer.condition == "its box finds a place of its own, which nobody has tried here"
    assert offer.buy == ("screen", "brick")
    at_home = making.tried("box", what="brick", place="pocket")
    [offer] = offers(two, deep(), screen, brick, fitted, at_home)
    assert (offer.verdict, offer.needs[0]) == ("goes in", "brick with it, in the pocket")
    assert offer.buy == ("screen", "brick")
    sizes = {"depth": read_quantity("250 mm", "length")}
    kit, framed = making.mount(made_for=HERE, proud=None), making.tried("framed", what="screen", mounts=["kit"])
    [offer] = offers(two, deep(), screen, brick, kit, framed, no(), at_home, mounts=("kit",), sizes=sizes)
    assert (offer.words, offer.needs[0]) == ("screen, with kit", "brick with it, in the pocket")


def test_a_condition_of_the_screen_stands_beside_that_of_its_box() -> None:
    screen = making.unit("screen", size_class="two-piece display", goes_with=["brick"])
    brick = making.unit("brick", size_class="two-piece box")
    [offer] = offers(EITHER, deep(), screen, brick, making.tried(what="screen", splits={"build": "late"}))
    assert offer.condition == ("the build is late, and its box finds a place of its own, which nobody has tried here")


def test_instead_of_a_box_without_a_face_only_such_boxes_are_offered() -> None:
    other, plain = making.unit("other", size_class="two-piece box"), making.unit("short")
    notes = [making.tried("a", what="other"), making.tried("b", what="short"), no(what="brick")]
    bigger = making.unit("brick", size_class="two-piece box", body_depth="200 ± 1 mm caliper")
    assert [one.thing for one in offers(bigger, other, plain, *notes, unit="brick")] == ["other"]


def test_a_model_year_says_which_build_is_meant() -> None:
    both = {"values": {"early": {"years": [1]}, "late": {"years": [2, 3, 4, 5]}}}
    late = making.tried(what="short", splits={"build": "late"})
    [offer] = offers(making.vehicle(splits={"build": both}), deep(), making.unit("short"), late, year=3)
    assert offer.verdict == "goes in"


def test_a_hole_of_which_nobody_told_anything_is_not_offered_on_a_condition() -> None:
    two = making.vehicle(places={name: {"kind": "plain opening", "side": "centre"} for name in (making.HOLE, "pocket")})
    assert offers(two, deep(nose_width="170 mm caliper", nose_height="95 mm caliper"), no()) == []


def test_a_mount_with_which_it_does_not_go_in_either_is_no_offer() -> None:
    kits = [making.mount(name, made_for=HERE, proud="flush") for name in ("a", "b")]
    stopped = [
        making.tried(f"no-{name}", verdict="does not", reason="depth", mounts=[name], cut="nothing", loom="aside")
        for name in ("a", "b")
    ]
    assert [one for one in offers(deep(), *kits, *stopped, mounts=("a",)) if one.kind == "another mount"] == []
