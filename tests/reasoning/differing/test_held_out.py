"""A mount explains a clash where it may have held the one out far enough, and only there."""

from fractions import Fraction
from typing import Any

from bezelbook.kinds.note.record import AnyNote
from bezelbook.reasoning.differing.explanation import Explanation
from bezelbook.reasoning.differing.held_out import mount_said
from tests.reasoning import making
from tests.reasoning.differing.a_clash import axes, no, note, why, why_still, yes

HERE = [{"vehicle": making.CAR, "place": making.HOLE}]
FLUSH = making.mount("flush-kit", made_for=HERE)
PROUD = making.mount("proud-kit", proud="22 ± 0.5 mm caliper", made_for=HERE)


def words(found: tuple[object, ...]) -> str:
    return next((one.words for one in found if one.axis == "mount"), "")  # type: ignore[attr-defined]


def test_the_kit_that_would_give_the_missing_room_is_named() -> None:
    told = words(why(yes(mounts=None), no(), FLUSH, PROUD))
    assert told == "the mount: yes does not say which was used; 8 mm (0.31 in) is wanted, and proud-kit would give it"


def test_the_same_thing_wants_any_room_at_all() -> None:
    told = words(why(yes(mounts=None, what="shallow"), no(), PROUD))
    assert told == "the mount: yes does not say which was used; proud-kit would give it"


def test_a_mount_that_nobody_has_measured_is_asked_about() -> None:
    told = words(why(yes(mounts=["bottom shelf kit"]), no(mounts=["flush-kit"]), FLUSH))
    assert told == 'the mount: nobody has written how far "bottom shelf kit" holds a thing out'
    far = making.unit("far", body_depth="210 ± 1 mm caliper")
    assert words(why(yes(mounts=["bottom shelf kit"], what="far"), no(), far))


def test_mounts_that_give_too_little_or_the_wrong_way_round_are_no_explanation() -> None:
    assert words(why(yes(), no(mounts=["proud-kit"]), PROUD)) == ""
    assert words(why(yes(mounts=["flush-kit"]), no(mounts=["flush-kit"]), FLUSH)) == ""


def test_a_kit_of_which_only_the_print_is_known_may_do_it() -> None:
    printed = making.mount("printed-kit", proud="22 mm printed")
    assert "mount" in axes(why(yes(mounts=["printed-kit"]), no(), printed))


def test_the_yes_that_says_its_mount_is_not_asked_again() -> None:
    assert words(why(yes(mounts=["proud-kit"]), no(mounts=None), PROUD)) == "the mount: no does not say which was used"
    assert words(why(yes(mounts=None), no(), making.unit("deep", body_depth="300 ± 1 mm caliper"), FLUSH)) == (
        "the mount: yes does not say which was used"
    )


def test_width_is_framed_by_mounts_too() -> None:
    narrow, wide = (
        making.unit(name, body_width=f"{mm} ± 1 mm caliper") for name, mm in (("narrow", 170), ("wide", 178))
    )
    frame = making.mount("frame", presents={"width": "175 ± 1 mm caliper"}, made_for=HERE)
    first, second = yes(what="wide", mounts=None), no(what="narrow", reason="width", mounts=None)
    assert "mount" in axes(why(first, second, narrow, wide, frame))


def test_readings_of_the_bare_hole_have_no_mount_to_differ_in() -> None:
    hole = making.measured("no", making.reading("depth", "150 ± 1 mm"))
    assert "mount" not in axes(why(yes(mounts=None), hole, PROUD))


def test_what_a_note_says_of_mounts() -> None:
    assert mount_said(making.tried(mounts=["a", "b"])) == "a and b"
    assert mount_said(making.tried(mounts="none")) == "none"
    assert mount_said(making.record("notes", "b", {"form": "bench", "part": "p"})) is None
    plug = note("no", "seen", plug="grey")
    assert "mount" not in axes(why(note("yes", "seen", plug="white"), plug))


FRAME = making.mount("frame", presents={"width": "175 ± 1 mm caliper"}, made_for=HERE)
CONE = {"mounting_depth": "50 ± 1 mm caliper", "front_height": "10 ± 1 mm caliper", "basket": "120 ± 1 mm caliper"}


def depth(name: str, reads: str, **said: Any) -> AnyNote:
    datum = said.pop("datum", "sub-dash face")
    return making.measured(name, making.reading("depth", reads, datum=datum, tool="depth gauge"), **said)


def width(name: str, reads: str, **said: Any) -> AnyNote:
    return making.measured(name, making.reading("width", reads, tool="caliper"), **said)


def both(name: str, reads: str, more: dict[str, Any]) -> AnyNote:
    """A width and something else."""
    return making.measured(name, making.reading("width", reads, tool="caliper"), more)


