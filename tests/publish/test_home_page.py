from bezelbook.publish.home_page import shortest_name
from bezelbook.publish.knowledge import Knowledge
from bezelbook.publish.page_text import bodies
from bezelbook.publish.site_file import SiteFile
from bezelbook.reasoning.words import read_words
from tests.publish.pages_of import pages_about
from tests.publish.reading_html import parsed
from tests.reasoning import making


def test_there_is_one_box() -> None:
    page = pages_about()["index.md"]
    [box] = page.all("form")
    assert [field.attributes["id"] for field in box.all("input")] == ["words"]
    assert [label.attributes["for"] for label in box.all("label")] == ["words"]


def test_it_tries_examples_in_the_books_own_words(demo: Knowledge, demo_files: tuple[SiteFile, ...]) -> None:
    page = parsed(bodies(demo_files)["index.md"])
    [examples] = page.all("ul", kind="examples")
    asked = [link.text for link in examples.all("a")]
    assert asked
    assert all(read_words(demo.book, words).question for words in asked)


def test_it_says_which_files_could_not_be_read() -> None:
    complaint = "kb/notes/2026/x.yaml:3:1: <this> is wrong. Mend it."
    page = pages_about(left_out=(complaint,))["index.md"]
    [alert] = page.all("div", role="alert")
    assert complaint in alert.text
    assert pages_about()["index.md"].all("div", role="alert") == []


def test_it_shows_what_the_shop_says_of_itself_and_what_there_is() -> None:
    page = pages_about(making.shop(about="An invented shop."), making.unit(), making.tried())["index.md"]
    assert "An invented shop." in page.text
    assert "1 vehicle, 1 head unit, 0 mounts, 1 note; the newest is of 2026-03-05." in page.text
    assert "No questions on the Monday list" in page.text


def test_an_empty_book_has_no_examples() -> None:
    assert pages_about(making.vehicle(places={}))["index.md"].all("ul", kind="examples") == []


def test_the_shortest_name_is_the_one_that_people_type() -> None:
    assert shortest_name("compact hatch, generation 2", ("hatch 2", "hatch two")) == "hatch 2"
