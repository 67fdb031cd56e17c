"""A file is written whole or not at all, and never over one that should stay."""

import errno
import os
import stat
from pathlib import Path

import pytest

from bezelbook.store.writing import draft_of, replace, take_the_place, write_new


def names(folder: Path) -> list[str]:
    return sorted(path.name for path in folder.iterdir())


def test_a_new_file_has_its_text_in_utf_8_with_line_feeds(tmp_path: Path) -> None:
    write_new(tmp_path / "notes" / "2026" / "x.yaml", "a: ½\r\nb: 1\rc: 2\n")
    assert (tmp_path / "notes" / "2026" / "x.yaml").read_bytes() == "a: ½\nb: 1\nc: 2\n".encode()


def test_a_file_that_is_there_stays_as_it_is(tmp_path: Path) -> None:
    (tmp_path / "x.yaml").write_text("old")
    with pytest.raises(FileExistsError):
        write_new(tmp_path / "x.yaml", "new")
    assert (tmp_path / "x.yaml").read_text() == "old"
    assert names(tmp_path) == ["x.yaml"]


def test_replacing_puts_the_new_text_in_the_old_one_s_place(tmp_path: Path) -> None:
    target = tmp_path / "schema" / "x.json"
    replace(target, "one")
    replace(target, "two")
    assert target.read_text() == "two"
    assert names(target.parent) == ["x.json"]


def test_replacing_keeps_who_may_read_the_file(tmp_path: Path) -> None:
    target = tmp_path / "x.yaml"
    target.write_text("one")
    target.chmod(0o640)
    replace(target, "two")
    assert stat.S_IMODE(target.stat().st_mode) == 0o640


def test_a_new_file_can_be_read_by_whom_the_folder_s_other_files_can(tmp_path: Path) -> None:
    (tmp_path / "ordinary").write_text("x")
    write_new(tmp_path / "new", "x")
    assert (tmp_path / "new").stat().st_mode == (tmp_path / "ordinary").stat().st_mode


def test_when_writing_fails_the_old_text_stays_and_no_part_is_left(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def full(_: int) -> None:
        raise OSError(errno.ENOSPC, "No space left on device")

    (tmp_path / "x.yaml").write_text("old")
    monkeypatch.setattr(os, "fsync", full)
    for write in (replace, write_new):
        with pytest.raises(OSError, match="No space"):
            write(tmp_path / "x.yaml", "new")
    assert (tmp_path / "x.yaml").read_text() == "old"
    assert names(tmp_path) == ["x.yaml"]


def test_where_files_cannot_be_linked_a_new_one_is_written_all_the_same(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def no_links(*_: object) -> None:
        raise OSError(errno.EPERM, "Operation not permitted")

    monkeypatch.setattr(os, "link", no_links)
    write_new(tmp_path / "x.yaml", "new")
    assert (tmp_path / "x.yaml").read_text() == "new"
    with pytest.raises(FileExistsError):
        write_new(tmp_path / "x.yaml", "newer")
    assert names(tmp_path) == ["x.yaml"]


def test_text_that_is_no_unicode_leaves_nothing_behind(tmp_path: Path) -> None:
    with pytest.raises(UnicodeEncodeError):
        write_new(tmp_path / "x.yaml", "\ud800")
    assert names(tmp_path) == []


def test_a_draft_is_a_whole_copy_that_does_not_stay(tmp_path: Path) -> None:
    write_new(tmp_path / "kb" / "mounts" / "x.yaml", "x\n")
    with draft_of(tmp_path / "kb") as draft:
        assert draft.parent == tmp_path
        assert (draft / "mounts" / "x.yaml").read_text() == "x\n"
    assert names(tmp_path) == ["kb"]


def test_a_draft_takes_its_folders_place(tmp_path: Path) -> None:
    write_new(tmp_path / "kb" / "x.yaml", "old\n")
    with draft_of(tmp_path / "kb") as draft:
        replace(draft / "x.yaml", "new\n")
        take_the_place(draft, tmp_path / "kb")
    assert (tmp_path / "kb" / "x.yaml").read_text() == "new\n"
    assert names(tmp_path) == ["kb"]


def test_a_folder_whose_draft_is_gone_is_back(tmp_path: Path) -> None:
    write_new(tmp_path / "kb" / "x.yaml", "old\n")
    with pytest.raises(FileNotFoundError):
        take_the_place(tmp_path / ".gone", tmp_path / "kb")
    assert (tmp_path / "kb" / "x.yaml").read_text() == "old\n"
    assert names(tmp_path) == ["kb"]
