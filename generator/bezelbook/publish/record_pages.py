"""The pages of kinds without a page module of their own: one page a part, one page for all of any other kind."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from bezelbook.kinds import KINDS
from bezelbook.kinds.adapter.record import Adapter
from bezelbook.kinds.asked.record import Asked
from bezelbook.kinds.connector.record import Connector
from bezelbook.kinds.job.record import Job
from bezelbook.kinds.note.record import Bench
from bezelbook.kinds.record import Named, Record
from bezelbook.kinds.references import Reference, references
from bezelbook.kinds.stock.record import Stock
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.publish.address import LISTED, Links, part_kind, part_page, record_anchor
from bezelbook.publish.circuits.adapter_view import adapter_lines, mates
from bezelbook.publish.counts.thing import Things, WantRow
from bezelbook.publish.drawing.face import face, face_words
from bezelbook.publish.electric.on_page import Electric
from bezelbook.publish.mentions import Mention, quoted
from bezelbook.publish.notes import said_on_bench
from bezelbook.publish.page_text import page_file
from bezelbook.publish.site_file import SiteFile
from bezelbook.publish.speakers.place import Places
from bezelbook.publish.speakers.speaker_part import goes_where
from bezelbook.publish.template import render
from bezelbook.publish.typed import Line, typed_lines

# How a list heads the kinds that have a page each, and those that stand together on one page.
PART_HEADINGS = {kind.name: kind.heading for kind in KINDS.values() if kind.heading and not kind.page}
LIST_HEADINGS = {kind.name: kind.heading for kind in KINDS.values() if kind.page}
IN_THE_HEADING = ("id", "name", "also", "about")
_FOLDERS = {kind.name: kind.folder for kind in KINDS.values()}

NamedAt = tuple[str, str]  # what a person calls it, and its address, empty when the book has no such record


@dataclass(frozen=True, slots=True)
class Listed:
    """A record as the page of its kind shows it; `links` has what it names, by the words in which it does.

    `wanted` is what jobs want of what lies on a shelf, and `count_it` that it was counted too long ago.
    """

    record: Record
    anchor: str
    lines: tuple[Line, ...]
    links: Mapping[str, NamedAt]
    wanted: tuple[WantRow, ...]
    count_it: bool


@dataclass(frozen=True, slots=True)
class Known:
    """What was worked out once for all parts: where speakers go, what is counted, and what is electric."""

    places: Places
    things: Things
    electric: Electric


def part_pages(book: KnowledgeBase, places: Places, things: Things) -> Iterator[SiteFile]:
    """One page a record, for every kind that has a page each."""
    known = Known(places, things, Electric(book))
    for kind in PART_HEADINGS:
        yield from (_part(book, kind, record, known) for record in parts_of(book, kind))


def parts_of(book: KnowledgeBase, kind: str) -> tuple[Named, ...]:
    """The parts of one kind, in order of id."""
    return tuple(record for record in book.records.get(kind, {}).values() if isinstance(record, Named))


def _part(book: KnowledgeBase, kind: str, record: Named, known: Known) -> SiteFile:
    to = Links(part_page(kind, record.id), book)
    html = render(
        f"kinds/{kind}/page.html",
        record=record,
        lines=typed_lines(record, leave_out=IN_THE_HEADING),
        links=_links(book, record, to),
        mentions=_mentions(book, kind, record, to),
        named_by=_named_by(book, kind, record, to),
        bench=said_on_bench(book, record.id) if part_kind(book, record.id) == kind else (),
        to=to,
        goes_where=list(goes_where(record.id, known.places, to)) if kind == "speaker" else [],
        counts=known.things.part(record.id, to) if kind == "supply" else None,
        **known.electric.of(record),
        **(_face(record) | {"mates": mates(book, record, to)} if isinstance(record, Connector) else {}),
        **({"right_for": adapter_lines(book, record, to)} if isinstance(record, Adapter) else {}),
    )
    return page_file(to.page, record.name, html, f"{_FOLDERS[kind]}/{record.id}")


def _face(connector: Connector) -> dict[str, object]:
    return {"face": face(connector) or "", "face_words": face_words(connector)}


def listed_pages(book: KnowledgeBase, things: Things) -> Iterator[SiteFile]:
    """One page a kind, for every kind whose records stand together, such as the shelf."""
    for kind, path in LISTED.items():
        to = Links(path, book)
        records = sorted(book.records.get(kind, {}).values(), key=_order)
        listed = [_listed(book, kind, record, to, things) for record in records]
        html = render("publish/records.html", kind=kind, heading=LIST_HEADINGS[kind], records=listed, to=to)
        yield page_file(path, LIST_HEADINGS[kind], html)


def _listed(book: KnowledgeBase, kind: str, record: Record, to: Links, things: Things) -> Listed:
    lines = typed_lines(record, leave_out=("id",))
    wanted = things.wanted(record.thing, to) if isinstance(record, Stock) else ()
    old = isinstance(record, Stock) and not things.fresh(record)
    return Listed(record, record_anchor(kind, record.id), lines, _links(book, record, to), wanted, old)


def _order(record: Record) -> tuple[int, str, str]:
    """The most asked and the soonest first, jobs without a day last, the rest in order of id."""
    if isinstance(record, Asked):
        return -record.times, "", record.id
    return 0, (record.day or "no day" if isinstance(record, Job) else ""), record.id


def _links(book: KnowledgeBase, record: Record, to: Links) -> dict[str, NamedAt]:
    return {one.words: _link(book, one, to) for one in references(record)}


def _link(book: KnowledgeBase, reference: Reference, to: Links) -> NamedAt:
    """Where the first record that a reference names is; words that name none stand for themselves."""
    for kind in reference.kinds:
        found = book.named(kind, reference.words)
        if found:
            return called(found), to.record(kind, found.id)
    return (reference.words if reference.in_words else reference.words.replace("-", " ")), ""


def called(record: Record) -> str:
    """What a person calls a record: its name, or the words of its id."""
    return record.name if isinstance(record, Named) else record.id.replace("-", " ")


def _mentions(book: KnowledgeBase, kind: str, record: Record, to: Links) -> tuple[Mention, ...]:
    """The notes that name a part; what was seen of it on the bench is quoted apart."""
    ids = dict.fromkeys(one.id for one in book.pointers_to(kind, record.id) if one.kind == "note")
    return quoted(book, tuple(note for id_ in ids if not isinstance(note := book.notes[id_], Bench)), to)


def _named_by(book: KnowledgeBase, kind: str, record: Record, to: Links) -> list[NamedAt]:
    """The records, other than notes, that name this one."""
    pointing = dict.fromkeys((one.kind, one.id) for one in book.pointers_to(kind, record.id) if one.kind != "note")
    return [(called(book.records[other][id_]), to.record(other, id_)) for other, id_ in pointing]
