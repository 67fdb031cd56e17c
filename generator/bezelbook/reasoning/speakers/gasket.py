"""How far a gasket holds a speaker out once it is screwed down: free thickness times what the squeeze leaves."""

from dataclasses import dataclass
from fractions import Fraction

from bezelbook.kinds.supply.record import Foam
from bezelbook.knowledge_base import KnowledgeBase, folded
from bezelbook.values.span import BLANK, NOTHING, Span

# A share is counted in thousandths of a per cent.
WHOLE = 100_000


@dataclass(frozen=True, slots=True)
class Gasket:
    """A gasket under a flange: its id or words (nothing when there is none), its name, its squeezed height in nm."""

    key: str
    name: str
    held: Span


NO_GASKET = Gasket("", "", NOTHING)


def gasket_named(book: KnowledgeBase, words: str | None) -> Gasket:
    """The gasket of these words; one that the book does not know as foam holds out nobody knows how far."""
    if words is None or folded(words) == "none":
        return NO_GASKET
    foam = book.named("supply", words)
    if isinstance(foam, Foam):
        return Gasket(foam.id, foam.name, squeezed(foam))
    return Gasket(f'"{folded(words)}"', f'"{folded(words)}"', BLANK)


def unsaid_gasket(book: KnowledgeBase, note: str) -> Gasket:
    """What a note may have had under the flange that says nothing of it: anything up to the thickest in the book."""
    foams = [one for one in book.supplies.values() if isinstance(one, Foam) and one.foam_kind != "open-cell ring"]
    thickest = max((foam.free_thickness.base for foam in foams if foam.free_thickness), default=0)
    if not thickest:
        return NO_GASKET
    return Gasket(f"not said in {note}", "gasket not said", Span(0, thickest + 1, reached=True))


def squeezed(foam: Foam) -> Span:
    """`free * (1 - squeeze)`, in nm (common practice, no source); without a squeeze, anything up to all of it."""
    if foam.free_thickness is None:
        return BLANK
    if foam.squeeze is None:
        return Span(0, foam.free_thickness.base + 1, reached=True)
    held = foam.free_thickness.base * (1 - Fraction(foam.squeeze.base, WHOLE))
    return Span(held.__floor__(), held.__ceil__())
