"""Circuits as somebody says several of them in one breath: a pair once, and all speakers together."""

from collections.abc import Iterable, Iterator

from bezelbook.reasoning.circuits.wiring import SPEAKERS
from bezelbook.values.listed import listed
from bezelbook.values.words import Circuit


def spoken(circuits: Iterable[Circuit]) -> str:
    """The circuits in their order, plus and minus of a pair as one, all four pairs as all speakers."""
    return listed(list(dict.fromkeys(_spoken(tuple(circuits)))))


def _spoken(circuits: tuple[Circuit, ...]) -> Iterator[str]:
    every = set(SPEAKERS) <= set(circuits)
    for circuit in circuits:
        pair = circuit[:-2]
        if circuit not in SPEAKERS:
            yield circuit
        elif every:
            yield "all speakers"
        else:
            both = {f"{pair} +", f"{pair} -"} <= set(circuits)
            yield f"{pair} ±" if both else circuit
