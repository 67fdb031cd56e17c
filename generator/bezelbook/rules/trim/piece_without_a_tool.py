"""Something sits behind or up inside, and nobody wrote which tool gets there."""

import re
from collections.abc import Iterator

from bezelbook.finding import Finding, Quote, Rule, VehicleScope
from bezelbook.kinds.note.record import Seen
from bezelbook.kinds.note.removal import PieceOff
from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.reasoning.losses import WALK
from bezelbook.reasoning.order.accounts import accounts_of
from bezelbook.reasoning.order.near import restraint_near
from bezelbook.reasoning.order.step import name_of, offs, path_of
from bezelbook.reasoning.proposal import Proposal

_AWKWARD = re.compile(r"\b(?:behind|up inside|up behind|from below|underneath|deep|reach)\b", re.IGNORECASE)


def check(scope: VehicleScope) -> Iterator[Finding]:
    """One finding a piece with such a fastener, where no note of the piece names a tool or what lets it get there."""
    book, vehicle = scope.book, scope.book.vehicles[scope.vehicle]
    notes = [one.note for one in accounts_of(book, vehicle).counting]
    for piece in sorted({off.piece for note in notes for off in note.pieces} - restraint_near(book, vehicle.id)):
        off = offs(notes, piece)
        awkward = [(one, note, where) for one, note in off if (where := _awkward(one))]
        if awkward and not any(tool.reach or _is_long(tool.tool) for one, _ in off for tool in one.tools):
            off_, note, where = awkward[0]
            yield _finding(vehicle, piece, Quote.of(book, note, path_of(note, off_)), where, note)


def _awkward(off: PieceOff) -> str | None:
    """Where a fastener sits that an ordinary tool does not reach."""
    return next((one.where for one in off.fasteners if one.where and _AWKWARD.search(one.where)), None)


def _is_long(tool: str) -> bool:
    return bool(re.search(r"\b(?:long|swivel|stubby|extension|deep|magnet|right angle)\b", tool, re.IGNORECASE))


def _finding(vehicle: Vehicle, piece: str, said: Quote, where: str, note: Seen) -> Finding:
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{vehicle.id}/{piece}",
        weight="tidy up",
        says=f"the {name_of(vehicle, piece)}: nobody wrote which tool gets at what is “{where}”",
        quotes=(said,),
        difference="the tool and its reach",
        proposals=(Proposal("tool", f"ask {note.author or 'its author'} what got there: stubby, long, swivel?"),),
        loss=WALK,
        question="Which tool gets there?",
        answers=("stubby", "long or extension", "swivel", "a plain one does", "next car"),
        vehicle=vehicle.id,
        place=note.place,
    )


RULE = Rule("piece-without-a-tool", "Behind something, and no tool named", "gap", __doc__ or "", VehicleScope, check)
