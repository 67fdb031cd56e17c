"""What a page asked for while a test looked at it, and which of that was none of its business."""

from collections.abc import Iterable
from dataclasses import dataclass, field

from playwright.sync_api import BrowserContext, ConsoleMessage, Error, Request, Route, WebSocketRoute

OWN = ("file:", "data:", "blob:", "about:")


@dataclass
class Watch:
    """Refuses every request that leaves the site and keeps its address; keeps what failed in scripts too.

    `origins` are the http addresses that count as the site, such as "http://127.0.0.1:8000".
    """

    origins: set[str] = field(default_factory=set)
    asked: list[str] = field(default_factory=list)
    outside: list[str] = field(default_factory=list)
    script_errors: list[str] = field(default_factory=list)
    console_errors: list[str] = field(default_factory=list)

    def attach(self, context: BrowserContext) -> None:
        """Look at every page of this context from now on."""
        context.on("request", self._note)
        context.on("weberror", lambda fault: self._note_fault(fault.error))
        context.on("console", self._note_console)
        context.route("**/*", self._answer)
        context.route_web_socket("**/*", self._refuse_socket)

    def is_own(self, url: str) -> bool:
        """Whether an address belongs to the site."""
        return url.startswith((*OWN, *(f"{origin}/" for origin in self.origins)))

    def complaints(self) -> list[str]:
        """What a test that passed must not have caused, in words."""
        return [*_lines("asked for", self.outside), *_lines("a script failed:", self.script_errors)]

    def forgive(self) -> None:
        """Forget what was seen; for tests that cause it on purpose."""
        self.outside.clear()
        self.script_errors.clear()
        self.console_errors.clear()

    def _note(self, request: Request) -> None:
        self.asked.append(request.url)
        if not self.is_own(request.url):
            self.outside.append(request.url)

    def _note_fault(self, error: Error) -> None:
        self.script_errors.append(str(error))

    def _note_console(self, message: ConsoleMessage) -> None:
        if message.type == "error":
            self.console_errors.append(message.text)

    def _answer(self, route: Route) -> None:
        if self.is_own(route.request.url):
            route.continue_()
        else:
            route.abort("blockedbyclient")

    def _refuse_socket(self, socket: WebSocketRoute) -> None:
        self.outside.append(socket.url)
        socket.close()


def _lines(what: str, seen: Iterable[str]) -> list[str]:
    return [f"{what} {one}" for one in dict.fromkeys(seen)]
