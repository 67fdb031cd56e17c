import markdown  # type: ignore[import-untyped]
import pytest
import yaml

from bezelbook.publish.page_text import bodies, body_of, fault_page, headings_of, page_file
from bezelbook.publish.template import text
from tests.publish.reading_html import parsed

ODD_NAMES = [
    "plain name",
    "<script>alert(1)</script>",
    "*bold* _it_ `code` [a](javascript:b) ![c](d)",
    "# {#id} {: .class}",
    'quotes " and \\ backslash',
    "&amp; & &#42;",
    "עברית و عربي",
    "1. list - + ~ ^ | $x$",
    "tab\tand\u2028line",
    "control \x7f \ufeff mark",
]


def page(name: str) -> str:
    body = f'<p>body</p>\n<h2 id="more">More</h2>\n<div>\n{text("# not a heading")}\n</div>'
    return page_file("a.md", name, f'<h1 id="top">{text(name)}</h1>\n{body}').text


def split(page_text: str) -> tuple[dict[str, object], str]:
    """Front matter and the rest, read by PyYAML itself."""
    _, front, rest = page_text.split("---\n", 2)
    return yaml.safe_load(front), rest


@pytest.mark.parametrize("name", ODD_NAMES)
def test_a_title_reads_back_as_it_was(name: str) -> None:
    front, _ = split(page(name))
    assert front["title"] == name
    assert front["hide"] == ["navigation", "toc"]


@pytest.mark.parametrize("name", ODD_NAMES)
def test_a_heading_says_the_same_as_markdown_and_as_html(name: str) -> None:
    _, rest = split(page(name))
    converted = parsed(markdown.markdown(headings_of(rest), extensions=["attr_list", "toc"]))
    ours = parsed(body_of(rest))
    for root in (converted, ours):
        [heading] = root.all("h1")
        assert heading.attributes == {"id": "top"}
        assert heading.all() == []
        assert heading.text == "".join(one for one in " ".join(name.split()) if one.isprintable())


def test_a_page_file_is_headings_with_html_between_for_any_engine_of_markdown() -> None:
    _, rest = split(page("name"))
    assert rest.split("\n\n") == [
        "\n# name {#top}",
        "<p>body</p>",
        "## More {#more}",
        "<div>\n&#35; not a heading\n</div>\n",
    ]
    converted = parsed(markdown.markdown(rest, extensions=["attr_list"]))
    assert [one.name for one in converted.all()] == ["h1", "p", "h2", "div"]


def test_the_body_is_the_html_it_was_made_of() -> None:
    html = '<h1 id="top">a &amp; b</h1>\n<p>one</p>\n<h2 id="x-1">c</h2>\n<p>two</p>'
    assert bodies([page_file("a.md", "a & b", html)]) == {"a.md": html.replace("&amp;", "&#38;")}


def test_only_pages_have_a_body() -> None:
    assert bodies([fault_page("gone")]).keys() == {"index.md"}


def test_a_fault_is_shown_in_place_of_the_home_page() -> None:
    page = fault_page("kb/x.yaml <is> gone")
    assert page.path == "index.md"
    assert "kb/x.yaml &lt;is&gt; gone" in page.text
