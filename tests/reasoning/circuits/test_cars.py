from bezelbook.reasoning.circuits.cars import Car, cars_of, standing_notes, tells
from tests.reasoning.circuits import a_car
from tests.reasoning.making import record


def test_a_place_has_a_build_for_each_value_of_every_split_that_bears_on_its_wiring() -> None:
    book = a_car.book()
    van = book.vehicles[a_car.CAR]
    assert [car.build for car in cars_of(book, van, a_car.DASH, {"build": "late"})] == [
        (("build", "late"), ("audio", "base")),
        (("build", "late"), ("audio", "upgraded")),
    ]
    assert [car.build for car in cars_of(book, van, a_car.DOOR)] == [(("audio", "base"),), (("audio", "upgraded"),)]


def test_a_note_counts_for_the_one_build_that_it_was_made_on() -> None:
    car = a_car.car()
    late = a_car.seen("late", splits={"build": "late"})
    assert car.is_sure(late, "plug")
    assert not car.is_sure(late, "circuits"), "the package was left blank"
    assert car.may_be(late, "circuits")
    assert not car.may_be(a_car.seen("early", splits={"build": "early"}), "plug")


def test_a_model_year_says_the_build_where_only_one_lists_it() -> None:
    assert a_car.car().is_sure(a_car.seen("year", splits={}, year=3), "plug")


def test_a_bench_note_is_of_no_build() -> None:
    bench = record("notes", "bench", {"form": "bench", "part": "tee"})
    assert a_car.car().may_be(bench, "plug")
    assert not a_car.car().is_alone(bench, "plug")


def test_a_note_that_another_took_the_place_of_is_gone_unless_that_is_hearsay() -> None:
    old, new = a_car.metered("old", (1, "constant")), a_car.metered("new", (1, "ground"), replaces="old")
    assert [note.id for note in standing_notes(a_car.book(old, new), a_car.CAR, a_car.DASH)] == ["new"]
    told = a_car.metered("new", (1, "ground"), replaces="old", sure="told")
    assert len(standing_notes(a_car.book(old, told), a_car.CAR, a_car.DASH)) == 2


def test_notes_from_everywhere_begin_with_those_of_the_place() -> None:
    door = a_car.seen("a-door", place=a_car.DOOR)
    assert [note.id for note in a_car.car(door, a_car.seen("dash")).everywhere] == ["dash", "a-door"]


def test_what_was_worked_out_once_is_kept() -> None:
    car = a_car.car()
    asked: list[str] = []

    def ask(_: Car, of: str = "the place") -> str:
        asked.append(of)
        return f"{of} looked at {len(asked)} times"

    assert [car.once(ask, "a plug"), car.once(ask, "a plug")] == ["a plug looked at 1 times"] * 2
    assert car.once(ask) == "the place looked at 2 times"
    assert car.once(lambda _, of: f"another question of {of}", "a plug") == "another question of a plug"
    assert asked == ["a plug", "the place"]


def test_builds_are_told_apart_from_the_seat() -> None:
    van = a_car.book().vehicles[a_car.CAR]
    assert tells(van, ("build",)) == "early: Round vents; late: Square vents"
    assert tells(van, ()) == "nobody has written how to tell"
