"""What a speaker asks of its place: the hole its basket goes through, the depth behind, the height in front."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field, replace
from typing import Literal, get_args

from bezelbook.kinds.note.record import Tried
from bezelbook.kinds.note.state import Sizes
from bezelbook.kinds.speaker.record import Speaker
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.needs import House, record_size
from bezelbook.values.quantity import Quantity
from bezelbook.values.span import BLANK, Span, span_of

SpeakerNeed = Literal["basket", "basket short way", "mounting depth", "front height"]
SPEAKER_NEEDS: tuple[SpeakerNeed, ...] = get_args(SpeakerNeed)
SHORT_WAY: SpeakerNeed = "basket short way"
# The sizes that a note or a question may type; the hole is asked for where the basket itself is not known.
TYPED = (
    "basket",
    "basket_short",
    "cut_out",
    "cut_out_short",
    "mounting_depth",
    "front_height",
    "excursion",
    "flange",
    "flange_short",
    "bolt_circle",
)
# Which field of a record says a need, and the one that serves where it is blank.
FIELDS: Mapping[SpeakerNeed, tuple[str, str | None]] = {
    "basket": ("basket", "cut_out"),
    "basket short way": ("basket_short", "cut_out_short"),
    "mounting depth": ("mounting_depth", None),
    "front height": ("front_height", None),
}
SizeOf = Callable[[str], Quantity | None]


@dataclass(frozen=True, slots=True)
class SpeakerNeeds:
    """What one speaker asks for, each need a span in nanometres; a round one asks the same both ways.

    `key` says whose sizes these are, save for what is `borrowed` from another. `middles` are the figures themselves,
    of the front height with the excursion on top. `snug` needs come from the hole that the speaker wants, so that no
    clearance is due. `oval` says that the two ways differ. `asked` holds the needs that bear on the question. `flange`
    is how far its flange reaches at most, in nm, the long way and the short; None when nobody measured it. `further` is
    how much further out, in nm, its cone comes at most when it plays: 0 where a question types none, None where the
    record of a cone leaves it blank.
    """

    key: str
    name: str
    spans: Mapping[SpeakerNeed, Span]
    middles: Mapping[SpeakerNeed, int]
    oval: bool = False
    printed: Mapping[SpeakerNeed, int] = field(default_factory=dict)
    snug: frozenset[SpeakerNeed] = frozenset()
    asked: frozenset[SpeakerNeed] = frozenset(SPEAKER_NEEDS)
    borrowed: Mapping[SpeakerNeed, str] = field(default_factory=dict)
    flange: tuple[int, int] | None = None
    further: int | None = 0

    def key_of(self, need: SpeakerNeed) -> str:
        """Whose size one need is."""
        return self.borrowed.get(need, self.key)

    @property
    def exact(self) -> bool:
        """Whether every need is one single value."""
        return all(span.exact for span in self.spans.values())


def needs_of_speaker(book: KnowledgeBase, speaker: Speaker) -> SpeakerNeeds:
    """The needs of a speaker's record; a size that it leaves blank may come from a bench note about it.

    A size that says neither caliper nor ± counts as printed.
    """
    house = House(book.shop.tools.bench_caliper.base, None)
    key, oval = f"speaker:{speaker.id}", speaker.shape in ("oval", "D")
    found = _needs(key, speaker.name, lambda name: record_size(book, speaker, name), house, oval=oval)
    if speaker.speaker_kind != "tweeter" and record_size(book, speaker, "excursion") is None:
        found = replace(found, further=None)
    # A square basket meets a round hole with its corners, which nobody measures.
    return _without_hole(found) if speaker.shape == "square" else found


def needs_of_note(book: KnowledgeBase, note: Tried) -> SpeakerNeeds:
    """The needs of whatever a note tried: its record, or else the sizes typed in the note.

    A size in a note that says neither caliper nor printed was measured, with no tool named.
    """
    speaker = book.named("speaker", note.what)
    if isinstance(speaker, Speaker):
        return needs_of_speaker(book, speaker)
    typed = note.sizes or Sizes()
    house = House(book.shop.tools.bench_caliper.base, book.shop.tools.none.base)
    return _needs(f"note:{note.id}", note.what, lambda name: getattr(typed, name, None), house)


def needs_of_sizes(sizes: Mapping[str, Quantity], like: SpeakerNeeds | None = None) -> SpeakerNeeds:
    """The needs of sizes typed in a question, by the names in `TYPED`: exact unless a ± was typed.

    What was not typed is not asked, unless it is `like` another speaker, whose remaining needs it then has.
    """
    typed = _needs("asked", " x ".join(size.typed for size in sizes.values()), sizes.get, None)
    said = frozenset(need for need in SPEAKER_NEEDS if any(name in sizes for name in FIELDS[need]))
    if like is None:
        return replace(typed, asked=said)
    rest = [need for need in SPEAKER_NEEDS if need not in said]
    return replace(
        typed,
        name=f"{like.name} with {typed.name}",
        spans={**typed.spans, **{need: like.spans[need] for need in rest if need in like.spans}},
        middles={**typed.middles, **{need: like.middles[need] for need in rest if need in like.middles}},
        oval=typed.oval or (like.oval and "basket" not in said),
        printed={need: size for need, size in like.printed.items() if need in rest},
        snug=typed.snug | {need for need in like.snug if need in rest},
        borrowed=dict.fromkeys(rest, like.key),
        flange=typed.flange or like.flange,
        further=like.further if "front height" in rest else typed.further,
    )


def at_its_word(needs: SpeakerNeeds) -> SpeakerNeeds:
    """The same needs with every printed figure taken as the truth."""
    figures = {need: Span(size, size) for need, size in needs.printed.items()}
    return replace(
        needs,
        key=f"{needs.key} as printed",
        spans={**needs.spans, **figures},
        middles={**needs.middles, **needs.printed},
        printed={},
        borrowed={},
    )


def house_span(book: KnowledgeBase, size: Quantity | None) -> Span:
    """Everything a size of a part on the bench may be, in nanometres; what is only printed may be anything."""
    return House(book.shop.tools.bench_caliper.base, None).span(size)


def _needs(key: str, name: str, size_of: SizeOf, house: House | None, *, oval: bool = False) -> SpeakerNeeds:
    spans: dict[SpeakerNeed, Span] = {}
    middles: dict[SpeakerNeed, int] = {}
    printed: dict[SpeakerNeed, int] = {}
    snug: set[SpeakerNeed] = set()
    for need, (own, instead) in FIELDS.items():
        size, other = size_of(own), size_of(instead) if instead else None
        if other is not None and (size is None or (_printed(house, size) and not _printed(house, other))):
            size = other
            snug.add(need)
        spans[need] = _span(house, size)
        if size is not None:
            (printed if _printed(house, size) else middles)[need] = size.base
    oval = oval or size_of("basket_short") is not None or size_of("cut_out_short") is not None
    if not oval:
        del spans[SHORT_WAY]
    found = SpeakerNeeds(
        key, name, spans, middles, oval, printed, frozenset(snug), flange=_flange(house, size_of, oval=oval)
    )
    return _playing(found, house, size_of("excursion"))


def _flange(house: House | None, size_of: SizeOf, *, oval: bool) -> tuple[int, int] | None:
    across = _span(house, size_of("flange")).high
    short = _span(house, size_of("flange_short")).high if oval else across
    return None if across is None or short is None else (across, short)


def _playing(needs: SpeakerNeeds, house: House | None, excursion: Quantity | None) -> SpeakerNeeds:
    """The front height with what the cone adds when it plays: at rest for a no, at its furthest for a yes.

    A printed excursion counts too, since it only ever asks for more.
    """
    if excursion is None:
        return needs
    rest, furthest = needs.spans["front height"], _span(house, excursion).high
    further = excursion.base if furthest is None else furthest
    if rest.high is None:
        return replace(needs, further=further)
    spans = {**needs.spans, "front height": Span(rest.low, rest.high + further, rest.closed)}
    return replace(
        needs,
        further=further,
        spans=spans,
        middles={**needs.middles, "front height": needs.middles["front height"] + excursion.base},
    )


def _without_hole(needs: SpeakerNeeds) -> SpeakerNeeds:
    unknown: dict[SpeakerNeed, Span] = {need: BLANK for need in needs.spans if need in ("basket", SHORT_WAY)}
    return replace(needs, spans={**needs.spans, **unknown})


def _printed(house: House | None, size: Quantity) -> bool:
    return house is not None and house.only_printed(size)


def _span(house: House | None, size: Quantity | None) -> Span:
    if size is None:
        return BLANK
    return span_of(size, None) if house is None else house.span(size)
