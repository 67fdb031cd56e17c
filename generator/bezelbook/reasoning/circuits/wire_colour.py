"""Which colours somebody meant by the words for a wire, whichever way round its stripe was written."""

import re
from collections.abc import Mapping

# Short forms that the trade and drawings use; IEC 60757 has the codes of two letters (both from memory).
_COLOURS: Mapping[str, str] = {
    word: colour
    for colour, words in {
        "black": "bk blk",
        "white": "wh wht",
        "red": "rd",
        "green": "gn grn",
        "blue": "bu blu",
        "yellow": "ye yel",
        "orange": "og orn org",
        "violet": "vt vio purple pur ppl",
        "grey": "gy gry gray gra",
        "brown": "bn brn",
        "pink": "pk pnk",
        "turquoise": "tq",
        "silver": "sr",
        "gold": "gd",
        "tan": "beige",
        "clear": "",
    }.items()
    for word in (colour, *words.split())
}
# How light a colour is looks different in every garage, so that it tells no wire from another.
_BESIDE = re.compile(r"and|with|an?|on|stripe[sd]?|tracer|band|line|light|dark|pale|lt|dk|wire|lead")


def colours_said(words: str) -> frozenset[str] | None:
    """The colours of a wire, its stripe among them; None where a word is no colour's, or none is."""
    said = [word for word in re.split(r"[^a-z0-9]+", words.casefold()) if word and not _BESIDE.fullmatch(word)]
    if not said or any(word not in _COLOURS for word in said):
        return None
    return frozenset(_COLOURS[word] for word in said)
