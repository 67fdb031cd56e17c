from typing import Any

from bezelbook.kinds.record import Record
from bezelbook.publish.electric.amplifier import AmplifierPart, amplifier_part, sorts_of
from bezelbook.reasoning.electric.least_load import limit_look
from tests.publish.pages_of import pages_about
from tests.reasoning import making


def speaker(named: str, **content: Any) -> Record:
    said = {"name": named, "speaker_kind": "coaxial", "nominal": "6 in"} | content
    made: Record = making.record("speakers", named, said)
    return made


def amplifier(**content: Any) -> Record:
    made: Record = making.record("amplifiers", "amp", {"name": "The amp", "origin": "added"} | content)
    return made


def part(*records: Record, **content: Any) -> AmplifierPart:
    book = making.book(amplifier(**content), *records)
    return amplifier_part(sorts_of(book), book.amplifiers["amp"])


TWO_AND_FOUR = {"least_load": "2 ohm", "least_load_bridged": "4 ohm"}


# Trade 13: two of 2 ohm bridged onto 4 ohm, parallel 1 ohm, series 4 ohm, only series allowed.
def test_of_two_two_ohm_speakers_bridged_only_series_is_fine() -> None:
    shown = part(speaker("sub", impedance="2 ohm"), **TWO_AND_FOUR)
    assert {row.load: (row.single.says, row.bridged.says, row.made_by) for row in shown.rows} == {
        "4 ohm": ("fine", "fine", ("two 2 ohm speakers in series",)),
        "2 ohm": ("fine", "below the minimum", ("one 2 ohm speaker",)),
        "1 ohm": ("below the minimum", "below the minimum", ("two 2 ohm speakers in parallel",)),
    }
    assert shown.limits == ("Made for 2 ohm and more on one channel", "Made for 4 ohm and more on two bridged")
    assert shown.sorts == (("2 ohm speaker", "sub"),)


def test_a_load_that_comes_about_in_several_ways_is_one_row_and_single_speakers_come_first() -> None:
    shown = part(speaker("a", impedance="2 ohm"), speaker("b", impedance="4 ohm"), speaker("c", impedance="4 ohm"))
    [row] = [row for row in shown.rows if row.load == "4 ohm"]
    assert row.made_by == ("one 4 ohm speaker", "two 2 ohm speakers in series")
    assert shown.sorts == (("2 ohm speaker", "a"), ("4 ohm speaker", "b, c"))


def test_a_speaker_of_several_coils_is_wired_in_every_way() -> None:
    shown = part(speaker("sub", impedance="4 ohm", voice_coils=2))
    assert [row.load for row in shown.rows] == ["16 ohm", "8 ohm", "4 ohm", "2 ohm", "1 ohm"]
    assert shown.rows[1].made_by == ("one speaker of two 4 ohm coils, coils in series",)
    assert set(shown.rows[2].made_by) == {
        "two speakers of two 4 ohm coils in parallel, coils in series",
        "two speakers of two 4 ohm coils in series, coils in parallel",
    }


def test_what_nobody_read_is_named_and_not_guessed() -> None:
    shown = part(speaker("a"), speaker("b", impedance="4 ohm"))
    assert shown.sorts == (("4 ohm speaker", "b"), ("load not looked", "a"))
    assert [row.single.says for row in shown.rows] == ["unknown"] * 3
    assert shown.limits == (
        "Its lowest load single is not looked: the lowest load single, printed on the amplifier or in its sheet, 2 min",
        f"Its lowest load bridged is not looked: {limit_look('bridged')}",
    )
    assert part().rows == ()
    said = pages_about(amplifier())["amplifiers/amp.md"].text
    assert "No speaker of this book has its load written down." in said


def test_what_cannot_be_bridged_says_so() -> None:
    shown = part(speaker("a", impedance="4 ohm"), least_load="2 ohm", least_load_bridged="does not apply")
    assert shown.limits == ("Made for 2 ohm and more on one channel", "It cannot be bridged")
    assert {row.bridged.says for row in shown.rows} == {"does not apply"}


