"""Which numbers of a note lie outside what a shop ever meets, in mm (common practice, no source)."""

from tests.simulator.notes import Content
from tests.simulator.possible.sizes import read

READ = {
    "depth": (60, 350),
    "width": (40, 300),
    "height": (45, 200),
    "cut-out": (30, 300),
    "cut-out long way": (30, 300),
    "cut-out short way": (30, 300),
    "bolt circle": (70, 320),
    "hole spacing": (35, 277),
}
TYPED = {"depth": (20, 220), "mounting_depth": (8, 200), "cut_out": (30, 300), "bolt_circle": (70, 320)}


def outside(content: Content) -> bool:
    """Whether a number is outside the limits of its field."""
    readings, sizes = content.get("readings"), content.get("sizes")
    said = [(READ.get(str(one["of"])), one["reads"]) for one in readings] if isinstance(readings, list) else []
    said += [(TYPED.get(name), text) for name, text in sizes.items()] if isinstance(sizes, dict) else []
    return any(limits and not limits[0] <= read(str(text))[0] <= limits[1] for limits, text in said)
