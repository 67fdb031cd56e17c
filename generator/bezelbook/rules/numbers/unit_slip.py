"""A number in a note lies outside anything a shop meets, and would be usual in another unit."""

from collections.abc import Iterator

from bezelbook.finding import Finding, NoteScope, Quote, Rule
from bezelbook.kinds.note.record import Bench
from bezelbook.reasoning.losses import QUOTED_SHORT, TOO_DEEP
from bezelbook.reasoning.proposal import Proposal
from bezelbook.reasoning.slips.odd import Odd, odd_numbers


def check(scope: NoteScope) -> Iterator[Finding]:
    """One finding for each number that looks mistyped; a number that its author has read back stands."""
    for odd in odd_numbers(scope.note):
        yield _finding(scope, odd)


def _finding(scope: NoteScope, odd: Odd) -> Finding:
    note = scope.note
    proposals = tuple(
        Proposal(
            "unit", f"{odd.typed} was meant in {unit}: {value}", (note.id, "unit=in") if unit == "inches" else None
        )
        for unit, value in odd.meant
    )
    vehicle, place = ("", "") if isinstance(note, Bench) else (note.vehicle, note.place)
    waits = ", so the note waits" if odd.waits else ""
    return Finding(
        rule=RULE.name,
        key="/".join((RULE.name, vehicle, place, note.id, *map(str, odd.path))),
        weight="look first",
        says=f"{odd.field} {odd.typed} is outside the usual {odd.usual}{waits}",
        quotes=(Quote(note.id, f"{odd.field} {odd.typed}", odd.path),),
        difference="the unit",
        proposals=proposals or (Proposal("one is wrong", "the number was typed wrong: ask its author"),),
        loss=TOO_DEEP if odd.waits else QUOTED_SHORT,
        question=f"What did {odd.typed} mean?",
        answers=(*(f"{unit}: {value}" for unit, value in odd.meant), "it stands as typed", "ask its author"),
        vehicle=vehicle,
        place=place,
    )


RULE = Rule("unit-slip", "A number in the wrong unit", "slip", __doc__ or "", NoteScope, check)
