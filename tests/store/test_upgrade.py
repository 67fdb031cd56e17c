"""An older book goes through its steps as a whole, or stays as it was to the byte."""

from collections.abc import Callable
from pathlib import Path

import pytest

from bezelbook.store.book import load_book
from bezelbook.store.complaints import Complaint
from bezelbook.store.upgrade import Upgraded, upgrade
from bezelbook.values.complaint import Wrong

# An older shape, made up: a mount was made "of" a kind.
OLD = {
    "shop.yaml": b"\xef\xbb\xbfname: a shop # ours\r\nformat: 0x1 # the first\r\nunits_first: in\r\n",
    "mounts/ring.yaml": b"# the black one\r\nname: ring\r\nkind_of: spacer\r\n",
    "mounts/kit.yaml": b"name: kit\nkind_of: kit",
    "vehicles/van.yaml": b"name: van\r\nvehicle_class: cargo van\r\ngeneration: 1\r\nmodel_years: 2\r\nplaces: {}\r\n",
    ".notes/mine.txt": b"not the tool's\r\n",
}
NEW = OLD | {
    "shop.yaml": b"name: a shop # ours\nformat: 3 # the first\nunits_first: in\n",
    "mounts/ring.yaml": b"# the black one\nname: ring\nmount_kind: spacer\n",
    "mounts/kit.yaml": b"name: kit\nmount_kind: kit",
}


def two_from_one(folder: str, text: str) -> str:
    return text.replace("kind_of:", "kind:") if folder == "mounts" else text


def three_from_two(folder: str, text: str) -> str:
    assert folder != "mounts" or "kind:" in text
    if "no way" in text:
        raise Wrong("nobody knows what that was", "Take it out")
    return text.replace("\nkind:", "\nmount_kind:")


@pytest.fixture(autouse=True)
def third(monkeypatch: pytest.MonkeyPatch) -> None:
    """A tool that reads format 3."""
    monkeypatch.setattr("bezelbook.store.format.FORMAT", 3)
    monkeypatch.setattr("bezelbook.store.format.STEPS", {1: two_from_one, 2: three_from_two})


def written(folder: Path, files: dict[str, bytes]) -> Path:
    for name, data in files.items():
        (folder / name).parent.mkdir(parents=True, exist_ok=True)
        (folder / name).write_bytes(data)
    return folder


def there(folder: Path) -> dict[str, bytes]:
    return {path.relative_to(folder).as_posix(): path.read_bytes() for path in folder.rglob("*") if path.is_file()}


def test_every_file_goes_through_every_step_and_ends_its_lines_with_lf(tmp_path: Path) -> None:
    book = written(tmp_path / "kb", OLD)
    assert upgrade(book) == Upgraded(was=1, now=3, written=3)
    assert there(book) == NEW
    loaded = load_book(book)
    assert (loaded.complaints, len(loaded.records)) == ((), 4)
    assert [path.name for path in tmp_path.iterdir()] == ["kb"]


def test_a_second_time_there_is_nothing_to_do(tmp_path: Path) -> None:
    book = written(tmp_path / "kb", OLD)
    upgrade(book)
    times = {path: path.stat().st_mtime_ns for path in book.rglob("*")}
    assert upgrade(book) == Upgraded(was=3, now=3, written=0)
    assert {path: path.stat().st_mtime_ns for path in book.rglob("*")} == times


def test_a_book_that_is_named_by_a_link_is_upgraded_where_it_lies(tmp_path: Path) -> None:
    book = written(tmp_path / "kb", OLD)
    (tmp_path / "link").symlink_to(book)
    assert upgrade(tmp_path / "link").written == 3
    assert (tmp_path / "link").is_symlink()
    assert there(book) == NEW


@pytest.mark.parametrize(
    ("name", "data", "what"),
    [
        ("mounts/a.yaml", b"name: no way\nkind_of: kit\n", "nobody knows what that was"),
        ("mounts/z.yaml", b"name: caf\xe9\n", "this is not UTF-8 text"),
        ("mounts/z.yaml", b"name: z\nkind_of: nonsense\n", '"nonsense"'),
        ("mounts/z.yaml", b"name: [\nkind_of:\n", ""),
        ("shop.yaml", b"name: a shop\nformat: 4\n", "this book is of format 4"),
        ("shop.yaml", b"name: a shop\n", "this does not say the book's format"),
        ("shop.yaml", b"name: a shop\nformat: 0\n", "this does not say the book's format"),
        ("shop.yaml", b"name: a shop\nformat: true\n", "this does not say the book's format"),
        ("shop.yaml", b"name: a shop\nformat: [\n", ""),
        ("shop.yaml", b"- a list\n", "this does not say the book's format"),
    ],
)
def test_whatever_stands_in_the_way_of_one_file_is_said_and_all_stay_as_they_were(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, name: str, data: bytes, what: str
) -> None:
    monkeypatch.chdir(tmp_path)
    book = written(tmp_path / "kb", OLD | {name: data})
    complaints = upgrade(Path("kb")).complaints
    assert [(one.path, what in one.what) for one in complaints[:1]] == [(f"kb/{name}", True)]
    assert there(book) == OLD | {name: data}
    assert [path.name for path in tmp_path.iterdir()] == ["kb"]


def test_without_a_shop_nobody_knows_the_format(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)
    (tmp_path / "kb").mkdir()
    said = Complaint("kb/shop.yaml", 1, 1, "this file cannot be opened: No such file or directory", "")
    [complaint] = upgrade(tmp_path / "kb").complaints
    assert (complaint.path, complaint.what) == (said.path, said.what)


def test_a_step_that_loses_the_format_is_told_of(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def losing(folder: str, text: str) -> str:
        return two_from_one(folder, text).replace("format", "shape")

    monkeypatch.setattr("bezelbook.store.format.STEPS", {1: losing, 2: three_from_two})
    book = written(tmp_path / "kb", OLD)
    [complaint] = upgrade(book).complaints
    assert "does not say the book's format any more" in complaint.what
    assert there(book) == OLD


def test_a_disk_that_fails_at_the_last_moment_leaves_the_old_book(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    book = written(tmp_path / "kb", OLD)
    moved: Callable[[Path, Path], Path] = Path.rename

    def fail(path: Path, target: Path) -> Path:
        if path.name.startswith(".kb.") and not path.name.endswith(".old"):
            raise OSError(28, "No space left on device")
        return moved(path, target)

    monkeypatch.setattr(Path, "rename", fail)
    with pytest.raises(OSError, match="No space left"):
        upgrade(book)
    assert there(book) == OLD
    assert [path.name for path in tmp_path.iterdir()] == ["kb"]


@pytest.mark.parametrize("inside", [".", "mounts"])
def test_the_folder_that_somebody_stands_in_is_not_replaced(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, inside: str
) -> None:
    book = written(tmp_path / "kb", OLD)
    monkeypatch.chdir(book / inside)
    with pytest.raises(Wrong, match="runs inside it"):
        upgrade(book)
    assert there(book) == OLD
