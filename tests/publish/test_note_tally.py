from bezelbook.publish.note_tally import tally
from bezelbook.publish.notes import Said, said
from tests.publish.pages_of import pages_about
from tests.reasoning import making

BOOK = making.book(making.unit())


def plain(notes: list[Said]) -> str:
    """The line with its unbreakable blanks as plain ones."""
    return tally(notes).replace("\N{NO-BREAK SPACE}", " ")


def test_it_says_how_many_how_new_and_what_they_say() -> None:
    notes = [
        said(BOOK, making.tried("a", date="2026-02-03"), "strong"),
        said(BOOK, making.tried("b", date="2026-03-04"), "strong"),
        said(BOOK, making.measured("m", making.reading("width", "184 mm")), "strong"),
    ]
    assert plain(notes) == "3 notes, the newest of 2026-03-04: 2 × goes in, 1 × measured"


def test_what_carries_no_answer_is_not_counted_with_what_does() -> None:
    notes = [said(BOOK, making.tried("a"), stands) for stands in ("strong", "weak", "aside")]
    assert plain(notes).endswith(": 1 × goes in, 1 × only quoted, 1 × set aside")


def test_one_without_a_date_says_so() -> None:
    assert plain([said(BOOK, making.tried("a", date=None))]) == "1 note, without a date: 1 × goes in"


def test_a_place_folds_its_notes_and_nothing_that_they_answer() -> None:
    page = pages_about(making.vehicle(), making.unit(), making.tried())[f"vehicles/{making.CAR}.md"]
    [folded] = page.all("details", kind="folded")
    assert len(folded.all("figure", kind="said")) == 1
    assert folded.all("table", kind="verdicts") == folded.all("figure", kind="strip") == []
    assert len(page.all("table", kind="verdicts")) == 1
    assert len(page.all("figure", kind="strip")) >= 1
