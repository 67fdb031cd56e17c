"""What nobody wrote of a piece, as plain questions with how to find out on the car."""

from collections.abc import Mapping

from bezelbook.publish.removal.trade_words import FirstUse
from bezelbook.reasoning.order.step import Step

# A question and how to find out, by the words in which a step names its blanks. Common practice, no source.
QUESTIONS: Mapping[str, tuple[str, str]] = {
    "what holds it": (
        "What holds it?",
        "Go along every edge with a lamp, lift every cap and mat, look for screws first.",
    ),
    "which edge to start at": (
        "Which edge do you start at?",
        "Press along each with a thumb, and start where it gives.",
    ),
    "which way it comes": ("Which way does it come?", "Draw it out by a finger's width, then feel where it is free."),
    "which tool": (
        "Which tool?",
        "Look at the heads of its screws; for clips take a flat pry of plastic, never steel.",
    ),
    "what to unplug": ("Is anything plugged into it?", "Look behind it with a lamp as soon as it gives."),
}


def questions(step: Step, told: FirstUse) -> tuple[str, ...]:
    """A question for everything that nobody wrote, with how to find out where a page asks it for the first time."""
    asked = (QUESTIONS[words] for words in step.blank)
    return tuple(f"{question} {look}" if told.once(question) else question for question, look in asked)
