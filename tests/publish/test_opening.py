from bezelbook.publish.choices import Choice
from bezelbook.publish.knowledge import Knowledge
from bezelbook.publish.opening import OPEN, Opening, openings_of
from bezelbook.reasoning.answer import answer
from bezelbook.reasoning.question import Question

LATE = Choice((("build", "late"),), None)


def test_there_is_one_for_each_place_that_takes_a_box(demo: Knowledge) -> None:
    named = [(opening.vehicle, opening.id) for opening in openings_of(demo.book)]
    assert len(named) == len(set(named))
    assert all(demo.book.vehicles[vehicle].places[place] for vehicle, place in named)


def test_it_is_called_what_the_shop_calls_it(dash: Opening) -> None:
    assert (dash.vehicle, dash.id, dash.name) == ("compact-hatch-2", "centre-dash", "centre dash")
    assert dash.record.kind == "plain opening"


def test_its_answers_are_those_of_the_book(worked: Knowledge, dash: Opening) -> None:
    for unit in worked.book.head_units:
        question = Question(dash.vehicle, dash.id, {"build": "late"}, unit=unit)
        assert dash.answer(LATE, unit).plain() == answer(worked.book, question).plain()
    assert dash.answer(LATE, "two-high-a") is dash.answer(LATE, "two-high-a")


def test_a_choice_leaves_open_some_of_all_the_settings(dash: Opening) -> None:
    assert dash.numbers(dash.asked(OPEN)) == (0, 1)
    [late] = dash.numbers(dash.asked(LATE))
    assert dict(dash.everything.settings[late].build) == {"build": "late"}
    assert len(dash.corners["accounts"][0]["settings"]) == 2
