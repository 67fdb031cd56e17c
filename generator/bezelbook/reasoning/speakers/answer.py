"""The answer to a question about a speaker, in the same parts and with the same keys as one about an opening."""

from collections.abc import Mapping
from dataclasses import dataclass

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.answer import Quoted, plain_note
from bezelbook.reasoning.number import room_words
from bezelbook.reasoning.offer import Offer
from bezelbook.reasoning.outlook import Outlook
from bezelbook.reasoning.plain import PlainAnswer, PlainFor, PlainNumber
from bezelbook.reasoning.question import open_axes
from bezelbook.reasoning.quote import quote
from bezelbook.reasoning.speakers.conditions import SpeakerCondition
from bezelbook.reasoning.speakers.covering import uncovered
from bezelbook.reasoning.speakers.fastening import fastening, typed_circle
from bezelbook.reasoning.speakers.number import WHERE, SpeakerSpot, deciding
from bezelbook.reasoning.speakers.question import SpeakerAsked, SpeakerQuestion, asked
from bezelbook.reasoning.speakers.rooms import SpeakerPlace, speaker_place_of
from bezelbook.reasoning.speakers.support import NOBODY, Carried, support
from bezelbook.reasoning.speakers.unknowns import unknowns
from bezelbook.reasoning.speakers.verdict import SpeakerJudgement, judge, viable
from bezelbook.reasoning.unknowns import Missing
from bezelbook.values.shown import show_length
from bezelbook.values.words import AnswerVerdict

FIRM: Mapping[AnswerVerdict, Outlook] = {"goes in": "always", "does not": "never"}
NO_MATTER = "does not apply"


@dataclass(frozen=True)
class SpeakerAnswer:
    """Everything that is said to a question about a speaker; nothing in it was typed by anybody as an answer."""

    verdict: AnswerVerdict
    until_settled: str | None
    question: SpeakerQuestion
    asked: SpeakerAsked
    for_words: str
    spot: SpeakerSpot | None
    sure: str | None
    witnesses: int
    notes: tuple[Quoted, ...]
    argued: tuple[Quoted, ...]
    unknown: tuple[Missing, ...]
    conditions: tuple[SpeakerCondition, ...]
    needs: tuple[str, ...]
    first_unit: str
    uncovered: tuple[int, int] | None = None
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
        return {
            "vehicle": self.question.vehicle,
            "place": self.question.place,
            "splits": {axis: self.asked.known.get(axis, "not looked") for axis in axes},
            "mounts": [list(stack.mounts) for stack in self.asked.stacks],
            "cut": self.asked.cut,
            "loom": NO_MATTER,
            "plugs": NO_MATTER,
            "what": self.question.speaker or self.asked.needs.name,
            "words": self.for_words,
            "tabs": self._tabs(),
            "glass": "up" if self.asked.glass == "up" else "run all the way down",
            "gasket": self.asked.gasket.key or "none",
        }

    def _tabs(self) -> str:
        if not any(stack.has_tabs for stack in self.asked.stacks):
            return NO_MATTER
        return self.asked.tabs or "not looked"

    def _number(self) -> PlainNumber | None:
        spot = self.spot
        if self.uncovered is not None:
            return self._flange(*self.uncovered)
        if spot is None:
            return None
        return {
            "need": spot.need,
            "where": WHERE[spot.size],
            "asks": spot.asks(self.first_unit),
            "room": room_words(spot.room, self.first_unit),
            "to_spare": None if spot.room.most is None else show_length(spot.left, self.first_unit),
            "words": spot.words(self.first_unit, went_in=self.verdict == "goes in"),
        }

    def _flange(self, reaches: int, hole: int) -> PlainNumber:
        """A flange that does not cover its hole, as the number that decides."""
        asks, room = show_length(reaches, self.first_unit), f"it is at least {show_length(hole, self.first_unit)}"
        words = f"flange: it reaches {asks} at most over the hole, and {room}"
        return {"need": "flange", "where": "the hole", "asks": asks, "room": room, "to_spare": None, "words": words}


def speaker_answer(book: KnowledgeBase, question: SpeakerQuestion, place: SpeakerPlace | None = None) -> SpeakerAnswer:
    """The answer to a question about a speaker; `place` may be handed in to be used for many questions."""
    place = place or speaker_place_of(book, question.vehicle, question.place)
    resolved = viable(place, asked(place, question))
    found = judge(place, resolved)
    behind = _carried(place, resolved, found)
    return SpeakerAnswer(
        verdict=found.verdict,
        until_settled="does not" if found.verdict == "argued over" else None,
        question=question,
        asked=resolved,
        for_words=_for_words(place, question, resolved),
        spot=deciding(place, _as_far_as_known(resolved, found), found.verdict),
        sure=behind[1] if behind else None,
        witnesses=behind[2] if behind else 0,
        notes=tuple(_notes(place, resolved, behind or NOBODY)),
        argued=tuple(_argued(place, resolved)),
        unknown=tuple(unknowns(place, resolved)),
        conditions=found.conditions,
        needs=tuple(_needs(place, question, _as_far_as_known(resolved, found), found)),
        first_unit=book.shop.units_first,
        uncovered=_uncovered(place, resolved) if found.verdict == "does not" else None,
    )


