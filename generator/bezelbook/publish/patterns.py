"""Patterns that a browser matches just as Python does."""

import re
from collections.abc import Iterable

# Python counts the fraction signs among the characters of a word, and a browser does not.
_WORD = "[0-9a-z_\u00bc-\u00be\u215b-\u215e]"
_EDGE = f"(?:(?<={_WORD})(?!{_WORD})|(?<!{_WORD})(?={_WORD}))"


def browser_pattern(written: str) -> str:
    r"""A pattern that a browser matches as Python does: `\b` and `\d` spelled out, no character beyond them."""
    return re.sub(r"\\d", "[0-9]", re.sub(r"\\b", lambda _: _EDGE, written))


def browser_patterns(replacements: Iterable[tuple[str, str]]) -> list[list[str]]:
    """Patterns that are replaced in turn, each with what stands in its place."""
    return [[browser_pattern(written), instead] for written, instead in replacements]
