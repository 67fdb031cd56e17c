"""The cases that Python and a browser both read, and what a question is in them."""

import json
from pathlib import Path
from typing import Any

from bezelbook.reasoning.question import Question
from bezelbook.reasoning.speakers.question import SpeakerQuestion
from bezelbook.values.quantity import read_quantity

HERE = Path(__file__).parent
HATCH, DASH = "compact-hatch-2", "centre-dash"


def cases(name: str) -> list[Any]:
    """The cases of one file."""
    whole: dict[str, Any] = json.loads((HERE / f"{name}.json").read_text(encoding="utf-8"))
    return list(whole["cases"])


def question(asks: dict[str, Any]) -> Question:
    """What a case asks of the dash of the worked example."""
    sizes = {need: read_quantity(typed, "length") for need, typed in asks["sizes"].items()}
    return Question(HATCH, DASH, asks["splits"], sizes=sizes)


def plain_speaker_question(question: SpeakerQuestion) -> dict[str, Any]:
    """A question about a speaker as the browser has it."""
    return {
        "vehicle": question.vehicle,
        "place": question.place,
        "splits": dict(question.splits),
        "year": question.year,
        "mounts": None if question.mounts is None else list(question.mounts),
        "tabs": question.tabs,
        "glass": question.glass,
        "speaker": question.speaker,
        "sizes": {
            of: {"base": size.base, "give": size.give, "typed": size.typed} for of, size in question.sizes.items()
        },
    }


def plain_question(question: Question) -> dict[str, Any]:
    """A question as the browser has it."""
    return {
        "vehicle": question.vehicle,
        "place": question.place,
        "splits": dict(question.splits),
        "year": question.year,
        "mounts": None if question.mounts is None else list(question.mounts),
        "unit": question.unit,
        "sizes": {
            need: {"base": size.base, "give": size.give, "typed": size.typed} for need, size in question.sizes.items()
        },
    }
