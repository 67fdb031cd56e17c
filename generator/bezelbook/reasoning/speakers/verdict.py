"""The verdict on a speaker, in the order that a careful shop would give it."""

from collections.abc import Iterator
from dataclasses import dataclass

from bezelbook.reasoning.speakers.cells import MountHole, SpeakerSetting, demands
from bezelbook.reasoning.speakers.conditions import SpeakerCondition, a_ring, always, conditions
from bezelbook.reasoning.speakers.outlook import is_clear, may_take, outlook
from bezelbook.reasoning.speakers.question import SpeakerAsked
from bezelbook.reasoning.speakers.rooms import SpeakerPlace, SpeakerRooms
from bezelbook.values.words import AnswerVerdict


@dataclass(frozen=True)
class SpeakerJudgement:
    """A verdict; `conditions` are the single things that would each make it a yes, for "goes in if" only."""

    verdict: AnswerVerdict
    conditions: tuple[SpeakerCondition, ...] = ()


def settled(place: SpeakerPlace, question: SpeakerAsked) -> AnswerVerdict | None:
    """Goes in, does not or argued over, where the notes say that much; None where they leave it open."""
    return _settled(place, question)[0]


def judge(place: SpeakerPlace, question: SpeakerAsked) -> SpeakerJudgement:
    """Goes in, does not, argued over, goes in if, too close, nobody has tried: the first that holds."""
    firm, ring = _settled(place, question)
    if firm:
        return SpeakerJudgement(firm)
    found = ring or tuple(conditions(place, question))
    if found:
        return SpeakerJudgement("goes in if", found)
    return SpeakerJudgement("too close" if any(_close_calls(place, question)) else "nobody has tried")


def _settled(place: SpeakerPlace, question: SpeakerAsked) -> tuple[AnswerVerdict | None, tuple[SpeakerCondition, ...]]:
    """What is settled; of what does not go in as it is asked, instead the ring with which it does, if there is one."""
    views = {outlook(rooms, question.needs, question.settings) for rooms in place.accounts}
    if len(views) > 1:
        return "argued over", ()
    if views == {"never"}:
        ring = tuple(a_ring(place, question))
        return (None, ring) if ring else ("does not", ())
    return ("goes in" if views == {"always"} else None), ()


def viable(place: SpeakerPlace, question: SpeakerAsked) -> SpeakerAsked:
    """The question without the mountings that cannot take the speaker at all: they are no way to fit it.

    When none can, all of them stay, and the answer is a no for every one. What goes in by itself needs no mount.
    """
    bare = question.narrowed(stacks=question.stacks[:1])
    if len(question.stacks) > 1 and always(place, bare):
        return bare
    able = tuple(stack for stack in question.stacks if _takes(place, question.narrowed(stacks=(stack,))))
    return question.narrowed(stacks=able) if able else question


def _takes(place: SpeakerPlace, question: SpeakerAsked) -> bool:
    return any(may_take(rooms, question.needs, setting) for rooms in place.accounts for setting in question.settings)


def _close_calls(place: SpeakerPlace, question: SpeakerAsked) -> Iterator[bool]:
    for rooms in place.accounts:
        for setting in question.settings:
            yield _close(rooms, question, setting)


def _close(rooms: SpeakerRooms, question: SpeakerAsked, setting: SpeakerSetting) -> bool:
    """Whether nothing rules the speaker out and some demand was measured too near to call."""
    needs = question.needs
    if not may_take(rooms, needs, setting):
        return False
    wanted = demands(rooms.frame, needs, setting)
    measured = rooms.measured.spans(setting, wanted)
    for demand, reading, room in zip(wanted, measured, rooms.spans(setting, wanted), strict=True):
        need = needs.spans[demand.need]
        if isinstance(demand.cell, MountHole) and len(question.stacks) > 1:
            continue  # a ring that is tight is one of many, and tells nothing of the place
        if not reading.read or need.high is None:
            continue
        if need.high > room.least or not is_clear(rooms.frame, needs, demand, room):
            return True
    return False
