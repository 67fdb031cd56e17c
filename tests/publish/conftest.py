"""What there is to publish of the two books that are in the project."""

from pathlib import Path

import pytest

from bezelbook.pipeline import knowledge_of
from bezelbook.publish.knowledge import Knowledge
from bezelbook.publish.opening import Opening, openings_of
from bezelbook.publish.page_text import bodies
from bezelbook.publish.pages import site_files
from bezelbook.publish.site_file import SiteFile
from tests.publish.reading_html import Element, parsed


@pytest.fixture(scope="session")
def worked(books: Path) -> Knowledge:
    """The worked example of the trade, whose every answer was worked out by hand."""
    return knowledge_of(books / "worked")


@pytest.fixture(scope="session")
def demo(kb: Path) -> Knowledge:
    """The book that is published."""
    return knowledge_of(kb)


@pytest.fixture(scope="session")
def worked_files(worked: Knowledge) -> tuple[SiteFile, ...]:
    """Every file of the worked example's site."""
    return site_files(worked)


@pytest.fixture(scope="session")
def demo_files(demo: Knowledge) -> tuple[SiteFile, ...]:
    """Every file of the published book's site."""
    return site_files(demo)


@pytest.fixture(scope="session")
def worked_pages(worked_files: tuple[SiteFile, ...]) -> dict[str, Element]:
    """Every page of the worked example's site by path, read as a browser would."""
    return pages_of(worked_files)


@pytest.fixture(scope="session")
def demo_pages(demo_files: tuple[SiteFile, ...]) -> dict[str, Element]:
    """Every page of the published book's site by path, read as a browser would."""
    return pages_of(demo_files)


def pages_of(files: tuple[SiteFile, ...]) -> dict[str, Element]:
    return {path: parsed(body) for path, body in bodies(files).items()}


@pytest.fixture(scope="session")
def dash(worked: Knowledge) -> Opening:
    """The one opening of the worked example."""
    [opening] = openings_of(worked.book)
    return opening
