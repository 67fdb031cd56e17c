"""Made-up shops in which some things are asked for often, from seeds."""

from collections.abc import Iterator
from random import Random

from bezelbook.kinds import KINDS
from bezelbook.kinds.record import Record
from bezelbook.knowledge_base import KnowledgeBase, knowledge_base
from bezelbook.reasoning.looks.ranking import openings
from tests.bench.looking.shop import Shop, records
from tests.simulator.counter import make
from tests.simulator.regimes import HONEST

NOTES = (6, 10, 15)


def asked(dice: Random, book: KnowledgeBase) -> Iterator[Record]:
    """What people asked of this book: some units at some openings often, most never."""
    for number, (vehicle, place) in enumerate(openings(book)):
        for unit in book.head_units:
            if dice.random() < 0.3:
                times = dice.choice((1, 1, 1, 2, 2, 3, 5, 8, 13))
                said = {"words": "will it go in", "vehicle": vehicle, "place": place, "what": unit, "times": times}
                made: Record = KINDS["questions"].reader.validate_python({**said, "id": f"asked-{number}-{unit}"})
                yield made


def shop(seed: str) -> Shop:
    """The shop of a seed, always the same."""
    dice = Random(seed)
    made = make(seed, HONEST, dice.choice(NOTES))
    base = made.counter.base
    return Shop(made.world, knowledge_base([*records(base), *asked(dice, base)]), seed)
