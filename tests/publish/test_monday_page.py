from dataclasses import replace

from bezelbook.finding import Finding, Quote
from bezelbook.publish.knowledge import Knowledge
from bezelbook.publish.monday_page import MOST, monday_page
from bezelbook.publish.page_text import bodies
from bezelbook.reasoning.losses import TOO_DEEP
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.words import WEIGHTS
from tests.publish.pages_of import knowledge_about, pages_about
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
    told = [link.text for link in card.all("figcaption")]
    assert told == ["a-noterk, 2026-01-02 · fitted", "b-notenot signed, no date · fitted"]
    assert [mark.text for mark in card.all("mark")] == ["the mount"]
    assert [one.text for one in card.all("li")] == ["the mount", "nothing"]
    assert card.attributes["id"] == "question-1"
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


def test_the_likeliest_line_stands_open_and_the_others_are_folded() -> None:
    found = replace(FOUND, proposals=(Proposal("glass", "the glass"),))
    [card] = pages_about(*RECORDS, findings=[found])["monday.md"].all("article")
    lines = [line.text for line in card.all("code")]
    folded = [line.text for fold in card.all("details") for line in fold.all("code")]
    assert lines[0].startswith("bezelbook decide too-much/x both-true --differs glass --read ")
    assert lines[1:] == folded
    assert [line.split()[3] for line in folded] == ["one-stands", "one-stands", "go-and-look", "no-problem"]


def test_what_no_decision_can_be_about_names_its_files_only() -> None:
    known = replace(knowledge_about(*RECORDS, findings=[FOUND]), raised=frozenset())
    at = replace(known, places={FOUND.key: ("kb/notes/2026/a-note.yaml:3:1", "kb/notes/2026/b-note.yaml:4:1")})
    [card] = parsed(bodies([monday_page(at)])["monday.md"]).all("article")
    assert [one.text for one in card.all("code")] == ["kb/notes/2026/a-note.yaml:3", "kb/notes/2026/b-note.yaml:4"]


def test_a_record_that_is_no_note_is_quoted_by_its_name() -> None:
    found = replace(FOUND, quotes=(Quote("box", "body depth 100 mm", (), "head_unit"),))
    [card] = pages_about(*RECORDS, findings=[found])["monday.md"].all("article")
    assert [one.text for one in card.all("figcaption")] == ["boxits record"]


def test_what_a_team_has_no_time_for_is_folded() -> None:
    findings = [replace(FOUND, key=str(number)) for number in range(MOST + 3)]
    page = pages_about(*RECORDS, findings=findings)["monday.md"]
    [fold] = page.all("details", kind="folded")
    assert len(fold.all("article")) == 3
    assert fold.all("summary")[0].text == "Three questions more, each costing less"


def test_a_book_without_findings_has_an_empty_list() -> None:
    assert "Nothing clashes and nothing looks mistyped." in pages_about()["monday.md"].text


def test_every_finding_of_the_worked_example_is_on_it_once(worked: Knowledge) -> None:
    page = parsed(bodies([monday_page(worked)])["monday.md"])
    assert len(page.all("article")) == len(worked.findings) > 0
