from bezelbook.publish.removal.questions import QUESTIONS, questions
from bezelbook.publish.removal.trade_words import FirstUse
from tests.reasoning.order import trim


def test_everything_that_a_step_can_leave_blank_has_its_question_with_how_to_find_out() -> None:
    [step] = trim.order(trim.car("lid"), trim.seen("a", pieces=["lid"])).steps
    assert step.blank == tuple(QUESTIONS)
    told = FirstUse()
    assert questions(step, told) == tuple(f"{question} {look}" for question, look in QUESTIONS.values())
    assert questions(step, told) == tuple(question for question, _ in QUESTIONS.values())


def test_what_somebody_wrote_is_not_asked() -> None:
    off = {"piece": "lid", "lead_edge": "top", "pull": ["up"], "plugs": ["nothing"], "fasteners": ["clip"]}
    [step] = trim.order(trim.car("lid"), trim.seen("a", pieces=[off])).steps
    [asked] = questions(step, FirstUse())
    assert asked.startswith("Which tool?")
