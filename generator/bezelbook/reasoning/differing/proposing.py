"""The proposals for two notes that cannot both be true, the likeliest first."""

from collections.abc import Iterator, Sequence

from bezelbook.kinds.note.record import AnyNote
from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.reasoning.differing.axes import said_on
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.listed import listed
from bezelbook.values.words import AXES, Axis


def what_differs(
    vehicle: Vehicle | None, first: AnyNote, second: AnyNote, among: Sequence[Axis] = AXES
) -> tuple[Proposal, ...]:
    """What would make both notes true: first what they say differently, then what one leaves blank, then both."""
    found = sorted(_proposals(vehicle, first, second, among), key=lambda one: one[0])
    return tuple(proposal for _, proposal in found)


def _proposals(
    vehicle: Vehicle | None, first: AnyNote, second: AnyNote, among: Sequence[Axis]
) -> Iterator[tuple[int, Proposal]]:
    ours, theirs = said_on(vehicle, first), said_on(vehicle, second)
    for axis in among:
        if axis in ours and axis in theirs:
            blank = [note.id for note, said in ((first, ours), (second, theirs)) if said[axis] is None]
            if blank:
                does = "does" if len(blank) == 1 else "do"
                yield len(blank), Proposal(axis, f"the {axis}: {listed(blank)} {does} not say")
            elif ours[axis] != theirs[axis]:
                yield 0, Proposal(axis, f"the {axis}: {ours[axis]} in {first.id}, {theirs[axis]} in {second.id}")
