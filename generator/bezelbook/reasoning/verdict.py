"""The verdict on a question, in the order that a careful shop would give it."""

from collections.abc import Mapping
from dataclasses import dataclass

from bezelbook.reasoning.cells import Setting, demands
from bezelbook.reasoning.conditions import Condition, conditions
from bezelbook.reasoning.outlook import Outlook, clearance, outlook
from bezelbook.reasoning.question import Asked
from bezelbook.reasoning.room import Place, Rooms
from bezelbook.reasoning.room_span import room_spans
from bezelbook.values.words import AnswerVerdict


@dataclass(frozen=True)
class Judgement:
    """A verdict; `conditions` are the single things that would each make it a yes, for "goes in if" only."""

    verdict: AnswerVerdict
    conditions: tuple[Condition, ...] = ()


def settled(place: Place, question: Asked) -> AnswerVerdict | None:
    """Goes in, does not or argued over, where the notes say that much; None where they leave it open."""
    views = {outlook(rooms, question.needs, question.settings) for rooms in place.accounts}
    if len(views) > 1:
        return "argued over"
    firm: Mapping[Outlook, AnswerVerdict] = {"always": "goes in", "never": "does not"}
    return firm.get(views.pop())


def judge(place: Place, question: Asked) -> Judgement:
    """Goes in, does not, argued over, goes in if, too close, nobody has tried: the first that holds."""
    firm = settled(place, question)
    if firm:
        return Judgement(firm)
    found = tuple(conditions(place, question))
    if found:
        return Judgement("goes in if", found)
    return Judgement("too close" if too_close(place, question) else "nobody has tried")


def viable(place: Place, question: Asked) -> Asked:
    """The question without the mountings that cannot take the part at all: they are no way to fit it.

    When none can, all of them stay, and the answer is a no for every one.
    """
    if len(question.stacks) == 1:
        return question
    able = tuple(stack for stack in question.stacks if _takes(place, question.narrowed(stacks=(stack,))))
    return question.narrowed(stacks=able) if able else question


def _takes(place: Place, question: Asked) -> bool:
    return any(rooms.takes(question.needs, setting) for rooms in place.accounts for setting in question.settings)


def too_close(place: Place, question: Asked) -> bool:
    """Whether some demand was measured too near to call, in any setting by any account that leaves it open."""
    return any(_close(rooms, question, setting) for rooms in place.accounts for setting in question.settings)


def _close(rooms: Rooms, question: Asked, setting: Setting) -> bool:
    """Whether nothing rules the part out and some demand was measured too near to call."""
    if not rooms.takes(question.needs, setting):
        return False
    sure, plug = demands(rooms.frame, question.needs, setting)
    wanted = sure + plug
    measured = room_spans(rooms.measured(), setting, wanted)
    for demand, reading, room in zip(wanted, measured, room_spans(rooms, setting, wanted), strict=True):
        need = question.needs.spans[demand.need]
        if reading.most is None or room.most is None or need.low is None or need.high is None:
            continue
        tight = need.high + clearance(rooms.frame, demand.need) > room.least
        if tight and need.low <= room.most and reading.least > demand.shift:
            return True
    return False
