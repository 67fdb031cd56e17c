"""The lists of the book: every vehicle, every part, the shop itself, and the notes that point at nothing."""

from collections.abc import Iterator

from bezelbook.kinds.record import Named
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.publish.address import LISTED, LOOSE, PARTS, SHOP, VEHICLES, Links
from bezelbook.publish.knowledge import Knowledge
from bezelbook.publish.mentions import Mentions
from bezelbook.publish.notes import loose_notes
from bezelbook.publish.page_text import page_file
from bezelbook.publish.record_pages import LIST_HEADINGS, PART_HEADINGS, parts_of
from bezelbook.publish.site_file import SiteFile
from bezelbook.publish.template import render
from bezelbook.publish.wording import counted


def list_pages(knowledge: Knowledge, named: Mentions) -> Iterator[SiteFile]:
    """The lists, each one page."""
    book = knowledge.book
    yield _vehicles(book)
    yield _parts(book, named)
    yield _shop(book)
    yield _loose(book)


def _vehicles(book: KnowledgeBase) -> SiteFile:
    to = Links(VEHICLES, book)
    rows = [(one, to.vehicle(one.id), _also(one), _noted(book, one.id)) for one in book.vehicles.values()]
    return page_file(VEHICLES, "Vehicles", render("publish/vehicles.html", rows=rows))


def _noted(book: KnowledgeBase, vehicle: str) -> str:
    notes = sum(len(book.notes_at(vehicle, place)) for place in book.vehicles[vehicle].places)
    return counted(notes, "note")


def _parts(book: KnowledgeBase, named: Mentions) -> SiteFile:
    to = Links(PARTS, book)
    units = [
        (one, to.head_unit(one.id), _also(one), f"tried {_times(len(named.tried.get(one.id, ())))}")
        for one in book.head_units.values()
    ]
    mounts = [
        (one, to.mount(one.id), _also(one), f"used {_times(len(named.used.get(one.id, ())))}")
        for one in book.mounts.values()
    ]
    lists = [(LIST_HEADINGS[kind], to.to(path)) for kind, path in LISTED.items()]
    html = render("publish/parts.html", units=units, mounts=mounts, others=list(_others(book, to)), lists=lists)
    return page_file(PARTS, "Parts", html)


def _others(book: KnowledgeBase, to: Links) -> Iterator[tuple[str, str, list[tuple[Named, str, str]]]]:
    """Each other kind of part that the book has any of: its anchor, its heading, and its records."""
    for kind, heading in PART_HEADINGS.items():
        records = [(one, to.record(kind, one.id), _also(one)) for one in parts_of(book, kind)]
        if records:
            yield f"{kind}s", heading, records


def _times(number: int) -> str:
    return f"in {counted(number, 'note')}"


def _shop(book: KnowledgeBase) -> SiteFile:
    shop = book.shop
    html = render(
        "kinds/shop/page.html",
        shop=shop,
        clearances=[
            (name.replace("_", " "), getattr(shop.clearances, name)) for name in type(shop.clearances).model_fields
        ],
        tools=[(name.replace("_", " "), getattr(shop.tools, name)) for name in type(shop.tools).model_fields],
        people=list(shop.people.items()),
    )
    return page_file(SHOP, shop.name, html, "shop")


def _loose(book: KnowledgeBase) -> SiteFile:
    html = render("publish/loose_notes.html", notes=loose_notes(book))
    return page_file(LOOSE, "Notes that point at nothing", html)


def _also(record: Named) -> str:
    return ", ".join(record.also)
