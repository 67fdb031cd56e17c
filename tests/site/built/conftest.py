"""The sites that the browser tests open: each book built once, from a folder, as a shop would."""

import os
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Page

from bezelbook.kinds import KINDS
from bezelbook.kinds.record import Record
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.pipeline import knowledge_of
from bezelbook.store.yaml_out import to_yaml
from tests.publish import hostile
from tests.site.built import counter_book


@pytest.hookimpl(tryfirst=True)
def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Thousands of answers are compared with the browser's here; counting lines would slow that fourfold."""
    for item in items:
        if "/site/built/" in item.path.as_posix():
            item.add_marker(pytest.mark.no_cover)


def build(root: Path, book: Path, out: Path, **environment: str) -> Path:
    """Build a book's site into a folder with the project's own settings; fails on any warning."""
    told = {**os.environ, "BEZELBOOK_BOOK": str(book), "NO_MKDOCS_2_WARNING": "1", **environment}
    engine = [sys.executable, "-m", "mkdocs", "build", "--quiet", "--strict", "--site-dir", str(out)]
    done = subprocess.run(engine, cwd=root, env=told, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stdout + done.stderr
    return out


def write_book(folder: Path, records: tuple[Record, ...]) -> Path:
    """The files that these records would be."""
    for record in records:
        kind = next(kind for kind in KINDS.values() if _is_of(kind.name, record))
        at = folder if kind.single else folder / kind.folder / "2026" if kind.by_year else folder / kind.folder
        at.mkdir(parents=True, exist_ok=True)
        plain = record.model_dump(mode="json", exclude_unset=True, exclude={"id"})
        (at / f"{record.id}.yaml").write_text(to_yaml(plain), encoding="utf-8")
    return folder


def _is_of(kind: str, record: Record) -> bool:
    return type(record).__module__ == f"bezelbook.kinds.{kind}.record"


@pytest.fixture(scope="session")
def worked_site(root: Path, books: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The site of the worked example."""
    return build(root, books / "worked", tmp_path_factory.mktemp("worked"))


@pytest.fixture(scope="session")
def doors_site(root: Path, books: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The site of the trade's doors."""
    return build(root, books / "doors", tmp_path_factory.mktemp("doors"))


@pytest.fixture(scope="session")
def trim_site(root: Path, books: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The site of the trade's trim that comes off."""
    return build(root, books / "trim", tmp_path_factory.mktemp("trim"))


@pytest.fixture(scope="session")
def demo_site(root: Path, kb: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The site of the published book."""
    return build(root, kb, tmp_path_factory.mktemp("demo"))


@pytest.fixture(scope="session")
def counter_site(root: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The site of a book in which the box has to ask for everything that it can ask for."""
    book = write_book(tmp_path_factory.mktemp("counter-book"), counter_book.records())
    return build(root, book, tmp_path_factory.mktemp("counter"))


@pytest.fixture(scope="session")
def hostile_site(root: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The site of a book whose every text tries to be something else; one of its files cannot be read."""
    book = write_book(tmp_path_factory.mktemp("hostile-book"), hostile.records())
    (book / "vehicles" / "broken.yaml").write_text("name: [<b>never closed\n", encoding="utf-8")
    return build(root, book, tmp_path_factory.mktemp("hostile"))


@pytest.fixture(scope="session")
def worked_book(books: Path) -> KnowledgeBase:
    """The worked example itself."""
    return knowledge_of(books / "worked").book


@pytest.fixture(scope="session")
def doors_book(books: Path) -> KnowledgeBase:
    """The trade's doors themselves."""
    return knowledge_of(books / "doors").book


@pytest.fixture(scope="session")
def demo_book(kb: Path) -> KnowledgeBase:
    """The published book itself."""
    return knowledge_of(kb).book


@pytest.fixture
def at_home(page: Page) -> Callable[[Path, str], Page]:
    """Opens a site's home page from its folder, at the answer to these words if there are any."""

    def opened(site: Path, words: str = "") -> Page:
        page.goto(f"{(site / 'index.html').as_uri()}{'#ask=' if words else ''}{words}")
        return page

    return opened
