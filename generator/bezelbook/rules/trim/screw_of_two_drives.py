"""Screws in one spot are turned by one tool in one note and by another in the next."""

from collections.abc import Iterator, Sequence
from itertools import combinations

from bezelbook.finding import Finding, Quote, Rule, VehicleScope
from bezelbook.kinds.note.record import Seen
from bezelbook.kinds.note.removal import Fasteners
from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.knowledge_base import KnowledgeBase, folded
from bezelbook.reasoning.losses import WALK
from bezelbook.reasoning.order.accounts import accounts_of
from bezelbook.reasoning.order.drive import drives_of
from bezelbook.reasoning.order.step import name_of
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.listed import listed

Spot = tuple[str, str, str]  # the place when no piece is named, else the piece; and where on it
Drives = dict[Spot, tuple[frozenset[str], int | None]]


def check(scope: VehicleScope) -> Iterator[Finding]:
    """One finding a spot, for the first two notes of builds that may be the same and that share no drive there."""
    book, vehicle = scope.book, scope.book.vehicles[scope.vehicle]
    told = [(account, _told(book, account.note)) for account in accounts_of(book, vehicle).counting]
    done: set[Spot] = set()
    for (one, ours), (other, theirs) in combinations(told, 2):
        for spot in sorted(ours.keys() & theirs.keys() - done) if one.may_be_like(other) else ():
            if _differ(ours, theirs, spot):
                done.add(spot)
                drives = [listed(sorted(said[spot][0])) for said in (ours, theirs)]
                yield _finding(book, vehicle, spot, drives, (one.note, other.note))


def _told(book: KnowledgeBase, note: Seen) -> Drives:
    """What turns the screws of every spot that a note speaks of, and how many it counted there."""
    loose = _spots(book, (note.place, ""), note.fasteners)
    pieces = (_spots(book, ("", off.piece), off.fasteners) for off in note.pieces)
    return dict(pair for spots in (loose, *pieces) for pair in spots.items())


def _spots(book: KnowledgeBase, what: tuple[str, str], rows: Sequence[Fasteners]) -> Drives:
    found: Drives = {}
    for row in rows:
        if drives := drives_of(book, row):
            spot = (*what, folded(row.where or ""))
            before, count = found.get(spot, (frozenset(), 0))
            found[spot] = (before | drives, None if row.count is None or count is None else count + row.count)
    return found


def _differ(ours: Drives, theirs: Drives, spot: Spot) -> bool:
    """Whether no tool turns both; where nobody wrote the spot, only if it may be the very same screws."""
    (drives, count), (others, counted) = ours[spot], theirs[spot]
    same = bool(spot[2]) or count is None or counted is None or count == counted
    return same and not drives & others


def _finding(book: KnowledgeBase, vehicle: Vehicle, spot: Spot, drives: list[str], notes: tuple[Seen, Seen]) -> Finding:
    place, piece, where = spot
    what = name_of(vehicle, piece) if piece else place.replace("-", " ")
    return Finding(
        rule=RULE.name,
        key="/".join((RULE.name, vehicle.id, piece or place, where or "anywhere")),
        weight="tidy up",
        says=f"{drives[0]} or {drives[1]} {where or 'for the screws'} at the {what}",
        quotes=tuple(Quote.of(book, note, (("fasteners", "pieces")[bool(piece)],)) for note in notes),
        difference="what turns it",
        proposals=(
            Proposal("build", "the cars differ"),
            Proposal("one is wrong", "somebody changed a screw before: take both tools, and write it as the odd one"),
        ),
        loss=WALK,
        question="Which drive is it?",
        answers=("the first", "the second", "both: take both tools", "the cars differ", "look at the next car"),
        vehicle=vehicle.id,
        place=notes[0].place,
    )


RULE = Rule("screw-of-two-drives", "Two tools for one screw", "conflict", __doc__ or "", VehicleScope, check)
