"""What an answer does not know: what is missing, where to look, and what it would change."""

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass

from bezelbook.kinds.note.record import Measured, Tried
from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.reasoning.builds import Build
from bezelbook.reasoning.cells import Demand, Setting
from bezelbook.reasoning.corners import body_demands
from bezelbook.reasoning.evidence import Standing, refused_reading, standing_of
from bezelbook.reasoning.question import Asked, open_axes
from bezelbook.reasoning.room import Place, Rooms
from bezelbook.reasoning.room_span import room_spans
from bezelbook.reasoning.verdict import judge
from bezelbook.values.listed import listed
from bezelbook.values.words import NINTHS, Ninth

FACE = "depth gauge from the sub-dash face, 2 min with the hole open"


@dataclass(frozen=True, slots=True)
class Missing:
    """Something nobody knows, where to look, and what it changes; all in the shop's words."""

    what: str
    look: str
    changes: str


def unknowns(place: Place, question: Asked) -> Iterator[Missing]:
    """Everything that this answer had to do without."""
    yield from _builds(place, question)
    yield from _thing(question)
    yield from _ninths(place, question)
    tried = (one.note for one in place.evidence.weak if isinstance(one.note, Tried))
    weak = (standing_of(place.frame.book, place.frame.vehicle, note) for note in tried if note.verdict != "not tried")
    notes = (*place.evidence.standing, *weak)
    yield from _unsaid(notes)
    for one in notes:
        yield from _refused(one)


def _builds(place: Place, question: Asked) -> Iterator[Missing]:
    return open_builds(
        place.frame.vehicle,
        place.frame.place,
        question.builds,
        lambda cars: judge(place, question.narrowed(builds=cars)).verdict,
    )


def open_builds(
    vehicle: Vehicle, place: str, cars: tuple[Build, ...], verdict: Callable[[tuple[Build, ...]], str]
) -> Iterator[Missing]:
    """The splits that are open among these builds: how to tell, and what the verdict is on each side."""
    for axis in open_axes(vehicle, place, cars):
        split = vehicle.splits[axis]
        verdicts = []
        for value in split.values:
            side = tuple(build for build in cars if dict(build)[axis] == value)
            if side:
                verdicts.append(f"{value}: {verdict(side)}")
        tells = [f"{value}: {one.tell}" for value, one in split.values.items() if one.tell]
        yield Missing(
            f"the {axis} is not known", "; ".join(tells) or "nobody has written how to tell", "; ".join(verdicts)
        )


def _thing(question: Asked) -> Iterator[Missing]:
    needs = question.needs
    if needs.printed:
        printed = ", ".join(needs.printed)
        yield Missing(
            f"{printed} of {needs.name}: printed only", "caliper, 2 min on the bench", "whether it goes in at all"
        )
    blank = [need for need, span in needs.spans.items() if need in needs.asked and not span.known]
    blank = [need for need in blank if need not in needs.printed and need != "plug" and "nose" not in need]
    if blank:
        yield Missing(
            f"{', '.join(blank)} of {needs.name}: not looked",
            "caliper, 2 min on the bench",
            "whether it goes in at all",
        )
    if "plug" in needs.asked and needs.plug_over_body.high is None:
        yield Missing("how much its plug and bend need", "plug it in on the bench and rule it, 3 min", "the last 15 mm")
    if "plug" in needs.asked and needs.exit is None:
        yield Missing("where its plug leaves", "look at the back of it, 1 min", "which ninth has to be the deep one")


def _ninths(place: Place, question: Asked) -> Iterator[Missing]:
    if "depth" not in question.needs.asked:
        return
    blank = {ninth for setting in question.settings for ninth in blank_ninths(place, setting)}
    if blank:
        named = ", ".join(ninth for ninth in NINTHS if ninth in blank)
        what = "the depth was never measured" if len(blank) == len(NINTHS) else f"depth not looked at: {named}"
        yield Missing(what, FACE, "how deep a thing may be")


def blank_ninths(place: Place, setting: Setting) -> list[Ninth]:
    """The ninths behind the hole, in their order, of which no reading tells both ends; one argued over was read."""
    wanted = [demand for demand in body_demands(place, setting) if demand.ninth is not None]
    blank = [_blank(rooms, setting, wanted) for rooms in place.accounts]
    return [ninth for ninth in NINTHS if all(ninth in ninths for ninths in blank)]


def _blank(rooms: Rooms, setting: Setting, wanted: list[Demand]) -> set[Ninth]:
    spans = room_spans(rooms.measured(), setting, wanted)
    return {demand.ninth for demand, room in zip(wanted, spans, strict=True) if demand.ninth and room.most is None}


def _unsaid(notes: Iterable[Standing]) -> Iterator[Missing]:
    """What the notes leave out, in one line for each person who could be asked."""
    by_author: dict[str, dict[str, list[str]]] = {}
    for one in notes:
        blanks = _blanks(one)
        if blanks:
            by_author.setdefault(one.note.author or "its author", {})[one.note.id] = blanks
    for author, left_out in by_author.items():
        said = "does not say" if len(left_out) == 1 else "do not all say"
        what = listed(list(dict.fromkeys(blank for blanks in left_out.values() for blank in blanks)), "or")
        yield Missing(f"{listed(list(left_out))} {said} {what}", f"ask {author}", "how far that carries")


def _blanks(one: Standing) -> list[str]:
    note = one.note
    blanks = ["which build the car was"] if len(one.builds) > 1 else []
    if isinstance(note, Tried) and note.mounts is None:
        blanks.append("which mounts were used")
    if isinstance(note, Tried) and one.says == "goes in" and note.cut is None:
        blanks.append("whether anything was cut")
    if isinstance(note, Tried) and one.says == "does not" and note.loom is None:
        blanks.append("where the loom was")
    return blanks


def _refused(one: Standing) -> Iterator[Missing]:
    if not isinstance(one.note, Measured) or one.stack is None:
        return
    for reading in one.note.readings:
        why = refused_reading(reading, one.stack)
        if why:
            yield Missing(
                f"{reading.of} {reading.reads.typed} in {one.note.id} {why}", FACE, "whether that number can be used"
            )
