"""A new book is whole, loads without a complaint, and is never written over anything."""

import os
from pathlib import Path

import pytest

from bezelbook.kinds import KINDS
from bezelbook.store.book import load_book
from bezelbook.store.new_book import write_new_book
from bezelbook.values.complaint import Wrong


@pytest.mark.parametrize("there", [True, False])
def test_a_new_book_loads_without_a_complaint(tmp_path: Path, there: bool) -> None:  # noqa: FBT001
    folder = tmp_path / "shop"
    if there:
        folder.mkdir()
    write_new_book(folder)
    loaded = load_book(folder / "kb")
    assert loaded.complaints == ()
    assert [record.id for record in loaded.records] == ["shop"]


def test_it_has_a_folder_for_every_kind_and_names_all_it_wrote(tmp_path: Path) -> None:
    names = write_new_book(tmp_path)
    there = {path.relative_to(tmp_path).as_posix() for path in tmp_path.rglob("*") if path.is_file()}
    assert there == set(names)
    assert all((tmp_path / "kb" / kind.folder).is_dir() for kind in KINDS.values() if not kind.single)


def test_the_script_that_checks_it_can_be_run(tmp_path: Path) -> None:
    write_new_book(tmp_path)
    assert os.access(tmp_path / ".ci" / "run", os.X_OK)


def test_nothing_of_a_shop_s_is_overwritten(tmp_path: Path) -> None:
    (tmp_path / "mine.txt").write_text("mine", "utf-8")
    for folder in (tmp_path, tmp_path / "mine.txt"):
        with pytest.raises(Wrong, match="is not an empty folder"):
            write_new_book(folder)
    assert [path.name for path in tmp_path.iterdir()] == ["mine.txt"]
