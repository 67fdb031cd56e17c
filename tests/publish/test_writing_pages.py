"""Somebody who knows the trade can write a file from its page alone."""

from bezelbook.kinds import KINDS
from bezelbook.publish.knowledge import Knowledge
from bezelbook.publish.page_text import bodies
from bezelbook.publish.pages import site_files
from bezelbook.publish.writing_pages import writing_pages
from tests.publish.pages_of import knowledge_about
from tests.publish.reading_html import Element, parsed
from tests.reasoning import making

EXAMPLES = {
    "note": (("example.yaml", "# A note.\nform: seen\n  - deeper\n"), ("odd.yaml", "# An odd one. Look.\na: b\n"))
}


def pages() -> dict[str, Element]:
    about = knowledge_about(making.vehicle())
    told = Knowledge(about.book, about.rules, (), (), about.today, EXAMPLES)
    return {path: parsed(body) for path, body in bodies(tuple(writing_pages(told))).items()}


def test_there_is_a_page_for_every_kind_and_a_list_that_leads_to_it() -> None:
    found = pages()
    assert len(found) == len(KINDS) + 1
    links = [one.attributes["href"] for one in found["writing.md"].all("a")]
    assert links[0] == "writing/note.html"
    assert {f"{link.removesuffix('.html')}.md" for link in links} == found.keys() - {"writing.md"}


def test_an_example_stands_there_line_by_line_as_in_its_file() -> None:
    page = pages()["writing/note.md"]
    assert [one.text for one in page.all("pre")] == ["# A note.\nform: seen\n  - deeper", "# An odd one. Look.\na: b"]
    assert [one.text for one in page.all("h2")][:2] == ["The usual one", "An odd one"]


def test_a_page_says_where_the_file_goes() -> None:
    found = pages()
    assert "kb/notes/2026/what-you-call-it.yaml" in found["writing/note.md"].text
    assert "kb/head_units/what-you-call-it.yaml" in found["writing/head-unit.md"].text
    assert "kb/shop.yaml" in found["writing/shop.md"].text


def test_each_form_has_its_fields_under_its_own_heading() -> None:
    headings = [one.attributes["id"] for one in pages()["writing/note.md"].all("h2")]
    assert headings[2:] == [f"fields-{form}" for form in ("tried", "measured", "seen", "metered", "bench", "after")]
    assert "fields" in [one.attributes["id"] for one in pages()["writing/speaker.md"].all("h2")]


def test_the_home_page_leads_there() -> None:
    home = parsed(bodies(site_files(knowledge_about(making.vehicle())))["index.md"])
    assert "writing.html" in [one.attributes["href"] for one in home.all("a")]
