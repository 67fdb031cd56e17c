from typing import Any

from bezelbook.kinds.record import Record
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.answer import Answer
from bezelbook.reasoning.next_best.desk import Desk
from bezelbook.reasoning.offer import Offer
from bezelbook.reasoning.question import Question
from bezelbook.values.quantity import read_quantity
from tests.reasoning import making

HERE = [{"vehicle": making.CAR, "place": making.HOLE}]
NOTHING = "an adapter that is right here: the book has none"


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
    either = making.vehicle(splits={"build": making.split("early", "late")})
    late = making.tried("late", splits={"build": "late"})
    found = ask(making.book(either, making.unit(), short, late))
    assert (found.verdict, found.instead) == ("goes in if", ())


def test_where_nobody_has_tried_what_is_known_to_go_in_is_offered() -> None:
    found = ask(making.book(deep(), making.unit("short"), making.tried(what="short")))
    assert found.verdict == "nobody has tried"
    assert [one.thing for one in found.instead] == ["short"]


def test_what_may_go_in_on_a_condition_is_offered_with_it() -> None:
    either = making.vehicle(splits={"build": making.split("early", "late")})
    late = making.tried(what="short", splits={"build": "late"})
    [offer] = offers(either, deep(), making.unit("short"), late)
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


def test_a_radio_in_two_pieces_is_promised_only_where_its_box_goes_in_too() -> None:
    two = making.vehicle(places={name: {"kind": "plain opening", "side": "centre"} for name in (making.HOLE, "pocket")})
    screen = making.unit("screen", size_class="two-piece display", goes_with=["brick", "gone"])
    brick = making.unit("brick", size_class="two-piece box", goes_with=["screen"])
    fitted = making.tried(what="screen")
    [offer] = offers(two, deep(), screen, brick, fitted)
    assert (offer.kind, offer.verdict) == ("in two pieces", "goes in if")
    assert offer.condition == "its box finds a place of its own, which nobody has tried here"
    assert offer.buy == ("screen", "brick")
    [offer] = offers(two, deep(), screen, brick, fitted, making.tried("box", what="brick", place="pocket"))
    assert (offer.verdict, offer.needs[0]) == ("goes in", "brick with it, in the pocket")


def test_a_condition_of_the_screen_stands_beside_that_of_its_box() -> None:
    either = making.vehicle(splits={"build": making.split("early", "late")})
    screen = making.unit("screen", size_class="two-piece display", goes_with=["brick"])
    brick = making.unit("brick", size_class="two-piece box")
    [offer] = offers(either, deep(), screen, brick, making.tried(what="screen", splits={"build": "late"}))
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
