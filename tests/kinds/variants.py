"""Made-up variants of a record: some still right, most wrong in a way that files go wrong."""

import re
from collections.abc import Iterator
from copy import deepcopy
from typing import Any

from hypothesis import strategies as st

from tests.kinds.agreement import Content

Spot = tuple[Any, str | int]  # what holds a value, and under which key or number

SPARE_TEXTS = """
x|none|all|nothing|165|165 mm| 165 mm|6 1/2 in|2-3/8"|6½ in|165 ± 1 mm|165 ± 1 mm caliper|165 mm printed
+6 mm|-5 mm|−5 mm caliper|flush|flush |Flush|2-3 mm|1,000 mm|0 mm|165 mm ± 0 mm|1/3 in|6,5 mm|20 ohm|10 W|1 h 45
95 min|1.2 kg
12.4 V|2 A|15 deg|-15 deg|+12 V
2026-03-09|2026-02-29|2024-02-29|2026-3-9|09.03.2026|1999-12-31|compact-hatch-2|Compact-Hatch-2|con|con-1
a_b|a-|left|late|not there|not needed|not looked|passes|tapped|left front +|left front|constant
6 o'clock|1:30|13 o'clock|6|4 AWG|21 mm2|4|90 dB|80 Hz|40 %|70 °C|45 s
tried|measured|seen|metered|bench|after|goes in|goes in |Goes in|fitted|M5|M55|M2.5|upper-left|upper left
"""
TRICKY_TEXTS = ("", " ", "a\nb", "é", "165 mm\n", "2026-03-09\n", "late\n", "M5\n", "flush\n", "none\n")
LONG_TEXTS = tuple("x" * length for length in (64, 65, 120, 121, 500, 501, 2000, 2001))
SPARE_NUMBERS = (0, 1, 1.0, 2.0, 1.5, -1, 5, 40, 41, 99, 100, 1000, 10**30, 1e300)
SPARE_LISTS: tuple[Any, ...] = (
    [],
    [[]],
    [{}],
    ["upper-left"],
    ["upper-left", "upper-left"],
    ["x", None],
    [1],
    ["all"],
)
SPARE_MAPS: tuple[Any, ...] = (
    *({}, {"a": {}}, {"build": "late"}, {"build": None}, {"build": "Not an id"}),
    *({"Not an id": "late"}, {"con": "late"}, {"": "late"}, {"late\n": "late"}),
)
SPARE_VALUES: tuple[Any, ...] = (
    *(None, True, False),
    *re.split(r"[|\n]", SPARE_TEXTS.strip()),
    *TRICKY_TEXTS,
    *LONG_TEXTS,
    *SPARE_NUMBERS,
    *SPARE_LISTS,
    *SPARE_MAPS,
)
SPARE_KEYS = ("id", "name", "verdict", "depth", "stray", "Stray key", "con", "", "a-b", "x" * 65, "late\n")


def _spots(holder: Any) -> Iterator[Spot]:
    pairs = holder.items() if isinstance(holder, dict) else enumerate(holder) if isinstance(holder, list) else ()
    for key, value in pairs:
        yield holder, key
        yield from _spots(value)


def _drop(spot: Spot, key: str, value: Any) -> None:
    holder, at = spot
    del holder[at]


def _put(spot: Spot, key: str, value: Any) -> None:
    holder, at = spot
    holder[at] = value


def _smudge(spot: Spot, key: str, value: Any) -> None:
    """Leave the slip of a finger behind a text."""
    holder, at = spot
    if isinstance(holder[at], str):
        holder[at] = f"{holder[at]}{key[-1:] or ' '}"


def _add(spot: Spot, key: str, value: Any) -> None:
    holder, _ = spot
    if isinstance(holder, dict):
        holder[key] = value
    else:
        holder.append(value)


def _rename(spot: Spot, key: str, value: Any) -> None:
    holder, at = spot
    if isinstance(holder, dict):
        holder[key] = holder.pop(at)


@st.composite
def thinned(draw: st.DrawFn, originals: tuple[Content, ...]) -> Content:
    """One of the originals without some of its fields, most often still right."""
    content = deepcopy(draw(st.sampled_from(originals)))
    for name in draw(st.lists(st.sampled_from(sorted(content)), max_size=3, unique=True)):
        del content[name]
    for holder, key in [spot for spot in _spots(content) if isinstance(spot[0], dict) and spot[0] is not content]:
        if draw(st.integers(0, 29)) == 0:
            holder.pop(key, None)
    return content


@st.composite
def variants(draw: st.DrawFn, originals: tuple[Content, ...]) -> Content:
    """One of the originals with one to three changes anywhere in it."""
    content = deepcopy(draw(st.sampled_from(originals)))
    known = [holder[key] for original in originals for holder, key in _spots(original)]
    for _ in range(draw(st.integers(1, 3))):
        spots = list(_spots(content))
        change = draw(st.sampled_from((_drop, _put, _put, _put, _smudge, _add, _rename)))
        value = draw(st.sampled_from(SPARE_VALUES) | st.sampled_from(known))
        if spots:
            change(draw(st.sampled_from(spots)), draw(st.sampled_from(SPARE_KEYS)), deepcopy(value))
    return content
