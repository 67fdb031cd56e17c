"""Every page of the site: it asks nothing of anybody, leads where it says, fits a phone, and is the same every time."""

import re
from collections.abc import Callable
from fractions import Fraction
from itertools import product
from pathlib import Path
from typing import Literal
from urllib.parse import unquote, urlsplit

import pytest
from playwright.sync_api import Page, expect

from tests.site.built.conftest import build
from tests.site.watch import Watch

WIDTHS = (390, 820, 1440)
SCHEMES: tuple[Literal["light", "dark"], ...] = ("light", "dark")
LINKS = "() => [...document.querySelectorAll('a[href]')].map((one) => one.href)"
OVERFLOW = "() => document.documentElement.scrollWidth - document.documentElement.clientWidth"
# Each shape of a drawing as shares of the drawing's own width.
SHAPES = """(kind) => [...document.querySelectorAll(`svg.${kind}`)].map((svg) => {
  const whole = svg.getBoundingClientRect();
  return {
    end: Number(svg.dataset.end),
    shapes: [...svg.querySelectorAll("rect")].map((one) => {
      const { left, right } = one.getBoundingClientRect();
      const shares = [left, right].map((at) => (at - whole.left) / whole.width);
      return [Number(one.dataset.from), Number(one.dataset.to), ...shares];
    }),
  };
})"""


def pages_of(site: Path) -> list[Path]:
    return sorted(site.rglob("*.html"))


def test_no_page_asks_anything_of_anybody_or_is_wider_than_the_screen(
    page: Page, demo_site: Path, watch: Watch
) -> None:
    for path in pages_of(demo_site):
        page.goto(path.as_uri())
        expect(page.locator("h1").first).to_be_attached()
        for width, scheme in product(WIDTHS, SCHEMES):
            page.set_viewport_size({"width": width, "height": 900})
            page.emulate_media(color_scheme=scheme)
            assert page.evaluate(OVERFLOW) <= 0, (path.name, width, scheme)
    assert watch.outside == []
    assert watch.console_errors == []
    assert {urlsplit(url).scheme for url in watch.asked} <= {"file", "data"}


def test_over_http_the_site_asks_its_own_host_alone(
    page: Page, serve: Callable[[Path], str], worked_site: Path, watch: Watch
) -> None:
    origin = serve(worked_site)
    page.goto(f"{origin}/index.html#ask=hatch%202%20late%20two-high%20a")
    expect(page.locator(".ticket .verdict").first).to_have_text("Goes in.")
    assert all(url.startswith(f"{origin}/") for url in watch.asked)
    assert watch.console_errors == []


def test_every_link_leads_to_a_page_and_a_place_that_there_is(page: Page, demo_site: Path) -> None:
    links: set[str] = set()
    for path in pages_of(demo_site):
        page.goto(path.as_uri())
        links |= set(page.evaluate(LINKS))
    ids: dict[Path, set[str]] = {}
    for link in links:
        address = urlsplit(link)
        assert address.scheme == "file", link
        target = Path(unquote(address.path))
        assert target.is_file(), link
        if address.fragment and not address.fragment.startswith("ask="):
            if target not in ids:
                ids[target] = set(re.findall(r'\bid="([^"]+)"', target.read_text(encoding="utf-8")))
            assert unquote(address.fragment) in ids[target], link


@pytest.mark.parametrize("width", WIDTHS)
@pytest.mark.parametrize("kind", ["tape", "section"])
def test_drawings_are_to_scale_on_every_screen(page: Page, worked_site: Path, width: int, kind: str) -> None:
    page.set_viewport_size({"width": width, "height": 900})
    found = 0
    for path in sorted((worked_site / "vehicles").glob("*.html")):
        page.goto(path.as_uri())
        for drawing in page.evaluate(SHAPES, kind):
            for low, high, left, right in drawing["shapes"]:
                assert abs(Fraction(low, drawing["end"]) - Fraction(left)) < Fraction(1, 100)
                assert abs(Fraction(high, drawing["end"]) - Fraction(right)) < Fraction(1, 100)
                found += 1
    assert found > 0


def test_the_engines_furniture_is_gone(page: Page, demo_site: Path) -> None:
    page.goto((demo_site / "vehicles.html").as_uri())
    for part in (".md-header", ".md-sidebar", ".md-search", ".md-footer", ".md-nav", "nav.md-tabs"):
        expect(page.locator(part)).to_have_count(0)
    for leftover in page.locator(".md-toggle, .md-overlay, .md-dialog").all():
        expect(leftover).to_be_hidden()
    names = page.locator("header nav a").all_inner_texts()
    assert names == ["Ask", "Vehicles", "Parts", "Monday list", "How the book checks itself"]
    expect(page.locator("header nav a[aria-current]")).to_have_text("Vehicles")


def test_a_page_of_the_shops_own_is_listed_at_the_foot(page: Page, demo_site: Path) -> None:
    page.goto((demo_site / "parts.html").as_uri())
    page.locator("footer").get_by_role("link", name="About this site").click()
    expect(page.locator("h1")).to_have_text("About this site")


def test_ink_stands_out_from_paper_in_light_and_in_dark(page: Page, demo_site: Path) -> None:
    for scheme in SCHEMES:
        page.emulate_media(color_scheme=scheme)
        page.goto((demo_site / "monday.html").as_uri())
        for ink in ("--ink", "--soft", "--link"):
            for paper in ("--paper", "--card"):
                assert contrast(page, ink, paper) >= (7 if ink == "--ink" else 4.5), (scheme, ink, paper)


def contrast(page: Page, one: str, other: str) -> float:
    """The contrast of two of the site's colours as WCAG 2 has it."""
    of_page = "getComputedStyle(document.documentElement)"
    colours = [page.evaluate(f"{of_page}.getPropertyValue('{name}')") for name in (one, other)]
    dark, bright = sorted(map(_luminance, colours))
    return (bright + 0.05) / (dark + 0.05)


def _luminance(colour: str) -> float:
    channels = [int(colour.strip()[at : at + 2], 16) / 255 for at in (1, 3, 5)]
    red, green, blue = (one / 12.92 if one <= 0.04045 else ((one + 0.055) / 1.055) ** 2.4 for one in channels)
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def test_on_paper_there_are_no_links_rows_and_no_box(at_home: Callable[[Path, str], Page], worked_site: Path) -> None:
    page = at_home(worked_site, "hatch 2 late two-high A")
    expect(page.locator(".ticket")).to_be_visible()
    page.emulate_media(media="print")
    for part in ("header.top", "#box", "footer.foot", "#found"):
        expect(page.locator(part)).to_be_hidden()
    expect(page.locator(".ticket")).to_be_visible()


def bytes_of(site: Path) -> dict[str, bytes]:
    return {path.relative_to(site).as_posix(): path.read_bytes() for path in site.rglob("*") if path.is_file()}


def test_the_same_book_makes_the_same_site_on_any_day(
    root: Path, books: Path, worked_site: Path, tmp_path: Path
) -> None:
    again = build(root, books / "worked", tmp_path / "again", SOURCE_DATE_EPOCH="4102444800", TZ="Pacific/Auckland")
    assert bytes_of(again) == bytes_of(worked_site)


def test_the_site_names_no_other_host(worked_site: Path) -> None:
    named = re.compile(rb"""(?:src|href|url|import)\s*[=(]?\s*["']?\s*(?:https?:)?//[^"')\s]+""")
    found = {
        path: named.findall(content) for path, content in bytes_of(worked_site).items() if not path.endswith(".map")
    }
    assert {path: names for path, names in found.items() if names} == {}
