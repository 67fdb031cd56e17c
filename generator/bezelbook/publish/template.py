"""How a page's HTML comes from its template: everything that a book says arrives as text, never as markup."""

from functools import lru_cache

from jinja2 import Environment, PackageLoader, PrefixLoader, StrictUndefined, Undefined
from markupsafe import Markup, escape


def render(template: str, **values: object) -> str:
    """The HTML of a template, `publish/<name>.html` or `kinds/<kind>/page.html`, filled in; blank lines are left out.

    A name that the template needs and that is not given raises, as does a value that is no text and no number.
    """
    html = _environment().get_template(template).render(values)
    return "\n".join(line.strip() for line in html.splitlines() if line.strip())


@lru_cache(maxsize=1)
def _environment() -> Environment:
    folders = {
        "kinds": PackageLoader("bezelbook", "kinds"),
        "publish": PackageLoader("bezelbook.publish", "templates"),
    }
    environment = Environment(
        loader=PrefixLoader(folders),
        autoescape=True,
        undefined=StrictUndefined,
        finalize=_finalize,
        trim_blocks=True,
        lstrip_blocks=True,
        keep_trailing_newline=True,  # what is included ends its last line
    )
    environment.filters["capitalize_first"] = _capitalize_first
    return environment


def _capitalize_first(words: str) -> str:
    """A sentence that begins as sentences do, the rest of it as it was."""
    return words[:1].upper() + words[1:]


def _finalize(value: object) -> object:
    """Text on one line, so that nothing an author typed can begin a line of a page file."""
    if isinstance(value, Markup | Undefined):
        return value
    if isinstance(value, int) and not isinstance(value, bool):
        return value
    if isinstance(value, str):
        return text(value)
    raise TypeError(f"{value!r} is neither text nor a number")


def text(words: str) -> Markup:
    """Words as HTML text or as an attribute's value, line breaks written out."""
    return Markup("&#10;").join(escape(line) for line in words.splitlines())
