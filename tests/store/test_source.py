"""A field is found in its file again, or the nearest thing around it is."""

from pathlib import Path

import pytest

from bezelbook.store.source import from_folder, source_of


@pytest.fixture
def record(tmp_path: Path) -> str:
    path = tmp_path / "x.yaml"
    path.write_text("# a note\nname: n\nsizes:\n  depth: 5 mm\n", "utf-8")
    return str(path)


@pytest.mark.parametrize(
    ("field", "place"),
    [
        (("name",), "2:7"),
        (("sizes", "depth"), "4:10"),
        (("sizes", "height"), "4:3"),
        (("nothing", 3, "here"), "2:1"),
        ((), "2:1"),
    ],
)
def test_a_field_has_a_line_and_a_column(record: str, field: tuple[str | int, ...], place: str) -> None:
    assert source_of(record, field) == f"{record}:{place}"


def test_a_file_that_says_nothing_is_shown_from_its_start(tmp_path: Path) -> None:
    empty = tmp_path / "empty.yaml"
    empty.write_bytes(b"")
    for path in (empty, tmp_path / "gone.yaml"):
        assert source_of(str(path), ("name",)) == f"{path}:1:1"


def test_a_place_is_told_from_the_folder_of_the_book_wherever_that_lies(tmp_path: Path) -> None:
    book = tmp_path / "deep" / "kb"
    assert from_folder(book, f"{book}/notes/a.yaml:3:4") == "kb/notes/a.yaml:3:4"
    assert from_folder(book, "/elsewhere/a.yaml:3:4") == "/elsewhere/a.yaml:3:4"
