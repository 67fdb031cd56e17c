"""Whether two readings differ by the face, the tool or the side from which they were taken."""

from collections.abc import Iterator, Sequence
from fractions import Fraction

from bezelbook.kinds.connector.record import Connector
from bezelbook.kinds.note.record import AnyNote, Measured, Metered
from bezelbook.reasoning.differing.axes import said_on
from bezelbook.reasoning.differing.case import Case
from bezelbook.reasoning.differing.clash import offset_said
from bezelbook.reasoning.differing.explanation import Explanation
from bezelbook.reasoning.differing.weights import FACES_APART, ROUGH, weighs
from bezelbook.reasoning.differing.worded import worded
from bezelbook.reasoning.mounting import stack_of
from bezelbook.values.words import Axis

# What is offered up sits against these.
WHERE_THINGS_SIT = ("sub-dash face", "kit seat", "door metal", "bracket seat")
# A difference is a kit's depth when it is within this of it, in nanometres.
NEAR = 2_000_000


def read_how(case: Case) -> Iterator[Explanation]:
    """The face, the tool, and from which side cavities were counted, where the notes are readings."""
    readings = [note for note in case.notes if isinstance(note, Measured)]
    if readings and case.clash.size == "depth":
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
    """What is compared at all was read from faces that are known: a seat may have been written for the bare face.

    Or the other way round; only where what the mounts hold out is enough. Else what was read deeper than another note
    leaves it may have been read from the trim.
    """
    faces = [one.datum for one in case.clash.between]
    if case.weighed and len(set(faces)) > 1 and None not in faces and any(_enough_between(case)):
        first, second = faces if case.clash.roomier == 0 else faces[::-1]
        words = f"the face: {first} in {case.notes[0].id}, {second} in {case.notes[1].id}"
        yield Explanation("datum", words, weighs("said wrongly"))
    elif isinstance(case.roomier, Measured) and case.wanted <= FACES_APART:
        words = f"the face: {case.roomier.id} may have been read from the trim, which makes it deeper than it is"
        yield Explanation("datum", words, weighs("laid on the trim"))


def _enough_between(case: Case) -> Iterator[bool]:
    """Of each of the two whether there is room enough once the mounts are left out of it, or counted in."""
    order = case.notes if case.clash.roomier == 0 else case.notes[::-1]
    for said, note, way in zip(case.clash.between, order, (1, -1), strict=True):
        out = offset_said(case.book, note)
        more = 0 if out is None else (-out if said.held else out)
        yield way * more >= max(case.wanted, 1)


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
