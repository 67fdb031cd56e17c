"""Whether two readings differ by the face, the tool or the side from which they were taken."""

from collections.abc import Iterator
from fractions import Fraction

from bezelbook.kinds.connector.record import Connector
from bezelbook.kinds.note.record import AnyNote, Measured, Metered
from bezelbook.reasoning.differing.axes import said_on
from bezelbook.reasoning.differing.case import Case
from bezelbook.reasoning.differing.explanation import Explanation
from bezelbook.reasoning.differing.worded import worded
from bezelbook.reasoning.mounting import stack_of
from bezelbook.values.words import Axis

MM = 1_000_000
# How far faces lie apart in a dash or a door at most, and how far a tool may be out: common practice, no source.
FACES_APART = 45 * MM
ROUGH = {"eye": 20 * MM, "tape": 6 * MM, "wire": 8 * MM, None: 8 * MM}
# What is offered up sits against these.
WHERE_THINGS_SIT = ("sub-dash face", "kit seat", "door metal", "bracket seat")
NEAR = 2 * MM


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
    if alike and None not in faces:
        return
    kit = _just_so_deep(case)
    likely = Fraction(4, 5) if None not in faces else Fraction(1, 2)
    likely = Fraction(9, 10) if kit else likely if case.clash.by <= FACES_APART else likely / 8
    more = f"the difference is just what {kit} is deep" if kit else ""
    words = _worded("datum", "face", case, readings, more)
    yield Explanation("datum", words, likely, (more,) if more else ())


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
    tools = [said("tool", note) for note in readings]
    rough = max(ROUGH.get(tool, 0) for tool in tools)
    alike = len(tools) > 1 and len(set(tools)) == 1 and tools[0] not in (None, "eye")
    if rough and not alike:
        likely = Fraction(2, 5) if case.clash.by <= rough else Fraction(1, 20)
        yield Explanation("tool", _worded("tool", "tool", case, readings), likely)


def _view(case: Case, metered: list[Metered]) -> Iterator[Explanation]:
    views = [said("view", note) for note in case.notes]
    if None in views or views[0] != views[1]:
        mirrored = _mirror_images(case, *metered)
        likely = Fraction(9, 10) if mirrored else Fraction(1, 3)
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
