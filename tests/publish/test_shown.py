"""Every text of pages and of plain data is withheld where it must be; what names a thing is left alone."""

import pytest

from bezelbook.publish.page_text import page_file
from bezelbook.publish.pages import site_files
from bezelbook.publish.shown import shown, shown_html
from tests.publish import hostile
from tests.publish.pages_of import knowledge_about

SECRETS = ("AB12 CDE", "555-123-4567", "25 Nm", "JH4KA7561PC008269", "Mr Nobody")


def test_texts_at_any_depth_and_nothing_else() -> None:
    data = {"key": "AB12 CDE", "says": ["AB12 CDE", ("25 Nm", 3, None)], "ok": True}
    assert shown(data) == {
        "key": "AB12 CDE",
        "says": ["withheld: a plate", ["withheld: a tightening figure", 3, None]],
        "ok": True,
    }


@pytest.mark.parametrize("name", ["remove-airbag-lamp", "parts/remove-airbag-lamp.html#note-2", "van-2"])
def test_a_record_and_an_address_keep_their_names(name: str) -> None:
    assert shown([name]) == [name]
    assert shown_html(f'<a href="{name}">x</a>') == f'<a href="{name}">x</a>'


def test_a_phone_number_is_no_name() -> None:
    assert shown(["555-123-4567"]) == ["withheld: a phone number"]


def test_markup_stays_and_its_words_do_not() -> None:
    html = '<p id="x" title="AB12 CDE">it&#39;s AB12 CDE &amp; a &lt;b&gt;</p>\n<h2 id="y">25 Nm</h2>'
    assert shown_html(html) == (
        '<p id="x" title="withheld: a plate">it&#39;s withheld: a plate &amp; a &lt;b&gt;</p>\n'
        '<h2 id="y">withheld: a tightening figure</h2>'
    )


def test_what_is_broken_over_lines_by_its_author_is_seen_and_what_is_broken_by_us_keeps_its_lines() -> None:
    assert shown_html("<p>AB12&#32;CDE&#10;b\nc</p>") == "<p>withheld: a plate&#10;b\nc</p>"


def test_a_title_is_a_text_as_well() -> None:
    assert "AB12" not in page_file("x.md", "AB12 CDE", '<h1 id="top">AB12 CDE</h1>').text


@pytest.mark.parametrize("secret", SECRETS)
def test_no_file_of_the_site_carries_it_wherever_an_author_typed_it(
    monkeypatch: pytest.MonkeyPatch, secret: str
) -> None:
    """Pages hold what the search is made of, and scripts hold what the counter in the browser says."""
    monkeypatch.setattr(hostile, "TEXTS", (f"so {secret} it was",))
    files = site_files(knowledge_about(*hostile.records()))
    assert [file.path for file in files if secret in file.text] == []
    assert sum("withheld: " in file.text for file in files) > 10
