"""Whether two notes are of two sorts of car: the vehicle's splits, and changes that the book has no split for."""

from collections.abc import Iterator
from dataclasses import replace
from fractions import Fraction
from functools import partial

from bezelbook.kinds.note.record import AnyNote, Bench, Measured, Metered, Seen, Tried
from bezelbook.kinds.vehicle.record import BearsOn, Split, Subject, Vehicle
from bezelbook.reasoning.builds import bearing_axes, known_splits
from bezelbook.reasoning.differing.axes import SPLIT_AXES
from bezelbook.reasoning.differing.case import Asked, Case, Said
from bezelbook.reasoning.differing.explanation import Explanation
from bezelbook.reasoning.differing.siding import camps, claims, weight
from bezelbook.reasoning.differing.weights import BEYOND_USUAL, CARS_APART, weighs
from bezelbook.reasoning.proposal import NEW_SPLIT
from bezelbook.values.words import Axis

REAR = frozenset({"rear door", "rear quarter", "parcel shelf", "load bay side", "wheel well"})
SOUND = frozenset({"amplifier", "amplifier_is", "amplifier_where", "speakers_counted"})
SEAT = "look from the seat at both cars for what tells them apart"


def other_cars(case: Case) -> Iterator[Explanation]:
    """Each split on which the two may be of different values, then changes that no split of the book has."""
    if case.vehicle is None or _one_car(case):
        return
    told: set[Axis] = set()
    known = False
    bearing = bearing_axes(case.vehicle, case.place, subject_of(case.notes[0]))
    for name, split in case.vehicle.splits.items():
        axis = SPLIT_AXES.get(split.differs_in or "build", "build")
        found = _by_split(case, case.vehicle, name, split, axis, bears=name in bearing)
        if found is not None:
            told |= {axis} if name in bearing else set()
            known |= name not in bearing
            yield found
    yield from _unwritten(case, told, known=known)


def _one_car(case: Case) -> bool:
    """Whether both are of one job, and so of one car."""
    first, second = (note.job for note in case.notes)
    return first is not None and first == second


def subject_of(note: AnyNote) -> Subject:
    """What a note is about, as far as splits bear on it."""
    if isinstance(note, Tried | Measured):
        return "room"
    if isinstance(note, Metered):
        return "circuits"
    if isinstance(note, Seen) and (note.lies_over or note.pieces):
        return "trim"
    return "amplifier" if SOUND & claims(note).keys() else "plug"


def split_said(vehicle: Vehicle, name: str) -> Said:
    """What a note says on one split, a model year counted where it implies a value."""

    def said(note: AnyNote) -> str | None:
        return None if isinstance(note, Bench) else known_splits(vehicle, note.splits, note.year).get(name)

    return said


def year_said(note: AnyNote) -> str | None:
    """The model year of a note's car in words."""
    return None if isinstance(note, Bench) or note.year is None else f"model year {note.year}"


def split_written(name: str) -> Said:
    """What a note itself says on one split."""

    def written(note: AnyNote) -> str | None:
        return None if isinstance(note, Bench) else note.splits.get(name)

    return written


def _by_split(case: Case, vehicle: Vehicle, name: str, split: Split, axis: Axis, *, bears: bool) -> Explanation | None:
    weighed, said = case.weighed and bears, split_said(vehicle, name)

    def explains(first: str, second: str) -> Fraction:
        pair = zip((first, second), case.notes, strict=True)
        built = weighed or all(_in_its_years(split, value, note) for value, note in pair)
        matters = _bears(case, axis, named=bears) * _matters(case, said, first, second)
        return matters if built and first != second else Fraction(0)

    asked = Asked(axis, said, tuple(split.values), split_written(name), partial(_of_value, name), name, weighed)
    everywhere = split.model_copy(update={"bears_on": BearsOn()})
    bearing = vehicle.model_copy(update={"splits": {**vehicle.splits, name: everywhere}})
    return case.unequal(asked if bears else replace(asked, beside=bearing), explains)


def _of_value(name: str, note: AnyNote, value: str) -> AnyNote:
    """A note of a car of this value."""
    splits = {} if isinstance(note, Bench) else {**note.splits, name: value}
    return note.model_copy(update={"splits": splits})


def _bears(case: Case, axis: Axis, *, named: bool) -> Fraction:
    """How far a split bears on what the two notes are about; which sound a car has seldom changes its room."""
    if not named:
        return weighs("bears elsewhere")
    return weighs("sound and room") if axis == "package" and subject_of(case.notes[0]) == "room" else Fraction(1)


def _matters(case: Case, said: Said, first: str, second: str) -> Fraction:
    """How likely two sorts of car differ so, until the place's other notes bear it out or nothing else is left."""
    within = max(BEYOND_USUAL, 1 - Fraction(case.wanted, CARS_APART)) if case.clash.size else Fraction(1)
    borne_out = case.weighed or weight(case.others, said, first, second) > Fraction(1, 2)
    return within if borne_out else within * weighs("splits matter")


def _in_its_years(split: Split, value: str, note: AnyNote) -> bool:
    years = split.values[value].years if value in split.values else ()
    return isinstance(note, Bench) or note.year is None or not years or note.year in years


def _unwritten(case: Case, told: set[Axis], *, known: bool) -> Iterator[Explanation]:
    """A difference between cars that the book does not know yet; what would have to be looked at goes with it."""
    about = claims(case.notes[0]).keys()
    kind = case.vehicle.places[case.place].kind if case.vehicle and case.place in case.vehicle.places else ""
    if case.weighed or "build" not in told:
        words = f"a change in the run that the book has no split for: {_years(case)}; {SEAT}"
        likely = weighs("new split") * camps(case.alike) if case.weighed else _run(case)
        likely *= _seldomer(case, known=known) if case.weighed else 1
        yield Explanation("build", words, likely, split=NEW_SPLIT)
    if "package" not in told and (SOUND & about or isinstance(case.notes[0], Metered)):
        words = (
            "the package, for which the book has no split: count the speakers of both cars and look for an amplifier"
        )
        yield Explanation("package", words, weighs("new package"), split=NEW_SPLIT)
    if "body" not in told and kind in REAR and not case.weighed:
        words = "the body, for which the book has no split: look at the doors and the roof"
        yield Explanation("body", words, weighs("new body"), split=NEW_SPLIT)


def _seldomer(case: Case, *, known: bool) -> Fraction:
    """How much seldomer a split is that nobody knows where another would do, and within a year."""
    first, second = (year_said(note) for note in case.notes)
    within = weighs("new split, one year") / weighs("new split, two years") if first and first == second else 1
    return within * (weighs("one will do") if known else Fraction(1))


def _run(case: Case) -> Fraction:
    """A change between two model years is likelier than within one; other notes here may bear it out."""
    first, second = (year_said(note) for note in case.notes)
    if first is None or second is None:
        return weighs("new split, no year" if first == second else "new split, a year unsaid")
    if first == second:
        return weighs("new split, one year")
    return weighs("new split, two years") * weight(case.others, year_said, first, second)


def _years(case: Case) -> str:
    """What is said of the two years, in a few words."""
    said = [(note.id, year_said(note)) for note in case.notes]
    blank = [id_ for id_, year in said if year is None]
    if len(blank) == len(said):
        return "neither says its model year"
    known = [f"{id_} is of {year}" for id_, year in said if year is not None]
    return " and ".join([*known, *(f"{id_} does not say" for id_ in blank)])
