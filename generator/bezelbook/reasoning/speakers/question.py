"""A question about a speaker as somebody puts it, and the same in the book's own terms."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field, replace
from typing import Any

from bezelbook.kinds.mount.record import Mount
from bezelbook.reasoning.builds import Build, known_splits, matching
from bezelbook.reasoning.evidence import UNCUT
from bezelbook.reasoning.speakers.cells import Glass, SpeakerSetting
from bezelbook.reasoning.speakers.gasket import Gasket, gasket_named
from bezelbook.reasoning.speakers.needs import SpeakerNeeds, needs_of_sizes, needs_of_speaker
from bezelbook.reasoning.speakers.rooms import SpeakerPlace
from bezelbook.reasoning.speakers.stacks import SpeakerStack, Tabs, stack_of
from bezelbook.values.listed import listed
from bezelbook.values.quantity import Quantity


@dataclass(frozen=True)
class SpeakerQuestion:
    """What was asked. Blank mounts mean none, or else any ring or mount that the book knows for the place.

    Blank tabs mean that they may still be broken out. The rest is how a job begins: nothing cut, no gasket, and the
    glass goes all the way. Sizes are lengths as typed, by the names in `needs.TYPED`.
    """

    vehicle: str
    place: str
    splits: Mapping[str, str] = field(default_factory=dict)
    year: int | None = None
    mounts: tuple[str, ...] | None = None
    cut: str = UNCUT
    tabs: Tabs | None = None
    glass: Glass = "run"
    gasket: str | None = None
    speaker: str | None = None
    sizes: Mapping[str, Quantity] = field(default_factory=dict)


@dataclass(frozen=True)
class SpeakerAsked:
    """A question in the book's own terms: the needs, and every setting that it leaves open.

    `any_mount` says that it left the mounts open, so that another ring than those of the book would do too.
    """

    needs: SpeakerNeeds
    known: Mapping[str, str]
    builds: tuple[Build, ...]
    stacks: tuple[SpeakerStack, ...]
    cut: str
    tabs: Tabs | None
    glass: Glass
    gasket: Gasket
    any_mount: bool

    @property
    def settings(self) -> tuple[SpeakerSetting, ...]:
        """Every build, every mounting and every place of the tabs that the question leaves open."""
        return tuple(
            SpeakerSetting(build, stack, self.cut, tabs, self.glass)
            for build in self.builds
            for stack in self.stacks
            for tabs in self._tabs(stack)
        )

    def _tabs(self, stack: SpeakerStack) -> tuple[Tabs, ...]:
        if self.tabs:
            return (self.tabs,)
        return ("in", "out") if stack.has_tabs else ("in",)

    @property
    def mount_words(self) -> str:
        """The mounts as a person says them."""
        return listed([stack.words for stack in self.stacks], "or")

    def narrowed(self, **changes: Any) -> "SpeakerAsked":
        """The same question with something filled in."""
        return replace(self, **changes)


def asked(place: SpeakerPlace, question: SpeakerQuestion) -> SpeakerAsked:
    """Put a question in the book's own terms. Its vehicle, place, speaker and splits must be in the book."""
    frame = place.frame
    known = known_splits(frame.vehicle, question.splits, question.year)
    cars = matching(frame.builds, known) or frame.builds
    gasket = gasket_named(frame.book, question.gasket)
    mounts = tuple(_usual(place, cars)) if question.mounts is None else (question.mounts,)
    return SpeakerAsked(
        _needs(place, question),
        known,
        cars,
        tuple(stack_of(frame.book, named, gasket) for named in mounts),
        question.cut,
        question.tabs,
        question.glass,
        gasket,
        question.mounts is None,
    )


def spacers(place: SpeakerPlace) -> Iterator[Mount]:
    """Every plain ring of the book whose thickness is known and that goes on this side."""
    where = place.frame.vehicle.places.get(place.frame.place)
    side = where.side if where else None
    for mount in place.frame.book.mounts.values():
        if mount.mount_kind == "spacer" and mount.thickness and mount.handed in (None, "either", side):
            yield mount


def _needs(place: SpeakerPlace, question: SpeakerQuestion) -> SpeakerNeeds:
    book = place.frame.book
    own = needs_of_speaker(book, book.speakers[question.speaker]) if question.speaker else None
    return own if own is not None and not question.sizes else needs_of_sizes(question.sizes, own)


def _usual(place: SpeakerPlace, cars: tuple[Build, ...]) -> Iterator[tuple[str, ...]]:
    """No mount, then in order of name: what standing notes were made with, what was made for the place, every ring."""
    book = place.frame.book
    seen = {
        one.note.mounts
        for one in place.evidence.standing
        if one.says != "reading" and isinstance(one.note.mounts, tuple) and one.stack and not one.stack.strange
    }
    here = (place.frame.vehicle.id, place.frame.place)
    for mount in book.mounts.values():
        uses = [use for use in mount.made_for if (use.vehicle, use.place) == here]
        if any(matching(cars, use.splits) for use in uses):
            seen.add((mount.id,))
    seen |= {(ring.id,) for ring in spacers(place)}
    yield ()
    yield from sorted(named for named in seen if named)
