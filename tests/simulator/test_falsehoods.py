"""A corrupted note states something false, of a kind that is remembered, and its book loads all the same."""

from collections import Counter as Tally
from random import Random

from tests.simulator.counter import make_of
from tests.simulator.doors.draw import draw_door_world
from tests.simulator.draw_world import draw_world
from tests.simulator.falsehoods import WAYS, said_anew
from tests.simulator.regimes import Regime
from tests.simulator.shop_years import notes_of

OFTEN = Regime("often", 0.5, WAYS)


def test_every_kind_of_falsehood_comes_about_and_loads() -> None:
    kinds: Tally[str | None] = Tally()
    for number, draw in enumerate((draw_world, *(draw_door_world,) * 4) * 3):
        dice = Random(f"false {number}")
        world = draw(dice)
        notes = notes_of(dice, world, OFTEN, 60)
        make_of(f"false {number}", world, notes)
        kinds += Tally(note.false for note in notes)
        told = [note for note in notes if note.false in WAYS]
        assert all(note.content != note.in_full for note in told)
    assert {kind for kind in kinds if kind} >= set(WAYS)


def test_a_number_is_said_anew_with_all_that_stood_beside_it() -> None:
    assert said_anew("165 mm ± 1 mm caliper", lambda number: number / 10) == "16.5 mm ± 1 mm caliper"
    assert said_anew("165.1 mm", lambda number: number / 25.4) == "6.5 mm"
    assert said_anew("72.5 mm", lambda number: number / 2) == "36.2 mm"
