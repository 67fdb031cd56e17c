"""HTML as a test looks at it: its elements with their attributes and text, and whether it is well nested."""

from dataclasses import dataclass, field
from html.parser import HTMLParser

ALONE = frozenset({"br", "hr", "img", "input", "link", "meta"})


@dataclass
class Element:
    """An element, with what stands in it in order."""

    name: str
    attributes: dict[str, str]
    inside: list["Element | str"] = field(default_factory=list)

    @property
    def text(self) -> str:
        """All text in it."""
        return "".join(one if isinstance(one, str) else one.text for one in self.inside)

    def all(self, name: str = "", **attributes: str) -> list["Element"]:
        """Every element below it with this name, or any, and with these attributes; `kind` is one class of it."""
        below = [one for one in self.inside if isinstance(one, Element)]
        found = [element for one in below for element in (one, *one.all())]
        kind = attributes.pop("kind", None)
        return [
            one
            for one in found
            if name in ("", one.name)
            and attributes.items() <= one.attributes.items()
            and (kind is None or kind in one.attributes.get("class", "").split())
        ]


class _Builder(HTMLParser):
    def __init__(self) -> None:
        super().__init__()
        self.open = [Element("", {})]

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        element = Element(tag, {name: value or "" for name, value in attrs})
        self.open[-1].inside.append(element)
        if tag not in ALONE:
            self.open.append(element)

    def handle_endtag(self, tag: str) -> None:
        assert self.open[-1].name == tag, f"</{tag}> closes <{self.open[-1].name}>"
        self.open.pop()

    def handle_data(self, data: str) -> None:
        self.open[-1].inside.append(data)


def parsed(html: str) -> Element:
    """The elements of a piece of HTML; fails when an element is not closed where it should be."""
    builder = _Builder()
    builder.feed(html)
    builder.close()
    assert len(builder.open) == 1, f"<{builder.open[-1].name}> is never closed"
    return builder.open[0]
