"""Where in a file a field stands, read again from the file when somebody asks."""

from pathlib import Path

from bezelbook.store.yaml_text import read_yaml


def source_of(path: str, field: tuple[str | int, ...]) -> str:
    """`path:line:column` of a field, or of the nearest thing around it; the file's start when the file is gone."""
    try:
        parsed = read_yaml(Path(path).read_bytes())
    except OSError:
        return f"{path}:1:1"
    for length in range(len(field), -1, -1):
        place = parsed.places.get(field[:length])
        if place:
            return f"{path}:{place.line}:{place.column}"
    return f"{path}:1:1"


def from_folder(folder: Path, place: str) -> str:
    """A `path:line:column` of a book, its path from the folder that the book lies in, wherever that is.

    It is written with `/` on every machine; what lies outside the book is left as it is.
    """
    path, line, column = place.rsplit(":", 2)
    file, home = Path(path).resolve(), folder.resolve()
    return f"{home.name}/{file.relative_to(home).as_posix()}:{line}:{column}" if file.is_relative_to(home) else place
