"""A mount explains a clash where it may have held the one out far enough, and only there."""

from bezelbook.reasoning.differing.held_out import mount_said
from tests.reasoning import making
from tests.reasoning.differing.a_clash import axes, no, note, why, yes

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
