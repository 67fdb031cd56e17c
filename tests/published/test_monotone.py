"""A constructed example of monotone classification: what fits, every smaller thing fits.

Six boxes (width, height, depth in mm) with what happened, and what follows for six more. The example was constructed
for this project and its results computed by code that the project does not hold. Names for it in the literature:
monotone or ordinal classification; a pair that breaks it is a monotonicity violation; the largest fits and the smallest
failures are the boundary sets of a version space (Mitchell, "Generalization as search", Artificial Intelligence 18,
1982; the name from memory).
"""

import pytest

from bezelbook.knowledge_base import KnowledgeBase
from tests.reasoning.making import ask, book, place, shop, tried

Box = tuple[int, int, int]

SEEN: dict[str, tuple[Box, str]] = {
    "one": ((182, 53, 160), "goes in"),
    "two": ((178, 50, 165), "does not"),
    "three": ((180, 50, 150), "goes in"),
    "four": ((181, 52, 158), "does not"),
    "five": ((170, 48, 140), "goes in"),
    "six": ((190, 50, 150), "does not"),
}
VIOLATION = {"four", "one"}
# For each box, the observations because of which it fits, and those because of which it fails.
BECAUSE: dict[Box, tuple[set[str], set[str]]] = {
    (179, 49, 149): ({"one", "three"}, set()),
    (180, 50, 151): ({"one"}, set()),
    (191, 51, 151): (set(), {"six"}),
    (182, 53, 160): ({"one"}, {"four"}),
    (178, 50, 166): (set(), {"two"}),
    (100, 54, 100): (set(), set()),
}
AFTER_DROPPING_FOUR = {
    (179, 49, 149): "goes in",
    (180, 50, 151): "goes in",
    (191, 51, 151): "does not",
    (182, 53, 160): "goes in",
    (178, 50, 166): "does not",
    (100, 54, 100): "unknown",
}
FIRM = ("goes in", "does not", "argued over")


def sizes(box: Box) -> dict[str, str]:
    return {name: f"{size} mm" for name, size in zip(("width", "height", "depth"), box, strict=True)}


def seen(*without: str) -> KnowledgeBase:
    """The observations as notes: boxes without a plug, measured exactly, and no reason given."""
    notes = [
        tried(
            name,
            what=f"box {name}",
            sizes=sizes(box),
            verdict=verdict,
            sure="dry-fitted",
            plugs="off",
            numbers="read back",
        )
        for name, (box, verdict) in SEEN.items()
        if name not in without
    ]
    exact = dict.fromkeys(("none", "bench_caliper"), "0 mm")
    return book(shop(tools=exact, clearances=dict.fromkeys(("width", "height", "depth"), "0 mm")), *notes)


def verdict(of: KnowledgeBase, box: Box) -> str:
    """The answer about a box without a plug; everything that is not settled is unknown."""
    found = ask(of, sizes(box), state={"plugs": "off"}).verdict
    return found if found in FIRM else "unknown"


@pytest.mark.parametrize("box", AFTER_DROPPING_FOUR)
def test_without_the_violation_every_box_is_classified_as_published(box: Box) -> None:
    assert verdict(seen("four"), box) == AFTER_DROPPING_FOUR[box]


def test_the_violation_is_the_one_pair_that_cannot_both_be_true() -> None:
    left_out = [set(SEEN) - {one.note.id for one in rooms.notes} for rooms in place(seen()).accounts]
    assert sorted(map(sorted, left_out)) == [[name] for name in sorted(VIOLATION)]


@pytest.mark.parametrize("box", BECAUSE)
def test_with_the_violation_only_what_rests_on_it_is_argued_over(box: Box) -> None:
    fits, fails = BECAUSE[box]
    settled = {"goes in": fits - VIOLATION, "does not": fails - VIOLATION}
    expected = next((verdict for verdict, because in settled.items() if because), None)
    assert verdict(seen(), box) == (expected or ("argued over" if fits | fails else "unknown"))
