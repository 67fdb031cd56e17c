from bezelbook.reasoning.builds import Build
from bezelbook.reasoning.circuits.builds_said import builds_said
from tests.reasoning.circuits.a_car import CAR, book


def said(*builds: tuple[str, str]) -> str:
    made: list[Build] = [(("build", build), ("audio", audio)) for build, audio in builds]
    return builds_said(book().vehicles[CAR], made)


def test_what_makes_no_difference_is_left_out() -> None:
    assert said(("late", "base"), ("late", "upgraded")) == "late"
    assert said(("early", "upgraded"), ("late", "upgraded")) == "upgraded"
    assert said(("early", "base"), ("early", "upgraded"), ("late", "base"), ("late", "upgraded")) == ""
    assert said() == ""


def test_what_makes_a_difference_is_said_in_full() -> None:
    assert said(("late", "base")) == "late, base"
    assert said(("early", "base"), ("late", "upgraded")) == "early, base or late, upgraded"
