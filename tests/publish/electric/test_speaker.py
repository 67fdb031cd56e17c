from typing import Any

from bezelbook.kinds.speaker.record import Speaker
from bezelbook.publish.electric.speaker import FIRST_LOOK, SpeakerPart, speaker_part
from tests.publish.pages_of import pages_about
from tests.reasoning import making


def speaker(**content: Any) -> Speaker:
    said = {"name": "one", "speaker_kind": "coaxial", "nominal": "6 in"} | content
    made: Speaker = making.record("speakers", "one", said)
    return made


def part(**content: Any) -> SpeakerPart:
    return speaker_part(speaker(**content))


def test_two_alike_are_half_or_twice_the_load() -> None:
    shown = part(impedance="4 ohm", voice_coils=1)
    assert dict(shown.loads) == {"one": "4 ohm", "two in parallel": "2 ohm", "two in series": "8 ohm"}
    assert shown.unsaid == ""


def test_coils_that_nobody_counted_are_taken_for_one_and_it_is_said() -> None:
    assert part(impedance="4 ohm").unsaid.startswith("How many voice coils it has is not looked")


def test_several_coils_are_wired_in_each_way() -> None:
    shown = part(impedance="4 ohm", voice_coils=2)
    assert shown.loads == (
        ("one, its coils in series", "8 ohm"),
        ("two of that in parallel", "4 ohm"),
        ("two of that in series", "16 ohm"),
        ("one, its coils in parallel", "2 ohm"),
        ("two of that in parallel", "1 ohm"),
        ("two of that in series", "4 ohm"),
    )
    assert shown.instead == ()


def test_a_load_that_nobody_read_says_where_to_look() -> None:
    shown = part()
    assert (shown.loads, shown.instead) == ((), ())
    assert shown.unsaid == f"Its load is not looked: {FIRST_LOOK}."


# Trade 4.7: 4 ohm in place of 2 ohm is 3 dB less.
def test_it_says_what_changes_in_another_ones_place() -> None:
    shown = dict(part(impedance="4 ohm").instead)
    assert shown["in place of 2 ohm"] == "3.0 dB less at the same setting"
    assert shown["in place of 8 ohm"] == "3.0 dB more at the same setting"
    assert "in place of 4 ohm" not in shown
    assert part(impedance="4 ± 1 ohm").instead == ()


# Trade 4.7: 4.7 µF at 4 ohm is about 8.5 kHz.
def test_a_capacitor_in_its_box_is_held_against_what_it_needs() -> None:
    tweeter: dict[str, Any] = {"impedance": "4 ohm", "speaker_kind": "tweeter"}
    supplied = {"capacitor": "4.7 µF"}
    enough = part(**tweeter, filter_supplied=supplied, filter_needed={"corner": "3.5 kHz", "lets_through": "high"})
    assert enough.filter[1:] == (
        "The 4.7 µF in its lead acts from about 8.5 kHz into 4 ohm.",
        "It wants 3.5 kHz or more: that is enough.",
    )
    little = part(**tweeter, filter_supplied=supplied, filter_needed={"corner": "9 kHz"})
    assert little.filter[-1] == "It wants 9 kHz or more: that is too little."
    assert "adds no load to the low notes" in enough.filter[0]
    low = part(**tweeter, filter_supplied=supplied, filter_needed={"corner": "3 kHz", "lets_through": "low"})
    assert len(low.filter) == 2
    unsaid = part(**tweeter, filter_supplied=supplied, filter_needed={"order": 2})
    assert len(unsaid.filter) == 2


def test_a_capacitor_of_nothing_and_a_load_that_nobody_read_say_no_corner() -> None:
    needed = {"corner": "3 kHz"}
    assert len(part(impedance="4 ohm", filter_supplied={"capacitor": "0 µF"}, filter_needed=needed).filter) == 1
    assert len(part(filter_supplied={"capacitor": "4.7 µF"}, filter_needed=needed).filter) == 1
    assert part(impedance="4 ohm", filter_supplied={"order": 2}).filter == ()


def test_a_tweeter_without_its_filter_dies() -> None:
    bare = part(speaker_kind="tweeter", filter_supplied="not there", filter_needed={"corner": "5 kHz"})
    assert bare.filter[-1].startswith("Nothing in its box protects it")
    blank = part(speaker_kind="tweeter", filter_supplied="not there")
    assert blank.filter[-1].startswith("The filter it needs is not looked")
    assert part(speaker_kind="tweeter", filter_needed="not needed").filter[1:] == ()


def test_a_speaker_that_takes_everything_has_no_filter_to_tell_of() -> None:
    assert part(impedance="4 ohm").filter == ()


def test_its_page_shows_it() -> None:
    page = pages_about(speaker(impedance="4 ohm", filter_supplied={"capacitor": "4.7 µF"}))["speakers/one.md"]
    terms = {row.all("dt")[0].text: row.all("dd")[0].text for row in page.all("div") if row.all("dt")}
    assert terms["Two in parallel"] == "2 ohm"
    assert terms["In place of 2 ohm"] == "3.0 dB less at the same setting"
    assert "about 8.5 kHz" in page.text
    assert "Its filter" not in pages_about(speaker())["speakers/one.md"].text
