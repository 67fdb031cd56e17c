"""Whatever a valid record holds, its page is built."""

from itertools import product
from typing import Any

import pytest

from bezelbook.kinds.record import Record
from tests.publish.pages_of import pages_about
from tests.reasoning import making
from tests.reasoning.making import CAR, HOLE

OHMS = (None, "0 ohm", "0.0001 ohm", "4 ± 5 ohm", "3.7 ± 0.5 ohm", "999999 kohm")
WATTS = ("0 W", "0.0001 W", "1 W", "9999 kW")


def odd(folder: str, **content: Any) -> Record:
    said = {key: value for key, value in content.items() if value is not None}
    made: Record = making.record(folder, "odd", {"name": "Odd"} | said)
    return made


@pytest.mark.parametrize(("ohms", "coils"), [*product(OHMS, (None, 1, 4))])
def test_a_speaker_and_the_amplifiers_that_may_drive_it(ohms: str | None, coils: int | None) -> None:
    box = {"capacitor": "0 µF"} if coils else {"capacitor": "0.001 nF"}
    speaker = odd(
        "speakers",
        speaker_kind="tweeter",
        nominal="1 in",
        impedance=ohms,
        voice_coils=coils,
        filter_supplied=box,
        filter_needed={"corner": "0 Hz"},
    )
    amplifier = odd("amplifiers", origin="added", least_load=ohms, least_load_bridged=ohms)
    pages = pages_about(speaker, amplifier)
    assert "What load it is" in pages["speakers/odd.md"].text
    assert "What it may drive" in pages["amplifiers/odd.md"].text


@pytest.mark.parametrize(("watts", "channels"), [*product(WATTS, (None, 0, 1, 99))])
def test_an_amplifier_of_any_power(watts: str, channels: int | None) -> None:
    power = [{"watts": watts, "load": "0 ohm"}, {"watts": watts, "load": "4 ohm", "bridged": "bridged"}]
    page = pages_about(odd("amplifiers", origin="added", channels=channels, power=power, largest_wire="40 AWG"))
    assert "Which wire, which fuse" in page["amplifiers/odd.md"].text


@pytest.mark.parametrize(("ohms", "watts"), [*product(OHMS[1:], (None, *WATTS))])
def test_a_resistor_of_any_value(ohms: str, watts: str | None) -> None:
    assert pages_about(odd("supplies", form="resistor", value=ohms, rated=watts))["supplies/odd.md"].text


@pytest.mark.parametrize("ohms", OHMS)
def test_a_car_with_any_factory_speaker(ohms: str | None) -> None:
    speaker = {"impedance": ohms, "dc_resistance": ohms, "together_with": ["gone", HOLE]}
    said = {key: value for key, value in speaker.items() if value is not None}
    note = {"form": "seen", "vehicle": CAR, "place": HOLE, "factory_speaker": said, "splits": {"no-such-axis": "late"}}
    assert pages_about(making.record("notes", "n", note))[f"vehicles/{CAR}.md"].all("h2", id="loads") != []
