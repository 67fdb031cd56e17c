"""Readings differ by their face, their tool, or the side from which cavities were counted."""

from typing import Any

import pytest

from bezelbook.kinds.note.record import AnyNote
from bezelbook.reasoning.differing.explanation import Explanation
from tests.reasoning import making
from tests.reasoning.differing.a_clash import axes, note, why, why_still, yes

HERE = [{"vehicle": making.CAR, "place": making.HOLE}]
KIT = making.mount("deep-kit", proud="18 ± 0.5 mm caliper", made_for=HERE)


def read(name: str, text: str, mounts: Any = None, **said: Any) -> AnyNote:
    more = {"mounts": mounts} if mounts else {}
    return making.measured(name, making.reading("depth", text, **said), **more)


def of(found: tuple[Explanation, ...], axis: str) -> Explanation:
    return next(one for one in found if one.axis == axis)


def test_two_faces_or_a_blank_one_may_explain_a_depth() -> None:
    """Trade 5.1: 205 from the sub-dash, 223 from the face of the bezel."""
    face, bezel = read("a", "205 ± 2 mm"), read("b", "223 ± 2 mm", datum="finished bezel face")
    assert of(why(face, bezel), "datum").words == "the face: sub-dash face in a, finished bezel face in b"
    blank = why(face, read("b", "223 ± 2 mm", datum=None))
    assert of(blank, "datum").words == "the face: b does not say from which face"
    assert of(why(face, bezel), "datum").weight > of(blank, "datum").weight
    assert of(why(face, read("b", "290 ± 2 mm", datum=None)), "datum").weight < of(blank, "datum").weight


def test_what_was_read_deeper_may_have_been_read_from_the_trim() -> None:
    """Both say the metal; from the trim it would be some 20 mm more. No face is far enough away for 85 mm."""
    face = read("a", "205 ± 2 mm")
    words = "the face: b may have been read from the trim, which makes it deeper than it is"
    near, far = (of(why_still(face, read("b", text)), "datum") for text in ("223 ± 2 mm", "240 ± 2 mm"))
    assert near.words == far.words == words
    assert near.weight > far.weight, "the further away, the fewer faces are so far"
    assert of(why_still(read("b", "223 ± 2 mm"), face), "datum").words == words
    assert "datum" not in axes(why_still(face, read("b", "290 ± 2 mm")))
    went_in = why_still(yes(), read("m", "150 ± 2 mm"))
    assert "datum" not in axes(went_in), "it leaves too little, and not too much"
    assert "datum" not in axes(why(face, read("b", "223 ± 2 mm"))), "where a blank may do it nobody asks"


def test_the_reading_that_the_others_contradict_is_the_one_from_another_face() -> None:
    face, deep = read("a", "205 ± 2 mm"), read("b", "223 ± 2 mm")
    alone = of(why_still(face, deep), "datum").weight
    assert of(why_still(face, deep, read("c", "205 ± 2 mm")), "datum").weight > alone
    assert of(why_still(face, deep, read("c", "223 ± 2 mm")), "datum").weight < alone


def test_a_reading_in_front_may_be_from_another_face_either_way() -> None:
    shelf = making.vehicle(places={making.HOLE: {"kind": "parcel shelf", "side": "centre"}})
    panel = {"datum": "inside face of panel", "tool": "depth gauge"}
    near, far = (
        making.measured(name, making.reading("front clearance", reads, **panel))
        for name, reads in (("a", "12 ± 1 mm"), ("b", "30 ± 1 mm"))
    )
    assert (
        of(why_still(near, far, shelf), "datum").words
        == "the face: a may have been read from another face than it says"
    )


def test_a_difference_that_is_just_a_kits_depth_is_the_face() -> None:
    found = why(read("a", "205 ± 2 mm"), read("b", "223 ± 2 mm", datum=None), KIT)
    assert found[0].words.endswith("from which face; the difference is just what deep-kit is deep")
    unknown = making.mount("who-knows", proud=None, made_for=HERE)
    assert (
        "who-knows" not in of(why(read("a", "205 ± 2 mm"), read("b", "223 ± 2 mm", datum=None), unknown), "datum").words
    )


