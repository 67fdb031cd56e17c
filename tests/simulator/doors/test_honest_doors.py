"""In a shop that tries and measures honestly at its doors, no firm answer about a speaker is wrong."""

from collections import Counter as Tally
from random import Random

import pytest

from tests.simulator.counter import FIRM, Made, make, tried_out
from tests.simulator.doors.draw import draw_door_world
from tests.simulator.regimes import HONEST, UPSIDE_DOWN
from tests.simulator.shop_years import notes_of
from tests.simulator.shrinking import shrunk, told

SEEDS = [f"doors {number}" for number in range(4)]


@pytest.fixture(scope="module")
def honest() -> list[Made]:
    return [make(seed, HONEST, notes, draw_door_world) for seed, notes in zip(SEEDS, range(20, 60, 10), strict=True)]


def test_no_firm_answer_about_a_speaker_is_wrong(honest: list[Made]) -> None:
    tally: Tally[str] = Tally()
    for made in honest:
        found, wrong = tried_out(made, near=30, whole=200)
        assert not wrong, "\n".join(told(shrunk(wrong[0])))
        tally += found
    assert all(tally[verdict] >= 30 for verdict in FIRM), tally


def test_where_verdicts_are_turned_round_wrong_answers_about_speakers_are_found_and_can_be_made_small() -> None:
    for number in range(10):
        made = make(f"upside-down doors {number}", UPSIDE_DOWN, 40, draw_door_world)
        _, wrong = tried_out(made, near=20, whole=10_000)
        if wrong:
            small = shrunk(wrong[0])
            assert any(note.false == "the other verdict" for note in small.notes)
            assert "truly" in "\n".join(told(small))
            return
    pytest.fail("no wrong answer was found")


def test_glass_tabs_gaskets_and_the_other_side_are_said_or_left_blank() -> None:
    dice = Random("said or blank")
    worlds = [draw_door_world(dice) for _ in range(12)]
    notes = [note.content for world in worlds for note in notes_of(dice, world, HONEST, 40)]
    tried = [content for content in notes if content["form"] == "tried"]
    for key in ("glass", "tabs", "gasket", "mounts", "cut"):
        said = sum(key in content for content in tried)
        assert 0 < said < len(tried), key
    words = {content.get("other_side") for content in notes if content["form"] == "measured"}
    assert words == {None, "assumed the same", "measured the same", "not the same"}
