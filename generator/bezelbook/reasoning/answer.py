"""The answer to a question: the verdict, for exactly what, the number, how sure, what is argued, unknown and needed."""

from collections.abc import Mapping
from dataclasses import dataclass

from bezelbook.kinds.note.record import AnyNote
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.agreement.beside_answer import apart_unknowns
from bezelbook.reasoning.cells import frame_of
from bezelbook.reasoning.conditions import Condition
from bezelbook.reasoning.evidence import Beside, Standing, evidence_at
from bezelbook.reasoning.number import Spot, deciding, room_words
from bezelbook.reasoning.offer import Offer
from bezelbook.reasoning.outlook import Outlook
from bezelbook.reasoning.plain import PlainAnswer, PlainFor, PlainNote, PlainNumber
from bezelbook.reasoning.question import Asked, Question, asked, open_axes
from bezelbook.reasoning.quote import quote
from bezelbook.reasoning.room import Place
from bezelbook.reasoning.screens.beside_answer import screens_told
from bezelbook.reasoning.support import Support, support
from bezelbook.reasoning.unknowns import Missing, unknowns
from bezelbook.reasoning.verdict import Judgement, judge, viable
from bezelbook.values.listed import listed
from bezelbook.values.shown import show_length
from bezelbook.values.words import AnswerVerdict

FIRM: Mapping[AnswerVerdict, Outlook] = {"goes in": "always", "does not": "never"}
NOBODY = Support((), "worked out", 0)


@dataclass(frozen=True)
class Quoted:
    """A note beside an answer: its own line, and why it stands where it does."""

    note: AnyNote
    words: str
    why: str


@dataclass(frozen=True)
class Answer:
    """Everything that is said to a question; nothing in it was typed by anybody as an answer."""

    verdict: AnswerVerdict
    until_settled: str | None
    question: Question
    asked: Asked
    for_words: str
    spot: Spot | None
    sure: str | None
    witnesses: int
    notes: tuple[Quoted, ...]
    argued: tuple[Quoted, ...]
    unknown: tuple[Missing, ...]
    conditions: tuple[Condition, ...]
    needs: tuple[str, ...]
    first_unit: str
    instead: tuple[Offer, ...] = ()

    def plain(self) -> PlainAnswer:
        """The answer as plain data, with the keys that the command line and the pages share."""
        return {
            "verdict": self.verdict,
            "until_settled": self.until_settled,
            "for": self._for(),
            "number": self._number(),
            "sure": self.sure,
            "witnesses": self.witnesses,
            "notes": [plain_note(quoted) for quoted in self.notes],
            "argued": [plain_note(quoted) for quoted in self.argued],
            "unknown": [{"what": one.what, "look": one.look, "changes": one.changes} for one in self.unknown],
            "needs": list(self.needs),
            "instead": [offer.plain() for offer in self.instead],
        }

    def _for(self) -> PlainFor:
        axes = sorted({axis for build in self.asked.builds for axis, _ in build})
        known = {axis: self.asked.known.get(axis, "not looked") for axis in axes}
        return {
            "vehicle": self.question.vehicle,
            "place": self.question.place,
            "splits": known,
            "mounts": [list(stack.key) for stack in self.asked.stacks],
            "cut": self.asked.cut,
            "loom": self.asked.loom,
            "plugs": "on" if self.asked.plugs_on else "off",
            "what": self.question.unit or self.asked.needs.name,
            "words": self.for_words,
        }

    def _number(self) -> PlainNumber | None:
        spot = self.spot
        if spot is None:
            return None
        spare = spot.to_spare
        return {
            "need": spot.need,
            "where": spot.ninth,
            "asks": spot.asks(self.first_unit),
            "room": room_words(spot.room, self.first_unit),
            "to_spare": None if spare is None else show_length(spare, self.first_unit),
            "words": spot.words(self.first_unit),
        }


def place_of(book: KnowledgeBase, vehicle: str, place: str) -> Place:
    """A place with its evidence, ready to be asked about. The vehicle must be in the book."""
    frame = frame_of(book, book.vehicles[vehicle], place)
    return Place(frame, evidence_at(book, frame.vehicle, place))


