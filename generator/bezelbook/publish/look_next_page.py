"""The Look next page: look here, with this tool, this long, and these answers are settled; the best first."""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.publish.address import LOOK_NEXT, Links, look_anchor
from bezelbook.publish.mentions import place_words
from bezelbook.publish.opening import Opening
from bezelbook.publish.page_text import page_file
from bezelbook.publish.site_file import SiteFile
from bezelbook.publish.template import render
from bezelbook.publish.wording import build_words
from bezelbook.reasoning.looks.look import Look
from bezelbook.reasoning.looks.offer_looks import UNIT_ITSELF
from bezelbook.reasoning.looks.pair import Pair
from bezelbook.reasoning.looks.ranking import looks
from bezelbook.values.listed import counted

BEST = 12
BENCH = "-bench"  # no vehicle has an id like it


@dataclass(frozen=True, slots=True)
class Settled:
    """An answer that a look may settle: of which part, where, and how likely in words."""

    unit: str
    unit_at: str
    where: str
    when: str


@dataclass(frozen=True, slots=True)
class Entry:
    """A look ready for the page; `where_at` is empty for the bench."""

    number: int
    anchor: str
    where: str
    where_at: str
    what: str
    tool: str
    minutes: str
    settles: str
    answers: tuple[Settled, ...]


@dataclass(frozen=True, slots=True)
class Group:
    """The looks at one vehicle, or on the bench."""

    heading: str
    anchor: str
    entries: tuple[Entry, ...]


def look_next_page(book: KnowledgeBase, openings: Sequence[Opening]) -> SiteFile:
    """Every look that would settle anything: the best of all, then vehicle by vehicle, then the bench."""
    to = Links(LOOK_NEXT, book)
    found = looks(book, {(opening.vehicle, opening.id): opening.room for opening in openings})
    entries = [(look.todo.vehicle, _entry(book, number, look, to)) for number, look in enumerate(found, 1)]
    groups = [_group(vehicle.name, vehicle.id, entries, vehicle.id) for vehicle in book.vehicles.values()]
    groups.append(_group("On the bench, no car needed", BENCH, entries, None))
    html = render(
        "publish/look_next.html",
        best=[entry for _, entry in entries[:BEST]],
        groups=[group for group in groups if group.entries],
        quiet=[group for group in groups if not group.entries and group.anchor != look_anchor(BENCH)],
        to=to,
    )
    return page_file(LOOK_NEXT, "Look next", html)


def _group(heading: str, name: str, entries: Iterable[tuple[str | None, Entry]], vehicle: str | None) -> Group:
    return Group(heading, look_anchor(name), tuple(entry for of, entry in entries if of == vehicle))


def _entry(book: KnowledgeBase, number: int, look: Look, to: Links) -> Entry:
    todo = look.todo
    if todo.vehicle and todo.place:
        where = place_words(book, todo.vehicle, todo.place)
        at = to.place(todo.vehicle, todo.place)
        builds = " or ".join(words for build in todo.builds if (words := build_words(build)))
        where += f", {builds}" if builds else ""
    else:
        where, at = "on the bench", ""
    return Entry(
        number,
        f"look-{number}",
        where,
        at,
        todo.what,
        todo.tool,
        f"{todo.minutes} min",
        _settles(look),
        tuple(_settled(book, pair, _when(look, share), to) for pair, share in _likeliest(look)),
    )


def _settles(look: Look) -> str:
    """What it settles by itself and what together with others, in words."""
    more = f"{counted(look.helps, 'answer')} together with other looks"
    if not look.settles:
        return f"settles nothing by itself, {more}"
    alone = f"settles {_average(look.expected)} of {counted(tuple(look.settles), 'open answer')}"
    return f"{alone}, and {more}" if look.helps else alone


def _average(number: Fraction) -> str:
    """A mean to a tenth, which says that it is one where it is not whole."""
    whole, tenth = divmod(round(number * 10), 10)
    return f"on average {whole}.{tenth}" if tenth else str(whole)


def _likeliest(look: Look) -> Iterator[tuple[Pair, Fraction]]:
    yield from sorted(
        [*look.settles.items(), *((pair, Fraction(0)) for pair in look.helps)],
        key=lambda one: (-one[1], one[0].vehicle, one[0].place, one[0].build, one[0].unit),
    )


def _settled(book: KnowledgeBase, pair: Pair, when: str, to: Links) -> Settled:
    build = build_words(pair.build)
    return Settled(
        book.head_units[pair.unit].name,
        to.head_unit(pair.unit),
        place_words(book, pair.vehicle, pair.place) + (f", {build}" if build else ""),
        when,
    )


def _when(look: Look, share: Fraction) -> str:
    if look.todo.tool == UNIT_ITSELF and share:
        return "whether it goes in or not" if share == 1 else "if it goes in, or if it does not"
    if share == 1:
        return "whatever it reads"
    return f"in {share.numerator} of {share.denominator} cases" if share else "together with other looks"
