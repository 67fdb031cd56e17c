"""A screen is sold by its inches, which nobody types as the book has them."""

import pytest

from bezelbook.reasoning.inches_said import other_inches


@pytest.mark.parametrize(
    ("name", "others"),
    [
        ("nine inch floater", ["9 inch floater", "9 in floater", "9inch floater", "9in floater", '9" floater']),
        ("screen 9 in", ["screen 9 inch", "screen 9inch", "screen 9in", 'screen 9"', "screen nine inch"]),
        ('the 10.1" big one', [f"the {way} big one" for way in ("10.1 inch", "10.1 in", "10.1inch", "10.1in")]),
        (
            "fifteen inches wide",
            [f"{way} wide" for way in ("15 inch", "15 in", "15inch", "15in", '15"', "fifteen inch")],
        ),
    ],
)
def test_inches_are_written_in_every_other_way(name: str, others: list[str]) -> None:
    assert [" ".join(words) for words in other_inches(tuple(name.split()))] == others


@pytest.mark.parametrize(
    "name", ["nine inch", '9"', "short double", "wide ten", "nine inchworms", "canine inch one", "123 in one", ""]
)
def test_what_names_no_inches_or_nothing_else_stays_as_it_is(name: str) -> None:
    assert list(other_inches(tuple(name.split()))) == []
