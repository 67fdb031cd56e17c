"""What a page leaves out of a note, and the shop's own file keeps: how a piece with a restraint near comes off."""

from collections.abc import Iterable
from typing import TypeVar, cast

from bezelbook.kinds.note.record import AnyNote, Seen
from bezelbook.kinds.note.removal import RemovalSeen
from bezelbook.kinds.record import Part
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.order.near import restraint_near

AnyPart = TypeVar("AnyPart", bound=Part)
# What a page says of such a piece: that it came off, what is near, and what that cost.
SAID = ("piece", "safety", "took", "clips_lost")
# The rest of what a note says of coming off, which may tell of any of its pieces.
OF_ANY = ("words", *(name for name in RemovalSeen.model_fields if name != "pieces"))


def told(book: KnowledgeBase, note: AnyNote) -> AnyNote:
    """A note as pages may quote it: the very same one where no restraint is near what it took off."""
    if not isinstance(note, Seen):
        return note
    near = restraint_near(book, note.vehicle) & {one.piece for one in note.pieces}
    if not near:
        return note
    pieces = tuple(_only(one, SAID) if one.piece in near else one for one in note.pieces)
    silent = OF_ANY if all(one.piece in near for one in note.pieces) else ()
    return _only(note, (name for name in note.model_fields_set if name not in silent), pieces=pieces)


def _only(part: AnyPart, names: Iterable[str], **changed: object) -> AnyPart:
    """The same part with nothing but these fields, as if nobody had typed the others."""
    kept = {name: getattr(part, name) for name in names if name in part.model_fields_set}
    return cast(AnyPart, type(part).model_construct(**kept | changed))
