"""The tables of shop words are such that a browser reads them too, and hold together."""

import re

from bezelbook.reasoning.spoken.shop_words import NEEDLESS_WORDS, PLACE_WORDS, SHOP_WORDS, TELLING_WORDS


def test_every_pattern_is_one_that_a_browser_has_too() -> None:
    for pattern, instead in SHOP_WORDS:
        re.compile(pattern)
        assert not any(only_python in pattern for only_python in ("(?P", "(?<", "(?i", r"\Z", r"\A"))
        assert "\\" not in instead


def test_needless_words_tell_places_apart_where_they_can() -> None:
    assert set(NEEDLESS_WORDS) <= set(TELLING_WORDS)
    assert set(PLACE_WORDS) <= set(TELLING_WORDS)
