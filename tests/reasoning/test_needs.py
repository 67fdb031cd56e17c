"""What a thing asks of an opening, and how much of it anybody knows."""

from typing import Any

import pytest

from bezelbook.kinds.note.record import AnyNote
from bezelbook.reasoning.needs import NEEDS, Need, Needs, at_its_word, needs_of_note, needs_of_sizes, needs_of_unit
from bezelbook.values.span import BLANK, Span
from tests.reasoning.making import book, length, record, shop, tried, unit


def mm(low: float, high: float) -> Span:
    return Span(int(low * 1_000_000), int(high * 1_000_000))


def of_unit(*notes: AnyNote, **content: Any) -> Needs:
    box = unit(**content)
    return needs_of_unit(book(box, *notes), box)


def of_note(**content: Any) -> Needs:
    return needs_of_note(book(unit()), tried(**content))


def bench(of: str, reads: str, name: str = "bench") -> AnyNote:
    note: AnyNote = record("notes", name, {"form": "bench", "part": "box", "readings": [{"of": of, "reads": reads}]})
    return note


def test_a_record_asks_for_its_body_nose_and_plug() -> None:
    needs = of_unit(nose_width="180 ± 1 mm caliper")
    assert needs.spans["width"] == mm(177, 179)
    assert needs.spans["nose width"] == mm(179, 181)
    assert needs.spans["depth"] == mm(109, 111)
    assert needs.spans["plug"] == mm(109 + 27, 111 + 37)
    assert (needs.key, needs.name, needs.exit, needs.asked) == ("head_unit:box", "box", "right", frozenset(NEEDS))


def test_what_stands_out_behind_counts_everywhere_and_the_plug_only_if_it_is_longer() -> None:
    short = of_unit(rear_protrusion="7 ± 1 mm caliper")
    assert (short.spans["depth"], short.spans["plug"]) == (mm(115, 119), mm(136, 148))
    tall = of_unit(rear_protrusion="50 ± 1 mm caliper")
    assert (tall.spans["depth"], tall.spans["plug"]) == (mm(158, 162), mm(158, 162))


@pytest.mark.parametrize("plug", [None, "32 ± 5 mm printed", "32 mm printed", "32 mm"])
def test_a_plug_that_nobody_measured_may_need_any_room(plug: str | None) -> None:
    needs = of_unit(body_depth="110 mm caliper", plug_and_bend=plug)
    assert needs.spans["plug"].high is None
    assert needs.spans["plug"].low == 109_800_000


@pytest.mark.parametrize("depth", [None, "110 mm printed", "110 ± 1 mm printed", "110 mm"])
def test_a_body_that_nobody_measured_may_be_any_size(depth: str | None) -> None:
    needs = of_unit(body_depth=depth)
    assert needs.spans["depth"] == BLANK
    assert needs.spans["plug"].high is None
    assert needs.spans["plug"].low == 27_000_000


def test_a_caliper_without_a_plus_minus_is_trusted_as_far_as_the_house_does() -> None:
    box = unit(body_width="178 mm caliper")
    assert needs_of_unit(book(box), box).spans["width"] == mm(177.8, 178.2)
    assert needs_of_unit(book(box, shop(tools={"bench_caliper": "1 mm"})), box).spans["width"] == mm(177, 179)


def test_a_plus_minus_without_a_word_was_measured() -> None:
    assert of_unit(body_width="178 ± 2 mm").spans["width"] == mm(176, 180)


def test_printed_figures_are_kept_beside() -> None:
    needs = of_unit(body_depth="110 mm printed", body_width="178 mm", nose_width="180 ± 1 mm printed")
    assert needs.printed == {"depth": 110_000_000, "width": 178_000_000, "nose width": 180_000_000}


def test_a_printed_depth_is_of_the_body_and_what_stands_out_behind_is_added() -> None:
    needs = of_unit(body_depth="110 mm printed", rear_protrusion="7 ± 1 mm caliper")
    assert needs.printed == {"depth": 117_000_000}


def test_taken_at_its_word_a_printed_figure_is_the_truth() -> None:
    needs = at_its_word(of_unit(body_depth="110 mm printed"))
    assert (needs.spans["depth"], needs.spans["plug"], needs.printed) == (mm(110, 110), mm(137, 147), {})
    assert needs.key != "head_unit:box"


def test_taken_at_its_word_a_printed_plug_is_the_truth() -> None:
    needs = at_its_word(of_unit(body_depth="110 mm caliper", plug_and_bend="32 mm printed"))
    assert needs.spans["plug"] == mm(141.8, 142.2)
    assert needs.plug_over_body == mm(32, 32)


def test_a_bench_note_tells_what_the_record_leaves_open() -> None:
    assert of_unit(bench("body_depth", "112 ± 1 mm"), body_depth=None).spans["depth"] == mm(111, 113)
    assert of_unit(bench("body_depth", "112 ± 1 mm"), body_depth="110 mm printed").spans["depth"] == mm(111, 113)
    assert of_unit(bench("rear_protrusion", "7 ± 1 mm")).spans["depth"] == mm(115, 119)


def test_what_the_record_measured_counts_before_a_bench_note() -> None:
    assert of_unit(bench("body_depth", "150 ± 1 mm")).spans["depth"] == mm(109, 111)


@pytest.mark.parametrize(
    ("depth", "found"),
    [
        ("110 mm", mm(111, 113)),
        ("110 ± 1 mm printed", mm(111, 113)),
        ("110 ± 1 mm", mm(109, 111)),
        ("110 mm caliper", mm(109.8, 110.2)),
    ],
)
def test_a_size_on_a_record_was_measured_if_it_says_caliper_or_its_own_plus_minus(depth: str, found: Span) -> None:
    assert of_unit(bench("body_depth", "112 ± 1 mm"), body_depth=depth).spans["depth"] == found


