"""The browser tests see what they claim to see."""

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Page

from tests.site.watch import Watch

ASKS = {
    "an image": '<img src="http://outside.example/a.png">',
    "a style sheet": '<link rel="stylesheet" href="https://outside.example/a.css">',
    "a font": "<style>@font-face{font-family:f;src:url(https://outside.example/f.woff2)}p{font-family:f}</style>",
    "a script": '<script src="https://outside.example/a.js"></script>',
    "a frame": '<iframe src="https://outside.example/a.html"></iframe>',
    "a fetch": '<script>fetch("https://outside.example/a").catch(() => 0)</script>',
    "a beacon": '<script>navigator.sendBeacon("https://outside.example/a", "x")</script>',
    "a socket": '<script>new WebSocket("wss://outside.example/a")</script>',
    "another port": '<img src="http://127.0.0.1:9/a.png">',
}


def write(folder: Path, body: str) -> Path:
    page = folder / "page.html"
    page.write_text(f"<!doctype html><title>t</title><p>text</p>{body}", encoding="utf-8")
    (folder / "own.js").write_text("document.title = 'own';", encoding="utf-8")
    return page


@pytest.mark.parametrize("body", ASKS.values(), ids=ASKS.keys())
@pytest.mark.parametrize("over", ["file", "http"])
def test_a_request_that_leaves_the_site_is_seen_and_refused(
    page: Page, watch: Watch, serve: Callable[[Path], str], tmp_path: Path, body: str, over: str
) -> None:
    written = write(tmp_path, body)
    page.goto(written.as_uri() if over == "file" else f"{serve(tmp_path)}/page.html")
    page.wait_for_timeout(50)
    seen, told = list(watch.outside), watch.complaints()
    watch.forgive()
    assert seen
    assert all("outside.example" in url or ":9/" in url for url in seen)
    assert told[0].startswith("asked for ")


@pytest.mark.parametrize("over", ["file", "http"])
def test_what_the_site_asks_of_itself_is_let_through(
    page: Page, watch: Watch, serve: Callable[[Path], str], tmp_path: Path, over: str
) -> None:
    written = write(tmp_path, '<script src="own.js"></script>')
    page.goto(written.as_uri() if over == "file" else f"{serve(tmp_path)}/page.html")
    assert page.title() == "own"
    assert [url.rsplit("/", 1)[-1] for url in watch.asked][:2] == ["page.html", "own.js"]
    assert watch.complaints() == []


def test_a_script_that_fails_is_seen(page: Page, watch: Watch, tmp_path: Path) -> None:
    page.goto(write(tmp_path, "<script>nothing.here()</script>").as_uri())
    page.wait_for_timeout(50)
    told = watch.complaints()
    watch.forgive()
    assert told
    assert "nothing is not defined" in told[0]
