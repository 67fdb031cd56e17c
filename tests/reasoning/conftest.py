"""The trade's worked example, as the book holds it."""

from collections.abc import Mapping
from pathlib import Path

import pytest

from bezelbook.kinds.record import Record
from bezelbook.store.book import load_book


@pytest.fixture(scope="session")
def worked(worked_book: Path) -> Mapping[str, Record]:
    """The records of the worked example, by id."""
    loaded = load_book(worked_book)
    assert loaded.complaints == ()
    return {record.id: record for record in loaded.records}
