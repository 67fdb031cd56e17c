from typing import Any

from bezelbook.kinds.record import Record
from bezelbook.reasoning.next_best.desk import Desk
from bezelbook.reasoning.offer import Offer
from bezelbook.reasoning.speakers.question import SpeakerQuestion
from bezelbook.values.quantity import read_quantity
from tests.reasoning.speakers import doors

NEAR = "restraint near: the vehicle's service information comes first, and a qualified person"
BUILDS = doors.car(splits=doors.BUILDS)


def offers(*records: Record, where: str = doors.DOOR, **more: Any) -> list[Offer]:
    question = SpeakerQuestion(doors.CAR, where, **{"speaker": "six", **more})
    return list(Desk(doors.book(*records)).speaker(question).instead)


def deep(**content: Any) -> Record:
    return doors.speaker("deep", mounting_depth="90 mm caliper", **content)


def test_a_shallower_speaker_that_goes_in_is_offered() -> None:
    [offer] = offers(deep(), doors.roomy(), speaker="deep")
    assert (offer.kind, offer.thing, offer.words, offer.verdict) == ("another of its size", "six", "six", "goes in")
    assert (offer.sure, offer.condition, offer.buy) == ("worked out", "", ("six",))
    assert offer.needs == (NEAR,)


def test_nothing_is_offered_where_it_goes_in() -> None:
    assert offers(deep(), doors.roomy()) == []


def test_another_sort_of_speaker_is_no_answer_to_the_wish() -> None:
    assert offers(deep(speaker_kind="subwoofer"), doors.roomy(), speaker="deep") == []


def test_one_that_is_sold_as_another_size_says_so_and_typed_sizes_have_none() -> None:
    assert [one.kind for one in offers(deep(nominal="6x9"), doors.roomy(), speaker="deep")] == ["of another size"]
    sizes = {"mounting_depth": read_quantity("90 mm", "length")}
    assert [one.kind for one in offers(doors.roomy(), speaker=None, sizes=sizes)] == ["another one"]


def test_another_ring_is_offered_where_the_wish_was_for_one_that_will_not_do() -> None:
    rings = [doors.mount(f"ring-{thick}", thickness=f"{thick} mm caliper") for thick in (2, 8)]
    [offer] = offers(*rings, doors.roomy(glass="55 ± 1 mm"), mounts=("ring-2",))
    assert (offer.kind, offer.words, offer.mounts) == ("another mount", "with ring 8", ("ring-8",))
    assert offer.buy == ("six", "ring 8")
    assert offers(*rings, doors.roomy(glass="55 ± 1 mm")) == []


def test_another_place_is_offered_but_not_the_other_side_of_the_same() -> None:
    no = doors.tried(verdict="does not", reason="depth")
    yeses = [doors.tried(name, place=name) for name in (doors.OTHER, doors.SHELF)]
    [offer] = offers(no, *yeses)
    assert (offer.kind, offer.place, offer.words) == ("another place", doors.SHELF, "in the shelf")
    assert offer.buy == ("six",)


def test_another_place_is_offered_bare_in_the_build_in_which_it_is_known_to_do() -> None:
    places = {
        doors.DOOR: {"kind": "door lower", "side": "left"},
        "rear-shelf": {"kind": "parcel shelf", "side": "left"},
    }
    van = doors.car(places=places, splits=doors.BUILDS)
    no = doors.tried(verdict="does not", reason="depth", mounts=["bracket"])
    yes = doors.tried("yes", place="rear-shelf", splits={"build": "late"})
    [offer] = offers(van, doors.mount("bracket", mount_kind="bracket"), no, yes, mounts=("bracket",))
    assert (offer.words, offer.mounts) == ("in the rear shelf", ())
    assert (offer.verdict, offer.condition) == ("goes in if", "the build is late")


def test_what_goes_in_in_one_build_says_in_which() -> None:
    late = doors.tried(splits={"build": "late"})
    [offer] = offers(deep(), BUILDS, late, speaker="deep")
    assert (offer.thing, offer.verdict, offer.condition) == ("six", "goes in if", "the build is late")
    assert offer.needs == (NEAR,)


def test_another_ring_that_will_do_in_one_build_says_in_which() -> None:
    rings = [doors.mount(f"ring-{thick}", thickness=f"{thick} mm caliper") for thick in (2, 8)]
    no = doors.tried("no", verdict="does not", reason="depth", mounts=["ring-2"])
    late = doors.tried("late", mounts=["ring-8"], splits={"build": "late"})
    [offer] = offers(BUILDS, *rings, no, late, mounts=("ring-2",))
    assert (offer.words, offer.mounts) == ("with ring 8", ("ring-8",))
    assert (offer.verdict, offer.condition) == ("goes in if", "the build is late")


def test_of_several_rings_that_would_do_none_has_to_be_bought() -> None:
    rings = [doors.mount(f"ring-{thick}", thickness=f"{thick} mm caliper") for thick in (2, 8, 9)]
    [offer] = offers(deep(), *rings, doors.roomy(glass="55 ± 1 mm"), speaker="deep")
    assert (offer.words, offer.mounts, offer.buy) == ("six, with ring 8 or ring 9", (), ("six",))
    each = offers(*rings, doors.roomy(glass="55 ± 1 mm"), mounts=("ring-2",))
    assert [(one.words, one.mounts) for one in each] == [("with ring 8", ("ring-8",)), ("with ring 9", ("ring-9",))]


def test_what_does_not_go_in_either_is_no_offer() -> None:
    deeper = doors.speaker("deeper", mounting_depth="95 mm caliper")
    assert [one.thing for one in offers(deep(), deeper, doors.roomy(), speaker="deep")] == ["six"]
    rings = [doors.mount(f"ring-{thick}", thickness=f"{thick} mm caliper") for thick in (1, 2, 8)]
    found = offers(*rings, doors.roomy(glass="55 ± 1 mm"), mounts=("ring-2",))
    assert [one.mounts for one in found] == [("ring-8",)]


def test_another_speaker_is_offered_through_the_ring_that_was_wished_for() -> None:
    ring = doors.mount("ring-2", thickness="2 mm caliper")
    found = offers(deep(), ring, doors.roomy(), speaker="deep", mounts=("ring-2",))
    assert [one.words for one in found if one.thing == "six" and one.kind == "another of its size"] == [
        "six, with ring 2"
    ]
