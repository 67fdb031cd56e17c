"""The home page: the one box to ask in, and what there is in the book."""

from collections.abc import Iterator

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.publish.address import HOME, Links
from bezelbook.publish.knowledge import Knowledge
from bezelbook.publish.opening import Opening
from bezelbook.publish.page_text import page_file
from bezelbook.publish.site_file import SiteFile
from bezelbook.publish.template import render
from bezelbook.publish.wording import counted


def home_page(knowledge: Knowledge, openings: tuple[Opening, ...]) -> SiteFile:
    """The page that a shop opens first."""
    book = knowledge.book
    html = render(
        "publish/home.html",
        shop=book.shop,
        about=book.shop.about or "",
        examples=list(_examples(book, openings)),
        holds=_holds(book),
        today=knowledge.today,
        left_out=knowledge.left_out,
        questions=counted(len(knowledge.findings), "question"),
        to=Links(HOME, book),
    )
    return page_file(HOME, book.shop.name, html)


def _examples(book: KnowledgeBase, openings: tuple[Opening, ...]) -> Iterator[str]:
    """Questions in the book's own words: one with a bare depth, one with three sizes, one with a thing by name."""
    things = [shortest_name(unit.name, unit.also) for unit in book.head_units.values()]
    sizes = ("165", "178 x 100 x 165", *things[-1:])
    for opening, size in zip(openings, sizes, strict=False):
        vehicle = opening.room.frame.vehicle
        place = shortest_name(opening.name, opening.record.also)
        yield f"{shortest_name(vehicle.name, vehicle.also)} {place} {size}"


def shortest_name(name: str, also: tuple[str, ...]) -> str:
    """The shortest thing that it is called, the first of them when several are as short."""
    return min((name, *also), key=len)


def _holds(book: KnowledgeBase) -> str:
    kinds = (
        (len(book.vehicles), "vehicle"),
        (len(book.head_units), "head unit"),
        (len(book.mounts), "mount"),
        (len(book.notes), "note"),
    )
    return ", ".join(f"{number} {thing}{'' if number == 1 else 's'}" for number, thing in kinds)
