from fractions import Fraction

import pytest

from bezelbook.publish.drawing.svg import MM, Scale
from bezelbook.publish.drawing.tape import Notch, lettered, reach_words, tape
from bezelbook.publish.reach import Reach
from tests.publish.reading_html import Element, parsed

SCALE = Scale(220 * MM)


def drawn(reach: Reach, *notches: Notch) -> Element:
    [svg] = parsed(tape(reach, notches, SCALE, "late, flush kit", "mm")).all("svg", kind="tape")
    return svg


def length(element: Element, attribute: str) -> Fraction:
    """A place of a drawing read back from its geometry, in nanometres."""
    return Fraction(element.attributes[attribute].removesuffix("%")) * SCALE.end / 100


def bands(svg: Element) -> dict[str, tuple[int, int]]:
    """Each band with the lengths it lies between, which must be where it is drawn."""
    found = {}
    for band in svg.all("rect"):
        low, high = int(band.attributes["data-from"]), int(band.attributes["data-to"])
        assert abs(length(band, "x") - low) < 200
        assert abs(length(band, "x") + length(band, "width") - high) < 400
        found[band.attributes["class"]] = (low // MM, high // MM)
    return found


def test_known_yes_grey_and_known_no_lie_end_to_end() -> None:
    assert bands(drawn(Reach(147 * MM, 153 * MM, None))) == {"yes": (0, 147), "grey": (147, 153), "no": (153, 220)}


@pytest.mark.parametrize(
    ("reach", "expected"),
    [
        (Reach(0, None, None), {"grey": (0, 220)}),
        (Reach(100 * MM, None, None), {"yes": (0, 100), "grey": (100, 220)}),
        (Reach(0, 170 * MM, None), {"grey": (0, 170), "no": (170, 220)}),
        (Reach(118 * MM, None, 122 * MM), {"yes": (0, 118), "grey": (118, 122), "argued": (122, 220)}),
        (
            Reach(100 * MM, 170 * MM, 122 * MM),
            {"yes": (0, 100), "grey": (100, 122), "argued": (122, 170), "no": (170, 220)},
        ),
        (Reach(300 * MM, 400 * MM, None), {"yes": (0, 220)}),
        (Reach(0, 0, None), {"no": (0, 220)}),
    ],
)
def test_every_length_of_the_tape_belongs_to_one_band(reach: Reach, expected: dict[str, tuple[int, int]]) -> None:
    found = bands(drawn(reach))
    assert found == expected
    ends = [end for band in found.values() for end in band]
    assert ends == sorted(ends)
    assert (ends[0], ends[-1]) == (0, 220)


def test_the_marks_are_where_their_numbers_say() -> None:
    svg = drawn(Reach(0, None, None))
    labels = {(one.text, one.attributes["y"]): length(one, "x") for one in svg.all("text")}
    for millimetres in (50, 100, 150, 200):
        assert abs(labels[str(millimetres), "13"] - millimetres * MM) < 200
    for inches in range(1, 9):
        assert abs(labels[str(inches), "74"] - inches * 25_400_000) < 200


def test_a_notch_stands_at_its_size_with_its_letter() -> None:
    svg = drawn(
        Reach(147 * MM, None, None),
        Notch(110 * MM, went_in=True, words=("short",)),
        Notch(170 * MM, went_in=False, words=("deep",)),
    )
    went_in, did_not = svg.all("g", kind="went-in"), svg.all("g", kind="did-not")
    assert [one.text for one in (*went_in, *did_not)] == ["a", "b"]
    assert abs(length(went_in[0].all("line")[0], "x1") - 110 * MM) < 200
    assert abs(length(did_not[0].all("svg")[0], "x") - 170 * MM) < 200


def test_letters_never_run_out() -> None:
    letters = [letter for letter, _ in lettered([Notch(MM, went_in=True, words=())] * 703)]
    assert letters[:2] + letters[25:28] + letters[700:] == ["a", "b", "z", "aa", "ab", "zy", "zz", "aaa"]
    assert len(set(letters)) == 703


@pytest.mark.parametrize(
    ("reach", "said"),
    [
        (Reach(147 * MM, 153 * MM, None), "goes in up to 147 mm (5.79 in); does not from 153 mm (6.02 in) on"),
        (Reach(0, None, None), "nobody knows yet"),
        (Reach(0, None, 122 * MM), "argued over from 122 mm (4.80 in)"),
        (
            Reach(0, 170 * MM, 122 * MM),
            "argued over from 122 mm (4.80 in) to 170 mm (6.69 in); does not from 170 mm (6.69 in) on",
        ),
    ],
)
def test_the_strip_says_in_words_what_it_shows(reach: Reach, said: str) -> None:
    assert reach_words(reach, "mm") == said
    [title] = drawn(reach).all("title")
    assert title.text == f"late, flush kit: {said}"