def weight(found: tuple[Explanation, ...]) -> Fraction:
    return next((one.weight for one in found if one.axis == "mount"), Fraction(0))


def test_what_names_a_part_of_a_mount_gives_away_that_there_was_one() -> None:
    bare = width("a", "182 ± 1 mm", mounts="none")
    with_tabs = weight(why_still(width("b", "175 ± 1 mm", tabs="in"), bare, FRAME))
    seat = making.reading("depth", "150 ± 1 mm", datum="kit seat", tool="depth gauge")
    from_a_seat = weight(why_still(both("b", "175 ± 1 mm", seat), bare, FRAME))
    without = weight(why_still(width("b", "175 ± 1 mm"), bare, FRAME))
    assert with_tabs == from_a_seat > without > 0


def test_whoever_reads_from_the_bare_face_hardly_had_a_mount_there() -> None:
    bare = width("a", "182 ± 1 mm", mounts="none")
    face = making.reading("depth", "150 ± 1 mm", tool="depth gauge")
    unsaid = making.reading("depth", "150 ± 1 mm", datum=None, tool="depth gauge")
    hardly, plain = (weight(why_still(both("b", "175 ± 1 mm", one), bare, FRAME)) for one in (face, unsaid))
    assert plain == weight(why_still(width("b", "175 ± 1 mm"), bare, FRAME)) > hardly > 0


def test_a_mount_that_no_note_names_is_the_likelier_the_more_were_named_only_once() -> None:
    """A no that is false of the kit it names: of others that were used but once there are more that nobody named."""
    leaves = width("m", "182 ± 1 mm")
    refused = no(what="narrow", reason="width", mounts="none")
    narrow = making.unit("narrow", body_width="170 ± 1 mm caliper")
    once, twice = (
        [making.tried(f"n{at}", what="narrow", mounts=[f"{name}-kit"]) for at, name in enumerate(names)]
        for names in (("some", "other", "third"), ("some", "some", "some"))
    )
    kits = [
        making.mount(f"{name}-kit", presents={"width": "178 ± 1 mm caliper"}, made_for=HERE)
        for name in ("some", "other", "third")
    ]
    often, seldom = (weight(why_still(leaves, refused, narrow, *kits, *others)) for others in (once, twice))
    assert often > seldom > 0


def test_a_reading_from_the_bare_face_has_no_mount_in_it() -> None:
    assert "mount" not in axes(why_still(depth("b", "170 ± 1 mm"), depth("a", "150 ± 1 mm", mounts="none"), PROUD))


def test_a_width_that_was_read_is_that_of_the_mount_or_not() -> None:
    """Through a frame of 175 one reads 175 and never 170."""
    bare = width("a", "182 ± 1 mm", mounts="none")
    through, elsewhere = (weight(why_still(width("b", text), bare, FRAME)) for text in ("175 ± 1 mm", "170 ± 1 mm"))
    assert through > elsewhere > 0, "one that nobody named may leave any width"
    printed = making.mount("frame", presents={"width": "175 mm printed"}, made_for=HERE)
    assert weight(why_still(width("b", "170 ± 1 mm"), bare, printed)) > elsewhere


def test_a_mount_that_frames_nothing_leaves_the_width_as_it_is() -> None:
    wide, narrow = width("a", "182 ± 1 mm", mounts="none"), width("b", "175 ± 1 mm")
    assert weight(why_still(wide, narrow, FLUSH)) < weight(why_still(wide, narrow, FRAME))


def test_what_is_no_clash_over_room_has_no_mount_that_was_written_wrongly() -> None:
    """What was read through a mount that nobody has says nothing of the bare hole."""
    found = why_still(width("b", "170 ± 1 mm", mounts=["something"]), width("a", "182 ± 1 mm"))
    assert "mount" not in axes(found)


def test_mounts_that_stand_out_take_from_the_room_in_front() -> None:
    """With 20 in front a cone of 10 stood against the grille: not bare, but on a ring that stands 22 out."""
    shelf = making.vehicle(places={making.HOLE: {"kind": "parcel shelf", "side": "centre"}})
    cone = making.record("speakers", "cone", {"name": "cone", "nominal": "6.5 in", "speaker_kind": "coaxial", **CONE})
    ring = making.mount("proud-kit", mount_kind="spacer", proud="22 ± 0.5 mm caliper", made_for=HERE)
    flat = making.mount("proud-kit", mount_kind="spacer", proud="2 ± 0.5 mm caliper", made_for=HERE)
    reads = making.reading("front clearance", "20 ± 1 mm", datum="inside face of panel", tool="depth gauge")
    room, stood = making.measured("m", reads), no(what="cone", reason="grille", mounts="none", gasket="none")
    enough, too_little = (weight(why_still(room, stood, shelf, cone, kit)) for kit in (ring, flat))
    assert enough > too_little > 0
