from bezelbook.publish.choices import Choice, choices_of
from bezelbook.publish.opening import Opening
from tests.reasoning import making


def test_every_build_as_far_as_known_comes_with_every_usual_mount(dash: Opening) -> None:
    assert [choice.key for choice in choices_of(dash.room)] == [
        "|",
        "|flush-kit",
        "build=early|",
        "build=early|flush-kit",
        "build=late|",
        "build=late|flush-kit",
    ]


def test_a_choice_says_what_it_knows() -> None:
    choice = Choice((("build", "late"),), ("kit", "ring"))
    assert choice.known == {"build": "late"}
    assert choice.key == "build=late|kit+ring"
    assert Choice((), ()).key == "|none"


def test_a_split_that_does_not_bear_on_the_room_makes_no_choices() -> None:
    audio = making.split("base", "upgraded", bears_on={"subjects": ["amplifier"]})
    book = making.book(making.vehicle(splits={"audio": audio}))
    assert [choice.key for choice in choices_of(making.place(book))] == ["|", "|none"]
