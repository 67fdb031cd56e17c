"""Whether two readings differ by the face, the tool or the side from which they were taken."""

from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction

from bezelbook.kinds.connector.record import Connector
from bezelbook.kinds.note.record import AnyNote, Measured, Metered, RoomReading
from bezelbook.reasoning.differing.axes import said_on
from bezelbook.reasoning.differing.case import Case
from bezelbook.reasoning.differing.explanation import Explanation
from bezelbook.reasoning.differing.weights import BEYOND_USUAL, FACES_APART, ROUGH, weighs
from bezelbook.reasoning.differing.worded import worded
from bezelbook.reasoning.mounting import stack_of
from bezelbook.reasoning.speakers.evidence import seat_of
from bezelbook.values.quantity import Quantity
from bezelbook.values.words import Axis, Datum

# What is offered up sits against these.
WHERE_THINGS_SIT = ("sub-dash face", "kit seat", "door metal", "bracket seat")
IN_FRONT, TRIM = "front clearance", "the trim, which makes it deeper than it is"
# A difference is a kit's depth when it is within this of it, in nanometres.
NEAR = 2_000_000


def read_how(case: Case) -> Iterator[Explanation]:
    """The face, the tool, and from which side cavities were counted, where the notes are readings."""
    readings = [note for note in case.notes if isinstance(note, Measured)]
    if readings and (case.clash.size == "depth" or case.otherwise):
        yield from _face(case, readings)
    if readings and case.clash.size:
        yield from _tool(case, readings)
    metered = [note for note in case.notes if isinstance(note, Metered)]
    if len(metered) == len(case.notes):
        yield from _view(case, metered)


def said(axis: Axis, note: AnyNote) -> str | None:
    """What a note says on an axis; None where it leaves it blank or has none."""
    return said_on(None, note).get(axis)


def _face(case: Case, readings: list[Measured]) -> Iterator[Explanation]:
    """Another face: likely where two faces are named, or one is blank and a kit just so deep."""
    faces = [said("datum", note) for note in readings]
    alike = len(set(faces)) == 1 and (len(faces) > 1 or faces[0] in WHERE_THINGS_SIT)
    if case.weighed or (alike and None not in faces):
        yield from _face_mistaken(case)
        return
    kit = _just_so_deep(case)
    likely = weighs("two faces" if None not in faces else "a face unsaid")
    likely *= Fraction(1) if case.clash.by <= FACES_APART else weighs("beyond two faces")
    likely = weighs("a kit's depth") if kit else likely
    more = f"the difference is just what {kit} is deep" if kit else ""
    words = _worded("datum", "face", case, readings, more)
    yield Explanation("datum", words, likely, (more,) if more else ())


def _face_mistaken(case: Case) -> Iterator[Explanation]:
    """A depth of either that was read from another face than it says, where that settles the clash: the likeliest."""
    found = [
        (likely * case.odd(at) * weighs("another face"), f"the face: {note.id} may have been read from {words}")
        for at, note in enumerate(case.notes)
        for words, likely in _other_faces(case, note).items()
    ]
    if found:
        likely, words = max(found, key=lambda one: one[0])
        yield Explanation("datum", words, likely)


def _other_faces(case: Case, note: AnyNote) -> Mapping[str, Fraction]:
    """From what else a note may have been read, in words, and how well the best of it settles the clash."""
    found: dict[str, Fraction] = {}
    if case.otherwise is not None and isinstance(note, Measured):
        for at, reading in enumerate(note.readings):
            for words, meant, likely in _meant(case, note, reading):
                kept = (*note.readings[:at], meant, *note.readings[at + 1 :])
                settled = case.otherwise.settles({note.id: note.model_copy(update={"readings": kept})})
                found[words] = max(found.get(words, Fraction(0)), likely * settled)
    return {words: likely for words, likely in found.items() if likely}


