"""A book loads as far as it can, and everything else is told in one run."""

import gc
import hashlib
from pathlib import Path

import pytest

from bezelbook.kinds.record import Record
from bezelbook.store.book import load_book
from tests.store.toys import TOYS, Box

SOUND = "name: n\nverdict: goes in\n"


@pytest.fixture
def book(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A little book with one sound record, in the folder that the command runs in."""
    monkeypatch.chdir(tmp_path)
    put("boxes/sound.yaml", SOUND)
    return Path("kb")


def put(name: str, text: str) -> Path:
    path = Path("kb") / name
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_text(text, encoding="utf-8")
    return path


def test_a_sound_book_is_all_records(book: Path) -> None:
    put("logs/2026/a.yaml", "form: seen\nwhat: w\n")
    put("top.yaml", "name: The book\n")
    loaded = load_book(book, TOYS)
    assert loaded.complaints == ()
    assert [(type(record).__name__, record.id) for record in loaded.records] == [
        ("Box", "sound"),
        ("Seen", "a"),
        ("Top", "top"),
    ]
    assert loaded.read == ("kb/boxes/sound.yaml", "kb/logs/2026/a.yaml", "kb/top.yaml")


def test_digests_are_of_the_bytes_in_the_file(book: Path) -> None:
    assert load_book(book, TOYS).digests == {"kb/boxes/sound.yaml": hashlib.sha256(SOUND.encode()).hexdigest()}


def test_a_file_with_a_fault_is_left_out_and_the_others_load(book: Path) -> None:
    put("boxes/broken.yaml", "name: [\n")
    put("boxes/wrong.yaml", "name: n\nverdict: maybe so\nhieght: 3\nid: wrong\n")
    loaded = load_book(book, TOYS)
    assert [record.id for record in loaded.records] == ["sound"]
    assert [str(complaint).partition(" ")[0] for complaint in loaded.complaints] == [
        "kb/boxes/broken.yaml:2:1:",
        "kb/boxes/wrong.yaml:2:10:",
        "kb/boxes/wrong.yaml:3:1:",
        "kb/boxes/wrong.yaml:4:1:",
    ]
    assert len(loaded.read) == len(loaded.digests) == 3


def test_complaints_about_files_and_about_texts_come_in_one_order(book: Path) -> None:
    put("boxes/z.yaml", "")
    put("boxes/notes.txt", "")
    put("boxes/b.yaml", "")
    paths = [complaint.path for complaint in load_book(book, TOYS).complaints]
    assert paths == ["kb/boxes/b.yaml", "kb/boxes/notes.txt", "kb/boxes/z.yaml"]


def test_a_file_that_cannot_be_opened_is_told(book: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def closed(*_: object) -> None:
        raise PermissionError(13, "Permission denied")

    monkeypatch.setattr(Path, "open", closed)
    loaded = load_book(book, TOYS)
    assert [str(complaint) for complaint in loaded.complaints] == [
        "kb/boxes/sound.yaml:1:1: this file cannot be opened: Permission denied. See who may read it."
    ]
    assert (loaded.records, loaded.read) == ((), ())


def test_a_huge_file_is_refused_without_being_read(book: Path) -> None:
    put("boxes/huge.yaml", "x" * 300_000)
    (complaint,) = load_book(book, TOYS).complaints
    assert complaint.what == "this file is larger than 256 kB"


@pytest.mark.parametrize("collecting", [True, False])
def test_garbage_collection_is_as_it_was_afterwards(book: Path, collecting: bool) -> None:  # noqa: FBT001
    was = gc.isenabled()
    try:
        (gc.enable if collecting else gc.disable)()
        load_book(book, TOYS)
        assert gc.isenabled() == collecting
    finally:
        (gc.enable if was else gc.disable)()


def test_a_record_of_the_store_is_the_model_s_own(book: Path) -> None:
    (record,) = load_book(book, TOYS).records
    assert isinstance(record, Box)
    assert isinstance(record, Record)


def test_loading_twice_gives_the_same(book: Path) -> None:
    put("boxes/wrong.yaml", "name: n\n")
    assert load_book(book, TOYS) == load_book(book, TOYS)


def test_the_book_s_own_kinds_are_meant_when_none_are_given(book: Path) -> None:
    assert any("boxes" in complaint.what for complaint in load_book(book).complaints)
