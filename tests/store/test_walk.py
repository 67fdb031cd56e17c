"""Every file of a book is a record in its place, or something is said about it."""

import os
from pathlib import Path

import pytest

from bezelbook.store.walk import walk
from bezelbook.values.ident import id_complaint
from tests.store.toys import TOYS


@pytest.fixture
def book(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A sound little book, in the folder that the command runs in."""
    monkeypatch.chdir(tmp_path)
    for name in ("boxes/big.yaml", "boxes/small.yaml", "logs/2025/a.yaml", "logs/2026/b.yaml", "top.yaml"):
        put(Path("kb") / name)
    return Path("kb")


def put(path: Path) -> None:
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_bytes(b"")


def names(folder: Path) -> list[str]:
    return [found.path.as_posix() for found in walk(folder, TOYS)[0]]


def said(folder: Path) -> list[str]:
    return [str(complaint) for complaint in walk(folder, TOYS)[1]]


SOUND = ["kb/boxes/big.yaml", "kb/boxes/small.yaml", "kb/logs/2025/a.yaml", "kb/logs/2026/b.yaml", "kb/top.yaml"]


def test_records_are_found_in_the_order_of_their_paths(book: Path) -> None:
    found, complaints = walk(book, TOYS)
    assert complaints == ()
    assert [file.path.as_posix() for file in found] == SOUND
    assert [(file.kind.name, file.name) for file in found][2:] == [("log", "a"), ("log", "b"), ("top", "top")]


def test_what_is_hidden_is_passed_over(book: Path) -> None:
    put(book / ".keep")
    put(book / ".git" / "config")
    put(book / "boxes" / ".big.yaml.swp")
    assert (names(book), said(book)) == (SOUND, [])


def test_no_folder_is_no_book(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)
    line = "kb:1:1: there is no book here. Start one with bezelbook start, or name it with --book."
    assert said(Path("kb")) == [line]
    put(Path("kb"))
    assert said(Path("kb")) == [line]


@pytest.mark.parametrize(
    ("name", "line"),
    [
        (
            "README.md",
            "kb/README.md:1:1: this belongs to no kind of record. Move it into one of the book's folders, or out.",
        ),
        (
            "boxes.yaml",
            "kb/boxes.yaml:1:1: this belongs to no kind of record. Move it into one of the book's folders, or out.",
        ),
        ("boxs/a.yaml", 'kb/boxs:1:1: the book has no folder "boxs". Did you mean "boxes"?'),
        ("photos/a.jpg", 'kb/photos:1:1: the book has no folder "photos". The book\'s folders are boxes, logs.'),
        ("top/a.yaml", "kb/top:1:1: top is one file. Write top.yaml in its place."),
        ("boxes/deep/a.yaml", "kb/boxes/deep:1:1: a folder has no place here. Move what is in it one folder up."),
        (
            "boxes/deep.yaml/a.yaml",
            "kb/boxes/deep.yaml:1:1: a folder has no place here. Move what is in it one folder up.",
        ),
        ("boxes/a.yml", "kb/boxes/a.yml:1:1: a record's name ends in .yaml. Rename it to a.yaml."),
        ("boxes/a.YAML", "kb/boxes/a.YAML:1:1: a record's name ends in .yaml. Rename it to a.yaml."),
        ("boxes/a.yaml~", "kb/boxes/a.yaml~:1:1: this is not a record. Move it out; a record's name ends in .yaml."),
        ("boxes/list", "kb/boxes/list:1:1: this is not a record. Move it out; a record's name ends in .yaml."),
        ("logs/a.yaml", "kb/logs/a.yaml:1:1: logs are filed by year. Move it to logs/2026, or another year."),
        ("logs/march/a.yaml", "kb/logs/march:1:1: logs are filed by year. Move it to logs/2026, or another year."),
        ("logs/2026/old/a.yaml", "kb/logs/2026/old:1:1: a folder has no place here. Move what is in it one folder up."),
        ("boxes/Big Box.yaml", f"kb/boxes/Big Box.yaml:1:1: the file's name: {id_complaint('Big Box')}"),
        (
            "boxes/nul.yaml",
            'kb/boxes/nul.yaml:1:1: the file\'s name: "nul" is a name that Windows keeps for itself. Write nul-1.',
        ),
        ("boxes/BIG.yaml", "kb/boxes/BIG.yaml:1:1: kb/boxes/big.yaml differs only in capitals. Rename one of the two."),
        ("logs/2026/a.yaml", "kb/logs/2026/a.yaml:1:1: kb/logs/2025/a.yaml has the same name. Rename one of the two."),
    ],
)
def test_what_does_not_belong_is_told_and_everything_else_is_found(book: Path, name: str, line: str) -> None:
    put(book / name)
    assert (names(book), said(book)) == (SOUND, [line])


def test_the_same_name_in_another_kind_is_no_twin(book: Path) -> None:
    put(book / "boxes" / "a.yaml")
    assert said(book) == []


def test_of_ill_named_twins_neither_is_a_record(book: Path) -> None:
    put(book / "boxes" / "New.yaml")
    put(book / "boxes" / "NEW.yaml")
    assert names(book) == SOUND
    assert [line.partition(":")[0] for line in said(book)] == ["kb/boxes/NEW.yaml", "kb/boxes/New.yaml"]


def test_a_link_is_told_and_not_followed(book: Path) -> None:
    (book / "boxes" / "link.yaml").symlink_to("big.yaml")
    (book / "logs" / "2024").symlink_to("2025")
    assert names(book) == SOUND
    assert said(book) == [
        "kb/boxes/link.yaml:1:1: this only points to another file. Put the file itself here.",
        "kb/logs/2024:1:1: this only points to another file. Put the file itself here.",
    ]


def test_what_is_no_file_is_never_opened(book: Path) -> None:
    os.mkfifo(book / "boxes" / "pipe.yaml")
    assert said(book) == ["kb/boxes/pipe.yaml:1:1: a record's name ends in .yaml. Rename it to pipe.yaml."]


def test_a_folder_that_cannot_be_opened_is_told(book: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    scandir = os.scandir

    def closed(folder: "os.PathLike[str]") -> "os._ScandirIterator[str]":
        if os.fspath(folder).endswith("boxes"):
            raise PermissionError(13, "Permission denied")
        return scandir(folder)

    monkeypatch.setattr(os, "scandir", closed)
    assert said(book) == ["kb/boxes:1:1: this folder cannot be opened: Permission denied. See who may read it."]
    assert names(book) == SOUND[2:]
