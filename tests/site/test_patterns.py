"""The patterns in the schemas mean the same to a browser."""

import re

from playwright.sync_api import Page

from bezelbook.values.day import DAY_PATTERN
from bezelbook.values.grammar import form_pattern
from bezelbook.values.ident import ID_PATTERN
from tests.values.forms import FORMS, TEXTS

MATCHES = """([patterns, texts]) => patterns.map((pattern) => {
  const read = new RegExp(pattern, "u");
  return texts.map((text) => read.test(text));
})"""


def test_a_browser_in_unicode_mode_agrees_on_every_pattern(page: Page) -> None:
    patterns = [*map(form_pattern, FORMS), DAY_PATTERN, ID_PATTERN]
    found = page.evaluate(MATCHES, [patterns, TEXTS])
    assert found == [[bool(re.search(pattern, text)) for text in TEXTS] for pattern in patterns]
