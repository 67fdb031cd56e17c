"""Notes of an opening can all be true where some room agrees with them, whatever each leaves open (worked by hand)."""

from typing import Any

from bezelbook.reasoning.room import Rooms
from bezelbook.reasoning.together import can_be_true
from tests.reasoning import making

FACE = {"datum": "sub-dash face", "tool": "depth gauge"}


def agree(*notes: Any) -> bool:
    of = making.book(*notes)
    standing = tuple(making.standing(of, note.id) for note in notes)
    return can_be_true(Rooms(making.frame(of), standing), standing)


def everywhere(name: str, reads: str) -> Any:
    return making.measured(name, making.reading("depth", reads, tool="depth gauge"))


def somewhere(name: str, *reads: str, **said: Any) -> Any:
    readings = [making.reading("depth", one, zones=None, **FACE | said) for one in reads]
    return making.measured(name, *readings)


MANY = ("170 ± 1 mm", "171 ± 1 mm", "172 ± 1 mm", "173 ± 1 mm", "174 ± 1 mm", "175 ± 1 mm")


def test_two_depths_of_the_whole_opening_agree_or_not() -> None:
    assert agree(everywhere("a", "170 ± 1 mm"), everywhere("b", "171 ± 1 mm"))
    assert not agree(everywhere("a", "170 ± 1 mm"), everywhere("b", "175 ± 1 mm"))


def test_depths_that_may_be_of_any_ninth_are_held_to_what_is_said_of_all_even_where_they_are_too_many() -> None:
    assert agree(somewhere("many", *MANY), everywhere("all", "172 ± 6 mm"))
    assert not agree(somewhere("many", *MANY, "196 ± 1 mm"), everywhere("all", "172 ± 6 mm"))
    assert not agree(somewhere("few", "196 ± 1 mm"), everywhere("all", "172 ± 6 mm"))


def test_what_is_from_a_face_that_nobody_can_compare_is_not_held_to_anything() -> None:
    bezel = somewhere("many", *MANY, "196 ± 1 mm", datum="finished bezel face")
    assert agree(bezel, everywhere("all", "172 ± 6 mm"))
