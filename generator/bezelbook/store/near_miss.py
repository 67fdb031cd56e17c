"""Which known word somebody most likely meant by one that is not known."""

from collections.abc import Iterable
from difflib import get_close_matches

_ALIKE = 0.7


def nearest(word: str, known: Iterable[str]) -> str | None:
    """Give the known word most like this one, whatever its capitals, hyphens and underscores, if any is near."""
    flat = {_flat(other): other for other in known}
    close = get_close_matches(_flat(word), flat, n=1, cutoff=_ALIKE)
    return flat[close[0]] if close else None


def _flat(word: str) -> str:
    return word.lower().replace("_", " ").replace("-", " ").strip()
