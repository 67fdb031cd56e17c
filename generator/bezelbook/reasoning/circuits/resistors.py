"""Whether a speaker pair that a radio has lost wants a load in its place: only where a shop tried with and without."""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal

from bezelbook.kinds.note.record import After
from bezelbook.reasoning.builds import builds, known_splits, matching
from bezelbook.reasoning.circuits.cars import Car
from bezelbook.reasoning.circuits.chain import Chain
from bezelbook.reasoning.circuits.said import strong
from bezelbook.values.words import Circuit

Wanted = Literal["needed", "not needed", "argued over", "unknown"]
WORKS = "works"


@dataclass(frozen=True, slots=True)
class Load:
    """What notes of this build say: needed when it failed without one; the values are those that somebody proved."""

    wanted: Wanted
    circuits: tuple[Circuit, ...]
    values: tuple[str, ...]
    notes: tuple[str, ...]


def loads(chain: Chain) -> Load | None:
    """Of the pairs that the radio no longer drives; None when it keeps all of its speakers.

    A package in which nobody tried it is unknown: never needed by habit, never not needed.
    """
    feeds = chain.outcome.feeds if chain.outcome else {}
    opened = tuple(need.circuit for need, feed in feeds.items() if need.kind == "from radio" and feed.at)
    if not opened:
        return None
    tried = list(_tried(chain.car))
    without = {verdict for _, verdict, _ in tried}
    wanted: Wanted = "unknown"
    if without:
        wanted = "argued over" if len(without) > 1 else "not needed" if without == {True} else "needed"
    values = tuple(dict.fromkeys(value for _, works, value in tried if not works))
    return Load(wanted, opened, values, tuple(dict.fromkeys(note for note, _, _ in tried)))


def _tried(car: Car) -> Iterator[tuple[str, bool, str]]:
    """By note, whether it played without a resistor, and the value that was tried; on cars of this build alone."""
    for note in car.everywhere:
        if isinstance(note, After) and strong(note) and _of_this_build(car, note):
            for one in note.resistors:
                if one.without_it and one.without_it != "not tried":
                    yield note.id, one.without_it == WORKS, one.value.typed


def _of_this_build(car: Car, note: After) -> bool:
    """Whether a note made at any place was made on a car of this build, as far as the amplifier is concerned."""
    known = known_splits(car.vehicle, note.splits, note.year)
    told = tuple(axis for axis, _ in car.build if car.vehicle.splits[axis].differs_in == "audio" or axis == "audio")
    every = builds(car.vehicle, told)
    return matching(every, known) == (tuple(pair for pair in car.build if pair[0] in told),)
