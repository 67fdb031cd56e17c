from typing import Any

from bezelbook.reasoning.circuits.jobs import Job
from bezelbook.reasoning.circuits.resistors import Load, loads
from tests.reasoning.circuits.a_car import CAR, DOOR, SPEAKERS, after, chained, seen, tee, vehicle


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
    assert found == Load("argued over", SPEAKERS[:4], ("20 ohm",), ("job", "other"))


def test_on_any_other_package_it_is_unknown() -> None:
    for note in (
        resistor(splits={"audio": "upgraded"}),
        resistor(splits={}),
        resistor(without=None),
        resistor(without="not tried"),
        resistor(comeback="It came back."),
    ):
        assert load(note) == Load("unknown", SPEAKERS[:4], (), ())


def test_a_package_is_told_by_its_year_and_by_whatever_split_is_of_the_audio() -> None:
    sides = {"base": {"years": [1, 2]}, "upgraded": {"years": [3, 4]}}
    bears = {"subjects": ["circuits", "amplifier"]}
    by_name = vehicle(splits={"audio": {"values": sides, "bears_on": bears}})
    sound = {"values": {"few": {}, "many": {}}, "bears_on": bears, "differs_in": "audio"}
    both = vehicle(splits={"audio": {"values": sides, "bears_on": bears}, "sound": sound})
    keep = Job("keep it and amplify")

    def wanted(van: Any, note: Any, **build: str) -> str | None:
        found = loads(chained(van, seen("one", splits={}), tee(made_for=[CAR]), note, job=keep, **build))
        return found.wanted if found else None

    assert wanted(by_name, resistor(splits={}, year=1)) == "needed"
    assert wanted(by_name, resistor(splits={}, year=3)) == "unknown"
    assert wanted(both, resistor(splits={"audio": "base", "sound": "few"}), sound="few") == "needed"
    assert wanted(both, resistor(splits={"audio": "base"}), sound="few") == "unknown"
    assert wanted(both, resistor(splits={"sound": "few"}), sound="few") == "unknown"
