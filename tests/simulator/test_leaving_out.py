"""A forgetful shop writes nothing false, and of what it measured leaves out just what was not as usual."""

from random import Random

from tests.simulator.doors.draw import draw_door_world
from tests.simulator.draw_world import draw_world
from tests.simulator.leaving_out import FORGETFUL, LEFT_OUT, USUAL
from tests.simulator.shop_years import notes_of

# What is written fuller in full, what is written after the job, and who tells of it again.
LATER = ("splits", "replaces", "author")


def test_each_thing_is_left_out_at_times_and_every_word_that_stays_is_true() -> None:
    kinds: set[str] = set()
    for number in range(6):
        dice = Random(f"left out {number}")
        notes = notes_of(dice, (draw_world, draw_door_world)[number % 2](dice), FORGETFUL, 60)
        for note in notes:
            if note.false in LEFT_OUT:
                kinds.add(str(note.false))
                field = str(note.false).removesuffix(" left out")
                assert note.content["form"] == "measured"
                assert field not in note.content
                assert note.in_full[field] != USUAL[field]
                assert all(note.in_full[key] == said for key, said in note.content.items() if key not in LATER)
    assert kinds == set(LEFT_OUT)
