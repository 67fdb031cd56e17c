"""Whatever an author types is text in the browser too."""

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

from tests.publish import hostile

WIDTHS = (390, 1440)


def test_no_page_is_taken_over(page: Page, hostile_site: Path) -> None:
    for path in sorted(hostile_site.rglob("*.html")):
        page.goto(path.as_uri())
        assert page.title() not in {"taken", "1"}, path
        own = page.evaluate("[...document.scripts].every((one) => one.src && !one.textContent)")
        assert own, path
        expect(page.locator("#main img, #main script")).to_have_count(0)


def test_a_long_word_breaks_before_it_leaves_the_screen(page: Page, hostile_site: Path) -> None:
    for width in WIDTHS:
        page.set_viewport_size({"width": width, "height": 900})
        for path in sorted(hostile_site.rglob("*.html")):
            page.goto(path.as_uri())
            over = page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth")
            assert over <= 0, (path.name, width)


@pytest.mark.parametrize("words", ["small van 1 late box", "small van 1 300 deep", "small van 1", "small van 1 9 x 5"])
def test_the_box_shows_text(at_home: Callable[[Path, str], Page], hostile_site: Path, words: str) -> None:
    page = at_home(hostile_site, words)
    expect(page.locator("#reply > *").first).to_be_visible()
    expect(page.locator("#reply img, #reply script, #found img, #found script")).to_have_count(0)
    assert page.title() not in {"taken", "1"}


def test_the_answer_says_what_was_typed(at_home: Callable[[Path, str], Page], hostile_site: Path) -> None:
    page = at_home(hostile_site, "small van 1 late box")
    expect(page.locator(".ticket .for")).to_contain_text(hostile.words(0))
    expect(page.locator(".ticket")).to_contain_text("## two {#main}")


def test_a_file_that_could_not_be_read_is_said_on_the_home_page(
    at_home: Callable[[Path, str], Page], hostile_site: Path
) -> None:
    page = at_home(hostile_site, "")
    alert = page.get_by_role("alert")
    expect(alert).to_contain_text("Some files could not be read and are left out of every answer.")
    expect(alert).to_contain_text("vehicles/broken.yaml:")
    expect(page.locator("#main b")).to_have_count(0)
