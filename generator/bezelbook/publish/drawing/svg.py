"""How a drawing is written: elements whose places along the scale are per cent, so that text keeps its size."""

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction

from markupsafe import Markup

from bezelbook.publish.template import text

MM = 1_000_000


@dataclass(frozen=True, slots=True)
class Scale:
    """A scale from nothing at the left edge to `end` nanometres at the right one."""

    end: int

    def at(self, length: int) -> str:
        """Where a length in nanometres ends, as per cent of the scale to four decimals."""
        share = round(Fraction(length * 1_000_000, self.end))
        whole, part = divmod(share, 10_000)
        return f"{whole}.{part:04}%".replace(".0000%", "%")

    def steps(self, step: int) -> range:
        """The lengths in nanometres at which there is a mark every `step` nanometres."""
        return range(0, self.end + 1, step)


def scale_for(longest: int, room: Fraction = Fraction(1)) -> Scale:
    """A scale that holds `room` times a length in nanometres and ends at a whole centimetre."""
    centimetres = -(-longest * room // (10 * MM))
    return Scale(int(centimetres) * 10 * MM)


def element(name: str, attributes: Mapping[str, object], *inside: Markup | str) -> Markup:
    """An element; words inside and in attributes are written as text, an attribute that is None is left out."""
    said = {key: text(str(value)) for key, value in attributes.items() if value is not None}
    written = Markup("").join(Markup(' {}="{}"').format(key, value) for key, value in said.items())
    within = Markup("").join(one if isinstance(one, Markup) else text(one) for one in inside)
    return Markup("<{0}{1}>{2}</{0}>").format(name, written, within)


def span(scale: Scale, low: int, high: int) -> dict[str, object]:
    """The attributes of a shape that lies between two lengths in nanometres, which are kept beside it."""
    return {"x": scale.at(low), "width": scale.at(high - low), "data-from": low, "data-to": high}


def words_at(scale: Scale, length: int, y: int, words: str, **attributes: object) -> Markup:
    """Words at a length in nanometres and a height in pixels."""
    return element("text", {"x": scale.at(length), "y": y, **attributes}, words)


def tick(scale: Scale, length: int, top: int, bottom: int, kind: str = "tick") -> Markup:
    """A line across the scale at a length in nanometres, between two heights in pixels."""
    at = scale.at(length)
    return element("line", {"class": kind, "x1": at, "x2": at, "y1": top, "y2": bottom, "data-at": length})
