"""A near miss is found whatever its capitals and hyphens, and a far one is not."""

import pytest

from bezelbook.store.near_miss import nearest

VERDICTS = ("goes in", "goes in if", "does not", "not tried")


@pytest.mark.parametrize(
    ("word", "known", "found"),
    [
        ("goes inn", VERDICTS, "goes in"),
        ("Goes In", VERDICTS, "goes in"),
        ("goes-in-if", VERDICTS, "goes in if"),
        ("doesnt", VERDICTS, "does not"),
        ("hieght", ("height", "width"), "height"),
        ("nose-width", ("nose_width", "width"), "nose_width"),
        ("maybe", VERDICTS, None),
        ("", VERDICTS, None),
        ("x", (), None),
    ],
)
def test_the_word_that_was_meant_is_found(word: str, known: tuple[str, ...], found: str | None) -> None:
    assert nearest(word, known) == found
