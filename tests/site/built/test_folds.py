"""What is folded away on a page opens when an address leads into it, and is all there on paper."""

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

SHUT = "details:not([open])"
FIRE = "(name) => dispatchEvent(new Event(name))"


@pytest.fixture
def vehicle(page: Page, worked_site: Path) -> Callable[[str], Page]:
    """Opens the worked example's vehicle at a place of its page."""

    def opened(at: str = "") -> Page:
        page.goto((worked_site / "vehicles" / "compact-hatch-2.html").as_uri() + at)
        return page

    return opened


def test_notes_are_folded_and_answers_are_not(vehicle: Callable[[str], Page]) -> None:
    page = vehicle("")
    expect(page.locator("#note-a-short-goes-in")).to_be_hidden()
    expect(page.locator("table.verdicts").first).to_be_visible()
    expect(page.locator("figure.strip").first).to_be_visible()
    page.locator("details.folded > summary").first.click()
    expect(page.locator("#note-a-short-goes-in")).to_be_visible()


def test_an_address_opens_what_it_leads_into(vehicle: Callable[[str], Page]) -> None:
    page = vehicle("#note-a-short-goes-in")
    expect(page.locator("#note-a-short-goes-in")).to_be_in_viewport()


def test_an_address_of_a_heading_opens_what_is_folded_right_below_it(page: Page, trim_site: Path) -> None:
    page.goto((trim_site / "vehicles" / "large-sedan-2" / "removal.html").as_uri())
    folded = page.locator("h2 + details.target:not([open])").first
    anchor = folded.evaluate("(fold) => fold.previousElementSibling.id")
    page.locator(f'.targets a[href="#{anchor}"]').click()
    expect(page.locator(f"#{anchor} + details.target")).to_have_attribute("open", "")
    expect(page.locator(f"#{anchor}")).to_be_in_viewport()


def test_an_address_of_a_place_opens_what_is_folded_further_below(page: Page, trim_site: Path) -> None:
    page.goto((trim_site / "vehicles" / "large-sedan-2.html").as_uri() + "#wiring-that-is-not-there")
    anchor = page.locator("h2 ~ details.more").first.evaluate(
        "(fold) => { while (fold.tagName !== 'H2') fold = fold.previousElementSibling; return fold.id; }"
    )
    fold = page.locator(f"#{anchor} ~ details.more").first
    expect(fold).not_to_have_attribute("open", "")
    page.evaluate("(anchor) => { location.hash = anchor; }", anchor)
    expect(fold).to_have_attribute("open", "")


def test_the_address_of_the_top_opens_nothing(page: Page, trim_site: Path) -> None:
    page.goto((trim_site / "vehicles" / "large-sedan-2" / "removal.html").as_uri() + "#top")
    expect(page.locator("details.first-time")).not_to_have_attribute("open", "")


def test_an_address_that_leads_nowhere_does_no_harm(vehicle: Callable[[str], Page]) -> None:
    expect(vehicle("#note-that-is-not-there").locator("h1")).to_be_in_viewport()


def test_an_address_opens_it_in_an_older_browser_too(vehicle: Callable[[str], Page]) -> None:
    page = vehicle("#note-a-short-goes-in")
    page.evaluate("document.querySelectorAll('details').forEach((one) => { one.open = false; })")
    page.evaluate("dispatchEvent(new HashChangeEvent('hashchange'))")
    expect(page.locator("#note-a-short-goes-in")).to_be_in_viewport()


def test_on_paper_nothing_is_folded_and_afterwards_it_is_as_before(vehicle: Callable[[str], Page]) -> None:
    page = vehicle("")
    page.locator("details.folded > summary").first.click()
    before = page.locator(SHUT).count()
    assert before > 0
    page.evaluate(FIRE, "beforeprint")
    expect(page.locator(SHUT)).to_have_count(0)
    page.evaluate(FIRE, "afterprint")
    expect(page.locator(SHUT)).to_have_count(before)
    expect(page.locator("details.folded").first).to_have_attribute("open", "")
