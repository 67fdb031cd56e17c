"""How deep a thing may be at an opening, told where only its width and height were said."""

from collections.abc import Iterator

from bezelbook.reasoning.corners import corners
from bezelbook.reasoning.question import Question, asked
from bezelbook.reasoning.room import Place
from bezelbook.reasoning.verdict import viable
from bezelbook.values.shown import show_length


def depths_at(place: Place, question: Question) -> Iterator[str]:
    """For each mount that takes its width and height, how deep a body certainly goes in, whatever the build."""
    put = viable(place, asked(place.frame, place.evidence, question))
    settings = [one for account in corners(place, put)["accounts"] for one in account["settings"]]
    for number, stack in enumerate(put.stacks):
        here = [one["cells"] for one in settings if one["stack"] == number]
        sure = min(cell["sure"] for cells in here for cell in cells if cell["need"] == "depth")
        first = place.frame.book.shop.units_first
        yield f"with {stack.words}: {_words(sure, first)}"


def _words(sure: int, first: str) -> str:
    if sure <= 0:
        return "no depth is certain"
    return f"up to {show_length(sure, first)} deep goes in, as far as its plug and bend have room"
