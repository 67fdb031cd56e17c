from typing import Any

from bezelbook.kinds.note.record import AnyNote, Metered
from bezelbook.reasoning.electric.level import Level, loudest
from tests.reasoning import making
from tests.reasoning.electric.test_resistor_rule import AUDIO, UPGRADED
from tests.reasoning.making import CAR, HOLE

CAR_RECORD = making.vehicle(splits={"sound": AUDIO})
PACKAGE = (("sound", "upgraded"),)


def metered(named: str, *levels: str | None, **content: Any) -> Metered:
    outputs = [{"channel": f"c-{number}"} | ({"level": level} if level else {}) for number, level in enumerate(levels)]
    said = {"form": "metered", "vehicle": CAR, "place": HOLE, "plug": "p", "cavities": [{"cavity": 1, "carries": "x"}]}
    made: Metered = making.record("notes", named, said | {"channels": outputs, "splits": UPGRADED} | content)
    return made


def found(*notes: AnyNote) -> tuple[str, str] | None:
    level = loudest(making.book(CAR_RECORD, *notes), CAR_RECORD, PACKAGE)
    return (level.note, level.reads.typed) if level else None


def test_the_highest_reading_of_any_output_counts_with_its_plus_minus() -> None:
    assert found(metered("a", "7 V", "9 V"), metered("b", "8 V", None)) == ("a", "9 V")
    assert found(metered("a", "9 V"), metered("b", "8.5 ± 1 V")) == ("b", "8.5 ± 1 V")


def test_notes_of_another_form_are_passed_over() -> None:
    assert found(metered("a", "9 V"), making.tried("t")) == ("a", "9 V")


def test_what_nobody_metered_is_not_known() -> None:
    assert found() is None
    assert found(metered("a", None)) is None


def test_another_package_and_a_blank_one_tell_nothing() -> None:
    assert found(metered("a", "9 V", splits={"sound": "base"})) is None
    assert found(metered("a", "9 V", splits={})) is None


def test_a_year_tells_the_package_where_only_one_lists_it() -> None:
    values = {"base": {"years": [1, 2]}, "upgraded": {"years": [3, 4]}}
    car = making.vehicle(splits={"sound": {"values": values, "differs_in": "audio"}})
    note = metered("a", "9 V", splits={}, year=3)
    assert loudest(making.book(car, note), car, PACKAGE) == Level(note.channels[0].level, "a")  # type: ignore[arg-type]


def test_a_note_whose_place_another_took_tells_nothing() -> None:
    assert found(metered("a", "9 V"), metered("b", "7 V", replaces="a")) == ("b", "7 V")
