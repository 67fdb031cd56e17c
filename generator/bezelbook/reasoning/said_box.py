"""A box that is said to be one or two high: what it measures across and up, where nobody says."""

import re
from collections.abc import Mapping, Sequence
from dataclasses import replace

from bezelbook.reasoning.needs import Need
from bezelbook.reasoning.said_sizes import SaidSizes
from bezelbook.values.quantity import read_quantity

# What such a box measures across and up (common practice, no source; the space in front of it is that of ISO 7736).
BOXES: Mapping[str, tuple[str, str]] = {
    r"(?<!wide )\b(?:double|dubble|ddin|(?:2|two) din)\b": ("178 mm", "100 mm"),
    r"\b(?:single|(?:1|one) din)\b": ("178 mm", "50 mm"),
}
ACROSS_AND_UP: tuple[Need, ...] = ("width", "height")


def as_sold(said: SaidSizes, left: Sequence[str | None]) -> SaidSizes:
    """The same with the width and the height of the box that was named by its height, where neither was said.

    `left` are the words as `sizes_said` takes them. Two boxes at once say nothing.
    """
    text = " ".join(word or "|" for word in left)
    named = [(found[0], sizes) for pattern, sizes in BOXES.items() if (found := re.search(pattern, text))]
    if len(named) != 1 or said.sizes.keys() & {*ACROSS_AND_UP}:
        return said
    [(words, sizes)] = named
    box = {need: read_quantity(size, "length") for need, size in zip(ACROSS_AND_UP, sizes, strict=True)}
    told = f"{words} read as {' x '.join(sizes)}, which such a box measures"
    return replace(said, sizes=box | dict(said.sizes), took=(*said.took, told))