# Trade 4.9 and 13: 600 W at 0.8 and 13.8 V, 6 m: 4 gauge is fine with 0.27 V, 8 gauge is not.
def test_six_hundred_watts_over_six_metres_want_four_gauge_and_a_sixty_amp_fuse() -> None:
    shown = part(power=[{"watts": "600 W", "load": "2 ohm", "channels": 1}], amplifier_class="switching")
    assert shown.draw.startswith("54 A at 13.8 V")
    six = {row.metres: row for row in shown.runs}[6]
    assert (six.wire, six.drops, six.fuse, six.clad) == ("4 AWG, 21.15 mm²", "0.27 V", "60 A", "4 AWG")
    assert [row.metres for row in shown.runs] == [2, 3, 4, 5, 6, 8]


def test_a_longer_run_wants_a_thicker_wire_and_clad_a_thicker_one_still() -> None:
    shown = part(power=[{"watts": "450 W", "load": "4 ohm", "channels": 1}], amplifier_class="switching")
    eight = {row.metres: row for row in shown.runs}
    # 40.8 A: 8 AWG drops 0.17 V in 2 m and 0.50 V in 6 m; clad of that size up to 1.6 times as much.
    assert (eight[2].wire, eight[2].drops, eight[2].fuse, eight[2].clad) == (
        "8 AWG, 8.37 mm²",
        "0.17 V",
        "50 A",
        "8 AWG",
    )
    assert (eight[6].wire.split(",")[0], eight[6].clad) == ("4 AWG", "4 AWG")
    assert (eight[4].wire.split(",")[0], eight[4].clad) == ("8 AWG", "4 AWG")


def test_more_than_any_one_wire_carries_is_split() -> None:
    shown = part(power=[{"watts": "4 kW", "load": "1 ohm", "channels": 1}], amplifier_class="switching")
    assert shown.runs[0].wire == "no one wire: split the run"
    assert (shown.runs[0].fuse, shown.runs[0].clad) == ("", "")


def test_where_only_clad_is_too_thin_there_is_none_in_clad() -> None:
    shown = part(power=[{"watts": "2.2 kW", "load": "1 ohm", "channels": 1}], amplifier_class="switching")
    # 199 A: 1/0 drops 0.06 V a metre, so 0.51 V over 8 m.
    by_run = {row.metres: (row.wire.split(",")[0], row.clad) for row in shown.runs}
    assert by_run[6] == ("1/0 AWG", "none")
    assert by_run[4] == ("1/0 AWG", "1/0 AWG")
    assert by_run[8][0] == "no one wire: split the run"


def test_blanks_are_said() -> None:
    shown = part()
    assert shown.runs == ()
    assert "its power is not written down" in shown.draw
    assert shown.asks == ("the thickest wire its terminal takes is not looked",)
    full = part(power=[{"watts": "69 W", "load": "4 ohm", "channels": 2}], largest_wire="4 AWG", fuses="60 A")
    assert full.draw.startswith("12 to 20 A at 13.8 V")
    assert full.asks == (
        "switching or linear is not looked",
        "its terminal takes up to 4 AWG, 21.15 mm²",
        "the fuses on it add up to 60 A: a smaller one in the run goes first",
    )


def test_its_page_shows_both_tables() -> None:
    power = [{"watts": "600 W", "load": "2 ohm", "channels": 1}]
    page = pages_about(amplifier(power=power, **TWO_AND_FOUR), speaker("sub", impedance="2 ohm"))["amplifiers/amp.md"]
    rows = {row.all("th")[0].text: [cell.text for cell in row.all("td")] for row in page.all("tr") if row.all("td")}
    assert rows["1 ohm"] == ["below the minimum", "below the minimum", "two 2 ohm speakers in parallel"]
    # Its class is blank, so it may be linear: 87 A.
    assert rows["6 m"] == ["4 AWG, 21.15 mm²", "0.27 to 0.43 V", "100 A", "2 AWG"]
    assert "Which speakers those are" in page.text
