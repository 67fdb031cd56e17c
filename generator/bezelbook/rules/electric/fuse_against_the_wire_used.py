"""A job used a fuse that is too big for the thickest wire it used."""

import re
from collections.abc import Iterator
from fractions import Fraction

from bezelbook.finding import Finding, Quote, Rule, VehicleScope
from bezelbook.kinds.note.record import After
from bezelbook.kinds.supply.record import Wire
from bezelbook.reasoning.electric.conductor import conductor
from bezelbook.reasoning.electric.fuse import Usual, largest, on_wire
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import SOMEONE_HURT
from bezelbook.reasoning.proposal import Proposal

_FUSE = re.compile(r"\b([0-9]{1,3}) ?A\b.*\bfuse|\bfuse\b.*?\b([0-9]{1,3}) ?A\b", re.IGNORECASE)


def check(scope: VehicleScope) -> Iterator[Finding]:
    """One finding a vehicle: the first write-back whose largest fuse no wire in it may carry, even on a short run."""
    for note in unreplaced(scope.book.notes_of(scope.vehicle)):
        amps = _fuse(note) if isinstance(note, After) else None
        usual = _thickest(scope, note) if isinstance(note, After) else None
        says, why = on_wire(amps, usual) if amps and usual else ("unknown", "")
        if says == "the wire is too thin":
            yield Finding(
                rule=RULE.name,
                key=f"{RULE.name}/{scope.vehicle}",
                weight="stop",
                says=f"a fuse of {amps} A on a wire: {why}",
                quotes=(Quote.of(scope.book, note, ("used",)),),
                difference="the fuse against the wire",
                proposals=(Proposal("one is wrong", "the wire rules: call that car back and put the smaller fuse in"),),
                loss=SOMEONE_HURT,
                question="Which fuse is in that car?",
                answers=("call it back", "another wire was used", "another fuse was used"),
                vehicle=scope.vehicle,
                place=getattr(note, "place", ""),
            )
            return


def _fuse(note: After) -> Fraction | None:
    """The largest fuse in A that it used, by its words."""
    found = [match[1] or match[2] for one in note.used if (match := _FUSE.search(one.what))]
    return max((Fraction(amps) for amps in found), default=None)


def _thickest(scope: VehicleScope, note: After) -> Usual | None:
    """The largest usual fuse of the wires it used; None when it names none, or one that nobody has a figure for."""
    wires = [found for one in note.used if isinstance(found := scope.book.named("supply", one.what), Wire)]
    usual = [largest(conductor(wire.size, wire.metal)) for wire in wires]
    known = [one for one in usual if one]
    return max(known) if known and len(known) == len(usual) else None


RULE = Rule("fuse-against-the-wire-used", "A fuse too big for the wire", "conflict", __doc__ or "", VehicleScope, check)
