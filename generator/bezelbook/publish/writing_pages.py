"""How to write it down: for each kind, its examples as files and every field that it can have."""

from collections.abc import Iterator
from dataclasses import dataclass

from bezelbook.kinds import KINDS
from bezelbook.kinds.catalog import Kind
from bezelbook.publish.address import WRITING, Links, writing_page
from bezelbook.publish.field_list import forms_of
from bezelbook.publish.knowledge import Knowledge
from bezelbook.publish.page_text import page_file
from bezelbook.publish.site_file import SiteFile
from bezelbook.publish.template import render

# What a shop writes most stands first.
FIRST = ("note", "vehicle", "head_unit", "mount", "speaker")


@dataclass(frozen=True, slots=True)
class Example:
    """An example file: what it shows, as its heading says it, an anchor for that, and its text."""

    shows: str
    anchor: str
    text: str


def writing_pages(knowledge: Knowledge) -> Iterator[SiteFile]:
    """The list of the kinds, and a page for each."""
    to = Links(WRITING, knowledge.book)
    kinds = sorted(KINDS.values(), key=lambda kind: FIRST.index(kind.name) if kind.name in FIRST else len(FIRST))
    rows = [(_called(kind), kind.description, to.to(writing_page(kind.name))) for kind in kinds]
    yield page_file(WRITING, "How to write it down", render("publish/writing.html", rows=rows, to=to))
    for kind in kinds:
        yield _page(knowledge, kind)


def _page(knowledge: Knowledge, kind: Kind) -> SiteFile:
    to = Links(writing_page(kind.name), knowledge.book)
    examples = [_example(name, text) for name, text in knowledge.examples.get(kind.name, ())]
    html = render(
        "publish/writing_kind.html",
        called=_called(kind),
        says=kind.description,
        file=_file(kind),
        examples=examples,
        forms=forms_of(kind),
        schema=f"schema/{kind.name}.schema.json",
        to=to,
    )
    return page_file(to.page, f"How to write {_article(_called(kind))}", html)


def _called(kind: Kind) -> str:
    return kind.name.replace("_", " ")


def _article(words: str) -> str:
    return f"an {words}" if words[0] in "aeiou" else f"a {words}"


def _file(kind: Kind) -> str:
    """Where such a file goes."""
    if kind.single:
        return f"kb/{kind.folder}.yaml"
    return f"kb/{kind.folder}/{'2026/' if kind.by_year else ''}what-you-call-it.yaml"


def _example(name: str, text: str) -> Example:
    """An example is headed by what its first line says of it; the one that every kind has is the usual one."""
    says = text.splitlines()[0].removeprefix("#").strip().split(". ")[0].removesuffix(".")
    return Example("the usual one" if name == "example.yaml" else says, name.removesuffix(".yaml"), text.rstrip())
