"""The page of a mount: the hole it presents, how far it holds a part out, what it needs, where it was used."""

from collections.abc import Iterator

from bezelbook.kinds.mount.record import For, Mount
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.publish.address import Links, mount_page, part_kind
from bezelbook.publish.mentions import Mentions, place_words, quoted
from bezelbook.publish.notes import said_on_bench
from bezelbook.publish.page_text import page_file
from bezelbook.publish.site_file import SiteFile
from bezelbook.publish.sizes import size_rows
from bezelbook.publish.template import render
from bezelbook.publish.typed import typed_lines

SIZES = ("proud", "thickness", "tabs_in", "tabs_out")
HOLE = ("width", "height", "nose_width", "nose_height")
SHOWN_APART = ("id", "name", "also", "about", "mount_kind", "presents", "made_for", "needs_too", *SIZES)


def mount_pages(book: KnowledgeBase, named: Mentions) -> Iterator[SiteFile]:
    """One page a mount."""
    caliper, first = book.shop.tools.bench_caliper, book.shop.units_first
    for mount in book.mounts.values():
        to = Links(mount_page(mount.id), book)
        html = render(
            "kinds/mount/page.html",
            mount=mount,
            made_for=[
                (place_words(book, use.vehicle, use.place), _builds(use), _at(book, use, to)) for use in mount.made_for
            ],
            needs_too=[_other(book, key, to) for key in mount.needs_too],
            sizes=size_rows(mount, SIZES, caliper, first),
            hole=size_rows(mount.presents, HOLE, caliper, first),
            ninths=", ".join(mount.presents.ninths) or "all nine",
            lines=typed_lines(mount, leave_out=SHOWN_APART),
            used=quoted(book, named.used.get(mount.id, ()), to),
            bench=said_on_bench(book, mount.id) if part_kind(book, mount.id) == "mount" else (),
            to=to,
        )
        yield page_file(to.page, mount.name, html, f"mounts/{mount.id}")


def _builds(use: For) -> str:
    return ", ".join(use.splits.values())


def _at(book: KnowledgeBase, use: For, to: Links) -> str:
    """Where the place is on the site; empty when the book has no such vehicle."""
    vehicle = book.vehicles.get(use.vehicle)
    if vehicle is None:
        return ""
    return to.place(use.vehicle, use.place) if use.place in vehicle.places else to.vehicle(use.vehicle)


def _other(book: KnowledgeBase, key: str, to: Links) -> tuple[str, str]:
    mount: Mount | None = book.mounts.get(key)
    return (mount.name, to.mount(key)) if mount else (key.replace("-", " "), "")
