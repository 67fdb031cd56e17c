"""The factory speaker of a place has a filter in one note and none, or another one, in the next."""

from collections.abc import Iterator
from itertools import combinations

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.kinds.note.record import Seen
from bezelbook.kinds.note.speaker_place import FilterSeen
from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.reasoning.builds import Build, bearing_axes, builds, common_values, known_splits, matching
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import TWEETER_GONE
from bezelbook.reasoning.proposal import Proposal

# What somebody looked at and found to be so; that it was not looked at, or does not apply, is no look.
NONE = ("not there", "not needed")


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding a place: the first pair that may be of one build, and that no look at another build explains."""
    vehicle = scope.book.vehicles[scope.vehicle]
    seen = [note for note in unreplaced(scope.book.notes_at(scope.vehicle, scope.place)) if isinstance(note, Seen)]
    looks = {note.id: (note, _cars(vehicle, note), said) for note in seen if (said := _filter(note)) is not None}
    for (one, ours, first), (other, theirs, second) in combinations(looks.values(), 2):
        alike = [build for build in ours if build in theirs]
        rest = [(cars, said) for id_, (_, cars, said) in looks.items() if id_ not in (one.id, other.id)]
        told = any(
            _explains(cars, said, mine, yours, own)
            for cars, said in rest
            for mine, yours, own in ((ours, theirs, first), (theirs, ours, second))
        )
        if alike and _differ(first, second) and not told:
            yield _finding(scope, (one, other), alike)
            return


def _filter(note: Seen) -> FilterSeen | str | None:
    said = note.factory_speaker.filter if note.factory_speaker else None
    return said if isinstance(said, FilterSeen) or said in NONE else None


def _cars(vehicle: Vehicle, note: Seen) -> tuple[Build, ...]:
    """The builds that a note may be of, as far as builds differ in speakers here."""
    every = builds(vehicle, bearing_axes(vehicle, note.place, "speakers"))
    return matching(every, known_splits(vehicle, note.splits, note.year))


def _differ(one: FilterSeen | str, other: FilterSeen | str) -> bool:
    """Whether both cannot be so; that there is none beside the speaker says nothing of one in an amplifier."""
    filters = [said for said in (one, other) if isinstance(said, FilterSeen)]
    if len(filters) < 2:
        return any(said.where != "in the amplifier" for said in filters)
    wheres = {said.where for said in filters if said.where}
    values = {said.capacitor.base for said in filters if said.capacitor}
    return len(wheres) == 2 or len(values) == 2


def _explains(
    cars: tuple[Build, ...],
    said: FilterSeen | str,
    mine: tuple[Build, ...],
    yours: tuple[Build, ...],
    own: FilterSeen | str,
) -> bool:
    """Whether a third look has what the first one has, on builds that the first may be of and the second may not."""
    return not _differ(said, own) and set(cars) < set(mine) and not set(cars) & set(yours)


def _finding(scope: PlaceScope, notes: tuple[Seen, Seen], alike: list[Build]) -> Finding:
    return Finding(
        rule=RULE.name,
        key="/".join((RULE.name, scope.vehicle, scope.place, common_values(alike))),
        weight="look first",
        says="a filter is on the factory speaker, and none or another one is",
        quotes=tuple(Quote.of(scope.book, note, ("factory_speaker", "filter")) for note in notes),
        difference="the filter",
        proposals=(
            Proposal("package", "the package differs: its factory amplifier filters in one of them only"),
            Proposal("one is wrong", "a capacitor in the lead is easily overlooked: a meter reads open across it"),
        ),
        loss=TWEETER_GONE,
        question="Is there a filter on it?",
        answers=("the package differs", "there is one", "there is none", "look next car"),
        vehicle=scope.vehicle,
        place=scope.place,
    )


RULE = Rule("filter-there-and-not", "A filter, and none", "conflict", __doc__ or "", PlaceScope, check)
