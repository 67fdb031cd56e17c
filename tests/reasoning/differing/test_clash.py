"""How two notes clash over room: in which size, which wants more, and by how much beyond every ±."""

from bezelbook.reasoning.differing.clash import Clash, clash_of, net_clash_of, offset_said
from bezelbook.reasoning.differing.rooms_said import room_of
from tests.reasoning import making
from tests.reasoning.differing.a_clash import DEEP, SHALLOW, no, note, yes

MM = 1_000_000
PROUD = making.mount("proud-kit", proud="22 ± 0.5 mm caliper")


def clash(first: object, second: object, *others: object) -> Clash:
    return clash_of(making.book(DEEP, SHALLOW, first, second, *others), first, second)  # type: ignore[arg-type]


def test_a_yes_that_is_deeper_than_a_no_wants_more_by_what_lies_between_their_ends() -> None:
    assert clash(yes(), no()) == Clash("depth", 0, 8 * MM)
    assert clash(no(), yes()) == Clash("depth", 1, 8 * MM)


def test_one_thing_that_goes_in_and_does_not_clashes_whatever_its_size() -> None:
    assert clash(yes(what="shallow"), no()) == Clash("depth", 0, 0)
    assert clash(yes(what="a box"), no(what="a box")) == Clash("depth", 0, 0)


def test_notes_that_agree_or_are_not_about_room_do_not_clash() -> None:
    assert clash(yes(what="shallow"), no(what="deep")) == Clash()
    assert clash(yes(), no(reason="bolt")) == Clash()
    assert clash(yes(verdict="not tried"), no()) == Clash()
    assert clash(note("yes", "seen", plug="grey"), no()) == Clash()


def test_a_reading_has_two_ends_and_the_tools_give_where_it_says_none() -> None:
    """A wire is trusted to ± 5 mm, the eye no more than no tool at all: trade 2.12."""
    book = making.book()
    wire = making.measured("m", making.reading("depth", "150 mm"), making.reading("depth", "205 mm", "centre"))
    assert room_of(book, wire) == {"depth": (145 * MM, 155 * MM)}
    eye = making.measured("m", making.reading("front clearance", "30 mm", tool="eye"))
    assert room_of(book, eye) == {"front": (25 * MM, 35 * MM)}
    assert clash(yes(), wire) == Clash("depth", 0, 14 * MM)
    assert clash(wire, making.measured("n", making.reading("depth", "190 ± 1 mm"))) == Clash("depth", 1, 34 * MM)


def test_what_known_mounts_give_is_taken_off() -> None:
    first, second = yes(mounts=["proud-kit"]), no()
    book = making.book(DEEP, SHALLOW, PROUD, first, second)
    assert net_clash_of(book, first, second) == Clash()
    assert net_clash_of(book, second, first) == Clash()
    recessed = yes(), no(mounts=["proud-kit"])
    assert net_clash_of(making.book(DEEP, SHALLOW, PROUD, *recessed), *recessed).by == 8 * MM + 22_500_000
    blank = yes(mounts=None), no()
    assert net_clash_of(making.book(DEEP, SHALLOW, *blank), *blank) == Clash("depth", 0, 8 * MM)


def test_how_far_out_a_note_says_its_mounts_hold() -> None:
    book = making.book(PROUD)
    assert offset_said(book, making.tried(mounts=["proud-kit"])) == 22_500_000
    assert offset_said(book, making.tried(mounts=["something"])) is None
    assert offset_said(book, making.tried(mounts="none")) == 0
    assert offset_said(book, making.measured("m", making.reading("depth", "150 mm"))) == 0
    assert offset_said(book, making.record("notes", "b", {"form": "bench", "part": "p"})) is None


def test_a_speaker_asks_for_its_hole_its_depth_and_its_front() -> None:
    typed = making.tried(what="cone", sizes={"mounting_depth": "63 ± 1 mm", "basket": "141 ± 1 mm"})
    assert room_of(making.book(), typed)["depth"] == (62 * MM, None)
    assert room_of(making.book(), typed)["hole"] == (140 * MM, None)


def test_only_what_can_be_compared_counts_where_that_is_asked() -> None:
    bare = making.measured("m", making.reading("depth", "190 ± 1 mm"))
    bezel = making.measured("n", making.reading("depth", "150 ± 1 mm", datum="finished bezel face"))
    book = making.book()
    assert clash_of(book, bare, bezel).size == "depth"
    assert net_clash_of(book, bare, bezel, compared=True) == Clash()


def test_readings_of_other_ninths_do_not_clash() -> None:
    left, right = (
        making.measured(name, making.reading("depth", text, name))
        for name, text in (("left", "190 ± 1 mm"), ("right", "150 ± 1 mm"))
    )
    assert clash(left, right) == Clash()


def test_a_mount_that_stands_out_takes_from_the_room_in_front() -> None:
    wide = making.measured(
        "m", making.reading("front clearance", "30 ± 1 mm", datum="bracket seat"), mounts=["proud-kit"]
    )
    bare = making.measured("n", making.reading("front clearance", "20 ± 1 mm", datum="door metal"))
    found = net_clash_of(making.book(PROUD), wide, bare)
    assert found == Clash("front", 0, 8 * MM + 22_500_000)
