"""How screws sit, by the trade's figures (trade.md 4.6; common practice, no source)."""

import pytest

from bezelbook.reasoning.speakers.screws import bite, lengths, side_screw, under_the_head
from bezelbook.values.span import NOTHING, Span, around

MM = 1_000_000


def exact(length: float) -> Span:
    return around(round(length * MM), 0)


# A flange of 4, foam squeezed to 0.96 and a ring of 12.7: 17.66 under the head.
LAYERS = under_the_head(exact(4), exact(0.96), exact(12.7))


def test_what_lies_under_the_head_adds_up() -> None:
    assert exact(17.66) == LAYERS
    assert under_the_head() == NOTHING


@pytest.mark.parametrize(
    ("length", "hole", "word"),
    [
        (28, "plastic boss", "good"),
        (27, "plastic boss", "too short"),
        (27.66, "plastic boss", "good"),
        (32.66, "plastic boss", "good"),
        (33, "plastic boss", "too long"),
        (25, "clip nut", "good"),
        (21.66, "plain", "good"),
        (21, "plain", "too short"),
        (60, "plain", "good"),
    ],
)
def test_what_a_screw_bites(length: float, hole: str, word: str) -> None:
    assert bite(exact(length), LAYERS, hole).word == word
    assert bite(exact(length), LAYERS, hole).bites == exact(length - 17.66)


@pytest.mark.parametrize(("behind", "word"), [(8, "good"), (7.34, "too close"), (7, "too long")])
def test_its_end_stops_before_the_glass(behind: float, word: str) -> None:
    assert bite(exact(25), LAYERS, "clip nut", round(behind * MM)).word == word


def test_a_tolerance_may_leave_it_open() -> None:
    assert bite(around(28 * MM, MM), LAYERS, "plastic boss").word == "too close"
    assert bite(around(32 * MM, MM), LAYERS, "plastic boss").word == "too close"
    assert bite(Span(None, None), LAYERS, "plastic boss").word == "too close"
    assert bite(Span(None, None), LAYERS).word == "too close"


def test_the_screws_that_are_good() -> None:
    assert lengths(LAYERS, "plastic boss") == (27_660_000, 32_660_000)
    assert lengths(LAYERS, "rivet nut") == (21_660_000, None)
    assert lengths(LAYERS, "plain", 9 * MM) == (21_660_000, 26_660_000)
    assert lengths(Span(None, None), "plain") == (4 * MM, None)
    assert lengths(LAYERS, "twist-lock") is None


@pytest.mark.parametrize(
    ("length", "longest", "word"),
    [(6, 6, "good"), (5, 6, "good"), (7, 6, "too long"), (6, None, "too close")],
)
def test_a_side_screw_is_no_longer_than_the_unit_says(length: float, longest: float | None, word: str) -> None:
    assert side_screw(exact(length), None if longest is None else round(longest * MM)) == word


def test_a_side_screw_that_may_be_longer_is_too_close() -> None:
    assert side_screw(around(6 * MM, MM), 6 * MM) == "too close"
    assert side_screw(around(7 * MM, MM), 6 * MM) == "too close"
    assert side_screw(Span(None, None), 6 * MM) == "too close"
    assert side_screw(Span(None, 5 * MM), 6 * MM) == "too close"


def test_what_lies_under_the_head_counts_at_its_worst_for_either_end() -> None:
    rough = around(17 * MM, MM)
    assert lengths(rough, "plastic boss") == (28 * MM, 31 * MM)
