"""One real browser for all tests of the site, which is cut off from every other host."""

import os
import shutil
import threading
from collections.abc import Callable, Iterator
from functools import partial
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Browser, BrowserContext, Page, sync_playwright

from tests.site.watch import Watch

QUIET = (
    "--no-sandbox",  # a container's root may not make one; only the site's own pages are opened
    "--disable-gpu",
    "--disable-quic",
    "--disable-dev-shm-usage",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1, EXCLUDE localhost",
)


class QuietHandler(SimpleHTTPRequestHandler):
    """Serves files and keeps no log of it."""

    def log_message(self, format: str, *args: Any) -> None:  # noqa: A002 - the name is the base class's
        """Say nothing."""


@pytest.fixture(scope="session")
def chromium() -> str:
    """Where the browser is. Without one the tests of the site fail, and never pass by being left out."""
    named = os.environ.get("BEZELBOOK_CHROMIUM")
    found = named or shutil.which("chromium") or shutil.which("chromium-browser")
    if not found or not Path(found).is_file():
        pytest.fail(
            f"There is no browser at {named}."
            if named
            else "There is no Chromium on this machine. On Debian: apt-get install chromium. "
            "Where it has another name or place, put that in BEZELBOOK_CHROMIUM.",
            pytrace=False,
        )
    return found


@pytest.fixture(scope="session")
def browser(chromium: str) -> Iterator[Browser]:
    """The one browser of the whole run."""
    with sync_playwright() as playwright:
        running = playwright.chromium.launch(executable_path=chromium, args=list(QUIET))
        yield running
        running.close()


@pytest.fixture
def watch() -> Iterator[Watch]:
    """What this test's pages asked for; a request that leaves the site, or a script that fails, fails it."""
    seen = Watch()
    yield seen
    if seen.complaints():
        pytest.fail("The page did what it must not:\n" + "\n".join(seen.complaints()), pytrace=False)


@pytest.fixture
def context(browser: Browser, watch: Watch) -> Iterator[BrowserContext]:
    """A fresh visitor: nothing stored, no worker, every request looked at."""
    visitor = browser.new_context(service_workers="block")
    visitor.set_default_timeout(10_000)
    watch.attach(visitor)
    yield visitor
    visitor.close()


@pytest.fixture
def page(context: BrowserContext) -> Page:
    """An empty tab of that visitor."""
    return context.new_page()


@pytest.fixture
def serve(watch: Watch) -> Iterator[Callable[[Path], str]]:
    """Serves a folder over http and says at which address; that address counts as the site."""
    servers: list[ThreadingHTTPServer] = []

    def start(folder: Path) -> str:
        server = ThreadingHTTPServer(("127.0.0.1", 0), partial(QuietHandler, directory=str(folder)))
        threading.Thread(target=server.serve_forever, kwargs={"poll_interval": 0.05}, daemon=True).start()
        servers.append(server)
        origin = f"http://127.0.0.1:{server.server_port}"
        watch.origins.add(origin)
        return origin

    yield start
    for server in servers:
        server.shutdown()
        server.server_close()
