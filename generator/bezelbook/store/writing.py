"""How a text gets into a file whole: another program sees all of it or none of it."""

import os
import secrets
import shutil
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path


def write_new(path: Path, text: str) -> None:
    """Write a file that is not there yet, as UTF-8 with LF; FileExistsError when it is. Missing folders are made."""
    path.parent.mkdir(parents=True, exist_ok=True)
    with _whole_beside(path, text) as whole:
        try:
            os.link(whole, path)
        except FileExistsError:
            raise
        except OSError:
            # Some file systems have no links. What is lost there is only that a crash may leave a part.
            with path.open("xb") as stream:
                stream.write(whole.read_bytes())


def replace(path: Path, text: str) -> None:
    """Write a file anew in place of the one that may be there, as UTF-8 with LF. Missing folders are made."""
    path.parent.mkdir(parents=True, exist_ok=True)
    with _whole_beside(path, text) as whole:
        if path.exists():
            whole.chmod(path.stat().st_mode)
        whole.replace(path)


@contextmanager
def draft_of(folder: Path) -> Iterator[Path]:
    """Give a hidden copy beside a folder, with all that is in it, and see that it does not stay."""
    draft = folder.with_name(f".{folder.name}.{secrets.token_hex(4)}")
    try:
        shutil.copytree(folder, draft, symlinks=True)
        yield draft
    finally:
        shutil.rmtree(draft, ignore_errors=True)


def take_the_place(draft: Path, folder: Path) -> None:
    """Put a draft where its folder is; the folder is back when that fails, and until then nothing of it is lost."""
    aside = draft.with_name(f"{draft.name}.old")
    folder.rename(aside)
    try:
        draft.rename(folder)
    except BaseException:
        aside.rename(folder)
        raise
    shutil.rmtree(aside, ignore_errors=True)


@contextmanager
def _whole_beside(path: Path, text: str) -> Iterator[Path]:
    """Give a hidden file in the same folder with the whole text on the disk, and see that it does not stay."""
    beside = path.with_name(f".{path.name}.{secrets.token_hex(4)}")
    try:
        with beside.open("xb") as stream:
            stream.write(text.replace("\r\n", "\n").replace("\r", "\n").encode())
            stream.flush()
            os.fsync(stream.fileno())
        yield beside
    finally:
        beside.unlink(missing_ok=True)