def answer(book: KnowledgeBase, question: Question, place: Place | None = None) -> Answer:
    """The answer to a question about a dash opening; `place` may be handed in to be used for many questions."""
    place = place or place_of(book, question.vehicle, question.place)
    resolved = viable(place, asked(place.frame, place.evidence, question))
    found = judge(place, resolved)
    behind = _support(place, resolved, found)
    screen = screens_told(place, resolved, question.unit)
    return Answer(
        verdict=found.verdict,
        until_settled="does not" if found.verdict == "argued over" else None,
        question=question,
        asked=resolved,
        for_words=_for_words(place, question, resolved),
        spot=deciding(place, _as_far_as_known(resolved, found), found.verdict),
        sure=behind.sure if behind else None,
        witnesses=behind.witnesses if behind else 0,
        notes=tuple(_notes(place, resolved, behind or NOBODY)),
        argued=tuple(_argued(place, resolved)),
        unknown=(*unknowns(place, resolved), *apart_unknowns(place, resolved), *screen.missing),
        conditions=found.conditions,
        needs=(*_needs(place, resolved, found), *screen.lines),
        first_unit=book.shop.units_first,
    )


def _as_far_as_known(resolved: Asked, found: Judgement) -> Asked:
    """The question with its first condition filled in, which is the case that the number and the notes are about."""
    narrowed = found.conditions[0].narrowed if found.conditions else None
    return narrowed or resolved


def _support(place: Place, resolved: Asked, found: Judgement) -> Support | None:
    """What carries a firm answer, or the yes that the first condition would make."""
    if found.verdict in FIRM:
        return support(place, resolved, FIRM[found.verdict])
    if found.conditions:
        narrowed = _as_far_as_known(resolved, found)
        return NOBODY if narrowed is resolved else support(place, narrowed, "always")
    return None


def _for_words(place: Place, question: Question, resolved: Asked) -> str:
    vehicle, where = place.frame.vehicle, place.frame.vehicle.places.get(question.place)
    builds = [value for axis, value in sorted(resolved.known.items()) if axis in dict(resolved.builds[0])]
    builds += [f"{axis} not known" for axis in open_axes(vehicle, question.place, resolved.builds)]
    mounts = listed([stack.words for stack in resolved.stacks], "or")
    place_name = (where.name if where else None) or question.place.replace("-", " ")
    state = [
        f"with {mounts}",
        f"{resolved.cut} cut",
        f"loom {resolved.loom}",
        "plugs on" if resolved.plugs_on else "plugs off",
    ]
    return f"{resolved.needs.name} in the {place_name} of the {vehicle.name}, {', '.join([*builds, *state])}"


def _notes(place: Place, resolved: Asked, behind: Support) -> list[Quoted]:
    book = place.frame.book
    carrying = [Quoted(one.note, quote(book, one.note), "carries the answer") for one in behind.notes]
    weak = [_beside(book, one) for one in place.evidence.weak + place.evidence.aside]
    other = [one for one in place.evidence.standing if one not in behind.notes and _same_thing(place, one, resolved)]
    return carrying + [Quoted(one.note, quote(book, one.note), "same thing, in another state") for one in other] + weak


def _same_thing(place: Place, one: Standing, resolved: Asked) -> bool:
    return place.all_notes.key_of(one) == resolved.needs.key


def _beside(book: KnowledgeBase, one: Beside) -> Quoted:
    return Quoted(one.note, quote(book, one.note), one.why)


def _argued(place: Place, resolved: Asked) -> list[Quoted]:
    """The notes about these builds that cannot all be true: each is left out by some largest consistent set."""
    kept = [set(rooms.notes) for rooms in place.accounts]
    book = place.frame.book
    asked_builds = set(resolved.builds)
    left_out = [
        one
        for one in place.evidence.standing
        if any(one not in notes for notes in kept) and asked_builds & set(one.builds)
    ]
    return [Quoted(one.note, quote(book, one.note), "cannot be true together with another") for one in left_out]


def _needs(place: Place, resolved: Asked, found: Judgement) -> list[str]:
    """What else it takes; for "goes in if" the first line ends that sentence."""
    book = place.frame.book
    lines = [condition.words for condition in found.conditions]
    if len(resolved.stacks) == 1:
        for mount in (book.mounts[key] for key in resolved.stacks[0].key if key in book.mounts):
            lines += [
                f"{mount.name}",
                *(f"{book.mounts[key].name} with it" for key in mount.needs_too if key in book.mounts),
            ]
            lines += [f"drill: {hole}" for hole in mount.holes.to_drill]
            lines += [f"cannot be undone: {step}" for step in mount.cannot_be_undone]
    where = place.frame.vehicle.places.get(place.frame.place)
    if where and where.safety not in (None, "none"):
        lines.append(f"{where.safety}: the vehicle's service information comes first, and a qualified person")
    return lines


def plain_note(quoted: Quoted) -> PlainNote:
    """A quoted note as plain data."""
    note = quoted.note
    return {
        "note": note.id,
        "author": note.author,
        "date": note.date,
        "sure": getattr(note, "sure", None) or note.form,
        "words": quoted.words,
        "why": quoted.why,
    }