def test_beside_a_thing_that_went_in_only_the_reading_has_a_face() -> None:
    assert of(why(yes(), read("m", "150 ± 2 mm", datum=None)), "datum").words == "the face: m does not say"
    bezel = read("m", "150 ± 2 mm", datum="finished bezel face")
    assert of(why(yes(), bezel), "datum").words == "the face: m was read from the finished bezel face"
    tape = making.measured("m", making.reading("depth", "150 ± 2 mm", tool="tape"))
    assert of(why(yes(), tape), "tool").words == "the tool: m was read with tape"


@pytest.mark.parametrize(
    ("tools", "told"),
    [(("tape", "caliper"), True), (("caliper", "caliper"), False), (("tape", "tape"), False), ((None, None), True)],
)
def test_a_rough_tool_explains_a_little(tools: tuple[str | None, str | None], *, told: bool) -> None:
    first, second = (
        making.measured(name, making.reading("depth", text, tool=tool))
        for name, text, tool in zip("ab", ("150 ± 1 mm", "156 ± 1 mm"), tools, strict=True)
    )
    assert ("tool" in axes(why(first, second))) == told


def test_a_list_that_is_the_mirror_image_was_counted_from_the_other_side() -> None:
    plug = making.record(
        "connectors", "grey", {"name": "grey", "shell": "two-row block", "rows": 2, "columns": 3, "cavities": 6}
    )

    def counted(name: str, carries: dict[int, str], **said: Any) -> AnyNote:
        return note(
            name, "metered", plug="grey", cavities=[{"cavity": n, "carries": c} for n, c in carries.items()], **said
        )

    face = counted("a", {1: "constant", 3: "ground"}, view="mating face")
    turned = counted("b", {1: "ground", 3: "constant"})
    [view] = [one for one in why(face, turned, plug) if one.axis == "view"]
    assert view.words.startswith("the view: b does not say from which side")
    assert view.words.endswith("the one list is the mirror image of the other")
    other = counted("b", {1: "ground", 3: "dimmer"})
    assert of(why(face, other, plug), "view").weight < view.weight
    assert of(why(face, turned), "view").weight < view.weight
    assert "view" not in axes(why(face, counted("b", {1: "ground"}, view="mating face"), plug))
    assert "view" not in axes(why(face, note("s", "seen", plug="white"), plug))


def test_where_both_faces_are_known_a_seat_may_have_been_written_for_the_other() -> None:
    """From the seat of a kit that stands 18 out 150 is 132 from the bare face, unless it was read from there."""
    bare = read("a", "150 ± 1 mm", tool="depth gauge")
    mistaken = why_still(read("b", "150 ± 1 mm", datum="kit seat", mounts=["deep-kit"]), bare, KIT)
    assert (
        of(mistaken, "datum").words == "the face: b may have been read from the sub-dash face and not from the kit seat"
    )
    turned = why_still(read("b", "168 ± 1 mm", datum="sub-dash face", mounts=["deep-kit"]), bare, KIT)
    assert (
        of(turned, "datum").words == "the face: b may have been read from the kit seat and not from the sub-dash face"
    )
    too_little = why_still(read("b", "130 ± 1 mm", datum="kit seat", mounts=["deep-kit"]), bare, KIT)
    assert of(too_little, "datum").words.startswith("the face: a may have been read from the trim")
    wrong_way = why_still(read("b", "190 ± 1 mm", datum="kit seat", mounts=["deep-kit"]), bare, KIT)
    assert of(wrong_way, "datum").words.startswith("the face: b may have been read from the trim")
    assert of(why_still(read("c", "190 ± 1 mm"), bare), "datum").words.startswith("the face: c may have been")


def test_a_tool_whose_give_was_counted_is_trusted() -> None:
    tape, gauge = read("a", "150 ± 1 mm", tool="tape"), read("b", "156 ± 1 mm", tool="depth gauge")
    assert of(why_still(tape, gauge), "tool").weight < of(why(tape, gauge), "tool").weight
    assert "tool" not in axes(
        why_still(read("a", "150 ± 1 mm", tool="caliper"), read("b", "156 ± 1 mm", tool="caliper"))
    )
    assert of(why_still(yes(), read("m", "150 ± 2 mm", tool="tape")), "tool").words == "the tool: m was read with tape"
