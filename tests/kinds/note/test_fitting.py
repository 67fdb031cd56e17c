from typing import Any

import pytest
from pydantic import ValidationError

from bezelbook.kinds.note.fitting import Fitted, Hung, LoadResistor, ScreenSet, Took, Used
from bezelbook.kinds.record import Part


def test_nothing_has_to_be_said_of_how_it_was_fitted() -> None:
    assert not any(Fitted().model_dump().values())


def test_adapters_keep_their_order_from_the_car() -> None:
    assert Fitted.model_validate({"adapters": ["late-t", "bus-box"]}).adapters == ("late-t", "bus-box")


def test_a_resistor_with_and_without_is_said_in_the_shop_s_words() -> None:
    resistor = LoadResistor.model_validate(
        {"value": "20 ohm", "across": ["left front +", "left front -"], "with_it": "works", "without_it": "muted"}
    )
    assert (resistor.with_it, resistor.without_it, resistor.after_ten) == ("works", "muted", None)
    assert {"works", "muted"} < set(LoadResistor.model_json_schema()["properties"]["with_it"]["examples"])


def test_a_screen_is_set_out_up_and_back() -> None:
    screen = ScreenSet.model_validate({"offset": "20 mm", "height": "-5 mm", "tilt": "5 deg"})
    assert screen.height is not None
    assert screen.tilt is not None
    assert (screen.height.base, screen.tilt.base) == (-5_000_000, 5_000)


def test_speakers_hang_on_an_amplifier_in_the_words_of_whoever_wired_them() -> None:
    hung = Hung.model_validate({"amplifier": "the five", "speaker": "the ten", "count": 2, "wired": "in parallel"})
    assert (hung.wired, hung.coils, hung.bridged) == ("in parallel", None, None)


@pytest.mark.parametrize(
    ("piece", "wrong"),
    [
        (Fitted, {"adapters": "late-t"}),
        (Fitted, {"screws": [{"length": "6 mm"}]}),
        (Fitted, {"undo": "yes"}),
        (ScreenSet, {"tilt": 5}),
        (Took, {"took": "1 h"}),
        (Took, {"scope": "bench", "took": 25}),
        (Took, {"scope": "bench", "took": "25 min", "first_time": True}),
        (LoadResistor, {}),
        (LoadResistor, {"value": "20 W"}),
        (LoadResistor, {"value": "20 ohm", "across": ["left front"]}),
        (LoadResistor, {"value": "20 ohm", "fixed_to": "loom"}),
        (LoadResistor, {"value": "20 ohm", "after_ten": "131 °F"}),
        (Hung, {"amplifier": "the five"}),
        (Hung, {"speaker": "the ten"}),
        (Hung, {"amplifier": "the five", "speaker": "the ten", "wired": "both"}),
        (Hung, {"amplifier": "the five", "speaker": "the ten", "load": 2}),
        (Used, {"count": 6}),
        (Used, {"what": "ties", "count": -1}),
    ],
)
def test_a_piece_says_which_value_it_does_not_take(piece: type[Part], wrong: dict[str, Any]) -> None:
    with pytest.raises(ValidationError):
        piece.model_validate(wrong)
