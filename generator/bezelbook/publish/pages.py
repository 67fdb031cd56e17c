"""Every file of the site as it comes from what is known, and from nothing else."""

from collections.abc import Iterator

from bezelbook.publish.address import READING, Links
from bezelbook.publish.check_pages import check_pages
from bezelbook.publish.counts.thing import Things
from bezelbook.publish.data import data_files
from bezelbook.publish.head_unit_page import head_unit_pages
from bezelbook.publish.home_page import home_page
from bezelbook.publish.knowledge import Knowledge
from bezelbook.publish.links import check_links
from bezelbook.publish.lists import list_pages
from bezelbook.publish.look_next_page import look_next_page
from bezelbook.publish.mentions import mentions
from bezelbook.publish.monday_page import monday_page
from bezelbook.publish.mount_page import mount_pages
from bezelbook.publish.opening import openings_of
from bezelbook.publish.page_text import page_file
from bezelbook.publish.record_pages import listed_pages, part_pages
from bezelbook.publish.removal.page import removal_pages
from bezelbook.publish.site_file import SiteFile
from bezelbook.publish.speakers.place import places_for_speakers
from bezelbook.publish.template import render
from bezelbook.publish.vehicle_page import vehicle_pages
from bezelbook.publish.writing_pages import writing_pages


def site_files(knowledge: Knowledge) -> tuple[SiteFile, ...]:
    """Every page and data script, in order of path; raises BrokenLinksError when a page points at nothing."""
    files = tuple(sorted(_files(knowledge), key=lambda file: file.path))
    check_links(files)
    return files


def _files(knowledge: Knowledge) -> Iterator[SiteFile]:
    book = knowledge.book
    openings, named, places = openings_of(book), mentions(book), places_for_speakers(book)
    yield home_page(knowledge, openings)
    things = Things(book, knowledge.today)
    yield from vehicle_pages(book, openings, named, places, things)
    yield from removal_pages(book, named, things)
    yield from head_unit_pages(book, openings, named)
    yield from mount_pages(book, named)
    yield from part_pages(book, places, things)
    yield from listed_pages(book, things)
    yield from list_pages(knowledge, named)
    yield monday_page(knowledge)
    yield look_next_page(book, openings)
    yield from check_pages(knowledge)
    yield page_file(READING, "How to read an answer", render("publish/reading.html", to=Links(READING, book)))
    yield from writing_pages(knowledge)
    yield from data_files(knowledge, openings, places)
