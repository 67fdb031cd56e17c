import pytest

from bezelbook.reasoning.circuits.said import circuit_said, functions_said, says_nothing, strong
from tests.reasoning.circuits import a_car


@pytest.mark.parametrize(
    ("words", "circuit"),
    [
        ("constant", "constant"),
        ("Left Front +", "left front +"),
        ("left front −", "left front -"),
        ("left front –", "left front -"),
        ("ACC", "accessory"),
        ("acc.", "accessory"),
        ("B+", "constant"),
        ("parking brake", "park brake"),
        ("switched", "accessory"),
        ("ignition hot", "accessory"),
        ("key on", "accessory"),
        ("memory", "constant"),
        ("battery", "constant"),
        ("earth", "ground"),
        ("remote", "amplifier turn-on"),
        ("REM", "amplifier turn-on"),
        ("amp turn-on", "amplifier turn-on"),
        ("amp turn on", "amplifier turn-on"),
        ("antenna feed", "aerial feed"),
        ("lights", "illumination"),
        ("handbrake", "park brake"),
        ("mic", "microphone"),
        ("some brown wire", None),
        ("nothing", None),
    ],
)
def test_a_circuit_is_known_by_its_name_and_by_what_the_trade_calls_it(words: str, circuit: str | None) -> None:
    assert circuit_said(words) == circuit


def test_nothing_is_said_in_more_words_than_one() -> None:
    assert says_nothing("nothing with the key on")
    assert not says_nothing("constant")
    assert not says_nothing("?")


@pytest.mark.parametrize(
    ("words", "functions"),
    [
        ("steering wheel buttons", ("wheel buttons",)),
        ("wheel controls", ("wheel buttons",)),
        ("reverse camera", ("camera",)),
        ("park sensors", ("parking sensors",)),
        ("door chime", ("chimes",)),
        ("chime", ("chimes",)),
        ("indicators", ("indicator sound",)),
        ("indicator click", ("indicator sound",)),
        ("hazard", ("hazard switch",)),
        ("mic", ("microphone",)),
        ("factory amp", ("factory amplifier",)),
        ("usb", ("USB",)),
        ("hazard switch by hand", ("hazard switch",)),
        ("chimes and camera", ("camera", "chimes")),
        ("two of the vents", ()),
    ],
)
def test_functions_are_found_in_what_somebody_wrote(words: str, functions: tuple[str, ...]) -> None:
    assert functions_said(words) == functions


def test_hearsay_and_a_job_that_came_back_prove_nothing() -> None:
    assert strong(a_car.metered("m", (1, "constant")))
    assert not strong(a_car.metered("m", (1, "constant"), sure="told"))
    assert strong(a_car.tried("t"))
    assert not strong(a_car.tried("t", sure="eyeballed"))
    assert strong(a_car.after("a"))
    assert not strong(a_car.after("a", comeback="No sound."))
