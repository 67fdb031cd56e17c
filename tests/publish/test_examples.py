"""Every example that lies beside a kind is shown on a page, as the record that it is."""

from collections.abc import Iterator

import pytest

from bezelbook.kinds import KINDS
from bezelbook.kinds.record import Named, Record
from tests.kinds.agreement import content_of, example_files, read
from tests.publish.pages_of import pages_about
from tests.publish.reading_html import Element


def examples() -> Iterator[Record]:
    """All of them as one book; the example of a kind is the file that its own comment speaks of or one of that name."""
    for kind in KINDS.values():
        for path in example_files(kind):
            yield read(kind, content_of(path)).model_copy(update={"id": f"{kind.name}-{path.stem}".replace("_", "-")})


@pytest.fixture(scope="module")
def pages() -> dict[str, Element]:
    return pages_about(*examples())


def test_every_named_example_is_the_heading_of_a_page(pages: dict[str, Element]) -> None:
    headings = {page.all("h1")[0].text for page in pages.values()}
    named = [one.name for one in examples() if isinstance(one, Named)]
    assert len(named) > 15
    assert set(named) <= headings


def test_every_example_of_a_note_is_quoted_in_full(pages: dict[str, Element]) -> None:
    anchors = [one.attributes["id"] for page in pages.values() for one in page.all("figure") if "id" in one.attributes]
    notes = [f"note-note-{path.stem}" for path in example_files(KINDS["notes"])]
    assert set(notes) <= set(anchors)


def test_every_other_example_stands_on_the_page_of_its_kind(pages: dict[str, Element]) -> None:
    for kind in KINDS.values():
        if kind.page:
            assert "Nothing yet." not in pages[f"{kind.page}.md"].text