def _uncovered(place: SpeakerPlace, resolved: SpeakerAsked) -> tuple[int, int] | None:
    """The flange and the hole, where nothing but the one not covering the other stops it."""
    rooms = place.accounts[0]
    able = [setting for setting in resolved.settings if rooms.takes(resolved.needs, setting)]
    return next((found for setting in able if (found := uncovered(rooms, resolved.needs, setting))), None)


def _as_far_as_known(resolved: SpeakerAsked, found: SpeakerJudgement) -> SpeakerAsked:
    """The question with its first condition filled in, which is the case that the number and the notes are about."""
    narrowed = found.conditions[0].narrowed if found.conditions else None
    return narrowed or resolved


def _carried(place: SpeakerPlace, resolved: SpeakerAsked, found: SpeakerJudgement) -> Carried | None:
    """What carries a firm answer, or the yes that the first condition would make."""
    if found.verdict in FIRM:
        return support(place, resolved, FIRM[found.verdict])
    if found.conditions:
        narrowed = _as_far_as_known(resolved, found)
        return NOBODY if narrowed is resolved else support(place, narrowed, "always")
    return None


def _for_words(place: SpeakerPlace, question: SpeakerQuestion, resolved: SpeakerAsked) -> str:
    vehicle, where = place.frame.vehicle, place.frame.vehicle.places.get(question.place)
    said = [value for axis, value in sorted(resolved.known.items()) if axis in dict(resolved.builds[0])]
    said += [f"{axis} not known" for axis in open_axes(vehicle, question.place, resolved.builds)]
    said.append(f"with {resolved.mount_words}")
    if resolved.tabs and any(stack.has_tabs for stack in resolved.stacks):
        said.append(f"tabs {resolved.tabs}")
    said.append(resolved.gasket.name or "no gasket")
    said.append(f"{resolved.cut} cut")
    if "glass" in place.frame.rears:
        said.append("glass up" if resolved.glass == "up" else "glass run all the way")
    place_name = (where.name if where else None) or question.place.replace("-", " ")
    return f"{resolved.needs.name} in the {place_name} of the {vehicle.name}, {', '.join(said)}"


def _notes(place: SpeakerPlace, resolved: SpeakerAsked, behind: Carried) -> list[Quoted]:
    book, tried = place.frame.book, {one: needs for rooms in place.accounts for one, needs in rooms.tried.items()}
    carrying = [Quoted(one.note, quote(book, one.note), "carries the answer") for one in behind[0]]
    other = [
        Quoted(one.note, quote(book, one.note), "same thing, in another state")
        for one, needs in tried.items()
        if one not in behind[0] and needs.key == resolved.needs.key
    ]
    beside = place.evidence.weak + place.evidence.aside
    return carrying + other + [Quoted(one.note, quote(book, one.note), one.why) for one in beside]


def _argued(place: SpeakerPlace, resolved: SpeakerAsked) -> list[Quoted]:
    """The notes about these builds that cannot all be true: each is left out by some largest consistent set."""
    kept = [set(rooms.notes) for rooms in place.accounts]
    left_out = [
        one
        for one in place.evidence.standing
        if any(one not in notes for notes in kept) and set(resolved.builds) & set(one.builds)
    ]
    book = place.frame.book
    return [Quoted(one.note, quote(book, one.note), "cannot be true together with another") for one in left_out]


def _needs(
    place: SpeakerPlace, question: SpeakerQuestion, resolved: SpeakerAsked, found: SpeakerJudgement
) -> list[str]:
    """What else it takes; for "goes in if" the first line ends that sentence."""
    book = place.frame.book
    lines = [condition.words for condition in found.conditions]
    if len(resolved.stacks) == 1:
        for mount in (book.mounts[key] for key in resolved.stacks[0].mounts if key in book.mounts):
            lines.append(mount.name)
            lines += [f"{book.mounts[key].name} with it" for key in mount.needs_too if key in book.mounts]
            lines += [f"drill: {hole}" for hole in mount.holes.to_drill]
            if not resolved.stacks[0].has_tabs or resolved.tabs == "out":
                lines += [f"cannot be undone: {step}" for step in mount.cannot_be_undone]
    speaker = book.speakers.get(question.speaker or "")
    if speaker is not None and found.verdict in ("goes in", "goes in if"):
        lines += fastening(place, resolved, speaker)
    if "bolt_circle" in question.sizes:
        lines.append(typed_circle(place, resolved, question.sizes["bolt_circle"]))
    where = place.frame.vehicle.places.get(place.frame.place)
    if where and where.safety not in (None, "none"):
        lines.append(f"{where.safety}: the vehicle's service information comes first, and a qualified person")
    return lines