def test_several_bench_notes_leave_all_that_any_of_them_allows_whatever_they_are_called() -> None:
    for names in ("ab", "ba"):
        first, second = (
            bench("body_depth", reads, name) for reads, name in zip(("112 ± 1 mm", "113 ± 2 mm"), names, strict=True)
        )
        assert of_unit(first, second, body_depth=None).spans["depth"] == mm(111, 115)


def test_a_bench_note_without_a_plus_minus_was_measured_with_no_tool_named() -> None:
    needs = of_unit(bench("body_depth", "112 mm"), body_depth=None)
    assert isinstance(needs.spans["depth"].low, int)
    assert (needs.spans["depth"], needs.printed) == (mm(107, 117), {})


def test_a_note_about_a_record_asks_for_what_the_record_asks_for() -> None:
    assert of_note(what="box") == of_unit()
    assert of_note(what="BOX", sizes={"depth": "150 mm"}) == of_unit()


def test_a_note_about_something_else_asks_for_its_own_sizes() -> None:
    sizes = {"depth": "165 ± 2 mm", "plug_and_bend": "30 mm caliper", "width": "178 mm printed", "plug_exit": "left"}
    needs = of_note(what="a disc double", sizes=sizes)
    assert (needs.key, needs.name, needs.exit) == ("note:a-note", "a disc double", "left")
    assert (needs.spans["depth"], needs.spans["plug"]) == (mm(163, 167), mm(192.8, 197.2))
    assert (needs.spans["width"], needs.printed) == (BLANK, {"width": 178_000_000})


def test_a_size_in_a_note_without_a_word_was_measured_with_no_tool_named() -> None:
    assert of_note(what="a disc double", sizes={"depth": "165 mm"}).spans["depth"] == mm(160, 170)


def test_a_note_without_sizes_asks_for_nobody_knows_what() -> None:
    needs = of_note(what="a disc double")
    assert {need: span for need, span in needs.spans.items() if span.high is not None} == {}


def sizes(**typed: str) -> dict[Need, Any]:
    return {need: length(typed[need.replace(" ", "_")]) for need in NEEDS if need.replace(" ", "_") in typed}


def test_a_typed_size_is_exact_unless_a_plus_minus_is_typed() -> None:
    needs = needs_of_sizes(sizes(depth="165 mm", plug="32 ± 5 mm"), "right")
    assert (needs.spans["depth"], needs.spans["plug"]) == (mm(165, 165), mm(192, 202))
    assert (needs.key, needs.name, needs.exit) == ("asked", "165 mm x 32 ± 5 mm", "right")


def test_what_was_not_typed_is_not_asked_but_a_depth_asks_for_its_plug() -> None:
    assert needs_of_sizes(sizes(width="178 mm"), None).asked == {"width"}
    assert needs_of_sizes(sizes(depth="165 mm"), None).asked == {"depth", "plug"}


def test_sizes_typed_beside_a_thing_replace_its_own() -> None:
    like = of_unit(body_depth="110 ± 1 mm caliper", plug_and_bend="32 ± 5 mm caliper")
    deeper = needs_of_sizes(sizes(depth="150 mm"), None, like)
    assert (deeper.spans["depth"], deeper.spans["plug"], deeper.spans["width"]) == (
        mm(150, 150),
        mm(177, 187),
        mm(177, 179),
    )
    assert (deeper.asked, deeper.exit) == (frozenset(NEEDS), "right")
    assert {deeper.key_of(need) for need in ("depth", "plug")} == {"asked"}
    assert deeper.key_of("width") == like.key
    assert (deeper.printed, deeper.plug_over_body) == ({}, mm(27, 37))


def test_what_stands_out_behind_a_thing_stands_out_behind_a_depth_typed_beside_it() -> None:
    like = of_unit(rear_protrusion="5 ± 1 mm caliper", plug_and_bend="32 ± 5 mm caliper")
    deeper = needs_of_sizes(sizes(depth="150 mm"), None, like)
    assert (deeper.spans["depth"], deeper.behind) == (mm(154, 156), mm(4, 6))
    least, most = deeper.spans["plug"].low, deeper.spans["plug"].high
    assert (least or 0) <= 177_000_000  # a plug of 27 to 37 counts from the back plate
    assert (most or 0) >= 187_000_000
    plugged = needs_of_sizes(
        sizes(depth="150 mm", plug="20 mm"), None, of_unit(rear_protrusion="5 ± 0.0001 mm caliper")
    )
    assert plugged.spans["plug"].high == 170_000_200  # from the back plate, so not added to what stands out there


def test_a_plug_typed_beside_a_thing_is_not_its_own_and_neither_is_the_depth_it_adds_to() -> None:
    other = needs_of_sizes(sizes(plug="40 mm"), "left", of_unit())
    assert (other.spans["plug"], other.exit) == (mm(149, 151), "left")
    assert {other.key_of(need) for need in ("depth", "plug")} == {"asked"}


def test_a_width_typed_beside_a_thing_leaves_its_depth_its_own() -> None:
    like = of_unit()
    other = needs_of_sizes(sizes(width="180 mm"), None, like)
    assert (other.spans["depth"], other.spans["plug"]) == (like.spans["depth"], like.spans["plug"])
    assert {other.key_of(need) for need in ("depth", "plug")} == {like.key}


def test_needs_are_exact_only_if_every_one_is() -> None:
    typed = sizes(width="1 mm", height="1 mm", nose_width="1 mm", nose_height="1 mm", depth="1 mm", plug="1 mm")
    assert needs_of_sizes(typed, None).exact
    assert not needs_of_sizes(typed | sizes(depth="1 ± 0.5 mm"), None).exact
    assert not of_unit().exact
