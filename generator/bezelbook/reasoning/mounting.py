"""Mounts as maps from the bare opening to the room a part meets: the hole they present and how far they hold it out."""

from collections.abc import Mapping
from dataclasses import dataclass, field

from bezelbook.kinds.mount.record import Mount
from bezelbook.knowledge_base import KnowledgeBase, folded
from bezelbook.values.quantity import Quantity
from bezelbook.values.span import NOTHING, UNKNOWN, Span, span_of
from bezelbook.values.words import NINTHS, Ninth

HOLES: Mapping[str, str] = {
    "width": "width",
    "height": "height",
    "nose width": "nose_width",
    "nose height": "nose_height",
}


@dataclass(frozen=True, slots=True)
class Stack:
    """Mounts in order, nearest the car first, as one map.

    `names` are what people call them; `offset` is how far the part is held out, a span in nanometres (negative is
    recessed); `holes` gives for each size that some mount frames the mount's key and its span; `ninths` are those that
    lie behind the hole; `strange` are the words that name no mount of the book, whose map is unknown.
    """

    key: tuple[str, ...] = ()
    names: tuple[str, ...] = ()
    offset: Span = NOTHING
    holes: Mapping[str, tuple[str, Span]] = field(default_factory=dict, hash=False)
    ninths: tuple[Ninth, ...] = NINTHS
    strange: tuple[str, ...] = ()

    @property
    def words(self) -> str:
        """The stack as a person says it."""
        return " and ".join(self.names) if self.names else "no mount"


BARE = Stack()


def stack_of(book: KnowledgeBase, mounts: tuple[str, ...], note: str | None = None) -> Stack:
    """The map of mounts named by id or by words, nearest the car first.

    Words that name no mount of the book need not mean the same thing in two notes, so there they are each `note`'s own.
    """
    stack = BARE
    for words in mounts:
        mount = book.mount_named(words)
        stack = (
            _strange(stack, words, note)
            if mount is None
            else _mounted(stack, mount, book.shop.tools.bench_caliper.base)
        )
    return stack


def _mounted(stack: Stack, mount: Mount, house: int) -> Stack:
    framed = {
        hole: (mount.id, span_of_mount(size, house))
        for hole, name in HOLES.items()
        if (size := getattr(mount.presents, name)) is not None
    }
    return Stack(
        (*stack.key, mount.id),
        (*stack.names, mount.name),
        stack.offset.plus(offset_of(mount, house)),
        {**stack.holes, **framed},
        mount.presents.ninths or stack.ninths,
        stack.strange,
    )


def offset_of(mount: Mount, house: int) -> Span:
    """How far a mount holds a part out, in nanometres; `house` is the ± of a caliper on the bench."""
    if mount.proud is not None:
        return span_of_mount(mount.proud, house)
    return UNKNOWN if mount.thickness is None else span_of_mount(mount.thickness, house)


def _strange(stack: Stack, words: str, note: str | None) -> Stack:
    name = f'"{folded(words)}"'
    key = f"{name} in {note}" if note else name
    holes = dict.fromkeys(HOLES, (key, UNKNOWN))
    return Stack((*stack.key, key), (*stack.names, name), UNKNOWN, holes, stack.ninths, (*stack.strange, words))


def span_of_mount(size: Quantity, house: int) -> Span:
    """Everything a size of a mount may be, in nanometres; what is only printed may be anything."""
    return UNKNOWN if size.by == "printed" or (size.by is None and size.give is None) else span_of(size, house)
