"""A larger thing never fits where a smaller one does not."""

from collections.abc import Sequence
from itertools import pairwise
from typing import Any

import pytest

from bezelbook.reasoning.answer import place_of
from bezelbook.reasoning.needs import Need
from bezelbook.reasoning.question import Question
from bezelbook.values.quantity import read_quantity
from tests.laws.random_worlds import world_of
from tests.laws.records import PLACE, VEHICLE, Written, verdict
from tests.laws.small_world import Ask, World

SEEDS = range(5_000, 5_150)
SIZES = [f"{halves / 2} mm" for halves in range(1, 13)]


def ladder(world: World, ask: Ask, need: Need, others: dict[Need, str], give: str) -> list[str]:
    """The verdicts on things that grow in one size and have the same other sizes."""
    place = place_of(Written(world).book(), VEHICLE, PLACE)
    splits = {"build": ask.build} if ask.build else {}
    found: list[str] = []
    for size in SIZES:
        typed = {name: read_quantity(text, "length") for name, text in (others | {need: size + give}).items()}
        state: dict[str, Any] = {
            "mounts": (world.kits[0].name,),
            "cut": ask.cut,
            "loom": ask.loom,
            "plugs": ask.plugs,
            "splits": splits,
        }
        found.append(verdict(place, Question(VEHICLE, PLACE, sizes=typed, exit=world.ninths[0], **state)))
    return found


def never_turns_round(verdicts: Sequence[str]) -> bool:
    """Whether what goes in goes in smaller too, and what does not does not larger either."""
    pairs = list(pairwise(verdicts))
    rising = all(smaller == "goes in" for smaller, larger in pairs if larger == "goes in")
    return rising and all(larger == "does not" for smaller, larger in pairs if smaller == "does not")


@pytest.mark.parametrize("give", ["", " ± 0.5 mm"])
@pytest.mark.parametrize(
    ("need", "others"),
    [
        ("depth", {"plug": "1 mm"}),
        ("plug", {"depth": "1 mm"}),
        ("width", {}),
        ("width", {"depth": "1 mm", "plug": "1 mm"}),
    ],
)
def test_a_deeper_wider_or_longer_plugged_thing_never_goes_in_where_a_smaller_one_does_not(
    need: Need, others: dict[Need, str], give: str
) -> None:
    firm = 0
    for seed in SEEDS:
        world = world_of(seed)
        verdicts = ladder(world, world.asks[0], need, others, give)
        assert never_turns_round(verdicts), f"world {seed}: {verdicts}"
        firm += sum(word in ("goes in", "does not") for word in verdicts)
    assert firm > len(SEEDS)
