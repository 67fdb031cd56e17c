"""A size in a note lies outside anything a shop meets, and would be usual in another unit."""

from collections.abc import Iterator

from bezelbook.finding import Finding, NoteScope, Quote, Rule
from bezelbook.kinds.note.record import Bench
from bezelbook.reasoning.losses import TOO_DEEP
from bezelbook.reasoning.proposal import Proposal
from bezelbook.reasoning.slip import Slip, slips
from bezelbook.values.shown import show_length


def check(scope: NoteScope) -> Iterator[Finding]:
    """One finding for each number that looks mistyped; a number that its author has read back stands."""
    for slip in slips(scope.note):
        yield _finding(scope, slip)


def _finding(scope: NoteScope, slip: Slip) -> Finding:
    note = scope.note
    low, high = slip.usual_mm
    proposals = tuple(
        Proposal("unit", f"{slip.typed} was meant in {unit}: {show_length(length)}") for unit, length in slip.readings
    )
    vehicle, place = ("", "") if isinstance(note, Bench) else (note.vehicle, note.place)
    return Finding(
        rule=RULE.name,
        key="/".join((RULE.name, vehicle, place, note.id, *map(str, slip.path))),
        weight="look first",
        says=f"{slip.field} {slip.typed} is outside the usual {low} to {high} mm, so the note waits",
        quotes=(Quote(note.id, f"{slip.field} {slip.typed}", slip.path),),
        difference="the unit",
        proposals=proposals or (Proposal("one is wrong", "the number was typed wrong: ask its author"),),
        loss=TOO_DEEP,
        question=f"What did {slip.typed} mean?",
        answers=(
            *(f"{unit}: {show_length(length)}" for unit, length in slip.readings),
            "it stands as typed",
            "ask its author",
        ),
        vehicle=vehicle,
        place=place,
    )


RULE = Rule("unit-slip", "A number in the wrong unit", "slip", __doc__ or "", NoteScope, check)
