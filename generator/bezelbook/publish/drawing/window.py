"""The rings that would do on one side, to scale: a lane a speaker from the thinnest to the thickest, rings as marks."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from markupsafe import Markup

from bezelbook.publish.drawing.svg import MM, Scale, element, scale_for, span, tick, words_at
from bezelbook.values.shown import show_mm

NAMES = 24
LANE = 46
TOP = 24
# No ring is thicker than this, so that a hole with all the room in the world does not squeeze the rest.
MOST = 40 * MM


@dataclass(frozen=True, slots=True)
class Lane:
    """One speaker: both ends of its window with their ±, and every ring with its thickness and verdict; nanometres.

    An end is None where nobody measured what would set it.
    """

    name: str
    low: tuple[int, int] | None
    high: tuple[int, int] | None
    rings: tuple[tuple[str, int, str], ...]


def windows(lanes: Sequence[Lane], title: str) -> Markup | None:
    """The lanes under one ruler; None when there is none. The text alternative says every end."""
    if not lanes:
        return None
    thickest = max((thickness for lane in lanes for _, thickness, _ in lane.rings), default=0)
    furthest = max((lane.high[0] + lane.high[1] for lane in lanes if lane.high), default=0)
    scale = scale_for(max(10 * MM, thickest + 2 * MM, min(furthest, MOST)))
    height = TOP + len(lanes) * LANE
    said = "; ".join(f"{lane.name} {_words(lane)}" for lane in lanes)
    parts = [element("title", {}, f"{title}: {said}"), *_ruler(scale, height)]
    for number, lane in enumerate(lanes):
        parts += _lane(lane, TOP + number * LANE, scale)
    attributes = {"class": "section rings", "role": "img", "width": "100%", "height": height, "data-end": scale.end}
    return element("svg", attributes, *parts)


def _words(lane: Lane) -> str:
    low = "not looked" if lane.low is None else show_mm(max(lane.low[0], 0))
    high = "not looked" if lane.high is None else show_mm(max(lane.high[0], 0))
    if lane.high is not None and lane.high[0] < 0:
        return "no ring does: it stands out too far even without one"
    if lane.low is not None and lane.high is not None and lane.low[0] > lane.high[0]:
        return f"no ring does: {low} is wanted behind, and in front there is room for {high}"
    return f"from {low} to {high}"


def _ruler(scale: Scale, height: int) -> Iterator[Markup]:
    for length in scale.steps(5 * MM):
        yield tick(scale, length, TOP - 6, height, "rule")
        if length and not length % (10 * MM):
            yield words_at(scale, length, TOP - 10, show_mm(length).removesuffix(" mm"), **{"text-anchor": "middle"})
    yield words_at(scale, 0, TOP - 10, "mm of ring")


def _lane(lane: Lane, top: int, scale: Scale) -> Iterator[Markup]:
    """The speaker's name, the bar of what would do, its unsure ends, and a mark for each ring."""
    across = {"y": top + NAMES - 4, "height": LANE - NAMES - 4}
    yield words_at(scale, 0, top + 14, f"{lane.name}: {_words(lane)}", dx=2)
    low, high = _inside(lane.low, scale, 0), _inside(lane.high, scale, scale.end)
    if low[0] <= high[0]:
        sort = "open" if lane.low is not None and lane.high is not None else "blank"
        yield element("rect", {"class": sort, **span(scale, low[0], high[0]), **across, "data-speaker": lane.name})
    for at, give in (low, high):
        if give:
            start, end = max(0, at - give), min(scale.end, at + give)
            yield element("rect", {"class": "between", **span(scale, start, end), **across})
    for name, thickness, verdict in lane.rings:
        good = verdict == "goes in"
        mark = [tick(scale, thickness, top + NAMES - 8, top + LANE - 4, "good" if good else "stop")]
        if good:
            mark.append(element("circle", {"class": "good", "cx": scale.at(thickness), "cy": top + NAMES - 8, "r": 5}))
        title = element("title", {}, f"{name}: {verdict}")
        yield element("g", {"data-ring": name, "data-verdict": verdict}, title, *mark)


def _inside(end: tuple[int, int] | None, scale: Scale, otherwise: int) -> tuple[int, int]:
    """An end as far as it lies on the scale, with its ± only if it does."""
    if end is None:
        return otherwise, 0
    at = min(max(end[0], 0), scale.end)
    return at, end[1] if at == end[0] else 0