def _meant(case: Case, note: Measured, reading: RoomReading) -> Iterator[tuple[str, RoomReading, Fraction]]:
    """Each other face in words, the reading as it would then have been written, and how likely it is so far away.

    From the trim a depth is deeper than it is; in front there may be more or less, of which one settles it. A seat may
    have been written for the bare face, and the other way round where there was a mount.
    """
    of = case.vehicle.places.get(case.place) if case.vehicle else None
    bare: Datum = "sub-dash face" if reading.of == "depth" else seat_of(of.kind if of else None)
    seat: Datum = "kit seat" if reading.of == "depth" else "bracket seat"
    if reading.datum not in (bare, seat):
        return
    way = 0 if reading.of == IN_FRONT else FACES_APART // 2
    reads = Quantity("length", reading.reads.base - way, FACES_APART - way, None, reading.reads.typed)
    either_way, words = (2, "another face than it says") if reading.of == IN_FRONT else (1, TRIM)
    within = max(BEYOND_USUAL, 1 - Fraction(case.wanted, FACES_APART)) / either_way
    yield words, reading.model_copy(update={"reads": reads}), within
    other = bare if reading.datum == seat else seat
    if note.mounts not in (None, "none"):
        words = f"the {other} and not from the {reading.datum}"
        yield words, reading.model_copy(update={"datum": other}), Fraction(1)


def _just_so_deep(case: Case) -> str:
    """The mount of the place by which the two readings differ; empty when there is none."""
    middles = [
        one.reads.base
        for note in case.notes
        if isinstance(note, Measured)
        for one in note.readings
        if one.of == "depth" or one.of.startswith("rear depth")
    ]
    apart = {abs(one - other) for one in middles for other in middles}
    for mount in case.book.mounts.values():
        offset = stack_of(case.book, (mount.id,)).offset
        middle = None if offset.low is None or offset.high is None else abs(offset.low + offset.high) // 2
        if middle and any(abs(gap - middle) <= NEAR for gap in apart):
            return mount.name
    return ""


def _tool(case: Case, readings: list[Measured]) -> Iterator[Explanation]:
    tools: Sequence[str | None] = [said("tool", note) for note in readings]
    if case.weighed and len(case.clash.between) == len(case.notes):
        tools = [one.tool for one in case.clash.between][-len(readings) :]
    rough = max(ROUGH.get(tool, 0) for tool in tools)
    alike = len(tools) > 1 and len(set(tools)) == 1 and tools[0] not in (None, "eye")
    if rough and not alike:
        likely = weighs("a rough tool" if case.clash.by <= rough else "beyond a tool")
        likely *= weighs("a tool trusted") if case.weighed else 1
        yield Explanation("tool", _worded("tool", "tool", case, readings), likely)


def _view(case: Case, metered: list[Metered]) -> Iterator[Explanation]:
    views = [said("view", note) for note in case.notes]
    if None in views or views[0] != views[1]:
        mirrored = _mirror_images(case, *metered)
        likely = weighs("mirror image" if mirrored else "a view unsaid")
        more = "the one list is the mirror image of the other" if mirrored else ""
        yield Explanation("view", worded("view", case.notes, lambda note: said("view", note), more), likely)


def _mirror_images(case: Case, first: Metered, second: Metered) -> bool:
    """Whether every cavity that both name carries in the one what its mirror image carries in the other."""
    connector = case.book.named("connector", first.plug)
    columns = connector.columns if isinstance(connector, Connector) else None
    if not columns:
        return False
    theirs = {one.cavity: one.carries for one in second.cavities}
    pairs = [(one.carries, theirs.get(_mirror(one.cavity, columns))) for one in first.cavities]
    met = [pair for pair in pairs if pair[1] is not None]
    return bool(met) and all(one == other for one, other in met)


def _mirror(cavity: int, columns: int) -> int:
    row, column = divmod(cavity - 1, columns)
    return row * columns + columns - column


def _worded(axis: Axis, name: str, case: Case, readings: list[Measured], more: str = "") -> str:
    if len(readings) == len(case.notes):
        return worded(axis, case.notes, lambda note: said(axis, note), more).replace(f"the {axis}", f"the {name}", 1)
    told = said(axis, readings[0])
    does = f"{readings[0].id} was read {'from the ' if axis == 'datum' else 'with '}{told}"
    words = f"the {name}: " + (does if told else f"{readings[0].id} does not say")
    return f"{words}; {more}" if more else words
