"""Patterns for a browser spell out what Python and a browser read differently."""

from bezelbook.publish.patterns import browser_pattern, browser_patterns


def test_digits_and_edges_are_spelled_out() -> None:
    assert browser_pattern(r"\d+") == "[0-9]+"
    assert "\\b" not in browser_pattern(r"\bdoor\b")


def test_replacements_keep_what_stands_in_their_place() -> None:
    assert browser_patterns([(r"(\d)x", "$1 x")]) == [["([0-9])x", "$1 x"]]
