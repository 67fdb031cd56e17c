"""Every page as a plain file, for any engine."""

from pathlib import Path

from tests.cli.conftest import Run, Write


def contents(folder: Path) -> dict[str, bytes]:
    return {path.relative_to(folder).as_posix(): path.read_bytes() for path in folder.rglob("*") if path.is_file()}


def test_the_pages_are_written_and_counted(run: Run, write: Write, tmp_path: Path) -> None:
    write()
    ran = run("pages", "--out", "out")
    found = contents(tmp_path / "out")
    assert ran.code == 0
    assert ran.out == f"{len(found)} files written to out.\n"
    assert "index.md" in found


def test_writing_twice_gives_the_same_bytes(run: Run, write: Write, tmp_path: Path) -> None:
    write()
    run("pages", "--out", "once")
    run("pages", "--out", "again")
    run("pages", "--out", "again")
    assert contents(tmp_path / "once") == contents(tmp_path / "again")


def test_the_pages_hold_the_day_they_are_given_and_else_the_newest_note_s(
    run: Run, write: Write, tmp_path: Path
) -> None:
    write()
    run("pages", "--out", "own")
    run("pages", "--out", "given", "--today", "2026-05-06")
    own = b"".join(contents(tmp_path / "own").values())
    given = b"".join(contents(tmp_path / "given").values())
    assert b"2026-02-03" in own
    assert b"2026-05-06" not in own
    assert b"2026-05-06" in given


def test_a_book_with_an_unread_file_is_written_without_it_and_ends_with_2(
    run: Run, write: Write, tmp_path: Path
) -> None:
    write(**{"notes/2026/b.yaml": "form: tried\n"})
    ran = run("pages", "--out", "out")
    assert ran.code == 2
    assert "some files could not be read and are left out" in ran.err
    assert b"kb/notes/2026/b.yaml" in (tmp_path / "out" / "index.md").read_bytes()
