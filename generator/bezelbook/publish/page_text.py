"""What a page file is: front matter, headings that any engine of Markdown reads, and HTML between them."""

import re
from collections.abc import Iterable, Iterator, Mapping
from html import unescape

from bezelbook.publish.shown import shown_html
from bezelbook.publish.site_file import SiteFile
from bezelbook.publish.template import text
from bezelbook.values.withheld import withheld

_TAG = re.compile(r'<h([12]) id="([a-z0-9-]+)">(.*)</h\1>')
_HEADING = re.compile(r"(##?) (.*) \{#([a-z0-9-]+)\}")


def page_file(path: str, title: str, html: str, source: str | None = None) -> SiteFile:
    """A page with this title and body, without the words that no page may carry.

    `html` has no blank line; a line of it is a whole `h1` or `h2` with its id, or belongs to an element that is closed
    before the next such line.
    """
    front = f"---\ntitle: {_quoted(withheld(title))}\nhide: [navigation, toc]\n---\n"
    return SiteFile(path, front + "\n".join(_markdown(shown_html(html))) + "\n", source)


def headings_of(markdown: str) -> str:
    """The headings of a page file, one to a paragraph, for an engine that gets the rest as HTML."""
    return "\n\n".join(line for line in markdown.splitlines() if _HEADING.fullmatch(line))


def body_of(markdown: str) -> str:
    """The body of a page file without its front matter as HTML, headings and all."""
    return "\n".join(_tag(line) for line in markdown.splitlines() if line)


def bodies(files: Iterable[SiteFile]) -> Mapping[str, str]:
    """The whole body of each page among these files as HTML, by path."""
    return {file.path: body_of(file.text.split("\n---\n", 1)[1]) for file in files if file.path.endswith(".md")}


def fault_page(fault: str) -> SiteFile:
    """A page in place of the home page, for somebody who is mending a book while it is shown."""
    title = "The book cannot be shown"
    return page_file("index.md", title, f'<h1 id="top">{title}</h1>\n<p>{text(fault)}</p>')


def _tag(line: str) -> str:
    heading = _HEADING.fullmatch(line)
    if heading is None:
        return line
    level = len(heading[1])
    return f'<h{level} id="{heading[3]}">{heading[2]}</h{level}>'


def _markdown(html: str) -> Iterator[str]:
    for line in html.splitlines():
        tag = _TAG.fullmatch(line)
        if tag:
            yield f"\n{'#' * int(tag[1])} {_plain(unescape(tag[3]))} {{#{tag[2]}}}\n"
        else:
            yield re.sub("^#", "&#35;", line)


def _plain(words: str) -> str:
    """Words that say the same as Markdown and as HTML: any mark that either could take for its own is spelled out.

    Blanks of any sort are one blank, and characters that cannot be seen are left out.
    """
    seen = (one for one in " ".join(words.split()) if one.isprintable())
    return "".join(one if one.isalnum() or one in " ,:;" else f"&#{ord(one)};" for one in seen)


def _quoted(title: str) -> str:
    """A title as YAML has it in double quotes."""
    kept = "".join(one if one.isprintable() else f"\\U{ord(one):08x}" for one in re.sub(r'(["\\])', r"\\\1", title))
    return f'"{kept}"'
