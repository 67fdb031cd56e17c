"""Whether every link of the pages leads to a page, and to a place on it, that there is."""

import posixpath
from collections.abc import Iterator, Mapping, Sequence
from html.parser import HTMLParser
from urllib.parse import unquote

from bezelbook.publish.address import ASKED, HOME, built
from bezelbook.publish.page_text import bodies
from bezelbook.publish.site_file import SiteFile


class BrokenLinksError(ValueError):
    """A page points at something that is not there, which is a fault of the publisher's and not of the book's."""


class _Page(HTMLParser):
    """The ids that a page has and the addresses that it names."""

    def __init__(self, html: str) -> None:
        super().__init__()
        self.ids: list[str] = []
        self.addresses: list[str] = []
        self.feed(html)
        self.close()

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        """Keep what this element is called and where it points."""
        del tag
        for name, value in attrs:
            if name == "id":
                self.ids.append(value or "")
            elif name in ("href", "src", "action"):
                self.addresses.append(value or "")


def check_links(files: Sequence[SiteFile]) -> None:
    """Raise BrokenLinksError naming each link that leads nowhere or off the site, and each id that is there twice."""
    pages = {path: _Page(body) for path, body in bodies(files).items()}
    built_pages = {built(path): page for path, page in pages.items()}
    built_pages |= {file.path: _Page("") for file in files if file.path.endswith(".json")}
    faults = [fault for path, page in pages.items() for fault in _faults(path, page, built_pages)]
    if faults:
        raise BrokenLinksError("; ".join(faults))


def _faults(path: str, page: _Page, built_pages: Mapping[str, _Page]) -> Iterator[str]:
    yield from (f"{path} has {id_} twice" for id_ in sorted({one for one in page.ids if page.ids.count(one) > 1}))
    for address in page.addresses:
        to, _, anchor = address.partition("#")
        target = posixpath.normpath(posixpath.join(posixpath.dirname(path), unquote(to))) if to else built(path)
        if target not in built_pages:
            yield f"{path} points at {address}, and there is no such page"
        elif anchor and anchor not in built_pages[target].ids and not _asks(target, anchor):
            yield f"{path} points at {address}, and there is no such place on that page"


def _asks(target: str, anchor: str) -> bool:
    return target == built(HOME) and anchor.startswith(ASKED)
