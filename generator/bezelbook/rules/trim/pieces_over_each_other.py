"""Of some pieces of trim each is said to be off before the next, and the last before the first."""

from collections.abc import Iterator

from bezelbook.finding import Finding, Quote, Rule, VehicleScope
from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.builds import bearing_axes, builds
from bezelbook.reasoning.differing.explaining import explained
from bezelbook.reasoning.losses import TRIM_BROKEN
from bezelbook.reasoning.order.accounts import Account, accounts_of
from bezelbook.reasoning.order.graph import befores, circles
from bezelbook.reasoning.order.precedence import Before, musts
from bezelbook.reasoning.order.step import name_of
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.listed import listed
from bezelbook.values.words import Axis

SORTS_OF_CAR: tuple[Axis, ...] = ("build", "body", "package", "display", "hand")
PICTURE = Proposal("one is wrong", "one of them looked at it the wrong way round: take a picture on the next car")


def check(scope: VehicleScope) -> Iterator[Finding]:
    """One finding for each circle of pieces, in whatever build of the car it stands; what was only habit makes none."""
    vehicle = scope.book.vehicles[scope.vehicle]
    counting = accounts_of(scope.book, vehicle).counting
    found: set[tuple[str, ...]] = set()
    for build in builds(vehicle, _axes(vehicle, counting)):
        every = musts([one.note for one in counting if one.may_be(build)])
        for circle in circles(befores((one.first, one.then) for one in every)):
            if circle not in found:
                found.add(circle)
                yield _finding(scope.book, vehicle, circle, _around(circle, every))


def _axes(vehicle: Vehicle, counting: tuple[Account, ...]) -> tuple[str, ...]:
    bearing = {axis for one in counting for axis in bearing_axes(vehicle, one.note.place, "trim")}
    return tuple(axis for axis in vehicle.splits if axis in bearing)


def _around(circle: tuple[str, ...], every: tuple[Before, ...]) -> list[Before]:
    pairs = zip(circle, (*circle[1:], circle[0]), strict=True)
    return [next(one for one in every if (one.first, one.then) == pair) for pair in pairs]


def _finding(book: KnowledgeBase, vehicle: Vehicle, circle: tuple[str, ...], around: list[Before]) -> Finding:
    notes = [book.notes[note] for note in dict.fromkeys(one.notes[0] for one in around)]
    pieces = [name_of(vehicle, piece) for piece in circle]
    place = notes[0].place  # type: ignore[union-attr]
    differing = [one.proposal for one in explained(book, vehicle, place, (notes[0], notes[-1]), SORTS_OF_CAR)]
    return Finding(
        rule=RULE.name,
        key="/".join((RULE.name, vehicle.id, "-and-".join(sorted(circle)))),
        weight="look first",
        says=f"each of {listed(pieces)} is said to come off before the other",
        quotes=tuple(Quote.of(book, note) for note in notes),
        difference=f"which of {listed(pieces)} lies on top",
        proposals=(*differing, PICTURE),
        loss=TRIM_BROKEN,
        question="Which lies over which?",
        answers=(*pieces, "neither", "next car"),
        vehicle=vehicle.id,
        place=place,
    )


RULE = Rule("pieces-over-each-other", "Each over the other", "conflict", __doc__ or "", VehicleScope, check)
