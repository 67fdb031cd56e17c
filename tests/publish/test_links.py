import pytest

from bezelbook.publish.links import BrokenLinksError, check_links
from bezelbook.publish.page_text import page_file
from bezelbook.publish.site_file import SiteFile

GOOD = (
    '<h1 id="top">a</h1>\n<p><a href="sub/b.html#two">b</a></p>\n'
    '<p><a href="#top">up</a> <a href="index.html#ask=van%20165">ask</a></p>'
)


def files(home: str) -> list[SiteFile]:
    other = '<h1 id="two">b</h1>\n<p><a href="../index.html">home</a></p>'
    return [page_file("index.md", "a", home), page_file("sub/b.md", "b", other), SiteFile("data/book.js", "x")]


def test_links_that_lead_somewhere_are_let_pass() -> None:
    check_links(files(GOOD))


@pytest.mark.parametrize(
    ("html", "said"),
    [
        ('<p><a href="nowhere.html">x</a></p>', "index.md points at nowhere.html, and there is no such page"),
        ('<p><a href="sub/b.html#three">x</a></p>', "points at sub/b.html#three, and there is no such place"),
        ('<p><a href="https://outside.example/">x</a></p>', "there is no such page"),
        ('<p><img src="//outside.example/a.png"></p>', "there is no such page"),
        ('<form action="away.html"></form>', "there is no such page"),
        ('<p><a href="sub/b.html#ask=165">x</a></p>', "no such place"),
        ('<p id="a"></p><p id="a"></p>', "index.md has a twice"),
    ],
)
def test_a_link_that_leads_nowhere_is_named(html: str, said: str) -> None:
    with pytest.raises(BrokenLinksError, match=said):
        check_links(files(html))
