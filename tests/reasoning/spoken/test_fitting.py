"""How a speaker is fitted is read from the words: rings by thickness, tabs, glass, no mount at all."""

import pytest

from bezelbook.reasoning.spoken.fitting import Fitting, fitting_said
from bezelbook.reasoning.spoken.found import Choice, Found
from bezelbook.reasoning.vocabulary import Phrase
from tests.reasoning.making import book, mount

RINGS = {
    "three": "3 mm caliper",
    "ten": "10 mm caliper",
    "half": "12.7 mm caliper",
    "thick": "17.5 mm caliper",
    "thick-two": "17.5 mm caliper",
}
BOOK = book(*(mount(name, name=name, mount_kind="spacer", thickness=size) for name, size in RINGS.items()))


def read(text: str) -> Fitting | Choice:
    return fitting_said(BOOK, Found((), []), text)[0]


def mounts(text: str) -> tuple[str, ...] | None:
    found = read(text)
    assert isinstance(found, Fitting)
    return found.mounts


@pytest.mark.parametrize(
    ("text", "ids"),
    [
        ("10 mm spacer", ("ten",)),
        ("ring 12.7", ("half",)),
        ("half inch riser", ("half",)),
        ("1/2 ring", ("half",)),
        ("12 ring", ("half",)),
        ("3 ring", ("three",)),
        ("10 ring 12.7 ring", ("ten", "half")),
        ("without a ring", ()),
        ("3/7 ring", None),
        ("nothing said", None),
    ],
)
def test_a_ring_is_found_by_its_thickness(text: str, ids: tuple[str, ...] | None) -> None:
    assert mounts(text) == ids


def test_a_ring_that_the_book_has_not_is_told() -> None:
    found = read("14.9 mm ring")
    assert isinstance(found, Fitting)
    assert found.took == ("the book has no ring of 14.9 mm, so that it was left out",)


def test_rings_of_one_thickness_are_asked_about() -> None:
    found = read("18 ring")
    assert isinstance(found, Choice)
    assert found.options == (("thick", "thick"), ("thick-two", "thick two"))


def test_a_name_that_two_mounts_share_is_asked_about() -> None:
    shared = (Phrase(("usual",), "mount", "ten"), Phrase(("usual",), "mount", "half"))
    found = Found(("usual",), [None], [(0, shared)])
    assert fitting_said(BOOK, found, "|") == (Choice("Which mount?", (("ten", "ten"), ("half", "half"))), "|")


@pytest.mark.parametrize(
    ("text", "tabs", "glass"),
    [
        ("tabs snapped out", "out", "run"),
        ("broken tabs", "out", "run"),
        ("tabs still in", "in", "run"),
        ("window up", None, "up"),
        ("glass all the way down", None, "run"),
    ],
)
def test_tabs_and_glass_are_read(text: str, tabs: str | None, glass: str) -> None:
    found = read(text)
    assert isinstance(found, Fitting)
    assert (found.tabs, found.glass) == (tabs, glass)


def test_a_ring_that_was_found_is_told_with_its_own_name_and_thickness() -> None:
    for text in ("10 mm ring", "10.4 ring"):
        found = read(text)
        assert isinstance(found, Fitting)
        assert found.took == (f"a ring of {text.removesuffix(' ring')} read as ten, 10 mm caliper",)


def test_a_ring_a_whole_millimetre_off_is_another_ring() -> None:
    found = read("11 mm ring")
    assert isinstance(found, Fitting)
    assert (found.mounts, found.took) == (None, ("the book has no ring of 11 mm, so that it was left out",))


def test_two_mounts_by_name_are_both_on_it_in_the_order_of_the_words() -> None:
    hits: list[tuple[int, tuple[Phrase, ...]]] = [
        (3, (Phrase(("half",), "mount", "half"),)),
        (0, (Phrase(("ten",), "mount", "ten"),)),
    ]
    found = Found(("ten", "and", "a", "half"), [None, "and", "a", None], hits)
    fitting, _ = fitting_said(BOOK, found, "| and a |")
    assert isinstance(fitting, Fitting)
    assert fitting.mounts == ("ten", "half")
