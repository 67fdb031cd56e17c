"""Some who took a piece off wrote of a hook or a hidden fixing on it, and others who took it off did not."""

from collections.abc import Iterator

from bezelbook.finding import Finding, Quote, Rule, VehicleScope
from bezelbook.reasoning.evidence import witnesses
from bezelbook.reasoning.losses import TRIM_BROKEN
from bezelbook.reasoning.order.accounts import accounts_of
from bezelbook.reasoning.order.near import restraint_near
from bezelbook.reasoning.order.step import name_of, offs, path_of
from bezelbook.reasoning.proposal import Proposal


def check(scope: VehicleScope) -> Iterator[Finding]:
    """One finding a piece; whoever wrote nothing of what holds it has not denied the hook, and is not asked.

    Nor is whoever tells of a hidden fixing without naming its piece, or had another build.
    """
    book, vehicle = scope.book, scope.book.vehicles[scope.vehicle]
    accounts = {one.note.id: one for one in accounts_of(book, vehicle).counting}
    notes = [one.note for one in accounts.values()]
    for piece in sorted({off.piece for note in notes for off in note.pieces} - restraint_near(book, vehicle.id)):
        told = [(off, note) for off, note in offs(notes, piece) if off.hooks or off.hidden]
        others = [
            (off, note)
            for off, note in offs(notes, piece)
            if off.fasteners and not (off.hooks or off.hidden or note.hidden) and told
            if witnesses([note, told[0][1]]) > 1 and accounts[note.id].may_be_like(accounts[told[0][1].id])
        ]
        if told and others:
            hook, name = told[0][0].hooks or told[0][0].hidden, name_of(vehicle, piece)
            yield Finding(
                rule=RULE.name,
                key=f"{RULE.name}/{vehicle.id}/{piece}",
                weight="look first",
                says=f"of the {name} one note tells what holds it, and another adds: {hook}",
                quotes=tuple(Quote.of(book, note, path_of(note, off)) for off, note in (told[0], others[0])),
                difference=f"{hook}",
                proposals=(
                    Proposal("scope", "it is there, and the other did not write it down"),
                    Proposal("build", "only some cars have it"),
                ),
                loss=TRIM_BROKEN,
                question="Is it there on every car?",
                answers=("yes, add it", "only on some", "no", "next car"),
                vehicle=vehicle.id,
                place=told[0][1].place,
            )


RULE = Rule("hook-that-one-found", "A hook that one note tells of", "conflict", __doc__ or "", VehicleScope, check)
