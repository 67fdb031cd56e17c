"""A job was timed, and too seldom to quote from."""

from collections.abc import Iterator

from bezelbook.finding import Finding, Quote, Rule, VehicleScope
from bezelbook.kinds.note.record import After
from bezelbook.reasoning.counts.minutes import THIN, Minutes, minutes
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import QUOTED_SHORT
from bezelbook.reasoning.proposal import Proposal

WHOLE = "total"


def check(scope: VehicleScope) -> Iterator[Finding]:
    """One finding a vehicle, for the places where fewer than three whole jobs were timed."""
    notes = [note for note in unreplaced(scope.book.notes_of(scope.vehicle)) if isinstance(note, After)]
    places = sorted({note.place for note in notes})
    thin = [(place, one) for place in places for one in _whole([note for note in notes if note.place == place])]
    if not thin:
        return
    spent = [next(iter((*one.usual, *one.first, *one.ask_scope))) for _, one in thin]
    yield Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}",
        weight="tidy up",
        says="; ".join(f"{place.replace('-', ' ')}: {one.words}" for place, one in thin),
        quotes=tuple(Quote(one.note.id, f"{one.note.place}: {_times(one.note)}", ("times",)) for one in spent[:3]),
        difference=f"fewer than {THIN} jobs timed",
        proposals=(Proposal("scope", "clock the next two, and say whether it was the first time"),),
        loss=QUOTED_SHORT,
        question="Who clocks the next two?",
        answers=("whoever does them", "good enough", "leave it"),
        vehicle=scope.vehicle,
        place=thin[0][0],
    )


def _whole(notes: list[After]) -> list[Minutes]:
    """How long the whole job takes, where it was timed but too seldom; without any whole time, what was timed of it."""
    every = minutes(notes)
    whole = [one for one in every if one.scope == WHOLE]
    return [one for one in whole if one.thin]


def _times(note: After) -> str:
    return ", ".join(f"{took.scope} {took.took.typed}" for took in note.times)


RULE = Rule("too-few-times", "Timed too seldom", "gap", __doc__ or "", VehicleScope, check)
