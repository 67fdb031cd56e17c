"""A book of a newer format is refused whole, with what would mend it."""

from pathlib import Path

from bezelbook.store.book import load_book
from bezelbook.store.format import FORMAT, newer_format


def book_of_format(folder: Path, number: int) -> Path:
    (folder / "mounts").mkdir(parents=True)
    (folder / "shop.yaml").write_text(f"name: a shop\nformat: {number}\n", encoding="utf-8")
    (folder / "mounts" / "ring.yaml").write_text("name: ring\nmount_kind: spacer\n", encoding="utf-8")
    return folder


def test_the_books_own_format_is_read(tmp_path: Path) -> None:
    loaded = load_book(book_of_format(tmp_path / "kb", FORMAT))
    assert [record.id for record in loaded.records] == ["ring", "shop"]
    assert newer_format(loaded.records) is None
    assert loaded.complaints == ()


def test_nothing_of_a_newer_book_is_half_read(tmp_path: Path) -> None:
    loaded = load_book(book_of_format(tmp_path / "kb", FORMAT + 1))
    assert loaded.records == ()
    (complaint,) = loaded.complaints
    assert complaint.path.endswith("kb/shop.yaml")
    assert f"format {FORMAT + 1}" in complaint.what
    assert complaint.mend == f"Install a bezelbook that reads format {FORMAT + 1}"
