"""The examples that lie beside each kind: files as a shop would write them, each with its comments."""

from importlib.resources import files


def kind_examples(kind: str) -> tuple[tuple[str, str], ...]:
    """The name and the text of each example of a kind by its name, the plainest first."""
    folder = files("bezelbook.kinds") / kind
    first, more = folder / "example.yaml", folder / "examples"
    others = sorted(more.iterdir(), key=lambda file: file.name) if more.is_dir() else []
    return tuple((file.name, file.read_text(encoding="utf-8")) for file in (first, *others))
