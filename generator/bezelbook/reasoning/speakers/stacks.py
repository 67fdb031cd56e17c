"""Rings, brackets and plates in order, a gasket on top: how far they hold a speaker out, through which holes."""

from dataclasses import dataclass
from typing import Literal

from bezelbook.kinds.mount.record import Mount
from bezelbook.knowledge_base import KnowledgeBase, folded
from bezelbook.reasoning.mounting import offset_of, span_of_mount
from bezelbook.reasoning.speakers.gasket import NO_GASKET, Gasket
from bezelbook.values.quantity import Quantity
from bezelbook.values.span import BLANK, NOTHING, UNKNOWN, Span

Tabs = Literal["in", "out"]
Way = Literal["long", "short"]
# What takes the place of the car's hole even where nobody measured its own.
FRAMING = ("bracket", "plate", "cup")


@dataclass(frozen=True, slots=True)
class SpeakerStack:
    """Mounts in order, nearest the car first, and the gasket under the flange.

    `offset` is how far the speaker is held out, a span in nanometres; `holes` are the mounts, each with whether it has
    tabs, through whose holes the basket goes; `through` says whether it goes through the car's own hole too, which a
    bracket or a plate takes the place of. `strange` are the words that name no mount of the book.
    """

    key: tuple[str, ...] = ()
    names: tuple[str, ...] = ()
    offset: Span = NOTHING
    holes: tuple[tuple[str, bool], ...] = ()
    through: bool = True
    strange: tuple[str, ...] = ()
    gasket: Gasket = NO_GASKET

    @property
    def mounts(self) -> tuple[str, ...]:
        """The ids or words of the mounts, without the gasket."""
        return self.key[:-1] if self.gasket.key else self.key

    @property
    def words(self) -> str:
        """The mounts as a person says them."""
        return " and ".join(self.names) if self.names else "no mount"

    @property
    def has_tabs(self) -> bool:
        """Whether it matters for it whether tabs are in or out."""
        return any(tabs for _, tabs in self.holes)


BARE = SpeakerStack()


def stack_of(
    book: KnowledgeBase, mounts: tuple[str, ...], gasket: Gasket = NO_GASKET, note: str | None = None
) -> SpeakerStack:
    """These mounts, named by id or by words, nearest the car first, with a gasket on top.

    Words that name no mount are each `note`'s own thing: two notes need not mean the same.
    """
    stack = BARE
    for words in mounts:
        mount = book.mount_named(words)
        stack = _strange(stack, words, note) if mount is None else _mounted(book, stack, mount)
    key = (*stack.key, f"+ {gasket.key}") if gasket.key else stack.key
    return SpeakerStack(
        key, stack.names, stack.offset.plus(gasket.held), stack.holes, stack.through, stack.strange, gasket
    )


def hole_span(book: KnowledgeBase, mount: str, way: Way, tabs: Tabs | None) -> Span:
    """How wide the hole of a mount is, in nanometres; an oval one is narrower the short way."""
    found = book.mounts.get(mount)
    size = None if found is None else _hole(found, way, tabs)
    return BLANK if size is None else span_of_mount(size, book.shop.tools.bench_caliper.base)


def _hole(mount: Mount, way: Way, tabs: Tabs | None) -> Quantity | None:
    if tabs is not None:
        return mount.tabs_in if tabs == "in" else mount.tabs_out
    long_way, short_way = (mount.inner, mount.inner_short) if mount.inner else (mount.basket, mount.basket_short)
    return short_way or long_way if way == "short" else long_way


def _mounted(book: KnowledgeBase, stack: SpeakerStack, mount: Mount) -> SpeakerStack:
    tabs = bool(mount.tabs_in or mount.tabs_out)
    measured = tabs or bool(mount.inner or mount.basket)
    framed = measured or mount.mount_kind in FRAMING
    passes = mount.mount_kind == "spacer" or not framed
    holes = ((mount.id, tabs),) if framed else ()
    return SpeakerStack(
        (*stack.key, mount.id),
        (*stack.names, mount.name),
        stack.offset.plus(offset_of(mount, book.shop.tools.bench_caliper.base)),
        (*stack.holes, *holes) if passes else holes,
        stack.through and passes,
        stack.strange,
    )


def _strange(stack: SpeakerStack, words: str, note: str | None) -> SpeakerStack:
    name = f'"{folded(words)}"'
    key = f"{name} in {note}" if note else name
    return SpeakerStack(
        (*stack.key, key),
        (*stack.names, name),
        UNKNOWN,
        ((key, False),),
        through=False,
        strange=(*stack.strange, words),
    )
