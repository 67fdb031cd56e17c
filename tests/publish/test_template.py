import pytest
from jinja2 import UndefinedError

from bezelbook.publish.template import render, text

HOSTILE = "<script>alert(\"x\")</script> {{ 7 * 7 }} {% raw %} & 'quoted'"


def test_whatever_a_book_says_arrives_as_text() -> None:
    html = render("publish/loose_notes.html", notes=[])
    assert html.startswith('<h1 id="top">')
    assert text(HOSTILE) == (
        "&lt;script&gt;alert(&#34;x&#34;)&lt;/script&gt; {{ 7 * 7 }} {% raw %} &amp; &#39;quoted&#39;"
    )


@pytest.mark.parametrize("end", ["\n", "\r\n", "\r", "\u2028", "\x85", "\v"])
def test_nothing_an_author_typed_begins_a_line_of_a_page_file(end: str) -> None:
    assert text(f"one{end}# two") == "one&#10;# two"


def test_a_name_that_a_template_lacks_is_a_fault_of_the_publisher() -> None:
    with pytest.raises(UndefinedError):
        render("publish/checks.html", rules=[])


@pytest.mark.parametrize("value", [None, True, 1.5, ("a",)])
def test_a_value_that_is_no_text_and_no_number_is_a_fault_of_the_publisher(value: object) -> None:
    with pytest.raises(TypeError, match="neither text nor a number"):
        render("publish/checks.html", all_told="none", groups=[], monday=value)


def test_a_page_has_no_blank_line() -> None:
    html = render("publish/checks.html", all_told="none", groups=[], monday="monday.html")
    assert all(line.strip() for line in html.splitlines())
