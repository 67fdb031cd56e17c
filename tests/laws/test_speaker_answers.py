"""Firm answers about speakers against their oracle: none is wrong, none is missing, and every clash is seen."""

from collections import Counter

import pytest

from tests.laws.speaker_oracle import SpeakerOracle
from tests.laws.speaker_records import book_of, verdict
from tests.laws.speaker_world import SIDES, speaker_world_of

WORLDS = 2_000
BATCH = 200
FIRM = ("goes in", "does not", "argued over")


@pytest.mark.parametrize("first", range(0, WORLDS, BATCH))
def test_the_book_settles_exactly_what_trying_out_every_room_settles(first: int) -> None:
    for seed in range(first, first + BATCH):
        world = speaker_world_of(seed)
        book = book_of(world)
        oracles = {side: SpeakerOracle(world, side) for side in SIDES}
        for ask in world.asks:
            said = verdict(book, ask)
            settled = said if said in FIRM else "open"
            assert settled == oracles[ask.side].verdict(ask), f"world {seed}: {said} to {ask}"


def test_the_worlds_hold_every_outcome_many_times() -> None:
    worlds = [speaker_world_of(seed) for seed in range(200)]
    outcomes = Counter(SpeakerOracle(world, ask.side).verdict(ask) for world in worlds for ask in world.asks)
    assert {word for word, count in outcomes.items() if count >= 20} == {*FIRM, "open"}
