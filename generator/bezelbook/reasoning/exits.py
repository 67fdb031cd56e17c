"""Where the plugs may leave of things of which nobody said it; a thing has one exit, whichever note is about it."""

from collections.abc import Iterator, Mapping, Sequence
from itertools import product

from bezelbook.reasoning.cells import Demand
from bezelbook.reasoning.mounting import Stack
from bezelbook.reasoning.needs import Needs
from bezelbook.values.words import NINTHS, Ninth

Exits = Mapping[str, Ninth]
# With more, an answer would take longer than anybody waits at the counter.
MOST_WAYS = 600


def affordable(through: Mapping[str, Sequence[Stack]], cost: int) -> dict[str, Sequence[Stack]]:
    """The first of these things whose exits can be tried out, each with every other, at this cost a way.

    To leave a thing out is to know less, never to say what is not so.
    """
    ways, found = cost, dict[str, Sequence[Stack]]()
    for key, stacks in through.items():
        ways *= len(_behind_all(stacks))
        if ways > MOST_WAYS:
            break
        found[key] = stacks
    return found


def every_exit(through: Mapping[str, Sequence[Stack]]) -> Iterator[Exits]:
    """Every way in which the plugs of these things may leave, given at least one stack that each was fitted through."""
    ways = product(*(_behind_all(stacks) for stacks in through.values()))
    return (dict(zip(through, way, strict=True)) for way in ways)


def _behind_all(stacks: Sequence[Stack]) -> tuple[Ninth, ...]:
    """The ninths that lie behind the hole of each of these; if there are none, those behind the last."""
    return tuple(ninth for ninth in NINTHS if all(ninth in stack.ninths for stack in stacks)) or stacks[-1].ninths


def may_leave(demand: Demand, needs: Needs, exits: Exits) -> bool:
    """Whether this is asked at all, if the plugs leave like this."""
    return demand.need != "plug" or exits.get(needs.key, demand.ninth) == demand.ninth
