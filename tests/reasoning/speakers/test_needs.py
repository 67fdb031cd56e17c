"""What a speaker asks for."""

import pytest

from bezelbook.kinds.note.record import Tried
from bezelbook.kinds.speaker.record import Speaker
from bezelbook.knowledge_base import knowledge_base
from bezelbook.reasoning.speakers.needs import (
    SpeakerNeeds,
    at_its_word,
    house_span,
    needs_of_note,
    needs_of_sizes,
    needs_of_speaker,
)
from bezelbook.values.quantity import read_quantity
from bezelbook.values.span import BLANK, Span
from tests.reasoning.making import length, record
from tests.reasoning.speakers.doors import book, speaker, tried

MM = 1_000_000


def needs(**content: str | None) -> SpeakerNeeds:
    of = book(speaker(**content))
    one = of.speakers["six"]
    assert isinstance(one, Speaker)
    return needs_of_speaker(of, one)


def test_a_round_speaker_asks_the_same_both_ways() -> None:
    found = needs()
    assert found.spans == {
        "basket": Span(130 * MM, 130 * MM),
        "mounting depth": Span(60 * MM, 60 * MM),
        "front height": Span(10 * MM, 10 * MM),
    }
    assert (found.oval, found.exact, found.flange, found.key) == (False, True, None, "speaker:six")


def test_an_oval_asks_for_two_ways() -> None:
    found = needs(basket_short="90 mm caliper")
    assert (found.oval, found.spans["basket short way"]) == (True, Span(90 * MM, 90 * MM))
    assert needs(shape="oval").spans["basket short way"] == BLANK


def test_a_square_basket_is_not_compared_with_a_hole() -> None:
    assert needs(shape="square").spans["basket"] == BLANK


def test_the_hole_it_wants_serves_where_nobody_measured_its_basket() -> None:
    found = needs(basket=None, cut_out="127 mm caliper")
    assert (found.spans["basket"], found.snug) == (Span(127 * MM, 127 * MM), frozenset({"basket"}))
    assert needs(basket="126 mm printed", cut_out="127 mm caliper").snug == frozenset({"basket"})
    found = needs(cut_out="127 mm caliper")
    assert (found.spans["basket"].low, found.snug) == (130 * MM, frozenset())
    assert needs(basket="126 mm printed", cut_out="127 mm printed").printed == {"basket": 126 * MM}


def test_a_printed_size_may_be_anything_until_it_is_taken_at_its_word() -> None:
    found = needs(mounting_depth="60 mm printed", front_height="10 mm")
    assert found.spans["mounting depth"] == BLANK
    assert found.printed == {"mounting depth": 60 * MM, "front height": 10 * MM}
    word = at_its_word(found)
    assert word.spans["mounting depth"] == Span(60 * MM, 60 * MM)
    assert (word.printed, word.key, word.middles["front height"]) == ({}, "speaker:six as printed", 10 * MM)


def test_a_caliper_without_a_figure_for_its_error_has_the_house_s() -> None:
    of = knowledge_base((record("shop", "shop", {"name": "Shop", "format": 1}), speaker()))
    assert needs_of_speaker(of, of.speakers["six"]).spans["mounting depth"] == Span(59_800_000, 60_200_000)


def test_the_cone_comes_out_when_it_plays() -> None:
    found = needs(excursion="3 mm printed")
    assert found.spans["front height"] == Span(10 * MM, 13 * MM, reached=True)
    assert found.middles["front height"] == 13 * MM
    assert needs(excursion="3 ± 1 mm", front_height="10 ± 1 mm").spans["front height"] == Span(9 * MM, 15 * MM)
    assert needs(excursion="3 mm", front_height=None).spans["front height"] == BLANK
    trusted = book(record("shop", "shop", {"name": "S", "format": 1, "tools": {"bench_caliper": "0.5 mm"}}))
    read = speaker(excursion="3 mm caliper", front_height="10 mm printed")
    assert isinstance(read, Speaker)
    assert needs_of_speaker(trusted, read).further == 3_500_000
    assert (found.further, needs(excursion="3 ± 1 mm", front_height=None).further) == (3 * MM, 4 * MM)


def test_the_cone_of_another_speaker_is_taken_over_with_its_front() -> None:
    deep, high = read_quantity("60 mm", "length"), read_quantity("12 mm", "length")
    like = needs(excursion="3 mm printed")
    assert needs_of_sizes({"mounting_depth": deep}, like).further == 3 * MM
    assert needs_of_sizes({"front_height": high}, like).further == 0
    assert needs_of_sizes({"front_height": high, "excursion": deep}).further == 60 * MM


def test_how_far_a_flange_reaches() -> None:
    assert needs(flange="150 ± 1 mm").flange == (151 * MM, 151 * MM)
    assert needs(flange="150 mm printed").flange is None
    assert needs(basket_short="90 mm caliper", flange="150 mm caliper", flange_short="100 mm caliper").flange == (
        150 * MM,
        100 * MM,
    )
    assert needs(basket_short="90 mm caliper", flange="150 mm caliper").flange is None


