"""The chain as a drawing: the car, each piece and the radio as bars, and every circuit as a line as far as it goes."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Literal

from markupsafe import Markup

from bezelbook.publish.drawing.svg import element
from bezelbook.reasoning.circuits.table import Becomes

ROW = 34
TOP = 26
BAR = 14

Mark = Literal["", "cap", "cut", "blank"]


@dataclass(frozen=True, slots=True)
class Run:
    """A circuit from one bar to another, by their numbers from the left.

    `mark` says how it ends: capped, cut with both halves led out, or nowhere.
    """

    label: str
    becomes: Becomes
    start: int
    end: int
    mark: Mark = ""


def chain_drawing(bars: Sequence[str], runs: Sequence[Run], title: str) -> Markup:
    """The drawing with its text alternative, which says every circuit; bars are evenly spaced over its width."""
    said = "; ".join(f"{run.label}: {run.becomes}" for run in runs)
    height = TOP + ROW * len(runs) + 8
    parts = [element("title", {}, f"{title}. {said}"), *_bars(bars, height)]
    for number, run in enumerate(runs):
        parts += _run(run, len(bars), TOP + number * ROW + ROW - 8)
    attributes = {"class": "wires", "role": "img", "width": "100%", "height": height}
    return element("svg", attributes, *parts)


def _at(number: int, count: int) -> str:
    """The middle of a bar as per cent of the width: the first and the last stand at its edges."""
    thousandths = 4_000 + number * 92_000 // (count - 1)
    return f"{thousandths // 1000}.{thousandths % 1000:03}%"


def _bars(bars: Sequence[str], height: int) -> Iterator[Markup]:
    for number, name in enumerate(bars):
        at = _at(number, len(bars))
        yield element("line", {"class": "bar", "x1": at, "x2": at, "y1": TOP, "y2": height - 2, "stroke-width": BAR})
        anchor = "start" if number == 0 else "end" if number == len(bars) - 1 else "middle"
        x = "0" if number == 0 else "100%" if number == len(bars) - 1 else at
        yield element("text", {"class": "head", "x": x, "y": TOP - 9, "text-anchor": anchor}, name)


def _run(run: Run, count: int, y: int) -> Iterator[Markup]:
    start, end = _at(run.start, count), _at(run.end, count)
    across = {"y1": y, "y2": y}
    yield element("text", {"class": "label", "x": "8%", "y": y - 7}, run.label)
    if run.mark == "blank":
        yield element("text", {"class": "blank", "x": end, "y": y + 5, "text-anchor": "middle"}, "×")
        return
    kind = f"wire {run.becomes.replace(' ', '-')}"
    yield element("line", {"class": kind, "x1": start, "x2": end, **across, "data-from": run.start, "data-to": run.end})
    if run.start != 0 and run.mark != "cut":
        yield element("circle", {"class": "source", "cx": start, "cy": y, "r": 5})
    if run.mark == "cap":
        yield element("line", {"class": "cap", "x1": end, "x2": end, "y1": y - 7, "y2": y + 7})
    if run.mark == "cut":
        middle = _at(1, count)
        yield element(
            "rect", {"class": "cut", "x": middle, "y": y - 6, "width": 12, "height": 12, "transform": "translate(-6)"}
        )
