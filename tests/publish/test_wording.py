import pytest

from bezelbook.publish.choices import Choice
from bezelbook.publish.opening import OPEN, Opening
from bezelbook.publish.wording import VERDICTS, ask_words, build_words, counted, short_reason, sure_words
from bezelbook.values.words import ANSWER_VERDICTS


def test_every_verdict_has_its_words_on_a_page() -> None:
    assert set(VERDICTS) == set(ANSWER_VERDICTS)
    assert all(words.lower().startswith(verdict) for verdict, words in VERDICTS.items())


@pytest.mark.parametrize(
    ("number", "said"), [(0, "no jobs"), (1, "one job"), (2, "two jobs"), (12, "twelve jobs"), (13, "13 jobs")]
)
def test_jobs_are_counted_as_people_count(number: int, said: str) -> None:
    assert counted(number, "job") == said


def test_sureness_names_its_jobs_where_there_are_any() -> None:
    assert sure_words("fitted", 2) == "fitted · two jobs"
    assert sure_words("worked out", 0) == "worked out"


def test_the_few_words_under_a_verdict_are_its_condition_or_how_sure(dash: Opening) -> None:
    late = Choice((("build", "late"),), None)
    assert short_reason(dash.answer(late, "two-high-a")) == "fitted · one job"
    assert short_reason(dash.answer(OPEN, "two-high-a")) == "the build is late"
    assert short_reason(dash.answer(OPEN, "two-high-deep")) == ""


def test_words_that_ask_are_the_books_own() -> None:
    choice = Choice((("build", "late"),), ("flush-kit",))
    assert ask_words("compact-hatch-2", "centre-dash", choice, ["two-high-a"]) == (
        "compact hatch 2 centre dash late flush kit two high a"
    )
    assert build_words((("build", "late"), ("heater", "rear"))) == "late, rear"
