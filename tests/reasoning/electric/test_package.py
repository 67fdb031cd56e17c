from bezelbook.reasoning.electric.package import build_at, package_axes, package_of, packages
from tests.reasoning import making
from tests.reasoning.making import HOLE, split

AUDIO = split("base", "upgraded", differs_in="audio")


def test_a_split_that_says_it_is_audio_makes_the_packages() -> None:
    car = making.vehicle(splits={"build": split("early", "late"), "sound": AUDIO})
    assert package_axes(car) == ("sound",)
    assert packages(car) == ((("sound", "base"),), (("sound", "upgraded"),))


def test_without_one_every_split_that_bears_on_the_amplifier_does() -> None:
    on_room = split("short", "long", bears_on={"subjects": ["room"]})
    on_amplifier = split("base", "upgraded", bears_on={"subjects": ["amplifier"]})
    car = making.vehicle(splits={"any": split("one", "two"), "roof": on_room, "sound": on_amplifier})
    assert package_axes(car) == ("any", "sound")
    assert packages(making.vehicle()) == ((),)


def test_a_package_is_known_when_every_split_of_it_is() -> None:
    car = making.vehicle(splits={"sound": AUDIO})
    assert package_of(car, {"sound": "base"}, None) == (("sound", "base"),)
    assert package_of(car, {}, None) is None
    assert package_of(making.vehicle(), {}, None) == ()


def test_a_model_year_may_say_it() -> None:
    values = {"base": {"years": [1, 2]}, "upgraded": {"years": [2, 3]}}
    car = making.vehicle(splits={"sound": {"values": values, "differs_in": "audio"}})
    assert package_of(car, {}, 3) == (("sound", "upgraded"),)
    assert package_of(car, {}, 2) is None


def test_a_build_says_what_was_not_looked() -> None:
    car = making.vehicle(splits={"sound": AUDIO, "roof": split("low", "high", bears_on={"subjects": ["room"]})})
    assert build_at(car, HOLE, "speakers", {}, None) == (("sound", "not looked"),)
    ears = making.vehicle(splits={"sound": split("few", "many", bears_on={"subjects": ["speakers"]})})
    assert build_at(ears, HOLE, "speakers", {"sound": "few"}, None) == (("sound", "few"),)
    assert build_at(ears, HOLE, "room", {"sound": "few"}, None) == ()
    by_year = {"values": {"few": {"years": [1]}, "many": {"years": [2]}}, "bears_on": {"places": [HOLE]}}
    at_hole = making.vehicle(splits={"sound": by_year})
    assert build_at(at_hole, HOLE, "speakers", {}, 2) == (("sound", "many"),)
    assert build_at(at_hole, "boot", "speakers", {}, 2) == ()
    assert build_at(car, HOLE, "speakers", {"sound": "base", "roof": "low"}, None) == (("sound", "base"),)
