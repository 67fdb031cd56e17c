"""A clash in the team's words: what cannot be true, the quotes, what may differ, and what it costs."""

from collections.abc import Mapping

from bezelbook.kinds.note.record import Measured, Tried
from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.clashes.clash import Clash, Core, Path
from bezelbook.reasoning.differing.axes import said_on
from bezelbook.reasoning.differing.explaining import explained
from bezelbook.reasoning.losses import GLASS_HIT, GRILLE_BUZZ, LAST_BIT, SALE_LOST, TOO_DEEP, Loss
from bezelbook.reasoning.proposal import Proposal

# More quotes than this nobody reads aloud.
MOST_QUOTES = 6
MOST_PROPOSALS = 5
LOSSES: Mapping[str, Loss] = {
    "depth": TOO_DEEP,
    "depth behind": GLASS_HIT,
    "room in front": GRILLE_BUZZ,
    "nose width": LAST_BIT,
    "nose height": LAST_BIT,
}


def loss_of(clash: Clash) -> Loss:
    """What it costs when a clash about this size is left alone."""
    return LOSSES.get(clash.first.size, SALE_LOST)


def says_of(core: Core) -> str:
    """That no one number makes the notes true."""
    if len(core.notes) == 1:
        return f"one note says two things of the {core.size} that cannot both be true"
    which = "both" if len(core.notes) == 2 else "all"
    return f"no one {core.size} makes {which} of these notes true"


def quoted(clash: Clash) -> tuple[Tried | Measured, ...]:
    """The notes to quote: the smallest set first, then the others that clash in the same way."""
    return (*clash.first.notes, *clash.others)[: max(MOST_QUOTES, len(clash.first.notes))]


def path_of(note: Tried | Measured) -> Path:
    """The field of a note that matters."""
    return ("readings",) if isinstance(note, Measured) else ("verdict",)


def proposals_of(book: KnowledgeBase, vehicle: str, place: str, core: Core) -> tuple[Proposal, ...]:
    """What would make the notes true, the likeliest first; that one is simply wrong comes last."""
    why = explained(book, book.vehicles[vehicle], place, core.notes, weighed=True)
    return (*(one.proposal for one in why[:MOST_PROPOSALS]), _one_is_wrong(core))


def _one_is_wrong(core: Core) -> Proposal:
    again = "read it again" if any(isinstance(note, Measured) for note in core.notes) else "offer it up again"
    return Proposal("one is wrong", f"one of them is wrong: {again}")


def slip_path(clash: Clash, note: Tried | Measured) -> Path:
    """The field of a note that matters, which in the one that slipped is the number itself."""
    slip = clash.first.explained
    return slip.path if note.id == slip.note else path_of(note)


def blanks_of(
    book: KnowledgeBase, vehicle: Vehicle, place: str, notes: tuple[Tried | Measured, Tried | Measured]
) -> tuple[Proposal, ...]:
    """What either of two notes left blank that could make both true, the likeliest first; empty when neither did."""
    said = [said_on(vehicle, note) for note in notes]
    open_axes = {axis for each in said for axis, value in each.items() if value is None}
    why = explained(book, vehicle, place, notes)
    return tuple(one.proposal for one in why if one.axis in open_axes)[:MOST_PROPOSALS]
