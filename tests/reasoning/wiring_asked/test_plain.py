from jsonschema import Draft202012Validator
from pydantic import TypeAdapter

from bezelbook.reasoning.wiring_asked.answer import wiring_answer
from bezelbook.reasoning.wiring_asked.plain import PlainWiring
from bezelbook.reasoning.wiring_asked.question import JOBS_ASKED, WiringQuestion
from tests.reasoning.circuits.a_car import CAR, DASH, DOOR, after, book, module, plug_in, seen, tee


def test_every_answer_is_as_its_schema_says() -> None:
    schema = Draft202012Validator(TypeAdapter(PlainWiring).json_schema())
    base = book(seen("one"), plug_in(), module(), tee(), after("two", kept=["camera"], adapters=["tee"]))
    for job in JOBS_ASKED:
        found = wiring_answer(base, WiringQuestion(CAR, (DOOR if job == "speaker lead" else DASH,), (job,))).plain()
        assert found["answers"]
        schema.validate(found)
