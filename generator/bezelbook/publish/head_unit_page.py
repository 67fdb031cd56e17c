"""The page of a head unit: its sizes, where it would go, where it was tried, what was seen on the bench."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.publish.address import Links, head_unit_page
from bezelbook.publish.answer_table import Cell, open_cell
from bezelbook.publish.mentions import Mentions, place_words, quoted
from bezelbook.publish.notes import said_on_bench
from bezelbook.publish.opening import Opening
from bezelbook.publish.page_text import page_file
from bezelbook.publish.screens import screen_places
from bezelbook.publish.site_file import SiteFile
from bezelbook.publish.sizes import size_rows
from bezelbook.publish.template import render
from bezelbook.publish.typed import typed_lines
from bezelbook.publish.wording import counted

SIZES = (
    "body_width",
    "body_height",
    "body_depth",
    "nose_width",
    "nose_height",
    "nose_protrusion",
    "rear_protrusion",
    "plug_and_bend",
)
IN_THE_HEADING = ("id", "name", "also", "about")


@dataclass(frozen=True, slots=True)
class Answered:
    """What is known of a head unit at one opening, whatever the car and the mount."""

    place: str
    at: str
    cell: Cell


def head_unit_pages(book: KnowledgeBase, openings: Sequence[Opening], named: Mentions) -> Iterator[SiteFile]:
    """One page a head unit."""
    for unit in book.head_units.values():
        to = Links(head_unit_page(unit.id), book)
        answers = [_place(opening, unit.id, to) for opening in openings]
        told = [one for one in answers if one.cell.verdict != "nobody has tried"]
        html = render(
            "kinds/head_unit/page.html",
            unit=unit,
            sizes=size_rows(unit, SIZES, book.shop.tools.bench_caliper, book.shop.units_first),
            lines=typed_lines(unit, leave_out=(*IN_THE_HEADING, *SIZES)),
            answers=told,
            screen_places=screen_places(tuple(openings), unit, to),
            untried=counted(len(answers) - len(told), "opening"),
            tried=quoted(book, named.tried.get(unit.id, ()), to),
            bench=said_on_bench(book, unit.id),
            to=to,
        )
        yield page_file(to.page, unit.name, html, f"head_units/{unit.id}")


def _place(opening: Opening, unit: str, to: Links) -> Answered:
    place = place_words(opening.book, opening.vehicle, opening.id)
    return Answered(place, to.place(opening.vehicle, opening.id), open_cell(opening, unit, to))
