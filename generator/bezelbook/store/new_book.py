"""The files that a shop starts with: an empty book that checks, builds and opens."""

from importlib.resources import files
from pathlib import Path

from bezelbook.kinds import KINDS
from bezelbook.store.writing import write_new
from bezelbook.values.complaint import Wrong

# What each file of the package becomes in the shop's folder.
NAMES = {
    "shop.yaml": "kb/shop.yaml",
    "mkdocs.yml": "mkdocs.yml",
    "Makefile": "Makefile",
    "ci-run": ".ci/run",
    "README.md": "README.md",
    "gitignore": ".gitignore",
}


def write_new_book(folder: Path) -> tuple[str, ...]:
    """Write an empty book into a new or empty folder and say which files it wrote.

    Raises Wrong when anything is in that folder already: nothing of a shop's is ever overwritten.
    """
    if folder.exists() and (not folder.is_dir() or any(folder.iterdir())):
        raise Wrong(f"{folder} is not an empty folder", "Name a new folder, or one with nothing in it")
    package = files("bezelbook.store") / "new_book_files"
    for name, target in NAMES.items():
        write_new(folder / target, (package / name).read_text("utf-8"))
    (folder / NAMES["ci-run"]).chmod(0o755)
    kept = tuple(f"kb/{kind.folder}/.keep" for kind in KINDS.values() if not kind.single)
    for target in (*kept, "pages/.keep"):
        write_new(folder / target, "")
    return (*NAMES.values(), *kept, "pages/.keep")