def test_a_note_is_about_its_record_or_about_the_sizes_it_types() -> None:
    of = book()
    named, typed = tried(), tried(what="some coax", sizes={"mounting_depth": "63 mm", "basket": "141 mm caliper"})
    bare = tried(what="some coax")
    assert isinstance(named, Tried)
    assert isinstance(typed, Tried)
    assert isinstance(bare, Tried)
    assert needs_of_note(of, named).key == "speaker:six"
    found = needs_of_note(of, typed)
    assert (found.key, found.name) == ("note:n", "some coax")
    assert found.spans["mounting depth"] == Span(58 * MM, 68 * MM)
    assert found.spans["basket"] == Span(141 * MM, 141 * MM)
    assert needs_of_note(of, bare).spans["mounting depth"] == BLANK


def test_a_bench_note_says_what_the_record_leaves_blank() -> None:
    bench = record(
        "notes", "b", {"form": "bench", "part": "six", "readings": [{"of": "mounting_depth", "reads": "61 ± 1 mm"}]}
    )
    of = book(speaker(mounting_depth=None), bench)
    one = of.speakers["six"]
    assert needs_of_speaker(of, one).spans["mounting depth"] == Span(60 * MM, 62 * MM)


def test_typed_sizes_ask_for_themselves_only() -> None:
    found = needs_of_sizes({"mounting_depth": length("63 mm"), "flange": length("150 mm")})
    assert (found.asked, found.spans["mounting depth"]) == (frozenset({"mounting depth"}), Span(63 * MM, 63 * MM))
    assert (found.flange, found.name) == ((150 * MM, 150 * MM), "63 mm x 150 mm")
    oval = needs_of_sizes({"cut_out": length("220 mm"), "cut_out_short": length("150 mm")})
    assert (oval.oval, oval.asked) == (True, frozenset({"basket", "basket short way"}))


def test_typed_beside_a_speaker_the_rest_is_that_speaker_s_own() -> None:
    like = needs(mounting_depth="60 mm printed", basket_short="90 mm caliper", cut_out="131 mm caliper", basket=None)
    found = needs_of_sizes({"front_height": length("12 mm")}, like)
    assert found.spans["front height"] == Span(12 * MM, 12 * MM)
    assert found.spans["basket"] == like.spans["basket"]
    assert (found.oval, found.printed, found.snug) == (True, {"mounting depth": 60 * MM}, frozenset({"basket"}))
    assert (found.key_of("basket"), found.key_of("front height")) == ("speaker:six", "asked")
    assert found.name == "six with 12 mm"
    round_one = needs_of_sizes({"basket": length("120 mm")}, like)
    assert (round_one.oval, round_one.key_of("mounting depth")) == (False, "speaker:six")


@pytest.mark.parametrize(("size", "span"), [("4 mm caliper", Span(4 * MM, 4 * MM)), ("4 mm printed", BLANK)])
def test_a_size_of_a_part(size: str, span: Span) -> None:
    assert house_span(book(), read_quantity(size, "length", sized=True)) == span


def test_a_part_that_a_caliper_read_has_the_error_of_the_house_s() -> None:
    of = knowledge_base((record("shop", "shop", {"name": "Shop", "format": 1}),))
    size = read_quantity("4 mm caliper", "length", sized=True)
    assert house_span(of, size) == Span(3_800_000, 4_200_000)


def test_a_flange_is_the_like_speaker_s_where_none_was_typed() -> None:
    depth, flange = {"mounting_depth": length("63 mm")}, {"flange": length("170 mm")}
    like = needs(flange="150 mm caliper")
    assert needs_of_sizes(depth, like).flange == (150 * MM, 150 * MM)
    assert needs_of_sizes(depth | flange, like).flange == (170 * MM, 170 * MM)
    assert needs_of_sizes(depth | flange, needs()).flange == (170 * MM, 170 * MM)


def test_a_d_shaped_speaker_has_two_ways_like_an_oval_one() -> None:
    assert needs(shape="D").oval
    assert not needs(shape="round").oval


def test_a_caliper_in_a_note_has_the_error_of_the_house_s() -> None:
    of = knowledge_base((record("shop", "shop", {"name": "Shop", "format": 1}),))
    typed = tried(what="some coax", sizes={"basket": "141 mm caliper"})
    assert isinstance(typed, Tried)
    assert needs_of_note(of, typed).spans["basket"] == Span(140_800_000, 141_200_000)


def test_what_is_like_a_speaker_has_its_figures_too() -> None:
    found = needs_of_sizes({"basket": length("120 mm")}, needs(mounting_depth="60 ± 2 mm", front_height="9 mm printed"))
    assert found.middles == {"basket": 120 * MM, "mounting depth": 60 * MM}
    word = at_its_word(found)
    assert (word.key_of("mounting depth"), word.key_of("basket")) == ("asked as printed", "asked as printed")


def test_a_printed_short_way_of_a_flange_is_not_known() -> None:
    assert needs(basket_short="90 mm caliper", flange="150 mm caliper", flange_short="100 mm printed").flange is None
