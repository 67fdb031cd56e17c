"""Which of the other notes of a place side with the one note of a clash, and which with the other."""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction

from bezelbook.kinds.note.record import AnyNote, Metered, Seen
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.differing.clash import net_clash_of

SEEN = ("plug", "populated", "amplifier", "amplifier_is", "amplifier_where", "speakers_counted", "accessory_supply")
Said = Callable[[AnyNote], str | None]


@dataclass(frozen=True, slots=True)
class Sided:
    """Another note of the place, and which of the two it cannot be true together with."""

    note: AnyNote
    against: tuple[bool, bool]


def sided(book: KnowledgeBase, place: Sequence[AnyNote], first: AnyNote, second: AnyNote) -> tuple[Sided, ...]:
    """The other notes of the place that contradict exactly one of the two."""
    others = [note for note in place if note.id not in (first.id, second.id)]
    found = (Sided(note, (contradict(book, note, first), contradict(book, note, second))) for note in others)
    return tuple(one for one in found if one.against[0] != one.against[1])


def contradict(book: KnowledgeBase, one: AnyNote, other: AnyNote) -> bool:
    """Whether two notes cannot both be true of one and the same car, as far as they can be compared."""
    if net_clash_of(book, one, other).size:
        return True
    ours, theirs = claims(one), claims(other)
    return any(ours[name] != theirs[name] for name in ours.keys() & theirs.keys())


def claims(note: AnyNote) -> Mapping[str, str]:
    """What a note says that another can say differently, where it is not a matter of room."""
    if isinstance(note, Seen):
        return {name: str(value) for name in SEEN if (value := getattr(note, name)) is not None}
    if isinstance(note, Metered):
        return {f"{note.plug} {one.cavity}": one.carries for one in note.cavities}
    return {}


def weight(others: Sequence[Sided], said: Said, value: str, other_value: str) -> Fraction:
    """How far the place's other notes bear it out that the first note is of one value and the second of another.

    One half where none of them says; a note that has the value of one of the two and contradicts only the other is for
    it, one that has its value and contradicts it counts twice against it (a rule of succession).
    """
    agree = against = 0
    for one in others:
        has = said(one.note)
        contradicted = one.against[0] if has == value else one.against[1]
        if has in (value, other_value):
            agree += not contradicted
            against += contradicted
    return Fraction(1 + agree, 2 + agree + 2 * against)


def oddness(others: Sequence[Sided], which: int) -> Fraction:
    """How far the other notes contradict the one of two and not the other: 1 as they are, up to 2, down to 0."""
    apart = [sum(one.against[at] for one in others) for at in (0, 1)]
    return Fraction(2 * (1 + apart[which]), 2 + sum(apart))


def camps(others: Sequence[Sided]) -> Fraction:
    """How far they side with both alike, as with two sorts of car: 1 where they do, less where all are for one."""
    apart = [sum(one.against[at] for one in others) for at in (0, 1)]
    return Fraction(1 + min(apart), 1 + max(apart))
