"""A question about a speaker in free words: what it names is put together, what it leaves open is asked."""

from collections.abc import Iterable, Mapping
from dataclasses import replace

from bezelbook.kinds.speaker.record import Speaker
from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.size_classes import NUMBER_WORDS, class_of_nominal
from bezelbook.reasoning.speakers.question import SpeakerQuestion
from bezelbook.reasoning.spoken.fitting import fitting_said
from bezelbook.reasoning.spoken.found import Choice, Found, replaced, spoken
from bezelbook.reasoning.spoken.places import shop_words, speaker_place
from bezelbook.reasoning.spoken.shop_words import SPEAKER_WORDS
from bezelbook.reasoning.spoken.sizes import LABEL_WORDS, SpeakerSizes, speaker_sizes

# Sizes that a question can be about; the others only go with one of them.
ENOUGH = ("mounting_depth", "cut_out", "basket", "front_height")
NOTHING_SIZED = "Which speaker, or how deep is it?"

Read = tuple[SpeakerQuestion | Choice, tuple[str, ...]]


def speaker_words(
    book: KnowledgeBase, vehicle: Vehicle, found: Found, splits: Mapping[str, str], year: int | None
) -> Read:
    """The question about a speaker in words whose vehicle is known, or what to ask; and how numbers were taken."""
    place, speakers = speaker_place(vehicle, found), found.named("speaker")
    said, text = fitting_said(book, found, found.text(with_places=False))
    sizes = speaker_sizes(replaced(replaced(text, NUMBER_WORDS), LABEL_WORDS), beside_speaker=bool(speakers))
    took = tuple(dict.fromkeys(sizes.took))
    if isinstance(said, Choice):
        return said, took
    took += said.took
    question = SpeakerQuestion(
        vehicle.id,
        "" if isinstance(place, Choice) else place,
        splits=splits,
        year=year,
        mounts=said.mounts,
        tabs=said.tabs,
        glass=said.glass,
        speaker=speakers[0] if speakers else None,
        sizes=sizes.sizes,
    )
    plain = len(speakers) == 1 or (not speakers and _sized(sizes))
    if isinstance(place, Choice):
        return (replace(place, question=question) if plain and place.at else place), took
    return (question if plain else _which_speaker(book, (vehicle.id, place), speakers, sizes, found)), took


def _sized(sizes: SpeakerSizes) -> bool:
    return any(of in sizes.sizes for of in ENOUGH) and sizes.rival is None


def _which_speaker(
    book: KnowledgeBase, at: tuple[str, str], named: list[str], sizes: SpeakerSizes, found: Found
) -> Choice:
    """Which speaker is meant, of those that were named, of its size class, of its kind; or which size a number is."""
    if sizes.rival is not None:
        rival = sizes.rival
        ways = ((f"{rival} deep", f"{rival} deep"), (f"a hole of {rival}", f"cut out {rival}"))
        return Choice(f"Is {rival} its depth, or the hole it needs?", ways, at=(at,))
    if named:
        return _options("Which one?", [book.speakers[id_] for id_ in named], at)
    words = shop_words(found.text(with_places=False))
    kinds = {kind for word in words for kind in SPEAKER_WORDS.get(word, ())}
    of_kind = [one for one in book.speakers.values() if not kinds or one.speaker_kind in kinds]
    if sizes.size_class is None:
        return _options(NOTHING_SIZED, of_kind or list(book.speakers.values()), at)
    sold = [one for one in of_kind if class_of_nominal(one.nominal) == sizes.size_class]
    if sold:
        ask = f"No two {sizes.size_class} speakers need be alike. Which one, or how deep is it?"
        return _options(ask, sold, at)
    return _options(
        f"The book has no {sizes.size_class} speaker of that sort. How deep is it, or which other one?", of_kind, at
    )


def _options(ask: str, speakers: Iterable[Speaker], at: tuple[str, str]) -> Choice:
    return Choice(ask, tuple((one.name, spoken(one.id)) for one in speakers), at=(at,))
