"""Where the tests find the project's own files, and how hard they look for a counter-example."""

from pathlib import Path

import pytest
from hypothesis import HealthCheck, settings

# The same cases every time, so that a red run stays red; `make fuzz` makes up new ones. How long an example
# takes says nothing on a busy machine, so nothing fails for that.
settings.register_profile(
    "steady", derandomize=True, deadline=None, suppress_health_check=[HealthCheck.too_slow], print_blob=True
)
settings.register_profile("long", settings.get_profile("steady"), derandomize=False, max_examples=5_000)
settings.load_profile("steady")

ROOT = Path(__file__).resolve().parents[1]


@pytest.fixture(scope="session")
def root() -> Path:
    """The folder that holds the whole project."""
    return ROOT


@pytest.fixture(scope="session")
def package(root: Path) -> Path:
    """The tool's own source."""
    return root / "generator" / "bezelbook"


@pytest.fixture(scope="session")
def kb(root: Path) -> Path:
    """The book that is published: tests on it must hold for any valid book."""
    return root / "kb"


@pytest.fixture(scope="session")
def books(root: Path) -> Path:
    """Books kept for the tests, one a folder: what must hold of one book alone is tested on these."""
    return root / "tests" / "books"


@pytest.fixture(scope="session")
def worked_book(books: Path) -> Path:
    """The trade's own worked examples, as records."""
    return books / "worked"


@pytest.fixture(scope="session")
def vectors(root: Path) -> Path:
    """Cases that Python and the browser both read."""
    return root / "tests" / "vectors"


# What is asked of pages and commands is that they are right; lines are counted where the core itself is asked.
WHOLE = ("/tests/publish/", "/tests/cli/")


@pytest.hookimpl(tryfirst=True)
def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Coverage comes from the tests of each module of the core; counting lines elsewhere would slow it threefold."""
    for item in items:
        if any(folder in item.path.as_posix() for folder in WHOLE):
            item.add_marker(pytest.mark.no_cover)
