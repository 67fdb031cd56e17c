"""What a wire's size is: a gauge number, written 4 AWG, or the copper it holds, written 21 mm2."""

import re
from typing import Annotated

from pydantic import AfterValidator, BeforeValidator, WithJsonSchema

from bezelbook.values.complaint import Wrong, checked

_GAUGE = "(?:[1-4]/0|[0-9]|[1-3][0-9]|40)"
_COPPER = r"[0-9]{1,3}(?:\.[0-9]{1,3})?"
WIRE_PATTERN = rf"^(?:{_GAUGE} ?AWG|{_COPPER} ?(?:mm2|mm²))$(?!\n)"
_WIRE = re.compile(WIRE_PATTERN)
_LOOSE = re.compile(r"(?:#|gauge )? ?([0-9]{1,3}(?:[.,][0-9]{1,3}|/0)?) ?([a-z.² ]*2?)")
_GAUGES = ("awg", "ga", "ga.", "gauge", "g")
_MILLIMETRES = ("mm2", "mm²", "sq mm", "sqmm", "mmq")


def is_wire_size(text: str) -> bool:
    """Say whether the text is a wire's size."""
    return _WIRE.match(text) is not None


def wire_complaint(text: str) -> Wrong | None:
    """Say why the text is not a wire's size, with the sizes it may mean; nothing when it is one."""
    if is_wire_size(text):
        return None
    readings = [reading for reading in _readings(text.strip()) if is_wire_size(reading)]
    return Wrong(f'"{text}" is not the size of a wire', f"Write {' or '.join(readings) or '4 AWG or 21 mm2'}")


def _readings(text: str) -> list[str]:
    found = _LOOSE.fullmatch(text.lower())
    if not found:
        return []
    number, unit = found[1].replace(",", "."), found[2].strip()
    ways = {f"{number} AWG": _GAUGES, f"{number} mm2": _MILLIMETRES}
    return [way for way, units in ways.items() if not unit or unit in units]


def _as_text(value: object) -> object:
    """A bare number is met with the complaint about texts, which knows both its readings."""
    return f"{value:g}" if isinstance(value, int | float) and not isinstance(value, bool) else value


WireSize = Annotated[
    str,
    AfterValidator(checked(wire_complaint)),
    BeforeValidator(_as_text),
    WithJsonSchema({"type": "string", "pattern": WIRE_PATTERN}),
]
"""A field that holds the size of a wire."""
