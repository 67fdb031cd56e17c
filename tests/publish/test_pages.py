import re

import pytest

from bezelbook.kinds import KINDS
from bezelbook.publish.knowledge import Knowledge
from bezelbook.publish.page_text import bodies
from bezelbook.publish.pages import site_files
from bezelbook.publish.site_file import SiteFile
from tests.publish import hostile
from tests.publish.pages_of import knowledge_about
from tests.publish.reading_html import Element, parsed
from tests.publish.scripts import handed_over

# Words of other programs, and of other trades, for things that this one says in its own.
NOT_OURS = (
    "review",
    "approve",
    "resolve",
    "merge",
    "dashboard",
    "score",
    "scored",
    "rating",
    "stars",
    "starred",
    "badge",
    "upvote",
    "vote",
    "draft",
    "published",
    "deprecated",
    "severity",
    "ticket",
    "confidence",
    "percent",
    "guaranteed",
    "sku",
    "cart",
    "wishlist",
    "login",
    "assistant",
)
PAGES_OF_ONE = {
    "index.md",
    "vehicles.md",
    "parts.md",
    "monday.md",
    "look-next.md",
    "checks.md",
    "reading.md",
    "writing.md",
    "shop.md",
    "loose-notes.md",
    "shelf.md",
    "decisions.md",
    "questions.md",
    "jobs.md",
    "data/book.js",
    "data/findings.sarif.json",
    *(f"writing/{kind.name.replace('_', '-')}.md" for kind in KINDS.values()),
}


def test_every_record_has_its_page(demo: Knowledge, demo_files: tuple[SiteFile, ...]) -> None:
    book = demo.book
    expected = PAGES_OF_ONE | {
        *(f"vehicles/{id_}.md" for id_ in book.vehicles),
        *(f"vehicles/{id_}/removal.md" for id_ in book.vehicles),
        *(f"data/vehicles/{id_}.js" for id_ in book.vehicles),
        *(f"head-units/{id_}.md" for id_ in book.head_units),
        *(f"mounts/{id_}.md" for id_ in book.mounts),
        *(f"connectors/{id_}.md" for id_ in book.connectors),
        *(f"speakers/{id_}.md" for id_ in book.speakers),
        *(f"amplifiers/{id_}.md" for id_ in book.amplifiers),
        *(f"modules/{id_}.md" for id_ in book.modules),
        *(f"adapters/{id_}.md" for id_ in book.adapters),
        *(f"supplies/{id_}.md" for id_ in book.supplies),
        *(f"checks/{rule.name}.md" for rule in demo.rules),
    }
    assert {file.path for file in demo_files} == expected
    assert [file.path for file in demo_files] == sorted(expected)


def test_every_note_is_quoted_in_full_exactly_once(demo: Knowledge, demo_pages: dict[str, Element]) -> None:
    found = [
        element.attributes["id"]
        for page in demo_pages.values()
        for element in page.all("figure", kind="said")
        if "id" in element.attributes
    ]
    assert sorted(found) == sorted(f"note-{note}" for note in (*demo.book.notes, *demo.book.struck))


def test_the_same_knowledge_makes_the_same_bytes(worked: Knowledge, worked_files: tuple[SiteFile, ...]) -> None:
    assert site_files(worked) == worked_files


def test_every_heading_of_a_page_is_one_for_any_engine_of_markdown(
    demo_files: tuple[SiteFile, ...], demo_pages: dict[str, Element]
) -> None:
    for file in demo_files:
        if file.path.endswith(".md"):
            page = demo_pages[file.path]
            marked = [line for line in file.text.splitlines() if line.startswith("#")]
            assert len(marked) == len(page.all("h1") + page.all("h2")), file.path


def test_an_empty_book_has_its_pages_too() -> None:
    files = site_files(Knowledge(knowledge_about().book.__class__(), (), (), (), "no date"))
    assert {file.path for file in files} == PAGES_OF_ONE


@pytest.mark.parametrize("word", NOT_OURS)
def test_no_page_says(word: str, worked_pages: dict[str, Element], demo_pages: dict[str, Element]) -> None:
    said = re.compile(rf"\b{word}\b", re.IGNORECASE)
    pages = [*worked_pages.items(), *demo_pages.items()]
    assert [path for path, page in pages if said.search(page.text)] == []


# --- text stays text ---


@pytest.fixture(scope="module")
def hostile_files() -> tuple[SiteFile, ...]:
    complaint = f"kb/x.yaml:1:1: {hostile.TEXTS[0]}"
    return site_files(knowledge_about(*hostile.records(), left_out=(complaint,)))


def test_what_an_author_types_is_never_markup(hostile_files: tuple[SiteFile, ...]) -> None:
    for path, body in bodies(hostile_files).items():
        page = parsed(body)
        assert page.all("script") == [], path
        assert page.all("img") == [], path
        assert len(page.all("h1")) == 1, path
        assert not [name for one in page.all() for name in one.attributes if name.startswith("on")], path
        assert "49" not in re.findall(r"\d+", page.all("h1")[0].text), path


def test_what_an_author_types_is_shown_as_it_is(hostile_files: tuple[SiteFile, ...]) -> None:
    said = "\n".join(parsed(body).text for body in bodies(hostile_files).values())
    for words in hostile.TEXTS:
        assert words in said


def test_what_an_author_types_makes_no_heading_and_no_rule_of_a_page_file(hostile_files: tuple[SiteFile, ...]) -> None:
    for file in hostile_files:
        if file.path.endswith(".md"):
            _, front, rest = file.text.split("---\n", 2)
            assert front.count("\n") == 2
            headings = [line for line in rest.splitlines() if line.startswith("#")]
            page = parsed(bodies([file])[file.path])
            assert len(headings) == len(page.all("h1") + page.all("h2"))
            assert len({line.rpartition(" ")[2] for line in headings}) == len(headings)
            assert not re.search(r"^(---|===|\s*[*_-]{3,})", rest, flags=re.MULTILINE)


def test_a_data_script_holds_what_was_typed(hostile_files: tuple[SiteFile, ...]) -> None:
    scripts = {file.path: handed_over(file.text)[1] for file in hostile_files if file.path.endswith(".js")}
    assert scripts["data/book.js"]["shop"]["name"] == hostile.words(0)
    assert "</script" not in "".join(file.text for file in hostile_files if file.path.endswith(".js"))
