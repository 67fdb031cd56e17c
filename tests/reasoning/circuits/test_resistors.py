from typing import Any

from bezelbook.reasoning.circuits.jobs import Job
from bezelbook.reasoning.circuits.resistors import Load, loads
from tests.reasoning.circuits.a_car import DOOR, SPEAKERS, after, chained, seen, tee


def load(*records: Any, job: str = "keep it and amplify") -> Load | None:
    return loads(chained(seen("one"), tee(), *records, job=Job(job)))  # type: ignore[arg-type]


def resistor(name: str = "job", without: str | None = "muted", **content: Any) -> Any:
    one = {"value": "20 ohm", "with_it": "works", "without_it": without}
    return after(name, **({"place": DOOR, "splits": {"audio": "base"}, "resistors": [one]} | content))


def test_a_radio_that_keeps_its_speakers_wants_none() -> None:
    assert load(resistor(), job="add a sub") is None
    assert loads(chained()) is None


def test_where_it_failed_without_it_is_needed_with_the_value_that_was_proven() -> None:
    assert load(resistor()) == Load("needed", SPEAKERS[:4], ("20 ohm",), ("job",))


def test_where_it_played_without_it_is_not_needed() -> None:
    assert load(resistor(without="works")) == Load("not needed", SPEAKERS[:4], (), ("job",))


def test_where_both_were_seen_it_is_argued_over() -> None:
    found = load(resistor(), resistor("other", "works"))
    assert found is not None
    assert found.wanted == "argued over"


def test_on_any_other_package_it_is_unknown() -> None:
    for note in (
        resistor(splits={"audio": "upgraded"}),
        resistor(splits={}),
        resistor(without=None),
        resistor(without="not tried"),
        resistor(comeback="It came back."),
    ):
        assert load(note) == Load("unknown", SPEAKERS[:4], (), ())
