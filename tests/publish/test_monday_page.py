from dataclasses import replace

from bezelbook.finding import Finding, Quote
from bezelbook.publish.knowledge import Knowledge
from bezelbook.publish.monday_page import monday_page
from bezelbook.publish.page_text import bodies
from bezelbook.reasoning.losses import TOO_DEEP
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.words import WEIGHTS
from tests.publish.pages_of import pages_about
from tests.publish.reading_html import parsed
from tests.reasoning import making

FOUND = Finding(
    rule="too-much",
    key="too-much/x",
    weight="stop",
    says="there is too much of it",
    quotes=(Quote("a-note", "box: goes in"), Quote("b-note", "box: does not")),
    difference="the mount",
    proposals=(Proposal("mount", "the mount: a-note does not say"), Proposal("build", "the build")),
    loss=TOO_DEEP,
    question="What differs?",
    answers=("the mount", "nothing"),
    vehicle=making.CAR,
    place=making.HOLE,
)
RECORDS = (making.unit(), making.tried(author="rk", date="2026-01-02"), making.tried("b-note", verdict="does not"))


def test_a_card_puts_two_quotes_side_by_side_with_the_one_difference_and_the_question() -> None:
    page = pages_about(*RECORDS, findings=[FOUND])["monday.md"]
    [card] = page.all("article")
    assert [quote.text for quote in card.all("blockquote")] == ["box: goes in", "box: does not"]
    assert [link.text for link in card.all("figcaption")] == ["rk, 2026-01-02", "not signed, no date"]
    assert [mark.text for mark in card.all("mark")] == ["the mount"]
    assert [one.text for one in card.all("li")] == ["the mount", "nothing"]
    for words in (
        "There is too much of it",
        "What differs?",
        "the mount: a-note does not say; or the build",
        TOO_DEEP.words,
        "Too much of it",
    ):
        assert words in card.text


def test_what_stops_a_job_comes_first_and_what_to_tidy_last() -> None:
    findings = [replace(FOUND, weight=weight, key=weight) for weight in reversed(WEIGHTS)]
    page = pages_about(*RECORDS, findings=findings)["monday.md"]
    assert [heading.text for heading in page.all("h2")] == ["Stop", "Look first", "Tidy up"]


def test_a_finding_leads_to_the_place_it_is_about() -> None:
    places = {"": "on the bench", "gone": "gone, dash centre", making.CAR: "small van, dash centre"}
    for vehicle, words in places.items():
        page = pages_about(*RECORDS, findings=[replace(FOUND, vehicle=vehicle)])["monday.md"]
        [where] = page.all("p", kind="where")
        assert where.text == words
        assert bool(where.all("a")) == (vehicle == making.CAR)
    unlisted = pages_about(*RECORDS, findings=[replace(FOUND, place="unheard-of")])["monday.md"]
    assert unlisted.all("p", kind="where")[0].all("a")[0].attributes["href"] == f"vehicles/{making.CAR}.html"


def test_a_book_without_findings_has_an_empty_list() -> None:
    assert "Nothing clashes and nothing looks mistyped." in pages_about()["monday.md"].text


def test_every_finding_of_the_worked_example_is_on_it_once(worked: Knowledge) -> None:
    page = parsed(bodies([monday_page(worked)])["monday.md"])
    assert len(page.all("article")) == len(worked.findings) > 0
