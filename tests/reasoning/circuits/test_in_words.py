import pytest

from bezelbook.reasoning.circuits.in_words import (
    ends_words,
    in_hand,
    lacks_together,
    load_words,
    own_supply,
    rows_together,
    verdict_words,
    would_do,
)
from bezelbook.reasoning.circuits.jobs import JOBS, Job
from bezelbook.reasoning.circuits.table import table
from tests.reasoning.circuits.a_car import SPEAKERS, SUPPLY, after, chained, connector, metered, plug_in, seen, tee
from tests.reasoning.making import record


def test_circuits_that_fare_alike_stand_together() -> None:
    found = rows_together(table(chained(seen("one"), plug_in("plug-in", "constant", "ground"))))
    how = "lead of the The plug-in, not proven in this build: meter it first"
    assert found[0] == ("constant and ground", "used", how)


def test_circuits_with_the_same_remedies_stand_together() -> None:
    found = dict(lacks_together(chained(seen("one"), plug_in())))
    true = "a module that reads the true signal off the bus, or go without: it is never made up"
    assert found["reverse, park brake and speed"] == true
    keep = Job("keep it and amplify")
    found = dict(lacks_together(chained(seen("one"), tee("tee", ways={"accessory": "not there"}), job=keep)))
    fuse = "a fuse in the fuse box that comes and goes with the key, with a relay for more than the radio's own lead"
    assert found["accessory"] == f"{fuse}; or an amplifier that wakes from the signal"


def test_only_an_added_amplifier_has_a_supply_of_its_own() -> None:
    assert own_supply(chained(seen("one"), plug_in())) == ""
    for job in JOBS[1:]:
        assert own_supply(chained(seen("one"), tee(), job=Job(job))) == (
            "The amplifier has a constant of its own, fused beside the battery, and a ground of its own on bare metal. "
            "Neither comes through these pieces: they bring it its sound and what wakes it."
        )


def test_a_piece_is_in_hand_when_the_shelf_has_one() -> None:
    shelf = record("shelf", "plug-in", {"thing": "plug-in", "count": 1})
    empty = record("shelf", "plug-in", {"thing": "plug-in", "count": 0})
    assert in_hand(chained(plug_in(), shelf).car.book, "plug-in") == "on the shelf"
    assert in_hand(chained(plug_in(), empty).car.book, "plug-in") == "to order"


def test_ends_are_said_in_their_order() -> None:
    chain = chained(seen("one"), tee(ends={"a": {"connector": "square"}, "b": {"ends_in": "phono"}, "c": {}}))
    words = ends_words(chain.car.book, chain.car.book.adapters["tee"])
    assert words == "The square to phono to an end nobody looked at"


def test_the_verdict_names_what_is_missing() -> None:
    bare = chained(seen("one"), plug_in("plug-in", "constant"))
    assert verdict_words(bare) == "not complete: missing ground, accessory, left front ± and right front ±"
    sound = chained(seen("one"), plug_in("plug-in", "constant", *SPEAKERS[:4]))
    assert verdict_words(sound) == "complete for the speakers; missing ground and accessory"
    assert verdict_words(chained(seen("one"), plug_in())) == "complete, once the looks below are made"
    assert verdict_words(chained(seen("one"))) == "nothing in the book that is known to be right here does it"
    assert verdict_words(chained()) == "nobody knows: the plug comes first"


def test_what_is_complete_says_what_nobody_has_proven_there() -> None:
    fronts = metered("meter", *enumerate(("constant", "ground", "accessory", *SPEAKERS[:4]), 1))
    assert verdict_words(chained(fronts, plug_in())) == "complete; left rear ± and right rear ± to be metered first"
    assert verdict_words(chained(fronts, plug_in("plug-in", *SUPPLY, *SPEAKERS[:4]))) == "complete"
    lit = (metered("one", (8, "illumination")), metered("other", (8, "dimmer"), job="j"))
    argued = chained(fronts, *lit, plug_in("plug-in", *SUPPLY, *SPEAKERS[:4], "illumination"))
    assert verdict_words(argued) == "complete; illumination to be metered first"


def test_where_nothing_goes_in_it_says_what_would() -> None:
    apart = "; or the sound taken at the speakers themselves, with their linings off."
    between = "It takes a T that goes between The square and the radio and"
    assert would_do(chained(seen("one"))) == "It takes an adapter that goes into The square and ends in bare leads."
    keep, sub = (would_do(chained(seen("one"), job=Job(job))) for job in JOBS[1:])
    assert (keep, sub) == (f"{between} cuts the front speakers{apart}", f"{between} taps two of the speakers{apart}")
    taps = tee("tee", cut=(), ways=dict.fromkeys(SPEAKERS[4:], "tapped"))
    assert would_do(chained(seen("one"), taps, job=Job("add a sub"))) == ""
    assert would_do(chained()) == "", "which plug it has comes first"
    two = (connector("round"), seen("one"), metered("two", (1, "left front +"), (2, "constant"), plug="round"))
    keep = would_do(chained(*two, job=Job("keep it and amplify")))
    assert keep.startswith("It takes a T that goes between The round and the radio"), "the speakers are in that one"
    also = metered("also", (3, "accessory"))
    assert would_do(chained(*two, also, job=Job("keep it and amplify"))) == keep, "accessory is no speaker"
    assert would_do(chained(*two, job=Job("two-piece radio"))) == would_do(chained(*two))
    assert (
        would_do(chained(*two)) == "It takes an adapter that goes into The square or The round and ends in bare leads."
    )


PAIRS = "Load resistors across left front ± and right front ± from the radio: "


@pytest.mark.parametrize(
    ("tried", "words"),
    [
        ((), "unknown. Nobody tried this build with and without: a ten-minute test with the speakers off."),
        (("works",), "not needed, it played without in this build."),
        (("muted",), "without them it failed in this build. 20 ohm was proven."),
        (("hums", "muted"), "without them it failed in this build. 20 ohm was proven."),
        (("muted", "works"), "argued over; until settled: needed. 20 ohm was proven."),
    ],
)
def test_a_load_is_said_with_what_was_tried(tried: tuple[str, ...], words: str) -> None:
    notes = [
        after(f"job-{without}", resistors=[{"value": "20 ohm", "with_it": "works", "without_it": without}])
        for without in tried
    ]
    said = load_words(chained(seen("one"), tee(), *notes, job=Job("keep it and amplify")))
    assert said == PAIRS + words
    assert load_words(chained(seen("one"), plug_in())) == ""
    two = [{"value": value, "with_it": "works", "without_it": "muted"} for value in ("20 ohm", "47 ohm")]
    several = chained(seen("one"), tee(), after("job", resistors=two), job=Job("keep it and amplify"))
    assert load_words(several).endswith("without them it failed in this build. 20 ohm, 47 ohm was proven.")
