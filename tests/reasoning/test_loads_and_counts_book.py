"""The trade's worked loads, currents, clips and minutes, from records alone: common practice, without a source.

The sums are 4.7 to 4.11 and 13 of the trade's list, worked out by hand there.
"""

from fractions import Fraction
from pathlib import Path

import pytest

from bezelbook.kinds.note.record import After, Seen
from bezelbook.kinds.supply.record import Resistor, Wire
from bezelbook.knowledge_base import KnowledgeBase, knowledge_base
from bezelbook.reasoning.counts.by_build import clips_at
from bezelbook.reasoning.counts.lost import standing, tallies
from bezelbook.reasoning.counts.minutes import minutes
from bezelbook.reasoning.counts.together import Work, together
from bezelbook.reasoning.electric.amounts import above_zero, amount
from bezelbook.reasoning.electric.conductor import conductor
from bezelbook.reasoning.electric.current import draw
from bezelbook.reasoning.electric.decibel import power_change
from bezelbook.reasoning.electric.dissipation import enough, heat_at_peak
from bezelbook.reasoning.electric.drop import drop
from bezelbook.reasoning.electric.factory_channels import factory_channels
from bezelbook.reasoning.electric.fuse import fuse
from bezelbook.reasoning.electric.least_load import Least, may_see
from bezelbook.reasoning.electric.resistor_place import wants
from bezelbook.reasoning.electric.resistor_rule import resistor_rules
from bezelbook.reasoning.electric.speaker import coil
from bezelbook.reasoning.electric.wiring import ways
from bezelbook.store.book import load_book
from bezelbook.values.decimals import decimals
from tests.reasoning.electric.ranges import span

CAR, DASH = "compact-hatch-2", "dash-centre"


@pytest.fixture(scope="module")
def book(books: Path) -> KnowledgeBase:
    loaded = load_book(books / "loads")
    assert loaded.complaints == ()
    return knowledge_base(loaded.records)


def test_two_two_ohm_subwoofers_bridged_are_allowed_in_series_only(book: KnowledgeBase) -> None:
    amplifier, load = book.amplifiers["five-in-one"], coil(book.speakers["two-ohm-sub"])
    assert load is not None
    least = Least(amplifier.least_load, amplifier.least_load_bridged)
    found = {way.words: (str(way.comes_to.low), may_see(way.comes_to, least, "bridged").says) for way in ways(load, 2)}
    assert found == {"in series": ("4", "fine"), "in parallel": ("1", "below the minimum")}


def test_a_four_ohm_door_where_the_factory_had_two_plays_three_decibels_lower(book: KnowledgeBase) -> None:
    rear = book.notes["rear-door"]
    ours = coil(book.speakers["four-ohm-door"])
    assert isinstance(rear, Seen)
    assert rear.factory_speaker is not None
    theirs = above_zero(rear.factory_speaker.impedance)
    assert theirs is not None
    assert ours is not None
    assert power_change(theirs.low, ours.low) == "3.0 dB less at the same setting"


def test_door_and_dash_on_one_channel_are_four_ohm_below_and_two_where_both_play(book: KnowledgeBase) -> None:
    [door, rear] = factory_channels(book, book.vehicles[CAR])
    assert door.places == ("front-door-left", "dash-corner-left")
    assert door.sees.low_notes == span(4)
    assert door.sees.least == span(2)
    # Nobody looked what else hangs on the rear channel, so no load is quoted.
    assert rear.sees.least is None


def test_six_hundred_watts_want_four_gauge_and_not_eight(book: KnowledgeBase) -> None:
    drawn = draw(book.amplifiers["five-in-one"])
    assert drawn is not None
    assert decimals(drawn.amps.high, 0) == "54"
    run = Fraction(55, 10) + Fraction(5, 10)
    found = {}
    for key in ("four-gauge", "eight-gauge"):
        supply = book.supplies[key]
        assert isinstance(supply, Wire)
        wire = conductor(supply.size, supply.metal)
        dropped = drop(drawn.amps, wire, run)
        found[key] = (decimals(dropped.volts.high, 2), dropped.says, fuse(drawn.amps, wire).says)
    assert found == {
        "four-gauge": ("0.27", "fine", "fine"),
        "eight-gauge": ("0.67", "too much", "only on a short run"),
    }


def test_resistors_are_for_the_upgraded_package_alone_and_of_the_proven_value(book: KnowledgeBase) -> None:
    base, upgraded = resistor_rules(book, book.vehicles[CAR])
    assert (base.says, upgraded.says) == ("unknown", "needs it")
    assert [one.resistor.value.typed for one in upgraded.proven] == ["20 ohm"]
    assert [one.note.id for one in upgraded.beside] == ["resistors-somewhere"]
    # The front speakers go to the added amplifier, the factory one stays for the rear ones.
    assert wants("kept", "taken away", upgraded) == ("needs it", "20 ohm proven on this package")
    assert wants("kept", "still driven", upgraded).says == "none"
    assert wants("gone", "taken away", upgraded).says == "none"
    assert wants("kept", "taken away", None).says == "unknown"


def test_the_resistor_on_the_bench_is_rated_for_it(book: KnowledgeBase) -> None:
    resistor = book.supplies["twenty-ohm"]
    assert isinstance(resistor, Resistor)
    ohm = above_zero(resistor.value)
    assert ohm is not None
    assert resistor.rated is not None
    heat = heat_at_peak(ohm)
    assert (decimals(heat.sine, 1), decimals(heat.square, 1)) == ("5.2", "10.4")
    assert enough(amount(resistor.rated), heat) == "enough"


def test_forty_four_clips_want_ten_and_one_pack_is_ordered(book: KnowledgeBase) -> None:
    everywhere = tallies(book, standing(book))
    [need] = clips_at(book, CAR, DASH, everywhere, "2026-03-05")
    # The copied job is no fourth one.
    assert (need.past.lost, need.past.handled, need.past.witnesses) == (15, 126, 3)
    assert (need.handled, need.need, need.shelf.count) == (44, 10, 2)
    assert need.order == (8, 10, 1)
    assert not need.shelf.count_it
    [later] = clips_at(book, CAR, DASH, everywhere, "2026-04-01")
    assert later.shelf.count_it


def test_it_takes_about_an_hour_and_thirty_five(book: KnowledgeBase) -> None:
    [found] = minutes(note for note in standing(book) if note.place == DASH)
    assert found.words == "about 1 h 35 (1 h 20 to 1 h 50, 3 jobs; 2 h 30 the first time)"
    assert all(isinstance(spent.note, After) for spent in found.usual)


def test_two_jobs_behind_the_bezel_pay_for_it_once(book: KnowledgeBase) -> None:
    seen = book.notes["strip-and-bezel"]
    assert isinstance(seen, Seen)
    seconds = {piece.piece: piece.took.base for piece in seen.pieces if piece.took}
    radio = Work("radio", 30 * 60, frozenset({"strip", "bezel"}))
    screen = Work("screen", 20 * 60, frozenset({"strip", "bezel"}))
    assert together([radio, screen], seconds) == ((30 + 20 + 4 + 5) * 60, frozenset())
