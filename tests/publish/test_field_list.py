"""Every field of a kind is told: whether it must be there, what it means, what it takes and what is inside it."""

from collections.abc import Iterable, Iterator

import pytest

from bezelbook.kinds import KINDS, Kind
from bezelbook.publish.field_list import Line, forms_of


def lines(folder: str, form: str = "") -> dict[str, Line]:
    [found] = [one for one in forms_of(KINDS[folder]) if one.name == form]
    return {line.name: line for line in found.lines}


def every(found: Iterable[Line]) -> Iterator[Line]:
    for line in found:
        yield line
        yield from every(line.inside)


def test_a_kind_of_several_forms_tells_each() -> None:
    assert [form.name for form in forms_of(KINDS["notes"])] == [
        "tried",
        "measured",
        "seen",
        "metered",
        "bench",
        "after",
    ]
    assert [form.name for form in forms_of(KINDS["speakers"])] == [""]


def test_what_must_be_there_stands_first() -> None:
    found = list(lines("notes", "tried").values())
    must = [line.name for line in found if line.must]
    assert must == [line.name for line in found][: len(must)]
    assert set(must) == {"form", "vehicle", "place", "what", "verdict", "sure"}


def test_the_words_that_a_field_takes_are_listed() -> None:
    assert lines("notes", "tried")["verdict"].takes == "goes in · goes in if · does not · not tried"


def test_a_quantity_is_shown_as_somebody_would_write_it() -> None:
    assert lines("notes", "measured")["readings"].inside[1].takes == "such as 165 mm, 6 1/2 in, 150 ± 3 mm"
    assert lines("mounts")["proud"].takes == "such as flush, 165 mm, 6 1/2 in, 150 ± 3 mm, 96 mm caliper"


def test_a_field_that_names_a_record_says_of_which_kind_and_whether_words_will_do() -> None:
    assert lines("notes", "tried")["mounts"].takes == "none · the file name of a record: mount · or words"
    assert lines("notes", "bench")["part"].takes.startswith("the file name of a record: head unit or speaker or ")


def test_words_that_may_be_others_are_only_such_as() -> None:
    assert lines("notes", "after")["kept"].takes.startswith("such as wheel buttons, ")


def test_the_fields_of_a_thing_on_a_list_stand_inside_it() -> None:
    pieces = lines("notes", "seen")["pieces"]
    assert [line.name for line in pieces.inside][:2] == ["piece", "first"]
    [fasteners] = [line for line in pieces.inside if line.name == "fasteners"]
    assert "count" in {line.name for line in fasteners.inside}


@pytest.mark.parametrize("kind", KINDS.values(), ids=lambda kind: kind.name)
def test_every_field_says_what_it_is_and_no_file_names_itself(kind: Kind) -> None:
    for form in forms_of(kind):
        found = list(every(form.lines))
        assert all(line.says for line in found)
        assert "id" not in {line.name for line in form.lines}


def test_a_map_over_all_circuits_is_told_once_and_not_circuit_by_circuit() -> None:
    circuits = lines("adapters")["circuits"]
    assert circuits.takes.startswith("for each of constant, accessory, ")
    assert "passes" in circuits.takes
    assert {line.name for line in circuits.inside} >= {"does", "between"}
    assert len(list(every(circuits.inside))) < 20
